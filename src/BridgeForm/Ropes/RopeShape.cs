using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Ropes;

/// <summary>
/// One piece of rope between two neighbouring nodes: an elastic catenary (Irvine, Cable Structures, 1981, §1.3).
/// World x and y, metres and newtons.
/// </summary>
/// <param name="UnstressedLength">Length without tension at the temperature of the state, metres.</param>
/// <param name="StretchedLength">Length as it hangs, metres.</param>
/// <param name="Horizontal">Horizontal component of its tension, newtons; the same everywhere in it.</param>
/// <param name="VerticalA">
/// Upward force that the rope's A-side end is held up by, newtons: where it is positive the rope descends from there
/// towards B.
/// </param>
public readonly record struct RopeSegment(double UnstressedLength, double StretchedLength, double Horizontal, double VerticalA);

/// <summary>A state of one rope in equilibrium. Nodes 0 and last are the supports.</summary>
public sealed record RopeShape
{
    /// <summary>
    /// Nodes on the rope axis in the plane of the rope, world x and y in metres; the first is (0, 0), or where support A has
    /// moved to on a backstay that gives.
    /// </summary>
    public required ImmutableArray<RopePoint> Nodes { get; init; }

    /// <summary>One segment a bay.</summary>
    public required ImmutableArray<RopeSegment> Segments { get; init; }

    /// <summary>Load hung at each node on this rope, newtons downwards; 0 at the supports.</summary>
    public required ImmutableArray<double> Loads { get; init; }

    /// <summary>Weight per metre of unstressed rope, N/m.</summary>
    public required double WeightPerLength { get; init; }

    /// <summary>Axial stiffness EA, newtons.</summary>
    public required double AxialStiffness { get; init; }

    /// <summary>Horizontal tension, newtons.</summary>
    public required double Horizontal { get; init; }

    /// <summary>Largest tension anywhere on the rope, newtons.</summary>
    public required double LargestTension { get; init; }

    /// <summary>
    /// Whole numbers of parts that its loads were made with (<see cref="SteppedLoads.Steps"/>); empty where loads do not jump.
    /// </summary>
    public ImmutableArray<int> Steps { get; init; } = [];

    /// <summary>Vertical distance at half the span from the line A–B down to the rope axis, metres.</summary>
    public required double Sag { get; init; }
}

/// <summary>A point of the rope's plane, world x and y, metres.</summary>
public readonly record struct RopePoint(double X, double Y);

/// <summary>The axis of one rope as a line through points close enough together to be drawn as a curve.</summary>
/// <param name="Name"><c>left</c> (negative z) or <c>right</c>.</param>
/// <param name="Radius">Radius of the rope, metres.</param>
/// <param name="Points">Two or more points from A to B, world axes, metres.</param>
public sealed record RopeLine(string Name, double Radius, ImmutableArray<Vector3d> Points);
