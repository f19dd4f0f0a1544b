using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

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
    public static ImmutableArray<FarEdge> Of(Solid solid, SolidEdges edges, PageView view)
    {
        var found =
            from face in FlatFace.Facing(solid, -view.Toward)
            from loop in face.Loops
            from edge in SolidEdges.EdgesOf(loop)
            let beyond = edges.Beyond(edge)
            let sine = Math.Abs(beyond.Plane.Normal.Dot(view.Toward))
            where sine > FlatFace.SquareTolerance && sine < 1 - FlatFace.SquareTolerance && beyond.Origin != FaceOrigin.Hole
            select new FarEdge(
                view.Project(solid.Vertices[edge.From]), view.Project(solid.Vertices[edge.To]), Math.Asin(sine), beyond.Origin);
        return [.. found];
    }
}
