using BridgeForm.Output.Preview;

namespace BridgeForm.Tests.Output.Preview;

/// <summary>Loads by names that a layman has.</summary>
public sealed class PlainLoadTests
{
    private static readonly Lazy<BridgeModel> Garden = new(() => Bridges.Build(Bridges.Garden));

    [Theory]
    [InlineData("live-full", "People on the whole bridge")]
    [InlineData("live-half-a", "People on half of the bridge, next to A")]
    [InlineData("point-quarter", "One heavy person a quarter of the way across")]
    [InlineData("live-full-cold", "People on the whole bridge on the coldest day, wood wet")]
    [InlineData("erect-half", "While it is built: frames hung from A to the middle, no deck")]
    public void A_case(string id, string name) => Assert.Equal(name, PlainLoad.Name(Garden.Value.Cases.Single(c => c.Id == id)));

    // Whatever the bridge, no case that the page offers speaks as an engineer does, and no two are called the same.
    [Fact]
    public void No_case_speaks_of_live_loads()
    {
        var names = Garden.Value.Cases.Select(PlainLoad.Name).ToList();
        Assert.All(names, name => Assert.DoesNotMatch("(?i)live load|point load|mid-span|temperature|support", name));
        Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
    }
}
