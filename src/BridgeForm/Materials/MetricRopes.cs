using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Quantities;

namespace BridgeForm.Materials;

/// <summary>
/// Wire ropes of EN 12385-4 with a steel core: what a rope of nominal diameter d (mm) and grade Rr (N/mm²) breaks at, weighs and
/// has of metal follows from three factors of its class.
/// </summary>
/// <param name="Class">As in the key: <c>6x19</c>.</param>
/// <param name="Strength">K: minimum breaking force K·d²·Rr/1000, kN.</param>
/// <param name="Mass">W: W·d² kg for 100 m.</param>
/// <param name="Area">C: metallic area C·d², mm².</param>
/// <param name="Ksi">Modulus of the rope, ksi, as its source prints it.</param>
internal sealed record MetricRopeClass(string Class, double Strength, double Mass, double Area, double Ksi)
{
    private const double Inch = Units.MetresPerInch;
    private const double Ksi1 = 1000 * Units.PoundForce / (Inch * Inch);

    private const string Factors = "EN 12385-4 (6x19, 6x36 IWRC), factors W, C, K as a maker's technical notes print them";

    // Sizes that are commonly sold, mm (common practice, no source); the standard's factors hold for those between them too.
    private static readonly ImmutableArray<double> s_diameters = [8, 10, 12, 13, 14, 16, 18, 20, 22, 24, 26, 28, 32, 36, 40];

    private static readonly ImmutableArray<double> s_grades = [1770, 1960];

    private static readonly ImmutableArray<MetricRopeClass> s_classes =
    [
        new("6x19", 0.356, 0.400, 0.449, 13_500),
        new("6x36", 0.356, 0.409, 0.460, 12_600),
    ];

    /// <summary>All of them: class by class, the lower grade first, zinc coated.</summary>
    public static ImmutableArray<RopeGroup> Groups { get; } =
        [.. s_classes.SelectMany(c => s_grades.Select(c.Group))];

    private RopeGroup Group(double grade) => new(
        FormattableString.Invariant($"wire rope {Class} with a steel core, EN 12385-4, grade {grade}, zinc coated"),
        [.. s_diameters.Select(d => Rope(grade, d))]);

    private RopeProperties Rope(double grade, double millimetres) => new()
    {
        Name = string.Create(CultureInfo.InvariantCulture, $"rope-{Class}-iwrc-{grade}-{millimetres}-mm"),
        Kind = RopeKind.WireRope,
        Diameter = millimetres / 1000,
        MassPerLength = Mass * millimetres * millimetres / 100,
        BreakingStrength = Strength * millimetres * millimetres * grade,
        MetallicArea = Area * millimetres * millimetres / 1e6,
        Modulus = Ksi * Ksi1,
        Galvanized = true,
        Source = $"{Factors}: {Factor(Strength)}·d²·Rr/1000 kN, {Factor(Mass)}·d² kg/100 m, {Factor(Area)}·d² mm²; modulus "
            + $"{NumberText.Rounded(Ksi, 0)} ksi, Wire Rope Users Manual, {(Class is "6x19" ? "6x19" : "6x37")} IWRC up to a fifth of its "
            + "strength (from memory)",
    };

    private static string Factor(double factor) => NumberText.Fixed(factor, 3);
}
