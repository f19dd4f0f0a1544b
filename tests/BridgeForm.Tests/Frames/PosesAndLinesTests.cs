using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Frames;

/// <summary>Poses, levels and bearing lines on ropes of two bays laid down by hand. Metres.</summary>
public sealed class PosesAndLinesTests
{
    private const double Exact = 1e-12;

    // Chords of slope 3/4 and −5/12: unit vectors (4, 3)/5 and (12, −5)/13, their bisector along (4/5 + 12/13, 3/5 − 5/13).
    [Fact]
    public void Bisector_of_two_chords()
    {
        var poses = FramePoses.Stand([new(0, 0), new(4, 3), new(16, -2)], Stance.Square);
        var (x, y) = ((4 / 5.0) + (12 / 13.0), (3 / 5.0) - (5 / 13.0));
        Assert.Equal([Math.Atan(0.75), Math.Atan2(y, x), Math.Atan(-5 / 12.0)], poses.Select(p => p.Slope), Comparer);
        Assert.Equal(x / Math.Sqrt((x * x) + (y * y)), poses[1].Along.X, Exact);
        Assert.Equal((-poses[1].Along.Y, poses[1].Along.X), (poses[1].Up.X, poses[1].Up.Y));
        Assert.Equal([true, false, true], poses.Select(p => p.IsEnd));
        Assert.Equal(Vector3d.UnitX, poses[0].Along);
        Assert.Equal(Vector3d.UnitX, FramePoses.Stand([new(0, 0), new(4, 3), new(16, -2)], Stance.Plumb)[1].Along);
        Assert.Equal(["F00", "F01", "F02"], poses.Select(p => p.Name));
        Assert.Equal(("F007", "B100"), (FramePoses.FrameName(7, 100), FramePoses.BayName(100, 100)));

        // Frame axes to the world: t along, n up, z right.
        var at = poses[1].At(2, 3, 4);
        var unit = poses[1].Along;
        Assert.Equal(0, (at - new Vector3d(4 + (2 * unit.X) - (3 * unit.Y), 3 + (2 * unit.Y) + (3 * unit.X), 4)).Length, Exact);
        Assert.Equal(0, (at - new Vector3d(4, 3, 0) - poses[1].Direction(2, 3, 4)).Length, Exact);
    }

    // A hump: bays of 2 m that rise by 0.1 and fall by 0.1, tops 0.05 m to either side. Boards lie on the middle one's edges and,
    // running on over the ends, on their outer edges: all lifted by 0.05 of the slope 0.05. Where the tops at the ends follow
    // the parts, the middle one alone lifts, by 0.05 of s = (0.1 + 0.05·s)/2.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Boards_over_a_hump_rest_on_the_edges(bool follows)
    {
        var poses = FramePoses.Stand([new(0, 0), new(2, 0.1), new(4, 0)], Stance.Plumb);
        var line = BearingLine.Lay(poses, [new(0.2, 0.05, follows), new(0.2, 0.05, follows), new(0.2, 0.05, follows)]);
        var slope = follows ? 0.1 / (2 - 0.05) : 0.05;
        var end = follows ? 0 : 0.0025;
        Assert.Equal([end, 0.05 * slope, end], line.Lifts, Comparer);
        Assert.Equal(follows ? [slope, 0, -slope] : [0, 0, 0], line.TopSlopes, Comparer);
        Assert.Equal(0.2 + 0.1 + (0.05 * slope), line.Points[1].Y, Exact);
        Assert.Equal(slope, line.Direction(1).Y / line.Direction(1).X, Exact);
        Assert.Equal(-slope, line.Direction(2).Y / line.Direction(2).X, Exact);
    }

    // A hollow: the middle lies on its middle; at the ends boards fall away and rest on the outer edge, unless the top follows.
    [Fact]
    public void Boards_over_a_hollow_rest_on_the_ends()
    {
        var poses = FramePoses.Stand([new(0, 0.1), new(2, 0), new(4, 0.1)], Stance.Plumb);
        var line = BearingLine.Lay(poses, [new(0, 0.05, false), new(0, 0.05, false), new(0, 0.05, false)]);
        var slope = 0.1 / (2 - 0.05);
        Assert.Equal([0.05 * slope, 0, 0.05 * slope], line.Lifts, Comparer);
        Assert.Equal([0.0, 0, 0], BearingLine.Lay(poses, [new(0, 0.05, true), new(0, 0.05, true), new(0, 0.05, true)]).Lifts, Comparer);
    }

    // One slope through: +0.05 before and after. A level top is met by the part before it, which falls away backwards: 0.05·0.05.
    // Heads that follow lie in the parts.
    [Fact]
    public void Boards_up_a_ramp_rest_on_one_edge()
    {
        var poses = FramePoses.Stand([new(0, 0), new(2, 0.1), new(4, 0.2)], Stance.Plumb);
        var line = BearingLine.Lay(poses, [new(0, 0.05, false), new(0, 0.05, false), new(0, 0.05, false)]);
        Assert.All(line.Lifts, l => Assert.Equal(0.05 * 0.05, l, Exact));
        var heads = BearingLine.Lay(poses, [new(0, 0.05, true), new(0, 0.05, true), new(0, 0.05, true)]);
        Assert.All(heads.Lifts, l => Assert.Equal(0, l, Exact));
        Assert.All(heads.TopSlopes, s => Assert.Equal(0.05, s, Exact));
    }

