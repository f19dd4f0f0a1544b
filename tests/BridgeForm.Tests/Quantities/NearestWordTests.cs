using BridgeForm.Quantities;

namespace BridgeForm.Tests.Quantities;

public sealed class NearestWordTests
{
    [Theory]
    [InlineData("spacng", "spacing")]
    [InlineData("spaicng", "spacing")]
    [InlineData("Stance", "stance")]
    [InlineData("bse", "base")]
    [InlineData("zzzzzz", null)]
    public void Finds_the_near_one(string word, string? nearest) =>
        Assert.Equal(nearest, NearestWord.Find(word, ["spacing", "stance", "step", "base"]));

    [Theory]
    [InlineData("no4", "no1 no2")]
    [InlineData("no1", "no1")]
    [InlineData("ash", "")]
    public void Names_all_that_are_as_near(string word, string nearest) =>
        Assert.Equal(nearest, string.Join(' ', NearestWord.Nearest(word, ["no1", "no2", "oak"])));

    // Kukich, Techniques for automatically correcting words in text (1992): swapped neighbours count as one error.
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ab", "ba", 1)]
    [InlineData("", "abc", 3)]
    [InlineData("same", "same", 0)]
    public void Distance(string a, string b, int distance) => Assert.Equal(distance, NearestWord.Distance(a, b));
}
