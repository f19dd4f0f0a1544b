using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Samples;

/// <summary>Triangles of a solid whose faces are single loops, by cutting ears (Meisters, 1975): slow, simple, for tests.</summary>
internal static class EarClipping
{
    public static TriangleMesh Triangulate(Solid solid)
    {
        var positions = ImmutableArray.CreateBuilder<Vector3d>();
        var normals = ImmutableArray.CreateBuilder<Vector3d>();
        var indices = ImmutableArray.CreateBuilder<int>();
        foreach (var face in solid.Faces)
        {
            var first = positions.Count;
            var loop = face.Loops.Single();
            positions.AddRange(loop.Select(v => solid.Vertices[v]));
            normals.AddRange(loop.Select(_ => face.Plane.Normal));
            indices.AddRange(Ears([.. loop.Select(v => solid.Vertices[v])], face.Plane.Normal).Select(i => first + i));
        }

        return new TriangleMesh(positions.ToImmutable(), normals.ToImmutable(), indices.ToImmutable());
    }

    private static IEnumerable<int> Ears(Vector3d[] points, Vector3d normal)
    {
        var left = Enumerable.Range(0, points.Length).ToList();
        while (left.Count > 3)
        {
            var ear = Enumerable.Range(0, left.Count).First(i => IsEar(points, left, i, normal));
            yield return left[(ear + left.Count - 1) % left.Count];
            yield return left[ear];
            yield return left[(ear + 1) % left.Count];
            left.RemoveAt(ear);
        }

        foreach (var i in left)
        {
            yield return i;
        }
    }

    private static bool IsEar(Vector3d[] points, List<int> left, int i, Vector3d normal)
    {
        var (a, b, c) = (points[left[(i + left.Count - 1) % left.Count]], points[left[i]], points[left[(i + 1) % left.Count]]);
        double Turn(Vector3d p, Vector3d q, Vector3d r) => (q - p).Cross(r - p).Dot(normal);
        return Turn(a, b, c) > 0
            && !left.Select(k => points[k]).Any(p =>
                p != a && p != b && p != c && Turn(a, b, p) >= 0 && Turn(b, c, p) >= 0 && Turn(c, a, p) >= 0);
    }
}
