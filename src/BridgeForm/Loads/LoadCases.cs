using System.Collections.Immutable;
using BridgeForm.Project;
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
/// Area load acts on the clear width; its eccentric share is on the heavier rope. Concentrated loads at the middle line
/// weigh half on each rope; <c>point-edge-mid</c> and the user's own stand at the edge and are shared by statics. The
/// standard ones stand at the frame nearest their place; the user's own stand exactly where they are put, and the two
/// frames beside share them by the lever rule. What comes to an end frame rests on the landing. Frames that tilt shift every
/// weight by its height × tan θ towards the lower rope (<see cref="PairSolver"/>): people's weight lies 1.0 m over the deck,
/// snow's on its surface.
/// </remarks>
public static class LoadCases
{
    // Resultant of a load on half the width, as a share of the width from the middle line; and half the width's load.
    private const double HalfWidthArm = 0.25;
    private const double HalfWidth = 0.5;

    /// <summary>All cases in a fixed order: the standard ones, then the user's.</summary>
    /// <param name="input">Design state and loads.</param>
    /// <param name="accuracy">Largest residual as a share of the total load on the rope.</param>
    /// <param name="maxIterations">Most Newton steps for one case.</param>
    /// <param name="token">Asked before each case.</param>
    public static ImmutableArray<LoadCaseResult> All(
        LoadCaseInput input,
        double accuracy = LoadCaseSolver.DefaultAccuracy,
        int maxIterations = LoadCaseSolver.DefaultMaxIterations,
        CancellationToken token = default) =>
        [
            .. Loadings(input).Select(l =>
            {
                token.ThrowIfCancellationRequested();
                return Solve(input, l, accuracy, maxIterations);
            }),
        ];

    /// <summary>
    /// Cases under which a section is most likely to turn over, in the heat: the empty bridge, people all along, on either
    /// half, on one side.
    /// </summary>
    /// <param name="input">Design state and loads, the rope's stretch included.</param>
    /// <param name="token">Asked before each case.</param>
    internal static ImmutableArray<LoadCaseResult> InHeat(LoadCaseInput input, CancellationToken token) =>
        Some(input, l => s_rolling.Contains(l.Id, StringComparer.Ordinal), l => l with { Temperature = input.Hottest }, token);

    /// <summary>
    /// Cases with loads to one side, solved again with no more of the bridge's own weight than can be counted on: they lift
    /// what the other rope carries.
    /// </summary>
    /// <param name="input">Design state and loads.</param>
    /// <param name="ids">Which.</param>
    /// <param name="token">Asked before each case.</param>
    internal static ImmutableArray<LoadCaseResult> Lifting(LoadCaseInput input, ImmutableArray<string> ids, CancellationToken token) =>
        input.Standing is { } standing
            ? Some(
                input,
                l => ids.Contains(l.Id, StringComparer.Ordinal),
                l => l with
                {
                    Hung = [.. standing.Light.Select(w => w * SureDead)],
                    HungMoments = [.. standing.LightMoments.Select(m => m * SureDead)],
                },
                token)
            : [];

    /// <summary>Of the dead load may be counted on against what lifts: 0.6 D (ASCE 7 2.4.1 combination 7, from memory).</summary>
    public const double SureDead = 0.6;

    /// <summary>
    /// What lies on the deck of a live-full case, and both ropes under it with all of it in the middle; null when they have no
    /// shape.
    /// </summary>
    internal static PairCase? Evenly(LoadCaseInput input, string id)
    {
        var loading = Loadings(input).First(l => string.Equals(l.Id, id, StringComparison.Ordinal));
        var even = loading with { On = [.. loading.On.Select(o => o with { FromMiddle = 0 })] };
        return Pair(input, even, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out _);
    }

    private static readonly ImmutableArray<string> s_rolling =
        [LoadCaseIds.Dead, LoadCaseIds.LiveFull, LoadCaseIds.LiveHalfA, LoadCaseIds.LiveHalfB, LoadCaseIds.LiveSide];

    private static ImmutableArray<LoadCaseResult> Some(
        LoadCaseInput input, Func<Loading, bool> which, Func<Loading, Loading> change, CancellationToken token) =>
    [
        .. Loadings(input).Where(which).Select(l =>
        {
            token.ThrowIfCancellationRequested();
            return Solve(input, change(l), LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations);
        }),
    ];

