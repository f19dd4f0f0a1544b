using System.Collections.Immutable;
using System.Globalization;

namespace BridgeForm.Ropes;

/// <summary>Shape and loads in turn, for one number of bays, until they agree.</summary>
internal static class DesignRounds
{
    // From far too uneven loads the way is walked in this many parts, starting at even ones.
    private const int ContinuationParts = 16;

    // Loads come from volumes of solids far from the origin, whose last digits waver: agreement closer than this is chance.
    private const double ClosestAgreement = 1e-11;

    // Shape and loads of a bridge settle in about seven rounds; what has not by then has numbers of parts that flip to and fro.
    private const int FreeRounds = 12;

    private const string Unsettled = "Shape and loads do not settle: the loads jump as the shape moves.";

    // Good enough to ask for loads at, as a share of the span.
    private const double TrialAccuracy = 1e-6;

    // Loads of the first trial over the rope's own weight: frames outweigh rope on a real bridge.
    private const double TrialLoadRatio = 10;

    /// <summary>The design state with so many bays, or why there is none.</summary>
    public static bool TryFindAt(
        DesignRequest request, int bays, double accuracy, int maxIterations, out RopeShape? shape, out string? failure)
    {
        if (!TrySolve(request, TrialLoads(request, bays), null, TrialAccuracy, maxIterations, out shape))
        {
            return Fail(NoShape(bays), out shape, out failure);
        }

        var rounds = request.Stepped is null ? maxIterations : FreeRounds;
        if (TrySettle(request, null, accuracy, rounds, maxIterations, ref shape, out failure))
        {
            return true;
        }

        return failure is null && request.Stepped is not null
            ? TryFindHeld(request, accuracy, maxIterations, ref shape, out failure)
            : Fail(failure ?? Unsettled, out shape, out failure);
    }

    /// <summary>
    /// Numbers of parts and shape chase each other: shapes are found for one set of numbers at a time, until a shape asks for
    /// the numbers it was found with. Accuracy is the same, and the shape says which numbers it has.
    /// </summary>
    private static bool TryFindHeld(
        DesignRequest request, double accuracy, int maxIterations, ref RopeShape? shape, out string? failure)
    {
        var steps = new HeldSteps(request.Stepped!(shape!.Nodes, null).Steps);
        do
        {
            if (!TrySettle(request, steps.Current, accuracy, maxIterations, maxIterations, ref shape, out failure))
            {
                return Fail(failure ?? Unsettled, out shape, out failure);
            }
        }
        while (!steps.Settles(request.Stepped(shape!.Nodes, null).Steps));
        return true;
    }

    /// <summary>Shape and loads in turn from a first shape; false without a failure when they have not settled in so many rounds.</summary>
    private static bool TrySettle(
        DesignRequest request,
        ImmutableArray<int>? steps,
        double accuracy,
        int rounds,
        int maxIterations,
        ref RopeShape? shape,
        out string? failure)
    {
        failure = null;
        for (var round = 0; round < rounds; round++)
        {
            var (loads, used) = InteriorLoads(request, shape!.Nodes, steps);
            if (loads.Any(p => !double.IsFinite(p)))
            {
                return Fail("A load on the rope is not a number.", out shape, out failure);
            }

            var previous = shape;
            if (!TrySolve(request, loads, previous, accuracy, maxIterations, out shape))
            {
                return Fail(NoShape(loads.Length - 1), out shape, out failure);
            }

            shape = shape! with { Steps = used };
            if (Agree(request, previous, shape, accuracy))
            {
                return true;
            }
        }

        return false;
    }

    private static string NoShape(int bays) => string.Create(
        CultureInfo.InvariantCulture,
        $"With {bays} {(bays == 1 ? "bay" : "bays")} no shape of the rope meets this span, rise and sag under its loads.");

