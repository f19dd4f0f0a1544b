namespace BridgeForm.Cli.Text;

/// <summary>Plain text in columns, at most 100 characters wide.</summary>
internal static class Columns
{
    /// <summary>Widest line.</summary>
    public const int Width = 100;

    /// <summary>Between columns.</summary>
    public const string Gap = "  ";

    /// <summary>A label and its value.</summary>
    public static void Row(TextWriter output, string label, string value) =>
        Wrapped(output, $"{label,-18}{value}", "", new string(' ', 18));

    /// <summary>
    /// A table: the first column to the left, the others to the right, each as wide as its widest cell. What does not fit
    /// beside them follows below, with the first column again.
    /// </summary>
    /// <param name="output">Where to.</param>
    /// <param name="rows">Cells, the heading first.</param>
    /// <param name="isLeft">Whether a further column stands to the left; none when null.</param>
    public static void Table(TextWriter output, IReadOnlyList<IReadOnlyList<string>> rows, Func<int, bool>? isLeft = null)
    {
        var widths = Enumerable.Range(0, rows[0].Count).Select(i => rows.Max(r => r[i].Length)).ToList();
        for (var from = 1; from < widths.Count;)
        {
            var to = from;
            var width = widths[0];
            while (to < widths.Count && (to == from || width + Gap.Length + widths[to] <= Width))
            {
                width += Gap.Length + widths[to];
                to++;
            }

            Part(output, rows, widths, from, to, isLeft ?? (_ => false));
            from = to;
        }
    }

    private static void Part(
        TextWriter output, IReadOnlyList<IReadOnlyList<string>> rows, List<int> widths, int from, int to, Func<int, bool> isLeft)
    {
        foreach (var row in rows)
        {
            var cells = Enumerable.Range(from, to - from)
                .Select(i => isLeft(i) ? row[i].PadRight(widths[i]) : row[i].PadLeft(widths[i]));
            output.WriteLine(string.Join(Gap, cells.Prepend(row[0].PadRight(widths[0]))).TrimEnd());
        }

        output.WriteLine();
    }

    /// <summary>Words in lines of at most so many characters.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="text">Words; spaces at its beginning and between columns stay in the first line.</param>
    /// <param name="indent">Of the first line.</param>
    /// <param name="further">Of further lines; as the first when null.</param>
    /// <param name="width">Characters in a line.</param>
    public static void Wrapped(TextWriter output, string text, string indent, string? further = null, int width = Width)
    {
        var lead = indent;
        var rest = text.AsSpan();
        while (lead.Length + rest.Length > width)
        {
            var room = width - lead.Length;
            var cut = rest[..(room + 1)].LastIndexOf(' ');
            if (lead.Length + cut <= (further ?? indent).Length)
            {
                cut = rest[room..].IndexOf(' ') is var after and >= 0 ? room + after : rest.Length;
            }

            Line(output, lead, rest[..cut]);
            lead = further ?? indent;
            rest = rest[cut..].TrimStart();
            if (rest.IsEmpty)
            {
                return;
            }
        }

        Line(output, lead, rest);
    }

    private static void Line(TextWriter output, string lead, ReadOnlySpan<char> words)
    {
        words = words.TrimEnd();
        output.Write(words.IsEmpty ? "" : lead);
        output.WriteLine(words);
    }
}
