using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Materials;
using BridgeForm.Project;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>EN 338:2016 (Table 1, Table 3) and what a check makes of it: f_k·k_mod/(1.3·1.5), by hand.</summary>
public sealed class EuropeanValueTests
{
    private const string Stock =
        "\nstock:\n  treated: { species: spruce C24, treated: true, lengths: [16 ft] }\n"
        + "  cedar: { species: southern-pine, grade: no1, treated: true, lengths: [16 ft] }\n";

    // f_m,k f_t,0,k f_c,0,k f_c,90,k f_v,k MPa; E_0,mean E_0,05 GPa; ρ_k ρ_mean kg/m³.
    [Theory]
    [InlineData("en338-softwood", "C18", 18, 10, 18, 2.2, 3.4, 9, 6, 320, 380)]
    [InlineData("en338-softwood", "C24", 24, 14.5, 21, 2.5, 4, 11, 7.4, 350, 420)]
    [InlineData("en338-softwood", "C30", 30, 19, 24, 2.7, 4, 12, 8, 380, 460)]
    [InlineData("en338-hardwood", "D30", 30, 18, 24, 5.3, 3.9, 11, 9.2, 530, 640)]
    public void Classes_are_those_of_the_standard(
        string species, string grade, double fm, double ft, double fc, double across, double fv, double e, double low, double light,
        double mean)
    {
        var row = DesignValues.All.Single(r => r.Species == species && r.Grade == grade);
        Assert.Equal(
            [fm, ft, fc, across, fv, e * 1000, low * 1000],
            new[]
            {
                row.Bending, row.Tension, row.Compression, row.CompressionAcross, row.Shear, row.Modulus, row.ModulusMin!.Value,
            }.Select(v => Math.Round(v / 1e6, 9)));
        var wood = StrengthClass.Find(species, grade)!;
        Assert.Equal((light, mean), (wood.DensityLow, wood.DensityMean));
        Assert.Equal(light, WoodDensity.OfClass(wood, treated: true).Low);
    }

    // C24: 24·0.65/1.95 = 8.0; 24·0.70/1.95 = 8.62; 24·0.50/1.95 = 6.15; 4.0·0.65/1.95·0.67 = 0.893; 14.5·0.70/1.95 = 5.21;
    // 21·0.65/1.95 = 7.0; 2.5·0.65/1.95 = 0.833; 2.5·0.5/1.95 = 0.641; E 11000; 7400·0.70/1.95 = 2656.
    [Fact]
    public void C24_is_lowered_by_duration_moisture_and_safety()
    {
        var wood = Lumber("45 x 145 mm", "C24");
        Near(8.0, wood.Bending(LoadDuration.Live, flat: false));
        Near(8.0, wood.Bending(LoadDuration.Live, flat: true));
        Near(8.0, wood.Bending(LoadDuration.Snow, flat: false));
        Near(8.615, wood.Bending(LoadDuration.Guard, flat: false));
        Near(6.154, wood.Bending(LoadDuration.Dead, flat: false));
        Near(0.893, wood.Shear(LoadDuration.Live));
        Near(0.962, wood.Shear(LoadDuration.Guard));
        Near(5.205, wood.Tension(LoadDuration.Guard));
        Near(7.0, wood.Compression(LoadDuration.Live));
        Near(0.833, wood.Across(LoadDuration.Live));
        Near(0.641, wood.Across(LoadDuration.Dead));
        Near(11000, wood.Modulus());
        Near(2656.4, wood.ModulusMin(LoadDuration.Guard));
    }

    // Deeper or thinner changes nothing; the NDS would give a 2x4 half as much again as a 2x12.
    [Theory]
    [InlineData("22 x 95 mm")]
    [InlineData("45 x 95 mm")]
    [InlineData("145 x 145 mm")]
    [InlineData("45 x 300 mm")]
    public void No_size_changes_a_class(string section) => Near(8.0, Lumber(section, "C24").Bending(LoadDuration.Live, flat: true));

    [Theory]
    [InlineData("C18", 18)]
    [InlineData("C30", 30)]
    [InlineData("D30", 30)]
    public void Other_classes(string grade, double characteristic) =>
        Near(characteristic / 3, Lumber("45 x 145 mm", grade).Bending(LoadDuration.Live, flat: false));

    [Fact]
    public void Every_value_says_what_it_is()
    {
        var wood = Lumber("45 x 145 mm", "C24");
        var words = new CheckWords(BridgeForm.Quantities.UnitSystem.Metric);
        Assert.Equal(
            "Fv' = 4 MPa × kmod 0.65 × 1/(γM·γF) 0.513 × kcr 0.67 = 0.89 MPa (EN 338 characteristic value, converted; a licensed engineer "
                + "confirms)",
            wood.Shear(LoadDuration.Live).Text(words));
        Assert.All(
            new[]
            {
                wood.Bending(LoadDuration.Live, false), wood.Shear(LoadDuration.Live), wood.Tension(LoadDuration.Live),
                wood.Compression(LoadDuration.Live), wood.Across(LoadDuration.Live),
            },
            v =>
            {
                Assert.Contains("EN 338:2016", v.Sources, StringComparison.Ordinal);
                Assert.Contains("EN 1995-1-1 Table 3.1", v.Sources, StringComparison.Ordinal);
                Assert.Contains("CD, CM, CF, Cfu and Cr are 1", v.Sources, StringComparison.Ordinal);
                Assert.Contains("licensed engineer", v.Sources, StringComparison.Ordinal);
                Assert.DoesNotContain(v.Factors, f => f.Symbol is "CD" or "CM" or "CF" or "Cfu" or "Cr");
            });
    }

