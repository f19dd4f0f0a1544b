using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm.Ropes;

/// <summary>
/// What the design state of one rope must meet. Metres and newtons, world axes, support A at (0, 0). Give either
/// <see cref="Spacing"/> or <see cref="Bays"/>.
/// </summary>
public sealed record DesignRequest
{
    /// <summary>Horizontal distance between the supports, metres.</summary>
    public required double Span { get; init; }

    /// <summary>Support B above support A, metres; negative when lower.</summary>
    public required double Rise { get; init; }

    /// <summary>Vertical distance at half the span from the line A–B down to the rope axis, metres.</summary>
    public required double Sag { get; init; }

    /// <summary>What is equal from node to node.</summary>
    public required FrameStep Step { get; init; }

    /// <summary>Largest step (chord, or horizontal step); the smallest number of bays that keeps it is found. Metres.</summary>
    public double? Spacing { get; init; }

    /// <summary>Number of bays, when it is fixed; goes before <see cref="Spacing"/>.</summary>
    public int? Bays { get; init; }

    /// <summary>Weight of one rope per unstressed metre, N/m.</summary>
    public required double WeightPerLength { get; init; }

    /// <summary>Axial stiffness EA of one rope, newtons.</summary>
    public required double AxialStiffness { get; init; }

    /// <summary>
    /// Loads that hang on this rope, in newtons, one a node with the supports' (not read) included, for trial positions
    /// of the nodes. It is asked again until positions and loads agree; it must be a pure function of the positions.
    /// </summary>
    public required Func<ImmutableArray<RopePoint>, ImmutableArray<double>> NodeLoads { get; init; }

    /// <summary>
    /// In place of <see cref="NodeLoads"/> where loads jump as the shape moves: loads for trial positions and for the whole
    /// numbers asked for, or for those that go with the positions where null is asked. Null: loads do not jump.
    /// </summary>
    public Func<ImmutableArray<RopePoint>, ImmutableArray<int>?, SteppedLoads>? Stepped { get; init; }
}
