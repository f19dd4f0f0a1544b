using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Pieces;

public class RoutingTests
{
    private static readonly RouterParameters s_bit = new() { Bits = [new RouterBit(0.00635)] };
    private static readonly CutStock s_base = Stick(0.14, 0.089, 1.4);

    [Fact]
    public void Square_and_mitred_ends_lie_on_a_wide_face()
    {
        AssertWide(Routing.Setup(s_base, s_bit));
        var mitred = s_base with { Far = new Plane(new Vector3d(Math.Cos(1.2), Math.Sin(1.2), 0), 1.4) };
        Assert.Empty(Routing.Obstacles(mitred, s_bit));
    }

    [Fact]
    public void Bevels_are_named_by_their_ends()
    {
        var bevel = new Plane(new Vector3d(Math.Cos(0.02), 0, Math.Sin(0.02)), 1.4);
        Assert.Equal("far end is bevelled", Assert.Single(Routing.Obstacles(s_base with { Far = bevel }, s_bit)));
        Assert.Equal(
            "both ends are bevelled",
            Assert.Single(Routing.Obstacles(s_base with { Far = bevel, Near = new Plane(-bevel.Normal, 0) }, s_bit)));
    }

    [Fact]
    public void Level_channels_with_keeper_holes_lie_with_the_channel_up()
    {
        var made = Channelled(0) with { Holes = [new Hole(StockFace.MinusY, 0.3, 0, 0.006, 0.05)] };
        Assert.Equal(StockFace.MinusY, Routing.Setup(made, s_bit).FaceUp);
        Assert.Empty(Routing.Obstacles(made, s_bit));
    }

    [Fact]
    public void Level_channels_alone_are_notches_of_the_wide_face() => AssertWide(Routing.Setup(Channelled(0), s_bit));

    [Fact]
    public void Sloping_floors_are_refused()
    {
        var reasons = Routing.Obstacles(Channelled(0.1), s_bit);
        Assert.Single(reasons);
        Assert.Contains("slopes", reasons[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Holes_in_both_kinds_of_faces_need_two_set_ups()
    {
        var made = Channelled(0) with
        {
            Holes = [new Hole(StockFace.MinusY, 0.3, 0, 0.006, 0.05), new Hole(StockFace.PlusZ, 0.5, 0, 0.01, null)],
        };
        Assert.Single(Routing.Obstacles(made, s_bit));
    }

    [Fact]
    public void Through_holes_can_be_drilled_from_the_other_side()
    {
        Assert.Empty(Routing.Obstacles(s_base with { Holes = [new Hole(StockFace.MinusZ, 0.3, 0, 0.01, null)] }, s_bit));
        Assert.Equal(
            StockFace.MinusZ,
            Routing.Setup(s_base with { Holes = [new Hole(StockFace.MinusZ, 0.3, 0, 0.01, 0.02)] }, s_bit).FaceUp);
    }

    [Fact]
    public void Bit_thicker_than_the_channel_is_refused()
    {
        var made = Channelled(0) with { Holes = [new Hole(StockFace.MinusY, 0.3, 0, 0.006, 0.05)] };
        var thick = new RouterParameters { Bits = [new RouterBit(0.03)] };
        Assert.Equal("channel is narrower than the router bit", Assert.Single(Routing.Obstacles(made, thick)));
    }

    private static void AssertWide(RouterSetup setup)
    {
        Assert.Equal(StockFace.PlusZ, setup.FaceUp);
        Assert.Empty(setup.Obstacles);
    }

    private static CutStock Channelled(double slope) => s_base with
    {
        Channels = [new Channel(StockFace.MinusY, 0.3, 0.022, 0.016, slope), new Channel(StockFace.MinusY, 1.1, 0.022, 0.016, slope)],
    };

    private static CutStock Stick(double width, double thickness, double length) =>
        new(width, thickness, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, length));
}
