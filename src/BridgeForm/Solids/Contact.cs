using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// How deep two convex bodies lie in each other, by the separating-axis test (Gottschalk, Lin, Manocha, "OBBTree", 1996):
/// the depth is the smallest overlap over all directions in which the bodies' difference can have a face.
/// </summary>
public static class Contact
{
    /// <summary>
    /// Depth of contact of two bodies, metres: the shortest move that separates them. Negative when they are apart: then they
    /// are at least that far from each other.
    /// </summary>
    /// <param name="a">One body.</param>
    /// <param name="b">The other.</param>
    /// <param name="enough">Stop as soon as the depth is known to be no more than this, and give what is known.</param>
    public static double Overlap(ConvexBody a, ConvexBody b, double enough = double.NegativeInfinity)
    {
        var least = double.PositiveInfinity;
        foreach (var normal in a.FaceNormals)
        {
            least = Math.Min(least, Along(a, b, normal));
            if (least <= enough)
            {
                return least;
            }
        }

        foreach (var normal in b.FaceNormals)
        {
            least = Math.Min(least, Along(a, b, normal));
            if (least <= enough)
            {
                return least;
            }
        }

        foreach (var p in a.EdgeDirections)
        {
            foreach (var q in b.EdgeDirections)
            {
                if (Unit(p.Cross(q)) is not { } axis)
                {
                    continue;
                }

                least = Math.Min(least, Along(a, b, axis));
                if (least <= enough)
                {
                    return least;
                }
            }
        }

        return least;
    }

    /// <summary>
    /// Depth of contact of a rope and a body, metres; negative when they are apart, and then exactly their distance.
    /// </summary>
    /// <param name="rope">The stretch of rope.</param>
    /// <param name="body">The body.</param>
    /// <param name="enough">Stop as soon as the depth is known to be no more than this, and give what is known.</param>
    public static double Overlap(Capsule rope, ConvexBody body, double enough = double.NegativeInfinity)
    {
        var least = double.PositiveInfinity;
        foreach (var normal in body.FaceNormals)
        {
            least = Math.Min(least, Along(rope, body, normal));
            if (least <= enough)
            {
                return least;
            }
        }

        return Math.Min(least, CornersAndEdges(rope, body, least, enough));
    }

    private static double CornersAndEdges(Capsule rope, ConvexBody body, double least, double enough)
    {
        var line = rope.To - rope.From;
        var along = Unit(line);
        foreach (var vertex in body.Vertices)
        {
            Try(vertex - rope.From);
            Try(vertex - rope.To);
            if (along is { } direction)
            {
                Try(Square(vertex - rope.From, direction));
            }

            if (least <= enough)
            {
                return least;
            }
        }

        foreach (var (from, to) in body.Edges)
        {
            var edge = (body.Vertices[to] - body.Vertices[from]).Normalized();
            Try(edge.Cross(line));
            Try(Square(rope.From - body.Vertices[from], edge));
            Try(Square(rope.To - body.Vertices[from], edge));
            if (least <= enough)
            {
                return least;
            }
        }

        return least;

        void Try(Vector3d axis)
        {
            if (Unit(axis) is { } unit)
            {
                least = Math.Min(least, Along(rope, body, unit));
            }
        }
    }

    private static Vector3d Square(Vector3d v, Vector3d unit) => v - (v.Dot(unit) * unit);

    private static Vector3d? Unit(Vector3d v)
    {
        var length = v.Length;
        return length > Tolerances.Parallel ? v / length : null;
    }

    private static double Along(ConvexBody a, ConvexBody b, Vector3d axis)
    {
        var (lowA, highA) = a.Range(axis);
        var (lowB, highB) = b.Range(axis);
        return Math.Min(highA - lowB, highB - lowA);
    }

    private static double Along(Capsule rope, ConvexBody body, Vector3d axis)
    {
        var (low, high) = body.Range(axis);
        var (from, to) = (axis.Dot(rope.From), axis.Dot(rope.To));
        return rope.Radius + Math.Min(Math.Max(from, to) - low, high - Math.Min(from, to));
    }
}
