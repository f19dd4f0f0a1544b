using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Frames;

public class FrameGeometryTests
{
    private const double Inch = 0.0254;

    // Common practice, no source: lean 10° against lean 10° gives a 10° foot and a 70° top cut.
    [Fact]
    public void Ten_against_ten_gives_ten_and_seventy()
    {
        var parameters = Bridges.Read(Bridges.Garden
            .Replace("lean: 8 deg", "lean: 10 deg", StringComparison.Ordinal)
            .Replace("lean: 12 deg", "lean: 10 deg", StringComparison.Ordinal));
        var frame = Members.Frame(Bridges.Layout(parameters), 3).Members;
        var brace = frame.Single(m => m.Role == Role.Brace && m.Side == Side.Right);
        var foot = SawReach.Measure(brace.Shape, near: true, parameters.Shop);
        var top = SawReach.Measure(brace.Shape, near: false, parameters.Shop);
        Assert.Equal(10, Math.Abs(Bridges.Degrees(foot.Mitre)), 1e-9);
        Assert.Equal(70, Math.Abs(Bridges.Degrees(top.Mitre)), 1e-9);
        Assert.Equal(0, foot.Bevel, 1e-12);
        Assert.Equal(CutWay.CircularSaw, top.Way);
    }

    // Common practice, no source: a 5/8 in channel is laid out 5/16 in to either side of its centre line.
    [Fact]
    public void Channel_lies_half_to_either_side()
    {
        var parameters = Bridges.Read(Bridges.Garden.Replace(
            "clearance: 1/8 in", "width: 5/8 in", StringComparison.Ordinal)
            .Replace("eips-galvanized-3/4", "eips-galvanized-1/2", StringComparison.Ordinal));
        var made = Members.Frame(Bridges.Layout(parameters), 4).Members[0];
        foreach (var channel in made.Shape.Channels)
        {
            Assert.Equal(5.0 / 16 * Inch, channel.Width / 2, 1e-12);
            Assert.Equal(23 * Inch, Math.Abs(channel.Center), 1e-12);
        }
    }

    [Fact]
    public void Channel_floor_touches_the_top_of_the_rope_on_every_frame()
    {
        foreach (var text in (string[])[Bridges.Garden, Bridges.Inclined])
        {
            var parameters = Bridges.Read(text);
            var layout = Bridges.Layout(parameters);
            for (var i = 0; i <= layout.Bays; i++)
            {
                var made = Members.Frame(layout, i).Members[0];
                var channel = made.Shape.Channels[1];
                var bottom = -made.Shape.Width / 2;
                var normal = new Vector3d(0, 1, -channel.FloorSlope).Normalized();
                var floor = made.Placement.ToWorld(
                    Plane.Through(new Vector3d(0, bottom + channel.Depth, 0), normal));

                // The rope's axis passes the node along the bisector: it must run one radius under the floor.
                var pose = layout.Poses[i];
                var rope = new Vector3d(Math.Cos(pose.Slope), Math.Sin(pose.Slope), 0);
                Assert.Equal(0, floor.Normal.Dot(rope), 1e-12);
                Assert.Equal(-parameters.Ropes.Rope.Radius, floor.SignedDistance(pose.Node), 1e-12);
            }
        }
    }

