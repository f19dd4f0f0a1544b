using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Router;

/// <summary>The line around a piece as the router follows it: ends, edges, and level channels in the edges as notches.</summary>
internal static class RouterOutline
{
    // A half circle turns through 180°: tan(180° / 4), clockwise.
    private const double HalfCircle = -1;

    /// <summary>Counter-clockwise around the wood, in the axes of the view.</summary>
    /// <param name="piece">A routable piece.</param>
    /// <param name="view">The face that is up.</param>
    /// <param name="bit">Diameter of the router bit, metres.</param>
    public static ImmutableArray<SheetVertex> Draw(Piece piece, PageView view, double bit)
    {
        var face = StickFace.Draw(piece.Shape, piece.BlankLength, view);
        var half = face.Max(p => p.Y);
        ImmutableArray<SheetVertex> outline = [.. face.Select(p => new SheetVertex(p.X, p.Y))];
        foreach (var channel in piece.Shape.Channels)
        {
            var side = RouterFaces.Outward(channel.Face).Dot(view.Up);
            outline = side < -0.5 ? Notched(outline, channel, half, bit)
                : side > 0.5 ? Turned(Notched(Turned(outline), channel with { Center = -channel.Center }, half, bit))
                : outline;
        }

        return outline;
    }

    /// <summary>Half a turn about the origin: what was the upper edge is the lower one.</summary>
    private static ImmutableArray<SheetVertex> Turned(ImmutableArray<SheetVertex> outline) =>
        [.. outline.Select(v => v with { X = -v.X, Y = -v.Y })];

    /// <summary>Puts a notch into the lower edge, with both inner corners relieved.</summary>
    private static ImmutableArray<SheetVertex> Notched(
        ImmutableArray<SheetVertex> outline, Channel channel, double half, double bit)
    {
        var (low, high) = (channel.Center - (channel.Width / 2), channel.Center + (channel.Width / 2));
        var (edge, floor) = (-half, channel.Depth - half);
        var reach = CornerRelief.Reach(bit);
        for (var i = 0; i < outline.Length; i++)
        {
            var (from, to) = (outline[i], outline[(i + 1) % outline.Length]);
            if (Math.Abs(from.Y - edge) < Tolerances.RoundOff && Math.Abs(to.Y - edge) < Tolerances.RoundOff && from.X < low && to.X > high)
            {
                ImmutableArray<SheetVertex> notch =
                [
                    new SheetVertex(low, edge),
                    new SheetVertex(low, floor - reach, HalfCircle),
                    new SheetVertex(low + reach, floor),
                    new SheetVertex(high - reach, floor, HalfCircle),
                    new SheetVertex(high, floor - reach),
                    new SheetVertex(high, edge),
                ];
                return outline.InsertRange(i + 1, notch);
            }
        }

        throw new InvalidOperationException("A channel of a routable piece does not lie in its edge.");
    }
}

/// <summary>Everything a router cuts of one piece, in the face that is up.</summary>
internal static class RouterCuts
{
    /// <summary>Outline, pockets and holes with the outline's lower left corner at the origin.</summary>
    /// <param name="piece">A routable piece.</param>
    /// <param name="setup">How it lies.</param>
    /// <param name="bit">Diameter of the router bit, metres.</param>
    public static ImmutableArray<SheetEntity> Draw(Piece piece, RouterSetup setup, double bit)
    {
        var view = RouterFaces.View(setup.FaceUp);
        var outline = RouterOutline.Draw(piece, view, bit);
        var (dx, dy) = (-outline.Min(v => v.X), -outline.Min(v => v.Y));
        var (low, high) = (0.0, outline.Max(v => v.Y) + dy);
        SheetEntity[] cuts =
        [
            new SheetPolyline(RouterLayers.Outline, [.. outline.Select(v => v with { X = v.X + dx, Y = v.Y + dy })], true),
            .. piece.Shape.Channels.Where(c => c.Face == setup.FaceUp).Select(c => Pocket(c, dx, low - (bit / 2), high + (bit / 2))),
            .. piece.Shape.Holes.Select(h => new SheetCircle(
                RouterLayers.DrillOf(h.Depth), new SheetPoint(h.X + dx, Across(h, view) + dy), h.Diameter / 2)),
        ];
        return [.. cuts.Distinct()];
    }

    /// <summary>
    /// A channel in the face that is up. It runs out of the wood at both sides, so the pocket goes on past the edges by the
    /// bit's radius: the bit's axis reaches the edge and its round corners stay outside the wood.
    /// </summary>
    private static SheetPolyline Pocket(Channel channel, double dx, double low, double high)
    {
        var (from, to) = (channel.Center - (channel.Width / 2) + dx, channel.Center + (channel.Width / 2) + dx);
        return new SheetPolyline(
            RouterLayers.ChannelOf(channel.Depth),
            [new(from, low), new(to, low), new(to, high), new(from, high)],
            true);
    }

    /// <summary>A hole's place across the face on the page; its own axis is +Z on a narrow face and +Y on a wide one.</summary>
    private static double Across(Hole hole, PageView view) =>
        (hole.Face is StockFace.MinusY or StockFace.PlusY ? view.Up.Z : view.Up.Y) * hole.Across;
}
