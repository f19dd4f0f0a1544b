using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>Wood of a base pressed by the round rope in its channel.</summary>
internal static class RopeBearing
{
    private const string Source = "the NDS has no value for wood on a round rope; an engineer judges";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-bearing",
        "Base bearing on the rope",
        "Largest reaction of a rope over the projected width (rope diameter × size of the base along it), beside Fc⊥' of flat bearing. "
            + "Above it to review; it fails above what a flat bearing as short as that may take with its bearing area factor (NDS "
            + "3.10.4; of "
            + "a strength class the effective contact of EN 1995-1-1 6.1.5, kc,90 1.0); below it an engineer still judges, for a round "
            + "rope presses harder in the middle of its channel.",
        Source,
        [CheckStatus.Warn, CheckStatus.Fail, CheckStatus.Engineer]);

    // NDS 3.10.4: (l + 3/8 in) / l of a bearing shorter than 6 in along the grain, 3 in from the end at least (from memory).
    private const double AddedNds = 0.375 * Units.MetresPerInch;

    // EN 1995-1-1 6.1.5: 30 mm at either side, but no more than the contact's own length (from memory).
    private const double AddedEuropean = 0.030;

    /// <summary>None for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var cases = BaseCases.List(context);
        if (cases.IsEmpty)
        {
            yield break;
        }

        var words = context.Words();
        var made = context.Parameters.Frames.Base;
        var diameter = context.Parameters.Ropes.Rope.Diameter;
        var values = BaseSection.Values(context);
        var worst = Ties.FirstLargest(
            cases.Select(c => (c.Name, c.Duration, Force: Larger(c.Beam.Reactions()))), c => c.Force / Lasting(values, c.Duration));
        var stress = worst.Force / (diameter * made.Along);
        var text = $"{worst.Name}: {words.Pounds(worst.Force)} / ({words.Length(diameter)} × {words.Length(made.Along)}) = "
            + $"{words.Stress(stress)} on the projected width";
        var result = values?.Across(worst.Duration) is { } across
            ? Against(words, stress, across, AreaFactor(values, diameter), text)
            : BaseSection.Missing(context).Result(Declared, stress, "Pa", Source, text);
        yield return result.OnBase(context, BaseCases.Governing(context.Layout));
    }

    // The NDS lets no duration count across the grain; EN 1995-1-1 does.
    private static double Lasting(LumberValues? values, LoadDuration load) =>
        values is { Row.IsCharacteristic: true } ? load.Of(values) : 1;

    // The rope lies across the base: along its grain the contact is as long as the rope is thick.
    private static double AreaFactor(LumberValues values, double diameter) => values.Row.IsCharacteristic
        ? 1 + (2 * Math.Min(AddedEuropean, diameter) / diameter)
        : 1 + (AddedNds / diameter);

    private static CheckResult Against(CheckWords words, double stress, AdjustedValue across, double area, string text)
    {
        var crushed = Outcome.AtMost(
            Declared, stress, area * across.Value, "Pa", $"{Source}; {across.Sources}",
            $"{text}; for flat bearing as short as that: {across.Text(words)} × {CheckWords.Plain(area)}: the base crushes over the rope");
        if (crushed.Status == CheckStatus.Fail)
        {
            return crushed;
        }

        var compared = Outcome.AtMost(
            Declared, stress, across.Value, "Pa", $"{Source}; {across.Sources}",
            $"{text}; for flat bearing, to compare: {across.Text(words)}", CheckStatus.Warn);
        return compared.Status == CheckStatus.Pass ? compared with { Status = CheckStatus.Engineer } : compared;
    }

    private static double Larger((double Left, double Right) reactions) => Math.Max(reactions.Left, reactions.Right);
}

/// <summary>What the keeper at a channel must hold down.</summary>
internal static class KeeperUplift
{
    private const string GuardSource = "statics of a base on two ropes, 0.6 D at light densities (own figure for people, as ASCE 7 has for "
        + $"wind); {GuardPush.Source}";
    private const string WindSource = "loads.uplift of the project file, light densities; ASCE 7 2.4.1 combination 7, 0.6 D + 0.6 W: "
        + "loads.uplift is taken as W of allowable stress design, 0.6 already in it";

