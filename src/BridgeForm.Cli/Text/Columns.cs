namespace BridgeForm.Cli.Text;

/// <summary>Plain text in columns, at most 100 characters wide.</summary>
internal static class Columns
{
    /// <summary>Widest line.</summary>
    public const int Width = 100;

    /// <summary>A label and its value.</summary>
    public static void Row(TextWriter output, string label, string value) =>
        Wrapped(output, $"{label,-18}{value}", "", new string(' ', 18));

    /// <summary>A table: the first column to the left, the others to the right, each as wide as its widest cell.</summary>
    public static void Table(TextWriter output, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        var widths = Enumerable.Range(0, rows[0].Count).Select(i => rows.Max(r => r[i].Length)).ToList();
        foreach (var row in rows)
        {
            var cells = row.Select((cell, i) => i == 0 ? cell.PadRight(widths[i]) : cell.PadLeft(widths[i]));
            output.WriteLine(string.Join("  ", cells).TrimEnd());
        }

        output.WriteLine();
    }

    /// <summary>Words in lines of at most 100 characters.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="text">Words; spaces at its beginning and between columns stay in the first line.</param>
    /// <param name="indent">Of the first line.</param>
    /// <param name="further">Of further lines; as the first when null.</param>
    public static void Wrapped(TextWriter output, string text, string indent, string? further = null)
    {
        var rest = indent + text;
        while (rest.Length > Width)
        {
            var start = (further ?? indent).Length;
            var cut = rest.LastIndexOf(' ', Width);
            if (cut <= start)
            {
                cut = rest.IndexOf(' ', Width);
            }

            if (cut < 0)
            {
                break;
            }

            output.WriteLine(rest[..cut].TrimEnd());
            rest = (further ?? indent) + rest[cut..].TrimStart();
        }

        output.WriteLine(rest.TrimEnd());
    }
}
