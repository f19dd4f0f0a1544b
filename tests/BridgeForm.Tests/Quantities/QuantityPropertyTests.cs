using System.Globalization;
using System.Text.RegularExpressions;
using BridgeForm.Quantities;
using CsCheck;

namespace BridgeForm.Tests.Quantities;

/// <summary>Round trips: what is written reads back to within half of the last place written.</summary>
public sealed class QuantityPropertyTests
{
    private const double Sixteenth = 0.0254 / 16;
    private const double Slack = 1e-9;

    private static readonly Gen<double> Metres = Gen.Double[-500, 500];

    [Fact]
    public void Feet_and_inches_read_back() =>
        Metres.Sample(m => Math.Abs(Read(LengthText.FeetInches(m)) - m) <= (Sixteenth / 2) + Slack);

    [Fact]
    public void Inches_read_back() =>
        Metres.Sample(m => Math.Abs(Read(LengthText.Inches(m)) - m) <= (Sixteenth / 2) + Slack);

    [Fact]
    public void Millimetres_read_back() =>
        Metres.Sample(m => Math.Abs(Read(LengthText.Millimetres(m)) - m) <= 0.00005 + Slack);

    [Fact]
    public void Writing_what_was_read_changes_nothing() =>
        Gen.Int[-100_000, 100_000].Sample(n =>
        {
            var text = LengthText.FeetInches(n * Sixteenth);
            return string.Equals(LengthText.FeetInches(Read(text)), text, StringComparison.Ordinal);
        });

    [Fact]
    public void Every_kind_and_unit_reads_back() =>
        Gen.Select(Gen.Enum<QuantityKind>(), Gen.Int[0, 20], Gen.Double[-1000, 1000]).Sample((kind, pick, number) =>
        {
            var units = Units.Of(kind).Units;
            var unit = units[pick % units.Length];
            var reading = QuantityReader.Read(kind, number.ToString("R", CultureInfo.InvariantCulture) + " " + unit.Symbol);
            return reading.IsRead && Math.Abs(unit.FromSi(reading.Value) - number) <= 1e-9 * (1 + Math.Abs(number));
        });

    [Fact]
    public void No_text_makes_the_reader_throw() =>
        Gen.Select(Gen.Enum<QuantityKind>(), Gen.String[Gen.Char["0123456789 -/.'\"½ftinmeE%°,+\u2032"], 0, 20]).Sample((kind, text) =>
        {
            var reading = QuantityReader.Read(kind, text);
            return double.IsFinite(reading.Value);
        });

    // The schema's pattern must never refuse what the reader takes.
    [Fact]
    public void The_pattern_takes_whatever_the_reader_takes()
    {
        var patterns = Enum.GetValues<QuantityKind>().ToDictionary(
            k => k, k => new Regex(QuantityPattern.Of(k), RegexOptions.None, TimeSpan.FromSeconds(5)));
        Gen.Select(Gen.Enum<QuantityKind>(), Gen.String[Gen.Char["0123456789 -/.:'\"½ftinmkPa%°"], 1, 9]).Sample(
            (kind, text) =>
                !QuantityReader.Read(kind, text).IsRead || QuantityReader.Read(kind, text).Value is 0 || patterns[kind].IsMatch(text),
            iter: 20_000);
    }

    [Theory]
    [InlineData("37'-6 1/2\"", true)]
    [InlineData("37′ 6½″", true)]
    [InlineData("1.2 m", true)]
    [InlineData("36", false)]
    [InlineData("36 furlong", false)]
    [InlineData("abc", false)]
    public void The_pattern_of_a_length(string text, bool fits) =>
        Assert.Equal(fits, Regex.IsMatch(text, QuantityPattern.Of(QuantityKind.Length), RegexOptions.None, TimeSpan.FromSeconds(5)));

    private static double Read(string text)
    {
        var reading = QuantityReader.Read(QuantityKind.Length, text);
        Assert.Null(reading.Problem);
        return reading.Value;
    }
}
