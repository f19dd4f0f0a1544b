using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>A long face of a stick of stock, by the direction it looks in the piece's own axes.</summary>
public enum StockFace
{
    /// <summary>The narrow face at the low end of Y.</summary>
    MinusY,

    /// <summary>The narrow face at the high end of Y.</summary>
    PlusY,

    /// <summary>The wide face at the low end of Z.</summary>
    MinusZ,

    /// <summary>The wide face at the high end of Z.</summary>
    PlusZ,
}

/// <summary>
/// A channel across a stick: two walls square to X and a floor that may slope along the channel. It runs through the
/// whole stick, from side to side.
/// </summary>
/// <param name="Face">The face it is cut into; <see cref="StockFace.MinusY"/> or <see cref="StockFace.MinusZ"/>.</param>
/// <param name="Center">X of its centre line, metres, in the piece's axes.</param>
/// <param name="Width">Wall to wall, metres.</param>
/// <param name="Depth">From the face to the floor in the middle of the stick, metres.</param>
/// <param name="FloorSlope">
/// Rise of the floor away from <paramref name="Face"/> per metre along the other cross axis (+Z for a channel in
/// <see cref="StockFace.MinusY"/>, +Y for one in <see cref="StockFace.MinusZ"/>); 0 for a level floor.
/// </param>
public sealed record Channel(StockFace Face, double Center, double Width, double Depth, double FloorSlope);

/// <summary>A round hole drilled square into a long face of a stick.</summary>
/// <param name="Face">The face the bit enters.</param>
/// <param name="X">Place along the piece's X axis, metres.</param>
/// <param name="Across">Place from the middle of the face along its cross axis (+Z on a Y face, +Y on a Z face), metres.</param>
/// <param name="Diameter">Diameter, metres.</param>
/// <param name="Depth">Depth of the blind hole, metres; <c>null</c> when drilled through.</param>
public sealed record Hole(StockFace Face, double X, double Across, double Diameter, double? Depth);

/// <summary>
/// A stick of rectangular stock along X, centred on Y = 0 and Z = 0, with every cut that makes a member of it: data for
/// drawings, and the recipe of the solid. Lengths in metres, in the piece's own axes.
/// </summary>
/// <param name="Width">Size along Y, metres.</param>
/// <param name="Thickness">Size along Z, metres.</param>
/// <param name="Near">End plane at low X; its normal points out of the wood (X component negative).</param>
/// <param name="Far">End plane at high X; its normal points out of the wood (X component positive).</param>
public sealed record CutStock(double Width, double Thickness, Plane Near, Plane Far)
{
    /// <summary>Further planes that take wood off along the stick (tapers); normals point out of the wood.</summary>
    public ImmutableArray<Plane> Rips { get; init; } = [];

    /// <summary>Bought round: its <see cref="Rips"/> are faces of the stock, as many as stand for the curve, and no cuts.</summary>
    public bool IsRound { get; init; }

    /// <summary>Channels, in order of X.</summary>
    public ImmutableArray<Channel> Channels { get; init; } = [];

    /// <summary>Round holes.</summary>
    public ImmutableArray<Hole> Holes { get; init; } = [];
}

/// <summary>What can be told of a cut stick without building its solid.</summary>
public static class CutStockMeasures
{
    /// <summary>
    /// Range of X between the long points of the two ends, metres: the blank, as far as only the two end planes cut it.
    /// </summary>
    public static (double Near, double Far) LengthRange(this CutStock stock)
    {
        double near = double.PositiveInfinity, far = double.NegativeInfinity;
        foreach (var y in (ReadOnlySpan<double>)[-stock.Width / 2, stock.Width / 2])
        {
            foreach (var z in (ReadOnlySpan<double>)[-stock.Thickness / 2, stock.Thickness / 2])
            {
                near = Math.Min(near, stock.Near.XAt(y, z));
                far = Math.Max(far, stock.Far.XAt(y, z));
            }
        }

        return (near, far);
    }

