using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks;

/// <summary>A sentence that stands before all figures, the same wherever the bridge is told of.</summary>
/// <param name="Label">What it is about, such as <c>Not upright</c>.</param>
/// <param name="Text">The sentence, without a capital and a stop.</param>
/// <param name="IsDanger">People fall: told even to those who asked for quiet.</param>
public sealed record Headline(string Label, string Text, bool IsDanger);

/// <summary>What all checks of a bridge come to.</summary>
public static class Verdict
{
    /// <summary>Label of what was not looked at.</summary>
    public const string NotAsked = "Not looked at";

    /// <summary>No check fails, and none was left undone for want of a value.</summary>
    public static bool IsClear(IEnumerable<CheckResult> checks) =>
        checks.All(c => c.Status != CheckStatus.Fail && c.NotChecked is null);

    /// <summary>Wood without values: section, species and grade, each once.</summary>
    public static ImmutableArray<string> NotChecked(IEnumerable<CheckResult> checks) =>
        [.. checks.Select(c => c.NotChecked).OfType<string>().Distinct(StringComparer.Ordinal)];

    /// <summary><c>not checked: 2x6 white-oak no1 (board-shear, board-bearing); …</c>; empty where nothing is missing.</summary>
    public static string NotCheckedText(IEnumerable<CheckResult> checks) =>
        MissingText(checks) is { Length: > 0 } missing ? "not checked: " + missing : "";

    /// <summary>The same without its first two words, for where they are the label.</summary>
    public static string MissingText(IEnumerable<CheckResult> checks)
    {
        var missing = checks.Where(c => c.NotChecked is not null).GroupBy(c => c.NotChecked!, StringComparer.Ordinal);
        var each = string.Join("; ", missing.Select(wood => $"{wood.Key} ({string.Join(", ", wood.Select(c => c.Id))})"));
        return each.Length == 0 ? "" : $"{each}: no table has values; give your own under values";
    }

    /// <summary><c>2 do not hold, 13 to look at again, 22 for an engineer, 50 hold</c>, worst first.</summary>
    public static string CountText(IEnumerable<CheckResult> checks)
    {
        var all = checks.ToList();
        var missing = all.Count(c => c.NotChecked is not null);
        var counted = all.Where(c => c.NotChecked is null).CountBy(c => c.Status).OrderBy(p => CheckOrder.Rank(p.Key))
            .Select(p => Counted(p.Key, p.Value));
        var without = string.Create(CultureInfo.InvariantCulture, $"{missing} NOT MADE for want of values");
        return string.Join(", ", missing == 0 ? counted : counted.Prepend(without));
    }

    /// <summary>That it must not be built so, and how many checks fail; null where none does.</summary>
    public static Headline? ToBuild(IEnumerable<CheckResult> checks)
    {
        var failing = checks.Count(c => c.Status == CheckStatus.Fail);
        return failing == 0 ? null : new Headline(
            "It must not be built so",
            string.Create(CultureInfo.InvariantCulture, $"{failing} {(failing == 1 ? "check does" : "checks do")} not hold"),
            IsDanger: true);
    }

    /// <summary>
    /// What stands before all figures, worst first: whether it stays upright, the wind, a push on a guard, fewer people than usual, and
    /// what was not looked at.
    /// </summary>
    public static ImmutableArray<Headline> Headlines(RopeWork ropework, WindWork wind, BridgeParameters parameters)
    {
        var inCalm = wind.Done(WindWork.Sure) is { Stands: false, StandsTo: null };
        Headline[] all =
        [
            new("Not upright", RollText(ropework), IsDanger: true),
            new("Wind across it", WindText(wind, parameters.Units), inCalm),
            new("Pushed on a guard", PushText(wind, parameters), PushWords.TurnsOver(wind)),
            new("Few people", LowLiveText(parameters), IsDanger: true),
            new(NotAsked, NotAskedText(parameters), IsDanger: false),
        ];
        return [.. all.Where(h => h.Text.Length > 0)];
    }

    /// <summary>
    /// What every sheet says below its caution: checks that fail, and wood that was not checked; empty where there is neither.
    /// </summary>
    /// <param name="failing">Ids of checks that fail.</param>
    /// <param name="notChecked">Wood without values.</param>
    public static string SheetText(ImmutableArray<string> failing, ImmutableArray<string> notChecked) => string.Join(
        " ",
        new[] { Listed("Checks that do not hold: ", failing), Listed("Not checked, no values: ", notChecked) }.Where(t => t.Length > 0));

