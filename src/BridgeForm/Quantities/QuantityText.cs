using System.Globalization;

namespace BridgeForm.Quantities;

/// <summary>Writes SI values in the units of a project for people to read.</summary>
/// <param name="Units">The project's units.</param>
public sealed record QuantityText(UnitSystem Units)
{
    private const double NewtonsPerKilonewton = 1000;
    private const double SquareMetresPerSquareFoot = Quantities.Units.MetresPerFoot * Quantities.Units.MetresPerFoot;
    private const double PascalsPerPsf = Quantities.Units.PoundForce / SquareMetresPerSquareFoot;

    /// <summary>Feet and inches by their signs, as drawings have them: <c>30'-0"</c>.</summary>
    public bool InSigns { get; init; }

    /// <summary>Degrees to 0.1, from radians: <c>8.0 deg</c>.</summary>
    public static string Degrees(double radians) => NumberText.Fixed(radians * 180 / Math.PI, 1) + " deg";

    /// <summary>Per cent to 0.01, from a share: <c>6 %</c>.</summary>
    public static string Share(double share) => NumberText.Rounded(share * 100, 2) + " %";

    /// <summary>Feet, inches and sixteenths, or millimetres.</summary>
    public string Length(double metres) => Imperial ? Written(LengthText.FeetInches(metres)) : LengthText.Millimetres(metres);

    /// <summary>Inches and sixteenths, or millimetres: for sizes of parts.</summary>
    public string Size(double metres) => Imperial ? Written(LengthText.Inches(metres)) : LengthText.Millimetres(metres);

    /// <summary>
    /// A size that a calliper is set to: millimetres to 0.1, or inches to 1/32 where they are whole thirty-seconds and else to 0.01.
    /// </summary>
    public string Fine(double metres) =>
        Imperial ? Written(LengthText.InchFigure(metres) + " in") : LengthText.Millimetres(metres);

    /// <summary>A size that is read on a calliper: thousandths of an inch, or millimetres to 0.1.</summary>
    public string Caliper(double metres) => Imperial
        ? NumberText.Fixed(metres / Quantities.Units.MetresPerInch, 3) + " in"
        : LengthText.Millimetres(metres);

    /// <summary>A round figure as the project's units have it: nobody who works in one wants the other's.</summary>
    public string Either(string imperial, string metric) => Imperial ? imperial : metric;

    /// <summary>
    /// A least size of what is there, rounded down to 1/16 in or 1 mm: a guard of 35.98 in is not shown as the 36 in that it misses.
    /// </summary>
    public string LeastSize(double metres) =>
        Size(Rounding.Down(metres, Rounding.Step(Units)));

    /// <summary>Whole pounds-force, or kilonewtons to 0.01.</summary>
    public string Force(double newtons) => Imperial
        ? NumberText.Rounded(newtons / Quantities.Units.PoundForce, 0) + " lbf"
        : NumberText.Rounded(newtons / NewtonsPerKilonewton, 2) + " kN";

    /// <summary>Pounds or kilograms, to 0.1.</summary>
    public string Mass(double kilograms) => Imperial
        ? NumberText.Rounded(kilograms / Quantities.Units.KilogramsPerPound, 1) + " lb"
        : NumberText.Rounded(kilograms, 1) + " kg";

    /// <summary>Square feet to 0.01, or square metres to 0.001.</summary>
    public string Area(double squareMetres) => Imperial
        ? NumberText.Fixed(squareMetres / SquareMetresPerSquareFoot, 2) + " ft2"
        : NumberText.Fixed(squareMetres, 3) + " m2";

    /// <summary>Pounds per square foot to 0.1, or kilopascals to 0.01.</summary>
    public string Pressure(double pascals) => Imperial
        ? NumberText.Rounded(pascals / PascalsPerPsf, 1) + " psf"
        : NumberText.Rounded(pascals / 1000, 2) + " kPa";

