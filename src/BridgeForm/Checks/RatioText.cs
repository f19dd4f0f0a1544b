using BridgeForm.Quantities;

namespace BridgeForm.Checks;

/// <summary>The ratio of a check as people read it, on the terminal and on paper.</summary>
public static class RatioText
{
    private const int Decimals = 2;
    private const int MoreDecimals = 4;
    private const double JustAbove = 1.0001;

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

        return ratio > 1 && NumberText.Round(ratio, Decimals) <= 1
            ? NumberText.Up(Math.Max(ratio, JustAbove), MoreDecimals)
            : NumberText.Fixed(ratio, Decimals);
    }
}
