using BridgeForm.Materials;

namespace BridgeForm.Tests.Materials;

/// <summary>The built-in rows against NDS Supplement Tables 4A, 4B (from June 2013) and 4D, psi; from memory.</summary>
public sealed class DesignValueTests
{
    private const double Psi = BridgeForm.Quantities.Units.PoundForce / (0.0254 * 0.0254);

    // Fb, Ft, Fv, Fc across, Fc, E and Emin in thousands (0: none).
    [Theory]
    [InlineData("douglas-fir-larch", "ss", "dimension", 1500, 1000, 180, 625, 1700, 1900, 690)]
    [InlineData("douglas-fir-larch", "no1", "dimension", 1000, 675, 180, 625, 1500, 1700, 620)]
    [InlineData("douglas-fir-larch", "no2", "dimension", 900, 575, 180, 625, 1350, 1600, 580)]
    [InlineData("douglas-fir-larch", "no3", "dimension", 525, 325, 180, 625, 775, 1400, 510)]
    [InlineData("hem-fir", "no1", "dimension", 975, 625, 150, 405, 1350, 1500, 550)]
    [InlineData("hem-fir", "no2", "dimension", 850, 525, 150, 405, 1300, 1300, 470)]
    [InlineData("hem-fir", "no3", "dimension", 500, 300, 150, 405, 725, 1200, 440)]
    [InlineData("spruce-pine-fir", "no1", "dimension", 875, 450, 135, 425, 1150, 1400, 510)]
    [InlineData("spruce-pine-fir", "no2", "dimension", 875, 450, 135, 425, 1150, 1400, 510)]
    [InlineData("spruce-pine-fir", "no3", "dimension", 500, 250, 135, 425, 650, 1200, 440)]
    [InlineData("western-red-cedar", "ss", "dimension", 1000, 600, 155, 425, 1000, 1100, 400)]
    [InlineData("western-red-cedar", "no1", "dimension", 725, 425, 155, 425, 825, 1000, 370)]
    [InlineData("western-red-cedar", "no2", "dimension", 700, 425, 155, 425, 650, 1000, 370)]
    [InlineData("western-red-cedar", "no3", "dimension", 400, 250, 155, 425, 375, 900, 330)]
    [InlineData("southern-pine", "ss", "2x4", 2350, 1650, 175, 565, 1900, 1800, 660)]
    [InlineData("southern-pine", "ss", "2x6", 2100, 1450, 175, 565, 1800, 1800, 660)]
    [InlineData("southern-pine", "ss", "2x8", 1950, 1350, 175, 565, 1700, 1800, 660)]
    [InlineData("southern-pine", "ss", "2x10", 1700, 1150, 175, 565, 1650, 1800, 660)]
    [InlineData("southern-pine", "ss", "2x12", 1600, 1100, 175, 565, 1650, 1800, 660)]
    [InlineData("southern-pine", "no1", "2x4", 1500, 1000, 175, 565, 1650, 1600, 580)]
    [InlineData("southern-pine", "no1", "2x6", 1350, 875, 175, 565, 1550, 1600, 580)]
    [InlineData("southern-pine", "no1", "2x8", 1250, 800, 175, 565, 1500, 1600, 580)]
    [InlineData("southern-pine", "no1", "2x10", 1050, 700, 175, 565, 1450, 1600, 580)]
    [InlineData("southern-pine", "no1", "2x12", 1000, 650, 175, 565, 1400, 1600, 580)]
    [InlineData("southern-pine", "no2", "2x4", 1100, 675, 175, 565, 1450, 1400, 510)]
    [InlineData("southern-pine", "no2", "2x6", 1000, 600, 175, 565, 1400, 1400, 510)]
    [InlineData("southern-pine", "no2", "2x8", 925, 550, 175, 565, 1350, 1400, 510)]
    [InlineData("southern-pine", "no2", "2x10", 800, 475, 175, 565, 1300, 1400, 510)]
    [InlineData("southern-pine", "no2", "2x12", 750, 450, 175, 565, 1250, 1400, 510)]
    [InlineData("southern-pine", "no3", "2x4", 650, 400, 175, 565, 850, 1300, 470)]
    [InlineData("southern-pine", "no3", "2x6", 575, 350, 175, 565, 800, 1300, 470)]
    [InlineData("southern-pine", "no3", "2x8", 525, 325, 175, 565, 775, 1300, 470)]
    [InlineData("southern-pine", "no3", "2x10", 475, 275, 175, 565, 750, 1300, 470)]
    [InlineData("southern-pine", "no3", "2x12", 450, 250, 175, 565, 725, 1300, 470)]
    [InlineData("douglas-fir-larch", "no1", "beams", 1350, 675, 170, 625, 925, 1600, 0)]
    [InlineData("douglas-fir-larch", "no1", "posts", 1200, 825, 170, 625, 1000, 1600, 0)]
    [InlineData("western-red-cedar", "no1", "beams", 975, 475, 140, 425, 725, 1000, 0)]
    [InlineData("western-red-cedar", "no1", "posts", 875, 600, 140, 425, 800, 1000, 0)]
    [InlineData("western-red-cedar", "no2", "beams", 625, 325, 140, 425, 475, 800, 0)]
    [InlineData("western-red-cedar", "no2", "posts", 500, 350, 140, 425, 375, 800, 0)]
    [InlineData("southern-pine", "no1", "timbers", 1350, 900, 165, 375, 825, 1500, 0)]
    [InlineData("southern-pine", "no2", "timbers", 850, 550, 165, 375, 525, 1200, 0)]
    public void Row(
        string species, string grade, string size, double fb, double ft, double fv, double across, double fc, double e, double emin)
    {
        var row = DesignValues.All.Single(r => (r.Species, r.Grade, r.Size) == (species, grade, size));
        double[] expected = [fb, ft, fv, across, fc, e * 1000, emin * 1000];
        double[] found = [row.Bending, row.Tension, row.Shear, row.CompressionAcross, row.Compression, row.Modulus, row.ModulusMin ?? 0];
        Assert.All(expected.Zip(found), p => Assert.Equal(p.First, p.Second / Psi, 1e-6));
        Assert.Equal(size is "timbers", row.Wet);
        Assert.Equal(size.StartsWith("2x", StringComparison.Ordinal), row.SizeAdjusted);
    }

