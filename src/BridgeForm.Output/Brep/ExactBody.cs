using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>
/// A body between flat and round faces, as solid modellers keep it. Metres. Each edge is used by two loops, once each way.
/// </summary>
/// <param name="Corners">Places where edges meet.</param>
/// <param name="Edges">Edges.</param>
/// <param name="Faces">Faces, each with at least one loop.</param>
internal sealed record ExactBody(
    ImmutableArray<Vector3d> Corners, ImmutableArray<ExactEdge> Edges, ImmutableArray<ExactFace> Faces);

/// <summary>An edge from one corner to another: straight, or an arc.</summary>
/// <param name="From">Index of the corner where it begins.</param>
/// <param name="To">Index of the corner where it ends.</param>
/// <param name="Arc">The ellipse it follows, counter-clockwise about its normal; null where it is straight.</param>
internal readonly record struct ExactEdge(int From, int To, Ellipse? Arc);

/// <summary>An ellipse; a circle where both radii are equal.</summary>
/// <param name="Center">Its middle, metres.</param>
/// <param name="Normal">Unit normal of its plane.</param>
/// <param name="Major">Unit direction of the longer radius.</param>
/// <param name="LongRadius">Longer radius, metres.</param>
/// <param name="ShortRadius">Shorter radius, metres.</param>
internal sealed record Ellipse(Vector3d Center, Vector3d Normal, Vector3d Major, double LongRadius, double ShortRadius)
{
    /// <summary>Both radii are equal.</summary>
    public bool IsCircle => LongRadius <= ShortRadius;
}

/// <summary>A face.</summary>
/// <param name="Surface">What it lies in.</param>
/// <param name="Loops">Its outer loop, then its holes; each counter-clockwise about the outward normal as the outer one runs.</param>
internal sealed record ExactFace(Surface Surface, ImmutableArray<ImmutableArray<EdgeUse>> Loops);

/// <summary>An edge as a loop runs along it.</summary>
/// <param name="Edge">Index of the edge.</param>
/// <param name="Forward">From its first corner to its last.</param>
internal readonly record struct EdgeUse(int Edge, bool Forward);

/// <summary>What a face lies in.</summary>
internal abstract record Surface
{
    private Surface()
    {
    }

    /// <summary>A plane.</summary>
    /// <param name="Point">A point of it.</param>
    /// <param name="Normal">Unit normal, out of the body.</param>
    public sealed record Flat(Vector3d Point, Vector3d Normal) : Surface;

    /// <summary>A cylinder.</summary>
    /// <param name="Point">A point of its axis.</param>
    /// <param name="Axis">Unit direction of the axis.</param>
    /// <param name="Reference">Unit direction square to the axis.</param>
    /// <param name="Radius">Metres.</param>
    /// <param name="IsHole">The body lies outside of it: a hole's wall; else inside, a rope's skin.</param>
    public sealed record Round(Vector3d Point, Vector3d Axis, Vector3d Reference, double Radius, bool IsHole) : Surface;
}
