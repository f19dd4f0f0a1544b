using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Samples;

/// <summary>Solids made by hand for tests of the writers: two like polygons in parallel planes, joined side by side.</summary>
internal static class Prism
{
    /// <summary>
    /// The body between a polygon at z = −thickness/2 and one at z = +thickness/2, both counter-clockwise seen from +Z, corner
    /// joined to corner. <paramref name="origin"/> names what made side i, from corner i to the next.
    /// </summary>
    public static Solid Between(
        (double X, double Y)[] bottom, (double X, double Y)[] top, double thickness, Func<int, FaceOrigin> origin) =>
        Mapped(bottom, top, thickness, origin, (x, y, z) => new Vector3d(x, y, z));

    /// <summary>The same with the polygons in planes of constant y, x to the right and z upwards, seen from −Y.</summary>
    public static Solid AlongY((double X, double Z)[] profile, double width, Func<int, FaceOrigin> origin) =>
        Mapped(profile, profile, width, origin, (x, z, w) => new Vector3d(x, -w, z));

    /// <summary>The same along X from 0, with the polygon in Y and Z, counter-clockwise seen from +X.</summary>
    public static Solid AlongX((double Y, double Z)[] profile, double length) => Mapped(
        profile, profile, length, _ => FaceOrigin.Stock, (y, z, x) => new Vector3d(x + (length / 2), y, z));

    /// <summary>A prism with a prismatic hole; the hole's polygon is also counter-clockwise.</summary>
    public static Solid WithHole((double X, double Y)[] outline, (double X, double Y)[] hole, double thickness)
    {
        var outer = Between(outline, outline, thickness, _ => FaceOrigin.Stock);
        var inner = Between(hole, hole, thickness, _ => FaceOrigin.Hole);
        var shift = outer.Vertices.Length;
        ImmutableArray<int> Turned(ImmutableArray<int> loop) => [.. loop.Reverse().Select(v => v + shift)];
        Face Pierced(int i) => outer.Faces[i] with { Loops = [outer.Faces[i].Loops[0], Turned(inner.Faces[i].Loops[0])] };
        var walls = inner.Faces.Skip(2).Select(f => f with { Plane = f.Plane.Flipped(), Loops = [Turned(f.Loops[0])] });
        return new Solid(outer.Vertices.AddRange(inner.Vertices), [Pierced(0), Pierced(1), .. outer.Faces.Skip(2), .. walls]);
    }

    /// <summary>Volume by the divergence theorem over the fans of every loop.</summary>
    public static double Volume(Solid solid) =>
        (from face in solid.Faces
         from loop in face.Loops
         from i in Enumerable.Range(1, loop.Length - 2)
         select solid.Vertices[loop[0]].Dot(solid.Vertices[loop[i]].Cross(solid.Vertices[loop[i + 1]])) / 6).Sum();

    private static Solid Mapped(
        (double X, double Y)[] bottom,
        (double X, double Y)[] top,
        double height,
        Func<int, FaceOrigin> origin,
        Func<double, double, double, Vector3d> map)
    {
        var n = bottom.Length;
        ImmutableArray<Vector3d> vertices =
        [
            .. bottom.Select(p => map(p.X, p.Y, -height / 2)),
            .. top.Select(p => map(p.X, p.Y, height / 2)),
        ];
        Face Make(FaceOrigin from, params int[] loop) => new(PlaneOf(vertices, loop), from, [[.. loop]]);
        return new Solid(
            vertices,
            [
                Make(FaceOrigin.Stock, [.. Enumerable.Range(0, n).Reverse()]),
                Make(FaceOrigin.Stock, [.. Enumerable.Range(n, n)]),
                .. Enumerable.Range(0, n).Select(i => Make(origin(i), i, (i + 1) % n, n + ((i + 1) % n), n + i)),
            ]);
    }

    private static Plane PlaneOf(ImmutableArray<Vector3d> vertices, int[] loop)
    {
        var normal = loop.Select((v, i) => vertices[v].Cross(vertices[loop[(i + 1) % loop.Length]]))
            .Aggregate(Vector3d.Zero, (sum, v) => sum + v);
        return Plane.Through(vertices[loop[0]], normal);
    }
}
