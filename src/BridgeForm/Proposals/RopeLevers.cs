using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;
using BridgeForm.Trials;

namespace BridgeForm.Proposals;

/// <summary>What can be moved about the ropes.</summary>
internal sealed class RopeLevers(LeverContext context)
{
    // A deeper sag than an eighth of the span is a stair; a flatter one than a hundredth hardly hangs. Own figures.
    private const double DeepestSag = 0.125;
    private const double LeastSag = 0.01;

    private static readonly double[] s_apart = [1, 2, 4, 8, 16];
    private static readonly double[] s_deeper = [0.05, 0.1, 0.2, 0.4];

    /// <summary>Distance, sag and size of the ropes.</summary>
    public IEnumerable<Lever> List()
    {
        yield return new Lever("ropes.spacing", Spacing);
        yield return new Lever("ropes.sag", Sag);
        yield return new Lever("ropes.type", Rope);
    }

    // The bases go on beyond the ropes as far as before.
    private IEnumerable<ImmutableArray<KeyChange>> Spacing(BridgeParameters p, Way way, double ratio)
    {
        var (step, now) = (Written.Coarse(p.Units), p.Ropes.Spacing);
        // What rolls is held by the square of the distance, about.
        var first = Math.Max(step, now * (Math.Sqrt(Math.Min(ratio, 4)) - 1));
        foreach (var factor in s_apart)
        {
            var move = way == Way.More ? first * (ratio > 1 ? 1 + ((factor - 1) / 4) : factor) : -factor * 2 * step;
            var spacing = Rounding.Up(now + move, step);
            if (spacing > step && spacing <= RollRemedies.WidestSpacing)
            {
                yield return context.WithBase(p, spacing, "ropes.spacing", spacing - now);
            }
        }
    }

    private static IEnumerable<ImmutableArray<KeyChange>> Sag(BridgeParameters p, Way way, double ratio)
    {
        var (now, span) = (p.Ropes.Sag, p.Site.Span);
        var most = Math.Min(DeepestSag * span, SpanRules.DeepestSag(p.Site));
        foreach (var share in s_deeper)
        {
            var by = ratio > 1 ? Math.Min(ratio, 2) * (1 + share - s_deeper[0]) : 1 + share;
            var sag = Math.Clamp(way == Way.More ? now * by : now / by, LeastSag * span, most);
            sag = way == Way.More ? Rounding.Up(sag / span, Written.SagStep) : Rounding.Down(sag / span, Written.SagStep);
            if (Math.Abs((sag * span) - now) > Written.SagStep * span / 2 && sag * span <= most)
            {
                yield return [new KeyChange("ropes.sag", Written.Sag(p, sag * span))];
            }
        }
    }

    // The table's key without its size.
    private static string Make(RopeProperties rope) => rope.Name.TrimEnd([.. "0123456789/-"]);

    private IEnumerable<ImmutableArray<KeyChange>> Rope(BridgeParameters p, Way way, double ratio)
    {
        var (ropes, now) = (context.Ropes(p), p.Ropes.Rope);
        var others = way == Way.More
            ? ropes.Where(r => r.BreakingStrength > now.BreakingStrength).OrderBy(r => r.BreakingStrength < now.BreakingStrength * ratio)
                .ThenBy(r => r.MassPerLength).ThenBy(r => !Make(r).Equals(Make(now), StringComparison.Ordinal))
            : ropes.Where(r => r.MassPerLength < now.MassPerLength).OrderByDescending(r => r.MassPerLength).AsEnumerable();
        return others.Select(r => context.WithRope(p, r));
    }
}
