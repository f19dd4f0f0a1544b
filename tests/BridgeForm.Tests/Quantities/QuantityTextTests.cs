using BridgeForm.Quantities;

namespace BridgeForm.Tests.Quantities;

/// <summary>SI values in people's units; expected numbers by NIST SP 811 factors.</summary>
public sealed class QuantityTextTests
{
    private readonly QuantityText imperial = new(UnitSystem.Imperial);
    private readonly QuantityText metric = new(UnitSystem.Metric);

    [Fact]
    public void Imperial() => Assert.Equal(
        "3 ft 0 in|36 in|300 lbf|3 lb|60 psf|60 F",
        string.Join(
            '|', imperial.Length(0.9144), imperial.Size(0.9144), imperial.Force(1334.4665), imperial.Mass(1.36077711),
            imperial.Pressure(2872.8156), imperial.Temperature(15.5555556)));

    [Fact]
    public void Metric() => Assert.Equal(
        "914.4 mm|914.4 mm|1.33 kN|1.4 kg|2.87 kPa|15.6 C",
        string.Join(
            '|', metric.Length(0.9144), metric.Size(0.9144), metric.Force(1334.4665), metric.Mass(1.36077711), metric.Pressure(2872.8156),
            metric.Temperature(15.5555556)));

    [Theory]
    [InlineData(8, "8.0 deg")]
    [InlineData(-0.04, "0.0 deg")]
    [InlineData(70.06, "70.1 deg")]
    public void Degrees(double degrees, string text) => Assert.Equal(text, QuantityText.Degrees(degrees * Math.PI / 180));
}
