using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Checks.Catalogue;
using BridgeForm.Tests.Checks.Catalogue.Timber;
using Side = BridgeForm.Roles.Side;

namespace BridgeForm.Tests.Frames;

/// <summary>Where members lie and what they weigh, by hand on bridges of two bays (docs/bridge.md). Inches.</summary>
public sealed class FramesByHandTests
{
    private const double Inch = 0.0254;
    private const double Exact = 1e-9;

    // kg of lb.
    private const double Pound = 0.45359237;

    private static readonly TwoBays s_falling = new();

    private static BridgeLayout Level => new LevelDeck().Context.Layout;

    private static BridgeLayout Falling => s_falling.Context.Layout;

    // Weights of BaseStatics: 1/48 lb/in³ treated, 1/64 cedar. End bases have channels deeper by the sag.
    [Fact]
    public void Masses_of_the_level_deck()
    {
        var context = new LevelDeck().Context;
        var masses = context.Masses;
        var frame = BaseStatics.BaseWeight + (2 * ((BaseStatics.Posts / 48) + BaseStatics.BraceWeight));
        var bay = BaseStatics.DeckWeight + (2 * BaseStatics.Rails / 64);
        var end = frame - (2 * 0.875 * (context.Layout.Levels[0].ChannelDepth / Inch - 0.625) * 2.5 / 48);
        Assert.Equal(1.625, context.Layout.Levels[0].ChannelDepth / Inch, 1e-4);
        Near([end, frame, end], masses.Frames, Pound);
        Near([bay, bay], masses.Bays, Pound);
        Assert.Equal([0.0, 0, 0], masses.Packers.ToArray());

        // One rope bears half of the middle frame and of half of both bays; of the frame alone while the deck is not there.
        Near([0, (frame + bay) / 2, 0], masses.NodeLoads(), Pound * 9.80665);
        Near([0, frame / 2, 0], masses.FrameStageLoads(), Pound * 9.80665);
    }

    // An end base is 3.5 in along the bridge, the deck falls by f from it and rests on its inner edge: 3.5·f stand open at the
    // outer one, 1.75·f in the middle. The taper ends where it is 1.5 mm high.
    [Fact]
    public void A_packer_is_the_wedge_between_base_and_boards()
    {
        var (fall, lift, thin) = (s_falling.DeckFall, s_falling.Lift, 1.5e-3 / Inch);
        Assert.Equal(lift * Inch, Falling.Deck.Lifts[0], Exact);
        Assert.Equal([true, false, true], Falling.Steps.Packers.ToArray());
        var packer = Packers.Lay(Falling, 0)!;
        Assert.Null(Packers.Lay(Falling, 1));

        var (high, length) = (lift + (1.75 * fall), (lift + (1.75 * fall) - thin) / fall);
        var volume = (high + thin) / 2 * length * 35.5;
        Assert.Equal(volume * Math.Pow(Inch, 3), MemberVolume.Measure(packer.Shape, drilled: false), 1e-9);

        // Treated, of the smallest own section it can be ripped from: a 2x4. Its edge lies on the base's outer one, as it does at B.
        Assert.Equal(("treated", "2x4"), (packer.Stock, packer.Section));
        Assert.Equal(0, packer.Placement.Origin.X, 1e-12);
        Assert.Equal(Falling.Poses[2].Node.X, Packers.Lay(Falling, 2)!.Placement.Origin.X, 1e-12);
        Assert.Equal(volume * Math.Pow(Inch, 3), MemberVolume.Measure(Packers.Lay(Falling, 2)!.Shape, drilled: false), 1e-9);
    }

