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
    [InlineData("6 in", "30 in", "20 psf", "[59 F, 61 F]", "0.5 %", ", source: letter", "site.temperatures 2 °F")]
    [InlineData("6 in", "30 in", "20 psf", "[30 F, 90 F]", "0 %", ", source: letter", "ropes.stretch up to 0 %")]
    [InlineData("6 in", "30 in", "20 psf", "[30 F, 90 F]", "0.5 %", "", "ropes.termination.efficiency 90 % without a source")]
    public void Each_mild_input_is_named_alone(
        string edge, string patch, string wind, string temperatures, string stretch, string source, string said)
    {
        var check = FloorProofs.Inputs(edge, patch, wind, temperatures, stretch, source).Check("mild-inputs");
        Assert.Equal((CheckStatus.Warn, 1.0), (check.Status, check.Demand));
        Assert.StartsWith(said, check.Detail, StringComparison.Ordinal);
    }

    // Of clips the reader lets no more than 80 % pass, and says from where.
    [Fact]
    public void Clips_need_no_source()
    {
        var bridge = new Catalogue.TwoBays { Ropes = ", termination: { kind: clips, efficiency: 80 % }" };
        Assert.Equal(CheckStatus.Pass, bridge.Check("mild-inputs").Status);
    }
}
