using BridgeForm.Checks.Timber;
using BridgeForm.Materials;
using BridgeForm.Project;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>
/// Each factor at both ends of each of its steps: NDS Supplement Tables 4A and 4D, NDS 2.3, 4.3, 3.3.3 and 3.7.1; from memory.
/// </summary>
public sealed class FactorTests
{
    private const double Psi = BridgeForm.Quantities.Units.PoundForce / (0.0254 * 0.0254);

    private static readonly DesignValue s_row = DesignValues.All[0];

    // NDS Table 2.3.2.
    [Fact]
    public void Durations() => Assert.Equal(
        [0.9, 1.0, 1.15, 1.6],
        ((LoadDuration[])[LoadDuration.Dead, LoadDuration.Live, LoadDuration.Snow, LoadDuration.Guard]).Select(d => d.Factor));

    // Table 4A, by width; 2 and 3 in thick, then 4 in thick for bending.
    [Theory]
    [InlineData(2, 1.5, 1.5, 1.5, 1.15)]
    [InlineData(4, 1.5, 1.5, 1.5, 1.15)]
    [InlineData(5, 1.4, 1.4, 1.4, 1.1)]
    [InlineData(6, 1.3, 1.3, 1.3, 1.1)]
    [InlineData(8, 1.2, 1.3, 1.2, 1.05)]
    [InlineData(10, 1.1, 1.2, 1.1, 1.0)]
    [InlineData(12, 1.0, 1.1, 1.0, 1.0)]
    [InlineData(14, 0.9, 1.0, 0.9, 0.9)]
    public void Size(double width, double bending, double bendingThick, double tension, double compression)
    {
        var depth = width * 0.0254;
        Assert.Equal(bending, AdjustmentFactors.SizeBending(new(2, width), s_row, depth).Value, 1e-12);
        Assert.Equal(bending, AdjustmentFactors.SizeBending(new(3, width), s_row, depth).Value, 1e-12);
        Assert.Equal(bendingThick, AdjustmentFactors.SizeBending(new(4, width), s_row, depth).Value, 1e-12);
        Assert.Equal(tension, AdjustmentFactors.SizeTension(new(2, width), s_row).Value);
        Assert.Equal(compression, AdjustmentFactors.SizeCompression(new(2, width), s_row).Value);
    }

    [Fact]
    public void Size_where_the_table_includes_it_or_has_none()
    {
        var adjusted = s_row with { SizeAdjusted = true };
        Assert.Equal(1, AdjustmentFactors.SizeBending(new(2, 4), adjusted, 0.1).Value);
        Assert.Equal(1, AdjustmentFactors.SizeTension(new(2, 4), adjusted).Value);
        Assert.Equal(1, AdjustmentFactors.SizeCompression(new(2, 4), adjusted).Value);
        foreach (var size in (NominalSize[])[new(1, 4), new(6, 6)])
        {
            Assert.Equal(1, AdjustmentFactors.SizeBending(size, s_row, 0.14).Value);
            Assert.Equal(1, AdjustmentFactors.SizeTension(size, s_row).Value);
            Assert.Equal(1, AdjustmentFactors.SizeCompression(size, s_row).Value);
        }

        // (12/d)^(1/9) above 12 in; never more than 1.
        Assert.Equal(Math.Pow(12 / 13.0, 1.0 / 9), AdjustmentFactors.SizeBending(new(6, 14), s_row, 13 * 0.0254).Value, 1e-12);
        Assert.Equal(1, AdjustmentFactors.SizeBending(new(6, 12), s_row, 11 * 0.0254).Value);
    }

    // Table 4A, load on the wide face; 4 in thick in its own column. Table 4D: beams more than 2 in wider than thick.
    [Theory]
    [InlineData(2, 3, 1.0)]
    [InlineData(2, 4, 1.1)]
    [InlineData(3, 5, 1.1)]
    [InlineData(2, 6, 1.15)]
    [InlineData(3, 8, 1.15)]
    [InlineData(2, 10, 1.2)]
    [InlineData(4, 4, 1.0)]
    [InlineData(4, 5, 1.05)]
    [InlineData(4, 6, 1.05)]
    [InlineData(4, 8, 1.05)]
    [InlineData(4, 10, 1.1)]
    [InlineData(1, 6, 1.0)]
    [InlineData(6, 9, 0.74)]
    [InlineData(6, 8, 1.0)]
    public void Flat_use(double thickness, double width, double expected) =>
        Assert.Equal(expected, AdjustmentFactors.FlatUse(new(thickness, width)).Value);

    // Table 4A: Fb·CF up to 1150 psi and Fc·CF up to 750 psi lose nothing; Table 4D.
    [Fact]
    public void Wet_service()
    {
        NominalSize stick = new(2, 6), timber = new(6, 6);
        Assert.Equal(1, AdjustmentFactors.WetBending(stick, 1149 * Psi).Value);
        Assert.Equal(0.85, AdjustmentFactors.WetBending(stick, 1151 * Psi).Value);
        Assert.Equal(1, AdjustmentFactors.WetCompression(stick, 749 * Psi).Value);
        Assert.Equal(0.8, AdjustmentFactors.WetCompression(stick, 751 * Psi).Value);
        Assert.Equal((0.97, 1.0), (AdjustmentFactors.WetShear(stick).Value, AdjustmentFactors.WetShear(timber).Value));
        Assert.Equal((1.0, 1.0), (AdjustmentFactors.WetTension(stick).Value, AdjustmentFactors.WetTension(timber).Value));
        Assert.Equal((0.67, 0.67), (AdjustmentFactors.WetAcross(stick).Value, AdjustmentFactors.WetAcross(timber).Value));
        Assert.Equal((0.9, 1.0), (AdjustmentFactors.WetModulus(stick).Value, AdjustmentFactors.WetModulus(timber).Value));
        Assert.Equal(
            (1.0, 0.91),
            (AdjustmentFactors.WetBending(timber, 2000 * Psi).Value, AdjustmentFactors.WetCompression(timber, 2000 * Psi).Value));
        Assert.Equal(1, AdjustmentFactors.WetInTable.Value);
    }

