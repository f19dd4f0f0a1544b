using BridgeForm.Quantities;

namespace BridgeForm.Tests.Quantities;

/// <summary>Lengths as people read them; expected texts worked by hand.</summary>
public sealed class LengthTextTests
{
    [Theory]
    [InlineData(0.625, "5/8 in")]
    [InlineData(40.5, "3 ft 4-1/2 in")]
    [InlineData(432, "36 ft 0 in")]
    [InlineData(11.96875, "1 ft 0 in")] // 11-31/32 in is nearer to a foot than to 11-15/16 in
    [InlineData(23.97, "2 ft 0 in")]
    [InlineData(11.96, "11-15/16 in")]
    [InlineData(0.03, "0 in")]
    [InlineData(0.04, "1/16 in")]
    [InlineData(-18.25, "-1 ft 6-1/4 in")]
    [InlineData(-0.01, "0 in")]
    [InlineData(0, "0 in")]
    public void Feet_and_inches(double inches, string text) => Assert.Equal(text, LengthText.FeetInches(inches * 0.0254));

    [Theory]
    [InlineData(40.5, "40-1/2 in")]
    [InlineData(0.9375, "15/16 in")]
    [InlineData(-0.5, "-1/2 in")]
    public void Inches(double inches, string text) => Assert.Equal(text, LengthText.Inches(inches * 0.0254));

    // Fractions of 32 where they are whole ones; 16 mm are 0.62992 in.
    [Theory]
    [InlineData(5.0 / 32, "5/32")]
    [InlineData(25.0 / 32, "25/32")]
    [InlineData(1 + (1.0 / 32), "1-1/32")]
    [InlineData(0.75, "3/4")]
    [InlineData(24, "24")]
    [InlineData(16 / 25.4, "0.63")]
    [InlineData(19 / 25.4, "0.75")]
    public void Inches_of_tables(double inches, string text) => Assert.Equal(text, LengthText.InchFigure(inches * 0.0254));

    [Theory]
    [InlineData(1.219, "1219 mm")]
    [InlineData(0.015875, "15.9 mm")]
    [InlineData(-0.00001, "0 mm")]
    [InlineData(-0.0381, "-38.1 mm")]
    public void Millimetres(double metres, string text) => Assert.Equal(text, LengthText.Millimetres(metres));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_not_finite_is_a_mistake_of_the_program(double metres) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthText.FeetInches(metres));
}
