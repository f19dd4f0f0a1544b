using BridgeForm.Frames;
using BridgeForm.Loads;

namespace BridgeForm.Tests.Loads;

/// <summary>Some frames and bays weighed for the others.</summary>
public sealed class SamplingTests
{
    // Eleven between the ends in three parts: 3-2/3 of them each, weighed in the middle of each part.
    [Fact]
    public void Ends_are_weighed_for_themselves_and_the_middle_of_each_part_for_it()
    {
        int[] weighed = [.. Enumerable.Range(5, 13).Select(i => new Sampling(3).For(i, 5, 17))];
        Assert.Equal([5, 7, 7, 7, 7, 11, 11, 11, 11, 15, 15, 15, 17], weighed);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(11)]
    public void Few_are_weighed_each_for_itself(int? most)
    {
        var sampling = most is null ? Sampling.All : new Sampling(most);
        Assert.All(Enumerable.Range(0, 13), i => Assert.Equal(i, sampling.For(i, 0, 12)));
    }

    // Weights of neighbours differ little: a trial design counts where it is half a per cent away from its limit.
    [Fact]
    public void A_long_bridge_weighs_the_same_from_some_of_its_parts()
    {
        var model = Bridges.Build("""
            name: Sagging (invented)
            site: { span: 200 ft, rise: 12 ft }
            ropes: { sag: 10 %, spacing: 76 in }
            frames: { spacing: 24 in, stance: plumb, base: { length: 92 in } }
            """);
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        Assert.InRange(layout.Bays, 100, 110);
        var (whole, some) = (BridgeMasses.Weigh(layout), BridgeMasses.Weigh(layout, new Sampling(24), default));
        var standing = (Whole: StandingWeights.Weigh(layout), Some: StandingWeights.Weigh(layout, new Sampling(24), default));
        Assert.Equal(1, some.NodeLoads().Sum() / whole.NodeLoads().Sum(), 5e-4);
        Assert.Equal(1, standing.Some.Moments.Sum() / standing.Whole.Moments.Sum(), 5e-4);
        Assert.Equal(1, standing.Some.Light.Sum() / standing.Whole.Light.Sum(), 5e-4);

        // It is another way to weigh: not each node the same.
        Assert.NotEqual(whole.NodeLoads()[50], some.NodeLoads()[50]);
        Assert.Equal(whole.Frames[0], some.Frames[0]);
        Assert.Equal(whole.Frames[^1], some.Frames[^1]);
    }
}
