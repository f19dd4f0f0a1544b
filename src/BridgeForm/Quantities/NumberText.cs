using System.Globalization;

namespace BridgeForm.Quantities;

/// <summary>Numbers for people, in the invariant culture and never as "-0".</summary>
public static class NumberText
{
    /// <summary>By a pattern of digits such as <c>0.0##</c>.</summary>
    public static string By(string pattern, double number) =>
        Rounding.ToDecimals(
            number, pattern.Length - 1 - (pattern.IndexOf('.', StringComparison.Ordinal) is var at and >= 0 ? at : pattern.Length - 1))
            .ToString(pattern, CultureInfo.InvariantCulture);

    /// <summary>At most that many decimals, no trailing zeros.</summary>
    public static string Rounded(double number, int decimals) => By("0." + new string('#', decimals), number);

    /// <summary>At most that many decimals, never less than the number.</summary>
    public static string Up(double number, int decimals)
    {
        var scale = Elementary.PowerOfTen(decimals);
        return Rounded(Math.Ceiling((number * scale) - Tolerances.OfAStep) / scale, decimals);
    }

    /// <summary>Exactly that many decimals.</summary>
    public static string Fixed(double number, int decimals) =>
        Rounding.ToDecimals(number, decimals).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>
    /// A bound with that many significant figures, rounded towards what it allows: a least value up, a largest one down.
    /// No exponent, no trailing zeros.
    /// </summary>
    public static string Inward(double number, int figures, bool isLeast)
    {
        if (Math.Abs(number) < double.Epsilon)
        {
            return "0";
        }

        var decimals = figures - 1 - (int)Math.Floor(Elementary.Log10(Math.Abs(number)));
        var scale = Elementary.PowerOfTen(decimals);
        var places = number * scale;
        var slack = Tolerances.Converted * Math.Abs(places);
        return Rounded((isLeast ? Math.Ceiling(places - slack) : Math.Floor(places + slack)) / scale, Math.Max(0, decimals));
    }
}
