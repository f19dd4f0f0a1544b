using BridgeForm.Checks;
using BridgeForm.Tests.Checks.Catalogue.Codes;

namespace BridgeForm.Tests.Checks.Codes;

/// <summary>One mild value is enough for a look, and is named first.</summary>
public sealed class MildInputTests
{
    [Theory]
    [InlineData("6.01 in", "30 in", "20 psf", "[30 F, 90 F]", "0.5 %", ", source: letter", "loads.point.edge 6.01 in")]
    [InlineData("6 in", "30.01 in", "20 psf", "[30 F, 90 F]", "0.5 %", ", source: letter", "loads.point.patch 30.01 in")]
    [InlineData("6 in", "30 in", "1 psf", "[30 F, 90 F]", "0.5 %", ", source: letter", "loads.wind.pressure 1 psf")]
    [InlineData("6 in", "30 in", "20 psf", "[40 F, 99.9 F]", "0.5 %", ", source: letter", "site.temperatures 59.9 °F apart")]
    [InlineData("6 in", "30 in", "20 psf", "[40.1 F, 120 F]", "0.5 %", ", source: letter", "site.temperatures less than 20 °F below")]
    [InlineData("6 in", "30 in", "20 psf", "[-20 F, 79.9 F]", "0.5 %", ", source: letter", "site.temperatures less than 20 °F below")]
    [InlineData("6 in", "30 in", "20 psf", "[30 F, 90 F]", "0 %", ", source: letter", "ropes.stretch up to 0 %")]
    [InlineData("6 in", "30 in", "20 psf", "[30 F, 90 F]", "0.5 %", "", "ropes.termination.efficiency 90 % without a source")]
    public void Each_mild_input_is_named_alone(
        string edge, string patch, string wind, string temperatures, string stretch, string source, string said)
    {
        var check = FloorProofs.Inputs(edge, patch, wind, temperatures, stretch, source).Check("mild-inputs");
        Assert.Equal((CheckStatus.Warn, 1.0), (check.Status, check.Demand));
        Assert.StartsWith(said, check.Detail, StringComparison.Ordinal);
    }

    private const string OwnRope = "{ diameter: 3/4 in, mass_per_length: 1.04 lb/ft, breaking_strength: 52000 lbf, "
        + "metallic_area: 0.25 in2, modulus: 13500 ksi, source: invented }";

    // Ballast: 20 lb a frame is fasteners, more is not. And a rope of the file that is said not to stretch.
    [Theory]
    [InlineData("hardware: 20 lb", "", 0)]
    [InlineData("hardware: 20.1 lb", "", 1)]
    [InlineData("", OwnRope, 1)]
    public void Ballast_and_ropes_that_do_not_stretch(string frames, string rope, int mild)
    {
        var bridge = new Catalogue.TwoBays { Frames = frames };
        bridge = rope.Length > 0 ? bridge with { Rope = rope, Ropes = ", stretch: [0 %, 0 %]" } : bridge;
        Assert.Equal(mild, bridge.Check("mild-inputs").Demand);
    }

    // Southern pine, select structural, 2x4 (Southern Pine Use Guide): the highest of its built-in tables, psi.
    private static readonly Dictionary<string, double> s_highest = new()
    {
        ["bending"] = 2350,
        ["tension"] = 1650,
        ["shear"] = 175,
        ["compression_across"] = 565,
        ["compression"] = 1900,
        ["modulus"] = 1.8e6,
        ["modulus_min"] = 660e3,
    };

    [Theory]
    [InlineData("bending", 1.5, 0)]
    [InlineData("bending", 1.501, 1)]
    [InlineData("tension", 1.501, 1)]
    [InlineData("shear", 1.501, 1)]
    [InlineData("compression_across", 1.501, 1)]
    [InlineData("compression", 1.501, 1)]
    [InlineData("modulus", 1.501, 1)]
    [InlineData("modulus_min", 1.501, 1)]
    public void Wood_stronger_than_any_table(string key, double times, int mild)
    {
        var own = s_highest.Select(v => FormattableString.Invariant($"{v.Key}: {v.Value * (v.Key == key ? times : 1):R} psi"));
        var row = $"values: [{{ species: southern-pine, grade: no1, size: 2x4, {string.Join(", ", own)}, source: invented }}]";
        var check = new Catalogue.TwoBays { More = row }.Check("mild-inputs");
        Assert.Equal(mild, check.Demand);
        Assert.True(mild == 0 || check.Detail.StartsWith("values for southern-pine no1, 2x4: " + key + " ", StringComparison.Ordinal));
    }