    // NDS 4.3.8.
    [Fact]
    public void Incising()
    {
        Assert.Equal((0.8, 0.95), (AdjustmentFactors.IncisedStrength(new(2, 6)).Value, AdjustmentFactors.IncisedModulus(new(2, 6)).Value));
        Assert.Equal((1.0, 1.0), (AdjustmentFactors.IncisedStrength(new(6, 6)).Value, AdjustmentFactors.IncisedModulus(new(6, 6)).Value));
        Assert.Equal(1, AdjustmentFactors.Repetitive.Value);
    }

    // 2x8 Douglas fir-larch No. 1, incised: CF 1.2, 1.2, 1.05; CM 0.85 (Fb·CF = 1200), 1, 0.8 (Fc·CF = 1575), 0.97, 0.67, 0.9.
    [Fact]
    public void Each_value_takes_its_own_factors()
    {
        var values = Lumber("2x8");
        var live = LoadDuration.Live;
        Assert.Equal(1000 * 0.85 * 1.2 * 0.8, values.Bending(live, flat: false).Value / Psi, 1e-6);
        Assert.Equal(1000 * 0.85 * 1.2 * 1.15 * 0.8, values.Bending(live, flat: true).Value / Psi, 1e-6);
        Assert.Equal(675 * 1.2 * 0.8, values.Tension(live).Value / Psi, 1e-6);
        Assert.Equal(1500 * 0.8 * 1.05 * 0.8, values.Compression(live).Value / Psi, 1e-6);
        Assert.Equal(180 * 0.97 * 0.8, values.Shear(live).Value / Psi, 1e-6);
        Assert.Equal(625 * 0.67, values.Across(live).Value / Psi, 1e-6);
        Assert.Equal(1.7e6 * 0.9 * 0.95, values.Modulus().Value / Psi, 1e-3);
        Assert.Equal(620e3 * 0.9 * 0.95, values.ModulusMin(live).Value / Psi, 1e-3);
        Assert.Equal(900 * 1.3 * 0.8 * 0.85, Lumber("2x6", "no2").Bending(live, flat: false).Value / Psi, 1e-6);
    }

    // Appendix D: 1.03·E·(1 − 1.645·0.25)/1.66 where a row has none; 1.6 million psi: 584,500.
    [Fact]
    public void Emin_from_E() => Assert.Equal(584500, Lumber("6x6").ModulusMin(LoadDuration.Live).Value / Psi, 100.0);

    // NDS Table 3.3.3, 10 in deep, 1 in broad, L/d = 7 and 14.3 between: 2.06·L; 1.63·L + 3·d; 1.84·L; of a cantilever loaded
    // at its end 1.87·L; 1.44·L + 3·d. RB = √(le·d/b²).
    [Theory]
    [InlineData(69.9, false, 2.06 * 69.9)]
    [InlineData(70.1, false, (1.63 * 70.1) + 30)]
    [InlineData(142.9, false, (1.63 * 142.9) + 30)]
    [InlineData(143.1, false, 1.84 * 143.1)]
    [InlineData(69.9, true, 1.87 * 69.9)]
    [InlineData(70.1, true, (1.44 * 70.1) + 30)]
    [InlineData(200, true, (1.44 * 200) + 30)]
    public void Effective_lengths_of_beams(double length, bool cantilever, double effective)
    {
        var factor = Stability.Beam(new(1, 10), length, cantilever, 10, 12000);
        Assert.Equal(Math.Sqrt(effective * 10) / 50, factor.Slenderness, 1e-12);

        // 0.95·CL² − (1 + FbE/F)·CL + FbE/F = 0 (NDS 3.3.3.8), the smaller root.
        var ratio = 1.2 * 12000 / (effective * 10) / 10;
        Assert.Equal(0, (0.95 * factor.Value * factor.Value) - ((1 + ratio) * factor.Value) + ratio, 1e-12);
        Assert.InRange(factor.Value, 0, 1);
    }

    // NDS 3.3.3.1: only what is deeper than broad tips over; 3.7.1.5: le/d = 40, FcE = 0.822·Emin/1600.
    [Fact]
    public void What_is_as_broad_as_deep_does_not_tip_and_columns_bow()
    {
        Assert.Equal(1, Stability.Beam(new(2, 2), 1000, cantilever: false, 10, 100).Value);
        Assert.True(Stability.Beam(new(2, 2.01), 1000, cantilever: false, 10, 100).Value < 1);
        var factor = Stability.Column(60, 1.5, 1000, 580000);
        var ratio = 0.822 * 580000 / 1600 / 1000;
        Assert.Equal(0, (0.8 * factor.Value * factor.Value) - ((1 + ratio) * factor.Value) + ratio, 1e-12);
        Assert.Equal(0.8, factor.Slenderness, 1e-12);
        Assert.Equal(0.822 * 580000 / 1600, Stability.Buckling(60, 1.5, 580000), 1e-9);
    }

    private static LumberValues Lumber(string section, string grade = "no1")
    {
        var stock = new StockParameters
        {
            Name = "s",
            Species = "douglas-fir-larch",
            Grade = grade,
            Treated = true,
            Incised = true,
            Lengths = [2.4],
            Density = new DensityRange(500, 560, 800, "test"),
        };
        var size = SectionReader.Read(section).Section!;
        return new LumberValues(stock, size, DesignValues.Find(DesignValues.All, stock.Species, grade, size)!);
    }
}
