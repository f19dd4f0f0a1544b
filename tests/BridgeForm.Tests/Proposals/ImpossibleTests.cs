using BridgeForm.Proposals;

namespace BridgeForm.Tests.Proposals;

/// <summary>A rise that is steeper than the slope asked for is told before anything is looked at.</summary>
public sealed class ImpossibleTests
{
    [Theory]
    [InlineData("2 ft", 8)] // 1 : 6 from support to support
    [InlineData("-2 ft", 8)]
    [InlineData("2 ft", 6)]
    [InlineData("2 ft", 6.001)]
    public void A_rise_as_steep_or_steeper_clashes(string rise, double run)
    {
        foreach (var result in Results(rise, run))
        {
            Assert.Equal(0, result.Looked);
            Assert.Empty(result.Proposals);
            var why = Assert.Single(result.Why);
            Assert.Contains("this rise clash: from support to support it is 1 : 6 already", why, StringComparison.Ordinal);
            Assert.StartsWith($"An empty deck no steeper than 1 : {(run > 7 ? 8 : 6)} and ", why, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("2 ft", 5.9)]
    [InlineData("-2 ft", 4)]
    [InlineData("0 ft", 8)]
    [InlineData("0 ft", 1000)]
    public void A_rise_less_steep_is_looked_at(string rise, double run) => Assert.All(Results(rise, run), result =>
    {
        Assert.True(result.Looked > 0);
        Assert.DoesNotContain(result.Why, w => w.Contains("clash", StringComparison.Ordinal));
    });

    // What may move is little, so that it ends at once.
    private static SearchResult[] Results(string rise, double run)
    {
        var reading = SearchTests.Read($"name: a\nsite: {{ span: 12 ft, rise: {rise} }}\n");
        var ask = new SearchAsk { Free = ["deck.side_gap"], MostSlope = 1 / run, MostDesigns = 1 };
        return [Search.Best(reading, null, ask), Search.Propose(reading, null, ask)];
    }
}
