using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Tests.Ropes.Fittings;

public sealed class BendLossTests
{
    // As rigging catalogues print it; between rows the sharper bend counts.
    [Theory]
    [InlineData(100, 0.95)]
    [InlineData(40, 0.95)]
    [InlineData(39.9, 0.93)]
    [InlineData(20, 0.91)]
    [InlineData(10, 0.86)]
    [InlineData(9.9, 0.83)]
    [InlineData(4, 0.75)]
    [InlineData(2, 0.65)]
    [InlineData(1, 0.50)]
    public void Share_that_is_left(double ratio, double share) => Assert.Equal(share, BendLoss.Share(ratio)!.Value, 12);

    [Fact]
    public void Sharper_than_the_table_nothing_is_known() => Assert.Null(BendLoss.Share(0.99));
}
