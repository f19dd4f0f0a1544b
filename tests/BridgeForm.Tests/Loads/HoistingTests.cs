using BridgeForm.Loads;
using BridgeForm.Ropes;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.Loads;

public sealed class HoistingTests
{
    private static readonly RopeShape Design = DesignState.Find(RopeSamples.Footbridge);

    [Fact]
    public void Hotter_ropes_hang_lower_and_pull_less()
    {
        var rows = Hoisting.Table(Design, null, 15, [38, -7], Backstays.None);
        Assert.Equal([-7, 15, 38], rows.Select(r => r.Temperature));
        Assert.All(rows, r => Assert.Equal("bare", r.Stage));
        foreach (var (cold, hot) in rows.Zip(rows.Skip(1)))
        {
            Assert.True(cold.Sag < hot.Sag);
            Assert.True(cold.Horizontal > hot.Horizontal);
        }
    }

    /// <summary>20 °F is −6 2/3 °C: written on both ways it is one row, and so is the reference temperature.</summary>
    [Fact]
    public void The_same_temperature_written_on_two_ways_is_one_row()
    {
        var rows = Hoisting.Table(Design, null, 15, [-6.667, (20 - 32) / 1.8, 15 + 1e-12, 15.02], Backstays.None);
        Assert.Equal(3, rows.Length);
        Assert.Equal(15.0, rows[1].Temperature);
    }

    /// <summary>
    /// The bare rope is a catenary of the design's unstressed length that has lost most of its stretch: H by the
    /// elastic catenary's own equation, solved here by bisection.
    /// </summary>
    [Fact]
    public void Bare_rope_is_the_elastic_catenary_of_its_length()
    {
        var level = DesignState.Find(RopeSamples.Footbridge with { Rise = 0 });
        var row = Assert.Single(Hoisting.Table(level, null, 15, [], Backstays.None));
        var (length, w, ea) = (level.UnstressedLength(), level.WeightPerLength, level.AxialStiffness);
        var (low, high) = (1.0, 1e6);
        for (var i = 0; i < 200; i++)
        {
            var h = (low + high) / 2;
            // x(L0) of Irvine, Cable Structures, 1981, §1.3 for level supports: V = W / 2.
            var x = (h * length / ea) + (2 * h / w * Math.Asinh(w * length / 2 / h));
            (low, high) = x < 12 ? (h, high) : (low, h);
        }

        RopeSamples.Close(low, row.Horizontal, 1e-9);
        Assert.True(row.Sag < level.Sag);
    }

    [Fact]
    public void Frames_pull_the_ropes_down_towards_the_design_state()
    {
        var frames = Design.Loads.Select(p => p * 0.4);
        var rows = Hoisting.Table(Design, [.. frames], 15, [], Backstays.None);
        Assert.Equal("bare frames", string.Join(" ", rows.Select(r => r.Stage)));
        Assert.True(rows[0].Horizontal < rows[1].Horizontal && rows[1].Horizontal < Design.Horizontal);
        Assert.True(rows[0].Sag < rows[1].Sag && rows[1].Sag < Design.Sag);
    }

    [Fact]
    public void All_loads_hung_at_the_reference_temperature_is_the_design_state()
    {
        var rows = Hoisting.Table(Design, Design.Loads, 15, [], Backstays.None);
        RopeSamples.Close(Design.Horizontal, rows[1].Horizontal, 1e-9);
        RopeSamples.Close(Design.Sag, rows[1].Sag, 1e-9);
    }
}
