using System.Globalization;
using BridgeForm.Project;

namespace BridgeForm.Checks;

/// <summary>
/// Numbers in the text of a check: decimal, so that they can be followed with a pocket calculator, in the project's units.
/// </summary>
internal readonly record struct CheckWords(UnitSystem Units)
{
    private const double Inch = 0.0254;

    private bool IsMetric => Units == UnitSystem.Metric;

    /// <summary>A length in metres: <c>3.125 in</c> or <c>79.4 mm</c>.</summary>
    public string Length(double metres) => IsMetric
        ? Number(metres * 1000, "0.#") + " mm"
        : Number(metres / Inch, "0.###") + " in";

    /// <summary>A slope as rise over run: <c>1 : 8.2</c>; <c>level</c> when flatter than 1 : 1000.</summary>
    public static string Slope(double riseOverRun) => Math.Abs(riseOverRun) < 1e-3
        ? "level"
        : "1 : " + Number(1 / Math.Abs(riseOverRun), "0.#");

    /// <summary>An angle in radians, in degrees.</summary>
    public static string Angle(double radians) => Number(radians * 180 / Math.PI, "0.0") + "°";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
