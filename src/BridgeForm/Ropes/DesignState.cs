using System.Collections.Immutable;
using System.Globalization;
using MathNet.Numerics;

namespace BridgeForm.Ropes;

/// <summary>
/// The design state of one rope: bridge complete and empty at the reference temperature, with the sag asked for and
/// equal steps; shape and loads found together.
/// </summary>
public static class DesignState
{
    /// <summary>Default accuracy, as a share of the span and of the total load: a few digits above round-off.</summary>
    public const double DefaultAccuracy = 1e-12;

    /// <summary>Default limit, for Newton steps and for rounds of loads.</summary>
    public const int DefaultMaxIterations = 100;

    /// <summary>Most bays that are tried.</summary>
    public const int MaxBays = 50_000;

    /// <summary>A step this share above the spacing still keeps it: the spacing that divides exactly must not give one bay more.</summary>
    public const double SpacingRoundOff = 1e-9;

    // From far too uneven loads the way is walked in this many parts, starting at even ones.
    private const int ContinuationParts = 16;

    // Good enough to ask for loads at, as a share of the span.
    private const double TrialAccuracy = 1e-6;

    // Loads of the first trial over the rope's own weight: frames outweigh rope on a real bridge.
    private const double TrialLoadRatio = 10;

    /// <summary>The design state; throws when there is none.</summary>
    /// <param name="request">What it must meet.</param>
    /// <param name="accuracy">Largest error of a condition as a share of the span, and of a load as a share of the total.</param>
    /// <param name="maxIterations">Most Newton steps, and most rounds of loads.</param>
    /// <exception cref="NonConvergenceException">No solution; the message says why.</exception>
    public static RopeShape Find(
        DesignRequest request, double accuracy = DefaultAccuracy, int maxIterations = DefaultMaxIterations) =>
        TryFind(request, accuracy, maxIterations, out var shape, out var failure)
            ? shape!
            : throw new NonConvergenceException(failure);

    /// <summary>The design state, or why there is none.</summary>
    /// <param name="request">What it must meet.</param>
    /// <param name="accuracy">Largest error of a condition as a share of the span, and of a load as a share of the total.</param>
    /// <param name="maxIterations">Most Newton steps, and most rounds of loads.</param>
    /// <param name="shape">The state.</param>
    /// <param name="failure">Why there is none, as a sentence.</param>
    public static bool TryFind(
        DesignRequest request, double accuracy, int maxIterations, out RopeShape? shape, out string? failure)
    {
        shape = null;
        failure = Unsolvable(request);
        if (failure is not null)
            return false;
        if (request.Bays is { } bays)
            return TryFindAt(request, bays, accuracy, maxIterations, out shape, out failure);
        return request.Step == Project.FrameStep.Plan
            ? TryFindAt(request, Smallest(request.Span, request.Spacing!.Value), accuracy, maxIterations, out shape, out failure)
            : TryFindFewest(request, accuracy, maxIterations, out shape, out failure);
    }

    private static string? Unsolvable(DesignRequest request)
    {
        double[] positive = [request.Span, request.Sag, request.AxialStiffness, request.Spacing ?? 1, request.Bays ?? 1];
        if (!positive.All(v => double.IsFinite(v) && v > 0))
            return "Span, sag, stiffness and spacing must be positive numbers.";
        if (!double.IsFinite(request.Rise) || !double.IsFinite(request.WeightPerLength) || request.WeightPerLength < 0)
            return "Rise and rope weight must be numbers, and the weight not negative.";
        if (request.Bays is null && request.Spacing is null)
            return "Either the number of bays or their largest length must be given.";
        var bays = request.Bays ?? (request.Span / request.Spacing!.Value);
        return bays > MaxBays
            ? string.Create(CultureInfo.InvariantCulture, $"The bridge would have more than {MaxBays} bays.")
            : null;
    }

    private static int Smallest(double length, double spacing) =>
        Math.Max(1, (int)Math.Ceiling(length / spacing * (1 - SpacingRoundOff)));

