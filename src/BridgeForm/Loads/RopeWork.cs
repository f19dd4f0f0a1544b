using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;
using BridgeForm.Ropes.Modes;

namespace BridgeForm.Loads;

/// <summary>All that is found out about the ropes beyond their design state.</summary>
public sealed record RopeWork
{
    /// <summary>Load cases.</summary>
    public ImmutableArray<LoadCaseResult> Cases { get; init; } = [];

    /// <summary>
    /// Those that tilt and steepen the deck most, with the rope grown by the high end of its stretch and nothing taken up, hottest;
    /// empty where its stretch is not known.
    /// </summary>
    public ImmutableArray<LoadCaseResult> Grown { get; init; } = [];

    /// <summary>Hoisting by the marks of the design state.</summary>
    public HoistingTable Hoisting { get; init; } = new([], []);

    /// <summary>Marks of the design state.</summary>
    public ImmutableArray<RopeMark> Marks { get; init; } = [];

    /// <summary>Marks and sags that the crew works by.</summary>
    public MarkedRopes Chosen { get; init; } = new(NewRopeWay.DrawnIn, 0, [], new([], []));

    /// <summary>Cut length and take-up; null when there is no rope.</summary>
    public RopeCut? Cut { get; init; }

    /// <summary>Low and high end of the constructional stretch; empty where it is not known.</summary>
    public ImmutableArray<StretchEnd> Stretch { get; init; } = [];

    /// <summary>Pull on support A and B; empty when no case has a solution.</summary>
    public ImmutableArray<SupportPull> Supports { get; init; } = [];

    /// <summary>What each interior frame's keeper must hold along one rope, in the case that asks most of it.</summary>
    public ImmutableArray<KeeperForce> Keepers { get; init; } = [];

    /// <summary>
    /// Fall of mid-span when one support moves <see cref="SupportMove.Standard"/>, metres; null when the moved ropes have no
    /// shape.
    /// </summary>
    public double? MidSpanDropWhenSupportMoves { get; init; }

    /// <summary>Why there is no such shape; null when there is one.</summary>
    public string? SupportMoveFailure { get; init; }

    /// <summary>Whether the section stays upright, state by state.</summary>
    public ImmutableArray<RollState> Roll { get; init; } = [];

    /// <summary>What loads to one side lift at the other rope, in each case that comes near to it.</summary>
    public ImmutableArray<Lift> Lifts { get; init; } = [];

    /// <summary>What the point load does at most, frame by frame; empty where the empty bridge does not stand.</summary>
    public ImmutableArray<PointBound> Points { get; init; } = [];

    /// <summary>What one rope longer than the other does; null where nothing tilts.</summary>
    public RopeSetting? Setting { get; init; }

    /// <summary>Modes of the empty bridge and of the loaded one; empty for a bridge without interior frames.</summary>
    public ImmutableArray<RopeModes> Modes { get; init; } = [];

    /// <summary>What people who handle the ropes must know.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>How high everything stands over the ropes; null where nothing was weighed.</summary>
    internal StandingWeights? Standing { get; init; }

    /// <summary>The case with the largest tension; null when no case has a solution.</summary>
    public LoadCaseResult? Governing =>
        Ties.FirstLargest(Cases.Where(c => c.Shape is not null), c => c.Shape!.LargestTension);

    /// <summary>What is asked, each with its worst case.</summary>
    public ImmutableArray<CaseRole> Governs() => CaseRole.Find(this);

    /// <summary>Cases in which the section rolls over.</summary>
    public IEnumerable<LoadCaseResult> Toppled => Cases.Where(c => c.RollsOver);

    /// <summary>What a case is, in a person's words, and that it rolls over where it does.</summary>
    /// <param name="id">Id of a case.</param>
    public string TitleOf(string id) => Cases.First(c => string.Equals(c.Id, id, StringComparison.Ordinal)) is var found && found.RollsOver
        ? found.Title + "; it rolls over"
        : found.Title;

    /// <summary>How far each frame falls at the most.</summary>
    public ImmutableArray<FrameFall> Falls() => FrameFall.Find(Cases, [.. Marks.Select(m => m.Frame)]);

    /// <summary>
    /// What new rope that was set short for its stretch does to a support before it has stretched; null where no stretch is known.
    /// </summary>
    /// <param name="support"><c>A</c> or <c>B</c>.</param>
    public SupportPull? PullWhenNew(string support) => Ties.FirstLargest(
        Stretch.SelectMany(s => s.NewPulls).Where(p => string.Equals(p.Support, support, StringComparison.Ordinal)), p => p.Held);

    /// <summary>
    /// Largest tension of one rope between the supports and in its backstays, newtons; of new rope set short for its stretch too where
    /// the file chose such marks; 0 when no case has a solution.
    /// </summary>
    public double LargestPull => Supports.Select(s => s.Backstay?.Tension ?? 0)
        .Append(Governing?.Shape!.LargestTension ?? 0)
        .Append(PullSetShort)
        .Max();

    /// <summary>
    /// Largest tension of new rope before it has stretched, newtons; 0 by plain marks: then it is never shorter than drawn.
    /// </summary>
    public double PullSetShort => Chosen.How == NewRopeWay.AsIs
        ? Stretch.Select(s => s.NewPull?.Tension ?? 0).DefaultIfEmpty().Max() : 0;

