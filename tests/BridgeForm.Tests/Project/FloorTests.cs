using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

/// <summary>What lies just above a floor is read; what is wrong below it stands in <see cref="FaultPlaceTests"/>.</summary>
public sealed class FloorTests
{
    [Theory]
    [InlineData("efficiency: 80 %", "efficiency: 80 %")]
    [InlineData("kind: clips, efficiency: 80 %", "kind: socket, efficiency: 95 %, source: its maker")]
    [InlineData("eccentricity: 60 %", "eccentricity: 55 %")]
    [InlineData("[20 F, 100 F]", "[59 F, 61 F]")]
    [InlineData("[20 F, 100 F]", "[100 F, 60 F, 20 F]")]
    [InlineData(
        "type: rope-6x19-iwrc-eips-galvanized-3/4",
        "type: { diameter: 19 mm, mass_per_length: 1.55 kg/m, breaking_strength: 385 kN, metallic_area: 175 mm2, modulus: 100 GPa }")]
    [InlineData(
        "type: rope-6x19-iwrc-eips-galvanized-3/4",
        "type: { diameter: 19 mm, mass_per_length: 1.55 kg/m, breaking_strength: 235 kN, metallic_area: 175 mm2, modulus: 30 GPa }")]
    public void Just_above_is_read(string old, string replacement) => Assert.NotNull(Examples.Good(Examples.With(old, replacement)));

    // A fault of both temperatures lies where one of them stands in the file.
    [Fact]
    public void A_reference_as_hot_as_the_default_temperatures()
    {
        var reading = ProjectReader.Read(
            "name: Hot (invented)\nsite:\n  span: 30 ft\n  reference_temperature: 100 F\n", "test.yaml", Bridges.Catalogue);
        var fault = Assert.Single(reading.Faults);
        Assert.Equal(4, fault.Line);
        Assert.Contains("none is hotter", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("No. 2 Prime", "Southern Yellow Pine", "no2", "southern-pine")]
    [InlineData("#1", "SYP", "no1", "southern-pine")]
    [InlineData("Select Structural", "D Fir-L", "ss", "douglas-fir-larch")]
    public void As_stamped(string grade, string species, string word, string key)
    {
        var stock = Read($$"""
            name: Stamped (invented)
            site: { span: 30 ft }
            stock: { treated: { species: "{{species}}", grade: "{{grade}}", treated: true, lengths: [16 ft] }, cedar: { species: W. Cedar, grade: no2, lengths: [16 ft] } }
            """).Parameters!.StockNamed("treated");
        Assert.Equal((word, key), (stock.Grade, stock.Species));
    }

    // A grade of one's own has values of its own; the name of a species of one's own goes before a stamp's.
    [Fact]
    public void Grades_and_species_of_ones_own()
    {
        const string Own = """
            name: Own (invented)
            site: { span: 30 ft }
            species: { spf: { specific_gravity: 0.41, source: my own } }
            stock: { treated: { species: spf, grade: Stud, treated: true, lengths: [16 ft] }, cedar: { species: western-red-cedar, lengths: [16 ft] } }
            values:
              - { species: spf, grade: stud, size: dimension, bending: 700 psi, tension: 350 psi, shear: 135 psi, compression_across: 425 psi, compression: 700 psi, modulus: 1200000 psi, source: my own }
            """;
        var parameters = Read(Own).Parameters!;
        Assert.Equal(("Stud", "spf"), (parameters.StockNamed("treated").Grade, parameters.StockNamed("treated").Species));
        Assert.Equal("spf", parameters.Values[0].Species);
        Assert.Contains(
            "'Stud' is not a grade", Assert.Single(Read(Own.Replace("grade: stud", "grade: no1", StringComparison.Ordinal)).Faults).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\nloads: { low_live_reason: \"two people at a time\" }\n", "two people at a time")]
    [InlineData("", null)]
    public void A_reason_is_a_reason(string loads, string? reason) =>
        Assert.Equal(reason, Bridges.Read(Bridges.Garden + loads).Loads.LowLiveReason);

    [Fact]
    public void A_saddle_has_a_radius_or_none()
    {
        Assert.Null(Bridges.Read(Bridges.Garden).Saddle.Radius);
        Assert.Equal(0.2032, Bridges.Read(Bridges.Garden + "\nsaddle: { radius: 8 in }\n").Saddle.Radius!.Value, 12);
    }

    private static ProjectReading Read(string text) => ProjectReader.Read(text, "test.yaml", Bridges.Catalogue);
}
