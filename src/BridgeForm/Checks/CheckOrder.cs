namespace BridgeForm.Checks;

/// <summary>The order in which people read checks, alike on the terminal and on paper.</summary>
public static class CheckOrder
{
    /// <summary>
    /// What fails, then what to look at, then what an engineer decides, then what holds; among these the highest ratio first.
    /// A check without a ratio stands before the others of its kind, unless it holds.
    /// </summary>
    public static IEnumerable<CheckResult> WorstFirst(IEnumerable<CheckResult> checks) => checks
        .OrderBy(c => Rank(c.Status))
        .ThenByDescending(c => c.Ratio ?? (c.Status == CheckStatus.Pass ? 0 : double.PositiveInfinity));

    /// <summary>0 for the worst status.</summary>
    public static int Rank(CheckStatus status) => status switch
    {
        CheckStatus.Fail => 0,
        CheckStatus.Warn => 1,
        CheckStatus.Engineer => 2,
        _ => 3,
    };
}
