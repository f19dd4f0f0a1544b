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
        var edge = -half;
        for (var i = 0; i < outline.Length; i++)
        {
            var (from, to) = (outline[i], outline[(i + 1) % outline.Length]);
            if (Math.Abs(from.Y - edge) < Tolerances.RoundOff && Math.Abs(to.Y - edge) < Tolerances.RoundOff && from.X < low && to.X > high)
            {
                return outline.InsertRange(i + 1, Walls(channel, half, edge, bit));
            }
        }

        throw new InvalidOperationException("A channel of a routable piece does not lie in its edge.");
    }

    /// <summary>
    /// What is cleared for the channels in the edges: each notch, going on past the edge by the bit's radius, counter-clockwise.
    /// </summary>
    public static IEnumerable<ImmutableArray<SheetVertex>> Notches(Piece piece, PageView view, double bit)
    {
        var half = StickFace.Draw(piece.Shape, piece.BlankLength, view).Max(p => p.Y);
        foreach (var channel in piece.Shape.Channels)
        {
            var side = RouterFaces.Outward(channel.Face).Dot(view.Up);
            if (side < -0.5)
            {
                yield return Reversed(Walls(channel, half, -half - (bit / 2), bit));
            }
            else if (side > 0.5)
            {
                yield return Reversed(Turned(Walls(channel with { Center = -channel.Center }, half, -half - (bit / 2), bit)));
            }
        }
    }

    /// <summary>From the level <paramref name="mouth"/> up one wall, along the floor and down the other.</summary>
    private static ImmutableArray<SheetVertex> Walls(Channel channel, double half, double mouth, double bit)
    {
        var (low, high) = (channel.Center - (channel.Width / 2), channel.Center + (channel.Width / 2));
        var (floor, reach) = (channel.Depth - half, CornerRelief.Reach(bit));
        return
        [
            new SheetVertex(low, mouth),
            new SheetVertex(low, floor - reach, HalfCircle),
            new SheetVertex(low + reach, floor),
            new SheetVertex(high - reach, floor, HalfCircle),
            new SheetVertex(high, floor - reach),
            new SheetVertex(high, mouth),
        ];
    }

    /// <summary>The same line walked the other way: the way from a corner is then the way that led to it, bent to the other side.</summary>
    private static ImmutableArray<SheetVertex> Reversed(ImmutableArray<SheetVertex> line)
    {
        var back = ImmutableArray.CreateBuilder<SheetVertex>(line.Length);
        for (var i = line.Length - 1; i >= 0; i--)
        {
            var bulge = line[(i + line.Length - 1) % line.Length].Bulge;
            back.Add(line[i] with { Bulge = bulge is < 0 or > 0 ? -bulge : 0 });
        }

        return back.MoveToImmutable();
    }
}
