using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>What the checks of a bridge come to, on its cover.</summary>
internal static class CoverVerdict
{
    /// <summary>
    /// Counts, headlines but what was not looked at (a general note), the largest tilt to one side and the least roll factor, as labels
    /// and values.
    /// </summary>
    public static IEnumerable<(string Label, string Value)> Rows(DrawingContext context)
    {
        var model = context.Model;
        yield return ("Checks", Verdict.CountText(model.Checks));
        var headlines = Verdict.Headlines(model.Ropework, model.Wind, model.Parameters);
        foreach (var headline in headlines.Where(h => h.Label is not Verdict.NotAsked))
        {
            yield return (headline.Label, headline.Text);
        }

        yield return ("Largest cross slope", CrossSlope(model.Ropework));
        yield return ("Least roll factor", Roll(model));
    }

    /// <summary>The largest pull of all and what it is of; empty where no case pulls harder than those as marked.</summary>
    public static string Pull(RopeWork work, QuantityText words)
    {
        var stay = work.Supports.Select(s => s.Backstay?.Tension ?? 0).DefaultIfEmpty().Max();
        var fresh = work.PullSetShort;
        var marked = work.Governing?.Shape!.LargestTension ?? 0;
        return Math.Max(stay, fresh) <= marked ? ""
            : $"{words.Force(work.LargestPull)}, one rope: "
                + (fresh < stay ? "in its backstay" : "new rope set short for its stretch" + (stay > 0 ? ", backstays in it" : ""));
    }

    /// <summary>
    /// Titles of what fails, each with its id, in as many lines as there is room for; the rest is counted; at least one line.
    /// </summary>
    /// <param name="checks">All checks.</param>
    /// <param name="width">Of a line, metres.</param>
    /// <param name="lines">Most lines.</param>
    public static ImmutableArray<string> Failing(ImmutableArray<CheckResult> checks, double width, int lines)
    {
        string[] failing = [.. CheckOrder.WorstFirst(checks).Where(c => c.Status == CheckStatus.Fail).Select(c => $"{c.Title} ({c.Id})")];
        for (var shown = failing.Length; shown > 0; shown--)
        {
            var more = shown < failing.Length ? FormattableString.Invariant($"; and {failing.Length - shown} more: see the checks") : "";
            var wrapped = PageText.Wrapped(string.Join("; ", failing.Take(shown)) + more + ".", width, PageText.Small, bold: true);
            if (wrapped.Length <= lines)
            {
                return wrapped;
            }
        }

        return ["See the checks."];
    }

    /// <summary>A case's title inside a sentence; names of frames keep their capitals.</summary>
    public static string Lowered(string title) => title[..1].ToLowerInvariant() + title[1..];

    private static string CrossSlope(RopeWork work)
    {
        var worst = work.Governs().FirstOrDefault(g => string.Equals(g.Response, "cross slope", StringComparison.Ordinal));
        var found = work.Cases.FirstOrDefault(c => string.Equals(c.Id, worst?.Case, StringComparison.Ordinal));
        if (found is null)
        {
            return "not known: see the checks";
        }

        var grown = Ties.FirstLargest(work.Grown, c => c.CrossSlope ?? double.PositiveInfinity);
        var stretched = grown is null ? ""
            : $"; with the rope stretched, hottest: {(grown.CrossSlope is { } more ? QuantityText.Degrees(more) : "it rolls over")}";
        return found.CrossSlope is { } tilt
            ? $"{QuantityText.Degrees(tilt)}: {Lowered(found.Title)}{stretched} (cross-slope)"
            : $"it rolls over: {Lowered(found.Title)} (cross-slope)";
    }

    // What is needed is not the same of all states: the pair that the check compares, and beside it the least of all.
    private static string Roll(BridgeModel model)
    {
        var check = model.Checks.FirstOrDefault(c => string.Equals(c.Id, "roll", StringComparison.Ordinal));
        if (check is not { Capacity: { } needed } || RollState.Least(model.Ropework.Roll) is not { Factor: { } factor } least)
        {
            return "not known: see the checks";
        }

        var (compared, lowest) = (Down(check.Demand), Down(factor.Value));
        var all = string.Equals(compared, lowest, StringComparison.Ordinal) ? "" : $"; least of all {lowest}";
        return $"{compared} where {NumberText.Rounded(needed, 2)} is needed{all}: "
            + Lowered(model.Ropework.Cases.First(c => string.Equals(c.Id, least.Case, StringComparison.Ordinal)).Title)
            + (least.InHeat ? ", hottest, rope stretched" : "") + " (roll)";
    }

    // Never told higher than it is.
    private static string Down(double factor) => NumberText.Fixed(Math.Floor(factor * 100) / 100, 2);
}
