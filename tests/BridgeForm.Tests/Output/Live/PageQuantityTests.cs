using BridgeForm.Output.Live;
using BridgeForm.Quantities;
using CsCheck;

namespace BridgeForm.Tests.Output.Live;

/// <summary>A slider's number as it is written, by hand and read back.</summary>
public sealed class PageQuantityTests
{
    private const double Inch = 0.0254;
    private const double Degree = Math.PI / 180;
    private const double Slack = 1e-9;

    [Theory]
    [InlineData(9.144, false, "30 ft 0 in")]
    [InlineData(100.27 * Inch, false, "8 ft 4-1/4 in")] // 100.27 × 16 = 1604.3
    [InlineData(72 * Inch, false, "6 ft 0 in")]
    [InlineData(71.98 * Inch, false, "6 ft 0 in")] // 1151.7: on the tape it is 6 ft
    [InlineData(71.95 * Inch, false, "71-15/16 in")] // 1151.2
    [InlineData(0.1, false, "3-15/16 in")] // 62.99
    [InlineData(-0.5, false, "-19-11/16 in")] // 314.96
    [InlineData(-3, false, "-9 ft 10-1/8 in")] // 1889.76
    [InlineData(0, false, "0 in")]
    [InlineData(9.144, true, "9144 mm")]
    [InlineData(0.01568, true, "16 mm")]
    [InlineData(0.0154, true, "15 mm")]
    [InlineData(-0.0026, true, "-3 mm")]
    public void Lengths(double metres, bool isMetric, string text) => Assert.Equal(text, PageQuantity.Text("length", metres, isMetric));

    [Theory]
    [InlineData(8.02, "8.0 deg")]
    [InlineData(8.3, "8.5 deg")]
    [InlineData(8.25, "8.5 deg")]
    [InlineData(-11.8, "-12.0 deg")]
    [InlineData(-0.1, "0.0 deg")]
    public void Angles(double degrees, string text)
    {
        Assert.Equal(text, PageQuantity.Text("angle", degrees * Degree, isMetric: false));
        Assert.Equal(text, PageQuantity.Text("angle", degrees * Degree, isMetric: true));
    }

    [Theory]
    [InlineData(0.06, "6 %")]
    [InlineData(0.0604, "6 %")]
    [InlineData(0.0607, "6.1 %")]
    [InlineData(1, "100 %")]
    [InlineData(0.0004, "0 %")]
    public void Shares(double share, string text) => Assert.Equal(text, PageQuantity.Text("share", share, isMetric: false));

    [Theory]
    [InlineData("force")]
    [InlineData("temperature")]
    [InlineData("")]
    [InlineData("lengthy")]
    public void Of_what_no_slider_sets_nothing_is_written(string kind) => Assert.Equal("", PageQuantity.Text(kind, 1, isMetric: false));

    [Fact]
    public void What_is_written_reads_back_within_half_a_step() =>
        Gen.Select(Gen.Double[-500, 500], Gen.Double[-1.5, 1.5], Gen.Double[-2, 2], Gen.Bool).Sample((length, angle, share, isMetric) =>
            IsNear(QuantityKind.Length, length, isMetric, isMetric ? 0.001 : Inch / 16)
            && IsNear(QuantityKind.Angle, angle, isMetric, Degree / 2) && IsNear(QuantityKind.Share, share, isMetric, 0.001));

    private static bool IsNear(QuantityKind kind, double number, bool isMetric, double step)
    {
        var reading = QuantityReader.Read(kind, PageQuantity.Text(kind.ToString().ToLowerInvariant(), number, isMetric));
        return reading.IsRead && Math.Abs(reading.Value - number) <= (step / 2) + Slack;
    }
}
