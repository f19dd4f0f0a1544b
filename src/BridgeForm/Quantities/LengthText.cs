using System.Globalization;

namespace BridgeForm.Quantities;

/// <summary>Writes metres as people read them. Throws <see cref="ArgumentOutOfRangeException"/> for what is not finite.</summary>
public static class LengthText
{
    private const double MetresPerSixteenth = 0.0254 / 16;
    private const long SixteenthsPerInch = 16;
    private const long SixteenthsPerFoot = 192;

    /// <summary>Feet, inches and sixteenths: <c>3 ft 4-1/2 in</c>, <c>5/8 in</c>; rounded to the nearest 1/16 in.</summary>
    public static string FeetInches(double metres)
    {
        var (sign, sixteenths) = Sixteenths(metres);
        var (feet, rest) = Math.DivRem(sixteenths, SixteenthsPerFoot);
        return feet == 0
            ? Line($"{sign}{InchesOf(rest)} in")
            : Line($"{sign}{feet} ft {InchesOf(rest)} in");
    }

    /// <summary>Inches and sixteenths without feet: <c>40-1/2 in</c>.</summary>
    public static string Inches(double metres)
    {
        var (sign, sixteenths) = Sixteenths(metres);
        return Line($"{sign}{InchesOf(sixteenths)} in");
    }

    /// <summary>Millimetres to 0.1: <c>1219 mm</c>, <c>15.9 mm</c>.</summary>
    public static string Millimetres(double metres) => NumberText.Rounded(Finite(metres) * 1000, 1) + " mm";

    private static (string Sign, long Sixteenths) Sixteenths(double metres)
    {
        var count = (long)Math.Round(Math.Abs(Finite(metres)) / MetresPerSixteenth, MidpointRounding.AwayFromZero);
        return (metres < 0 && count > 0 ? "-" : "", count);
    }

    private static string InchesOf(long sixteenths)
    {
        var (whole, rest) = Math.DivRem(sixteenths, SixteenthsPerInch);
        if (rest == 0)
        {
            return Line($"{whole}");
        }

        var denominator = SixteenthsPerInch;
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