    // People on a board that weighs next to nothing: medium; a board that lies under two thirds of what it bears for ever: permanent.
    // M_dead/0.50 > (M_dead + M)/0.65 where M_dead > 3.33·M; by CD it is 9·M.
    [Theory]
    [InlineData(3.3, 1, "ten years", "ten years")]
    [InlineData(3.4, 1, "permanent", "ten years")]
    [InlineData(9.1, 1, "permanent", "permanent")]
    public void Dead_load_governs_by_the_factors_of_the_wood(double dead, double other, string european, string american)
    {
        var class24 = Lumber("45 x 145 mm", "C24");
        Assert.Equal(european, Governing.Choose(dead, other, LoadDuration.Live, class24).Duration.Name);
        Assert.Equal(american, Governing.Choose(dead, other, LoadDuration.Live, values: null).Duration.Name);
    }

    // Bases of C24, rails of southern pine: each by its own rules. A third of the strength would do in neither.
    [Fact]
    public void A_file_may_mix_both()
    {
        var context = Contexts.Of(Bridges.Garden + Stock);
        Assert.Equal(("en338-softwood", "C24"), (context.Parameters.Stock[0].Species, context.Parameters.Stock[0].Grade));
        var bending = Contexts.Check(context, "base-bending");
        Assert.Contains("kmod 0.", bending.Detail, StringComparison.Ordinal);
        Assert.Contains("EN 338", bending.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain(" CM ", bending.Detail, StringComparison.Ordinal);
        var rail = Contexts.Check(context, "rail-bending");
        Assert.Contains("× CD 1.6 × CM", rail.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain("kmod", rail.Detail, StringComparison.Ordinal);
    }

    // What holds in C30 does not in C18: 30/18 of the strength, whatever the load. Utilization is limit by limit.
    [Fact]
    public void A_weaker_class_has_a_lower_limit()
    {
        double Limit(string grade) =>
            Contexts.Check(Bridges.Garden + Stock.Replace("C24", grade, StringComparison.Ordinal), "base-bending").Capacity!.Value;
        Assert.InRange(Limit("C30") / Limit("C18"), 30 / 18.0 * 0.99, 30 / 18.0 * 1.01);
    }

    [Theory]
    [InlineData("species: en338-softwood, grade: C18", "C18")]
    [InlineData("species: C18", "C18")]
    [InlineData("species: pine C30", "C30")]
    [InlineData("species: western-red-cedar, grade: C18", "C18")]
    public void A_class_is_understood_as_stamped(string wood, string grade)
    {
        var parameters = Bridges.Read(Bridges.Garden + Stock.Replace("species: spruce C24", wood, StringComparison.Ordinal));
        Assert.Equal(grade, parameters.Stock[0].Grade);
        var values = LumberValues.Find(parameters, "treated", parameters.Frames.Base.Section)!;
        Assert.True(values.Row.IsCharacteristic);
        Assert.Equal(grade, values.Row.Grade);
    }

    // No softwood is D30, no oak C24.
    [Theory]
    [InlineData("species: southern-pine, grade: D30")]
    [InlineData("species: white-oak, grade: C24")]
    [InlineData("species: en338-hardwood, grade: C24")]
    [InlineData("species: en338-softwood, grade: no1")]
    public void A_class_of_another_wood_has_no_values(string wood)
    {
        var parameters = Bridges.Read(Bridges.Garden + Stock.Replace("species: spruce C24", wood, StringComparison.Ordinal));
        Assert.Null(LumberValues.Find(parameters, "treated", parameters.Frames.Base.Section));
    }

    private static LumberValues Lumber(string section, string grade)
    {
        var wood = StrengthClass.All.Single(c => c.Grade == grade);
        var stock = new StockParameters
        {
            Name = "s",
            Species = wood.Species,
            Grade = grade,
            Treated = true,
            Incised = false,
            Lengths = [2.4],
            Density = WoodDensity.OfClass(wood, treated: true),
        };
        var size = SectionReader.Read(section).Section!;
        return new LumberValues(stock, size, DesignValues.Find(DesignValues.All, stock.Species, grade, size)!)
        {
            Note = EuropeanFactors.Note,
        };
    }

    private static void Near(double megapascals, AdjustedValue value) => Assert.Equal(megapascals, value.Value / 1e6, megapascals * 1e-3);
}