    [Fact]
    public void No_row_is_left_out_above() => Assert.Equal(42 + StrengthClass.All.Length, DesignValues.All.Length);

    // Southern Pine Use Guide, metric edition 2018, MPa to one decimal (GPa for E and Emin): Fb, Ft, Fc, E, Emin; Fv 1.2, Fc across 3.9.
    [Theory]
    [InlineData("ss", "2x4", 16.2, 11.4, 13.1, 12.4, 4.6)]
    [InlineData("ss", "2x6", 14.5, 10.0, 12.4, 12.4, 4.6)]
    [InlineData("ss", "2x8", 13.4, 9.3, 11.7, 12.4, 4.6)]
    [InlineData("ss", "2x10", 11.7, 7.9, 11.4, 12.4, 4.6)]
    [InlineData("ss", "2x12", 11.0, 7.6, 11.4, 12.4, 4.6)]
    [InlineData("no1", "2x4", 10.3, 6.9, 11.4, 11.0, 4.0)]
    [InlineData("no1", "2x6", 9.3, 6.0, 10.7, 11.0, 4.0)]
    [InlineData("no1", "2x8", 8.6, 5.5, 10.3, 11.0, 4.0)]
    [InlineData("no1", "2x10", 7.2, 4.8, 10.0, 11.0, 4.0)]
    [InlineData("no1", "2x12", 6.9, 4.5, 9.7, 11.0, 4.0)]
    [InlineData("no2", "2x4", 7.6, 4.7, 10.0, 9.7, 3.5)]
    [InlineData("no2", "2x6", 6.9, 4.1, 9.7, 9.7, 3.5)]
    [InlineData("no2", "2x8", 6.4, 3.8, 9.3, 9.7, 3.5)]
    [InlineData("no2", "2x10", 5.5, 3.3, 9.0, 9.7, 3.5)]
    [InlineData("no2", "2x12", 5.2, 3.1, 8.6, 9.7, 3.5)]
    [InlineData("no3", "2x4", 4.5, 2.8, 5.9, 9.0, 3.2)]
    [InlineData("no3", "2x6", 4.0, 2.4, 5.5, 9.0, 3.2)]
    [InlineData("no3", "2x8", 3.6, 2.2, 5.3, 9.0, 3.2)]
    [InlineData("no3", "2x10", 3.3, 1.9, 5.2, 9.0, 3.2)]
    [InlineData("no3", "2x12", 3.1, 1.7, 5.0, 9.0, 3.2)]
    public void Southern_pine_as_its_guide_prints_it(string grade, string size, double fb, double ft, double fc, double e, double emin)
    {
        const double Printed = 0.051e6;
        var row = DesignValues.All.Single(r => (r.Species, r.Grade, r.Size) == ("southern-pine", grade, size));
        Assert.Equal(fb * 1e6, row.Bending, Printed);
        Assert.Equal(ft * 1e6, row.Tension, Printed);
        Assert.Equal(fc * 1e6, row.Compression, Printed);
        Assert.Equal(1.2e6, row.Shear, Printed);
        Assert.Equal(3.9e6, row.CompressionAcross, Printed);
        Assert.Equal(e * 1e9, row.Modulus, 1000 * Printed);
        Assert.Equal(emin * 1e9, row.ModulusMin!.Value, 1000 * Printed);
    }

