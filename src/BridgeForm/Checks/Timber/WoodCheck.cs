namespace BridgeForm.Checks.Timber;

/// <summary>Ends of a timber check that are alike.</summary>
internal static class WoodCheck
{
    private const string Standard = "NDS (ASD)";

    /// <summary>A stress against an adjusted value; for the engineer when no table has the value.</summary>
    /// <param name="check">The check.</param>
    /// <param name="words">Units.</param>
    /// <param name="stress">Pascals.</param>
    /// <param name="allowed">Null when there is no value.</param>
    /// <param name="formula">How the stress comes about.</param>
    /// <param name="missing">What has no value.</param>
    public static CheckResult Stress(
        DeclaredCheck check, CheckWords words, double stress, AdjustedValue? allowed, string formula, MissingValue missing) =>
        allowed is null
            ? missing.Result(check, stress, "Pa", Standard, formula)
            : allowed.Slenderness > 1
            ? new CheckResult(
                check.Id, check.Title, CheckStatus.Fail, stress, 0, "Pa", allowed.Slenderness, $"{Standard}; {Slender}", $"{formula}; {TooSlender(allowed)}")
            : Outcome.AtMost(
                check, stress, allowed.Value, "Pa", $"{Standard}; {allowed.Sources}", $"{formula}; {allowed.Text(words)}");

    /// <summary>What is wrong with a member beyond the limit.</summary>
    public static string TooSlender(AdjustedValue allowed) =>
        $"slenderness {TimberWords.Ratio(allowed.Slenderness * Stability.Limit)}, at most {TimberWords.Ratio(Stability.Limit)}: a member so slender bears nothing by the NDS; take a thicker one";

    /// <summary>Source of the limits.</summary>
    public const string Slender = "NDS 3.3.3.7: RB of beams at most 50; 3.7.1.4: le/d of columns at most 50 (from memory)";
}
