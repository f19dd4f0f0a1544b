using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>How much longer new rope becomes for good as its wires bed in under load, as a share of its length.</summary>
/// <param name="Range">Low and high share; null: not known, the maker or an engineer says.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record StretchRange(ShareRange? Range, string Source)
{
    /// <summary>The project file's range, or the usual one of the rope's kind.</summary>
    public static StretchRange Of(RopeParameters ropes) => (ropes.Stretch, ropes.Rope.Kind) switch
    {
        ({ } own, _) => new(own, "the project file"),
        (_, RopeKind.WireRope) => new(
            new ShareRange(0.00125, 0.005),
            "new rope with a steel core, as rope catalogs print it: 0.125 % at a safety factor of 8, 0.25 % at 5, 0.5 % at 3"),
        _ => new(null, "no value seen for this kind of rope: ask its maker and write ropes.stretch"),
    };

    /// <summary>
    /// What every look at ropes that have stretched takes: the high end; where it is not known, the most that is known of any; a share of
    /// the rope's length.
    /// </summary>
    public static double Most(RopeParameters ropes) => Of(ropes).Range?.High ?? MostOfAny;

    /// <summary>What is said of it; begins with a semicolon, empty where the range is known.</summary>
    public static string Unknown(RopeParameters ropes) => Of(ropes).Range is null
        ? "; how far this rope stretches is not known (ropes.stretch): 0.5 % taken, the most of wire rope"
        : "";

    // New wire rope with a steel core at a safety factor of 3, as above.
    private const double MostOfAny = 0.005;
}

/// <summary>What one end of the range of constructional stretch means for the builder. Metres.</summary>
public sealed record StretchEnd
{
    /// <summary>Share of the rope's length.</summary>
    public required double Share { get; init; }

    /// <summary>
    /// Marks on the new, unstressed rope, from support A's point, that come to the marks of the design state once the rope
    /// has bedded in: each mark / (1 + share).
    /// </summary>
    public required ImmutableArray<RopeMark> Marks { get; init; }

    /// <summary>Hoisting of the new rope set to those shorter marks.</summary>
    public required HoistingTable Hoisting { get; init; }

    /// <summary>What must be drawn in at the ends of one rope to undo the stretch: share · length, supports and backstays.</summary>
    public required double TakeUp { get; init; }

    /// <summary>The finished bridge of a rope set to the plain marks, bedded in and nothing taken up; null: no solution.</summary>
    public RopeShape? Shape { get; init; }

    /// <summary>Why there is no such shape, or none in some load case; null when there are all.</summary>
    public string? Failure { get; init; }

    /// <summary>How far mid-span lies then below the design state.</summary>
    public double? MidSpanDrop { get; init; }

    /// <summary>
    /// What the new rope, set to its shorter marks, does to the supports while it has not stretched yet: the load cases are
    /// the finished bridge's. It hangs flatter than designed and pulls harder.
    /// </summary>
    public ImmutableArray<SupportPull> NewPulls { get; init; } = [];

    /// <summary>
    /// The first load case or hoisting row of the new rope, set to its shorter marks, that has no shape, and why; null when all
    /// have one.
    /// </summary>
    public string? NewFailure { get; init; }

    /// <summary>Largest tension of the new rope in any case, newtons, with the case; null: no solution.</summary>
    public PullInCase? NewPull { get; init; }

    /// <summary>Least clearance over the ground then, of all load cases; null where no ground is given.</summary>
    public RoomInCase? OverGround { get; init; }

    /// <summary>Least clearance over the highest water then, of all load cases; null where none is given.</summary>
    public RoomInCase? OverWater { get; init; }
}

/// <summary>A tension and where it is largest.</summary>
/// <param name="Case">Id of the load case.</param>
/// <param name="Tension">Of one rope, its backstays included, newtons.</param>
public sealed record PullInCase(string Case, double Tension)
{
    /// <summary>The largest of all cases, between the supports and in the backstays; null when no case has a solution.</summary>
    public static PullInCase? Largest(ImmutableArray<LoadCaseResult> cases, ImmutableArray<SupportPull> pulls) => Ties.FirstLargest(
        cases.Where(c => c.Shape is not null)
            .Select(c => new PullInCase(c.Id, c.Shape!.LargestTension))
            .Concat(pulls.Where(p => p.Backstay is not null).Select(p => new PullInCase(p.Case, p.Backstay!.Tension))),
        p => p.Tension);
}

/// <summary>A clearance and where it is least.</summary>
/// <param name="Case">Id of the load case.</param>
/// <param name="Room">Metres; negative where the bridge reaches in.</param>
public sealed record RoomInCase(string Case, double Room)
{
    /// <summary>The least of all cases; null where there is nothing to stay clear of.</summary>
    public static RoomInCase? Least(ImmutableArray<LoadCaseResult> cases, Func<LoadCaseResult, double?> room) => Ties.FirstLeast(
        cases.Where(c => room(c) is not null).Select(c => new RoomInCase(c.Id, room(c)!.Value)), r => r.Room);
}