    // Of a species without a table the highest of any: Douglas fir-larch, E 1.9e6 psi (NDS Supplement table 4A, from memory), and
    // southern pine, Fb 2350 psi. Cedar's own are lower: select structural, Fb 1000 psi (the same table).
    [Theory]
    [InlineData("ipe", 3500, 0)]
    [InlineData("ipe", 3550, 1)]
    [InlineData("western-red-cedar", 1500, 0)]
    [InlineData("western-red-cedar", 1510, 1)]
    public void The_species_own_table_goes_first(string species, int bending, int mild)
    {
        var row = $"values: [{{ species: {species}, grade: no1, size: 2x4, bending: {bending} psi, tension: 600 psi, shear: 155 psi, "
            + "compression_across: 425 psi, compression: 1000 psi, modulus: 1000000 psi, source: invented }]\n"
            + "species: { ipe: { specific_gravity: 0.9, source: invented } }";
        Assert.Equal(mild, new Catalogue.TwoBays { More = row }.Check("mild-inputs").Demand);
    }

    // Southern pine, G 0.55, at 28 % moisture: 62.4·0.55/(1 + 0.009·0.55·28)·1.28 = 38.58 lb/ft³ (NDS Supplement's formula).
    [Theory]
    [InlineData(38.5, 0)]
    [InlineData(38.7, 1)]
    public void Dry_wood_heavier_than_wet(double low, int mild)
    {
        Assert.InRange(62.4 * 0.55 / (1 + (0.009 * 0.55 * 28)) * 1.28, 38.5, 38.7);
        var stock = FormattableString.Invariant(
            $"stock: {{ treated: {{ species: southern-pine, grade: no1, treated: true, lengths: [20 ft], density: {{ low: {low} lb/ft3, ")
            + "in_service: 45 lb/ft3, high: 55 lb/ft3 } }, cedar: { species: western-red-cedar, grade: no2, lengths: [20 ft] } }";
        var check = new Catalogue.TwoBays { More = stock }.Check("mild-inputs");
        Assert.Equal(mild, check.Demand);
        Assert.True(mild == 0 || check.Detail.StartsWith("stock.treated.density.low 38.7 lb/ft3: ", StringComparison.Ordinal));
    }

    // Halves, sides and the places that count most are filled with loads.live: 60 psf, however heavy a case of one's own is.
    [Theory]
    [InlineData("60 psf", 0)]
    [InlineData("61 psf", 1)]
    public void A_heavier_case_of_ones_own(string live, int mild)
    {
        var bridge = new Catalogue.TwoBays { More = $"loads: {{ live: 60 psf, cases: [{{ id: crowd, live: {live} }}] }}" };
        var check = bridge.Check("mild-inputs");
        const string Said = "loads.live 60 psf is less than 61 psf in loads.cases, crowd";
        Assert.Equal(mild, check.Demand);
        Assert.True(mild == 0 || check.Detail.StartsWith(Said, StringComparison.Ordinal));
    }

    // A species of one's own with a density of its own is held to its specific gravity too.
    [Fact]
    public void Dry_wood_of_ones_own_species()
    {
        const string Own = "species: { ipe: { specific_gravity: 0.55, source: invented, density: { low: 60 lb/ft3, in_service: 65 lb/ft3, "
            + "high: 70 lb/ft3 } } }\nstock: { treated: { species: ipe, grade: no1, treated: true, lengths: [20 ft] }, "
            + "cedar: { species: western-red-cedar, grade: no2, lengths: [20 ft] } }";
        var check = new Catalogue.TwoBays { More = Own }.Check("mild-inputs");
        Assert.Equal(1, check.Demand);
        Assert.StartsWith(
            "stock.treated.density.low 60 lb/ft3: ipe at 28 % moisture weighs 38.6 lb/ft3", check.Detail, StringComparison.Ordinal);
    }

    // Of clips the reader lets no more than 80 % pass, and says from where.
    [Fact]
    public void Clips_need_no_source()
    {
        var bridge = new Catalogue.TwoBays { Ropes = ", termination: { kind: clips, efficiency: 80 % }" };
        Assert.Equal(CheckStatus.Pass, bridge.Check("mild-inputs").Status);
    }
}
