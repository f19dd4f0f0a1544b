using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>Moment, shear and deflection of a simple beam under one of the deck's loads, with the formulas in words.</summary>
/// <param name="Name">Part of a check's id.</param>
/// <param name="Moment">N·m, and how.</param>
/// <param name="Shear">N, and how.</param>
/// <param name="Deflection">Metres for a stiffness E·I, the load alone without dead weight, and how.</param>
/// <param name="Duration">CD of the load.</param>
internal sealed record DeckLoad(
    string Name,
    (double Value, string How) Moment,
    (double Value, string How) Shear,
    (Func<double, double> Value, string How) Deflection,
    LoadDuration Duration)
{
    /// <summary>Area load; point load spread over its patch; point load all on one member.</summary>
    public static DeckLoad[] List(CheckContext context, DeckSpan beam) =>
    [
        Area(context, beam),
        Spread(context, beam),
        Alone(context, beam),
    ];

    private static DeckLoad Area(CheckContext context, DeckSpan beam)
    {
        var words = context.Words();
        var loads = context.Parameters.Loads;
        var area = AreaLoad.Strongest(
            loads, beam.Dead / beam.Tributary, LumberValues.Find(context.Parameters, beam.Stock, beam.Section));
        var heaviest = AreaLoad.Heaviest(loads);
        double span = beam.Span.Length, load = area.Pressure * beam.Tributary, most = heaviest.Pressure * beam.Tributary;
        var text = Text(area);
        return new DeckLoad(
            "area",
            (load * span * span / 8, $"w·L²/8 with {text}"),
            (load * span * beam.EvenShear, $"{TimberWords.Ratio(beam.EvenShear)}·w·L with {text}"),
            (stiffness => 5 * most * Elementary.Pow(span, 4) / (384 * stiffness), $"5·w·L⁴/(384·E'·I) with {Text(heaviest)}"),
            area.Duration);

        string Text(AreaLoad a) =>
            $"{a.Name} {words.Pressure(a.Pressure)} on {words.Length(beam.Tributary)} = {words.PerLength(a.Pressure * beam.Tributary)}";
    }

    private static DeckLoad Spread(CheckContext context, DeckSpan beam)
    {
        var words = context.Words();
        var point = context.Parameters.Loads;
        var span = beam.Span.Length;
        var length = Math.Min(point.PointPatch, span);
        var load = point.LargestPoint * beam.Patch.Share * length / point.PointPatch;
        var text = $"P = {words.Pounds(point.LargestPoint)} × {TimberWords.Ratio(beam.Patch.Share)} ({beam.Patch.Why}) on a = "
            + $"{words.Length(length)} of the span"
            + (length < point.PointPatch ? $", a / patch of it: {words.Pounds(load)}" : $": {words.Pounds(load)}");
        return new DeckLoad(
            "patch",
            (load / 4 * (span - (length / 2)), $"P/4·(L − a/2), {text}"),
            (load * (1 - (length / (2 * span))), $"P·(1 − a/(2L)) beside a bearing, {text}"),
            (stiffness => load * span * span * span / (48 * stiffness), $"at most P·L³/(48·E'·I), {text}"),
            LoadDuration.Live);
    }

    private static DeckLoad Alone(CheckContext context, DeckSpan beam)
    {
        var words = context.Words();
        double span = beam.Span.Length, load = context.Parameters.Loads.LargestPoint;
        var text = $"P = {words.Pounds(load)} all on one {beam.Kind}";
        return new DeckLoad(
            "point",
            (load * span / 4, $"P·L/4, {text} in the middle"),
            (load, $"P, {text} beside a bearing"),
            (stiffness => load * span * span * span / (48 * stiffness), $"P·L³/(48·E'·I), {text}"),
            LoadDuration.Live);
    }
}

/// <summary>Members and loads of a deck, in words.</summary>
internal static class DeckKinds
{
    /// <summary>What may carry: the parts of a deck, upper ones first.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        .. RoleTable.All.Where(f => f.Section == DrawingSection.Deck && !f.LiesOnTop)
            .OrderBy(f => RoleTable.IsUnder(f.Role, DrawingSection.Deck)).Select(f => f.Name),
    ];

    /// <summary>What is carried.</summary>
    public static ImmutableArray<(string Name, string Title, string Words)> Loads =>
    [
        ("area", "area load", "the area load on its pitch (live with CD 1.0 and, where snow is given, snow and three quarters of both "
            + "together with CD 1.15; the worst)"),
        ("patch", "point load over its patch", "the point load spread over its patch"),
        ("point", "point load on one member", "the whole point load on this one member"),
    ];

    /// <summary>Whether an id is made of these parts.</summary>
    public static bool IsFor(DeclaredCheck check, string kind, string what, string load) =>
        string.Equals(check.Id, $"{kind}-{what}-{load}", StringComparison.Ordinal);
}

