using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>A point in a face's own plane, seen from outside.</summary>
internal readonly record struct FlatPoint(double X, double Y)
{
    /// <summary>All points seen against the normal.</summary>
    public static FlatPoint[] Project(List<Vector3d> points, Vector3d normal)
    {
        var least = Math.Abs(normal.X) <= Math.Abs(normal.Y) && Math.Abs(normal.X) <= Math.Abs(normal.Z) ? Vector3d.UnitX
            : Math.Abs(normal.Y) <= Math.Abs(normal.Z) ? Vector3d.UnitY : Vector3d.UnitZ;
        var u = least.Cross(normal).Normalized();
        var v = normal.Cross(u);
        var flat = new FlatPoint[points.Count];
        for (var i = 0; i < flat.Length; i++)
        {
            flat[i] = new FlatPoint(u.Dot(points[i]), v.Dot(points[i]));
        }

        return flat;
    }

    /// <summary>Twice the area of the triangle, positive when counter-clockwise.</summary>
    public static double Turn(FlatPoint a, FlatPoint b, FlatPoint c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));

    /// <summary>Height of the triangle over its longest side; 0 for none, negative when turned over.</summary>
    public static double Shape(FlatPoint a, FlatPoint b, FlatPoint c) =>
        Turn(a, b, c) / LongestSquare(a, b, c);

    /// <summary>Whether the closed triangle holds the point, or would but for so much in twice an area.</summary>
    public static bool Holds(FlatPoint a, FlatPoint b, FlatPoint c, FlatPoint p, double slack = 0) =>
        Turn(a, b, p) >= -slack && Turn(b, c, p) >= -slack && Turn(c, a, p) >= -slack;

    /// <summary>Twice the area that round-off can give a triangle: a vertex on the line of a side must not end up beyond it.</summary>
    public static double Slack(FlatPoint a, FlatPoint b, FlatPoint c) => Tolerances.RoundOff * Math.Sqrt(LongestSquare(a, b, c));

    /// <summary>Whether the open triangle holds the point.</summary>
    public static bool HoldsInside(FlatPoint a, FlatPoint b, FlatPoint c, FlatPoint p) =>
        Turn(a, b, p) > 0 && Turn(b, c, p) > 0 && Turn(c, a, p) > 0;

    private static double LongestSquare(FlatPoint a, FlatPoint b, FlatPoint c) =>
        Math.Max(Square(a, b), Math.Max(Square(b, c), Square(c, a)));

    private static double Square(FlatPoint a, FlatPoint b) =>
        ((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y));
}