/// <summary>Works out both ends of the range.</summary>
internal static class StretchEnds
{
    /// <summary>Low and high end; empty where the stretch is not known.</summary>
    public static ImmutableArray<StretchEnd> Work(
        BridgeParameters parameters,
        LoadCaseInput input,
        ImmutableArray<LoadCaseResult> cases,
        ImmutableArray<RopeMark> marks,
        RopeCut cut,
        CancellationToken token = default) =>
        StretchRange.Of(parameters.Ropes).Range is { } range
            ? [
                End(parameters, input, cases, marks, cut, range.Low, token),
                End(parameters, input, cases, marks, cut, range.High, token),
            ]
            : [];

    private static StretchEnd End(
        BridgeParameters parameters,
        LoadCaseInput input,
        ImmutableArray<LoadCaseResult> cases,
        ImmutableArray<RopeMark> marks,
        RopeCut cut,
        double share,
        CancellationToken token)
    {
        var (design, site) = (input.Design, parameters.Site);
        _ = LoadCaseSolver.TryFind(
            LoadCaseRequest.At(design, 0, input.Backstays, share),
            LoadCaseSolver.DefaultAccuracy,
            LoadCaseSolver.DefaultMaxIterations,
            out var shape,
            out var failure);
        var stretched = input.Underside is not null
            ? CaseSurroundings.InAll(parameters, LoadCases.Solved(input with { Stretch = share }, ForRoom(cases), token))
            : [];
        var middle = site.Span / 2;
        var shorter = (1 / (1 + share)) - 1;
        var asNew = LoadCases.Solved(input with { Stretch = shorter }, ForPull(cases), token);
        var pulls = SupportPull.Find(site, asNew);
        var hoisting = Hoisting.Solve(
            design, input.FrameLoads, site.ReferenceTemperature, site.Temperatures, input.Backstays, shorter, token);
        return new StretchEnd
        {
            Share = share,
            Marks = [.. marks.Select(m => new RopeMark(m.Frame, m.Unstressed / (1 + share), m.AtMarkingTension / (1 + share)))],
            Hoisting = hoisting,
            TakeUp = share * cut.BetweenEnds,
            Shape = shape,
            Failure = failure ?? stretched.Select(Unsolved).FirstOrDefault(f => f is not null),
            MidSpanDrop = shape is null ? null : design.HeightAt(middle) - shape.HeightAt(middle),
            NewPulls = pulls,
            NewFailure = asNew.Select(Unsolved).OfType<string>()
                .Concat(hoisting.Failures.Select(f => "hoisting, " + f))
                .FirstOrDefault(),
            NewPull = PullInCase.Largest(asNew, pulls),
            OverGround = RoomInCase.Least(stretched, c => c.OverGround),
            OverWater = RoomInCase.Least(stretched, c => c.OverWater),
        };
    }

    // What hangs deepest on a longer rope: nothing cold; and what tilts the bases so that their ends do.
    private static IEnumerable<Loading> ForRoom(ImmutableArray<LoadCaseResult> cases)
    {
        var (ground, water) = (RoomInCase.Least(cases, c => c.OverGround)?.Case, RoomInCase.Least(cases, c => c.OverWater)?.Case);
        return cases
            .Where(c => !LoadCaseIds.IsTaken(c.Id) || s_deep.Contains(c.Id, StringComparer.Ordinal)
                || string.Equals(c.Id, ground, StringComparison.Ordinal) || string.Equals(c.Id, water, StringComparison.Ordinal))
            .Select(c => c.Loading!);
    }

    // What pulls hardest on a shorter rope: all along, in the cold, and whatever pulls hardest as marked.
    private static IEnumerable<Loading> ForPull(ImmutableArray<LoadCaseResult> cases)
    {
        var worst = PullInCase.Largest(cases, [])?.Case;
        return cases
            .Where(c => !LoadCaseIds.IsTaken(c.Id) || s_hard.Contains(c.Id, StringComparer.Ordinal)
                || string.Equals(c.Id, worst, StringComparison.Ordinal))
            .Select(c => c.Loading!);
    }

    private static readonly ImmutableArray<string> s_deep =
    [
        LoadCaseIds.Dead, LoadCaseIds.LiveFull, LoadCaseIds.LiveHalfA, LoadCaseIds.LiveHalfB, LoadCaseIds.ErectHalf, LoadCaseIds.Snow,
        LoadCaseIds.LiveSnow, LoadCaseIds.Hot, LoadCaseIds.LiveFullHot, LoadCaseIds.MostFall, LoadCaseIds.MostFallDry,
        LoadCaseIds.LeastGround, LoadCaseIds.LeastWater, LoadCaseIds.LiveSide, LoadCaseIds.LiveCross, LoadCaseIds.MostTilt,
    ];

    private static readonly ImmutableArray<string> s_hard =
    [
        LoadCaseIds.Dead, LoadCaseIds.LiveFull, LoadCaseIds.ErectHalf, LoadCaseIds.Snow, LoadCaseIds.LiveSnow, LoadCaseIds.Cold,
        LoadCaseIds.LiveFullCold, LoadCaseIds.SnowCold, LoadCaseIds.LiveSnowCold, LoadCaseIds.MostTension,
    ];

    // A section that rolls over with the rope so long has no room and no pull either that could be told.
    private static string? Unsolved(LoadCaseResult result) =>
        result.Failure is { } failure ? $"{result.Id}: {failure}"
        : result.RollsOver ? $"{result.Id}: it rolls over."
        : null;
}