    /// <summary>
    /// Whether the finished bridge stands in the wind that was asked, in one sentence beside the verdict, without a capital and a
    /// stop: no check of wind ever holds or fails. Empty where nothing was looked at.
    /// </summary>
    public static string WindText(WindWork wind, UnitSystem units)
    {
        var words = new QuantityText(units);
        return wind.Done(WindWork.Sure) switch
        {
            null => "",
            { Stands: true } =>
                $"stands in {words.Pressure(wind.Pressure)}, nobody on it; for a licensed engineer (wind-swing)",
            { StandsTo: { } least, FallsAt: { } most } =>
                $"without side stays it turns over between {words.Pressure(least)} and {words.Pressure(most)}, nobody on "
                    + "it; side stays are for a licensed engineer (wind-swing)",
            _ => "no equilibrium was found, not even in the calm; for a licensed engineer (wind-swing)",
        };
    }

    /// <summary>
    /// What people who push on one guard do, in one sentence beside the verdict, without a capital and a stop; empty where they
    /// neither turn the bridge over nor roll it further than people who stand on it may tilt it.
    /// </summary>
    public static string PushText(WindWork wind, BridgeParameters parameters) =>
        PushWords.Danger(wind, parameters) is { Length: > 0 } danger
            ? $"{danger}; side stays are for a licensed engineer (guard-line-load)"
            : "";

    /// <summary>
    /// That the bridge is judged for fewer people than usual, with the builder's reason, in one sentence beside the verdict, without a
    /// capital and a stop; empty where it is not.
    /// </summary>
    public static string LowLiveText(BridgeParameters parameters)
    {
        var (words, live, least) = (new QuantityText(parameters.Units), parameters.Loads.Live, LoadParameters.LeastLive(parameters.Use));
        return live < least * (1 - Tolerances.SameLimit)
            ? $"it is judged for {words.Pressure(live)} of people, at least {words.Pressure(least)} is asked"
                + (parameters.Loads.LowLiveReason is { } reason ? $"; the file's reason: {reason}" : "") + " (live-load)"
            : "";
    }

    /// <summary>
    /// What the file says nothing of and what is never looked at, in one sentence beside the verdict, without a capital and a stop.
    /// </summary>
    public static string NotAskedText(BridgeParameters parameters)
    {
        string?[] missing =
        [
            parameters.Loads.Snow is null ? "snow" : null,
            parameters.Site.Ground.IsEmpty ? "the ground below"
                : Clearance.IsWhole(parameters.Site, DeckEnd.Beyond(parameters)) ? null : "the ground below outside its readings",
            parameters.Site.Water is null ? "high water" : null,
        ];
        var asked = missing.OfType<string>().ToList();
        return (asked.Count > 0 ? $"{string.Join(", ", asked)}: not in the file; " : "")
            + "ice, flood, earthquake, falling trees, rot, wear: never"
            + Fasteners(parameters);
    }

    // Joints that hold something hold it across the bridge; and fasteners of parts that have no joint under `joints`.
    private static string Fasteners(BridgeParameters parameters)
    {
        string?[] open =
        [
            parameters.Frames.Joints.IsEmpty ? null : "joints pushed along the bridge",
            parameters.Guard.Pickets is null ? null : "fasteners of pickets",
            parameters.Guard.Net is null ? null : "lacing of nets",
            parameters.Guard.Handrail is null ? null : "brackets of handrails",
            parameters.Deck.Cleats is null ? null : "fasteners of cleats",
        ];
        var told = open.OfType<string>().ToList();
        return told.Count > 0 ? $"; {string.Join(", ", told)}: for your engineer" : "";
    }

    /// <summary>
    /// In how many load cases the section rolls over, in one sentence that comes before all others, without a capital and a stop; empty
    /// where it stands in all of them.
    /// </summary>
    public static string RollText(RopeWork ropework)
    {
        var over = ropework.Toppled.Select(c => c.Id).ToList();
        return over.Count == 0
            ? ""
            : FormattableString.Invariant($"it rolls over in {over.Count} of {ropework.Cases.Length} load cases, ")
                + (over.Contains(LoadCaseIds.Dead) ? "the empty bridge among them" : $"{over[0]} the first")
                + ": it must not be built so (roll)";
    }

    private static string Counted(CheckStatus status, int count) => string.Create(CultureInfo.InvariantCulture, $"{count} ") + status switch
    {
        CheckStatus.Fail => count == 1 ? "does not hold" : "do not hold",
        CheckStatus.Warn => "to review",
        CheckStatus.Engineer => "for an engineer",
        _ => count == 1 ? "holds" : "hold",
    };

    private static string Listed(string before, ImmutableArray<string> names) =>
        names.IsEmpty ? "" : $"{before}{string.Join(", ", names)}.";
}
