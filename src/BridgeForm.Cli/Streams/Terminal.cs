using System.Text;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Streams;

/// <summary>Where words for people go, as plain text.</summary>
/// <param name="output">Results.</param>
/// <param name="error">Errors, failing checks.</param>
/// <param name="name">What a person types in front of a command.</param>
internal sealed class Terminal(TextWriter output, TextWriter error, string name)
{
    /// <summary>What a person types in front of a command: what is to be run next is told with it.</summary>
    public string Name => name;

    /// <summary>Results.</summary>
    public TextWriter Out { get; } = new PlainWriter(output);

    /// <summary>Errors, failing checks.</summary>
    public TextWriter Error { get; } = new PlainWriter(error);

    /// <summary>
    /// A bar on standard error, when that is looked at by a person who has not asked for quiet, not written to a file or a pipe.
    /// It moves the cursor, so it writes past the plain text; its words are the program's own.
    /// </summary>
    public Progress Progress(bool quiet) =>
        new(error, !quiet && ReferenceEquals(error, Console.Error) && !Console.IsErrorRedirected, TimeProvider.System);
}

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
    public override void Write(string? value) =>
        writer.Write(PlainLine.Lines((value ?? "").Replace("\r\n", "\n", StringComparison.Ordinal)));

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

/// <summary>
/// Standard output and error. One that was closed before the program began must not be written to: the number may by now be
/// that of another open file.
/// </summary>
internal static class StandardStreams
{
    private const int OutputNumber = 1;
    private const int ErrorNumber = 2;
    private const int CloseOnExec = 1;

    /// <summary>Standard output.</summary>
    public static TextWriter Out => IsOpen(OutputNumber) ? Console.Out : new ClosedWriter("standard output");

    /// <summary>Standard error.</summary>
    public static TextWriter Error => IsOpen(ErrorNumber) ? Console.Error : new ClosedWriter("standard error");

    /// <summary>What a program is begun with is not marked to close when a program begins; what it opened since then is.</summary>
    private static bool IsOpen(int number) =>
        !OperatingSystem.IsLinux() || (LinuxCalls.FlagsOf(number) is >= 0 and var flags && (flags & CloseOnExec) == 0);

    private sealed class ClosedWriter(string name) : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException(name + " is closed");

        public override void Write(string? value) => throw new IOException(name + " is closed");
    }
}
