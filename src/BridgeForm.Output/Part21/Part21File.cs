using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace BridgeForm.Output.Part21;

/// <summary>Number of an entity in a file, by which later ones name it.</summary>
internal readonly record struct Ref(int Number);

/// <summary>
/// Writes the text form of ISO 10303-21 that STEP and IFC files have: a head, then entities one a line, numbered from 1, as they
/// come. Nothing is kept in memory but the line that is being written.
/// </summary>
internal sealed class Part21File : IDisposable
{
    // A file tells when it was made. The same project gives the same bytes, so this is no time at all.
    private const string NoTime = "2000-01-01T00:00:00";
    private const string Maker = "BridgeForm";
    private const int BufferCharacters = 1 << 16;

    private readonly StreamWriter _text;
    private readonly Stack<StringBuilder> _free = new();
    private int _last;

    /// <summary>Begins a file; the stream stays open. No person and no organisation is named.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="name">Name of the file.</param>
    /// <param name="descriptions">What it is, in plain words.</param>
    /// <param name="schema">Schema of its entities.</param>
    public Part21File(Stream stream, string name, IEnumerable<string> descriptions, string schema)
    {
        _text = new StreamWriter(stream, Encoding.ASCII, BufferCharacters, leaveOpen: true) { NewLine = "\n" };
        _text.WriteLine("ISO-10303-21;");
        _text.WriteLine("HEADER;");
        _text.WriteLine($"FILE_DESCRIPTION(({string.Join(',', descriptions.Select(Part21Text.Quoted))}),'2;1');");
        _text.WriteLine($"FILE_NAME({Part21Text.Quoted(name)},'{NoTime}',(''),(''),'{Maker}','{Maker}','');");
        _text.WriteLine($"FILE_SCHEMA(({Part21Text.Quoted(schema)}));");
        _text.WriteLine("ENDSEC;");
        _text.WriteLine("DATA;");
    }

    /// <summary>
    /// Adds an entity. Its holes are written as the format wants them, by their types: numbers, texts in quotes, references,
    /// lists. Entities added in a hole come before it.
    /// </summary>
    public Ref Add([InterpolatedStringHandlerArgument("")] Part21Line entity)
    {
        _text.Write('#');
        _text.Write((++_last).ToString(CultureInfo.InvariantCulture));
        _text.Write('=');
        foreach (var part in entity.Text.GetChunks())
        {
            _text.Write(part.Span);
        }

        _text.WriteLine(';');
        _free.Push(entity.Text.Clear());
        return new Ref(_last);
    }

    /// <summary>Ends the file.</summary>
    public void End()
    {
        _text.WriteLine("ENDSEC;");
        _text.WriteLine("END-ISO-10303-21;");
    }

    /// <summary>Writes what is still in the buffer.</summary>
    public void Dispose() => _text.Dispose();

    /// <summary>An empty text for an entity to come.</summary>
    internal StringBuilder Rent() => _free.TryPop(out var text) ? text : new StringBuilder();
}
