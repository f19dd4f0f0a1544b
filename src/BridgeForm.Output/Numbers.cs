using System.Globalization;

namespace BridgeForm.Output;

/// <summary>Numbers as text: invariant culture, no exponent, never a negative zero.</summary>
internal static class Numbers
{
    /// <summary>Adding positive zero turns a negative zero into a positive one and leaves every other number alone.</summary>
    private const double PositiveZero = 0.0;

    /// <summary>Rounded to a number of decimals, without negative zero.</summary>
    public static double Rounded(double value, int decimals) => Math.Round(Finite.Of(value), decimals) + PositiveZero;

    /// <summary>With exactly that many decimals.</summary>
    public static string Fixed(double value, int decimals)
    {
        var format = "F" + decimals.ToString(CultureInfo.InvariantCulture);
        return Rounded(value, decimals).ToString(format, CultureInfo.InvariantCulture);
    }

    /// <summary>An angle in radians as people read it: degrees to 0.1, with a degree sign.</summary>
    public static string DegreeText(double radians) => Fixed(Degrees(radians), 1) + "°";

    /// <summary>Radians to degrees.</summary>
    public static double Degrees(double radians) => radians * (180 / Math.PI);
}