    // The chord falls as bays are added, so the count is walked up or down from the arc's until it is the smallest.
    private static bool TryFindFewest(
        DesignRequest request, double accuracy, int maxIterations, out RopeShape? shape, out string? failure)
    {
        var spacing = request.Spacing!.Value;
        var bays = Smallest(DesignSolver.ParabolaLength(request), spacing);
        RopeShape? fits = null;
        while (bays <= MaxBays)
        {
            if (!TryFindAt(request, bays, accuracy, maxIterations, out shape, out failure))
                return fits is not null && Accept(fits, out shape, out failure);
            var chord = Chord(shape!);
            if (!Keeps(chord, spacing))
            {
                if (fits is not null)
                    return Accept(fits, out shape, out failure);
                bays = Math.Max(bays + 1, Smallest(chord * bays, spacing));
                continue;
            }

            fits = shape;
            if (bays == 1 || FewerIsTooLong(chord, bays, spacing))
                return true;
            bays--;
        }

        return Fail($"The bridge would have more than {MaxBays} bays.", out shape, out failure);
    }

    private static bool Keeps(double chord, double spacing) => chord <= spacing * (1 + SpacingRoundOff);

    // A polygon with n − 1 sides is shorter than one with n by less than this share of itself at any sag in range, so
    // most bridges need no second solution to know that one bay fewer is too few.
    private static bool FewerIsTooLong(double chord, int bays, double spacing) =>
        bays > 2 && !Keeps(chord * bays / (bays - 1) * (1 - (2.0 / ((bays - 1.0) * (bays - 1.0)))), spacing);

    private static bool TryFindAt(
        DesignRequest request, int bays, double accuracy, int maxIterations, out RopeShape? shape, out string? failure)
    {
        if (!TrySolve(request, TrialLoads(request, bays), null, TrialAccuracy, maxIterations, out shape))
            return Fail(NoShape(bays), out shape, out failure);
        for (var round = 0; round < maxIterations; round++)
        {
            var loads = InteriorLoads(request, shape!.Nodes);
            if (loads.Any(p => !double.IsFinite(p)))
                return Fail("A load on the rope is not a number.", out shape, out failure);
            var previous = shape;
            if (!TrySolve(request, loads, previous, accuracy, maxIterations, out shape))
                return Fail(NoShape(bays), out shape, out failure);
            if (Agree(request, previous, shape!, accuracy))
                return Accept(shape!, out shape, out failure);
        }

        return Fail("Shape and loads do not settle: the loads jump as the shape moves.", out shape, out failure);
    }

    private static string NoShape(int bays) => string.Create(
        CultureInfo.InvariantCulture,
        $"With {bays} {(bays == 1 ? "bay" : "bays")} no shape of the rope meets this span, rise and sag under its loads.");

    private static bool Agree(DesignRequest request, RopeShape before, RopeShape after, double accuracy)
    {
        var total = after.TotalLoad();
        var moved = 0.0;
        var changed = 0.0;
        for (var i = 0; i < after.Nodes.Length; i++)
        {
            moved = Math.Max(moved, Math.Abs(after.Nodes[i].X - before.Nodes[i].X));
            moved = Math.Max(moved, Math.Abs(after.Nodes[i].Y - before.Nodes[i].Y));
            changed = Math.Max(changed, Math.Abs(after.Loads[i] - before.Loads[i]));
        }

        return changed <= accuracy * total && moved <= accuracy * request.Span;
    }

    private static ImmutableArray<double> InteriorLoads(DesignRequest request, ImmutableArray<RopePoint> nodes)
    {
        var loads = request.NodeLoads(nodes);
        if (loads.Length != nodes.Length)
            throw new ArgumentException("There must be one load a node, supports included.", nameof(request));
        return loads.SetItem(0, 0).SetItem(loads.Length - 1, 0);
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
            return false;
        var start = near is null ? estimate : Scaled(near, estimate, request);
        var solved = DesignSolver.Solve(request, loads, start, accuracy, maxIterations)
            ?? Continue(request, loads, accuracy, maxIterations);
        if (solved is not var ((h, v, _), shot))
            return false;
        shape = RopeTrace.Shape(h, v, shot.Lengths, loads, request.WeightPerLength, request.AxialStiffness);
        return true;
    }

    // The old forces moved by what the estimate moves by, and the old step.
    private static DesignUnknowns Scaled(RopeShape near, DesignUnknowns estimate, DesignRequest request)
    {
        if (DesignSolver.Estimate(request, near.Loads) is not { } old)
            return estimate;
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

    private static double Chord(RopeShape shape)
    {
        var (a, b) = (shape.Nodes[0], shape.Nodes[1]);
        return ElasticCatenary.Hypotenuse(b.X - a.X, b.Y - a.Y);
    }

    private static bool Accept(RopeShape found, out RopeShape? shape, out string? failure)
    {
        (shape, failure) = (found, null);
        return true;
    }

    private static bool Fail(string why, out RopeShape? shape, out string? failure)
    {
        (shape, failure) = (null, why);
        return false;
    }
}
