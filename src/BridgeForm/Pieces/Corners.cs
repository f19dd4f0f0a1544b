using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>
/// What two parts are compared by: every corner of the undrilled wood and the ends of every hole's axis, centred on the
/// corners' box. Metres.
/// </summary>
internal sealed class Corners
{
    private Corners(Vector3d[] points, int woodCount, HoleSize[] holes, Vector3d center, double length, double shapeSum)
    {
        Points = points;
        WoodCount = woodCount;
        Holes = holes;
        Center = center;
        Length = length;
        ShapeSum = shapeSum;
    }

    /// <summary>Corners of the wood, then entry and bottom of each hole; centred.</summary>
    public Vector3d[] Points { get; }

    /// <summary>How many of <see cref="Points"/> are corners of the wood.</summary>
    public int WoodCount { get; }

    /// <summary>Each hole but its place.</summary>
    public HoleSize[] Holes { get; }

    /// <summary>Centre of the box in the member's own axes.</summary>
    public Vector3d Center { get; }

    /// <summary>Size of the box along X.</summary>
    public double Length { get; }

    /// <summary>
    /// A sum that no rotation or mirroring of the part changes: how askew its ends are, or the corners' distances from the
    /// centre.
    /// </summary>
    public double ShapeSum { get; }

    /// <summary>How far <see cref="ShapeSum"/> of two parts can differ that agree at every corner within a tolerance.</summary>
    public double ShapeSumSlack(double tolerance) => (WoodCount == PrismCorners ? 4 : 2 * WoodCount) * tolerance;

    private const int PrismCorners = 8;

    /// <summary>
    /// Corners of a cut stick. <paramref name="wood"/> are those of its undrilled solid; null for a stick that only two end
    /// planes cut.
    /// </summary>
    public static Corners Find(CutStock stock, IReadOnlyList<Vector3d>? wood)
    {
        var corners = wood is null ? PrismPoints(stock) : [.. wood];
        var (min, max) = Box(corners);
        var center = 0.5 * (min + max);
        var points = new Vector3d[corners.Length + (2 * stock.Holes.Length)];
        for (var i = 0; i < corners.Length; i++)
        {
            points[i] = corners[i] - center;
        }

        for (var i = 0; i < stock.Holes.Length; i++)
        {
            var (entry, bottom) = stock.HoleAxis(stock.Holes[i]);
            points[corners.Length + (2 * i)] = entry - center;
            points[corners.Length + (2 * i) + 1] = bottom - center;
        }

        return new Corners(
            points, corners.Length, [.. stock.Holes.Select(h => new HoleSize(h.Diameter, h.Depth is null))], center, max.X - min.X,
            wood is null ? EndRanges(corners) : points.Take(corners.Length).Sum(p => p.Length));
    }

    /// <summary>
    /// The rotation that brings these corners onto the other's within the tolerance; null when there is none. With
    /// <paramref name="mirrored"/> it is this part's mirror image that is brought there.
    /// </summary>
    public Placement? TurnOnto(Corners other, ReadOnlySpan<Placement> turns, double tolerance, bool mirrored)
    {
        if (Points.Length != other.Points.Length || WoodCount != other.WoodCount)
        {
            return null;
        }

        foreach (var turn in turns)
        {
            if (Agrees(other, turn, tolerance, mirrored))
            {
                return turn;
            }
        }

        return null;
    }

    private bool Agrees(Corners other, Placement turn, double tolerance, bool mirrored)
    {
        for (var i = 0; i < WoodCount; i++)
        {
            var p = turn.DirectionToWorld(mirrored ? Symmetries.Mirrored(Points[i]) : Points[i]);
            if (!Near(other.Points, i, WoodCount, p, tolerance))
            {
                return false;
            }
        }

        for (var i = 0; i < Holes.Length; i++)
        {
            if (!HoleAgrees(other, turn, tolerance, mirrored, i))
            {
                return false;
            }
        }

        return true;
    }

    private bool HoleAgrees(Corners other, Placement turn, double tolerance, bool mirrored, int hole)
    {
        Vector3d Turned(Vector3d p) => turn.DirectionToWorld(mirrored ? Symmetries.Mirrored(p) : p);
        var entry = Turned(Points[WoodCount + (2 * hole)]);
        var bottom = Turned(Points[WoodCount + (2 * hole) + 1]);

        // A hole drilled right through is the same hole from either face.
        bool At(Vector3d first, Vector3d second) => (first - entry).Length <= tolerance && (second - bottom).Length <= tolerance;
        for (var j = 0; j < other.Holes.Length; j++)
        {
            var first = other.Points[WoodCount + (2 * j)];
            var second = other.Points[WoodCount + (2 * j) + 1];
            var same = Math.Abs(other.Holes[j].Diameter - Holes[hole].Diameter) <= tolerance
                && other.Holes[j].Through == Holes[hole].Through;
            if (same && (At(first, second) || (Holes[hole].Through && At(second, first))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Whether one of the first <paramref name="count"/> points lies at <paramref name="p"/>; looks at index
    /// <paramref name="guess"/> first.
    /// </summary>
    private static bool Near(Vector3d[] points, int guess, int count, Vector3d p, double tolerance)
    {
        var limit = tolerance * tolerance;
        for (var k = 0; k < count; k++)
        {
            var way = points[(guess + k) % count] - p;
            if (way.Dot(way) <= limit)
            {
                return true;
            }
        }

        return false;
    }

    private static Vector3d[] PrismPoints(CutStock stock)
    {
        var points = new Vector3d[PrismCorners];
        var k = 0;
        foreach (var y in (ReadOnlySpan<double>)[-stock.Width / 2, stock.Width / 2])
        {
            foreach (var z in (ReadOnlySpan<double>)[-stock.Thickness / 2, stock.Thickness / 2])
            {
                points[k] = new Vector3d(stock.Near.XAt(y, z), y, z);
                points[k + 4] = new Vector3d(stock.Far.XAt(y, z), y, z);
                k++;
            }
        }

        return points;
    }

    private static double EndRanges(Vector3d[] prism)
    {
        static double Range(ReadOnlySpan<Vector3d> end)
        {
            double low = end[0].X, high = low;
            foreach (var p in end)
            {
                low = Math.Min(low, p.X);
                high = Math.Max(high, p.X);
            }

            return high - low;
        }

        return Range(prism.AsSpan(0, 4)) + Range(prism.AsSpan(4, 4));
    }

    private static (Vector3d Min, Vector3d Max) Box(Vector3d[] points)
    {
        Vector3d min = points[0], max = points[0];
        foreach (var p in points)
        {
            min = new Vector3d(Math.Min(min.X, p.X), Math.Min(min.Y, p.Y), Math.Min(min.Z, p.Z));
            max = new Vector3d(Math.Max(max.X, p.X), Math.Max(max.Y, p.Y), Math.Max(max.Z, p.Z));
        }

        return (min, max);
    }

    /// <summary>A hole but its place.</summary>
    /// <param name="Diameter">Metres.</param>
    /// <param name="Through">Drilled right through.</param>
    internal readonly record struct HoleSize(double Diameter, bool Through);
}
