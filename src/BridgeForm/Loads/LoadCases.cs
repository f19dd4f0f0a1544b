using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>
/// The load cases of a bridge, both ropes together with the frames that stand on them: unstressed lengths and the frames'
/// places on the rope are those of the design state, all other loads come on top of the dead load.
/// </summary>
/// <remarks>
/// Concentrated loads at the middle line weigh half on each rope; those at the edge, and the user's own, are shared by statics.
/// The user's own stand exactly where they are put, and the two frames beside share them by the lever rule. What comes to an
/// end frame rests on the landing. Frames that tilt shift every weight by its height × tan θ towards the lower rope
/// (<see cref="PairSolver"/>): people's weight lies 1.0 m over the deck, snow's on its surface. What lies where stands in
/// <see cref="LoadPatterns"/>, where live load is worst in <see cref="GoverningLoads"/>, where the point load stands in
/// <see cref="PointLoads"/>.
/// </remarks>
public static class LoadCases
{
    /// <summary>
    /// All cases in a fixed order: the listed ones, live load on parts of the deck and where it is worst, the point load frame
    /// by frame, then the user's.
    /// </summary>
    /// <param name="input">Design state and loads.</param>
    /// <param name="accuracy">Largest residual as a share of the total load on the rope.</param>
    /// <param name="maxIterations">Most Newton steps for one case.</param>
    /// <param name="token">Asked before each case.</param>
    public static ImmutableArray<LoadCaseResult> All(
        LoadCaseInput input,
        double accuracy = LoadCaseSolver.DefaultAccuracy,
        int maxIterations = LoadCaseSolver.DefaultMaxIterations,
        CancellationToken token = default)
    {
        var patterns = new LoadPatterns(input);
        Loading[] listed = [.. patterns.Listed()];
        var solver = new Solver(input, accuracy, maxIterations, token);
        var cases = ImmutableArray.CreateBuilder<LoadCaseResult>();
        cases.AddRange(listed.Select(solver.Solve));
        var full = Evenly(input, listed.First(l => l.Id is LoadCaseIds.LiveFull));
        var empty = cases.First(c => c.Id is LoadCaseIds.Dead).Pair;
        cases.AddRange(patterns.OnParts().Select(solver.Solve));
        cases.AddRange(new GoverningLoads(input, patterns, solver.Solve).Find(full, empty));
        if (new RollLoads(patterns, input, solver.Solve).Find(full) is { } nearest)
        {
            cases.Add(nearest);
        }

        cases.AddRange((PointLoads.Of(input, patterns, empty)?.ToSolve(listed) ?? []).Select(solver.Solve));
        cases.AddRange(patterns.Own().Select(solver.Solve));
        return cases.ToImmutable();
    }

    /// <summary>Some of the listed cases and of the user's, for trial designs.</summary>
    /// <param name="input">Design state and loads.</param>
    /// <param name="wanted">Which, by id.</param>
    /// <param name="token">Asked before each case.</param>
    internal static ImmutableArray<LoadCaseResult> Some(LoadCaseInput input, Func<string, bool> wanted, CancellationToken token)
    {
        var patterns = new LoadPatterns(input);
        return Solved(input, patterns.Listed().Concat(patterns.Own()).Where(l => wanted(l.Id)), token);
    }

    /// <summary>
    /// Live load where the section comes nearest to rolling over, for trial designs; none where nothing lies on the deck.
    /// </summary>
    /// <param name="input">Design state and loads.</param>
    /// <param name="token">Asked before each case.</param>
    internal static ImmutableArray<LoadCaseResult> LeastRoll(LoadCaseInput input, CancellationToken token)
    {
        var (patterns, solver) = (new LoadPatterns(input),
            new Solver(input, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, token));
        return new RollLoads(patterns, input, solver.Solve).Find(Evenly(input, LoadCaseIds.LiveFull)) is { } found ? [found] : [];
    }

