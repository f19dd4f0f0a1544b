using BridgeForm.Quantities;

namespace BridgeForm.Tests.Quantities;

/// <summary>Halves go away from zero on every way that a number comes by; expected texts worked by hand.</summary>
public sealed class RoundingTests
{
    // 3/32 in is one and a half sixteenths: 1/8 in, also where the last binary digit came out lower or higher.
    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(1)]
    public void Half_a_sixteenth_goes_up_whichever_way_it_was_reckoned(int lastDigit)
    {
        var metres = 0.00238125 * (1 + (lastDigit * 4e-16));
        Assert.Equal("1/8 in", LengthText.Inches(metres));
        Assert.Equal("-1/8 in", LengthText.Inches(-metres));
        Assert.Equal(0.003175, Rounding.ToTape(metres, UnitSystem.Imperial), 1e-15);
    }

    /// <summary>A mark on the rope and the same length as a size are one text, also where they lie on half a step.</summary>
    [Fact]
    public void Marks_and_sizes_round_alike()
    {
        var text = new QuantityText(UnitSystem.Imperial);
        for (var halves = 1; halves < 4000; halves += 2)
        {
            foreach (var metres in (double[])[halves * 0.0254 / 32, halves / 32.0 * 0.0254, Math.BitDecrement(halves * 0.0254 / 32)])
            {
                Assert.Equal(text.Length(metres), text.Length(Rounding.ToTape(metres, UnitSystem.Imperial)));
                Assert.Equal((halves + 1) / 2, Rounding.Steps(metres, Rounding.Sixteenth));
            }
        }
    }

    [Theory]
    [InlineData(0.0349999, 0.034, 0.035)]
    [InlineData(0.035, 0.035, 0.035)]
    [InlineData(0.0350000000001, 0.035, 0.035)]
    [InlineData(0.03501, 0.035, 0.036)]
    public void Least_and_largest_are_whole_millimetres(double metres, double down, double up)
    {
        Assert.Equal(down, Rounding.Down(metres, Rounding.Millimetre), 1e-12);
        Assert.Equal(up, Rounding.Up(metres, Rounding.Millimetre), 1e-12);
    }
}
