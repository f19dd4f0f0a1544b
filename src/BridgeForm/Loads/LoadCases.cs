using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>
/// The load cases of a bridge, each on the more heavily loaded rope by itself: unstressed lengths and the frames' places
/// on the rope are those of the design state, all other loads come on top of the dead load.
/// </summary>
/// <remarks>
/// Area load acts on the clear width; its eccentric share is on the heavier rope. Concentrated loads at the middle line
/// weigh half on each rope; <c>point-edge-mid</c> and the user's own stand at the edge and are shared by statics. The
/// standard ones stand at the frame nearest their place; the user's own stand exactly where they are put, and the two
/// frames beside share them by the lever rule. What comes to an end frame rests on the landing.
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

    /// <summary>Share of each of people and snow when both act: 0.75 L + 0.75 S (ASCE 7 2.4.1 combination 4, from memory).</summary>
    public const double TogetherShare = 0.75;

    /// <summary>People and snow at once, Pa, by <see cref="TogetherShare"/>.</summary>
    public static double Together(double live, double snow) => TogetherShare * (live + snow);

    private static IEnumerable<Loading> Loadings(LoadCaseInput input)
    {
        var (reference, span, loads) = (input.ReferenceTemperature, input.Design.Nodes[^1].X, input.Loads);
        var full = Area(input, loads.Live, 0, span);
        var edge = NodeLoads.EdgeFromMiddle(input.ClearWidth, loads.PointEdge);
        yield return Dead(input, LoadCaseIds.Dead, "Bridge empty", reference);
        yield return full with { Id = LoadCaseIds.LiveFull, Title = "Live load on the whole deck" };
        yield return Area(input, loads.Live, 0, span / 2) with
        {
            Id = LoadCaseIds.LiveHalfA,
            Title = "Live load on the half next to support A",
        };
        yield return Area(input, loads.Live, span / 2, span) with
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
            yield return Area(input, snow, 0, span) with { Id = LoadCaseIds.Snow, Title = "Snow on the whole deck" };
            yield return Area(input, Together(loads.Live, snow), 0, span) with
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
            yield return Own(input, own, span, edge);
    }

    private static Loading Dead(LoadCaseInput input, string id, string title, double temperature) =>
        new(id, title, temperature, input.Design.Loads, input.Design.Loads);

    private static Loading Nothing(LoadCaseInput input) => Dead(input, "", "", input.ReferenceTemperature);

    private static Loading Area(LoadCaseInput input, double pressure, double from, double to) => Nothing(input).Plus(
        NodeLoads.TributaryLengths(input.Design.Nodes, from, to),
        pressure * input.ClearWidth,
        input.Loads.Eccentricity);

    private static Loading Side(LoadCaseInput input, double span) => Nothing(input).Plus(
        NodeLoads.TributaryLengths(input.Design.Nodes, 0, span),
        input.Loads.Live * input.ClearWidth * HalfWidth,
        NodeLoads.ShareOfNearerRope(input.ClearWidth * HalfWidthArm, input.RopeSpacing)) with
    {
        Id = LoadCaseIds.LiveSide,
        Title = "Live load on one side of the deck",
    };

    private static Loading Point(LoadCaseInput input, double force, double x, double fromMiddle) =>
        Nothing(input).Plus(
            AtNode(input, x), force, NodeLoads.ShareOfNearerRope(fromMiddle, input.RopeSpacing));

    private static ImmutableArray<double> AtNode(LoadCaseInput input, double x)
    {
        var none = ImmutableArray.CreateRange(Enumerable.Repeat(0.0, input.Design.Nodes.Length));
        return NodeLoads.Nearest(input.Design.Nodes, x) is { } node ? none.SetItem(node, 1) : none;
    }

    private static Loading HalfErected(LoadCaseInput input, double span)
    {
        // The frame at mid-span is hung; round-off decides nothing at this distance.
        var last = (span / 2) + (DesignState.SpacingRoundOff * span);
        var hung = input.FrameLoads.Select((p, i) => input.Design.Nodes[i].X <= last ? p : 0).ToImmutableArray();
        return new Loading(
            LoadCaseIds.ErectHalf, "Frames hung from support A to mid-span, no deck", input.ReferenceTemperature, hung, hung);
    }

    private static Loading Own(LoadCaseInput input, LoadCaseParameters own, double span, double edge)
    {
        var area = NodeLoads.TributaryLengths(input.Design.Nodes, own.From ?? 0, own.To ?? span);
        return Nothing(input)
            .Plus(area, own.Live * input.ClearWidth, input.Loads.Eccentricity)
            .Plus(
                NodeLoads.LeverShares(input.Design.Nodes, own.PointAt ?? (span / 2)),
                own.PointForce,
                NodeLoads.ShareOfNearerRope(edge, input.RopeSpacing)) with
        {
            Id = own.Id,
            Title = own.Id,
            Temperature = own.Temperature ?? input.ReferenceTemperature,
        };
    }

    private static LoadCaseResult Solve(LoadCaseInput input, Loading loading, double accuracy, int maxIterations)
    {
        var heavy = Request(input, loading, loading.Heavier);
        if (!LoadCaseSolver.TryFind(heavy, accuracy, maxIterations, out var shape, out var failure))
            return Failed(loading, failure);
        var other = shape;
        if (!loading.Heavier.Equals(loading.Lighter)
            && !LoadCaseSolver.TryFind(
                Request(input, loading, loading.Lighter), accuracy, maxIterations, out other, out failure))
            return Failed(loading, failure);
        var middle = input.Design.Nodes[^1].X / 2;
        var (a, b) = shape!.Reactions();
        return new LoadCaseResult
        {
            Id = loading.Id,
            Title = loading.Title,
            Shape = shape,
            Lighter = other,
            Moves = [.. input.Design.Nodes.Zip(shape!.Nodes, (p, q) => new RopePoint(q.X - p.X, q.Y - p.Y))],
            MoveDownMid = input.Design.HeightAt(middle) - shape!.HeightAt(middle),
            Temperature = loading.Temperature,
            ReactionA = a,
            ReactionB = b,
            CrossSlope = CrossSlope(shape!, other!, input.RopeSpacing),
        };
    }

    private static LoadCaseResult Failed(Loading loading, string? failure) => new()
    {
        Id = loading.Id,
        Title = loading.Title,
        Shape = null,
        Failure = failure,
        Temperature = loading.Temperature,
    };

    private static LoadCaseRequest Request(LoadCaseInput input, Loading loading, ImmutableArray<double> loads) =>
        LoadCaseRequest.At(
            input.Design, loading.Temperature - input.ReferenceTemperature, input.Backstays, input.Stretch) with
        {
            Loads = loads,
        };

    // The heavier rope is taken as the left one, so that the deck rises to the right.
    private static double CrossSlope(RopeShape heavy, RopeShape light, double spacing) =>
        Math.Atan2(heavy.Nodes.Zip(light.Nodes).Max(n => n.Second.Y - n.First.Y), spacing);

    private sealed record Loading(
        string Id, string Title, double Temperature, ImmutableArray<double> Heavier, ImmutableArray<double> Lighter)
    {
        public Loading Plus(ImmutableArray<double> perNode, double unit, double share) => this with
        {
            Heavier = [.. Heavier.Zip(perNode, (p, q) => p + (q * unit * share))],
            Lighter = [.. Lighter.Zip(perNode, (p, q) => p + (q * unit * (1 - share)))],
        };
    }
}
