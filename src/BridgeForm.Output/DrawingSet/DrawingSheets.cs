using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary><c>drawings.pdf</c>: everything an inspector, an engineer and a crew read, drawn to scale from the model.</summary>
public static class DrawingSheets
{
    /// <summary>
    /// The whole set: cover, codes and loads, general arrangement, supports, frames, details, bays, rope ends, ropes, checks, cut list.
    /// </summary>
    public static SheetBook Draw(BridgeModel model)
    {
        var text = new DrawingText(model.Parameters.Units);
        var size = SheetSize.Choose(model.Parameters);
        var block = new TitleBlock(size, SheetWords.For(model, "Drawing set"), text, model.Parameters.Sheets);
        var context = new DrawingContext(model, new BridgeShapes(model), text, block.Body)
        {
            Enlargement = size.Enlargement,
            TitleInFull = !block.ShowsAll,
        };
        ImmutableArray<DrawnPage> rest =
        [
            .. CodeSheet.Draw(context),
            .. GeneralArrangement.Draw(context),
            .. SupportSheet.Draw(context),
            .. FrameSheet.Draw(context),
            .. DetailSheet.Draw(context),
            .. BaySheet.Draw(context),
            .. PartSheet.Draw(context),
            .. FittingsSheet.Draw(context),
            .. RopeLists.Draw(context),
            .. CheckLists.Draw(context),
        ];
        var cover = Cover.Draw(context, List(rest));
        if (cover.LacksPicture)
        {
            rest = [Cover.Picture(context), .. rest];
            cover = Cover.Draw(context, List(rest)) with { LacksPicture = true };
        }

        var pages = DetailMarks.Resolved([cover, .. rest]);
        return new SheetBook(
            $"{model.Parameters.Name}: drawing set", [.. pages.Select((p, i) => block.Page(p, i + 1, pages.Length))]);
    }

    private static ImmutableArray<(string Number, string Title)> List(ImmutableArray<DrawnPage> rest) =>
        [.. rest.Select((p, i) => ((i + 2).ToString(CultureInfo.InvariantCulture), p.Title))];
}

/// <summary>Types of document among the sheets (ISO 7200 asks for one on each).</summary>
internal static class DocumentType
{
    /// <summary>The whole bridge and what holds for all sheets.</summary>
    public const string General = "General drawing";

    /// <summary>Parts of the bridge, enlarged.</summary>
    public const string Detail = "Detail drawing";

    /// <summary>Tables.</summary>
    public const string List = "List";
}
