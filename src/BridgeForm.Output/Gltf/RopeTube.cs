using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Output.Gltf;

/// <summary>A rope as a closed tube around its axis, round to the eye along its sides and flat at its ends.</summary>
internal static class RopeTube
{
    /// <summary>Sides of the tube: smooth shading hides the corners at the size a rope has in a view of the bridge.</summary>
    private const int Sides = 12;

    /// <summary>The tube of a rope whose axis never runs along z. Rings stand square to the bisector of the axis at each point.</summary>
    public static TriangleMesh Build(RopeLine rope)
    {
        var rings = rope.Points.Select((p, i) => Ring(p, Tangent(rope.Points, i), rope.Radius)).ToImmutableArray();
        var positions = ImmutableArray.CreateBuilder<Vector3d>();
        var normals = ImmutableArray.CreateBuilder<Vector3d>();
        var indices = ImmutableArray.CreateBuilder<int>();
        for (var i = 0; i < rings.Length; i++)
        {
            positions.AddRange(rings[i]);
            normals.AddRange(rings[i].Select(p => (p - rope.Points[i]).Normalized()));
        }

        for (var i = 0; i + 1 < rings.Length; i++)
        {
            AddBand(indices, i * Sides);
        }

        AddEnd(rings[0], -Tangent(rope.Points, 0), reversed: true);
        AddEnd(rings[^1], Tangent(rope.Points, rings.Length - 1), reversed: false);
        return new TriangleMesh(positions.ToImmutable(), normals.ToImmutable(), indices.ToImmutable());

        void AddEnd(ImmutableArray<Vector3d> ring, Vector3d normal, bool reversed)
        {
            var first = positions.Count;
            positions.AddRange(ring);
            normals.AddRange(Enumerable.Repeat(normal, Sides));
            for (var k = 1; k + 1 < Sides; k++)
            {
                indices.AddRange(first, first + (reversed ? k + 1 : k), first + (reversed ? k : k + 1));
            }
        }
    }

    private static Vector3d Tangent(ImmutableArray<Vector3d> points, int i)
    {
        var before = i > 0 ? (points[i] - points[i - 1]).Normalized() : Vector3d.Zero;
        var after = i + 1 < points.Length ? (points[i + 1] - points[i]).Normalized() : Vector3d.Zero;
        return (before + after).Normalized();
    }

    /// <summary>Points around the axis, counter-clockwise seen against the tangent's arrow.</summary>
    private static ImmutableArray<Vector3d> Ring(Vector3d center, Vector3d tangent, double radius)
    {
        var up = Vector3d.UnitZ.Cross(tangent).Normalized();
        var side = tangent.Cross(up);
        return
        [
            .. Enumerable.Range(0, Sides).Select(k =>
            {
                var (sin, cos) = Elementary.SinCos(Math.Tau * k / Sides);
                return center + (radius * ((cos * up) + (sin * side)));
            }),
        ];
    }

    private static void AddBand(ImmutableArray<int>.Builder indices, int first)
    {
        for (var k = 0; k < Sides; k++)
        {
            var (a, b) = (first + k, first + ((k + 1) % Sides));
            indices.AddRange(a, b + Sides, a + Sides, a, b, b + Sides);
        }
    }
}
