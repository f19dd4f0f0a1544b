using System.Collections.Frozen;
using System.Text;
using BridgeForm.Roles;

namespace BridgeForm.Output;

/// <summary>
/// A table as comma-separated text after RFC 4180, with LF line ends: every row has as many fields as the head, and a field
/// with a comma, a quote or a line end stands in quotes. Nothing in it is a formula to a spreadsheet, however the user's text
/// begins: an apostrophe goes before it.
/// </summary>
public static class CsvText
{
    /// <summary>Characters that force quotes.</summary>
    private static readonly System.Buffers.SearchValues<char> Special = System.Buffers.SearchValues.Create(",\"\r\n");

    private static readonly System.Buffers.SearchValues<char> FormulaStart = System.Buffers.SearchValues.Create("=+-@\t\r");

    private static readonly System.Buffers.SearchValues<char> Digits = System.Buffers.SearchValues.Create("0123456789.");

    private static readonly System.Buffers.SearchValues<char> Figures = System.Buffers.SearchValues.Create("0123456789.-/");

    private static readonly FrozenSet<string> Units = FrozenSet.Create(
        StringComparer.Ordinal, "in", "ft", "mm", "m", "lbf", "kN", "N", "lb", "kg", "F", "C", "deg", "%");

    /// <summary>Head, rows, and a last row that says the caution in its first field.</summary>
    public static string Write(IReadOnlyList<string> head, IEnumerable<IReadOnlyList<string>> rows)
    {
        var text = new StringBuilder();
        Append(text, head, head.Count);
        foreach (var row in rows)
        {
            Append(text, row, head.Count);
        }

        Append(text, [Caution.Text], head.Count);
        return text.ToString();
    }

    private static void Append(StringBuilder text, IReadOnlyList<string> row, int fields)
    {
        for (var i = 0; i < fields; i++)
        {
            _ = i > 0 ? text.Append(',') : text;
            _ = i < row.Count ? text.Append(Field(row[i])) : text;
        }

        text.Append('\n');
    }

    /// <summary>A field that is the user's own text from its first character on: a name, an id, a source.</summary>
    public static string Users(string text) => text.Length > 0 && FormulaStart.Contains(text[0]) ? "'" + text : text;

    /// <summary>
    /// UTF-8; with its byte order mark where there is more than ASCII, which spreadsheets take for the machine's own code
    /// otherwise.
    /// </summary>
    public static byte[] Bytes(string text)
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: true);
        return Ascii.IsValid(text) ? utf8.GetBytes(text) : [.. utf8.GetPreamble(), .. utf8.GetBytes(text)];
    }

    /// <summary>
    /// A field as it is written. Texts of whose origin a table thinks nothing are looked at too: only what reads as a number or a
    /// quantity of ours may begin with a minus sign.
    /// </summary>
    private static string Field(string value) => Quoted(value.StartsWith('-') && IsQuantity(value.AsSpan(1)) ? value : Users(value));

    /// <summary>Figures, or figures and units in turn: <c>12.5</c>, <c>3 ft 4-1/2 in</c>.</summary>
    private static bool IsQuantity(ReadOnlySpan<char> text)
    {
        if (text.IndexOfAnyExcept(Digits) < 0)
        {
            return !text.IsEmpty;
        }

        var wantsUnit = false;
        foreach (var word in text.Split(' '))
        {
            var part = text[word];
            if (part.IsEmpty || (wantsUnit ? !Units.Contains(part.ToString()) : part.IndexOfAnyExcept(Figures) >= 0))
            {
                return false;
            }

            wantsUnit = !wantsUnit;
        }

        return !wantsUnit;
    }

    private static string Quoted(string value) => value.AsSpan().ContainsAny(Special)
        ? "\"" + value.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
        : value;
}