    /// <summary>Works on the ropes of a bridge.</summary>
    /// <param name="layout">Where the frames stand.</param>
    /// <param name="design">Design state of one rope.</param>
    /// <param name="masses">Masses of the frames and bays.</param>
    /// <param name="token">Asked before each case.</param>
    public static RopeWork Work(BridgeLayout layout, RopeShape design, BridgeMasses masses, CancellationToken token = default)
    {
        var parameters = layout.Parameters;
        var site = parameters.Site;
        ImmutableArray<string> names = [.. layout.Poses.Select(f => f.Name)];
        var input = LoadCaseInput.Gather(layout, design, masses, token);
        var cases = CasesOf(parameters, input, token);
        var marks = RopeMarks.Place(design, names, parameters.Ropes.MarkingTension);
        var cut = RopeCut.Measure(parameters, design);
        var moved = SupportMove.TryFallOfMiddle(design, input.Backstays, SupportMove.Standard, out var fall, out var failure);
        var grown = GrownCases.Solve(parameters, input, cases, token);
        var hoisting = Loads.Hoisting.Solve(
            design, input.FrameLoads, site.ReferenceTemperature, site.Temperatures, input.Backstays, token: token);
        return new RopeWork
        {
            Cases = cases,
            Grown = grown,
            Standing = input.Standing,
            Hoisting = hoisting,
            Marks = marks,
            Chosen = MarkedRopes.Choose(parameters, input, marks, hoisting, token),
            Cut = cut,
            Stretch = StretchEnds.Work(parameters, input, cases, marks, cut, token),
            Supports = SupportPull.Find(site, cases),
            Keepers = KeeperForce.Find(cases, names),
            MidSpanDropWhenSupportMoves = moved ? fall : null,
            SupportMoveFailure = failure,
            Roll = RollState.Find(input, cases, StretchRange.Most(parameters.Ropes), token),
            Lifts =
            [
                .. Lift.Find(input, cases, names, token),
                .. Lift.Find(GrownCases.Input(parameters, input), grown, names, token).Select(l => l with { IsGrown = true }),
            ],
            Points = LoadCases.Bounds(input, cases),
            Setting = RopeSetting.Find(input, cases),
            Modes = ModesOf(input, cases, token),
            Cautions = RopeCautions.List(parameters.Ropes),
        };
    }

    /// <summary>The load cases with what they mean for deck, ground and water.</summary>
    public static ImmutableArray<LoadCaseResult> CasesOf(
        BridgeParameters parameters, LoadCaseInput input, CancellationToken token = default) =>
        [.. LoadCases.All(input, token: token).Select(c => CaseSurroundings.Look(parameters, c))];

    private static ImmutableArray<RopeModes> ModesOf(LoadCaseInput input, ImmutableArray<LoadCaseResult> cases, CancellationToken token) =>
    [
        .. cases
            .Where(c => c is { Shape: not null, Id: "dead" or "live-full" })
            .Select(c => SideMotion.Find(input, c, token))
            .OfType<RopeModes>(),
    ];
}

/// <summary>Where the frames are marked on a rope that lies straight in the shop.</summary>
public static class RopeMarks
{
    /// <summary>
    /// Marks from support A's point, supports included, metres at the reference temperature. Pulled to the marking
    /// tension T the rope is longer by T/EA.
    /// </summary>
    /// <param name="design">The design state.</param>
    /// <param name="frameNames">One name a node.</param>
    /// <param name="markingTension">Newtons; 0 for unstressed.</param>
    public static ImmutableArray<RopeMark> Place(
        RopeShape design, ImmutableArray<string> frameNames, double markingTension)
    {
        if (frameNames.Length != design.Nodes.Length)
        {
            throw new ArgumentException("There must be one name a node.", nameof(frameNames));
        }

        ArgumentOutOfRangeException.ThrowIfNegative(markingTension);
        var stretched = 1 + (markingTension / design.AxialStiffness);
        var marks = ImmutableArray.CreateBuilder<RopeMark>(frameNames.Length);
        var along = default(CompensatedSum);
        for (var i = 0; i < frameNames.Length; i++)
        {
            marks.Add(new RopeMark(frameNames[i], along.Value, along.Value * stretched));
            if (i < design.Segments.Length)
            {
                along = along.Plus(design.Segments[i].UnstressedLength);
            }
        }

        return marks.MoveToImmutable();
    }
}

/// <summary>What people who handle the ropes must know. Common practice of rigging, no source.</summary>
public static class RopeCautions
{
    /// <summary>The cautions for a project's ropes, most dangerous first.</summary>
    public static ImmutableArray<string> List(RopeParameters ropes)
    {
        var all = ImmutableArray.CreateBuilder<string>();
        all.AddRange(
            "A rope under load that parts or slips whips back: nobody stands in line with it or inside its bight.",
            "Nobody stands under a rope, frame or tool that is being hoisted.",
            "Whoever works over the drop is tied to something other than the bridge: fall protection until the guard stands.",
            "Anchors, and the posts or trees that hold the ropes, are designed by an engineer before any rope is drawn tight.",
            "Seize the rope on both sides of each cut before cutting it: an end that springs open hurts, and the lay is lost.",
            "Uncoil rope and strand by rolling the coil or turning the reel, never by pulling loops off: a kink is a broken rope.",
            "Cut both ropes from one reel, so that they stretch alike and the bridge hangs level.",
            "Wear gloves and eye protection: broken wires cut, and chips fly from cut rope.");
        if (Terminations.IsClips(ropes) && Terminations.ClipsHold(ropes.Rope.Kind))
        {
            all.AddRange(
                "Clips: the saddle on the live rope, the U-bolt on the turned-back end.",
                "Tighten clips again to their torque after the first full load, and then twice a year.");
        }

        all.Add("Look along every rope and at every end twice a year: broken wires, rust, slip at clips, wood worn by the rope.");
        return all.ToImmutable();
    }
}
