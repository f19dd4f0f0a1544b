using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace BridgeForm.Solids;

/// <summary>Triangles of a solid's faces. Every vertex of a face's boundary is kept, so neighbouring faces meet edge to edge.</summary>
internal static class Triangulation
{
    public static TriangleMesh Build(Solid solid)
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
            {
                EarClipping.Fill(points, face, taken, corners);
            }

            for (var i = start; i < corners.Count; i++)
            {
                taken.SetUndirected(corners[i], corners[i % 3 == 2 ? i - 2 : i + 1], 1);
            }

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

/// <summary>The quick way for what most faces are: one convex loop, split as a fan from its best corner.</summary>
internal static class ConvexFan
{
    // A triangle flatter than this share of its longest side is left to the careful way.
    private const double FlattestShape = 1e-3;

    /// <summary>Adds the loop's triangles, unless it is concave or its fan would be poor or use a taken diagonal.</summary>
    public static bool TryFill(
        List<Vector3d> points, Vector3d normal, ImmutableArray<int> loop, EdgeTable taken, List<int> corners)
    {
        if (loop.Length == 3)
        {
            corners.AddRange(loop.AsSpan());
            return true;
        }

        if (!IsConvex(points, normal, loop))
        {
            return false;
        }

        var (best, shape) = (0, double.NegativeInfinity);
        var candidates = loop.Length == 4 ? 2 : loop.Length;
        for (var apex = 0; apex < candidates && shape < GoodShape; apex++)
        {
            var worst = WorstShape(points, normal, loop, apex);
            if (worst > shape && IsFree(loop, apex, taken))
            {
                (best, shape) = (apex, worst);
            }
        }

        if (shape < FlattestShape && loop.Length > 4)
        {
            return false;
        }

        if (shape <= 0)
        {
            return false;
        }

        for (var i = 1; i + 1 < loop.Length; i++)
        {
            corners.Add(loop[best]);
            corners.Add(loop[(best + i) % loop.Length]);
            corners.Add(loop[(best + i + 1) % loop.Length]);
        }

        return true;
    }

    private static bool IsFree(ImmutableArray<int> loop, int apex, EdgeTable taken)
    {
        for (var i = 2; i + 1 < loop.Length; i++)
        {
            if (taken.Undirected(loop[apex], loop[(apex + i) % loop.Length]) >= 0)
            {
                return false;
            }
        }

        return true;
    }

    // Good enough not to look for a better corner.
    private const double GoodShape = 0.2;

    private static bool IsConvex(List<Vector3d> points, Vector3d normal, ImmutableArray<int> loop)
    {
        var a = points[loop[^2]];
        var b = points[loop[^1]];
        foreach (var i in loop)
        {
            var c = points[i];
            if (normal.Dot((b - a).Cross(c - b)) < 0)
            {
                return false;
            }

            (a, b) = (b, c);
        }

        return true;
    }

    private static double WorstShape(List<Vector3d> points, Vector3d normal, ImmutableArray<int> loop, int apex)
    {
        var worst = double.PositiveInfinity;
        var a = points[loop[apex]];
        var b = points[loop[(apex + 1) % loop.Length]];
        for (var i = 2; i < loop.Length; i++)
        {
            var c = points[loop[(apex + i) % loop.Length]];
            worst = Math.Min(worst, TriangleShape.Of(normal.Dot((b - a).Cross(c - a)), b - a, c - b, a - c));
            b = c;
        }

        return worst;
    }
}

/// <summary>How far a triangle is from being none.</summary>
internal static class TriangleShape
{
    /// <summary>Height over the longest side, from twice the signed area; 0 for none, negative when turned over.</summary>
    public static double Of(double twiceArea, Vector3d a, Vector3d b, Vector3d c) =>
        twiceArea / Math.Max(a.Dot(a), Math.Max(b.Dot(b), c.Dot(c)));
}
