using BridgeForm.Materials;

namespace BridgeForm.Tests.Materials;

/// <summary>Densities by the NDS formula; lb/ft³ for G and moisture as published worked values.</summary>
public sealed class SpeciesTests
{
    private const double Pcf = 0.45359237 / (0.3048 * 0.3048 * 0.3048);
    private const double PrintedDigits = 0.006;

    [Theory]
    [InlineData(0.36, 12, 24.22)]
    [InlineData(0.36, 19, 25.18)]
    [InlineData(0.36, 28, 26.36)]
    [InlineData(0.43, 19, 29.74)]
    [InlineData(0.50, 12, 33.15)]
    [InlineData(0.55, 28, 38.58)]
    public void Density_by_gravity_and_moisture(double gravity, double moisture, double pcf) =>
        Assert.Equal(pcf, WoodDensity.At(gravity, moisture) / Pcf, PrintedDigits);

    [Fact]
    public void Treated_wood_is_heavier_and_says_where_from()
    {
        var pine = SpeciesTable.Find("southern-pine")!;
        var dry = WoodDensity.Of(pine, treated: false);
        var treated = WoodDensity.Of(pine, treated: true);
        Assert.Equal(37.33, dry.InService / Pcf, PrintedDigits);
        Assert.Equal(38.58, treated.InService / Pcf, PrintedDigits);
        Assert.Equal(55, treated.High / Pcf, PrintedDigits);
        Assert.Contains("from memory", treated.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Densities_run_from_dry_to_wet() => Assert.All(
        SpeciesTable.All.SelectMany(s => new[] { WoodDensity.Of(s, true), WoodDensity.Of(s, false) }),
        d => Assert.True(d.Low < d.InService && d.InService <= d.High));

    // NDS Supplement Table 4A, Douglas Fir-Larch No. 1 & Better row as used in a published course: Fb 1000 psi.
    [Fact]
    public void Design_values_are_found_by_species_grade_and_size()
    {
        const double psi = 6894.757293168361;
        var fir = DesignValues.Find(DesignValues.All, "douglas-fir-larch", "no1", SectionReader.Read("2x8").Section!)!;
        Assert.Equal(1000, fir.Bending / psi, 6);
        var pine = DesignValues.Find(DesignValues.All, "southern-pine", "no1", SectionReader.Read("2x6").Section!)!;
        Assert.Equal((true, 1350), (pine.SizeAdjusted, Math.Round(pine.Bending / psi)));
        var beam = DesignValues.Find(DesignValues.All, "douglas-fir-larch", "no1", SectionReader.Read("6x10").Section!)!;
        Assert.Equal((SizeClass.Beams, 1350), (beam.Size, Math.Round(beam.Bending / psi)));
        var post = DesignValues.Find(DesignValues.All, "douglas-fir-larch", "no1", SectionReader.Read("6x6").Section!)!;
        Assert.Equal((SizeClass.Posts, 1200), (post.Size, Math.Round(post.Bending / psi)));
        Assert.Null(DesignValues.Find(DesignValues.All, "redwood", "no1", SectionReader.Read("2x6").Section!));
    }
}
