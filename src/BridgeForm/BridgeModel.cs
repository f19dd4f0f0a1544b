using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Solids;
using BridgeForm.Stocking;

namespace BridgeForm;

/// <summary>The whole bridge, computed: everything the writers need and nothing they must compute.</summary>
public sealed record BridgeModel
{
    /// <summary>What the builder asked for.</summary>
    public required BridgeParameters Parameters { get; init; }

    /// <summary>Design state of one rope; the other is alike.</summary>
    public required RopeShape Rope { get; init; }

    /// <summary>Frames F00 … Fnn where they stand, supports included.</summary>
    public required ImmutableArray<FramePose> Frames { get; init; }

    /// <summary>Frame and bay names in order (frames first, then bays), each with its members' ids.</summary>
    public required ImmutableArray<GroupIds> Groups { get; init; }

    /// <summary>Pieces in order of first appearance.</summary>
    public required ImmutableArray<Piece> Pieces { get; init; }

    /// <summary>Bare ropes, and ropes with frames but no deck, over the table of temperatures.</summary>
    public required ImmutableArray<HoistingRow> Hoisting { get; init; }

    /// <summary>Where each frame sits on the rope laid out straight.</summary>
    public required ImmutableArray<RopeMark> Marks { get; init; }

    /// <summary>Load cases.</summary>
    public required ImmutableArray<LoadCaseResult> Cases { get; init; }

    /// <summary>Checks.</summary>
    public required ImmutableArray<CheckResult> Checks { get; init; }

    /// <summary>Cut lengths, stretch, pull on the supports, keepers, modes and cautions.</summary>
    public RopeWork Ropework { get; init; } = new();

    /// <summary>What would pass where a check fails; empty when none does. Preliminary.</summary>
    public ImmutableArray<Remedy> Remedies { get; init; } = [];

    /// <summary>The ropes along their true curves, left before right; empty when no curve was asked for.</summary>
    public ImmutableArray<RopeLine> RopeLines { get; init; } = [];

    /// <summary>Which boards to buy and how to cut them.</summary>
    public StockPlan StockPlan { get; init; } = new([]);
}

/// <summary>The axis of one rope as a line through points close enough together to be drawn as a curve.</summary>
/// <param name="Name"><c>left</c> (negative z) or <c>right</c>.</param>
/// <param name="Radius">Radius of the rope, metres.</param>
/// <param name="Points">Two or more points from A to B, world axes, metres.</param>
public sealed record RopeLine(string Name, double Radius, ImmutableArray<Vector3d> Points);

/// <summary>Names of the members of one frame or bay, in order.</summary>
/// <param name="Name"><c>F03</c> or <c>B03</c>.</param>
/// <param name="MemberIds">Ids of its members.</param>
public sealed record GroupIds(string Name, ImmutableArray<string> MemberIds);
