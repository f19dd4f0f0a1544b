using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
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
    public static SheetBook Draw(BridgeModel model, Piece piece, DisplayUnits units) => BookLayout.Lay(
        [.. Blocks([piece], units)], PaperOf(model), SheetWords.For(model, $"Templates for {piece.Mark}, true size"));

    /// <summary>Templates of all pieces, the gang layout of bases, and the story poles.</summary>
    public static SheetBook All(BridgeModel model, DisplayUnits units) => BookLayout.Lay(
        [.. Blocks(model.Pieces, units), .. GangLayout.Draw(model, units), .. StoryPole.Draw(model, units)],
        PaperOf(model),
        SheetWords.For(model, "Templates, true size"));

    private static Paper PaperOf(BridgeModel model) => Paper.Named(model.Parameters.Shop.Paper);

    /// <summary>
    /// A plain mitre is marked by the face template and a try square, a plain bevel by the wrap-around one; compound cuts, and cuts
    /// out of the saw's reach, get both.
    /// </summary>
    private static IEnumerable<TemplateBlock> Blocks(ImmutableArray<Piece> pieces, DisplayUnits units)
    {
        foreach (var end in (PieceEnd[])[PieceEnd.Near, PieceEnd.Far])
        {
            foreach (var use in CutUse.Grouped(pieces, p => CutKeys.Of(p, end)))
            {
                var cut = use.First.Cut(end);
                if (CutKeys.HasMitre(cut) || !cut.InReach)
                {
                    yield return EndFace.Draw(use, end, units);
                }

                if (CutKeys.HasBevel(cut) || !cut.InReach)
                {
                    yield return WrapAround.Draw(use, end, units);
                }
            }
        }

        foreach (var block in CutUse.Grouped(pieces, CutKeys.OfFeatures).SelectMany(use => ChannelWrap.Draw(use, units)))
        {
            yield return block;
        }

        foreach (var use in CutUse.Grouped(pieces, CutKeys.OfRips))
        {
            yield return RippedSection.Draw(use, units);
        }

        var wedges = pieces.SelectMany(p => new[] { (Piece: p, Cut: p.Near), (Piece: p, Cut: p.Far) })
            .Where(w => w.Cut.Wedge > 0 && !w.Cut.NeedsTemplate)
            .GroupBy(w => CutKeys.Tenths(w.Cut.Wedge), StringComparer.Ordinal);
        foreach (var group in wedges)
        {
            yield return WedgeBlock.Draw(new CutUse([.. group.Select(w => w.Piece).Distinct()]), group.First().Cut, units);
        }
    }
}

/// <summary>One drawing at true size with its heading; goes on a page, or on several when it is larger than one.</summary>
/// <param name="Title">Heading.</param>
/// <param name="Notes">What to know and do, a sentence each.</param>
/// <param name="Entities">The drawing, anywhere in the plane, on the layers of pages.</param>
internal sealed record TemplateBlock(string Title, ImmutableArray<string> Notes, ImmutableArray<SheetEntity> Entities);

/// <summary>The end grain of a piece that is ripped along its length: what is kept of the stock's section, at true size.</summary>
internal static class RippedSection
{
    /// <summary>The template, seen from the far end towards the near one: Y to the right, Z up.</summary>
    public static TemplateBlock Draw(CutUse use, DisplayUnits units)
    {
        var shape = use.First.Shape;
        var (halfY, halfZ) = (shape.Width / 2, shape.Thickness / 2);
        ImmutableArray<SheetPoint> stock = [new(-halfY, -halfZ), new(halfY, -halfZ), new(halfY, halfZ), new(-halfY, halfZ)];
        var middle = use.First.BlankLength / 2;
        var kept = shape.Rips.Aggregate(
            stock, (polygon, rip) => StickFace.Clipped(polygon, rip.Normal.Y, rip.Normal.Z, rip.Offset - (rip.Normal.X * middle)));
        var taper = Taper.Measure(use.First)!;
        return new TemplateBlock(
            $"{use.Marks} · end grain after ripping",
            [
                .. use.Notes(units),
                $"Ripped to a taper of {Numbers.DegreeText(taper.Angle)}: {units.Length(taper.Thick)} at the thick edge, "
                    + $"{units.Length(taper.Thin)} at the thin edge, {units.Length(taper.Width)} from edge to edge. "
                    + "Rip long stock with a push stick and feather boards, then cut to length.",
            ],
            [
                Ring(PageLayers.Hidden, stock),
                Ring(PageLayers.Accent, kept),
                PageText.Centered(0, halfZ + 0.002, "face up", PageText.Small),
            ]);
    }

    private static SheetPolyline Ring(string layer, ImmutableArray<SheetPoint> points) =>
        new(layer, [.. points.Select(p => new SheetVertex(p.X, p.Y))], Closed: true);
}