/// <summary>A load on the deck's area: people, or snow where it is given. They are cases of their own, never added.</summary>
/// <param name="Pressure">Pascals.</param>
/// <param name="Duration">CD.</param>
/// <param name="Name">In a person's words.</param>
/// <param name="OverDeck">How high its weight lies over the deck, metres: people's 1.0 m, snow's none.</param>
internal sealed record AreaLoad(double Pressure, LoadDuration Duration, string Name, double OverDeck)
{
    /// <summary>All of a project.</summary>
    public static IEnumerable<AreaLoad> All(LoadParameters loads)
    {
        yield return new(loads.Live, LoadDuration.Live, "live", StandingWeights.PeopleOverDeck);
        if (loads.Snow is { } snow)
        {
            yield return new(snow, LoadDuration.Snow, "snow", 0);
            yield return new(
                LoadCases.Together(loads.Live, snow), LoadDuration.Snow, "0.75 live + 0.75 snow",
                StandingWeights.PeopleOverDeck * loads.Live / (loads.Live + snow));
        }

        if (Ties.FirstLargest(loads.Cases.Where(c => c.Live > loads.Live), c => c.Live) is { } own)
        {
            yield return new(own.Live, LoadDuration.Live, $"case {own.Id}", StandingWeights.PeopleOverDeck);
        }
    }

    /// <summary>The one that with the dead load, Pa, asks most of wood for its duration.</summary>
    public static AreaLoad Strongest(LoadParameters loads, double dead, LumberValues? values) =>
        All(loads).MaxBy(area => (dead + area.Pressure) / area.Duration.Of(values))!;

    /// <summary>The heaviest, where duration does not matter.</summary>
    public static AreaLoad Heaviest(LoadParameters loads) => All(loads).MaxBy(area => area.Pressure)!;
}

/// <summary>Dead load alone, or with another, whichever asks more of wood for its duration.</summary>
/// <param name="Effect">Moment, shear or stress.</param>
/// <param name="Duration">Its CD.</param>
internal sealed record Governing(double Effect, LoadDuration Duration)
{
    /// <summary>Both effects of the same sign.</summary>
    public static Governing Choose(double dead, double other, LoadDuration duration, LumberValues? values) =>
        Math.Abs(dead) / LoadDuration.Dead.Of(values) > Math.Abs(dead + other) / duration.Of(values)
            ? new(dead, LoadDuration.Dead)
            : new(dead + other, duration);
}

/// <summary>
/// Load duration: factor CD (NDS Table 2.3.2), never 2.0, for pressure-treated wood and joints do not take the factor of impact; and
/// k_mod of wood by EN 338 (EN 1995-1-1 Table 3.1, solid timber, service class 3).
/// </summary>
/// <param name="Factor">CD.</param>
/// <param name="Name">What it belongs to.</param>
/// <param name="Modification">k_mod.</param>
/// <param name="ClassName">Which duration class of EN 1995-1-1 it belongs to.</param>
internal sealed record LoadDuration(double Factor, string Name, double Modification, string ClassName)
{
    /// <summary>Permanent.</summary>
    public static LoadDuration Dead => new(0.9, "permanent", 0.5, "permanent");

    /// <summary>Ten years: people on the deck.</summary>
    public static LoadDuration Live => new(1.0, "ten years", 0.65, "medium-term");

    /// <summary>Two months: snow.</summary>
    public static LoadDuration Snow => new(1.15, "two months", 0.65, "medium-term");

    /// <summary>Ten minutes: people against the guard, wind.</summary>
    public static LoadDuration Guard => new(1.6, "ten minutes", 0.7, "short-term");

    /// <summary>How much more a wood bears for so long than for ever: k_mod of a strength class, else CD.</summary>
    /// <param name="values">Of the wood; null: by CD.</param>
    public double Of(LumberValues? values) => values is { Row.IsCharacteristic: true } ? Modification : Factor;
}
