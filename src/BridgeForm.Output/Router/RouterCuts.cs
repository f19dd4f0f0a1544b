using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Router;

/// <summary>Everything a router cuts of one piece, in the face that is up.</summary>
/// <param name="System">Unit of the depths in the layers' names.</param>
/// <param name="Engrave">Write the mark into the face.</param>
internal sealed record RouterCuts(UnitSystem System, bool Engrave)
{
    private readonly RouterLayers _layers = new(System);

    /// <summary>
    /// The piece's outline, what is cleared and drilled, and its mark, with the outline's lower left corner at the origin. Long
    /// edges are the stock's own and are not cut; with a narrow face up nor are the ends, which the saw has made.
    /// </summary>
    /// <param name="piece">A routable piece.</param>
    /// <param name="setup">How it lies.</param>
    public ImmutableArray<SheetEntity> Draw(Piece piece, RouterSetup setup)
    {
        var (view, bit) = (RouterFaces.View(setup.FaceUp), setup.Bit.Diameter);
        var outline = RouterOutline.Draw(piece, view, bit);
        var (dx, dy) = (-outline.Min(v => v.X), -outline.Min(v => v.Y));
        var (low, high) = (0.0, outline.Max(v => v.Y) + dy);
        SheetPolyline Placed(string layer, IEnumerable<SheetVertex> line, bool closed = true) =>
            new(layer, [.. line.Select(v => v with { X = v.X + dx, Y = v.Y + dy })], closed);
        SheetEntity[] cuts =
        [
            Placed(setup.IsWide ? RouterLayers.Piece : RouterLayers.Blank, outline),
            .. setup.IsWide ? EndSlots.Draw(piece, view, bit).Select(slot => Placed(RouterLayers.Through, slot)) : [],
            .. setup.IsWide ? RouterOutline.Notches(piece, view, bit).Select(notch => Placed(RouterLayers.Through, notch)) : [],
            .. piece.Shape.Channels.Where(c => c.Face == setup.FaceUp).Select(c => Pocket(c, dx, low - (bit / 2), high + (bit / 2))),
            .. piece.Shape.Holes.Select(h => new SheetCircle(
                _layers.HoleOf(h.Depth), new SheetPoint(h.X + dx, Across(h, view) + dy), h.Diameter / 2)),
            .. Engrave ? Engraving.Draw(piece, view).Select(s => Placed(s.Layer, s.Vertices, closed: false)) : [],
        ];
        return [.. cuts.Distinct()];
    }

    /// <summary>A hole's place across the face on the page; its own axis is +Z on a narrow face and +Y on a wide one.</summary>
    public static double Across(Hole hole, PageView view) =>
        (hole.Face is StockFace.MinusY or StockFace.PlusY ? view.Up.Z : view.Up.Y) * hole.Across;

    /// <summary>
    /// A channel in the face that is up. It runs out of the wood at both sides, so the pocket goes on past the edges by the
    /// bit's radius: the bit's axis reaches the edge and its round corners stay outside the wood.
    /// </summary>
    private SheetPolyline Pocket(Channel channel, double dx, double low, double high)
    {
        var (from, to) = (channel.Center - (channel.Width / 2) + dx, channel.Center + (channel.Width / 2) + dx);
        return new SheetPolyline(
            _layers.ClearOf(channel.Depth),
            [new(from, low), new(to, low), new(to, high), new(from, high)],
            true);
    }
}

/// <summary>
/// The cuts that part a piece from its stick, as slots beside it that are cleared through. Each goes on past both long edges, so
/// that the bit's round corners stay outside the wood.
/// </summary>
internal static class EndSlots
{
    // A slot of exactly the bit's width leaves a machine's own programme no path; 5 % more does. Common practice, no source.
    private const double Oversize = 1.05;

    /// <summary>Width of a slot for a bit of that diameter, metres.</summary>
    public static double Width(double bit) => Oversize * bit;

    /// <summary>How far the slot of an end reaches along the stick beyond the piece's long point, metres.</summary>
    /// <param name="end">Plane of the end, square to the face that is up.</param>
    /// <param name="bit">Diameter of the router bit, metres.</param>
    public static double Reach(Plane end, double bit) => Width(bit) / Math.Abs(end.Normal.X);

    /// <summary>Counter-clockwise, in the axes of the view; the near end's first.</summary>
    public static IEnumerable<ImmutableArray<SheetVertex>> Draw(Piece piece, PageView view, double bit)
    {
        var face = StickFace.Draw(piece.Shape, piece.BlankLength, view);
        var half = piece.Shape.Width / 2;
        return Enumerable.Range(0, face.Length)
            .Select(i => (From: face[i], To: face[(i + 1) % face.Length]))
            .Where(e => !(IsOn(e.From, half) && IsOn(e.To, half)) && !(IsOn(e.From, -half) && IsOn(e.To, -half)))
            .Select(e => Beside(e.From, e.To, bit))
            .OrderBy(slot => slot.Min(v => v.X));
    }

    private static bool IsOn(SheetPoint point, double edge) => Math.Abs(point.Y - edge) < Tolerances.RoundOff;

    /// <summary>The strip to the right of an edge, the wood being at its left.</summary>
    private static ImmutableArray<SheetVertex> Beside(SheetPoint from, SheetPoint to, double bit)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        var (ux, uy, width) = (dx / length, dy / length, Width(bit));

        // Past the edge by the bit's radius on the side of the waste too, where a mitre leaves the wood later.
        var past = (bit / 2) + (Math.Abs(uy) > Tolerances.SquareEdge ? width * Math.Abs(ux / uy) : 0);
        SheetVertex Corner(SheetPoint at, double along, double outward) =>
            new(at.X + (along * ux) + (outward * uy), at.Y + (along * uy) - (outward * ux));
        return [Corner(from, -past, 0), Corner(from, -past, width), Corner(to, past, width), Corner(to, past, 0)];
    }
}
