using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>
/// A hole as the drill makes it: a cylinder from the face where the bit enters. Its wall is two halves, from seam to seam, so that
/// no face closes on itself; the seams lie where two sides of the prism meet that stands for it in the solid. Angles are counted
/// from the first seam about the axis.
/// </summary>
/// <param name="Entry">Where the axis enters the wood, metres.</param>
/// <param name="Axis">Unit direction into the wood.</param>
/// <param name="Seam">Unit direction from the axis to the first seam.</param>
/// <param name="Radius">Metres.</param>
/// <param name="Depth">Metres; of a hole right through the size of the stick.</param>
internal sealed record RoundHole(Vector3d Entry, Vector3d Axis, Vector3d Seam, double Radius, double Depth)
{
    private const double Side = Math.Tau / StockCutters.HoleSides;

    // Of a side: far above the round-off of angles, far below a half.
    private const double OfASide = 0.01;

    // Sides of the prism lie 0.2 % of the radius inside the circle (StockCutters.HoleSides), and some microns further out where
    // a cutter was grown.
    private const double SideInside = 0.002;
    private const double Grown = 2e-5;

    // Of the radius: corners of the prism stand 0.3 % outside the circle. Sides of holes in one row lie in one plane.
    private const double BesideCorners = 1.1;

    // Planes that the axis meets at a smaller slope cut ellipses metres long out of it.
    private const double Flattest = 0.01;

    private readonly Vector3d _across = Axis.Cross(Seam);

    /// <summary>The wall's surface.</summary>
    public Surface.Round Wall => new(Entry, Axis, Seam, Radius, IsHole: true);

    /// <summary>Of a hole in a stick.</summary>
    public static RoundHole Of(CutStock stock, Hole hole)
    {
        var (entry, bottom) = stock.HoleAxis(hole);
        var depth = (bottom - entry).Length;
        var axis = (bottom - entry) / depth;
        var (sin, cos) = Elementary.SinCos(-Side / 2);
        return new RoundHole(
            entry, axis, (cos * Vector3d.UnitX) + (sin * axis.Cross(Vector3d.UnitX)), hole.Diameter / 2, depth);
    }

    /// <summary>From the axis to the sides of the prism, and a little less, metres.</summary>
    public double PrismRadius => (1 - SideInside) * Radius;

    /// <summary>Which half of the wall, 0 or 1, a face of the solid stands for; null where it is none of its sides.</summary>
    public int? HalfOf(Face face, Solid solid)
    {
        var sides = Angle(face.Plane.Normal) / Side;
        var isSide = face.Origin == FaceOrigin.Hole
            && IsAlong(face.Plane)
            && SquareToAxis(solid.Vertices[face.Loops[0][0]] - Entry).Length < BesideCorners * Radius
            && Math.Abs(face.Plane.SignedDistance(Entry) - Radius) < (SideInside * Radius) + Grown
            && Math.Abs(sides - Math.Floor(sides) - 0.5) < OfASide;

        // The face looks at the axis: it lies on the other side of it.
        return !isSide ? null : sides < StockCutters.HoleSides / 2 ? 1 : 0;
    }

    /// <summary>The plane runs along the axis.</summary>
    public bool IsAlong(Plane plane) => Math.Abs(plane.Normal.Dot(Axis)) < Tolerances.Parallel;

    /// <summary>Angle of a place in a half of the wall, from that half's first seam: about 0 to π.</summary>
    public double AngleIn(int half, Vector3d place)
    {
        var angle = Angle(place - Entry) - (half * Math.PI);
        return angle < -Math.PI / 2 ? angle + Math.Tau : angle > Math.PI * 3 / 2 ? angle - Math.Tau : angle;
    }

    /// <summary>Where the seam on this side of the axis meets a plane.</summary>
    public Vector3d? SeamOn(Plane plane, Vector3d near)
    {
        var start = Entry + (Math.CopySign(Radius, (near - Entry).Dot(Seam)) * Seam);
        return IsAlong(plane) ? null : start + (plane.LineParameter(start, Axis) * Axis);
    }

