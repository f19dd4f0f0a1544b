using BridgeForm.Output.Preview;

namespace BridgeForm.Tests.Output.Preview;

/// <summary>Headlines and names of loads without signs of units and ids; figures stay.</summary>
public sealed class PlainWordsTests
{
    [Theory]
    [InlineData(
        "200 lbf on one post: side stays are for a licensed engineer (guard-line-load)",
        "200 pounds on one post: side stays are for a licensed engineer")]
    [InlineData("it turns over between 3.3 psf and 3.7 psf", "it turns over between 3.3 pounds a square foot and 3.7 pounds a square foot")]
    [InlineData("50 plf along it, 20 lbf/ft", "50 pounds a foot along it, 20 pounds a foot")]
    [InlineData("0.5 kPa (nobody on it)", "0.5 kPa (nobody on it)")]
    [InlineData("where the section comes nearest to rolling over (roll)", "where the bridge comes nearest to rolling over (roll)")]
    public void Signs_and_ids_become_words(string text, string plain) => Assert.Equal(plain, PlainWords.Of(text));

    [Fact]
    public void A_page_has_neither_in_its_headlines_nor_a_packer()
    {
        var html = PreviewVerdict.HeadlineList(Bridges.Build(Bridges.Garden));
        Assert.DoesNotContain("lbf", html, StringComparison.Ordinal);
        Assert.DoesNotContain("psf", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(@" \([a-z]+-[a-z-]+\)", html);
    }
}
