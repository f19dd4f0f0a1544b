using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Templates;

/// <summary>The first page of a book of templates: what is on which page, so that nobody prints what is not needed.</summary>
internal static class TemplateIndex
{
    private const double NumberWidth = 0.012;

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
        for (var i = 0; i < pages.Count; i++)
        {
            Row(
                (before + i + 1).ToString(CultureInfo.InvariantCulture),
                PageText.Wrapped(string.Join("; ", Together(pages[i])), width - NumberWidth, PageText.Normal));
        }

        foreach (var sentence in notPrinted)
        {
            Row(string.Empty, PageText.Wrapped(sentence, width, PageText.Normal));
        }

        return leaves;
    }

    /// <summary>Sheets of one drawing under its name: <c>Story pole · sheets A1, B1 of 5</c>.</summary>
    private static IEnumerable<string> Together(IEnumerable<string> titles) => titles
        .Select(t => t.Split(" · sheet ", 2))
        .GroupBy(t => t[0], StringComparer.Ordinal)
        .Select(g => g.First().Length == 1 ? g.Key
            : $"{g.Key} · {(g.Count() > 1 ? "sheets" : "sheet")} {string.Join(", ", g.Select(t => t[1].Split(' ')[0]))} "
                + $"of {g.First()[1].Split(' ')[^1]}");
}