    // A hump on a slope: upright frames, B 16 in over A, the middle rope 2 in under the line and its base's top 3 in over those at
    // the ends. The deck rises by b, then by the flatter a, each on its base's edge towards A: lifts 1.75·b, 1.75·b and 1.75·a. The
    // plane midway is nowhere above either bay's boards: nothing at the base's edge towards A, 1.75·(a + b) at the other.
    [Fact]
    public void A_packer_under_a_bend_lies_under_both_bays()
    {
        var bridge = new TwoBays { Site = ", rise: 16 in", Frames = "stance: plumb\n  step: plan", Sag = 2, Drop = -1 };
        var layout = Bridges.Layout(Bridges.Read(bridge.Text));
        double Level(double fall) => 0.375 * Math.Sqrt(1 + (fall * fall));
        var (a, m, z) = (Level(6 / 72.0) - bridge.EndDepth, 6 + Level(8 / 72.0) - 0.625, 16 + Level(10 / 72.0) - bridge.EndDepth);
        var before = (m - a) / 72;
        var after = (z - m - (1.75 * before)) / (72 - 1.75);
        Near([1.75 * before, 1.75 * before, 1.75 * after], layout.Deck.Lifts, Inch);

        var (tallest, slope, thin) = (1.75 * (before + after), (before + after) / 2, 1.5e-3 / Inch);
        var volume = (tallest + thin) / 2 * ((tallest - thin) / slope) * 35.5;
        var packer = Packers.Lay(layout, 1)!;
        Assert.Equal(volume, MemberVolume.Measure(packer.Shape, drilled: false) / Math.Pow(Inch, 3), 1e-3);

        // The factory edge of the stick lies along the base's high edge, towards B.
        Assert.Equal(1.75 - (packer.Shape.Width / 2 / Inch), (packer.Placement.Origin.X - layout.Poses[1].Node.X) / Inch, 1e-6);
    }

    [Fact]
    public void Packers_begin_where_boards_stand_clear_of_the_seating_tolerance()
    {
        // Half a butt gap, 1/16 in, before the middle: (1.75 + 1/16)·f = 1.5 mm at a drop of 70.25·f = 2.289 in.
        var limit = 1.5e-3 / Inch / 1.8125 * 70.25;
        Assert.False(Packers.StandsClear((s_falling with { Drop = limit - 0.001, Sag = 4 }).Context.Layout, 0));
        Assert.True(Packers.StandsClear((s_falling with { Drop = limit + 0.001, Sag = 4 }).Context.Layout, 0));
    }

    [Theory]
    [InlineData(35, 80, "2x4", 88.9, 38.1)]
    [InlineData(38.2, 80, "4x6", 139.7, 88.9)]
    [InlineData(38, 100, "2x6", 139.7, 38.1)]
    [InlineData(88, 120, "4x6", 139.7, 88.9)]
    [InlineData(95.2, 120.4, "3-3/4 x 4-3/4 in", 120.65, 95.25)]
    [InlineData(120.4, 95.2, "3-3/4 x 4-3/4 in", 95.25, 120.65)]
    public void Packers_are_cut_from_the_smallest_own_stick(double height, double width, string name, double across, double thickness)
    {
        var section = PackerStock.Section(s_falling.Context.Parameters, height / 1000, width / 1000);
        Assert.Equal(name, section.Name);
        Assert.Equal((across, thickness), (Math.Round(section.Width * 1000, 6), Math.Round(section.Thickness * 1000, 6)));
    }

