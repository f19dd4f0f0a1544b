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

    // Of clips the reader lets no more than 80 % pass, and says from where.
    [Fact]
    public void Clips_need_no_source()
    {
        var bridge = new Catalogue.TwoBays { Ropes = ", termination: { kind: clips, efficiency: 80 % }" };
        Assert.Equal(CheckStatus.Pass, bridge.Check("mild-inputs").Status);
    }
}
