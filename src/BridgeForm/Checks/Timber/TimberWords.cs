using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// Forces, stresses and section values in the text of a check, in units whose quotients come out even: lbf, in and psi, or
/// N, N·m, cm³ and MPa (N·m / cm³ = MPa).
/// </summary>
internal static class TimberWords
{
    private const double Pound = Quantities.Units.PoundForce;
    private const double Inch = Quantities.Units.MetresPerInch;
    private const double Foot = Quantities.Units.MetresPerFoot;

    /// <summary>A force in newtons.</summary>
    public static string Pounds(this CheckWords words, double newtons) => words.Write(newtons, Pound, "lbf", "0", 1, "N", "0");

    /// <summary>A stress in pascals.</summary>
    public static string Stress(this CheckWords words, double pascals) =>
        words.Write(pascals, Pound / (Inch * Inch), "psi", pascals > Thousands ? "0" : "0.#", 1e6, "MPa", "0.##");

    /// <summary>A modulus of elasticity in pascals.</summary>
    public static string Elastic(this CheckWords words, double pascals) =>
        words.Write(pascals, Pound / (Inch * Inch), "psi", "0", 1e6, "MPa", "0");

    /// <summary>A moment in newton metres.</summary>
    public static string Moment(this CheckWords words, double newtonMetres) =>
        words.Write(newtonMetres, Pound * Inch, "in·lbf", "0", 1, "N·m", "0.#");

    /// <summary>A section modulus in m³.</summary>
    public static string Modulus(this CheckWords words, double cubicMetres) =>
        words.Write(cubicMetres, Inch * Inch * Inch, "in³", "0.###", 1e-6, "cm³", "0.##");

    /// <summary>A second moment of area in m⁴.</summary>
    public static string Inertia(this CheckWords words, double metres4) =>
        words.Write(metres4, Inch * Inch * Inch * Inch, "in⁴", "0.###", 1e-8, "cm⁴", "0.##");

    /// <summary>An area of a section in m².</summary>
    public static string Area(this CheckWords words, double squareMetres) =>
        words.Write(squareMetres, Inch * Inch, "in²", "0.###", 1e-6, "mm²", "0");

    /// <summary>A load on a length in N/m; in lbf per inch, so that it goes with inches.</summary>
    public static string PerLength(this CheckWords words, double newtonsPerMetre) =>
        words.Write(newtonsPerMetre, Pound / Inch, "lbf/in", "0.###", 1, "N/m", "0.#");

    /// <summary>A load on a length in N/m as codes write it.</summary>
    public static string PerFoot(this CheckWords words, double newtonsPerMetre) =>
        words.Write(newtonsPerMetre, Pound / Foot, "plf", "0.#", 1, "N/m", "0");

    /// <summary>A load on an area in pascals.</summary>
    public static string Pressure(this CheckWords words, double pascals) =>
        words.Write(pascals, Pound / (Foot * Foot), "psf", "0.#", 1000, "kPa", "0.##");

    /// <summary>A bare number.</summary>
    public static string Ratio(double value) => NumberText.By("0.###", value);

    /// <summary>A list of sources with what is in it twice said once.</summary>
    public static string Once(string sources) => string.Join("; ", sources.Split("; ").Distinct(StringComparer.Ordinal));

    // Above 100 psi decimals say nothing.
    private const double Thousands = 100 * Pound / (Inch * Inch);

    private static string Write(
        this CheckWords words, double value, double imperial, string imperialUnit, string imperialFormat, double metric, string metricUnit,
        string metricFormat)
    {
        var isMetric = words.Units == UnitSystem.Metric;
        var number = NumberText.By(isMetric ? metricFormat : imperialFormat, value / (isMetric ? metric : imperial));
        return $"{number} {(isMetric ? metricUnit : imperialUnit)}";
    }
}

/// <summary>Ends of a timber check that are alike.</summary>
internal static class WoodCheck
{
    private const string Standard = "NDS (ASD)";

    /// <summary>A stress against an adjusted value; for the engineer when no table has the value.</summary>
    /// <param name="check">The check.</param>
    /// <param name="words">Units.</param>
    /// <param name="stress">Pascals.</param>
    /// <param name="allowed">Null when there is no value.</param>
    /// <param name="formula">How the stress comes about.</param>
    /// <param name="missing">What has no value.</param>
    public static CheckResult Stress(
        DeclaredCheck check, CheckWords words, double stress, AdjustedValue? allowed, string formula, MissingValue missing) =>
        allowed is null
            ? missing.Result(check, stress, "Pa", Standard, formula)
            : allowed.Slenderness > 1
            ? new CheckResult(
                check.Id, check.Title, CheckStatus.Fail, stress, 0, "Pa", allowed.Slenderness, $"{Standard}; {Slender}",
                $"{formula}; {TooSlender(allowed)}")
            : Outcome.AtMost(
                check, stress, allowed.Value, "Pa", $"{Standard}; {allowed.Sources}", $"{formula}; {allowed.Text(words)}");

    /// <summary>What is wrong with a member beyond the limit.</summary>
    public static string TooSlender(AdjustedValue allowed) =>
        $"slenderness {TimberWords.Ratio(allowed.Slenderness * Stability.Limit)}, at most {TimberWords.Ratio(Stability.Limit)}: a member "
            + "so slender bears nothing by the NDS; take a thicker one";

    /// <summary>Source of the limits.</summary>
    public const string Slender = "NDS 3.3.3.7: RB of beams at most 50; 3.7.1.4: le/d of columns at most 50 (from memory)";
}

/// <summary>Wood that no table has a value for.</summary>
/// <param name="Wood">Section, species and grade.</param>
/// <param name="Why">Which table lacks it.</param>
internal sealed record MissingValue(string Wood, string Why)
{
    /// <summary>What is missing and what would be right.</summary>
    public override string ToString() => $"{Wood}: {Why}; give your own under values";

    /// <summary>A comparison that could not be made, and says so.</summary>
    /// <param name="check">The check.</param>
    /// <param name="demand">What was to be compared.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="source">Of the demand.</param>
    /// <param name="how">How the demand comes about; empty for nothing to tell.</param>
    public CheckResult Result(DeclaredCheck check, double demand, string unit, string source, string how) =>
        Outcome.ForEngineer(check, demand, unit, source, how.Length == 0 ? $"{this}" : $"{how}; {this}") with { NotChecked = Wood };
}
