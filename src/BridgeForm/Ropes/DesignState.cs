using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;
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
        {
            return false;
        }

        if (request.Bays is { } bays)
        {
            return DesignRounds.TryFindAt(request, bays, accuracy, maxIterations, out shape, out failure);
        }

        return request.Step == Project.FrameStep.Plan
            ? DesignRounds.TryFindAt(
                request, Smallest(request.Span, request.Spacing!.Value), accuracy, maxIterations, out shape, out failure)
            : TryFindFewest(request, accuracy, maxIterations, out shape, out failure);
    }

    private static string TooMany =>
        string.Create(CultureInfo.InvariantCulture, $"The bridge would have more than {MaxBays} bays.");

    private static string? Unsolvable(DesignRequest request)
    {
        double[] positive = [request.Span, request.Sag, request.AxialStiffness, request.Spacing ?? 1, request.Bays ?? 1];
        if (!positive.All(v => double.IsFinite(v) && v > 0))
        {
            return "Span, sag, stiffness and spacing must be positive numbers.";
        }

        if (!double.IsFinite(request.Rise) || !double.IsFinite(request.WeightPerLength) || request.WeightPerLength < 0)
        {
            return "Rise and rope weight must be numbers, and the weight not negative.";
        }

        if (request.Bays is null && request.Spacing is null)
        {
            return "Either the number of bays or their largest length must be given.";
        }

        var bays = request.Bays ?? (request.Span / request.Spacing!.Value);
        return bays > MaxBays ? TooMany : null;
    }

    private static int Smallest(double length, double spacing) =>
        Math.Max(1, (int)Math.Ceiling(length / spacing * (1 - Tolerances.Spacing)));

    // The chord falls as bays are added: the count is closed in between one that is too small and one that fits, each
    // time guessed from the last shape's whole length.
    private static bool TryFindFewest(
        DesignRequest request, double accuracy, int maxIterations, out RopeShape? shape, out string? failure)
    {
        var spacing = request.Spacing!.Value;
        var bays = Smallest(DesignSolver.ParabolaLength(request), spacing);
        var (tooFew, enough, best) = (0, MaxBays + 1, (RopeShape?)null);
        while (bays <= MaxBays)
        {
            if (!DesignRounds.TryFindAt(request, bays, accuracy, maxIterations, out shape, out failure))
            {
                return false;
            }

            var chord = DesignRounds.Chord(shape!);
            if (Keeps(chord, spacing))
            {
                (enough, best, tooFew) = (bays, shape, FewerIsTooLong(chord, bays, spacing) ? bays - 1 : tooFew);
            }
            else
            {
                tooFew = bays;
            }

            if (enough == tooFew + 1 && best is not null)
            {
                return DesignRounds.Accept(best, out shape, out failure);
            }

            bays = Math.Max(tooFew + 1, Math.Min(enough - 1, Smallest(chord * bays, spacing)));
        }

        return DesignRounds.Fail(TooMany, out shape, out failure);
    }

    private static bool Keeps(double chord, double spacing) => chord <= spacing * (1 + Tolerances.Spacing);

    // A polygon with n − 1 sides is shorter than one with n by less than this share of itself at any sag in range, so
    // most bridges need no second solution to know that one bay fewer is too few.
    private static bool FewerIsTooLong(double chord, int bays, double spacing) =>
        bays > 2 && !Keeps(chord * bays / (bays - 1) * (1 - (2.0 / ((bays - 1.0) * (bays - 1.0)))), spacing);
}

/// <summary>
/// What the design state of one rope must meet. Metres and newtons, world axes, support A at (0, 0). Give either
/// <see cref="Spacing"/> or <see cref="Bays"/>.
/// </summary>
public sealed record DesignRequest
{
    /// <summary>Horizontal distance between the supports, metres.</summary>
    public required double Span { get; init; }

    /// <summary>Support B above support A, metres; negative when lower.</summary>
    public required double Rise { get; init; }

    /// <summary>Vertical distance at half the span from the line A–B down to the rope axis, metres.</summary>
    public required double Sag { get; init; }

    /// <summary>What is equal from node to node.</summary>
    public required FrameStep Step { get; init; }

    /// <summary>Largest step (chord, or horizontal step); the smallest number of bays that keeps it is found. Metres.</summary>
    public double? Spacing { get; init; }

    /// <summary>Number of bays, when it is fixed; goes before <see cref="Spacing"/>.</summary>
    public int? Bays { get; init; }

    /// <summary>Weight of one rope per unstressed metre, N/m.</summary>
    public required double WeightPerLength { get; init; }

    /// <summary>Axial stiffness EA of one rope, newtons.</summary>
    public required double AxialStiffness { get; init; }

    /// <summary>
    /// Loads that hang on this rope, in newtons, one a node with the supports' (not read) included, for trial positions
    /// of the nodes. It is asked again until positions and loads agree; it must be a pure function of the positions.
    /// </summary>
    public required Func<ImmutableArray<RopePoint>, ImmutableArray<double>> NodeLoads { get; init; }

    /// <summary>
    /// In place of <see cref="NodeLoads"/> where loads jump as the shape moves: loads for trial positions and for the whole
    /// numbers asked for, or for those that go with the positions where null is asked. Null: loads do not jump.
    /// </summary>
    public Func<ImmutableArray<RopePoint>, ImmutableArray<int>?, SteppedLoads>? Stepped { get; init; }
}
