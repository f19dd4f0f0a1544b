using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Templates;

/// <summary>The first page of a book of templates: what is on which page, so that nobody prints what is not needed.</summary>
internal static class TemplateIndex
{
    private const double NumberWidth = 0.016;

    /// <summary>Content of as many pages as it takes.</summary>
    /// <param name="frame">Frame of these pages.</param>
    /// <param name="pages">What is on each page after them.</param>
    /// <param name="notPrinted">What is left out, a sentence each.</param>
    /// <param name="before">How many pages the index itself takes.</param>
    public static List<List<SheetEntity>> Draw(
        PageFrame frame, IReadOnlyList<List<string>> pages, ImmutableArray<string> notPrinted, int before)
    {
        var body = frame.Body;
        var width = body.MaxX - body.MinX;
        var leaves = new List<List<SheetEntity>> { new() };
        var top = body.MaxY;
        void Row(string number, IReadOnlyCollection<string> lines, bool bold = false)
        {
            var height = PageText.HeightOf(lines.Count, PageText.Normal);
            if (top - height < body.MinY)
            {
                leaves.Add([]);
                top = body.MaxY;
            }

            leaves[^1].AddRange(PageText.Column(body.MinX, top, [number], PageText.Normal, bold: true));
            leaves[^1].AddRange(PageText.Column(number.Length > 0 ? body.MinX + NumberWidth : body.MinX, top, lines, bold: bold));
            top -= height;
        }

        Row(string.Empty, ["What is on which page"], bold: true);
        foreach (var (from, to, words) in Ranges([.. pages.Select(p => string.Join("; ", Together(p)))]))
        {
            var numbers = (before + from + 1).ToString(CultureInfo.InvariantCulture)
                + (to > from ? "–" + (before + to + 1).ToString(CultureInfo.InvariantCulture) : "");
            Row(numbers, PageText.Wrapped(words, width - NumberWidth, PageText.Normal));
        }

        foreach (var sentence in notPrinted)
        {
            Row(string.Empty, PageText.Wrapped(sentence, width, PageText.Normal));
        }

        return leaves;
    }

    /// <summary>
    /// Pages one after the other with one drawing each, alike but for the mark before its first dot, in one line:
    /// <c>7–30 B1 to B24 · edge 2, channels and holes</c>.
    /// </summary>
    internal static IEnumerable<(int From, int To, string Words)> Ranges(IReadOnlyList<string> pages)
    {
        for (var from = 0; from < pages.Count;)
        {
            var to = from;
            while (to + 1 < pages.Count && Kind(pages[to + 1]) is { Length: > 0 } kind
                && string.Equals(kind, Kind(pages[from]), StringComparison.Ordinal))
            {
                to++;
            }

            yield return (from, to, to == from ? pages[from]
                : Marks(pages[from])
                    + (string.Equals(Marks(pages[from]), Marks(pages[to]), StringComparison.Ordinal) ? "" : " to " + Marks(pages[to]))
                    + Kind(pages[from]));
            from = to + 1;
        }
    }

    /// <summary>What a page shows, without the marks it shows it of; empty where it shows several things.</summary>
    private static string Kind(string page) =>
        page.Contains("; ", StringComparison.Ordinal) || page.IndexOf(" · ", StringComparison.Ordinal) is var dot && dot < 0 ? ""
            : page[dot..].Split(" (", 2)[0];

    private static string Marks(string page) => page[..page.IndexOf(" · ", StringComparison.Ordinal)];

    /// <summary>Sheets of one drawing under its name: <c>Story pole · sheets A1, B1 of 5</c>.</summary>
    private static IEnumerable<string> Together(IEnumerable<string> titles) => titles
        .Select(t => t.Split(" · sheet ", 2))
        .GroupBy(t => t[0], StringComparer.Ordinal)
        .Select(g => g.First().Length == 1 ? g.Key
            : $"{g.Key} · {(g.Count() > 1 ? "sheets" : "sheet")} {string.Join(", ", g.Select(t => t[1].Split(' ')[0]))} "
                + $"of {g.First()[1].Split(' ')[^1]}");
}
