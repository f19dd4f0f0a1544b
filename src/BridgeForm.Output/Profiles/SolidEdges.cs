using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>Which face lies on the other side of each edge of a closed solid.</summary>
internal sealed class SolidEdges
{
    private readonly Dictionary<(int From, int To), Face> faceOf = [];

    /// <summary>Takes stock of a closed solid, in which every edge runs once in each direction.</summary>
    public SolidEdges(Solid solid)
    {
        foreach (var face in solid.Faces)
        {
            foreach (var edge in face.Loops.SelectMany(EdgesOf))
            {
                faceOf.Add(edge, face);
            }
        }
    }

    /// <summary>The face beyond an edge that is given as its own face runs it.</summary>
    public Face Beyond((int From, int To) edge) => faceOf[(edge.To, edge.From)];

    /// <summary>The edges of a closed loop, in order.</summary>
    public static IEnumerable<(int From, int To)> EdgesOf(ImmutableArray<int> loop) =>
        Enumerable.Range(0, loop.Length).Select(i => (loop[i], loop[(i + 1) % loop.Length]));
}

/// <summary>An edge of the far wide face whose cut is not square to the face.</summary>
/// <param name="From">One end, on the page.</param>
/// <param name="To">Other end.</param>
/// <param name="Tilt">Angle of the cut from square, radians, positive.</param>
/// <param name="Origin">What made the cut.</param>
internal sealed record FarEdge(SheetPoint From, SheetPoint To, double Tilt, FaceOrigin Origin);

/// <summary>Finds the edges on the far side that do not lie under the outline.</summary>
internal static class FarEdges
{
    /// <summary>Edges of the far face where the neighbouring face is tilted, as the solid has them.</summary>
    public static ImmutableArray<FarEdge> Find(Solid solid, SolidEdges edges, PageView view)
    {
        var found =
            from face in FlatFace.Facing(solid, -view.Toward)
            from loop in face.Loops
            from edge in SolidEdges.EdgesOf(loop)
            let beyond = edges.Beyond(edge)
            let sine = Math.Abs(beyond.Plane.Normal.Dot(view.Toward))
            where sine > Tolerances.InPage && sine < 1 - Tolerances.InPage && beyond.Origin != FaceOrigin.Hole
            select new FarEdge(
                view.Project(solid.Vertices[edge.From]), view.Project(solid.Vertices[edge.To]), Elementary.Asin(sine), beyond.Origin);
        return [.. found];
    }
}
