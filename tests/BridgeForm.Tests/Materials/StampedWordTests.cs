using BridgeForm.Materials;

namespace BridgeForm.Tests.Materials;

/// <summary>Words as grade stamps and yards write them (common practice, no source).</summary>
public sealed class StampedWordTests
{
    [Theory]
    [InlineData("no1", "no1")]
    [InlineData("No. 1", "no1")]
    [InlineData("#1", "no1")]
    [InlineData("NO.1 KD19", "no1")]
    [InlineData("No.1 & Btr", "no1")]
    [InlineData("No.2 Prime", "no2")]
    [InlineData("2&BTR", "no2")]
    [InlineData("#2 S-DRY", "no2")]
    [InlineData("Number 3", "no3")]
    [InlineData("Select Structural", "ss")]
    [InlineData("SEL STR", "ss")]
    [InlineData("SS", "ss")]
    [InlineData("C24", "C24")]
    [InlineData("c24", "C24")]
    [InlineData("EN 338 C18", "C18")]
    [InlineData("Spruce C24", "C24")]
    [InlineData("oak D30", "D30")]
    public void Grades(string written, string word) => Assert.Equal(word, StampedWords.Grade(written));

    // Weaker or stronger grades of their own, or none at all: never taken for another.
    [Theory]
    [InlineData("No.2 NonDense")]
    [InlineData("No. 1 Dense")]
    [InlineData("Stud")]
    [InlineData("Standard")]
    [InlineData("Construction")]
    [InlineData("no4")]
    [InlineData("C16")]
    [InlineData("spruce D30")]
    [InlineData("12")]
    [InlineData("")]
    public void Other_grades(string written) => Assert.Null(StampedWords.Grade(written));

    [Theory]
    [InlineData("southern-pine", "southern-pine")]
    [InlineData("Southern Pine", "southern-pine")]
    [InlineData("SYP", "southern-pine")]
    [InlineData("D FIR-L", "douglas-fir-larch")]
    [InlineData("Doug Fir-L", "douglas-fir-larch")]
    [InlineData("HEM-FIR", "hem-fir")]
    [InlineData("Western Cedars", "western-red-cedar")]
    [InlineData("W. Cedar", "western-red-cedar")]
    [InlineData("S-P-F", "spruce-pine-fir")]
    [InlineData("Redwood", "redwood")]
    [InlineData("White Oak", "white-oak")]
    [InlineData("C24", "en338-softwood")]
    [InlineData("spruce C24", "en338-softwood")]
    [InlineData("Pine C18", "en338-softwood")]
    [InlineData("European spruce", "en338-softwood")]
    [InlineData("D30", "en338-hardwood")]
    public void Species(string written, string key) => Assert.Equal(key, StampedWords.Species(written));

    [Theory]
    [InlineData("S-P-F (South)")]
    [InlineData("Mixed Southern Pine")]
    [InlineData("pine")]
    // The American spruce-pine-fir, or the European one.
    [InlineData("spruce")]
    [InlineData("spruce C16")]
    public void Other_species(string written) => Assert.Null(StampedWords.Species(written));

    [Fact]
    public void Every_species_of_the_table_is_known_by_its_key() =>
        Assert.All(SpeciesTable.All, s => Assert.Equal(s.Key, StampedWords.Species(s.Key)));

    [Fact]
    public void Every_grade_of_the_tables_is_known() => Assert.All(DesignValues.All, r => Assert.Contains(r.Grade, StampedWords.Grades));
}