    // The hump with heads that follow, one round after the other: the middle one's lift is r·(0.1 + the lift before), r = half its
    // size over the bay, so it moves by 0.1·r^k in round k. A picometre is reached in round 500 where r = 1e-11^(1/499.5), and
    // in round 501 where it is 1e-11^(1/500.5): one round too late.
    [Theory]
    [InlineData(499.5, true)]
    [InlineData(500.5, false)]
    public void Lifts_have_five_hundred_rounds_to_settle(double rounds, bool settles)
    {
        var poses = FramePoses.Stand([new(0, 0), new(2, 0.1), new(4, 0)], Stance.Plumb);
        var top = new BearingTop(0.2, 2 * Math.Pow(1e-11, 1 / rounds), true);
        Assert.Equal(settles, BearingLine.Lay(poses, [top, top, top]).Settles);
    }

    // Parts that stand upright do not run towards B as an upright frame sees it, though a frame that leans back does.
    [Theory]
    [InlineData(0, 0, 1, 5, 1)]
    [InlineData(0, 4, 4, 5, 2)]
    public void Parts_that_do_not_run_towards_B_are_unsound(double x0, double x1, double x2, double y2, int bay)
    {
        var poses = FramePoses.Stand([new(0, 0), new(4, 3), new(8, 6)], Stance.Square);
        var line = new BearingLine([new(x0, 0, 0), new(x1, 3, 0), new(x2, y2, 0)], [0, 0, 0], [0, 0, 0]);
        Assert.Equal((0.8, 0.6), (Math.Round(poses[1].Along.X, 12), Math.Round(poses[1].Along.Y, 12)));
        Assert.Equal(bay, line.Unsound(poses));
    }

    // Rope of 20 mm, liner 3 mm; slope 3/4, cos 0.8: square 13 mm over the node, upright 13/0.8 = 16.25 mm with a floor of 3/4.
    [Fact]
    public void Levels_of_a_base()
    {
        var frames = Bridges.Read(Bridges.Garden).Frames;
        frames = frames with { Channel = new(0.03, 0.02, 0.025, 0.003) };
        var pose = FramePoses.Stand([new(0, 0), new(4, 3), new(8, 6)], Stance.Square);
        var square = BaseLevels.Find(frames, 0.01, pose[1], Stance.Square);
        Levels([0.013, 0, 0.02, 0.013 - 0.02, 0.013 - 0.02 + (5.5 * 0.0254)], square);
        Levels(
            [0.01625, 0.75, 0.02, 0.01625 - 0.02, 0.01625 - 0.02 + (5.5 * 0.0254)], BaseLevels.Find(frames, 0.01, pose[1], Stance.Plumb));
        Levels(
            [0.01625, 0.75, 0.025, 0.01625 - 0.025, 0.01625 - 0.025 + (5.5 * 0.0254)],
            BaseLevels.Find(frames, 0.01, pose[0], Stance.Square));
    }

    // Beyond the supports: 0.45 m level where the rope rises towards the bridge's outside, straight on where it falls there; a
    // backstay of 5 m at 30° falls 2.5 m and runs 4.33 m.
    [Fact]
    public void Ropes_run_on_beyond_the_supports()
    {
        var garden = Bridges.Read(Bridges.Garden);
        Assert.True(Bridge.TryShape(garden, out var rope, out _));
        var line = RopeRuns.Draw(garden, rope)[1];
        Assert.Equal((4 * (rope.Nodes.Length - 1)) + 1 + 2, line.Points.Length);
        Vector3d first = line.Points[0], support = line.Points[1];
        Assert.Equal((-0.45, 0), (Math.Round((first - support).X, 12), (first - support).Y));
        Assert.Equal(23 * 0.0254, support.Z, Exact);
        Assert.Equal(0.45, (line.Points[^1] - line.Points[^2]).X, Exact);

        // B is 8 ft over A and the rope climbs from the start: on the outside of A it goes on falling.
        var climbing = Bridges.Read(
            Bridges.Garden.Replace(
                "span: 30 ft", "span: 30 ft, rise: 8 ft, b: { backstay: { length: 5 m, angle: 30 deg } }", StringComparison.Ordinal)
            .Replace("sag: 6 %", "sag: 2 %", StringComparison.Ordinal));
        Assert.True(Bridge.TryShape(climbing, out var steep, out _));
        var left = RopeRuns.Draw(climbing, steep)[0];
        Assert.Equal(-23 * 0.0254, left.Points[0].Z, Exact);
        var out_ = left.Points[0] - left.Points[1];
        var chord = Math.Atan((steep.Nodes[1].Y - steep.Nodes[0].Y) / (steep.Nodes[1].X - steep.Nodes[0].X));
        Assert.True(chord > 0.1);
        Assert.Equal((-0.45 * Math.Cos(chord), -0.45 * Math.Sin(chord)), (out_.X, out_.Y), PairComparer);
        var stay = left.Points[^1] - left.Points[^2];
        Assert.Equal((5 * Math.Sqrt(3) / 2, -2.5), (stay.X, stay.Y), PairComparer);
    }

    private static void Levels(double[] byHand, BaseLevels given) =>
        Assert.Equal(byHand, [given.Floor, given.FloorSlope, given.ChannelDepth, given.Bottom, given.Top], Comparer);

    private static readonly EqualityComparer<double> Comparer =
        EqualityComparer<double>.Create((a, b) => Math.Abs(a - b) < 1e-11, _ => 0);

    private static readonly EqualityComparer<(double, double)> PairComparer =
        EqualityComparer<(double, double)>.Create((a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 1e-9, _ => 0);
}
