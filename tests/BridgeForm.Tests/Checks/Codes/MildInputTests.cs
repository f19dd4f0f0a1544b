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

    // Southern pine, no. 1, 2x4 (Southern Pine Use Guide, values from June 2013), psi.
    private static readonly Dictionary<string, double> s_built = new()
    {
        ["bending"] = 1500,
        ["tension"] = 1000,
        ["shear"] = 175,
        ["compression_across"] = 565,
        ["compression"] = 1650,
        ["modulus"] = 1.6e6,
        ["modulus_min"] = 580e3,
    };

    [Theory]
    [InlineData("bending", 1.15, 0)]
    [InlineData("bending", 1.151, 1)]
    [InlineData("tension", 1.15, 0)]
    [InlineData("tension", 1.151, 1)]
    [InlineData("shear", 1.151, 1)]
    [InlineData("compression_across", 1.151, 1)]
    [InlineData("compression", 1.151, 1)]
    [InlineData("modulus", 1.151, 1)]
    [InlineData("modulus_min", 1.151, 1)]
    public void Wood_stronger_than_its_grade(string key, double times, int mild)
    {
        var own = s_built.Select(v => FormattableString.Invariant($"{v.Key}: {v.Value * (v.Key == key ? times : 1):R} psi"));
        var row = $"values: [{{ species: southern-pine, grade: no1, size: 2x4, {string.Join(", ", own)}, size_adjusted: true, "
            + "source: invented }]";
        var check = new Catalogue.TwoBays { More = row }.Check("mild-inputs");
        Assert.Equal(mild, check.Demand);
        Assert.True(mild == 0 || check.Detail.StartsWith("values for southern-pine no1, 2x4: " + key + " ", StringComparison.Ordinal));
    }

    // The built-in values of a 2x4 themselves, but not said to include the size: Table 4A makes 1.5 of 1500 psi, and 0.85 for wet
    // service of that.
    [Fact]
    public void Values_that_take_a_factor_for_size_a_second_time()
    {
        var own = s_built.Select(v => FormattableString.Invariant($"{v.Key}: {v.Value:R} psi"));
        var row = $"values: [{{ species: southern-pine, grade: no1, size: 2x4, {string.Join(", ", own)}, source: invented }}]";
        var check = new Catalogue.TwoBays { More = row }.Check("mild-inputs");
        Assert.Equal(1, check.Demand);
        Assert.Matches(
            "^values for southern-pine no1, 2x4: in 2x4 Fb' 191[23] psi, by the built-in table 1275 psi; values that include the size say "
                + "size_adjusted: true",
            check.Detail);
    }

    // Of a species without a table the highest of any, half as high again: southern pine, select structural, Fb 2350 psi. Cedar's own
    // are lower: of a grade that its table lacks, select structural, Fb 1000 psi; no. 1 has 725 psi, which in a 2x4 takes a size factor
    // of 1.5, as a class none (NDS Supplement table 4A, from memory).
    [Theory]
    [InlineData("ipe", "no1", "2x4", 3500, 0)]
    [InlineData("ipe", "no1", "2x4", 3550, 1)]
    [InlineData("western-red-cedar", "clear", "2x4", 1500, 0)]
    [InlineData("western-red-cedar", "clear", "2x4", 1510, 1)]
    [InlineData("western-red-cedar", "no1", "2x4", 1087, 0)]
    [InlineData("western-red-cedar", "no1", "2x4", 1088, 1)]
    [InlineData("western-red-cedar", "no1", "dimension", 833, 0)]
    [InlineData("western-red-cedar", "no1", "dimension", 834, 1)]
    public void The_same_grade_and_size_go_first(string species, string grade, string size, int bending, int mild)
    {
        var row = $"values: [{{ species: {species}, grade: {grade}, size: {size}, bending: {bending} psi, tension: 425 psi, "
            + "shear: 155 psi, compression_across: 425 psi, compression: 825 psi, modulus: 1000000 psi, source: invented }]\n"
            + "species: { ipe: { specific_gravity: 0.9, source: invented } }";
        Assert.Equal(mild, new Catalogue.TwoBays { More = row }.Check("mild-inputs").Demand);
    }

    // Southern pine's table goes by sizes: of all dimension lumber no. 1, the 2x4 is highest, Fb 1500 psi; boards here are 2x6, 1350 psi,
    // and 15 % more is 1552.5.
    [Theory]
    [InlineData(1552, "none of")]
    [InlineData(1553, "values for southern-pine no1, dimension: in ")]
    [InlineData(1726, "values for southern-pine no1, dimension: bending 1726 psi, highest built-in of species, grade and size 1500 psi")]
    public void Dimension_lumber_is_held_to_the_sizes_that_are_cut_and_to_its_strongest(int bending, string says)
    {
        var row = $"values: [{{ species: southern-pine, grade: no1, size: dimension, bending: {bending} psi, tension: 600 psi, "
            + "shear: 175 psi, compression_across: 565 psi, compression: 1400 psi, modulus: 1600000 psi, size_adjusted: true, "
            + "source: invented }]";
        Assert.StartsWith(says, new Catalogue.TwoBays { More = row }.Check("mild-inputs").Detail, StringComparison.Ordinal);
    }

    // No factor for wet service is taken of such values: someone must have taken it.
    [Theory]
    [InlineData("false", 0)]
    [InlineData("true", 1)]
    public void Values_said_to_be_wet(string wet, int mild)
    {
        var row = "values: [{ species: southern-pine, grade: no1, size: 2x4, bending: 1500 psi, tension: 1000 psi, shear: 175 psi, "
            + $"compression_across: 565 psi, compression: 1650 psi, modulus: 1600000 psi, size_adjusted: true, wet: {wet}, "
            + "source: invented }]";
        var check = new Catalogue.TwoBays { More = row }.Check("mild-inputs");
        Assert.Equal(mild, check.Demand);
        Assert.Equal(
            mild == 1, check.Detail.StartsWith("values for southern-pine no1, 2x4, wet: true: no factor", StringComparison.Ordinal));
    }

    // Southern pine, G 0.55, at 28 % moisture: 62.4·0.55/(1 + 0.009·0.55·28)·1.28 = 38.58 lb/ft³ (NDS Supplement's formula); without
    // any 62.4·0.55 = 34.32; treated and still wet 55 (from memory).
    [Theory]
    [InlineData(34.4, 38.5, 54.9, 0, "")]
    [InlineData(38.7, 45, 54.9, 1, "stock.treated.density.low 38.7 lb/ft3: southern-pine at 28 %")]
    [InlineData(34.4, 38.7, 54.9, 1, "stock.treated.density.in_service 38.7 lb/ft3: southern-pine at 28 %")]
    [InlineData(34.4, 38.5, 55.1, 1, "stock.treated.density.high 55.1 lb/ft3: freshly treated,")]
    [InlineData(34.2, 38.5, 54.9, 1, "stock.treated.density 34.2 lb/ft3: southern-pine without any water weighs 34.3 lb/ft3")]
    [InlineData(5, 5.5, 6, 1, "stock.treated.density 5 lb/ft3: southern-pine without any water")]
    [InlineData(33, 95, 100, 3, "stock.treated.density.in_service 95 lb/ft3")]
    public void Wood_lighter_than_dry_and_heavier_than_wet(double low, double inService, double high, int mild, string said)
    {
        Assert.InRange(62.4 * 0.55 / (1 + (0.009 * 0.55 * 28)) * 1.28, 38.5, 38.7);
        var check = Density("true", low, inService, high);
        Assert.Equal(mild, check.Demand);
        Assert.True(mild == 0 || check.Detail.StartsWith(said, StringComparison.Ordinal), check.Detail);
    }

    // Nothing that was never treated holds that much water.
    [Theory]
    [InlineData(38.5, 0)]
    [InlineData(38.7, 1)]
    public void Untreated_wood_is_at_most_wet(double high, int mild) =>
        Assert.Equal(mild, Density("false", 36, 37, high).Demand);

    private static CheckResult Density(string treated, double low, double inService, double high)
    {
        var stock = FormattableString.Invariant(
            $"stock: {{ treated: {{ species: southern-pine, grade: no1, treated: {treated}, lengths: [20 ft], density: {{ low: {low} ")
            + FormattableString.Invariant($"lb/ft3, in_service: {inService} lb/ft3, high: {high} lb/ft3 }} }}, ")
            + "cedar: { species: western-red-cedar, grade: no2, lengths: [20 ft] } }";
        return Contexts.Check(new Catalogue.TwoBays { More = stock }.Text, "mild-inputs");
    }

    // Of the built-in table, strength over diameter² is highest in cord 1/8: 2000 lbf / (1/8 in)² = 128 ksi (FAA AC 43.13-1B table 7-3);
    // 1.15 of it on 3/4 in is 82,800 lbf. Rope whose wires fill 0.48 of d² is wire rope: 13,500 ksi, 1.15 of it 15,525; with 0.6 it is
    // strand: 23,000 and 26,450 ksi (both from memory).
    [Theory]
    [InlineData(82_700, 0.27, 1.04, 13_500, 0)]
    [InlineData(82_900, 0.27, 1.04, 13_500, 1)]
    [InlineData(52_000, 0.27, 1.04, 15_520, 0)]
    [InlineData(52_000, 0.27, 1.04, 15_530, 1)]
    [InlineData(52_000, 0.335, 1.14, 26_440, 0)]
    [InlineData(52_000, 0.335, 1.14, 26_460, 1)]
    public void A_rope_that_no_table_comes_near(int pounds, double area, double weight, int modulus, int mild)
    {
        var rope = FormattableString.Invariant($"{{ diameter: 3/4 in, mass_per_length: {weight} lb/ft, breaking_strength: {pounds} lbf, ")
            + FormattableString.Invariant($"metallic_area: {area} in2, modulus: {modulus} ksi, source: invented }}");
        var check = new Catalogue.TwoBays { Rope = rope, Ropes = ", stretch: [0.1 %, 0.5 %]" }.Check("mild-inputs");
        Assert.Equal(mild, check.Demand);
        Assert.True(mild == 0 || check.Detail.StartsWith("ropes.type.", StringComparison.Ordinal), check.Detail);
    }

    // By hand: 2·(18-1/4 in + 1-1/2 in·tan 8°) = 36.92 in between the posts: 80 plf / 3.077 ft = 26.00 psf.
    [Theory]
    [InlineData(26.01, 0)]
    [InlineData(25.99, 1)]
    public void People_in_a_row(double psf, int mild)
    {
        var bridge = new Catalogue.TwoBays
        {
            More = FormattableString.Invariant($"loads: {{ live: {psf} psf, low_live_reason: nobody else comes here }}"),
        };
        var check = bridge.Check("mild-inputs");
        Assert.Equal(mild, check.Demand);
        Assert.True(mild == 0 || check.Detail.Contains("200 lb every 2-1/2 ft, bring 80 plf", StringComparison.Ordinal), check.Detail);
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
        const string Own = "species: { ipe: { specific_gravity: 0.55, source: invented, density: { low: 38.7 lb/ft3, "
            + "in_service: 45 lb/ft3, high: 50 lb/ft3 } } }\n"
            + "stock: { treated: { species: ipe, grade: no1, treated: true, lengths: [20 ft] }, "
            + "cedar: { species: western-red-cedar, grade: no2, lengths: [20 ft] } }";
        var check = new Catalogue.TwoBays { More = Own }.Check("mild-inputs");
        Assert.Equal(1, check.Demand);
        Assert.StartsWith(
            "stock.treated.density.low 38.7 lb/ft3: ipe at 28 % moisture weighs 38.6 lb/ft3", check.Detail, StringComparison.Ordinal);
    }

    // Of clips the reader lets no more than 80 % pass, and says from where.
    [Fact]
    public void Clips_need_no_source()
    {
        var bridge = new Catalogue.TwoBays { Ropes = ", termination: { kind: clips, efficiency: 80 % }" };
        Assert.Equal(CheckStatus.Pass, bridge.Check("mild-inputs").Status);
    }
}