    private static bool Agree(DesignRequest request, RopeShape before, RopeShape after, double accuracy)
    {
        var share = Math.Max(accuracy, ClosestAgreement);
        var moved = 0.0;
        var changed = 0.0;
        for (var i = 0; i < after.Nodes.Length; i++)
        {
            moved = Math.Max(moved, Math.Abs(after.Nodes[i].X - before.Nodes[i].X));
            moved = Math.Max(moved, Math.Abs(after.Nodes[i].Y - before.Nodes[i].Y));
            changed = Math.Max(changed, Math.Abs(after.Loads[i] - before.Loads[i]));
        }

        return changed <= share * after.TotalLoad() && moved <= share * request.Span;
    }

    private static SteppedLoads InteriorLoads(DesignRequest request, ImmutableArray<RopePoint> nodes, ImmutableArray<int>? steps)
    {
        var (loads, used) = request.Stepped is { } stepped ? stepped(nodes, steps) : new SteppedLoads(request.NodeLoads(nodes), []);
        if (loads.Length != nodes.Length)
        {
            throw new ArgumentException("There must be one load a node, supports included.", nameof(request));
        }

        return new SteppedLoads(loads.SetItem(0, 0).SetItem(loads.Length - 1, 0), steps ?? used);
    }

    private static ImmutableArray<double> TrialLoads(DesignRequest request, int bays)
    {
        var load = request.WeightPerLength > 0 ? TrialLoadRatio * request.WeightPerLength * request.Span / bays : 1;
        return [0, .. Enumerable.Repeat(load, bays - 1), 0];
    }

    private static bool TrySolve(
        DesignRequest request,
        ImmutableArray<double> loads,
        RopeShape? near,
        double accuracy,
        int maxIterations,
        out RopeShape? shape)
    {
        shape = null;
        if (DesignSolver.Estimate(request, loads) is not { } estimate)
        {
            return false;
        }

        var start = near is null ? estimate : Scaled(near, estimate, request);
        var solved = DesignSolver.Solve(request, loads, start, accuracy, maxIterations)
            ?? Continue(request, loads, accuracy, maxIterations);
        if (solved is not var ((h, v, _), shot))
        {
            return false;
        }

        shape = RopeTrace.Shape(h, v, shot.Lengths, loads, request.WeightPerLength, request.AxialStiffness);
        return true;
    }

    // The old forces moved by what the estimate moves by, and the old step.
    private static DesignUnknowns Scaled(RopeShape near, DesignUnknowns estimate, DesignRequest request)
    {
        if (DesignSolver.Estimate(request, near.Loads) is not { } old)
        {
            return estimate;
        }

        var h = near.Horizontal * estimate.H / old.H;
        var v = near.Segments[0].VerticalA + estimate.V - old.V;
        return new DesignUnknowns(h, v, request.Step == Project.FrameStep.Plan ? estimate.Step : Chord(near));
    }

    private static (DesignUnknowns Unknowns, DesignShooting Shot)? Continue(
        DesignRequest request, ImmutableArray<double> loads, double accuracy, int maxIterations)
    {
        var even = loads.Sum() / Math.Max(1, loads.Length - 2);
        var start = DesignSolver.Estimate(request, Blend(0));
        (DesignUnknowns Unknowns, DesignShooting Shot)? solved = null;
        for (var part = 0; part <= ContinuationParts && start is { } from; part++)
        {
            solved = DesignSolver.Solve(
                request, Blend((double)part / ContinuationParts), from, accuracy, maxIterations);
            start = solved?.Unknowns;
        }

        return solved;

        ImmutableArray<double> Blend(double share) =>
        [
            0,
            .. loads.Skip(1).Take(loads.Length - 2).Select(p => even + (share * (p - even))),
            0,
        ];
    }

    /// <summary>Straight length of the first bay, metres.</summary>
    public static double Chord(RopeShape shape)
    {
        var (a, b) = (shape.Nodes[0], shape.Nodes[1]);
        return ElasticCatenary.Hypotenuse(b.X - a.X, b.Y - a.Y);
    }

    /// <summary>The answer to a try that succeeded.</summary>
    public static bool Accept(RopeShape found, out RopeShape? shape, out string? failure)
    {
        (shape, failure) = (found, null);
        return true;
    }

    /// <summary>The answer to a try that failed.</summary>
    public static bool Fail(string why, out RopeShape? shape, out string? failure)
    {
        (shape, failure) = (null, why);
        return false;
    }
}
