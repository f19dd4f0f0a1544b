namespace BridgeForm.Tests.Checks.Ropes;

/// <summary>Which keeper is told of.</summary>
public sealed class KeeperSlipTests
{
    /// <summary>
    /// Five bays: the keepers beside the level one in the middle hold a third of what the outer two hold, and the check tells
    /// of these.
    /// </summary>
    [Fact]
    public void The_keeper_that_needs_most_is_told()
    {
        var context = Contexts.Of(
            Bridges.Garden.Replace("span: 30 ft", "span: 12 ft", StringComparison.Ordinal)
                + "\nloads: { live: 0 psf, point: { force: 0 lbf } }\n");
        var needed = context.Ropework.Keepers.Select(k => k.Needed).ToList();
        var check = Contexts.Check(context, "keeper-slip");
        Assert.True(needed.Min() < needed.Max() / 2);
        Assert.Equal(needed.Max(), check.Demand, 1e-9);
    }
}
