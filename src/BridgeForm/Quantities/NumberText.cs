using System.Globalization;

namespace BridgeForm.Quantities;

/// <summary>Numbers for people, in the invariant culture and never as "-0".</summary>
public static class NumberText
{
    /// <summary>At most that many decimals, no trailing zeros.</summary>
    public static string Rounded(double number, int decimals)
    {
        var rounded = Math.Round(Finite.Of(number), decimals, MidpointRounding.AwayFromZero) + 0.0;
        return rounded.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture) is var s && s is "-0" ? "0" : s;
    }

    /// <summary>Exactly that many decimals.</summary>
    public static string Fixed(double number, int decimals)
    {
        var rounded = Math.Round(Finite.Of(number), decimals, MidpointRounding.AwayFromZero);
        return (rounded is 0 ? 0.0 : rounded).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    /// <summary>That many significant figures, no exponent for everyday sizes.</summary>
    public static string Significant(double number, int figures) =>
        Finite.Of(number).ToString("G" + figures.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
