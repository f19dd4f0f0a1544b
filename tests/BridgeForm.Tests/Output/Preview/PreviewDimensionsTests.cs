using BridgeForm.Output.Preview;

namespace BridgeForm.Tests.Output.Preview;

public sealed class PreviewDimensionsTests
{
    private const double Off = 0.35;

    // The least guard of a bridge that climbs to B stands near one end, of one that falls near the other: the line of the
    // dimension stands off the end that is nearer.
    [Theory]
    [InlineData("rise: 2 m")]
    [InlineData("rise: -2 m")]
    [InlineData("rise: 0 m")]
    [InlineData("rise: 0.2 m")]
    [InlineData("rise: -0.2 m")]
    public void The_guard_is_dimensioned_at_the_nearer_end(string rise)
    {
        var model = Bridges.Build(Bridges.Inclined.Replace("rise: 2 m", rise, StringComparison.Ordinal));
        var guard = PreviewDimensions.Side(model).Single(d => d.Label.StartsWith("rail height", StringComparison.Ordinal));
        var (x, line, last) = (guard.From.X, guard.LineFrom.X, model.Frames[^1].Node.X);
        Assert.Equal(Math.Min(x, last - x) + Off, Math.Abs(line - x), 1e-9);
        Assert.True(line < 0 || line > last);
    }

    // 6 % of 30 ft below both ends, and the lines stand off twice.
    [Fact]
    public void The_length_is_dimensioned_below_the_lowest_rope()
    {
        var model = Bridges.Build(Bridges.Garden);
        var length = PreviewDimensions.Side(model).Single(d => d.Label == "length");
        Assert.Equal(-(0.06 * 30 * 0.3048) - (2 * Off), length.LineFrom.Y, 2e-3);
        Assert.Equal(length.LineFrom.Y, length.LineTo.Y, 1e-9);
    }
}