    /// <summary>Share of each of people and snow when both act: 0.75 L + 0.75 S (ASCE 7 2.4.1 combination 4, from memory).</summary>
    public const double TogetherShare = 0.75;

    /// <summary>People and snow at once, Pa, by <see cref="TogetherShare"/>.</summary>
    public static double Together(double live, double snow) => TogetherShare * (live + snow);

    private static IEnumerable<Loading> Loadings(LoadCaseInput input)
    {
        var (reference, span, loads) = (input.ReferenceTemperature, input.Design.Nodes[^1].X, input.Loads);
        var full = Dead(input).Plus(People(input, loads.Live, 0, span));
        var edge = NodeLoads.EdgeFromMiddle(input.ClearWidth, loads.PointEdge);
        yield return Dead(input, LoadCaseIds.Dead, "Bridge empty", reference);
        yield return full with { Id = LoadCaseIds.LiveFull, Title = "Live load on the whole deck" };
        yield return Dead(input).Plus(People(input, loads.Live, 0, span / 2)) with
        {
            Id = LoadCaseIds.LiveHalfA,
            Title = "Live load on the half next to support A",
        };
        yield return Dead(input).Plus(People(input, loads.Live, span / 2, span)) with
        {
            Id = LoadCaseIds.LiveHalfB,
            Title = "Live load on the half next to support B",
        };
        yield return Side(input, span);
        yield return Point(input, loads.PointForce, span / 2, 0) with
        {
            Id = LoadCaseIds.PointMid,
            Title = "Point load at mid-span, on the middle line",
        };
        yield return Point(input, loads.PointForce, span / 4, 0) with
        {
            Id = LoadCaseIds.PointQuarter,
            Title = "Point load at a quarter of the span, on the middle line",
        };
        yield return Point(input, loads.PointForce, span / 2, edge) with
        {
            Id = LoadCaseIds.PointEdgeMid,
            Title = "Point load at mid-span, at the edge of the deck",
        };
        yield return HalfErected(input, span);
        if (loads.Snow is { } snow)
        {
            yield return Dead(input).Plus(Snow(input, snow, span)) with { Id = LoadCaseIds.Snow, Title = "Snow on the whole deck" };
            yield return Dead(input)
                .Plus(People(input, TogetherShare * loads.Live, 0, span))
                .Plus(Snow(input, TogetherShare * snow, span)) with
            {
                Id = LoadCaseIds.LiveSnow,
                Title = "Three quarters each of live load and snow on the whole deck",
            };
        }

        yield return Dead(input, LoadCaseIds.Cold, "Bridge empty at the lowest temperature", input.Coldest);
        yield return Dead(input, LoadCaseIds.Hot, "Bridge empty at the highest temperature", input.Hottest);
        yield return full with
        {
            Id = LoadCaseIds.LiveFullCold,
            Title = "Live load on the whole deck at the lowest temperature",
            Temperature = input.Coldest,
        };
        foreach (var own in loads.Cases)
        {
            yield return Own(input, own, span, edge);
        }
    }

    private static Loading Dead(LoadCaseInput input, string id, string title, double temperature) =>
        new(id, title, temperature, [.. input.Design.Loads.Select(p => 2 * p)], input.Standing?.Moments ?? None(input));

    private static Loading Dead(LoadCaseInput input) => Dead(input, "", "", input.ReferenceTemperature);

    private static PlacedLoad People(LoadCaseInput input, double pressure, double from, double to) =>
        Area(input, pressure, from, to, StandingWeights.PeopleOverDeck);

    private static PlacedLoad Snow(LoadCaseInput input, double pressure, double span) => Area(input, pressure, 0, span, 0);

    private static PlacedLoad Area(LoadCaseInput input, double pressure, double from, double to, double overDeck) => new(
        [.. NodeLoads.TributaryLengths(input.Design.Nodes, from, to).Select(l => l * pressure * input.ClearWidth)],
        (input.Loads.Eccentricity - 0.5) * input.RopeSpacing,
        Over(input, overDeck));

    private static ImmutableArray<double> Over(LoadCaseInput input, double overDeck) =>
        input.Standing is { } standing ? [.. standing.DeckHeights.Select(h => h + overDeck)] : None(input);