    // Lean 8°: the axis stands 18.25 + 1.75/cos 8° out on the base's top, 24·sin 8° more at the head.
    [Fact]
    public void Posts_and_braces_lean_from_their_feet()
    {
        var (sin, cos) = Math.SinCos(Bridges.Radians(8));
        var parts = Members.Frame(Level, 1).Members;
        var (post, left) =
            (parts.Single(m => m is { Role: Role.Post, Side: Side.Right }), parts.Single(m => m is { Role: Role.Post, Side: Side.Left }));
        var node = Level.Poses[1].Node;
        Vector3d foot = node + (Inch * new Vector3d(0, 5.25, 18.25 + (1.75 / cos)));
        Near(foot, post.Placement.Origin);
        Near(new(0, cos, sin), post.Placement.X);
        Near(new(1, 0, 0), post.Placement.Z);
        Near(new(0, cos, -sin), left.Placement.X);
        Assert.Equal((18.25 + (1.75 / cos) + (24 * sin)) * Inch, Uprights.AxisHead(Level.Parameters.Frames.Post), Exact);
        Assert.Equal(24 * Inch, post.Shape.Far.XAt(0, 0) - post.Shape.Near.XAt(0, 0), Exact);
        Assert.Equal(
            3.5 * Inch * Math.Tan(Bridges.Radians(8)),
            Math.Abs(post.Shape.Near.XAt(1.75 * Inch, 0) - post.Shape.Near.XAt(-1.75 * Inch, 0)), Exact);

        var brace = parts.Single(m => m is { Role: Role.Brace, Side: Side.Right });
        Near(node + (Inch * new Vector3d(0, 5.25, 28.25 - (1.75 / Math.Cos(Bridges.Radians(12))))), brace.Placement.Origin);
        Near(new(0, Math.Cos(Bridges.Radians(12)), -Math.Sin(Bridges.Radians(12))), brace.Placement.X);
    }

    // Base 3x6 from −29 to 29 in; its axis 2.5 in over the rope's. Keepers' holes astride the channels of 7/8 in, 9 diameters further
    // apart, from below.
    [Fact]
    public void Channels_and_keeper_holes_of_a_base()
    {
        var layout = new LevelDeck { Keeper = "{ hole: 1/4 in, depth: 2 in }" }.Context.Layout;
        var made = Members.Frame(layout, 1).Members[0];
        Near(layout.Poses[1].Node + (Inch * new Vector3d(0, 2.5, 0)), made.Placement.Origin);
        Near(new(0, 0, 1), made.Placement.X);
        Near(new(-1, 0, 0), made.Placement.Z);
        Assert.Equal([-24.5625, -21.4375, 21.4375, 24.5625], made.Shape.Holes.Select(h => Math.Round(h.X / Inch, 9)));
        Assert.All(
            made.Shape.Holes, h => Assert.Equal((StockFace.MinusY, 0, 0.25 * Inch, 2 * Inch), (h.Face, h.Across, h.Diameter, h.Depth)));
        Assert.Equal(
            [(-23.0, 0.875, 0.625), (23.0, 0.875, 0.625)],
            made.Shape.Channels.Select(
                c => (Math.Round(c.Center / Inch, 9), Math.Round(c.Width / Inch, 9), Math.Round(c.Depth / Inch, 9))));
        Assert.Equal(58 * Inch, made.Shape.Far.XAt(0, 0) - made.Shape.Near.XAt(0, 0), Exact);

        Assert.Empty(Members.Frame(Level, 1).Members[0].Shape.Holes);

        // The rope falls towards B by 1 in 72 where it leaves A: so does the upright end base's floor, in its axes Z towards A.
        Assert.Equal(1 / 72.0, Members.Frame(layout, 0).Members[0].Shape.Channels[0].FloorSlope, 1e-7);

        // Lying flat Y is towards B, and all is cut into the wide face below.
        var lying = Members.Frame(
            new LevelDeck { Base = "section: 4x6, flat: true", Keeper = "{ hole: 1/4 in, depth: 1 in }" }.Context.Layout, 0).Members[0];
        Near(new(0, 1, 0), lying.Placement.Z);
        Near(new(1, 0, 0), lying.Placement.Y);
        Assert.All(lying.Shape.Channels, c => Assert.Equal(-1 / 72.0, c.FloorSlope, 1e-7));
        Assert.All(lying.Shape.Channels, c => Assert.Equal(StockFace.MinusZ, c.Face));
        Assert.All(lying.Shape.Holes, h => Assert.Equal(StockFace.MinusZ, h.Face));
    }

