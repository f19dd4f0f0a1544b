using System.Collections.Immutable;

namespace BridgeForm.Solids;

/// <summary>
/// A convex region: all points below every plane (normals point out of it). It may be unbounded: a channel is two walls
/// and a floor, open below.
/// </summary>
/// <param name="Planes">Its planes, in any order; those that take most away first are fastest.</param>
/// <param name="Origin">What a face made by it counts as.</param>
public sealed record ConvexCutter(ImmutableArray<Plane> Planes, FaceOrigin Origin)
{
    /// <summary>The region with each plane moved outwards by a distance in metres.</summary>
    public ConvexCutter Grown(double distance) =>
        this with { Planes = [.. Planes.Select(plane => plane.Shifted(distance))] };

    /// <summary>A box with its sides along the axes.</summary>
    public static ConvexCutter Box(Vector3d min, Vector3d max, FaceOrigin origin) => new(
        [
            new Plane(-Vector3d.UnitX, -min.X),
            new Plane(Vector3d.UnitX, max.X),
            new Plane(-Vector3d.UnitY, -min.Y),
            new Plane(Vector3d.UnitY, max.Y),
            new Plane(-Vector3d.UnitZ, -min.Z),
            new Plane(Vector3d.UnitZ, max.Z),
        ],
        origin);
}