    private static ImmutableArray<double> None(LoadCaseInput input) =>
        ImmutableArray.Create(new double[input.Design.Nodes.Length]);

    private static Loading Side(LoadCaseInput input, double span)
    {
        var all = People(input, input.Loads.Live, 0, span);
        var side = new PlacedLoad([.. all.Weights.Select(w => w * HalfWidth)], input.ClearWidth * HalfWidthArm, all.Heights);
        return Dead(input).Plus(side) with { Id = LoadCaseIds.LiveSide, Title = "Live load on one side of the deck" };
    }

    private static Loading Point(LoadCaseInput input, double force, double x, double fromMiddle) => Dead(input).Plus(
        new PlacedLoad(AtNode(input, x, force), fromMiddle, Over(input, StandingWeights.PeopleOverDeck)));

    private static ImmutableArray<double> AtNode(LoadCaseInput input, double x, double force)
    {
        var none = None(input);
        return NodeLoads.Nearest(input.Design.Nodes, x) is { } node ? none.SetItem(node, force) : none;
    }

    private static Loading HalfErected(LoadCaseInput input, double span)
    {
        // The frame at mid-span is hung; round-off decides nothing at this distance.
        var last = (span / 2) + (Tolerances.Spacing * span);
        ImmutableArray<double> Hung(ImmutableArray<double> all, double times) =>
            [.. all.Select((p, i) => input.Design.Nodes[i].X <= last ? p * times : 0)];
        return new Loading(
            LoadCaseIds.ErectHalf, "Frames hung from support A to mid-span, no deck", input.ReferenceTemperature,
            Hung(input.FrameLoads, 2), Hung(input.Standing?.FrameMoments ?? None(input), 1));
    }

    private static Loading Own(LoadCaseInput input, LoadCaseParameters own, double span, double edge)
    {
        var point = NodeLoads.LeverShares(input.Design.Nodes, own.PointAt ?? (span / 2)).Select(p => p * own.PointForce);
        return Dead(input)
            .Plus(People(input, own.Live, own.From ?? 0, own.To ?? span))
            .Plus(new PlacedLoad([.. point], edge, Over(input, StandingWeights.PeopleOverDeck))) with
        {
            Id = own.Id,
            Title = own.Id,
            Temperature = own.Temperature ?? input.ReferenceTemperature,
        };
    }

    private static PairCase? Pair(LoadCaseInput input, Loading loading, double accuracy, int maxIterations, out string? failure)
    {
        var rope = LoadCaseRequest.At(
            input.Design, loading.Temperature - input.ReferenceTemperature, input.Backstays, input.Stretch);
        var loads = loading.Sum();
        return PairSolver.TryFind(rope, input.RopeSpacing, loads, accuracy, maxIterations, out var pair, out failure)
            ? new PairCase(rope, input.RopeSpacing, loads, pair!)
            : null;
    }

    private static LoadCaseResult Solve(LoadCaseInput input, Loading loading, double accuracy, int maxIterations)
    {
        if (Pair(input, loading, accuracy, maxIterations, out var failure) is not { } found)
        {
            return Failed(loading, failure);
        }

        var pair = found.Shape;
        var (shape, other) = pair.Left.LargestTension >= pair.Right.LargestTension ? (pair.Left, pair.Right) : (pair.Right, pair.Left);
        var middle = input.Design.Nodes[^1].X / 2;
        var (a, b) = shape.Reactions();
        return new LoadCaseResult
        {
            Id = loading.Id,
            Title = loading.Title,
            Shape = shape,
            Lighter = other,
            Moves = [.. input.Design.Nodes.Zip(shape.Nodes, (p, q) => new RopePoint(q.X - p.X, q.Y - p.Y))],
            MidSpanDrop = input.Design.HeightAt(middle) - shape.HeightAt(middle),
            Temperature = loading.Temperature,
            ReactionA = a,
            ReactionB = b,
            RollsOver = pair.RollsOver,
            CrossSlope = pair.RollsOver ? null : PairShape.Largest(pair.Tilts),
            FirstOrderCrossSlope = PairShape.Largest(pair.FirstOrderTilts),
            LargestShare = pair.RollsOver ? null : LargestShare(loading, found),
            Pair = found,
        };
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
    };
}
