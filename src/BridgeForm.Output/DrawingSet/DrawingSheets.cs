using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary><c>drawings.pdf</c>: everything an inspector, an engineer and a crew read, drawn to scale from the model.</summary>
public static class DrawingSheets
{
    /// <summary>The whole set: cover, general arrangement, frames, details, bays, ropes, checks and cut list.</summary>
    public static SheetBook Draw(BridgeModel model)
    {
        var text = new DrawingText(model.Parameters.Units);
        var size = SheetSize.Choose(model.Parameters);
        var block = new TitleBlock(size, SheetWords.For(model, "Drawing set"), text);
        var context = new DrawingContext(model, new BridgeShapes(model), text, block.Body);
        ImmutableArray<DrawnPage> rest =
        [
            .. GeneralArrangement.Draw(context),
            .. FrameSheet.Draw(context),
            .. DetailSheet.Draw(context),
            .. BaySheet.Draw(context),
            .. RopeLists.Draw(context),
            .. CheckLists.Draw(context),
        ];
        ImmutableArray<string> numbers = [.. Numbered(rest)];
        ImmutableArray<DrawnPage> pages = [Cover.Draw(context, [.. numbers.Skip(1).Zip(rest, (n, p) => (n, p.Title))]), .. rest];
        return new SheetBook(
            $"{model.Parameters.Name}: drawing set",
            [.. pages.Select((p, i) => block.Page(p, numbers[i], i + 1, pages.Length))]);
    }

    /// <summary>The cover is G-1; the others count on in their series.</summary>
    private static IEnumerable<string> Numbered(ImmutableArray<DrawnPage> rest)
    {
        var counts = new Dictionary<string, int>(StringComparer.Ordinal) { [Cover.Series] = 1 };
        yield return Cover.Series + "-1";
        foreach (var page in rest)
        {
            var count = counts.GetValueOrDefault(page.Series) + 1;
            counts[page.Series] = count;
            yield return page.Series + "-" + count.ToString(CultureInfo.InvariantCulture);
        }
    }
}