    /// <summary>Degrees Fahrenheit or Celsius, to 0.1.</summary>
    public string Temperature(double celsius) => Imperial
        ? NumberText.Rounded((celsius * 9 / 5) + 32, 1) + " F"
        : NumberText.Rounded(celsius, 1) + " C";

    private bool Imperial => Units == UnitSystem.Imperial;

    private string Written(string text) => InSigns ? LengthText.InSigns(text) : text;
}

/// <summary>Writes metres as people read them. Throws <see cref="ArgumentOutOfRangeException"/> for what is not finite.</summary>
public static class LengthText
{
    private const long SixteenthsPerInch = 16;
    private const long SixteenthsPerFoot = 192;
    private const long ThirtySecondsPerInch = 32;

    /// <summary>Feet, inches and sixteenths: <c>3 ft 4-1/2 in</c>, <c>5/8 in</c>; rounded to the nearest 1/16 in.</summary>
    public static string FeetInches(double metres)
    {
        var (sign, sixteenths) = Sixteenths(metres);
        var (feet, rest) = Math.DivRem(sixteenths, SixteenthsPerFoot);
        return feet == 0
            ? Line($"{sign}{InchesOf(rest, SixteenthsPerInch)} in")
            : Line($"{sign}{feet} ft {InchesOf(rest, SixteenthsPerInch)} in");
    }

    /// <summary>Inches and sixteenths without feet: <c>40-1/2 in</c>.</summary>
    public static string Inches(double metres)
    {
        var (sign, sixteenths) = Sixteenths(metres);
        return Line($"{sign}{InchesOf(sixteenths, SixteenthsPerInch)} in");
    }

    /// <summary>
    /// Inches without their unit as tables print sizes: a fraction where they are whole thirty-seconds, as <c>5/32</c>, else to
    /// 0.01, as <c>0.63</c>.
    /// </summary>
    public static string InchFigure(double metres)
    {
        var parts = Rounding.Steps(Finite(metres), Units.MetresPerInch / ThirtySecondsPerInch);
        return Math.Abs((parts * Units.MetresPerInch / ThirtySecondsPerInch) - metres) < Tolerances.RoundOff
            ? InchesOf((long)parts, ThirtySecondsPerInch)
            : NumberText.Rounded(metres / Units.MetresPerInch, 2);
    }

    /// <summary>
    /// Feet and inches by their signs: <c>30'-0"</c> for <c>30 ft 0 in</c>; with a nought for whole inches before a fraction, lest
    /// 1'-7/8" be read wrongly.
    /// </summary>
    public static string InSigns(string text)
    {
        var feet = text.IndexOf(" ft ", StringComparison.Ordinal);
        var isFraction = feet >= 0 && text.IndexOf('/', feet) >= 0 && text.IndexOf('-', feet) < 0;
        return (isFraction ? text.Insert(feet + " ft ".Length, "0-") : text)
            .Replace(" ft ", "'-", StringComparison.Ordinal)
            .Replace(" in", "\"", StringComparison.Ordinal);
    }

    /// <summary>Millimetres to 0.1: <c>1219 mm</c>, <c>15.9 mm</c>.</summary>
    public static string Millimetres(double metres) => NumberText.Rounded(Finite(metres) * 1000, 1) + " mm";

    private static (string Sign, long Sixteenths) Sixteenths(double metres)
    {
        var count = (long)Rounding.Steps(Math.Abs(Finite(metres)), Rounding.Sixteenth);
        return (metres < 0 && count > 0 ? "-" : "", count);
    }

    private static string InchesOf(long parts, long perInch)
    {
        var (whole, rest) = Math.DivRem(parts, perInch);
        if (rest == 0)
        {
            return Line($"{whole}");
        }

        var denominator = perInch;
        while (rest % 2 == 0)
        {
            rest /= 2;
            denominator /= 2;
        }

        return whole == 0 ? Line($"{rest}/{denominator}") : Line($"{whole}-{rest}/{denominator}");
    }

    private static double Finite(double metres) => double.IsFinite(metres)
        ? metres
        : throw new ArgumentOutOfRangeException(nameof(metres), metres, "A length to print must be finite.");

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
