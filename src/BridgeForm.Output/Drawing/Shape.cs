using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Output.Drawing;

/// <summary>An edge with the outward normals of its two faces.</summary>
internal readonly record struct ShapeEdge(Vector3d From, Vector3d To, Vector3d NormalA, Vector3d NormalB);

/// <summary>A convex part of a body: what hides.</summary>
internal sealed record ShapeCell(ImmutableArray<Plane> Planes, ImmutableArray<Vector3d> Corners);

/// <summary>A body prepared for drawing: its edges are drawn, its cells hide what is behind them.</summary>
internal sealed record Shape(ImmutableArray<ShapeEdge> Edges, ImmutableArray<ShapeCell> Cells)
{
    /// <summary>The body of a stick, in its own axes; round holes are left out.</summary>
    public static Shape Build(CutStock stock)
    {
        var plain = stock with { Holes = [] };
        return StockSolid.Build(plain).OrNull is { } solid
            ? new Shape(
                EdgesOf(solid),
                [.. plain.ConvexCells().Select(c => new ShapeCell(c.Planes, c.Vertices))])
            : new Shape([], []);
    }

    /// <summary>The same body somewhere else.</summary>
    public Shape Placed(Placement p) => new(
        [.. Edges.Select(e => new ShapeEdge(
            p.ToWorld(e.From), p.ToWorld(e.To), p.DirectionToWorld(e.NormalA), p.DirectionToWorld(e.NormalB)))],
        [.. Cells.Select(c => new ShapeCell([.. c.Planes.Select(p.ToWorld)], [.. c.Corners.Select(p.ToWorld)]))]);

    private static ImmutableArray<ShapeEdge> EdgesOf(Solid solid)
    {
        var normals = new Dictionary<(int, int), Vector3d>();
        foreach (var face in solid.Faces)
        {
            foreach (var loop in face.Loops)
            {
                for (var i = 0; i < loop.Length; i++)
                {
                    normals[(loop[i], loop[(i + 1) % loop.Length])] = face.Plane.Normal;
                }
            }
        }

        return
        [
            .. normals.Where(n => n.Key.Item1 < n.Key.Item2).Select(n => new ShapeEdge(
                solid.Vertices[n.Key.Item1],
                solid.Vertices[n.Key.Item2],
                n.Value,
                normals[(n.Key.Item2, n.Key.Item1)])),
        ];
    }
}
