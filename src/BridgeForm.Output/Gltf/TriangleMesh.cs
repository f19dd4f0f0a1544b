using System.Collections.Immutable;

namespace BridgeForm.Solids;

/// <summary>A triangulated surface, flat-shaded: every face has corners of its own. Metres.</summary>
/// <param name="Positions">Corners.</param>
/// <param name="Normals">Outward unit normal at each corner.</param>
/// <param name="Indices">Three corners a triangle, counter-clockwise seen from outside.</param>
public sealed record TriangleMesh(
    ImmutableArray<Vector3d> Positions, ImmutableArray<Vector3d> Normals, ImmutableArray<int> Indices);