    /// <summary>What the point load does at most, frame by frame; empty where the empty bridge does not stand.</summary>
    /// <param name="input">Design state and loads.</param>
    /// <param name="cases">The cases as they were solved.</param>
    internal static ImmutableArray<PointBound> Bounds(LoadCaseInput input, ImmutableArray<LoadCaseResult> cases) =>
        PointLoads.Of(input, new LoadPatterns(input), cases.First(c => c.Id is LoadCaseIds.Dead).Pair)?.Bounds() ?? [];

    /// <summary>
    /// Cases under which a section is most likely to turn over, in the heat: the empty bridge, people all along, on either
    /// half, on one side.
    /// </summary>
    /// <param name="input">Design state and loads, the rope's stretch included.</param>
    /// <param name="token">Asked before each case.</param>
    /// <param name="only">Only this one; null for all.</param>
    /// <param name="nearest">Live load where the section comes nearest to rolling over at the reference temperature.</param>
    internal static ImmutableArray<LoadCaseResult> InHeat(
        LoadCaseInput input, CancellationToken token, string? only = null, Loading? nearest = null)
    {
        var patterns = new LoadPatterns(input);
        return Solved(
            input,
            patterns.Listed().Where(l => s_rolling.Contains(l.Id, StringComparer.Ordinal)).Concat(patterns.Own())
                .Concat(nearest is null ? [] : [nearest])
                .Where(l => only is null || l.Id.Equals(only, StringComparison.Ordinal))
                .Select(l => l with { Temperature = input.Hottest }),
            token);
    }

    /// <summary>
    /// Cases with loads to one side, solved again with no more of the bridge's own weight than can be counted on: they lift
    /// what the other rope carries.
    /// </summary>
    /// <param name="input">Design state and loads.</param>
    /// <param name="loadings">Which.</param>
    /// <param name="token">Asked before each case.</param>
    internal static ImmutableArray<LoadCaseResult> Lifting(
        LoadCaseInput input, IEnumerable<Loading> loadings, CancellationToken token) => input.Standing is { } standing
        ? Solved(
            input,
            loadings.Select(l => l with
            {
                Hung = [.. standing.Light.Select(w => w * SureDead)],
                HungMoments = [.. standing.LightMoments.Select(m => m * SureDead)],
            }),
            token)
        : [];

    /// <summary>The same loads again on ropes of another length.</summary>
    /// <param name="input">Design state and loads, the rope's stretch included.</param>
    /// <param name="loadings">Which.</param>
    /// <param name="token">Asked before each case.</param>
    internal static ImmutableArray<LoadCaseResult> Solved(
        LoadCaseInput input, IEnumerable<Loading> loadings, CancellationToken token)
    {
        var solver = new Solver(input, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, token);
        return [.. loadings.Select(solver.Solve)];
    }

    /// <summary>Of the dead load may be counted on against what lifts: 0.6 D (ASCE 7 2.4.1 combination 7, from memory).</summary>
    public const double SureDead = 0.6;

    /// <summary>
    /// What lies on the deck of a live-full case, and both ropes under it with all of it in the middle; null when they have no
    /// shape.
    /// </summary>
    internal static PairCase? Evenly(LoadCaseInput input, string id) =>
        Evenly(input, new LoadPatterns(input).Listed().First(l => string.Equals(l.Id, id, StringComparison.Ordinal)));

    private static PairCase? Evenly(LoadCaseInput input, Loading loading) =>
        new Solver(input, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, default)
            .Pair(loading with { On = [.. loading.On.Select(o => o with { FromMiddle = 0 })] }, out _);

    private static readonly ImmutableArray<string> s_rolling =
    [
        LoadCaseIds.Dead, LoadCaseIds.LiveFull, LoadCaseIds.LiveHalfA, LoadCaseIds.LiveHalfB, LoadCaseIds.LiveSide,
    ];

    /// <summary>Share of each of people and snow when both act: 0.75 L + 0.75 S (ASCE 7 2.4.1 combination 4, from memory).</summary>
    public const double TogetherShare = 0.75;

