using System.Globalization;

namespace BridgeForm.Quantities;

/// <summary>Numbers for people, in the invariant culture and never as "-0".</summary>
public static class NumberText
{
    /// <summary>A number that was converted and back is the same number: a few roundings, relative.</summary>
    private const double RoundOff = 1e-13;

    /// <summary>
    /// Halves are rounded away from zero, and what lies so near a half counts as one: 12.25° is 12.3° on every sheet, whichever
    /// way the angle was reckoned. A millionth of the last place.
    /// </summary>
    private const double Half = 1e-6;

    /// <summary>The one rule by which every number that people read is rounded; never a negative zero, and never what is no number (<see cref="Finite"/>).</summary>
    public static double Round(double number, int decimals)
    {
        var slack = Math.CopySign(Half * Math.Pow(10, -decimals), number);
        return Math.Round(Finite.Of(number) + slack, decimals, MidpointRounding.AwayFromZero) is var rounded && rounded is 0 ? 0.0 : rounded;
    }

    /// <summary>By a pattern of digits such as <c>0.0##</c>.</summary>
    public static string By(string pattern, double number) =>
        Round(number, pattern.Length - 1 - (pattern.IndexOf('.', StringComparison.Ordinal) is var at and >= 0 ? at : pattern.Length - 1))
            .ToString(pattern, CultureInfo.InvariantCulture);

    /// <summary>At most that many decimals, no trailing zeros.</summary>
    public static string Rounded(double number, int decimals) => By("0." + new string('#', decimals), number);

    /// <summary>At most that many decimals, never less than the number.</summary>
    public static string Up(double number, int decimals)
    {
        var scale = Math.Pow(10, decimals);
        return Rounded(Math.Ceiling((number * scale) - Half) / scale, decimals);
    }

    /// <summary>Exactly that many decimals.</summary>
    public static string Fixed(double number, int decimals) =>
        Round(number, decimals).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

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

        var decimals = figures - 1 - (int)Math.Floor(Math.Log10(Math.Abs(number)));
        var scale = Math.Pow(10, decimals);
        var places = number * scale;
        var slack = RoundOff * Math.Abs(places);
        return Rounded((isLeast ? Math.Ceiling(places - slack) : Math.Floor(places + slack)) / scale, Math.Max(0, decimals));
    }
}
