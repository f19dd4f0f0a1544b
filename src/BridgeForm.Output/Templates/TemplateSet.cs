using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Output.Templates;

/// <summary>True-scale templates: a book a piece, and one for the whole set in which pieces with like cuts share them.</summary>
public static class TemplateSet
{
    /// <summary>Whether a piece has a template that is wanted.</summary>
    public static bool Needs(Piece piece, TemplateChoice choice) => choice.Asks(piece)
        ? CutKeys.Of(piece, PieceEnd.Near) is not null || CutKeys.Of(piece, PieceEnd.Far) is not null
            || CutKeys.OfFeatures(piece) is not null || CutKeys.OfRips(piece) is not null
        : IsOutOfReach(piece, PieceEnd.Near) || IsOutOfReach(piece, PieceEnd.Far) || CutKeys.OfFeatures(piece) is not null;

    // A square end out of the saw's reach is cut along a square's line: there is nothing to print for it.
    private static bool IsOutOfReach(Piece piece, PieceEnd end) => !piece.Cut(end).InReach && CutKeys.Of(piece, end) is not null;

    /// <summary>Templates of one piece.</summary>
    public static SheetBook Draw(BridgeModel model, Piece piece, DisplayUnits units, TemplateChoice choice) => BookLayout.Lay(
        [.. Blocks([piece], model.Parameters.Shop, units, choice)],
        PaperOf(model),
        SheetWords.For(model, $"Templates for {piece.Mark}, true size"));

    /// <summary>What is on which page; templates of all pieces, the gang layout of bases, and the story poles.</summary>
    public static SheetBook All(BridgeModel model, DisplayUnits units, TemplateChoice choice)
    {
        var paper = PaperOf(model);
        var words = SheetWords.For(model, "Templates, true size");
        ImmutableArray<TemplateBlock> blocks =
        [
            .. Blocks(model.Pieces, model.Parameters.Shop, units, choice),
            .. GangLayout.Draw(model, units, paper.IsRoll || choice.All),
            .. StoryPole.Draw(model, units, choice, paper.IsRoll),
        ];
        return BookLayout.LayWithIndex(blocks, paper, words, NotPrinted(model, choice));
    }

    /// <summary>What the set leaves out and how to have it, a sentence each.</summary>
    private static ImmutableArray<string> NotPrinted(BridgeModel model, TemplateChoice choice)
    {
        var left = model.Pieces.Where(p => !choice.Asks(p) && Needs(p, TemplateChoice.Everything)
            && (!Needs(p, choice) || CutKeys.HasMore(p))).Select(p => p.Mark).ToList();
        return left.Count == 0 ? [] :
        [
            $"Not printed, since the saw is set by saw-setups.pdf: templates of other cuts of {string.Join(", ", left)}. "
                + "All of them: make --templates all; of one piece: make --templates MARK.",
        ];
    }

    private static Paper PaperOf(BridgeModel model) => Paper.Named(model.Parameters.Shop.Paper);

    /// <summary>
    /// The face template and a square mark a plain cut; a compound one, and a bevel that the saw does not reach, gets a
    /// wrap-around one too.
    /// </summary>
    private static IEnumerable<TemplateBlock> Blocks(
        ImmutableArray<Piece> pieces, ShopParameters shop, DisplayUnits units, TemplateChoice choice)
    {
        foreach (var end in (PieceEnd[])[PieceEnd.Near, PieceEnd.Far])
        {
            var wanted = pieces.Where(p => choice.Asks(p) || !p.Cut(end).InReach);
            foreach (var use in CutUse.Grouped(wanted, p => CutKeys.Of(p, end)))
            {
                var cut = use.First.Cut(end);
                yield return EndFace.Draw(use, end, units);
                if (CutKeys.HasBevel(cut) && (CutKeys.HasMitre(cut) || !cut.InReach))
                {
                    yield return WrapAround.Draw(use, end, units);
                }
            }
        }

        foreach (var block in CutUse.Grouped(pieces, CutKeys.OfFeatures).SelectMany(use => ChannelWrap.Draw(use, units)))
        {
            yield return block;
        }

        foreach (var use in CutUse.Grouped(pieces.Where(choice.Asks), CutKeys.OfRips))
        {
            yield return RippedSection.Draw(use, units);
        }

        foreach (var end in (PieceEnd[])[PieceEnd.Near, PieceEnd.Far])
        {
            foreach (var use in CutUse.Grouped(pieces.Where(p => p.Cut(end).Wedge > 0), p => CutKeys.Of(p, end)))
            {
                yield return BlockPlan.Draw(use, end, shop, units);
            }
        }

        var wedges = pieces.SelectMany(p => new[] { (Piece: p, Cut: p.Near, IsNear: true), (Piece: p, Cut: p.Far, IsNear: false) })
            .Where(w => w.Cut.Wedge > 0)
            .GroupBy(w => CutKeys.Tenths(w.Cut.Wedge), StringComparer.Ordinal);
        foreach (var group in wedges)
        {
            var blocks = group.Select(w => TaperBlock.For(
                w.Piece.Shape.Width, w.Piece.Shape.Thickness, Math.Abs(w.Cut.Mitre), Math.Abs(w.Cut.Bevel), w.Cut.Wedge,
                CutWays.ThinAtBlade(w.IsNear, w.Cut), shop.Hold));
            yield return WedgeBlock.Draw(
                new CutUse([.. group.Select(w => w.Piece).Distinct()]), group.First().Cut, blocks.MaxBy(b => b.Length)!, units);
        }
    }
}

/// <summary>One drawing at true size with its heading; goes on a page, or on several when it is larger than one.</summary>
/// <param name="Title">Heading.</param>
/// <param name="Notes">What to know and do, a sentence each.</param>
/// <param name="Entities">The drawing, anywhere in the plane, on the layers of pages.</param>
internal sealed record TemplateBlock(string Title, ImmutableArray<string> Notes, ImmutableArray<SheetEntity> Entities)
{
    /// <summary>The same with less around it, taken where this one is larger than a sheet; null where nothing can be left out.</summary>
    public TemplateBlock? Shorter { get; init; }
}

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