    // Six boards of 5.5 in in 35.5 in, gaps of 1/2 in; their middles 3/4 in over the base's top.
    [Fact]
    public void Boards_rails_and_caps_of_the_level_deck()
    {
        var bay = Members.Bay(Level, 1).Members;
        var boards = bay.Where(m => m.Role == Role.Board).ToArray();
        Assert.Equal([-15.0, -9, -3, 3, 9, 15], boards.Select(b => Math.Round(b.Placement.Origin.Z / Inch, 9)));
        Assert.All(boards, b => Assert.Equal(5.25 - 1 + 0.75, (b.Placement.Origin.Y / Inch), 1e-6));
        var far = boards[0].Placement.Origin.X + boards[0].Shape.Far.XAt(0, 0);
        Assert.Equal(72 - (1 / 16.0), far / Inch, 1e-6);
        Assert.Equal(-1.25, (boards[0].Placement.Origin.X + boards[0].Shape.Near.XAt(0, 0)) / Inch, 1e-6);

        // At B they run over the last base.
        var last = Members.Bay(Level, 2).Members[0];
        Assert.Equal(72 + (1 / 16.0), (last.Placement.Origin.X + last.Shape.Near.XAt(0, 0)) / Inch, 1e-6);
        Assert.Equal(144 + 1.25, (last.Placement.Origin.X + last.Shape.Far.XAt(0, 0)) / Inch, 1e-6);

        // Cap: middle of 1-1/2 in over the heads, 24·cos 8° up, from 3/4 in before the post to the middle frame.
        var (sin, cos) = Math.SinCos(Bridges.Radians(8));
        var cap = bay.Single(m => m is { Role: Role.Cap, Side: Side.Left });
        Assert.Equal(4.25 + (24 * cos) + 0.75, cap.Placement.Origin.Y / Inch, 1e-6);
        Assert.Equal(-(18.25 + (1.75 / cos) + (24 * sin)), cap.Placement.Origin.Z / Inch, 1e-6);
        Assert.Equal((-0.75, 72.0), (Math.Round(cap.Shape.Near.XAt(0, 0) / Inch, 6), Math.Round(cap.Shape.Far.XAt(0, 0) / Inch, 6)));

        // Rail: its middle 12 in up the post's inner face and half of 3/4 in inward from it.
        var rail = bay.Single(m => m is { Role: Role.Rail, Side: Side.Right });
        Assert.Equal(4.25 + (12 * cos) + (0.375 * sin), rail.Placement.Origin.Y / Inch, 1e-6);
        Assert.Equal(18.25 + (12 * sin) - (0.375 * cos), rail.Placement.Origin.Z / Inch, 1e-6);
        Near(new(0, sin, -cos), rail.Placement.Z);
        Assert.Equal((-0.75, 72.0), (Math.Round(rail.Shape.Near.XAt(0, 0) / Inch, 6), Math.Round(rail.Shape.Far.XAt(0, 0) / Inch, 6)));
    }

    // Six rails of 3.5 in in 24 in of post over (1.5 + lift)/cos 8° of deck: equal gaps.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Rails_share_the_post_above_the_deck(int frame)
    {
        var text = s_falling.Text.Replace("heights: [6 in, 12 in, 18 in]", "count: 3", StringComparison.Ordinal);
        var layout = Bridges.Layout(Bridges.Read(text));
        var deck = (1.5 + (frame == 0 ? s_falling.Lift : 0)) / Math.Cos(Bridges.Radians(8));
        var gap = (24 - deck - (3 * 3.5)) / 4;
        Assert.Equal(deck * Inch, GuardRails.DeckAlongPost(layout, frame), 1e-7);
        Assert.All(
            GuardRails.Heights(layout, frame).Select((h, i) => (h, i)),
            r => Assert.Equal(deck + gap + 1.75 + (r.i * (gap + 3.5)), r.h / Inch, 1e-5));
    }

