using BridgeForm.Quantities;
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
    string Detail)
{
    /// <summary>What the bridge asks, or has; finite.</summary>
    public double Demand { get; init => field = Finite.Of(value); } = Finite.Of(Demand);

    /// <summary>What it may be; null when there is no limit to compare with, or none of finite size.</summary>
    public double? Capacity { get; init => field = Finite.OrNull(value); } = Finite.OrNull(Capacity);

    /// <summary>Demand over capacity; null when nothing is compared, and when the quotient has no finite value.</summary>
    public double? Ratio { get; init => field = Finite.OrNull(value); } = Finite.OrNull(Ratio);

    /// <summary>Something was to be compared, and there was nothing to compare it with: such a check never holds.</summary>
    public bool HasNoCapacity { get; } = Ratio is { } ratio && !double.IsFinite(ratio);

    /// <summary>Outcome; fails in place of holding where there is no capacity.</summary>
    public CheckStatus Status { get; init => field = Honest(value, HasNoCapacity); } = Honest(Status, Ratio is { } r && !double.IsFinite(r));

    private static CheckStatus Honest(CheckStatus status, bool hasNoCapacity) =>
        hasNoCapacity && status == CheckStatus.Pass ? CheckStatus.Fail : status;
}
