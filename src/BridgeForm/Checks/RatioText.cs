using BridgeForm.Quantities;

namespace BridgeForm.Checks;

/// <summary>The ratio of a check as people read it, on the terminal and on paper.</summary>
public static class RatioText
{
    private const int Decimals = 2;
    private const int MostDecimals = 9;

    /// <summary>
    /// Two decimals; more where a ratio above 1 would read 1.00, so that no check seems to fail at its limit. Empty when nothing
    /// is compared.
    /// </summary>
    public static string Of(CheckResult check)
    {
        if (check.Ratio is not { } ratio || !double.IsFinite(ratio))
        {
            return "";
        }

        var decimals = Decimals;
        while (ratio > 1 && decimals < MostDecimals && NumberText.Round(ratio, decimals) <= 1)
        {
            decimals++;
        }

        return NumberText.Fixed(ratio, decimals);
    }
}
