using BridgeForm.Connections;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Connections;

/// <summary>
/// Yield limit equations against cells of the NDS 2018 (transcribed in a public plan of a calculator and its fixtures, which name
/// table, row and page), and against textbook examples with every mode (in a public notebook). Inches, pounds, G 0.50.
/// </summary>
public sealed class YieldLimitTests
{
    private const double Inch = 0.0254;
    private const double Pound = Units.PoundForce;
    private const double Psi = Pound / (Inch * Inch);
    private const double Steel = 87000;

    // Half of the last digit that is printed, and round-off.
    private const double Rounded = 5 + 1e-6;

    // Tables are rounded to 10 lb, Table 12.3.3 to 50 psi.
    private static double Fe(double diameter, double degrees) =>
        Math.Round(DowelBearing.Wood(0.5, diameter * Inch, degrees * Math.PI / 180) / Psi / 50) * 50;

    private static double Z(
        double d, double yield, double main, double mainBearing, double side, double sideBearing, double degrees, bool twice) =>
        new YieldLimit(
            d * Inch, yield * Psi, main * Inch, mainBearing * Psi, side * Inch, sideBearing * Psi, degrees * Math.PI / 180, twice)
            .Value / Pound;

    // Table 12A, single shear, and 12F, double shear: bolts in wood.
    [Theory]
    [InlineData(false, 1.5, 1.5, 0.5, 0, 0, 480)]
    [InlineData(false, 1.5, 1.5, 0.5, 0, 90, 300)]
    [InlineData(false, 1.5, 1.5, 0.5, 90, 90, 220)]
    [InlineData(true, 1.5, 1.5, 0.5, 0, 0, 1050)]
    [InlineData(true, 1.5, 1.5, 0.5, 0, 90, 730)]
    [InlineData(true, 1.5, 1.5, 0.5, 90, 0, 470)]
    [InlineData(true, 3.5, 1.5, 0.75, 0, 0, 2400)]
    [InlineData(true, 3.5, 1.5, 0.75, 90, 0, 1370)]
    public void Bolts_between_wood(bool twice, double main, double side, double d, double mainAngle, double sideAngle, double table) =>
        Assert.Equal(
            table, Z(d, 45000, main, Fe(d, mainAngle), side, Fe(d, sideAngle), Math.Max(mainAngle, sideAngle), twice), Rounded);

    // Table 12B, one plate of A36, 1/4 in, and 12G, two.
    [Theory]
    [InlineData(false, 1.5, 0.75, 0, 870)]
    [InlineData(false, 3.5, 1, 0, 2270)]
    [InlineData(true, 1.5, 0.5, 0, 1050)]
    [InlineData(true, 1.5, 0.5, 90, 470)]
    [InlineData(true, 3.5, 0.75, 0, 3340)]
    [InlineData(true, 3.5, 0.75, 90, 1370)]
    public void Bolts_between_plates(bool twice, double main, double d, double angle, double table) =>
        Assert.Equal(table, Z(d, 45000, main, Fe(d, angle), 0.25, Steel, angle, twice), Rounded);

    // Tables 12J and 12K: lag screws by their root; eight diameters in the wood and half the tip besides.
    [Theory]
    [InlineData(0.25, 0.173, 70000, 2.078125, 0.5, 0, 0, 120)]
    [InlineData(0.25, 0.173, 70000, 2.078125, 0.5, 90, 90, 80)]
    [InlineData(0.375, 0.265, 45000, 3.109375, 0.5, 0, 0, 150)]
    [InlineData(0.375, 0.265, 45000, 3.109375, 0.5, 90, 90, 90)]
    [InlineData(0.5, 0.371, 45000, 4.15625, 1.5, 0, 0, 390)]
    [InlineData(0.5, 0.371, 45000, 4.15625, 1.5, 90, 0, 270)]
    public void Lag_screws(
        double d, double root, double yield, double main, double side, double mainAngle, double sideAngle, double table) =>
        Assert.Equal(
            table, Z(root, yield, main, Fe(d, mainAngle), side, Fe(d, sideAngle), Math.Max(mainAngle, sideAngle), twice: false), Rounded);

