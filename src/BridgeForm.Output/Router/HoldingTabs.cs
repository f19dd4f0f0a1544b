using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Router;

/// <summary>
/// Places where the outline is not cut to the bottom, so that pieces do not come loose: closed rectangles across the end cuts
/// on a layer of their own, whose name says how high the wood is left standing. Long edges are not cut and need none.
/// Sizes: common practice, no source.
/// </summary>
internal static class HoldingTabs
{
    /// <summary>Wood left standing, metres.</summary>
    public const double Height = 0.003;

    private const double Length = 0.012;

    // An end nearer than this to the board's own has no wood beyond it to hold to. Metres.
    private const double Margin = 0.003;

    // Wider ends get two tabs. Metres.
    private const double WideEnd = 0.15;

    /// <summary>Tabs of a board's pieces, in order; none at the board's own ends, where there is no wood to hold to.</summary>
    public static ImmutableArray<SheetEntity> Place(ImmutableArray<NestedPiece> pieces, double boardLength, RouterLayers layers)
    {
        var tabs = new List<SheetPolyline>();
        foreach (var nested in pieces.Where(p => p.Setup.IsWide))
        {
            var bit = nested.Setup.Bit.Diameter;
            var outline = RouterOutline.Draw(nested.Piece, RouterFaces.View(nested.Setup.FaceUp), bit);
            var (dx, low, high) = (nested.Start - outline.Min(v => v.X), outline.Min(v => v.Y), outline.Max(v => v.Y));
            foreach (var end in Ends(outline, low, high))
            {
                tabs.AddRange(Across(end, dx, -low, bit, layers)
                    .Where(t => t.At.X > Margin && t.At.X < boardLength - Margin && !tabs.Any(other => Holds(other, t.At)))
                    .Select(t => t.Tab));
            }
        }

        return [.. tabs];
    }

    /// <summary>Whether a tab already reaches over a place: neighbours a cut apart share one.</summary>
    private static bool Holds(SheetPolyline tab, SheetPoint at) =>
        at.X > tab.Vertices.Min(v => v.X) && at.X < tab.Vertices.Max(v => v.X)
        && at.Y > tab.Vertices.Min(v => v.Y) && at.Y < tab.Vertices.Max(v => v.Y);

    /// <summary>The straight edges that run from one long edge to the other.</summary>
    private static IEnumerable<(SheetVertex From, SheetVertex To)> Ends(
        ImmutableArray<SheetVertex> outline, double low, double high)
    {
        for (var i = 0; i < outline.Length; i++)
        {
            var (from, to) = (outline[i], outline[(i + 1) % outline.Length]);
            if (Math.Abs(to.Y - from.Y) > (high - low) / 2)
            {
                yield return (from, to);
            }
        }
    }

    /// <summary>Tabs of an end: one bit's width into the piece, and out of it over the cut and a bit's width beyond.</summary>
    private static IEnumerable<(SheetPoint At, SheetPolyline Tab)> Across(
        (SheetVertex From, SheetVertex To) end, double dx, double dy, double bit, RouterLayers layers)
    {
        var (ex, ey) = (end.To.X - end.From.X, end.To.Y - end.From.Y);
        var length = Math.Sqrt((ex * ex) + (ey * ey));
        var (ux, uy) = (ex / length, ey / length);
        double[] places = length > WideEnd ? [0.25, 0.75] : [0.5];
        foreach (var share in places)
        {
            var (x, y) = (end.From.X + (share * ex) + dx, end.From.Y + (share * ey) + dy);
            SheetVertex Corner(double along, double outward) =>
                new(x + (along * ux) + (outward * uy), y + (along * uy) - (outward * ux));
            yield return (new SheetPoint(x, y), new SheetPolyline(
                layers.LeaveOf(Height),
                [Corner(-Length / 2, -bit), Corner(-Length / 2, 2 * bit), Corner(Length / 2, 2 * bit), Corner(Length / 2, -bit)],
                true));
        }
    }
}
