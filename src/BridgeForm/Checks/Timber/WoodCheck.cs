namespace BridgeForm.Checks;

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
    /// <param name="missing">Why there is no value.</param>
    public static CheckResult Stress(
        DeclaredCheck check, CheckWords words, double stress, AdjustedValue? allowed, string formula, string missing) =>
        allowed is null
            ? Outcome.ForEngineer(check, stress, "Pa", Standard, $"{formula}; {missing}")
            : Outcome.AtMost(
                check, stress, allowed.Value, "Pa", $"{Standard}; {allowed.Sources}", $"{formula}; {allowed.Text(words)}");
}