    [Theory]
    [InlineData(0.5, 0.371, 4.15625, 0.25, Steel, 0, 520)]
    [InlineData(0.5, 0.371, 4.15625, 0.25, Steel, 90, 320)]
    [InlineData(0.375, 0.265, 3.109375, 0.134, 61850, 0, 220)]
    [InlineData(0.375, 0.265, 3.109375, 0.134, 61850, 90, 140)]
    public void Lag_screws_through_steel(double d, double root, double main, double side, double bearing, double angle, double table) =>
        Assert.Equal(table, Z(root, 45000, main, Fe(d, angle), side, bearing, angle, twice: false), Rounded);

    // Table 12L, No. 10 wood screw, and 12N, 16d common nail: no grain below 1/4 in.
    [Theory]
    [InlineData(0.152, 80000, 1.71, 0.5, 90)]
    [InlineData(0.162, 90000, 2.588, 0.75, 121)]
    public void Screws_and_nails(double d, double yield, double main, double side, double table) =>
        Assert.Equal(table, Z(d, yield, main, 4650, side, 4650, 0, twice: false), 1.0);

    // Examples 12.3, 12.4 and 12.5 of a textbook on wood structures: nails, wood on wood, steel on wood, plywood on wood.
    [Theory]
    [InlineData(0.162, 4650, 4650, 90e3, 2.0, 1.5, 684.82, 513.61, 252.52, 242.54, 190.01, 140.89)]
    [InlineData(0.113, 5550, 61850, 100e3, 2.395, 0.105, 682.74, 333.57, 275.86, 281.87, 90.307, 106.95)]
    [InlineData(0.148, 3500, 4650, 90e3, 2.5, 0.5, 588.64, 156.41, 205.77, 214.28, 84.042, 108.98)]
    public void Every_mode(
        double d, double fem, double fes, double fyb, double lm, double ls, double im, double os, double two, double threeM, double threeS,
        double four)
    {
        var limit = new YieldLimit(d * Inch, fyb * Psi, lm * Inch, fem * Psi, ls * Inch, fes * Psi, 0, IsDouble: false);
        double[] expected = [im, os, two, threeM, threeS, four];
        Assert.All(
            Enum.GetValues<YieldMode>().Zip(expected),
            m => Assert.Equal(m.Second, limit.In(m.First) / Pound, m.Second * 5e-5));
        Assert.Equal(expected.Min(), limit.Value / Pound, 0.01);
    }

    // Table 12.3.3, G 0.50: 5600; 4450, 3150, 2600 across it at 1/4, 1/2, 3/4 in; 4650 below 1/4 in.
    [Theory]
    [InlineData(0.5, 0, 5600)]
    [InlineData(0.25, 90, 4450)]
    [InlineData(0.5, 90, 3150)]
    [InlineData(0.75, 90, 2600)]
    [InlineData(0.19, 45, 4650)]
    public void Bearing(double d, double degrees, double table) => Assert.Equal(table, Fe(d, degrees));

    // Hankinson at 45°: 2·5600·3150/(5600 + 3150).
    [Fact]
    public void Bearing_at_an_angle() => Assert.Equal(2 * 5600 * 3154.3 / (5600 + 3154.3), DowelBearing.Wood(
        0.5, 0.5 * Inch, Math.PI / 4) / Psi, 3.0);

    [Fact]
    public void Thin_sheet_is_softer_than_a_plate()
    {
        Assert.Equal(87000, DowelBearing.Steel(0.25 * Inch) / Psi, 1e-6);
        Assert.Equal(61850, DowelBearing.Steel(0.239 * Inch) / Psi, 1e-6);
    }
}