    [Fact]
    public void Square_frames_stand_square_to_the_bisector_and_end_frames_upright()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden));
        var nodes = layout.Poses.Select(p => p.Node).ToArray();
        for (var i = 1; i < layout.Bays; i++)
        {
            var before = (nodes[i] - nodes[i - 1]).Normalized();
            var after = (nodes[i + 1] - nodes[i]).Normalized();
            Assert.Equal(layout.Poses[i].Up.Dot(before), -layout.Poses[i].Up.Dot(after), 1e-12);
        }

        Assert.Equal(Vector3d.UnitY, layout.Poses[0].Up);
        Assert.Equal(Vector3d.UnitY, layout.Poses[^1].Up);
    }

    [Fact]
    public void Brace_edges_follow_the_closed_forms()
    {
        var parameters = Bridges.Read(Bridges.Garden);
        var brace = Members.Frame(Bridges.Layout(parameters), 2).Members.First(m => m.Role == Role.Brace);
        double alpha = Bridges.Radians(8), beta = Bridges.Radians(12), wide = 3.5 * Inch;
        var meets = ((28.25 * Inch) - (18.25 * Inch) - (wide / Math.Cos(alpha))) / (Math.Tan(alpha) + Math.Tan(beta));
        var longEdge = meets / Math.Cos(beta);
        var shortEdge = longEdge - (wide * (Math.Tan(beta) + (1 / Math.Tan(alpha + beta))));
        var edges = new[] { -wide / 2, wide / 2 }
            .Select(y => brace.Shape.Far.XAt(y, 0) - brace.Shape.Near.XAt(y, 0)).Order().ToArray();
        Assert.Equal(shortEdge, edges[0], 1e-12);
        Assert.Equal(longEdge, edges[1], 1e-12);
        Assert.Equal(longEdge, parameters.Frames.Brace.Length, 1e-12);
    }

    [Fact]
    public void Interior_square_frames_of_a_sagging_bridge_lift_nothing()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden));
        for (var i = 1; i < layout.Bays; i++)
        {
            Assert.Equal(0, layout.Deck.Lifts[i], 1e-15);
        }

        // End frames are upright, the deck falls away from them: lift = half the base × tan of the fall.
        var fall = Math.Atan(-BearingLine.SlopeIn(layout.Poses[0], layout.Deck.Points[0], layout.Deck.Points[1]));
        Assert.Equal(1.75 * Inch * Math.Tan(fall), layout.Deck.Lifts[0], 1e-12);
        Assert.True(layout.Deck.Lifts[0] > Tolerances.Seating);
    }

    [Fact]
    public void Boards_fill_the_width_with_equal_gaps()
    {
        var parameters = Bridges.Read(Bridges.Garden);
        var layout = Bridges.Layout(parameters);
        var boards = Members.Bay(layout, 5).Members.Where(m => m.Role == Role.Board).ToArray();
        var width = 2 * (parameters.Frames.Post.Foot - parameters.Deck.SideGap);
        var gap = (width - (boards.Length * 5.5 * Inch)) / (boards.Length - 1);
        Assert.Equal(6, boards.Length);
        Assert.True(gap >= parameters.Deck.Gap);
        for (var i = 1; i < boards.Length; i++)
        {
            Assert.Equal(gap + (5.5 * Inch), boards[i].Placement.Origin.Z - boards[i - 1].Placement.Origin.Z, 1e-12);
        }

        Assert.Equal(-width / 2, boards[0].Placement.Origin.Z - (2.75 * Inch), 1e-12);
    }

    [Fact]
    public void Rails_leave_equal_gaps_from_deck_to_head()
    {
        var parameters = Bridges.Read(Bridges.Garden);
        var layout = Bridges.Layout(parameters);
        foreach (var frame in (int[])[0, 1, 5])
        {
            var heights = GuardRails.Heights(layout, frame);
            var edges = heights.SelectMany(h => new[] { h - (1.75 * Inch), h + (1.75 * Inch) })
                .Prepend(GuardRails.DeckAlongPost(layout, frame)).Append(parameters.Frames.Post.Length).ToArray();
            var gaps = Enumerable.Range(0, heights.Length + 1).Select(i => edges[(2 * i) + 1] - edges[2 * i]).ToArray();
            Assert.All(gaps, gap => Assert.Equal(gaps[0], gap, 1e-12));
        }
    }

    [Fact]
    public void A_plumb_head_holds_both_caps_alike()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Inclined));
        for (var i = 1; i < layout.Bays; i++)
        {
            var before = Math.Atan(BearingLine.SlopeIn(layout.Poses[i], layout.Caps.Points[i - 1], layout.Caps.Points[i]));
            var after = Math.Atan(BearingLine.SlopeIn(layout.Poses[i], layout.Caps.Points[i], layout.Caps.Points[i + 1]));
            Assert.Equal((before + after) / 2, Math.Atan(layout.Caps.TopSlopes[i]), 1e-9);
        }

        // Compound: the head's cut tilts the blade as well.
        var post = Members.Frame(layout, 4).Members.First(m => m.Role == Role.Post);
        Assert.True(Math.Abs(Bridges.Degrees(SawReach.Measure(post.Shape, near: false, layout.Parameters.Shop).Bevel)) > 5);
    }
}
