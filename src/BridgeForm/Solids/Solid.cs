using System.Collections.Immutable;

namespace BridgeForm.Solids;

/// <summary>Where a face of a solid comes from.</summary>
public enum FaceOrigin
{
    /// <summary>A long face of the stock as bought.</summary>
    Stock,

    /// <summary>Made by a saw cut.</summary>
    Cut,

    /// <summary>Made by a channel.</summary>
    Channel,

    /// <summary>Made by a drill.</summary>
    Hole,
}

/// <summary>A planar face. Loops are counter-clockwise seen from outside; loops of holes run the other way.</summary>
/// <param name="Plane">Its plane; the normal points out of the body.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="Loops">Closed loops of vertex indices, the last not repeating the first; outer loops and holes in any order.</param>
public sealed record Face(Plane Plane, FaceOrigin Origin, ImmutableArray<ImmutableArray<int>> Loops);

/// <summary>An immutable planar-faced, closed body with outward faces. Metres.</summary>
public sealed class Solid
{
    internal Solid(ImmutableArray<Vector3d> vertices, ImmutableArray<Face> faces)
    {
        Vertices = vertices;
        Faces = faces;
    }

    /// <summary>Corners, each once.</summary>
    public ImmutableArray<Vector3d> Vertices { get; }

    /// <summary>Faces.</summary>
    public ImmutableArray<Face> Faces { get; }
}
