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
        // What may be nothing, or less, carries nothing: no share of it holds.
        var ratio = capacity > 0 ? demand / capacity : double.NaN;
        return new CheckResult(
            id, title, ratio <= 1 + Slack ? CheckStatus.Pass : otherwise, demand, capacity, unit, ratio, source, detail);
    }

    /// <summary>As <see cref="AtMost(string, string, double, double, string, string, string, CheckStatus)"/>, of a declared check.</summary>
    public static CheckResult AtMost(
        DeclaredCheck check, double demand, double capacity, string unit, string source, string detail,
        CheckStatus otherwise = CheckStatus.Fail) =>
        AtMost(check.Id, check.Title, demand, capacity, unit, source, detail, otherwise);

    /// <summary>As <see cref="AtLeast(string, string, double, double, string, string, string, CheckStatus)"/>, of a declared check.</summary>
    public static CheckResult AtLeast(
        DeclaredCheck check, double had, double needed, string unit, string source, string detail,
        CheckStatus otherwise = CheckStatus.Fail) =>
        AtLeast(check.Id, check.Title, had, needed, unit, source, detail, otherwise);

    /// <summary>A number that an engineer must judge: nothing here to compare it with.</summary>
    public static CheckResult ForEngineer(DeclaredCheck check, double demand, string unit, string source, string detail) =>
        new(check.Id, check.Title, CheckStatus.Engineer, demand, null, unit, null, source, detail);

    /// <summary>What there is must not be below what is needed; the ratio is needed over had, so that above 1 is too little.</summary>
    public static CheckResult AtLeast(
        string id, string title, double had, double needed, string unit, string source, string detail,
        CheckStatus otherwise = CheckStatus.Fail)
    {
        var isEnough = had >= needed * (1 - Slack);
        double? ratio = had > 0 ? needed / had : needed > 0 ? double.PositiveInfinity : null;
        return new CheckResult(
            id, title, isEnough ? CheckStatus.Pass : otherwise, had, needed, unit, ratio, source, detail);
    }
}