    /// <summary>People and snow at once, Pa, by <see cref="TogetherShare"/>.</summary>
    public static double Together(double live, double snow) => TogetherShare * (live + snow);

    /// <summary>Solves one case after the other, each from the shape of the one before that is nearest to it in weight.</summary>
    private sealed class Solver(LoadCaseInput input, double accuracy, int maxIterations, CancellationToken token)
    {
        private readonly List<(double Weight, RopeShape Shape)> _found = [];

        public LoadCaseResult Solve(Loading loading)
        {
            token.ThrowIfCancellationRequested();
            return Pair(loading, out var failure) is { } found ? Result(input, loading, found) : Failed(loading, failure);
        }

        public PairCase? Pair(Loading loading, out string? failure)
        {
            var rope = LoadCaseRequest.At(
                input.Design, loading.Temperature - input.ReferenceTemperature, input.Backstays, input.Stretch);
            var loads = loading.Sum();
            var weight = Total(loads.Weights);
            rope = rope with { Start = Nearest(weight) ?? rope.Start };
            if (!PairSolver.TryFind(rope, input.RopeSpacing, loads, accuracy, maxIterations, out var pair, out failure))
            {
                return null;
            }

            _found.Add((weight, pair!.Left));
            return new PairCase(rope, input.RopeSpacing, loads, pair);
        }

        private RopeShape? Nearest(double weight)
        {
            var (found, least) = (default(RopeShape), Math.Abs(weight - (2 * Total(input.Design.Loads))));
            foreach (var one in _found)
            {
                if (Math.Abs(one.Weight - weight) < least)
                {
                    (found, least) = (one.Shape, Math.Abs(one.Weight - weight));
                }
            }

            return found;
        }

        private static double Total(ImmutableArray<double> weights)
        {
            var sum = 0.0;
            foreach (var weight in weights)
            {
                sum += weight;
            }

            return sum;
        }
    }

    private static LoadCaseResult Result(LoadCaseInput input, Loading loading, PairCase found)
    {
        var pair = found.Shape;
        var (shape, other) = Ties.IsLarger(pair.Right.LargestTension, pair.Left.LargestTension)
            ? (pair.Right, pair.Left)
            : (pair.Left, pair.Right);
        var middle = input.Design.Nodes[^1].X / 2;
        var (a, b) = shape.Reactions();
        return new LoadCaseResult
        {
            Id = loading.Id,
            Title = loading.Title,
            Shape = shape,
            Lighter = other,
            Moves = Moves(input.Design.Nodes, shape.Nodes),
            MidSpanDrop = input.Design.HeightAt(middle) - shape.HeightAt(middle),
            Temperature = loading.Temperature,
            ReactionA = a,
            ReactionB = b,
            RollsOver = pair.RollsOver,
            CrossSlope = pair.RollsOver ? null : PairShape.Largest(pair.Tilts),
            FirstOrderCrossSlope = PairShape.Largest(pair.FirstOrderTilts),
            LargestShare = pair.RollsOver ? null : LargestShare(loading, found),
            Pair = found,
            Loading = loading,
        };
    }

    private static ImmutableArray<RopePoint> Moves(ImmutableArray<RopePoint> from, ImmutableArray<RopePoint> to)
    {
        var moves = ImmutableArray.CreateBuilder<RopePoint>(from.Length);
        for (var i = 0; i < from.Length; i++)
        {
            moves.Add(new RopePoint(to[i].X - from[i].X, to[i].Y - from[i].Y));
        }

        return moves.MoveToImmutable();
    }

    private static double? LargestShare(Loading loading, PairCase found) => loading.On.IsEmpty
        ? null
        : loading.On.Max(o => Math.Max(
            o.LargestShare(found.Shape.Tilts, found.Spacing, 1), o.LargestShare(found.Shape.Tilts, found.Spacing, -1)));

    private static LoadCaseResult Failed(Loading loading, string? failure) => new()
    {
        Id = loading.Id,
        Title = loading.Title,
        Shape = null,
        Failure = failure,
        Temperature = loading.Temperature,
        Loading = loading,
    };
}