    /// <summary>People push the guard of the empty bridge.</summary>
    public static DeclaredCheck DeclaredGuard { get; } = new(
        "keeper-uplift-guard",
        "Keeper: base lifted off a rope by a push on the guard",
        "Net lift at one channel under the pushes of guard-post, less 0.6 of the dead load of dry wood, the lightest interior frame with "
            + "the lightest bay between frames that hang on the ropes. What the keeper must hold is for an engineer.",
        GuardSource,
        [CheckStatus.Engineer]);

    /// <summary>Wind under the deck.</summary>
    public static DeclaredCheck DeclaredWind { get; } = new(
        "keeper-uplift-wind",
        "Keeper: base lifted off a rope by wind under the deck",
        "loads.uplift on the width between the posts and the longest bay, less 0.6 of the dead load of dry wood, at one channel. Without "
            + "loads.uplift nothing is computed, and the result says so.",
        WindSource,
        [CheckStatus.Engineer]);

    /// <summary>Both; none for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (context.Layout.Bays < 2)
        {
            yield break;
        }

        var light = FrameWeights.Lightest(context);
        yield return Guard(context, BaseCases.Dead(context.Parameters, light.Times(LoadCases.SureDead)), light.Total / 2)
            .OnBase(context, FrameWeights.LightestFrame(context));
        yield return Wind(context, light.Total / 2);
    }

    private static CheckResult Guard(CheckContext context, BaseBeam dead, double rope)
    {
        var words = context.Words();
        var parameters = context.Parameters;
        var frame = GuardFrame.Build(parameters);
        var lifts = GuardPush.List(context)
            .Select(p => (Push: p, Lift: Largest(BaseCases.Pushed(context.Layout, dead, frame, p.Force).Reactions())))
            .ToList();
        var worst = Ties.FirstLargest(lifts, l => l.Lift);
        var height = frame.Top + BaseCases.Highest(context.Layout).Top;
        return Outcome.ForEngineer(
            DeclaredGuard,
            worst.Lift,
            "N",
            GuardSource,
            $"{worst.Push.Name}: {words.Pounds(Math.Abs(worst.Push.Force))} × {words.Length(height)} above the rope / "
                + $"{words.Length(parameters.Ropes.Spacing)} "
            + $"− {TimberWords.Ratio(LoadCases.SureDead)} × {words.Pounds(rope)} dead on a rope = {words.Pounds(worst.Lift)} to hold "
            + "down at one channel");
    }

    private static CheckResult Wind(CheckContext context, double rope)
    {
        if (context.Parameters.Loads.Uplift is not { } pressure)
        {
            return Outcome.ForEngineer(
                DeclaredWind, 0, "N", WindSource, "loads.uplift is not given: wind under the deck is not looked at");
        }

        var words = context.Words();
        var layout = context.Layout;
        var bay = BaseCases.Longest(layout);
        var length = (layout.Poses[bay].Node - layout.Poses[bay - 1].Node).Length;
        var width = DeckWidth.BetweenPosts(context.Parameters);
        var lift = Math.Max(0, (pressure * width * length / 2) - (LoadCases.SureDead * rope));
        return Outcome.ForEngineer(
            DeclaredWind,
            lift,
            "N",
            WindSource,
            $"{words.Pressure(pressure)} × {words.Length(width)} × {words.Length(length)} / 2 − {TimberWords.Ratio(LoadCases.SureDead)} × "
                + $"{words.Pounds(rope)} dead on a rope = {words.Pounds(lift)} to hold down at one channel")
            .OnBase(context, BaseCases.Governing(layout));
    }

    private static double Largest((double Left, double Right) reactions) =>
        Math.Max(0, -Math.Min(reactions.Left, reactions.Right));
}
