using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.Router;

/// <summary>Everything a router cuts of one piece, in the face that is up.</summary>
internal static class RouterCuts
{
    /// <summary>Outline, pockets and holes with the outline's lower left corner at the origin.</summary>
    /// <param name="piece">A routable piece.</param>
    /// <param name="setup">How it lies.</param>
    /// <param name="bit">Diameter of the router bit, metres.</param>
    public static ImmutableArray<SheetEntity> Of(Piece piece, RouterSetup setup, double bit)
    {
        var view = RouterFaces.View(setup.FaceUp);
        var outline = RouterOutline.Of(piece, view, bit);
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
