using BridgeForm.Quantities;

namespace BridgeForm.Tests.Quantities;

/// <summary>People's spellings of lengths; expected inches and millimetres worked by hand, 1 in = 25.4 mm by definition.</summary>
public sealed class LengthReadingTests
{
    private const double Exact = 1e-15;

    [Theory]
    [InlineData("36 ft", 432)]
    [InlineData("36ft", 432)]
    [InlineData("36 feet", 432)]
    [InlineData("1 foot", 12)]
    [InlineData("37 ft 6-1/2 in", 450.5)]
    [InlineData("37 ft 6 1/2 in", 450.5)]
    [InlineData("37' 6-1/2\"", 450.5)]
    [InlineData("37'-6 1/2\"", 450.5)]
    [InlineData("37'6½\"", 450.5)]
    [InlineData("37′ 6 ½″", 450.5)]
    [InlineData("37’ 6-½”", 450.5)]
    [InlineData("37' 6 1/2''", 450.5)]
    [InlineData("37 ft, 6.5 inches", 450.5)]
    [InlineData("37 FT 6 IN", 450)]
    [InlineData("37' - 6 1/2\"", 450.5)]
    [InlineData("37 ft - 6 in", 450)]
    [InlineData("1 100/200 in", 1.5)]
    [InlineData("5/8 in", 0.625)]
    [InlineData("5⁄8 in", 0.625)]
    [InlineData("1-1/2 in", 1.5)]
    [InlineData("1 1/2\"", 1.5)]
    [InlineData("1 - 1/2 in", 1.5)]
    [InlineData("½ in", 0.5)]
    [InlineData("1⅝ in", 1.625)]
    [InlineData("6.5 in", 6.5)]
    [InlineData(".5 in", 0.5)]
    [InlineData("  6.5   in ", 6.5)]
    [InlineData("+6 in", 6)]
    [InlineData("-6 in", -6)]
    [InlineData("−6 in", -6)]
    [InlineData("-1 ft 6 in", -18)]
    [InlineData("1e1 in", 10)]
    [InlineData("0 in", 0)]
    public void Inches(string text, double inches) => Assert.Equal(inches * 0.0254, Read(text), Exact);

    [Theory]
    [InlineData("1219 mm", 1219)]
    [InlineData("1.2 m", 1200)]
    [InlineData("12 cm", 120)]
    [InlineData("12cm", 120)]
    [InlineData("1.2 metres", 1200)]
    [InlineData("1.2 meter", 1200)]
    [InlineData("38\u00A0mm", 38)]
    [InlineData("-38 mm", -38)]
    public void Millimetres(string text, double millimetres) => Assert.Equal(millimetres / 1000, Read(text), Exact);

    [Theory]
    [InlineData(
        "36", "'36' has no unit; a length is written with in, ft, mm, cm or m, as in 36 ft, 37 ft 6-1/2 in, 5/8 in, 1219 mm or 1.2 m")]
    [InlineData("3 furlong", "'furlong' is not a unit of length; write in, ft, mm, cm or m")]
    [InlineData("3 mmm", "'mmm' is not a unit of length (did you mean mm?)")]
    [InlineData("3 inchs", "(did you mean in?)")]
    [InlineData("3 psf", "'psf' is not a unit of length")]
    [InlineData("NaN", "'NaN' is not a length")]
    [InlineData("NaN m", "is not a length")]
    [InlineData("Infinity m", "is not a length")]
    [InlineData("-inf", "is not a length")]
    [InlineData("", "is not a length")]
    [InlineData("ft", "is not a length")]
    [InlineData("--3 ft", "is not a length")]
    [InlineData("1e300 m", "is out of range")]
    [InlineData("-1e300 m", "is out of range")]
    [InlineData("1e999 m", "is out of range")]
    [InlineData("5/0 in", "is out of range")]
    [InlineData("0/0 in", "is out of range")]
    [InlineData("3 %", "'%' is not a unit of length; write in, ft, mm, cm or m")]
    [InlineData(
        "1,000 ft", "'1,000 ft' separates thousands; write the number without, '1000 ft', or '1.000 ft' if its comma is a decimal one")]
    [InlineData("-1,000 ft", "write the number without, '-1000 ft'")]
    [InlineData("1,000.5 ft", "write the number without, '1000.5 ft'")]
    [InlineData("1,234,567 mm", "write the number without, '1234567 mm'")]
    [InlineData("12 000 mm", "'12 000 mm' separates thousands; write the number without, '12000 mm'")]
    [InlineData("12\u202F000 mm", "write the number without, '12000 mm'")]
    [InlineData("12'000 mm", "write the number without, '12000 mm'")]
    [InlineData("12_000 mm", "write the number without, '12000 mm'")]
    [InlineData("8 ft -1 in", "'8 ft -1 in' has a minus sign inside; write '8 ft 1 in', or what is left when something is taken away")]
    [InlineData("8' -1\"", "has a minus sign inside")]
    [InlineData("8 ft −1 in", "has a minus sign inside")]
    [InlineData("8 -1/2 in", "has a minus sign inside; write '8 1/2 in'")]
    [InlineData("8 -½ in", "has a minus sign inside")]
    [InlineData("1,5 m", "has a comma in its number; write a decimal point")]
    [InlineData("3 m 2 in", "only feet are followed by inches")]
    [InlineData("3 ft 2 ft", "feet are followed by inches only")]
    [InlineData("3 ft 6", "has no unit")]
    [InlineData("3 ft 12 in", "has 12 inches or more after its feet")]
    [InlineData("3 ft 6 in 2", "is not a unit of length")]
    [InlineData("1.5.2 in", "")]
    [InlineData("3-5/4 in", "")]
    public void Refused(string text, string says)
    {
        var reading = QuantityReader.Read(QuantityKind.Length, text);
        Assert.NotNull(reading.Problem);
        Assert.Contains(says, reading.Problem, StringComparison.Ordinal);
    }

    // 36 in is 914.4 mm exactly; the bits must agree, or grouping by equal parameters would differ between unit systems.
    [Theory]
    [InlineData("36 in", "914.4 mm")]
    [InlineData("3 ft", "914.4 mm")]
    [InlineData("5/8 in", "15.875 mm")]
    [InlineData("17-3/4 in", "0.45085 m")]
    [InlineData("37 ft 6-1/2 in", "11442.7 mm")]
    public void Inches_and_millimetres_agree_to_the_bit(string imperial, string metric) =>
        Assert.Equal(BitConverter.DoubleToInt64Bits(Read(metric)), BitConverter.DoubleToInt64Bits(Read(imperial)));

    private static double Read(string text)
    {
        var reading = QuantityReader.Read(QuantityKind.Length, text);
        Assert.Null(reading.Problem);
        return reading.Value;
    }
}
