using System.Runtime.InteropServices;

namespace BridgeForm.Solids;

/// <summary>Triangles of a solid's faces. Every vertex of a face's boundary is kept, so neighbouring faces meet edge to edge.</summary>
internal static class Triangulation
{
    public static TriangleMesh Of(Solid solid)
    {
        var (points, corners, ends) = CornersOf(solid);
        var positions = new List<Vector3d>(corners.Count);
        var normals = new List<Vector3d>(corners.Count);
        var local = new int[points.Count];
        var indices = CollectionsMarshal.AsSpan(corners);
        for (int f = 0, i = 0; f < ends.Length; f++)
        {
            Array.Clear(local);
            for (; i < ends[f]; i++)
            {
                ref var place = ref local[indices[i]];
                if (place == 0)
                {
                    positions.Add(points[indices[i]]);
                    normals.Add(solid.Faces[f].Plane.Normal);
                    place = positions.Count;
                }

                indices[i] = place - 1;
            }
        }

        return new TriangleMesh([.. positions], [.. normals], [.. corners]);
    }

    /// <summary>
    /// The solid's vertices, and in rare cases some more; their numbers, three for each triangle; and where each face's
    /// triangles end.
    /// </summary>
    public static (List<Vector3d> Points, List<int> Corners, int[] Ends) CornersOf(Solid solid)
    {
        var points = new List<Vector3d>(solid.Vertices.Length);
        points.AddRange(solid.Vertices.AsSpan());
        var corners = new List<int>(6 * solid.Vertices.Length);
        var ends = new int[solid.Faces.Length];
        var taken = EdgesOf(solid);
        for (var f = 0; f < ends.Length; f++)
        {
            var face = solid.Faces[f];
            var start = corners.Count;
            if (face.Loops.Length > 1 || !ConvexFan.TryFill(points, face.Plane.Normal, face.Loops[0], taken, corners))
                EarClipping.Fill(points, face, taken, corners);
            for (var i = start; i < corners.Count; i++) taken.SetUndirected(corners[i], corners[i % 3 == 2 ? i - 2 : i + 1], 1);
            ends[f] = corners.Count;
        }

        return (points, corners, ends);
    }

    // Where bodies touch along a line, a diagonal of one face could fall on an edge or a diagonal of another.
    private static EdgeTable EdgesOf(Solid solid)
    {
        var edges = new EdgeTable();
        foreach (var face in solid.Faces)
        {
            foreach (var loop in face.Loops)
            {
                var from = loop[^1];
                foreach (var to in loop)
                {
                    edges.SetUndirected(from, to, 1);
                    from = to;
                }
            }
        }

        return edges;
    }
}
