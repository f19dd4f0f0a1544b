using BridgeForm.Materials;

namespace BridgeForm.Tests.Materials;

/// <summary>PS 20 dressed sizes, from published trade tables.</summary>
public sealed class LumberTests
{
    private const double Exact = 1e-12;

    [Theory]
    [InlineData("1x4", 0.75, 3.5)]
    [InlineData("1x8", 0.75, 7.25)]
    [InlineData("5/4x6", 1, 5.5)]
    [InlineData("2x2", 1.5, 1.5)]
    [InlineData("2x4", 1.5, 3.5)]
    [InlineData("2 x 6", 1.5, 5.5)]
    [InlineData("2x8", 1.5, 7.25)]
    [InlineData("2x10", 1.5, 9.25)]
    [InlineData("2x12", 1.5, 11.25)]
    [InlineData("3x8", 2.5, 7.25)]
    [InlineData("4x4", 3.5, 3.5)]
    [InlineData("4X6", 3.5, 5.5)]
    [InlineData("6x4", 3.5, 5.5)]
    [InlineData("6x6", 5.5, 5.5)]
    [InlineData("6x8", 5.5, 7.25)]
    [InlineData("8x8", 7.25, 7.25)]
    [InlineData("8x8 green", 7.5, 7.5)]
    [InlineData("6x8 green", 5.5, 7.5)]
    [InlineData("2x4 green", 1.5625, 3.5625)]
    [InlineData("2x6 green", 1.5625, 5.625)]
    [InlineData("1-1/2 x 3-1/2 in", 1.5, 3.5)]
    [InlineData("3-1/2 in x 1-1/2 in", 1.5, 3.5)]
    [InlineData("1.5\" × 3.5\"", 1.5, 3.5)]
    public void Dressed_inches(string text, double thickness, double width)
    {
        var section = SectionReader.Read(text).Section!;
        Assert.Equal(thickness * 0.0254, section.Thickness, Exact);
        Assert.Equal(width * 0.0254, section.Width, Exact);
    }

    [Fact]
    public void Dressed_millimetres()
    {
        var section = SectionReader.Read("38 x 89 mm").Section!;
        Assert.Equal(("38 x 89 mm", 0.089, 0.038), (section.Name, section.Width, section.Thickness));
        Assert.Equal(0, section.NominalWidth);
    }

    [Theory]
    [InlineData("2x5x3", "is not a section")]
    [InlineData("2", "is not a section")]
    [InlineData("", "is not a section")]
    [InlineData("x", "is not a section")]
    [InlineData("2x7", "did you mean 2x6 or 2x8?")]
    [InlineData("4x7", "did you mean 4x6 or 4x8?")]
    [InlineData("7x2", "did you mean 2x6 or 2x8?")]
    [InlineData("2x5.5", "did you mean 2x5 or 2x6?")]
    [InlineData("2*4", "did you mean 2x4?")]
    // PS 20: a 2x4 is 1-1/2 by 3-1/2 in, 38 by 89 mm; a 6x6 5-1/2 in.
    [InlineData("1.5x3.5", "those are the actual inches of 2x4; did you mean 2x4?")]
    [InlineData("5-1/2 x 5-1/2", "those are the actual inches of 6x6")]
    [InlineData("89x38", "those are the actual millimeters of 2x4; did you mean 2x4?")]
    [InlineData("45x145", "did you mean 45 x 145 mm?")]
    [InlineData("2x7", "'bridgeform list lumber' lists all")]
    [InlineData("2", "'bridgeform list lumber' lists all")]
    [InlineData("38 x 89", "is not a nominal size")]
    [InlineData("38 x 89 mmm", "is not a unit of length")]
    [InlineData("1 x 89 mm", "is out of range")]
    [InlineData("-38 x 89 mm", "is out of range")]
    [InlineData("NaN x 4", "is not a length")]
    [InlineData("1e300 x 4 in", "is out of range")]
    public void Refused(string text, string says) =>
        Assert.Contains(says, SectionReader.Read(text).Problem, StringComparison.Ordinal);

    // Nothing within 2 in of it: no guess.
    [Fact]
    public void No_guess_where_nothing_is_near() =>
        Assert.DoesNotContain("did you mean", SectionReader.Read("2x40").Problem, StringComparison.Ordinal);

    [Fact]
    public void Every_name_reads_as_itself() =>
        Assert.All(Lumber.Names, name => Assert.Equal(name, SectionReader.Read(name).Section!.Name));

    // Thickness × width (in) × length (ft) / 12; boards below 1 in count as 1 in.
    [Theory]
    [InlineData("2x6", 12, 12)]
    [InlineData("1x4", 12, 4)]
    [InlineData("5/4x6", 8, 5)]
    public void Board_feet(string section, double feet, double boardFeet) =>
        Assert.Equal(boardFeet, Lumber.BoardFeet(SectionReader.Read(section).Section!, feet * 0.3048), Exact);

    [Fact]
    public void Board_feet_of_a_dressed_section_count_its_dressed_size() =>
        Assert.Equal(1.5 * 3.5, Lumber.BoardFeet(SectionReader.Read("1-1/2 x 3-1/2 in").Section!, 12 * 0.3048), 9);
}
