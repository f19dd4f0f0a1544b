using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>Whether the section stays upright in one state of the bridge.</summary>
public sealed record RollState
{
    /// <summary>Id of the load case.</summary>
    public required string Case { get; init; }

    /// <summary>
    /// At the highest temperature, with the rope grown by the high end of its stretch and nothing taken up; else as the case
    /// is.
    /// </summary>
    public required bool InHeat { get; init; }

    /// <summary>
    /// How many times as high the weights could stand; of upright frames where it rolls over. Null when the state has no
    /// shape, or no frame hangs between the supports.
    /// </summary>
    public required RollFactor? Factor { get; init; }

    /// <summary>The factor is at most 1, or no equilibrium was found.</summary>
    public required bool RollsOver { get; init; }

    /// <summary>Why the state has no shape; null when it has one.</summary>
    public string? Failure { get; init; }

    /// <summary>The factor with the deck held in plan, for information; only of the state with the least factor.</summary>
    public double? HeldInPlan { get; init; }

    /// <summary>
    /// Every case that is a load all along, on one half or on one side, the user's own, and those of the heat; people all along
    /// in the cold too, for a flat rope stretches more easily to one side; each other case only where it rolls over or has no
    /// shape.
    /// </summary>
    /// <param name="input">What the cases were made from.</param>
    /// <param name="cases">The cases as they were solved.</param>
    /// <param name="stretch">High end of the rope's stretch.</param>
    /// <param name="token">Asked before each state.</param>
    public static ImmutableArray<RollState> Find(
        LoadCaseInput input, ImmutableArray<LoadCaseResult> cases, double stretch, CancellationToken token = default)
    {
        var nearest = cases.FirstOrDefault(c => c.Id is LoadCaseIds.LeastRoll)?.Loading;
        var inHeat = LoadCases.InHeat(input with { Stretch = stretch }, token, nearest: nearest);
        List<(LoadCaseResult Case, RollState State)> all =
        [
            .. cases.Where(
                c => IsJudged(c.Id) || c.RollsOver || c.Shape is null)
                .Select(c => (c, One(c, inHeat: false, token))),
            .. inHeat.Select(c => (c, One(c, inHeat: true, token))),
        ];
        var least = Least(all.Select(s => s.State));
        return [.. all.Select(a => ReferenceEquals(a.State, least) ? Held(a.Case, a.State, input) : a.State)];
    }

    /// <summary>
    /// One state of another design again, for a trial design; every state that bridges are judged by where it is one of a case
    /// that is not listed.
    /// </summary>
    /// <param name="input">What the case is made from.</param>
    /// <param name="state">Which.</param>
    /// <param name="stretch">High end of the rope's stretch.</param>
    /// <param name="token">Asked before each case.</param>
    internal static ImmutableArray<RollState> Again(LoadCaseInput input, RollState state, double stretch, CancellationToken token)
    {
        var nearest = state.Case is LoadCaseIds.LeastRoll ? LoadCases.LeastRoll(input, token) : [];
        var cases = state.InHeat
            ? LoadCases.InHeat(input with { Stretch = stretch }, token, state.Case, nearest.FirstOrDefault()?.Loading)
            : [.. LoadCases.Some(input, id => string.Equals(id, state.Case, StringComparison.Ordinal), token), .. nearest];
        ImmutableArray<RollState> again = [.. cases.Select(c => One(c, state.InHeat, token))];
        return again.IsEmpty
            ? Find(input, [.. LoadCases.Some(input, IsJudged, token), .. LoadCases.LeastRoll(input, token)], stretch, token)
            : again;
    }

    /// <summary>The one that turns over first; null when none has a factor.</summary>
    public static RollState? Least(IEnumerable<RollState> states) =>
        Ties.FirstLeast(states.Where(s => s.Factor is not null), s => s.Factor!.Value);

    private static readonly ImmutableArray<string> s_judged =
    [
        LoadCaseIds.Dead, LoadCaseIds.LiveFull, LoadCaseIds.LiveHalfA, LoadCaseIds.LiveHalfB, LoadCaseIds.LiveSide,
        LoadCaseIds.Snow, LoadCaseIds.LiveSnow, LoadCaseIds.Hot, LoadCaseIds.LiveFullCold, LoadCaseIds.LeastRoll,
    ];

    private static bool IsJudged(string id) => s_judged.Contains(id, StringComparer.Ordinal) || !LoadCaseIds.IsTaken(id);

    private static RollState One(LoadCaseResult of, bool inHeat, CancellationToken token)
    {
        token.ThrowIfCancellationRequested();
        var factor = of.Pair?.Roll();
        return new RollState
        {
            Case = of.Id,
            InHeat = inHeat,
            Factor = factor,
            RollsOver = of.RollsOver || factor is { Value: <= 1 },
            Failure = of.Failure,
        };
    }

    private static RollState Held(LoadCaseResult of, RollState state, LoadCaseInput input) =>
        of.Pair is { } pair && input.Standing is { } standing
        ? state with { HeldInPlan = RollFactor.HeldInPlan(pair.Rope, pair.Spacing, pair.Loads, pair.Shape, standing.DeckHeights) }
        : state;
}
