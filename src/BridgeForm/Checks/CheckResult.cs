using System.Collections.Immutable;
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
/// <param name="Unit">
/// SI unit of both, one for each id: <c>m</c>, <c>N</c>, <c>Pa</c>, <c>Hz</c>, <c>1</c> (slopes, shares, sums of ratios),
/// <c>count</c>; no other.
/// </param>
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

    /// <summary>
    /// What a comparison could not be made for, because no table has a value: section, species and grade; null where it was
    /// made, or where the check only states what an engineer needs.
    /// </summary>
    public string? NotChecked { get; init; }

    /// <summary>
    /// The parts on which it happens, at its worst place, by their ids in <c>model.glb</c> (<c>F03/base</c>, <c>B05/board-2</c>,
    /// <c>ropes/left</c>), each once. Of places that are all alike the first from support A counts; what is alike on both sides names
    /// both; where loads are put together from several places (a base bears the longest bay on the heaviest frame) it is the one beside
    /// the longest bay, or with the deepest channel. A check of wood or sections names all parts that do not hold. Empty where it is
    /// about the file alone, and where nothing is wrong that a part could be named for.
    /// </summary>
    public ImmutableArray<string> Parts { get; init; } = [];

    /// <summary>Something was to be compared, and there was nothing to compare it with: such a check never holds.</summary>
    public bool HasNoCapacity { get; } = Ratio is { } ratio && !double.IsFinite(ratio);

    /// <summary>Outcome; fails in place of holding where there is no capacity.</summary>
    public CheckStatus Status { get; init => field = Honest(value, HasNoCapacity); } = Honest(
        Status, Ratio is { } r && !double.IsFinite(r));

    private static CheckStatus Honest(CheckStatus status, bool hasNoCapacity) =>
        hasNoCapacity && status == CheckStatus.Pass ? CheckStatus.Fail : status;
}

/// <summary>Ways to put numbers into a check result.</summary>
internal static class Outcome
{
    /// <summary>The demand must not be above the capacity.</summary>
    public static CheckResult AtMost(
        string id, string title, double demand, double capacity, string unit, string source, string detail,
        CheckStatus otherwise = CheckStatus.Fail)
    {
        // What may be nothing, or less, carries nothing: no share of it holds.
        var ratio = capacity > 0 ? demand / capacity : double.NaN;
        var holds = ratio <= 1 + Tolerances.SameLimit;
        return new CheckResult(
            id, title, holds ? CheckStatus.Pass : otherwise, demand, capacity, unit, holds ? Math.Min(ratio, 1) : ratio, source, detail);
    }

    /// <summary>
    /// As <see cref="AtMost(string, string, double, double, string, string, string, CheckStatus)"/>, of a declared check.
    /// </summary>
    public static CheckResult AtMost(
        DeclaredCheck check, double demand, double capacity, string unit, string source, string detail,
        CheckStatus otherwise = CheckStatus.Fail) =>
        AtMost(check.Id, check.Title, demand, capacity, unit, source, detail, otherwise);

    /// <summary>
    /// As <see cref="AtLeast(string, string, double, double, string, string, string, CheckStatus)"/>, of a declared check.
    /// </summary>
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
        var isEnough = had >= needed * (1 - Tolerances.SameLimit);
        double? ratio = had > 0 ? isEnough ? Math.Min(needed / had, 1) : needed / had : needed > 0 ? double.PositiveInfinity : null;
        return new CheckResult(
            id, title, isEnough ? CheckStatus.Pass : otherwise, had, needed, unit, ratio, source, detail);
    }
}

/// <summary>Statuses in words.</summary>
public static class StatusWords
{
    /// <summary>A status as people read it.</summary>
    public static string Word(this CheckStatus status) => status switch
    {
        CheckStatus.Fail => "fails",
        CheckStatus.Warn => "review",
        CheckStatus.Engineer => "engineer",
        _ => "holds",
    };
}

/// <summary>The ratio of a check as people read it, on the terminal and on paper.</summary>
public static class RatioText
{
    private const int Decimals = 2;
    private const int MoreDecimals = 4;
    private const double JustAbove = 1.0001;

    // Beyond all sense: something in the file is wrong, and the figure itself tells nothing.
    private const double MostShown = 9999;

    /// <summary>
    /// Two decimals; four, rounded up, where a ratio above 1 would read 1.00, so that no check seems to fail at its limit. Empty
    /// when nothing is compared, words when there was nothing to compare with.
    /// </summary>
    public static string Of(CheckResult check)
    {
        if (check.Ratio is not { } ratio)
        {
            return check.HasNoCapacity ? "no capacity" : "";
        }

        if (ratio > MostShown)
        {
            return "> 9999";
        }

        return ratio > 1 && Rounding.ToDecimals(ratio, Decimals) <= 1
            ? NumberText.Up(Math.Max(ratio, JustAbove), MoreDecimals)
            : NumberText.Fixed(ratio, Decimals);
    }
}

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
