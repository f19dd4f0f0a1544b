using BridgeForm.Quantities;

namespace BridgeForm.Output;

/// <summary>Numbers as text: invariant culture, no exponent, never a negative zero.</summary>
internal static class Numbers
{
    /// <summary>Rounded to a number of decimals by the rule of <see cref="NumberText"/>, without negative zero.</summary>
    public static double Rounded(double value, int decimals) => NumberText.Round(value, decimals);

    /// <summary>With exactly that many decimals.</summary>
    public static string Fixed(double value, int decimals) => NumberText.Fixed(value, decimals);

    /// <summary>An angle in radians as people read it: degrees to 0.1, with a degree sign.</summary>
    public static string DegreeText(double radians) => Fixed(Degrees(radians), 1) + "°";

    /// <summary>Radians to degrees.</summary>
    public static double Degrees(double radians) => radians * (180 / Math.PI);
}
