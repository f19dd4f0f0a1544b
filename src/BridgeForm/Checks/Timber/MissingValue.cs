namespace BridgeForm.Checks.Timber;

/// <summary>Wood that no table has a value for.</summary>
/// <param name="Wood">Section, species and grade.</param>
/// <param name="Why">Which table lacks it.</param>
internal sealed record MissingValue(string Wood, string Why)
{
    /// <summary>What is missing and what would be right.</summary>
    public override string ToString() => $"{Wood}: {Why}; give your own under values";

    /// <summary>A comparison that could not be made, and says so.</summary>
    /// <param name="check">The check.</param>
    /// <param name="demand">What was to be compared.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="source">Of the demand.</param>
    /// <param name="how">How the demand comes about; empty for nothing to tell.</param>
    public CheckResult Result(DeclaredCheck check, double demand, string unit, string source, string how) =>
        Outcome.ForEngineer(check, demand, unit, source, how.Length == 0 ? $"{this}" : $"{how}; {this}") with { NotChecked = Wood };
}
