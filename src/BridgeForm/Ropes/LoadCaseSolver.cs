using System.Collections.Immutable;
using System.Runtime.InteropServices;
using MathNet.Numerics;

namespace BridgeForm.Ropes;

/// <summary>
/// The elastic shape of a rope of known unstressed lengths: large displacements, Newton's method with line search on the
/// two forces at support A. Equilibrium at every node is met by construction; what Newton closes is the gap at support B,
/// measured as the force that would close it.
/// </summary>
public static class LoadCaseSolver
{
    /// <summary>Default accuracy, as a share of the total load: well below the promised 1e-9.</summary>
    public const double DefaultAccuracy = 1e-11;

    /// <summary>Default limit of Newton steps.</summary>
    public const int DefaultMaxIterations = 200;

    // One step may not take H below this share of itself: H is positive, and slack ropes lie close to none.
    private const double LargestFall = 0.1;

    // A step is too long when it carries past the minimum of the energy to a slope nearly as steep as before.
    private const double LargestOvershoot = 0.9;
    private const double SmallestDamping = 1e-10;

    // A gap at B of so many units in the last digit of span and length is none: a taut, light rope turns it into more
    // force than the accuracy asks for.
    private const double GapRoundOff = 16 * 2.220446049250313e-16;

    // Shape of the first estimate when the rope is not longer than the straight line: this share of it as sag.
    private const double TautSag = 0.005;

    /// <summary>The shape; throws when there is none.</summary>
    /// <param name="request">Lengths, loads and supports.</param>
    /// <param name="accuracy">Largest residual as a share of the total load on the rope.</param>
    /// <param name="maxIterations">Most Newton steps.</param>
    /// <exception cref="NonConvergenceException">No solution; the message says why.</exception>
    public static RopeShape Find(
        LoadCaseRequest request, double accuracy = DefaultAccuracy, int maxIterations = DefaultMaxIterations) =>
        TryFind(request, accuracy, maxIterations, out var shape, out var failure)
            ? shape!
            : throw new NonConvergenceException(failure);

    /// <summary>The shape, or why there is none.</summary>
    /// <param name="request">Lengths, loads and supports.</param>
    /// <param name="accuracy">Largest residual as a share of the total load on the rope.</param>
    /// <param name="maxIterations">Most Newton steps.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="failure">Why there is none, as a sentence.</param>
    public static bool TryFind(
        LoadCaseRequest request, double accuracy, int maxIterations, out RopeShape? shape, out string? failure)
    {
        shape = null;
        failure = Unsolvable(request);
        if (failure is not null)
        {
            return false;
        }

        if (Solve(request, accuracy, maxIterations) is not { } found)
        {
            failure = "The rope's shape did not settle within the allowed number of steps.";
            return false;
        }

        if (found.Shot.Slid)
        {
            failure = "The rope slides so far over its saddle that the first frame reaches the support.";
            return false;
        }

        var lengths = WithEnds(request.UnstressedLengths, found.Shot.First, found.Shot.Last);
        var loads = WithEnds(request.Loads, 0, 0);
        var traced = RopeTrace.Shape(found.H, found.V, lengths, loads, request.WeightPerLength, request.AxialStiffness);
        shape = request.HeldA is { } stay ? Moved(traced, stay.Give(found.H, request.AxialStiffness).Length) : traced;
        return true;
    }

    // The same array where both stand there already, as they nearly always do.
    private static ImmutableArray<double> WithEnds(ImmutableArray<double> of, double first, double last)
    {
        if (of[0].Equals(first) && of[^1].Equals(last))
        {
            return of;
        }

        var all = of.ToArray();
        (all[0], all[^1]) = (first, last);
        return ImmutableCollectionsMarshal.AsImmutableArray(all);
    }

    private static RopeShape Moved(RopeShape shape, double x) =>
        shape with { Nodes = [.. shape.Nodes.Select(p => p with { X = p.X + x })] };

    private static string? Unsolvable(LoadCaseRequest request)
    {
        if (request.UnstressedLengths.IsEmpty || request.Loads.Length != request.UnstressedLengths.Length + 1)
        {
            throw new ArgumentException("There must be one load a node, supports included.", nameof(request));
        }

        foreach (var length in request.UnstressedLengths)
        {
            if (!double.IsFinite(length) || !(length > 0))
            {
                return "A bay of the rope has no length.";
            }
        }

        foreach (var load in request.Loads)
        {
            if (!double.IsFinite(load))
            {
                return "A load on the rope is not a number.";
            }
        }

        if (!(request.Span > 0 && request.AxialStiffness > 0 && double.IsFinite(request.Span + request.AxialStiffness + request.Rise)))
        {
            return "Span and stiffness must be positive numbers, and the rise a number.";
        }

        if (!(request.WeightPerLength >= 0) || !double.IsFinite(request.WeightPerLength))
        {
            return "The rope's weight must be a number and not negative.";
        }

        return ReferenceForce(request) > 0 ? null : "Nothing hangs on the rope and it has no weight: any shape would do.";
    }