    /// <summary>Where the line of two planes meets the wall, nearest to a place; null where it does not.</summary>
    public Vector3d? WallOn(Plane a, Plane b, Vector3d near)
    {
        var cosine = a.Normal.Dot(b.Normal);
        var (above, over, square) = (a.SignedDistance(near), b.SignedDistance(near), 1 - (cosine * cosine));
        if (square < Flattest * Flattest)
        {
            return null;
        }

        var line = a.Normal.Cross(b.Normal).Normalized();
        var foot = near - ((above - (cosine * over)) / square * a.Normal) - ((over - (cosine * above)) / square * b.Normal);
        var (from, way) = (SquareToAxis(foot - Entry), SquareToAxis(line));
        var (quadratic, linear, rest) = (way.Dot(way), from.Dot(way), from.Dot(from) - (Radius * Radius));
        var discriminant = (linear * linear) - (quadratic * rest);
        if (quadratic < Flattest * Flattest || discriminant < 0)
        {
            return null;
        }

        // The nearer of the two roots.
        var step = (Math.CopySign(Math.Sqrt(discriminant), linear) - linear) / quadratic;
        return foot + (step * line);
    }

    /// <summary>What a plane cuts out of the wall; null where it runs along it, or nearly so.</summary>
    public Ellipse? On(Plane plane)
    {
        var slope = plane.Normal.Dot(Axis);
        if (Math.Abs(slope) < Flattest)
        {
            return null;
        }

        var center = Entry + (plane.LineParameter(Entry, Axis) * Axis);
        var normal = slope < 0 ? -plane.Normal : plane.Normal;
        var along = Axis - (Math.Abs(slope) * normal);
        return along.Length < Tolerances.Parallel
            ? new Ellipse(center, Axis, Seam, Radius, Radius)
            : new Ellipse(center, normal, along.Normalized(), Radius / Math.Abs(slope), Radius);
    }

    /// <summary>Whether two holes come so near each other that their walls may meet.</summary>
    public bool Meets(RoundHole other)
    {
        var line = Axis.Cross(other.Axis);
        var between = other.Entry - Entry;
        var apart = line.Length < Tolerances.Parallel ? SquareToAxis(between).Length : Math.Abs(between.Dot(line.Normalized()));
        return apart < Radius + other.Radius + Tolerances.Corner && Overlaps(other, this) && Overlaps(this, other);
    }

    /// <summary>Whether a face whose plane runs along the axis, and within the radius, comes as far as the hole.</summary>
    public bool IsBeside(Face face, Solid solid)
    {
        var sideways = face.Plane.Normal.Cross(Axis);
        var places = face.Loops.SelectMany(l => l).Select(v => solid.Vertices[v] - Entry).ToList();
        return places.Max(p => p.Dot(Axis)) > 0 && places.Min(p => p.Dot(Axis)) < Depth
            && places.Max(p => p.Dot(sideways)) > -Radius && places.Min(p => p.Dot(sideways)) < Radius;
    }

    /// <summary>Distance of a straight edge from the axis as far as the hole is deep, metres; infinite where it is beyond.</summary>
    public double DistanceOf(Vector3d from, Vector3d to)
    {
        var (a, b) = ((from - Entry).Dot(Axis), (to - Entry).Dot(Axis));
        var (low, high) = (-Tolerances.Corner, Depth + Tolerances.Corner);
        if (Math.Max(a, b) < low || Math.Min(a, b) > high)
        {
            return double.PositiveInfinity;
        }

        var way = to - from;
        double Share(double depth) => Math.Abs(b - a) > Tolerances.RoundOff ? Math.Clamp((depth - a) / (b - a), 0, 1) : 0;
        var (s, e) = Math.Abs(b - a) > Tolerances.RoundOff ? (Share(low), Share(high)) : (0, 1);
        var (start, run) = (SquareToAxis(from + (Math.Min(s, e) * way) - Entry), Math.Abs(e - s) * SquareToAxis(way));
        var square = run.Dot(run);
        var nearest = square > 0 ? Math.Clamp(-start.Dot(run) / square, 0, 1) : 0;
        return (start + (nearest * run)).Length;
    }

    private Vector3d SquareToAxis(Vector3d vector) => vector - (vector.Dot(Axis) * Axis);

    private double Angle(Vector3d direction)
    {
        var angle = Elementary.Atan2(direction.Dot(_across), direction.Dot(Seam));
        return angle < 0 ? angle + Math.Tau : angle;
    }

    // Whether one hole's length comes within the other's reach, measured along the first one's axis.
    private static bool Overlaps(RoundHole one, RoundHole other)
    {
        var (from, to) = (
            (other.Entry - one.Entry).Dot(one.Axis), (other.Entry + (other.Depth * other.Axis) - one.Entry).Dot(one.Axis));
        return Math.Max(from, to) > -other.Radius && Math.Min(from, to) < one.Depth + other.Radius;
    }
}
