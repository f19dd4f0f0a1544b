using System.Collections.Immutable;
using BridgeForm.Checks.Codes;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>Newels of a bridge that has some.</summary>
internal static class NewelLevers
{
    // Own figure: a little less than the ball.
    private const double ShareOfBall = 0.9;

    /// <summary>Section, gap, height, lean.</summary>
    public static IEnumerable<Lever> List()
    {
        yield return new Lever("guard.newels.section", (p, way, ratio) => p.Guard.Newels is { } newels
            ? TimberLevers.Others(p, newels.Stock, newels.Section, s => s.Width * s.Thickness * Math.Min(s.Width, s.Thickness), way, ratio)
                .Select(s => ImmutableArray.Create(new KeyChange("guard.newels.section", s.Name)))
            : []);
        yield return new Lever("guard.newels.gap", Gap);
        yield return new Lever("guard.newels.height", Height);
        yield return new Lever("guard.newels.lean", (p, way, _) => p.Guard.Newels is { } newels
            && (way == Way.More ? newels.Lean < p.Frames.Post.Lean : newels.Lean > p.Frames.Post.Lean)
            ? [[new KeyChange("guard.newels.lean", NumberText.Rounded(p.Frames.Post.Lean * 180 / Math.PI, 2) + " deg")]] : []);
    }

    // As close as the ball asks for; else as close as the landings let it stand.
    private static IEnumerable<ImmutableArray<KeyChange>> Gap(BridgeParameters p, Way way, double ratio)
    {
        var fine = Written.Fine(p.Units);
        var least = ((p.Frames.Base.Along - p.Frames.Post.Section.Thickness) / 2)
            + Math.Max(p.Site.A.LandingGap ?? 0, p.Site.B.LandingGap ?? 0);
        double[] gaps = [ShareOfBall * Limits.Opening(p.Use, 0).Sphere, least];
        return p.Guard.Newels is { } newels && way == Way.Less
            ? gaps.Select(g => Math.Max(0, g <= least ? Rounding.Up(least, fine) : Rounding.Down(g, fine)))
                .Where(g => g >= least - Tolerances.RoundOff && g < newels.Gap).Distinct()
                .Select(g => ImmutableArray.Create(new KeyChange("guard.newels.gap", Written.Length(p.Units, g))))
            : [];
    }

    // From what it is, an inch at a time and as much as is asked for.
    private static IEnumerable<ImmutableArray<KeyChange>> Height(BridgeParameters p, Way way, double ratio)
    {
        if (p.Guard.Newels?.Height is not { } height)
        {
            return [];
        }

        var step = p.Units == UnitSystem.Metric ? 0.02 : Units.MetresPerInch;
        double[] heights = way == Way.More ? [Rounding.Up(height * Math.Max(1, ratio), step), height + step] : [height - step];
        return heights.Where(h => way == Way.More ? h > height : h > 0).Distinct()
            .Select(h => ImmutableArray.Create(new KeyChange("guard.newels.height", Written.Length(p.Units, h))));
    }
}