    // 1x lumber is reckoned as No. 3, by the next width that the tables print; nothing else takes such a row.
    [Theory]
    [InlineData("southern-pine", "1x2", 650)]
    [InlineData("southern-pine", "1x4", 650)]
    [InlineData("southern-pine", "5/4x6", 575)]
    [InlineData("southern-pine", "1x8", 525)]
    [InlineData("southern-pine", "19 x 89 mm", 650)]
    [InlineData("western-red-cedar", "1x6", 400)]
    public void Boards_are_third_grade(string species, string section, double bending) => Assert.Equal(
        bending, DesignValues.ForBoard(DesignValues.All, species, SectionReader.Read(section).Section!)!.Bending / Psi, 1e-6);

    [Fact]
    public void A_species_without_third_grade_has_no_boards() =>
        Assert.Null(DesignValues.ForBoard(DesignValues.All, "white-oak", SectionReader.Read("1x4").Section!));

    // 5 in and thicker are timbers; more than 2 in wider than thick they are beams.
    [Theory]
    [InlineData("5x5", "posts")]
    [InlineData("6x8", "posts")]
    [InlineData("6x10", "beams")]
    [InlineData("4x12", "dimension")]
    [InlineData("2x2", "dimension")]
    public void Class_of_a_section(string section, string size) => Assert.Equal(
        size, DesignValues.Find(DesignValues.All, "douglas-fir-larch", "no1", SectionReader.Read(section).Section!)!.Size);

    // 127 mm is 5 in to half a millimetre; 127.6 mm would round up to 6. 37.5 mm is 1-1/2 in less the rounding.
    [Theory]
    [InlineData("127 x 200 mm", 5, 8)]
    [InlineData("127.6 x 203.8 mm", 6, 9)]
    [InlineData("37.6 x 101.9 mm", 2, 4)]
    [InlineData("37.4 x 102.2 mm", 1, 5)]
    public void Rounded_up_to_whole_inches(string text, double thickness, double width) =>
        Assert.Equal(new NominalSize(thickness, width), NominalSize.Of(SectionReader.Read(text).Section!));

