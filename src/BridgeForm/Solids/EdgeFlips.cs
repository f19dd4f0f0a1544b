using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Turns diagonals between two triangles where the worse of the two gets a better shape. So a flat triangle with a vertex
/// in the middle of its long side goes away, and so does a diagonal that another face has taken.
/// </summary>
internal static class EdgeFlips
{
    // Each flip makes the worse of two triangles better, so passes end by themselves; this bounds the time for round-off's sake.
    private const int MostPasses = 20;

    /// <summary>Improves the triangles of one face in place.</summary>
    /// <param name="flat">Vertices in the face's plane.</param>
    /// <param name="taken">Edges and diagonals of other faces.</param>
    /// <param name="corners">Three vertices for each triangle.</param>
    /// <returns>Where the triangle to the left of each edge starts.</returns>
    public static EdgeTable Improve(FlatPoint[] flat, EdgeTable taken, Span<int> corners)
    {
        var owners = new EdgeTable();
        for (var t = 0; t < corners.Length; t += 3)
        {
            if (!Own(owners, corners, t))
            {
                return owners;
            }
        }

        for (var (pass, changed) = (0, true); changed && pass < MostPasses; pass++)
        {
            changed = false;
            for (var i = 0; i < corners.Length; i++)
            {
                changed |= TryFlip(flat, taken, corners, owners, i);
            }
        }

        return owners;
    }

    private static bool Own(EdgeTable owners, Span<int> corners, int triangle)
    {
        for (var k = 0; k < 3; k++)
        {
            var (a, b) = (corners[triangle + k], corners[triangle + ((k + 1) % 3)]);
            if (owners.Find(a, b) >= 0)
            {
                return false;
            }

            owners.Slot(a, b) = triangle;
        }

        return true;
    }

    private static bool TryFlip(FlatPoint[] flat, EdgeTable taken, Span<int> corners, EdgeTable owners, int corner)
    {
        var t = corner - (corner % 3);
        var (a, b, c) = (corners[corner], corners[t + ((corner + 1) % 3)], corners[t + ((corner + 2) % 3)]);
        var other = owners.Find(b, a);
        if (other < 0)
        {
            return false;
        }

        var d = corners[other] + corners[other + 1] + corners[other + 2] - a - b;
        if (c == d || owners.Find(c, d) >= 0 || owners.Find(d, c) >= 0 || taken.Undirected(c, d) >= 0)
        {
            return false;
        }

        var now = Math.Min(FlatPoint.Shape(flat[a], flat[b], flat[c]), FlatPoint.Shape(flat[b], flat[a], flat[d]));
        var then = Math.Min(FlatPoint.Shape(flat[a], flat[d], flat[c]), FlatPoint.Shape(flat[d], flat[b], flat[c]));
        var wanted = taken.Undirected(a, b) >= 0 ? Tolerances.Parallel : now + Tolerances.FlipGain;
        if (!(then > wanted))
        {
            return false;
        }

        owners.Slot(a, b) = -1;
        owners.Slot(b, a) = -1;
        Replace(owners, corners, t, a, d, c);
        Replace(owners, corners, other, d, b, c);
        return true;
    }

    private static void Replace(EdgeTable owners, Span<int> corners, int at, int a, int b, int c)
    {
        (corners[at], corners[at + 1], corners[at + 2]) = (a, b, c);
        owners.Slot(a, b) = at;
        owners.Slot(b, c) = at;
        owners.Slot(c, a) = at;
    }
}

/// <summary>
/// Splits a diagonal that another face has taken and that no flip could avoid, with a point of this face's own upon it. It
/// happens where two faces run within some microns of each other.
/// </summary>
internal static class SharedDiagonals
{
    // Not a half, so that the point does not fall on the middle of anything.
    private const double Share = 0.4375;

    public static void Split(EdgeTable owners, EdgeTable taken, List<Vector3d> points, List<int> corners, int start)
    {
        for (var i = start; i < corners.Count; i++)
        {
            var t = i - ((i - start) % 3);
            var (a, b, c) = (corners[i], corners[t + ((i - t + 1) % 3)], corners[t + ((i - t + 2) % 3)]);
            var other = owners.Find(b, a);
            if (other < 0 || taken.Undirected(a, b) < 0)
            {
                continue;
            }

            other += start;
            var d = corners[other] + corners[other + 1] + corners[other + 2] - a - b;
            points.Add(points[a] + (Share * (points[b] - points[a])));
            var middle = points.Count - 1;
            Replace(owners, corners, t, start, a, middle, c);
            Replace(owners, corners, other, start, b, middle, d);
            Append(owners, corners, start, middle, b, c);
            Append(owners, corners, start, middle, a, d);
            owners.Slot(a, b) = -1;
            owners.Slot(b, a) = -1;
            i = t - 1; // look at the triangle again: its other sides may be taken too
        }
    }

    private static void Append(EdgeTable owners, List<int> corners, int start, int a, int b, int c)
    {
        corners.AddRange([a, b, c]);
        Replace(owners, corners, corners.Count - 3, start, a, b, c);
    }

    private static void Replace(EdgeTable owners, List<int> corners, int at, int start, int a, int b, int c)
    {
        (corners[at], corners[at + 1], corners[at + 2]) = (a, b, c);
        owners.Slot(a, b) = at - start;
        owners.Slot(b, c) = at - start;
        owners.Slot(c, a) = at - start;
    }
}
