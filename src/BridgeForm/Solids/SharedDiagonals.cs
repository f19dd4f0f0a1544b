namespace BridgeForm.Solids;

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
            if (other < 0 || taken.Undirected(a, b) < 0) continue;
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
