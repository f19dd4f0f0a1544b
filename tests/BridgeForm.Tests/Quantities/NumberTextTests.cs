using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Output;
using BridgeForm.Quantities;
using CsCheck;

namespace BridgeForm.Tests.Quantities;

/// <summary>One rule for every number that people read: halves away from zero, never a negative zero.</summary>
public sealed class NumberTextTests
{
    private static readonly UnitSystem[] Both = [UnitSystem.Imperial, UnitSystem.Metric];

    // By hand: 8.25° lies halfway between 8.2° and 8.3°, 12.35° between 12.3° and 12.4°; halves go away from zero.
    [Theory]
    [InlineData(8.25, "8.3")]
    [InlineData(12.25, "12.3")]
    [InlineData(12.35, "12.4")]
    [InlineData(20.5, "20.5")]
    [InlineData(-8.25, "-8.3")]
    [InlineData(0.04, "0.0")]
    [InlineData(-0.04, "0.0")]
    public void An_angle_reads_alike_on_every_sheet(double degrees, string expected)
    {
        foreach (
            var radians in (double[])[degrees * Math.PI / 180, degrees * (Math.PI / 180), Math.Atan(Math.Tan(degrees * Math.PI / 180))])
        {
            Assert.Equal(expected + " deg", QuantityText.Degrees(radians));
            Assert.Equal(expected + "°", CheckWords.Angle(radians));
            Assert.Equal(expected + "°", Numbers.DegreeText(radians));
            Assert.Equal(expected, Numbers.Fixed(Numbers.Degrees(radians), 1));
            Assert.Equal(expected.TrimStart('-') + "°", BridgeForm.Output.Preview.PieceWords.Degrees(radians));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1e-12)]
    [InlineData(-0.0004)]
    [InlineData(-0.4)]
    public void Nothing_is_ever_minus_zero(double little)
    {
        foreach (var units in Both)
        {
            var (check, text) = (new CheckWords(units), new QuantityText(units));
            string[] written =
            [
                check.Length(little / 1e5), check.Force(little), check.Torque(little / 10), check.MassPerLength(little / 100),
                check.Pounds(little), check.Stress(little),
                check.Elastic(little), check.Moment(little / 100), check.Modulus(little / 1e9), check.Inertia(little / 1e11),
                check.Area(little / 1e7), check.PerLength(little / 10),
                check.PerFoot(little), check.Pressure(little / 1000), CheckWords.Share(little / 1e5), CheckWords.Plain(little / 100),
                CheckWords.Angle(little / 1000), CheckWords.Frequency(little / 100),
                TimberWords.Ratio(little / 1000), text.Length(little / 1e4), text.Size(little / 1e4), text.Force(little),
                text.Mass(little / 100), text.Pressure(little), QuantityText.Degrees(little / 1000),
                Numbers.Fixed(little / 100, 2), NumberText.Rounded(little / 100, 2),
            ];
            Assert.All(written, w => Assert.False(w.StartsWith('-'), w));
        }
    }

    // A bound is told rounded inward: whatever is told can be written.
    [Fact]
    public void A_bound_in_other_units_lies_within()
    {
        Gen.Select(Gen.Double[1e-6, 1e7], Gen.Int[2, 6]).Sample((bound, figures) =>
            double.Parse(
                NumberText.Inward(bound, figures, isLeast: true), System.Globalization.CultureInfo.InvariantCulture) >= bound * (1 - 1e-12)
            && double.Parse(NumberText.Inward(bound, figures, isLeast: false), System.Globalization.CultureInfo.InvariantCulture) <= bound
                * (1 + 1e-12));

        // 1/16 in is 1.5875 mm, 12 ft are 3.6576 m, −7000 ft are −2133.6 m.
        Assert.Equal("1.588", NumberText.Inward(1.5875, 4, isLeast: true));
        Assert.Equal("3.657", NumberText.Inward(3.6576, 4, isLeast: false));
        Assert.Equal("-2133", NumberText.Inward(-2133.6, 4, isLeast: true));
        Assert.Equal("914.4", NumberText.Inward(914.4, 4, isLeast: true));
        Assert.Equal("0", NumberText.Inward(0, 4, isLeast: false));
    }

    // What is asked for is rounded up: who writes what he is told gets what is needed.
    [Fact]
    public void A_need_is_never_told_as_less()
    {
        Assert.Equal("0.313 in", new CheckWords(UnitSystem.Imperial).AtLeast(0.3121 * 0.0254));
        Assert.Equal("0.312 in", new CheckWords(UnitSystem.Imperial).AtLeast(0.312 * 0.0254));
        Assert.Equal("7.9 mm", new CheckWords(UnitSystem.Metric).AtLeast(0.00781));
        Assert.Equal("7.8 mm", new CheckWords(UnitSystem.Metric).AtLeast(0.0078));
    }

    // 35.98 in: 35-15/16 in and not quite 36 in.
    [Fact]
    public void A_least_size_is_never_told_as_more()
    {
        Assert.Equal("35-15/16 in", new QuantityText(UnitSystem.Imperial).LeastSize(35.98 * 0.0254));
        Assert.Equal("36 in", new QuantityText(UnitSystem.Imperial).LeastSize(36 * 0.0254));
        Assert.Equal("913 mm", new QuantityText(UnitSystem.Metric).LeastSize(0.9139));
        Assert.Equal("914 mm", new QuantityText(UnitSystem.Metric).LeastSize(0.914));
    }
}
