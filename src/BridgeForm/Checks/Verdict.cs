using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks;

/// <summary>What all checks of a bridge come to.</summary>
public static class Verdict
{
    /// <summary>No check fails, and none was left undone for want of a value.</summary>
    public static bool IsClear(IEnumerable<CheckResult> checks) =>
        checks.All(c => c.Status != CheckStatus.Fail && c.NotChecked is null);

    /// <summary>Wood without values: section, species and grade, each once.</summary>
    public static ImmutableArray<string> NotChecked(IEnumerable<CheckResult> checks) =>
        [.. checks.Select(c => c.NotChecked).OfType<string>().Distinct(StringComparer.Ordinal)];

    /// <summary><c>not checked: 2x6 white-oak no1 (board-shear, board-bearing); …</c>; empty where nothing is missing.</summary>
    public static string NotCheckedText(IEnumerable<CheckResult> checks)
    {
        var missing = checks.Where(c => c.NotChecked is not null).GroupBy(c => c.NotChecked!, StringComparer.Ordinal);
        var each = string.Join("; ", missing.Select(wood => $"{wood.Key} ({string.Join(", ", wood.Select(c => c.Id))})"));
        return each.Length == 0 ? "" : $"not checked: {each}: no table has values; give your own under values";
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
    /// Whether people who push on one guard turn the bridge over, in one sentence beside the verdict, without a capital and a stop;
    /// empty where they do not.
    /// </summary>
    public static string PushText(WindWork wind, BridgeParameters parameters) =>
        PushWords.Falls(wind.Leaning, new CheckWords(parameters.Units), parameters.Use == BridgeUse.Public) is { Length: > 0 } falls
            ? $"{falls}, nobody's weight on it; side stays are for a licensed engineer (guard-line-load)"
            : "";

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

    private static string Listed(string before, ImmutableArray<string> names) =>
        names.IsEmpty ? "" : $"{before}{string.Join(", ", names)}.";
}