    // Specific gravities: NDS Supplement; from memory where the row says so.
    [Theory]
    [InlineData("southern-pine", 0.55, false)]
    [InlineData("douglas-fir-larch", 0.50, false)]
    [InlineData("hem-fir", 0.43, false)]
    [InlineData("western-red-cedar", 0.36, true)]
    [InlineData("spruce-pine-fir", 0.42, false)]
    [InlineData("redwood", 0.44, true)]
    [InlineData("yellow-cedar", 0.47, true)]
    [InlineData("white-oak", 0.73, true)]
    // EN 338: C24 420 kg/m³, D30 640 kg/m³ at 12 %: 999.6·1.12·G/(1 + 0.108·G) = 420 has G 0.391, 640 has 0.609.
    [InlineData("en338-softwood", 0.39, false)]
    [InlineData("en338-hardwood", 0.61, false)]
    public void Gravities(string key, double gravity, bool durable)
    {
        var species = SpeciesTable.Find(key)!;
        Assert.Equal((gravity, durable), (species.SpecificGravity, species.Durable));
        Assert.Equal(10, SpeciesTable.All.Length);
    }

    // 62.4·0.73/(1 + 0.009·0.73·28)·1.28 = 49.2 lb/ft³, dry 12 % 47.3; freshly treated 55, or as wet as it can be: G 0.9 has
    // 62.4·0.9/(1 + 0.009·0.9·28)·1.28 = 58.6.
    [Fact]
    public void Heaviest_is_freshly_treated_or_wet()
    {
        const double Pcf = 0.45359237 / (0.3048 * 0.3048 * 0.3048);
        var oak = WoodDensity.Of(SpeciesTable.Find("white-oak")!, treated: true);
        Assert.Equal(62.4 * 0.73 / (1 + (0.009 * 0.73 * 12)) * 1.12, oak.Low / Pcf, 1e-6);
        Assert.Equal(62.4 * 0.73 / (1 + (0.009 * 0.73 * 28)) * 1.28, oak.InService / Pcf, 1e-6);
        Assert.Equal(55, oak.High / Pcf, 1e-6);
        var plain = WoodDensity.Of(SpeciesTable.Find("white-oak")!, treated: false);
        Assert.Equal(62.4 * 0.73 / (1 + (0.009 * 0.73 * 19)) * 1.19, plain.InService / Pcf, 1e-6);
        Assert.Equal(oak.InService, plain.High, 1e-9);
        var heavy = WoodDensity.Of(new("own", 0.9, false, "invented"), treated: true);
        Assert.Equal(62.4 * 0.9 / (1 + (0.009 * 0.9 * 28)) * 1.28, heavy.High / Pcf, 1e-6);
    }

    // PS 20: green sizes 1/16 in more up to 4 in wide, 1/8 in at 5 and 6, 1/4 in above; 25/32 and 1-1/32 in thick boards.
    // Sections' sides 5 to 600 mm.
    [Theory]
    [InlineData("1x4 green", 0.78125, 3.5625)]
    [InlineData("5/4x8 green", 1.03125, 7.5)]
    [InlineData("4x6 green", 3.5625, 5.625)]
    [InlineData("2x5", 1.5, 4.5)]
    [InlineData("2x5 green", 1.5625, 4.625)]
    [InlineData("5x5", 4.5, 4.5)]
    [InlineData("6x16", 5.5, 15)]
    [InlineData("14x14", 13.25, 13.25)]
    [InlineData("16x16", 15, 15)]
    [InlineData("2x16", 1.5, 15.25)]
    public void More_dressed_sizes(string text, double thickness, double width)
    {
        var section = SectionReader.Read(text).Section!;
        Assert.Equal((thickness, width), (Math.Round(section.Thickness / 0.0254, 9), Math.Round(section.Width / 0.0254, 9)));
    }

    [Theory]
    [InlineData("5 x 600 mm", true)]
    [InlineData("4.9 x 600 mm", false)]
    [InlineData("5 x 601 mm", false)]
    public void Sides_of_a_section(string text, bool fits) => Assert.Equal(fits, SectionReader.Read(text).Section is not null);

    // 3/4 in counts as 1 in.
    [Fact]
    public void Thin_boards_count_as_one_inch() => Assert.Equal(
        3.5 / 12 * 10, Lumber.BoardFeet(SectionReader.Read("3/4 x 3-1/2 in").Section!, 10 * 0.3048), 1e-9);
}
