using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Geometry;

/// <summary>Members of a bay cut across: what is clear between them.</summary>
internal static class CrossSections
{
    /// <summary>
    /// Clear distance between two sticks in a plane across them, metres; 0 when they meet. Both are taken as endless: where
    /// they end does not matter.
    /// </summary>
    public static double Clear(Member a, Member b, Plane across)
    {
        var (u, v) = Axes(across.Normal);
        Span<(double U, double V)> first = stackalloc (double, double)[4];
        Span<(double U, double V)> second = stackalloc (double, double)[4];
        Cut(a, across, u, v, first);
        Cut(b, across, u, v, second);
        return Meet(first, second) ? 0 : Math.Sqrt(Math.Min(Nearest(first, second), Nearest(second, first)));
    }

    /// <summary>The corner of a stick, in a plane across it, that lies furthest in a direction of the world.</summary>
    public static Vector3d Furthest(Member member, Plane across, Vector3d direction)
    {
        var best = Corner(member, across, 0);
        for (var k = 1; k < 4; k++)
        {
            var corner = Corner(member, across, k);
            if (corner.Dot(direction) > best.Dot(direction))
            {
                best = corner;
            }
        }

        return best;
    }

    private static void Cut(Member member, Plane across, Vector3d u, Vector3d v, Span<(double U, double V)> corners)
    {
        for (var k = 0; k < 4; k++)
        {
            var corner = Corner(member, across, k);
            corners[k] = (corner.Dot(u), corner.Dot(v));
        }
    }

    /// <summary>Where one of the four long edges, in turn around the section, meets the plane.</summary>
    private static Vector3d Corner(Member member, Plane across, int k)
    {
        var y = (k is 0 or 3 ? -0.5 : 0.5) * member.Shape.Width;
        var z = (k < 2 ? -0.5 : 0.5) * member.Shape.Thickness;
        var edge = member.Placement.ToWorld(new Vector3d(0, y, z));
        return edge + (across.LineParameter(edge, member.Placement.X) * member.Placement.X);
    }

    private static (Vector3d U, Vector3d V) Axes(Vector3d normal)
    {
        var u = Vector3d.UnitZ.Cross(normal).Normalized();
        return (u, normal.Cross(u));
    }

    /// <summary>Two convex outlines of which no edge of either has the other all on its far side.</summary>
    private static bool Meet(ReadOnlySpan<(double U, double V)> first, ReadOnlySpan<(double U, double V)> second) =>
        !Separates(first, second) && !Separates(second, first);

    private static bool Separates(ReadOnlySpan<(double U, double V)> outline, ReadOnlySpan<(double U, double V)> other)
    {
        for (var k = 0; k < outline.Length; k++)
        {
            var (a, b) = (outline[k], outline[(k + 1) % outline.Length]);
            var inside = Side(a, b, outline[(k + 2) % outline.Length]);
            var beyond = true;
            foreach (var p in other)
            {
                beyond &= Side(a, b, p) * inside <= 0;
            }

            if (beyond)
            {
                return true;
            }
        }

        return false;
    }

    private static double Side((double U, double V) a, (double U, double V) b, (double U, double V) p) =>
        ((b.U - a.U) * (p.V - a.V)) - ((b.V - a.V) * (p.U - a.U));

    /// <summary>Square of the smallest distance from a corner of the first outline to an edge of the second.</summary>
    private static double Nearest(ReadOnlySpan<(double U, double V)> corners, ReadOnlySpan<(double U, double V)> outline)
    {
        var nearest = double.PositiveInfinity;
        foreach (var p in corners)
        {
            for (var k = 0; k < outline.Length; k++)
            {
                nearest = Math.Min(nearest, ToEdge(p, outline[k], outline[(k + 1) % outline.Length]));
            }
        }

        return nearest;
    }

    private static double ToEdge((double U, double V) p, (double U, double V) a, (double U, double V) b)
    {
        double du = b.U - a.U, dv = b.V - a.V;
        var s = Math.Clamp((((p.U - a.U) * du) + ((p.V - a.V) * dv)) / ((du * du) + (dv * dv)), 0, 1);
        double u = p.U - a.U - (s * du), v = p.V - a.V - (s * dv);
        return (u * u) + (v * v);
    }
}
