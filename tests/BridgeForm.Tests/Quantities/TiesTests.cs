using BridgeForm.Quantities;

namespace BridgeForm.Tests.Quantities;

public sealed class TiesTests
{
    // 0.9 m bays that differ in their last digits: the first of the longest is meant, whichever came out longer.
    [Theory]
    [InlineData(0.9, 0.9 + 1e-13, 0.9 - 1e-13, 0)]
    [InlineData(0.9 - 1e-13, 0.9, 0.9 + 1e-13, 0)]
    [InlineData(0.8, 0.9, 0.9 + 1e-13, 1)]
    [InlineData(0.8, 0.9, 0.900001, 2)]
    [InlineData(-0.9, -0.8, -0.8 + 1e-13, 1)]
    [InlineData(double.NegativeInfinity, -5, -5, 1)]
    [InlineData(0, 0, 0, 0)]
    public void The_first_of_the_largest_counts(double a, double b, double c, int expected)
    {
        double[] all = [a, b, c];
        Assert.Equal(expected, Ties.FirstLargest(Enumerable.Range(0, 3), i => all[i]));
        Assert.Equal(expected, Ties.FirstLeast(Enumerable.Range(0, 3), i => -all[i]));
    }

    [Fact]
    public void Of_none_there_is_none() => Assert.Null(Ties.FirstLargest(Array.Empty<string>(), t => t.Length));
}
