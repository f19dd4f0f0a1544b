namespace BridgeForm.Quantities;

/// <summary>
/// The one rule by which whatever people read is rounded: halves away from zero, and what lies so near a half or a whole step
/// (<see cref="Tolerances.OfAStep"/>) counts as it. 12.25° is 12.3° on every sheet, whichever way the angle was reckoned.
/// </summary>
public static class Rounding
{
    /// <summary>A sixteenth of an inch, metres: the finest line of a tape.</summary>
    public const double Sixteenth = Units.MetresPerInch / 16;

    /// <summary>A millimetre, metres.</summary>
    public const double Millimetre = 0.001;

    /// <summary>The step of people's tapes, metres.</summary>
    public static double Step(UnitSystem units) => units == UnitSystem.Metric ? Millimetre : Sixteenth;

    /// <summary>To a number of decimals; never a negative zero, and never what is no number (<see cref="Finite"/>).</summary>
    public static double ToDecimals(double number, int decimals)
    {
        var slack = Math.CopySign(Tolerances.OfAStep * Elementary.PowerOfTen(-decimals), number);
        return Math.Round(
            Finite.Of(number) + slack, decimals, MidpointRounding.AwayFromZero) is var rounded && rounded is 0 ? 0.0 : rounded;
    }

    /// <summary>How many steps a value is, rounded to the nearest.</summary>
    public static double Steps(double value, double step) =>
        Math.Round((value / step) + Math.CopySign(Tolerances.OfAStep, value), MidpointRounding.AwayFromZero);

    /// <summary>The nearest reading of a tape, metres.</summary>
    public static double ToTape(double metres, UnitSystem units) => Steps(metres, Step(units)) * Step(units);

    /// <summary>The least number of whole steps that is not below a value, times the step.</summary>
    public static double Up(double value, double step) => Math.Ceiling((value / step) - Tolerances.OfAStep) * step;

    /// <summary>The largest number of whole steps that is not above a value, times the step.</summary>
    public static double Down(double value, double step) => Math.Floor((value / step) + Tolerances.OfAStep) * step;
}

/// <summary>The gate that no infinite number and no NaN passes on its way to a check, a text or a page.</summary>
public static class Finite
{
    /// <summary>The number itself. Throws where it is none: a defect that must not be printed.</summary>
    /// <exception cref="NotFiniteNumberException">It is infinite or not a number.</exception>
    public static double Of(double value) => double.IsFinite(value)
        ? value
        : throw new NotFiniteNumberException("A number without a finite value was to be written.", value);

    /// <summary>The number, or null where it is infinite or not a number.</summary>
    public static double? OrNull(double? value) => value is { } number && double.IsFinite(number) ? number : null;
}
