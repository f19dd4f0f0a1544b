using System.Collections.Immutable;

namespace BridgeForm.Solids;

/// <summary>
/// Triangles with flat shading: each face has its own vertices. Counter-clockwise seen from outside. Once vertices at
/// equal places are welded, every edge is used exactly once in each direction.
/// </summary>
/// <param name="Positions">Places, metres.</param>
/// <param name="Normals">Outward unit normal of each vertex's face.</param>
/// <param name="Indices">Three for each triangle.</param>
public sealed record TriangleMesh(
    ImmutableArray<Vector3d> Positions, ImmutableArray<Vector3d> Normals, ImmutableArray<int> Indices)
{
    /// <summary>Number of triangles.</summary>
    public int TriangleCount => Indices.Length / 3;

    /// <summary>The places of one triangle's corners.</summary>
    public (Vector3d A, Vector3d B, Vector3d C) Triangle(int index) => (
        Positions[Indices[3 * index]], Positions[Indices[(3 * index) + 1]], Positions[Indices[(3 * index) + 2]]);
}
