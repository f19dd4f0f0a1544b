using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Ropes;

/// <summary>
/// Newton's method with line search for H, V and the step of a design state with given loads: the last node at support
/// B, the sag as asked.
/// </summary>
internal static class DesignSolver
{
    // A step may not take H or the step below this share of itself: both are positive.
    private const double LargestFall = 0.2;

    // A line search that has come down to this share of the step is stuck.
    private const double SmallestDamping = 1e-4;

    /// <summary>Solves; null when the iterations are used up or the search is stuck.</summary>
    /// <param name="request">Span, rise, sag, step and rope.</param>
    /// <param name="loads">Load at each node, supports included, newtons.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="accuracy">Largest error of any condition as a share of the span.</param>
    /// <param name="maxIterations">Most Newton steps.</param>
    public static (DesignUnknowns Unknowns, DesignShooting Shot)? Solve(
        DesignRequest request, ImmutableArray<double> loads, DesignUnknowns start, double accuracy, int maxIterations)
    {
        if (DesignShooting.Try(request, loads, start) is not { } first)
        {
            return null;
        }

        var at = (Unknowns: start, Shot: first);
        for (var i = 0; i < maxIterations; i++)
        {
            var error = Error(request, at.Shot);
            var met = error <= accuracy;
            if (!TryStep(request, at.Shot, out var step))
            {
                return met ? at : null;
            }

            // Once the conditions are met one full step more takes what digits are left.
            if (Search(request, loads, at.Unknowns, step, error, met ? 1 : SmallestDamping) is { } better)
            {
                at = better;
            }
            else if (!met)
            {
                return null;
            }

            if (met)
            {
                return at;
            }
        }

        return null;
    }

    /// <summary>A parabola's forces: the beam's moment at mid-span over the sag. Null when nothing pulls the rope down.</summary>
    public static DesignUnknowns? Estimate(DesignRequest request, ImmutableArray<double> loads)
    {
        var bays = loads.Length - 1;
        var (span, middle) = (request.Span, request.Span / 2);
        var ropeWeight = request.WeightPerLength * ParabolaLength(request);
        var (reaction, moment) = (ropeWeight / 2, ropeWeight * span / 8);
        for (var i = 1; i < bays; i++)
        {
            var x = span * i / bays;
            reaction += loads[i] * (span - x) / span;
            moment += loads[i] * Math.Min(x, span - x) / 2;
        }

        if (!(moment > 0))
        {
            return null;
        }

        var h = moment / request.Sag;
        var step = request.Step == Project.FrameStep.Plan ? span / bays : ParabolaLength(request) / bays;
        return new DesignUnknowns(h, reaction - (h * request.Rise / span), bays == 1 ? Chord(request) : step);
    }

    /// <summary>Arc of the parabola through the supports with the sag asked for, metres.</summary>
    public static double ParabolaLength(DesignRequest request)
    {
        var slope = request.Rise / request.Span;
        var bend = 4 * request.Sag / request.Span;
        return request.Span * (Primitive(slope + bend) - Primitive(slope - bend)) / (2 * bend);
    }

    private static double Primitive(double t) => ((t * Math.Sqrt(1 + (t * t))) + Elementary.Asinh(t)) / 2;

    private static double Chord(DesignRequest request) => request.Step == Project.FrameStep.Plan
        ? request.Span
        : ElasticCatenary.Hypotenuse(request.Span, request.Rise);

    private static (DesignUnknowns Unknowns, DesignShooting Shot)? Search(
        DesignRequest request, ImmutableArray<double> loads, DesignUnknowns from, DesignUnknowns step, double error, double leastDamping)
    {
        var damping = 1.0;
        if (from.H + step.H < LargestFall * from.H)
        {
            damping = Math.Min(damping, (LargestFall - 1) * from.H / step.H);
        }

        if (from.Step + step.Step < LargestFall * from.Step)
        {
            damping = Math.Min(damping, (LargestFall - 1) * from.Step / step.Step);
        }

        for (; damping >= leastDamping; damping /= 2)
        {
            var trial = new DesignUnknowns(
                from.H + (damping * step.H), from.V + (damping * step.V), from.Step + (damping * step.Step));
            var shot = DesignShooting.Try(request, loads, trial);
            if (shot is not null && Error(request, shot) < error)
            {
                return (trial, shot);
            }
        }

        return null;
    }

    private static (double X, double Y, double Sag) Misses(DesignRequest request, DesignShooting shot) => (
        shot.X.Value - request.Span,
        shot.Drop.Value + request.Rise,
        shot.MiddleDrop.Value + (request.Rise / 2) - request.Sag);

    private static double Error(DesignRequest request, DesignShooting shot)
    {
        var (x, y, sag) = Misses(request, shot);
        return Math.Sqrt((x * x) + (y * y) + (sag * sag)) / request.Span;
    }

    private static bool TryStep(DesignRequest request, DesignShooting shot, out DesignUnknowns step)
    {
        var (x, y, sag) = Misses(request, shot);
        step = SolveThree(shot.X.Rates, shot.Drop.Rates, shot.MiddleDrop.Rates, -x, -y, -sag);
        return double.IsFinite(step.H) && double.IsFinite(step.V) && double.IsFinite(step.Step);
    }

    // Cramer's rule; the columns' scales divide out of each quotient.
    private static DesignUnknowns SolveThree(Rates a, Rates b, Rates c, double p, double q, double r)
    {
        var all = Determinant(a, b, c);
        return new DesignUnknowns(
            Determinant(a with { H = p }, b with { H = q }, c with { H = r }) / all,
            Determinant(a with { V = p }, b with { V = q }, c with { V = r }) / all,
            Determinant(a with { Step = p }, b with { Step = q }, c with { Step = r }) / all);
    }

    private static double Determinant(Rates a, Rates b, Rates c) =>
        (a.H * ((b.V * c.Step) - (b.Step * c.V)))
        - (a.V * ((b.H * c.Step) - (b.Step * c.H)))
        + (a.Step * ((b.H * c.V) - (b.V * c.H)));
}