    private static (double H, double V, CaseShooting Shot)? Solve(
        LoadCaseRequest request, double accuracy, int maxIterations)
    {
        var allowed = accuracy * ReferenceForce(request);
        var noGap = RoundOffGap(request);
        var (h, v) = request.Start is { } start ? (start.Horizontal, start.Segments[0].VerticalA) : Estimate(request);
        var shot = CaseShooting.Shoot(request, h, v);
        for (var i = 0; i < maxIterations; i++)
        {
            var gap = Gap(request, shot);
            var step = Step(shot, gap);
            if (!double.IsFinite(step.H) || !double.IsFinite(step.V))
            {
                return null;
            }

            var closed = ElasticCatenary.Hypotenuse(step.H, step.V) <= allowed
                || ElasticCatenary.Hypotenuse(gap.X, gap.Drop) <= noGap;
            if (Search(request, (h, v), step, gap, closed, noGap) is not { } next)
            {
                return null;
            }

            (h, v, shot) = next;
            if (closed)
            {
                return (h, v, shot);
            }
        }

        return null;
    }

    private static (double H, double V, CaseShooting Shot)? Search(
        LoadCaseRequest request, (double H, double V) from, (double H, double V) step, (double X, double Drop) gap, bool closed,
        double noGap)
    {
        var damping = from.H + step.H < LargestFall * from.H ? (LargestFall - 1) * from.H / step.H : 1;
        var before = (gap.X * step.H) + (gap.Drop * step.V);
        var noise = noGap * ElasticCatenary.Hypotenuse(step.H, step.V);
        for (; damping > SmallestDamping; damping /= 2)
        {
            var (h, v) = (from.H + (damping * step.H), from.V + (damping * step.V));
            var shot = CaseShooting.Shoot(request, h, v);
            var after = Gap(request, shot);
            if (closed || (after.X * step.H) + (after.Drop * step.V) <= (LargestOvershoot * Math.Abs(before)) + noise)
            {
                return (h, v, shot);
            }
        }

        return null;
    }

    private static double RoundOffGap(LoadCaseRequest request) =>
        GapRoundOff * (request.Span + Math.Abs(request.Rise) + Length(request));

    private static (double X, double Drop) Gap(LoadCaseRequest request, CaseShooting shot) =>
        (shot.X - request.Span, shot.Drop + request.Rise);

    private static (double H, double V) Step(CaseShooting shot, (double X, double Drop) gap)
    {
        var ((xh, xv), (dh, dv)) = (shot.XRates, shot.DropRates);
        var determinant = (xh * dv) - (xv * dh);
        return (((xv * gap.Drop) - (dv * gap.X)) / determinant, ((dh * gap.X) - (xh * gap.Drop)) / determinant);
    }

    // What the accuracy is a share of; loads both ways up and down do not cancel.
    private static double ReferenceForce(LoadCaseRequest request)
    {
        var sum = 0.0;
        for (var i = 1; i + 1 < request.Loads.Length; i++)
        {
            sum += Math.Abs(request.Loads[i]);
        }

        return sum + (request.WeightPerLength * Length(request));
    }

    private static double Length(LoadCaseRequest request)
    {
        var sum = 0.0;
        foreach (var length in request.UnstressedLengths)
        {
            sum += length;
        }

        return sum;
    }

    // Forces of a parabola as long as the rope (its length ≈ chord + 8/3·sag²/chord).
    private static (double H, double V) Estimate(LoadCaseRequest request)
    {
        var total = request.UnstressedLengths.Sum();
        var chord = ElasticCatenary.Hypotenuse(request.Span, request.Rise);
        var sag = chord * Math.Max(TautSag, Math.Sqrt(Math.Max(0, (total / chord) - 1) * 3 / 8));
        var (x, reaction, moment) = (0.0, 0.0, 0.0);
        for (var i = 0; i < request.UnstressedLengths.Length; i++)
        {
            var length = request.UnstressedLengths[i] / total;
            Add(request.WeightPerLength * request.UnstressedLengths[i], x + (length / 2));
            x += length;
            if (i < request.UnstressedLengths.Length - 1)
            {
                Add(request.Loads[i + 1], x);
            }
        }

        var h = Math.Max(Math.Abs(moment), ReferenceForce(request) * chord * TautSag) / sag;
        return (h, reaction - (h * request.Rise / request.Span));

        void Add(double force, double at)
        {
            reaction += force * (1 - at);
            moment += force * request.Span * Math.Min(at, 1 - at) / 2;
        }
    }
}
