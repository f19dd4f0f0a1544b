using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;

namespace BridgeForm.Output.Templates;

/// <summary>True-scale templates: a book a piece, and one for the whole set in which pieces with like cuts share them.</summary>
public static class TemplateSet
{
    /// <summary>The piece has a cut other than square, a channel or a hole.</summary>
    public static bool Needs(Piece piece) =>
        CutKeys.Of(piece, PieceEnd.Near) is not null || CutKeys.Of(piece, PieceEnd.Far) is not null
        || CutKeys.OfFeatures(piece) is not null || CutKeys.OfRips(piece) is not null;

    /// <summary>Templates of one piece.</summary>
    public static SheetBook Of(BridgeModel model, Piece piece, PeopleUnits units) => BookLayout.Of(
        [.. Blocks([piece], units)], PaperOf(model), SheetWords.Of(model, $"Templates for {piece.Mark}, true size"));

    /// <summary>Templates of all pieces, the gang layout of bases, and the story poles.</summary>
    public static SheetBook All(BridgeModel model, PeopleUnits units) => BookLayout.Of(
        [.. Blocks(model.Pieces, units), .. GangLayout.Of(model, units), .. StoryPole.Of(model, units)],
        PaperOf(model),
        SheetWords.Of(model, "Templates, true size"));

    private static Paper PaperOf(BridgeModel model) => Paper.Of(model.Parameters.Shop.Paper);

    /// <summary>
    /// A plain mitre is marked by the face template and a try square, a plain bevel by the wrap-around one; compound cuts, and cuts
    /// out of the saw's reach, get both.
    /// </summary>
    private static IEnumerable<TemplateBlock> Blocks(ImmutableArray<Piece> pieces, PeopleUnits units)
    {
        foreach (var end in (PieceEnd[])[PieceEnd.Near, PieceEnd.Far])
        {
            foreach (var use in CutUse.Grouped(pieces, p => CutKeys.Of(p, end)))
            {
                var cut = use.First.Cut(end);
                if (CutKeys.HasMitre(cut) || !cut.InReach)
                {
                    yield return EndFace.Of(use, end, units);
                }

                if (CutKeys.HasBevel(cut) || !cut.InReach)
                {
                    yield return WrapAround.Of(use, end, units);
                }
            }
        }

        foreach (var block in CutUse.Grouped(pieces, CutKeys.OfFeatures).SelectMany(use => ChannelWrap.Of(use, units)))
        {
            yield return block;
        }

        foreach (var use in CutUse.Grouped(pieces, CutKeys.OfRips))
        {
            yield return RippedSection.Of(use, units);
        }

        var wedges = pieces.SelectMany(p => new[] { (Piece: p, Cut: p.Near), (Piece: p, Cut: p.Far) })
            .Where(w => w.Cut.Wedge > 0 && !w.Cut.NeedsTemplate)
            .GroupBy(w => CutKeys.Tenths(w.Cut.Wedge), StringComparer.Ordinal);
        foreach (var group in wedges)
        {
            yield return WedgeBlock.Of(new CutUse([.. group.Select(w => w.Piece).Distinct()]), group.First().Cut, units);
        }
    }
}