    /// <summary>
    /// Shortest and longest of the four long edges of the stick between its two end planes, metres: what a rule laid along an
    /// edge reads. 0 for an edge that the end planes cut away whole.
    /// </summary>
    public static (double Short, double Long) EdgeLengths(this CutStock stock)
    {
        double least = double.PositiveInfinity, most = 0;
        foreach (var y in (ReadOnlySpan<double>)[-stock.Width / 2, stock.Width / 2])
        {
            foreach (var z in (ReadOnlySpan<double>)[-stock.Thickness / 2, stock.Thickness / 2])
            {
                var edge = Math.Max(0, stock.Far.XAt(y, z) - stock.Near.XAt(y, z));
                (least, most) = (Math.Min(least, edge), Math.Max(most, edge));
            }
        }

        return (least, most);
    }

    /// <summary>X where a plane that is not parallel to X meets the line (y, z), metres.</summary>
    public static double XAt(this Plane plane, double y, double z) =>
        (plane.Offset - (plane.Normal.Y * y) - (plane.Normal.Z * z)) / plane.Normal.X;

    /// <summary>Whether only its two end planes cut it, and these do not meet inside the section: a plain hexahedron.</summary>
    public static bool IsPlainPrism(this CutStock stock)
    {
        if (!stock.Rips.IsEmpty || !stock.Channels.IsEmpty)
        {
            return false;
        }

        foreach (var y in (ReadOnlySpan<double>)[-stock.Width / 2, stock.Width / 2])
        {
            foreach (var z in (ReadOnlySpan<double>)[-stock.Thickness / 2, stock.Thickness / 2])
            {
                if (!(stock.Far.XAt(y, z) - stock.Near.XAt(y, z) > Tolerances.ShortestStick))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Where a hole's axis enters the wood and where it ends, in the piece's axes.</summary>
    public static (Vector3d Entry, Vector3d Bottom) HoleAxis(this CutStock stock, Hole hole)
    {
        var onY = hole.Face is StockFace.MinusY or StockFace.PlusY;
        var sign = hole.Face is StockFace.PlusY or StockFace.PlusZ ? 1 : -1;
        var size = onY ? stock.Width : stock.Thickness;
        var at = sign * size / 2;
        var end = at - (sign * (hole.Depth ?? size));
        return onY
            ? (new Vector3d(hole.X, at, hole.Across), new Vector3d(hole.X, end, hole.Across))
            : (new Vector3d(hole.X, hole.Across, at), new Vector3d(hole.X, hole.Across, end));
    }

    /// <summary>The same stick moved along its length, metres.</summary>
    public static CutStock ShiftedAlong(this CutStock stock, double x)
    {
        Plane Moved(Plane plane) => plane with { Offset = plane.Offset + (plane.Normal.X * x) };
        return stock with
        {
            Near = Moved(stock.Near),
            Far = Moved(stock.Far),
            Rips = [.. stock.Rips.Select(Moved)],
            Channels = [.. stock.Channels.Select(c => c with { Center = c.Center + x })],
            Holes = [.. stock.Holes.Select(h => h with { X = h.X + x })],
        };
    }

}

/// <summary>Volume of a cut stick in closed form, for the many parts whose solid is never built.</summary>
public static class CutStockVolume
{
    /// <summary>
    /// Volume in m³ of a stick that two end planes cut, less its channels and holes: section × length along the middle line
    /// (exact for planes that do not meet inside the section), channels and holes as boxes and cylinders. Holes must meet
    /// neither channels nor each other.
    /// </summary>
    public static double Prism(CutStock stock)
    {
        var area = stock.IsRound ? RoundStock.Area(stock.Width) : stock.Width * stock.Thickness;
        var volume = area * (stock.Far.XAt(0, 0) - stock.Near.XAt(0, 0));
        foreach (var channel in stock.Channels)
        {
            var across = channel.Face == StockFace.MinusY ? stock.Thickness : stock.Width;
            volume -= channel.Width * channel.Depth * across;
        }

        foreach (var hole in stock.Holes)
        {
            var depth = hole.Depth ?? (hole.Face is StockFace.MinusY or StockFace.PlusY ? stock.Width : stock.Thickness);
            volume -= Math.PI / 4 * hole.Diameter * hole.Diameter * depth;
        }

        return volume;
    }
}
