using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.ShopSheets;

/// <summary>
/// Every hole to drill, on the sheet of saw set-ups: a table for pieces that are drilled alike, to be set out with a tape from the near
/// end and from the arris of the way mark.
/// </summary>
internal static class DrillSheet
{
    private const string Notes = "After sawing. Along the stick from the long point of its near end, across from the edge named, which "
        + "meets the face at the way mark's arris where it can. Bolts go square through; steel plates, drilled first, are the guide. "
        + "Positions to the next 1/16 in or millimeter; where holes do not meet, ream them: a bolt that is driven splits the wood.";

    /// <summary>Tables on a page of their own; nothing where nothing is drilled.</summary>
    public static void Add(TablePages pages, BridgeModel model)
    {
        var uses = CutUse.Grouped(model.Pieces, CutKeys.OfHoles).ToList();
        if (uses.Count == 0)
        {
            return;
        }

        var words = new QuantityText(model.Parameters.Units);
        var tables = uses.Select(use => Table(use, words)).ToList();
        ImmutableArray<ImmutableArray<string>> all = [.. tables.SelectMany(t => t.Rows)];
        pages.BeginPage();
        pages.AddText([Notes]);
        foreach (var table in tables)
        {
            pages.Add(table with { Sizing = all });
        }
    }

    private static PageTable Table(CutUse use, QuantityText words) => new(
        string.Create(
            CultureInfo.InvariantCulture,
            $"Holes of {use.Pieces.Sum(p => p.Occurrences.Length)} {RoleTable.Of(use.First.Role).Many}, ")
            + string.Create(CultureInfo.InvariantCulture, $"{use.First.Shape.Holes.Length} each"),
        [use.Marks],
        ["Face", "Diameter", "Depth", "From near end", "Across"],
        [.. HoleRows.InOrder(use.First.Shape).Select(h => Row(use.First, h, words))]);

    private static ImmutableArray<string> Row(Piece piece, Solids.Hole hole, QuantityText words) =>
    [
        WrapAround.FaceName(hole.Face),
        words.Size(hole.Diameter),
        hole.Depth is { } depth ? words.Size(depth) : "through",
        words.Size(hole.X),
        $"{words.Size(HoleRows.FromEdge(piece.Shape, hole))} from {HoleRows.EdgeOf(hole)}",
    ];
}
