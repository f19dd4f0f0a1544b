namespace BridgeForm.Solids;

/// <summary>Separate bodies of a solid, found over triangles that share an edge.</summary>
internal static class Components
{
    public static int Count(Solid solid)
    {
        var (points, corners, _) = Triangulation.CornersOf(solid);
        var parent = Group(corners);
        var volume = new double[parent.Length];
        var area = new double[parent.Length];
        var origin = points[0];
        for (var t = 0; t < parent.Length; t++)
        {
            var (a, b, c) = (corners[3 * t], corners[(3 * t) + 1], corners[(3 * t) + 2]);
            var root = Root(parent, t);
            volume[root] += (points[a] - origin).Dot((points[b] - origin).Cross(points[c] - origin)) / 6;
            area[root] += (points[b] - points[a]).Cross(points[c] - points[a]).Length / 2;
        }

        // The skin of a hollow looks inwards: its volume is negative. A flake no thicker than round-off is no body.
        return volume.Zip(area).Count(part => part.First > RoundOff.Length * part.Second / 2);
    }

    private static int[] Group(List<int> corners)
    {
        var parent = Enumerable.Range(0, corners.Count / 3).ToArray();
        var firstUse = new EdgeTable();
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[i % 3 == 2 ? i - 2 : i + 1]);
            var seen = firstUse.Undirected(a, b);
            if (seen < 0) firstUse.SetUndirected(a, b, i / 3);
            else parent[Root(parent, seen)] = Root(parent, i / 3);
        }

        return parent;
    }

    private static int Root(int[] parent, int i)
    {
        while (parent[i] != i) i = parent[i] = parent[parent[i]];
        return i;
    }
}
