using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Stocking;
using BridgeForm.Trials;

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

    /// <summary>What a wind across the bridge does.</summary>
    public WindWork Wind { get; init; } = WindWork.None;

    /// <summary>What would pass where a check fails; empty when none does. Preliminary.</summary>
    public ImmutableArray<Remedy> Remedies { get; init; } = [];

    /// <summary>Mass of one rope from support to support, kilograms: its unstressed length by its mass for each metre of that.</summary>
    public double RopeMass => Parameters.Ropes.Rope.MassPerLength * Rope.Segments.Sum(s => s.UnstressedLength);

    /// <summary>The ropes along their true curves, left before right; empty when no curve was asked for.</summary>
    public ImmutableArray<RopeLine> RopeLines { get; init; } = [];

    /// <summary>Which boards to buy and how to cut them.</summary>
    public StockPlan StockPlan { get; init; } = new([]);

    /// <summary>
    /// The cases that people are shown: the empty and the full bridge, half built, cold and hot, the user's own, those that have
    /// no shape or roll over, and whichever is worst for something. All of them are in the report.
    /// </summary>
    public ImmutableArray<LoadCaseResult> ShownCases()
    {
        HashSet<string> governing = [.. Ropework.Governs().Select(g => g.Case)];
        return
        [
            .. Cases.Where(c => c.Shape is null || c.RollsOver || governing.Contains(c.Id) || !LoadCaseIds.IsTaken(c.Id)
                || c.Id is LoadCaseIds.Dead or LoadCaseIds.LiveFull or LoadCaseIds.ErectHalf or LoadCaseIds.Cold or LoadCaseIds.Hot),
        ];
    }

    /// <summary>The order of building, every part once.</summary>
    public ImmutableArray<AssemblyStep> Assembly() => AssemblyOrder.Plan(Parameters.Erection, Pieces, Frames, Groups);

    /// <summary>How the ropes hang and pull when each stage of the assembly is done.</summary>
    public ImmutableArray<StageSlope> Stages() => StageSlopes.Find(
        Parameters, Rope, Pieces, Groups, Assembly(), Ropework.Chosen.Shorter - 1, Ropework.Standing);

    /// <summary>The whole way of building, with its hold points.</summary>
    public ImmutableArray<ErectionStep> Erection() => Erection(Stages());

    /// <summary>The same where the stages are at hand.</summary>
    public ImmutableArray<ErectionStep> Erection(ImmutableArray<StageSlope> stages) =>
        ErectionPlan.List(
            Parameters, Pieces, Ropework, Assembly(), stages,
            Checks.FirstOrDefault(c => c is { Id: EndBayRoom, Status: CheckStatus.Warn })?.Demand ?? 0);

    // Told of by the check: how far the frames next to the supports come nearer to them.
    private const string EndBayRoom = "end-bay-room";

    /// <summary>Keepers, fasteners by joint, rope and its ends.</summary>
    public ImmutableArray<HardwareItem> Hardware()
    {
        var listed = HardwareList.List(
            Parameters,
            Pieces,
            Ropework,
            Checks.Where(c => c.Id.StartsWith(JointForce, StringComparison.Ordinal) || c.Id.StartsWith(HeldForce, StringComparison.Ordinal))
                .ToDictionary(
                    c => c.Id[(c.Id.StartsWith(HeldForce, StringComparison.Ordinal) ? HeldForce : JointForce).Length..], c => c.Demand,
                    StringComparer.Ordinal));
        return Parameters.Guard is { Net: not null }
            ? listed.AddRange(NetHardware.Rows(Parameters, BridgeLayout.Lay(Parameters, Rope)))
            : listed;
    }

    /// <summary>Netting of the whole bridge, m²; 0 without <c>guard.net</c>.</summary>
    public double NetArea() => Parameters.Guard.Net is null ? 0 : NetHardware.Area(BridgeLayout.Lay(Parameters, Rope));

    /// <summary>Plates and bolts of joints that the project file describes.</summary>
    public ImmutableArray<SteelPart> Steel() => JointSteel.Lay(Parameters, Frames);

    /// <summary>Landings whose depth the project file gives, and what carries their edges: stand-ins for what others make.</summary>
    public ImmutableArray<StandIn> Landings() => Parameters.Site is { A.LandingDepth: null, B.LandingDepth: null }
        ? []
        : [.. LandingStandIns.Lay(BridgeLayout.Lay(Parameters, Rope))];

    /// <summary>Netting of the guard, as thin panels; none without <c>guard.net</c>.</summary>
    public ImmutableArray<StandIn> Nets() => Parameters.Guard is { Net: not null }
        ? [.. GuardNet.Panels(BridgeLayout.Lay(Parameters, Rope))]
        : [];

    /// <summary>
    /// Plates that pass where a joint of post or brace fails or is left to an engineer, clear of each other; looked for anew, which takes a
    /// while.
    /// </summary>
    public ImmutableArray<Remedy> JointsThatPass() => JointRemedies.Find(BridgeLayout.Lay(Parameters, Rope), Ropework, Checks);

    private const string JointForce = "guard-joint-";
    private const string HeldForce = "joint-";
}
