using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.Router;

/// <summary>The line around a piece as the router follows it: ends, edges, and level channels in the edges as notches.</summary>
internal static class RouterOutline
{
    // Corners closer than this to an edge's line lie on it. Metres; round-off of clipping is some 1e-15.
    private const double OnEdge = 1e-9;

    // A half circle turns through 180°: tan(180° / 4), clockwise.
    private const double HalfCircle = -1;

    /// <summary>Counter-clockwise around the wood, in the axes of the view.</summary>
    /// <param name="piece">A routable piece.</param>
    /// <param name="view">The face that is up.</param>
    /// <param name="bit">Diameter of the router bit, metres.</param>
    public static ImmutableArray<SheetVertex> Of(Piece piece, PageView view, double bit)
    {
        var face = StickFace.Of(piece.Shape, piece.BlankLength, view);
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
            if (Math.Abs(from.Y - edge) < OnEdge && Math.Abs(to.Y - edge) < OnEdge && from.X < low && to.X > high)
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
