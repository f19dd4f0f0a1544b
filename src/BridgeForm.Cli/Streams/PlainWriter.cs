using System.Text;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Streams;

/// <summary>
/// Everything that is said goes through here: whatever a name, a path or a trouble's own words hold, a terminal sees plain
/// text. Line feeds pass, since the program ends its own lines with them; what comes from others is put on one line before.
/// </summary>
internal sealed class PlainWriter(TextWriter writer) : TextWriter
{
    private const char LineFeed = '\n';

    /// <inheritdoc/>
    public override Encoding Encoding => writer.Encoding;

    /// <inheritdoc/>
    public override void Write(char value)
    {
        if (value is LineFeed || char.IsSurrogate(value))
        {
            writer.Write(value);
        }
        else
        {
            writer.Write(PlainLine.Of(value.ToString()));
        }
    }

    /// <inheritdoc/>
    public override void Write(string? value) => writer.Write(PlainLine.Lines((value ?? "").Replace("\r\n", "\n", StringComparison.Ordinal)));

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => Write(new string(buffer));

    /// <inheritdoc/>
    public override void WriteLine() => writer.WriteLine();

    /// <inheritdoc/>
    public override void WriteLine(string? value)
    {
        Write(value);
        writer.WriteLine();
    }

    /// <inheritdoc/>
    public override void Flush() => writer.Flush();
}
