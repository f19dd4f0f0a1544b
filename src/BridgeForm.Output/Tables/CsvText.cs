using System.Text;

namespace BridgeForm.Output.Tables;

/// <summary>
/// A table as comma-separated text after RFC 4180, with LF line ends: every row has as many fields as the head, and a field
/// with a comma, a quote or a line end stands in quotes.
/// </summary>
internal static class CsvText
{
    /// <summary>Characters that force quotes.</summary>
    private static readonly System.Buffers.SearchValues<char> Special = System.Buffers.SearchValues.Create(",\"\r\n");

    /// <summary>Head, rows, and a last row that says the caution in its first field.</summary>
    public static string Of(IReadOnlyList<string> head, IEnumerable<IReadOnlyList<string>> rows)
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

    private static string Field(string value) => value.AsSpan().ContainsAny(Special)
        ? "\"" + value.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
        : value;
}
