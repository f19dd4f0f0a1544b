using BridgeForm.Quantities;

namespace BridgeForm.Output;

/// <summary>Numbers as text: invariant culture, no exponent, never a negative zero.</summary>
internal static class Numbers
{
    /// <summary>Rounded to a number of decimals by the rule of <see cref="NumberText"/>, without negative zero.</summary>
    public static double Rounded(double value, int decimals) => Rounding.ToDecimals(value, decimals);

    /// <summary>With exactly that many decimals.</summary>
    public static string Fixed(double value, int decimals) => NumberText.Fixed(value, decimals);

    /// <summary>An angle in radians as people read it: degrees to 0.1, with a degree sign.</summary>
    public static string DegreeText(double radians) => Fixed(Degrees(radians), 1) + "°";

    /// <summary>A gap, less than any rule shows: thousandths of an inch, or hundredths of a millimetre.</summary>
    public static string Gap(double metres, DisplayUnits units) => units.System == UnitSystem.Imperial
        ? Fixed(metres / Units.MetresPerInch, 3) + " in"
        : Fixed(metres * 1000, 2) + " mm";

    /// <summary>Radians to degrees.</summary>
    public static double Degrees(double radians) => radians * (180 / Math.PI);
}

/// <summary>How numbers are written for people in printed matter: in feet and inches, or in millimetres.</summary>
/// <param name="System">Unit system; also decides the unit of DXF coordinates.</param>
/// <param name="Length">Text of a length in metres.</param>
/// <param name="Angle">Text of an angle in radians, with its degree sign.</param>
/// <param name="Mass">Text of a mass in kilograms.</param>
public sealed record DisplayUnits(
    UnitSystem System, Func<double, string> Length, Func<double, string> Angle, Func<double, string> Mass)
{
    /// <summary>The units of a project: sizes of parts in inches and sixteenths, or millimetres.</summary>
    public static DisplayUnits For(UnitSystem system)
    {
        var text = new QuantityText(system);
        return new DisplayUnits(system, text.Size, QuantityText.Degrees, text.Mass);
    }
}