    // Treads stand square to a bay that falls by f over 1: between the end base's outer face, 1.75 in before the support, and the
    // middle frame, both plumb, their lower edge (stringer 5.5 in) meets the one first, their upper one (7 in) the other.
    [Fact]
    public void Treads_fill_a_falling_bay()
    {
        var bridge =
            s_falling with { Rails = "[9 in, 15 in, 21 in]", Deck = "deck: { layout: across, stringer: { section: 2x6, count: 3 } }" };
        var (layout, length) = (bridge.Context.Layout, Math.Sqrt(1 + (bridge.DeckFall * bridge.DeckFall)));
        var (sin, cos) = (bridge.DeckFall / length, 1 / length);
        var (start, finish) = ((-1.75 - (5.5 * sin)) / cos, (72 - (7 * sin)) / cos);
        var count = (int)((finish - start) / 5.75);
        var pitch = (finish - start) / count;
        Assert.Equal(12, count);
        Assert.Equal((pitch - 5.5) * Inch, DeckTreads.Gap(layout, 1, layout.Parameters.Deck.Stringer!), 1e-6);
        Assert.Equal([12, 12], layout.Steps.Treads.ToArray());
        var treads = Members.Bay(layout, 1).Members.Where(m => m.Role == Role.Tread).ToArray();
        Assert.Equal(12, treads.Length);
        var second = layout.Deck.Points[0]
            + (Inch * (start + (1.5 * pitch)) * new Vector3d(cos, -sin, 0)) + (Inch * 6.25 * new Vector3d(sin, cos, 0));
        Assert.All(
            (double[])[second.X - treads[1].Placement.Origin.X, second.Y - treads[1].Placement.Origin.Y], d => Assert.Equal(0, d, 1e-6));
        Assert.Equal(35.5 * Inch, treads[1].Shape.Far.XAt(0, 0) - treads[1].Shape.Near.XAt(0, 0), Exact);

        // Stringers stand on the bases, 17 in apart.
        var stringers = Members.Bay(layout, 1).Members.Where(m => m.Role == Role.Stringer).ToArray();
        Assert.Equal([-17.0, 0, 17], stringers.Select(s => Math.Round(s.Placement.Origin.Z / Inch, 9)));
        Assert.Equal(Inch * 2.75, (stringers[0].Placement.Origin - layout.Deck.Points[0]).Dot(new(sin, cos, 0)), 1e-7);
        Near(new(0, 0, 1), stringers[0].Placement.Z);
    }

    // Equal gaps: six of 5.5 in in 35.5 in, 1/2 in; as many as keep a least gap that comes out exactly; one alone has none.
    [Fact]
    public void Boards_by_width()
    {
        Assert.Equal(0.5, DeckWidth.EqualGap(35.5, 5.5, 6), Exact);
        Assert.Equal(0, DeckWidth.EqualGap(35.5, 5.5, 1));
        Assert.Equal((6, 5), (DeckWidth.LargestCount(35.5, 5.5, 0.5), DeckWidth.LargestCount(35.499, 5.5, 0.5)));
        Assert.Equal((0, 1), (DeckWidth.LargestCount(5.4, 5.5, 0.5), DeckWidth.LargestCount(5.5, 5.5, 0.5)));
        Assert.Equal(35.5 * Inch, DeckWidth.Filled(Level.Parameters), Exact);
        Assert.Equal(2 * (18.25 + (1.5 * Math.Tan(Bridges.Radians(8)))) * Inch, DeckWidth.BetweenPosts(Level.Parameters), Exact);
        Assert.Equal(
            [-15.0, -3, 15, 0],
            (double[])[
                LongPart.Spread(0, 6, 35.5, 5.5), LongPart.Spread(2, 6, 35.5, 5.5), LongPart.Spread(5, 6, 35.5, 5.5),
                LongPart.Spread(0, 1, 35.5, 5.5)]);
    }

    private static void Near(double[] byHand, IEnumerable<double> given, double unit) =>
        Assert.All(byHand.Zip(given), p => Assert.Equal(p.First * unit, p.Second, 1e-6 * Math.Max(1, p.First)));

    private static void Near(Vector3d byHand, Vector3d given) => Assert.InRange((byHand - given).Length, 0, 1e-7);
}
