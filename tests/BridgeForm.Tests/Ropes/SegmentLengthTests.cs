using BridgeForm.Ropes;

namespace BridgeForm.Tests.Ropes;

/// <summary>
/// Slack rope that falls steeply, turns at the bottom and climbs: Newton's method alone would be thrown far off there. By hand, of
/// an inextensible catenary (Irvine, Cable Structures, 1981, §1.3 with 1/EA = 0), H = 10 N, V = 1000 N, w = 50 N/m: the bottom is
/// 20 m along it.
/// </summary>
public sealed class SegmentLengthTests
{
    private const double Horizontal = 10;
    private const double Vertical = 1000;
    private const double Weight = 50;

    // x = H/w·(asinh(V/H) − asinh((V − w·s)/H)).
    [Theory]
    [InlineData(5)]
    [InlineData(19)]
    [InlineData(20)]
    [InlineData(21)]
    [InlineData(40)]
    [InlineData(400)]
    public void Horizontal_distance_is_reached_beyond_the_turn(double length)
    {
        var x = Horizontal / Weight * (Math.Asinh(Vertical / Horizontal) - Math.Asinh((Vertical - (Weight * length)) / Horizontal));
        RopeSamples.Close(length, SegmentLength.Find(Horizontal, Vertical, Weight, RopeSamples.Rigid, x, inPlan: true), 1e-9);
    }

    // drop = (T0 − T1)/w; the first fold is nowhere 19.9 m from its beginning, so each distance beyond is met once.
    [Theory]
    [InlineData(60)]
    [InlineData(65)]
    [InlineData(400)]
    public void Straight_distance_is_reached_beyond_the_turn(double length)
    {
        var end = Vertical - (Weight * length);
        var x = Horizontal / Weight * (Math.Asinh(Vertical / Horizontal) - Math.Asinh(end / Horizontal));
        var drop = (RopeSamples.Hypotenuse(Horizontal, Vertical) - RopeSamples.Hypotenuse(Horizontal, end)) / Weight;
        var distance = RopeSamples.Hypotenuse(x, drop);
        Assert.True(distance > 19.9);
        RopeSamples.Close(length, SegmentLength.Find(Horizontal, Vertical, Weight, RopeSamples.Rigid, distance, inPlan: false), 1e-9);
    }
}
