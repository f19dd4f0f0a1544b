namespace BridgeForm.Checks;

/// <summary>Ways to put numbers into a check result.</summary>
internal static class Outcome
{
    // Demand and limit that differ by less than a billionth are the same number reached on two ways.
    private const double Slack = 1e-9;

    /// <summary>The demand must not be above the capacity.</summary>
    public static CheckResult AtMost(
        string id, string title, double demand, double capacity, string unit, string source, string detail,
        CheckStatus otherwise = CheckStatus.Fail)
    {
        var ratio = demand / capacity;
        return new CheckResult(
            id, title, ratio <= 1 + Slack ? CheckStatus.Pass : otherwise, demand, capacity, unit, ratio, source, detail);
    }

    /// <summary>What there is must not be below what is needed; the ratio is needed over had, so that above 1 is too little.</summary>
    public static CheckResult AtLeast(
        string id, string title, double had, double needed, string unit, string source, string detail,
        CheckStatus otherwise = CheckStatus.Fail)
    {
        var isEnough = had >= needed * (1 - Slack);
        double? ratio = had > 0 ? needed / had : null;
        return new CheckResult(
            id, title, isEnough ? CheckStatus.Pass : otherwise, had, needed, unit, ratio, source, detail);
    }
}
