using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BridgeForm.Solids;

namespace BridgeForm.Output.Usd;

/// <summary>Writes the text form of USD: things in things, each with its values, a value a line.</summary>
internal sealed class UsdText : IDisposable
{
    // A micrometre of metres; of a unit vector what keeps a corner five metres away within a hundredth of a micrometre.
    private const int PlaceDecimals = 6;
    private const int TurnDecimals = 9;
    private const string NumberFormat = "0.#########";
    private const int BufferCharacters = 1 << 16;
    private const int Indent = 4;

    private readonly StreamWriter _text;
    private int _depth;

    /// <summary>Begins a layer of one thing, metres, Y up; the stream stays open.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="root">Name of the thing.</param>
    /// <param name="comment">What it is, in plain words.</param>
    public UsdText(Stream stream, string root, string comment)
    {
        _text = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), BufferCharacters, leaveOpen: true)
        {
            NewLine = "\n",
        };
        _text.WriteLine("#usda 1.0");
        _text.WriteLine("(");
        _text.WriteLine($"    defaultPrim = \"{root}\"");
        _text.WriteLine($"    doc = {Quoted(comment)}");
        _text.WriteLine("    metersPerUnit = 1");
        _text.WriteLine("    upAxis = \"Y\"");
        _text.WriteLine(")");
    }

    /// <summary>A thing of a type, with what is in it.</summary>
    public void Thing(string type, string name, Action content) => Thing(type, name, [], content);

    /// <summary>A thing that also tells something about itself, line by line.</summary>
    public void Thing(string type, string name, ImmutableArray<string> about, Action content)
    {
        Line($"def {type} \"{Name(name)}\"" + (about.IsEmpty ? "" : " ("));
        foreach (var line in about)
        {
            Line("    " + line);
        }

        if (!about.IsEmpty)
        {
            Line(")");
        }

        Line("{");
        _depth++;
        content();
        _depth--;
        Line("}");
    }

    /// <summary>A line as it stands.</summary>
    public void Line(string line)
    {
        for (var i = 0; i < _depth * Indent; i++)
        {
            _text.Write(' ');
        }

        _text.WriteLine(line);
    }

    /// <summary>Writes what is still in the buffer.</summary>
    public void Dispose() => _text.Dispose();

    /// <summary>A name that may stand in a path: letters, digits and underscores.</summary>
    public static string Name(string text) => string.Concat(text.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '_'));

    /// <summary>A text in quotes.</summary>
    public static string Quoted(string text) => '"' + text.Replace("\\", "\\\\", StringComparison.Ordinal)
        .Replace("\"", "\\\"", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal) + '"';

    /// <summary>A place or a direction.</summary>
    public static string Vector(Vector3d v, int decimals = PlaceDecimals) =>
        $"({Number(v.X, decimals)}, {Number(v.Y, decimals)}, {Number(v.Z, decimals)})";

    /// <summary>A placement as the four rows by which points are multiplied from the left.</summary>
    public static string Matrix(Placement at)
    {
        static string Row(Vector3d v, int decimals, int last) =>
            $"({Number(v.X, decimals)}, {Number(v.Y, decimals)}, {Number(v.Z, decimals)}, {Number(last, 0)})";
        return $"( {Row(at.X, TurnDecimals, 0)}, {Row(at.Y, TurnDecimals, 0)}, {Row(at.Z, TurnDecimals, 0)}, "
            + $"{Row(at.Origin, TurnDecimals, 1)} )";
    }

    /// <summary>A number to so many decimals.</summary>
    public static string Number(double value, int decimals = PlaceDecimals) =>
        Numbers.Rounded(value, decimals).ToString(NumberFormat, CultureInfo.InvariantCulture);
}
