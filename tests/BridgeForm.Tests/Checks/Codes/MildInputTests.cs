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

    // Southern pine, select structural, 2x4 (Fb, Ft, Fc: Southern Pine Use Guide), Douglas fir-larch (Fv, Fc⊥, E, Emin: NDS
    // Supplement table 4A, from memory): the highest of the built-in tables, psi.
    private static readonly Dictionary<string, double> s_highest = new()
    {
        ["bending"] = 2350,
        ["tension"] = 1650,
        ["shear"] = 180,
        ["compression_across"] = 625,
        ["compression"] = 1900,
        ["modulus"] = 1.9e6,
        ["modulus_min"] = 690e3,
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

    // Of clips the reader lets no more than 80 % pass, and says from where.
    [Fact]
    public void Clips_need_no_source()
    {
        var bridge = new Catalogue.TwoBays { Ropes = ", termination: { kind: clips, efficiency: 80 % }" };
        Assert.Equal(CheckStatus.Pass, bridge.Check("mild-inputs").Status);
    }
}
