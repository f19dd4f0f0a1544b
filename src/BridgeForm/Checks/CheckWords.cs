using BridgeForm.Quantities;

namespace BridgeForm.Checks;

/// <summary>
/// Numbers in the text of a check: decimal, so that they can be followed with a pocket calculator, in the project's units.
/// </summary>
internal readonly record struct CheckWords(UnitSystem Units)
{
    private const double Inch = Quantities.Units.MetresPerInch;

    private bool IsMetric => Units == UnitSystem.Metric;

    /// <summary>A length in metres: <c>3.125 in</c> or <c>79.4 mm</c>.</summary>
    public string Length(double metres) => IsMetric
        ? Number(metres * 1000, "0.#") + " mm"
        : Number(metres / Inch, "0.###") + " in";

    /// <summary>
    /// A length that a code, a trade or the program gives in inches: <c>36 in</c>, or <c>914 mm (36 in)</c>, so that whoever reads
    /// millimetres sees where an odd number of them comes from.
    /// </summary>
    public string InInches(double metres) => IsMetric
        ? $"{NumberText.Rounded(metres * 1000, metres < SmallSize ? 1 : 0)} mm ({LengthText.InchFigure(metres)} in)"
        : Length(metres);

    // Above, tenths of a millimetre say nothing of a size in inches.
    private const double SmallSize = 0.1;

    /// <summary>A length that is asked for, rounded up to what is printed: who writes it gets what is needed.</summary>
    public string AtLeast(double metres) => IsMetric
        ? NumberText.Up(metres * 1000, 1) + " mm"
        : NumberText.Up(metres / Inch, 3) + " in";

    /// <summary>A slope as rise over run: <c>1 : 8.2</c>; <c>level</c> when flatter than 1 : 1000.</summary>
    public static string Slope(double riseOverRun) => Math.Abs(riseOverRun) < Tolerances.Level
        ? "level"
        : "1 : " + Number(1 / Math.Abs(riseOverRun), "0.#");

    /// <summary>An angle in radians, in degrees.</summary>
    public static string Angle(double radians) => Number(radians * 180 / Math.PI, "0.0") + "°";

    /// <summary>A force in newtons: <c>8467 lbf</c> or <c>37.66 kN</c>.</summary>
    public string Force(double newtons) => IsMetric
        ? Number(newtons / 1000, "0.##") + " kN"
        : Number(newtons / Quantities.Units.PoundForce, "0") + " lbf";

    /// <summary>A torque in newton-metres: <c>130 ft·lbf</c> or <c>176 N·m</c>.</summary>
    public string Torque(double newtonMetres) => IsMetric
        ? Number(newtonMetres, "0") + " N·m"
        : Number(newtonMetres / (12 * Inch * Quantities.Units.PoundForce), "0.#") + " ft·lbf";

    /// <summary>A mass per length in kg/m.</summary>
    public string MassPerLength(double kilogramsPerMetre) => IsMetric
        ? Number(kilogramsPerMetre, "0.#") + " kg/m"
        : Number(kilogramsPerMetre / Quantities.Units.KilogramsPerPound * 12 * Inch, "0.#") + " lb/ft";

    /// <summary>A share: <c>80 %</c>.</summary>
    public static string Share(double share) => Number(share * 100, "0.##") + " %";

    /// <summary>A frequency: <c>1.47 Hz</c>.</summary>
    public static string Frequency(double hertz) => Number(hertz, "0.00") + " Hz";

    /// <summary>A plain number with at most two decimals.</summary>
    public static string Plain(double number) => Number(number, "0.##");

    private static string Number(double value, string format) => NumberText.By(format, value);
}
