namespace BridgeForm.Checks;

/// <summary>How a check came out.</summary>
public enum CheckStatus
{
    /// <summary>Holds.</summary>
    Pass,

    /// <summary>Worth a second look; does not stop anything.</summary>
    Warn,

    /// <summary>Does not hold.</summary>
    Fail,

    /// <summary>Cannot be judged here: a licensed engineer decides.</summary>
    Engineer,
}

/// <summary>One check with the numbers it compared. Demand and capacity are SI in <paramref name="Unit"/>.</summary>
/// <param name="Id">Stable id, kebab case.</param>
/// <param name="Title">What is checked, in a person's words.</param>
/// <param name="Status">Outcome.</param>
/// <param name="Demand">What the bridge asks, or has.</param>
/// <param name="Capacity">What it may be; null when there is no limit to compare with.</param>
/// <param name="Unit">SI unit of both, one for each id: <c>m</c>, <c>N</c>, <c>Pa</c>, <c>Hz</c>, <c>1</c> (slopes, shares, sums of ratios), <c>count</c>; no other.</param>
/// <param name="Ratio">Demand over capacity so that above 1 is too much; null when nothing is compared.</param>
/// <param name="Source">Standard, handbook or "common practice, no source"; values not looked up say "from memory".</param>
/// <param name="Detail">Formula with its numbers put in, where it happens and what would be right.</param>
public sealed record CheckResult(
    string Id,
    string Title,
    CheckStatus Status,
    double Demand,
    double? Capacity,
    string Unit,
    double? Ratio,
    string Source,
    string Detail);
