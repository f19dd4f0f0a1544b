using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Codes;

/// <summary>Step and gap between a landing and the end of the deck.</summary>
internal static class Landings
{
    /// <summary>Step.</summary>
    public static DeclaredCheck DeclaredStep { get; } = new(
        "landing-step",
        "Step between landing and deck",
        "Difference in level between site.a/b.landing.level and the deck's surface where it ends, the larger of both, against 1/2 in. A "
            + "landing without a level is not looked at, and the result says so: it holds only where both are given.",
        Limits.Step.Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>Gap.</summary>
    public static DeclaredCheck DeclaredGap { get; } = new(
        "landing-gap",
        "Gap between landing and deck",
        "site.a/b.landing.gap, the larger of both, against 1/2 in; fails above 4 in, where a child goes through; looked at only when one "
            + "is given. A landing without a gap is not looked at, and the result says so: it holds only where both are given.",
        $"{Limits.FloorOpening.Source}; 4 in as between boards: {Limits.Opening(BridgeUse.Private, 0).Source}",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>Step, and gap where one is given.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var site = context.Parameters.Site;
        yield return Step(context);
        if (site.A.LandingGap is not null || site.B.LandingGap is not null)
        {
            yield return Gap(context, site.A.LandingGap, site.B.LandingGap);
        }
    }

    private static CheckResult Gap(CheckContext context, double? a, double? b)
    {
        var words = context.Words();
        var (limit, source) = Limits.FloorOpening;
        string Text(double? gap, string end) => gap is { } given ? words.Length(given) : NotLookedAt(end, "gap");
        var (gap, text) = (Math.Max(a ?? 0, b ?? 0), $"at A {Text(a, "a")}; at B {Text(b, "b")}; at most ");
        var at = Base(context, a, b, limit);
        var (sphere, guards) = Limits.Opening(context.Parameters.Use, 0);
        if (Outcome.AtMost(DeclaredGap, gap, sphere, "m", guards, text + words.InInches(sphere)) is { Status: CheckStatus.Fail } hole)
        {
            return hole.On(at);
        }

        var result = Outcome.AtMost(DeclaredGap, gap, limit, "m", source, text + words.InInches(limit), CheckStatus.Warn);
        return Open(result, a is null || b is null).On(at);
    }

    /// <summary>What was looked at on one side only does not hold.</summary>
    private static CheckResult Open(CheckResult result, bool isPartial) =>
        isPartial && result.Status == CheckStatus.Pass ? result with { Status = CheckStatus.Warn, Ratio = null } : result;

    private static string NotLookedAt(string end, string key) => $"not looked at: no site.{end}.landing.{key} is given";

    private static CheckResult Step(CheckContext context)
    {
        var site = context.Parameters.Site;
        var (limit, source) = Limits.Step;
        var a = Step(context, site.A.LandingLevel, 0, "a");
        var b = Step(context, site.B.LandingLevel, context.Layout.Bays, "b");
        var result = Outcome.AtMost(
            DeclaredStep,
            Math.Max(a.Step ?? 0, b.Step ?? 0),
            limit,
            "m",
            source,
            $"at A {a.Text}; at B {b.Text}; at most {context.Words().InInches(limit)}");
        return Open(result, a.Step is null || b.Step is null).On(Base(context, a.Step, b.Step, limit));
    }

    // An end that was not looked at comes after one that is beyond the limit, and before one that holds.
    private static IEnumerable<string> Base(CheckContext context, double? a, double? b, double limit) =>
        context.InFrame(Ties.IsLarger(b ?? limit, a ?? limit) ? context.Layout.Bays : 0, Role.Base);

    private static (double? Step, string Text) Step(CheckContext context, double? level, int frame, string end)
    {
        if (level is not { } given)
        {
            return (null, NotLookedAt(end, "level"));
        }

        var words = context.Words();
        var surface = DeckEnd.Surface(context.Layout, frame) - context.Layout.Poses[frame].Node.Y;
        return (
            Math.Abs(given - surface),
            $"landing {words.Length(given)}, deck {words.Length(surface)} above the rope: {words.Length(Math.Abs(given - surface))}");
    }
}
