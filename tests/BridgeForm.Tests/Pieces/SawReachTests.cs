using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Pieces;

public class SawReachTests
{
    private static readonly ShopParameters Shop = Bridges.Read(Bridges.Garden).Shop with
    {
        MitreLimit = Bridges.Radians(50),
        BevelLimit = Bridges.Radians(45),
    };

    // Printed table of a compound mitre saw's handbook: side of a box of n sides that leans s from horizontal.
    [Theory]
    [InlineData(45, 4, 35.26, 30.00)]
    [InlineData(45, 5, 27.19, 24.56)]
    [InlineData(45, 6, 22.21, 20.70)]
    [InlineData(45, 8, 16.32, 15.70)]
    [InlineData(30, 4, 40.89, 20.70)]
    [InlineData(30, 6, 26.57, 14.48)]
    [InlineData(30, 8, 19.73, 11.03)]
    [InlineData(15, 4, 44.01, 10.55)]
    [InlineData(0, 4, 45, 0)]
    [InlineData(0, 6, 30, 0)]
    public void Compound_mitre_table(double lean, int sides, double mitre, double bevel)
    {
        var half = Math.PI / sides;
        var s = Bridges.Radians(lean);
        var side = Placement.FromLengthAndThickness(
            Vector3d.Zero, Vector3d.UnitX, new Vector3d(0, Math.Cos(s), Math.Sin(s)));
        var joint = new Plane(new Vector3d(Math.Cos(half), 0, Math.Sin(half)), 0);
        var cut = Measured(side.ToLocal(joint), Shop);
        Assert.Equal(mitre, Math.Abs(Bridges.Degrees(cut.Mitre)), 0.006);
        Assert.Equal(bevel, Math.Abs(Bridges.Degrees(cut.Bevel)), 0.006);
    }

    // Crown moulding at spring angle 38° in a right-angled corner: a moulding maker's published settings.
    [Fact]
    public void Crown_moulding_settings()
    {
        var spring = Bridges.Radians(38);
        var piece = Placement.FromLengthAndThickness(
            Vector3d.Zero, Vector3d.UnitX, new Vector3d(0, Math.Sin(spring), Math.Cos(spring)));
        var corner = new Plane(new Vector3d(Math.Cos(Math.PI / 4), 0, Math.Sin(Math.PI / 4)), 0);
        var cut = Measured(piece.ToLocal(corner), Shop);
        Assert.Equal(31.62, Math.Abs(Bridges.Degrees(cut.Mitre)), 0.006);
        Assert.Equal(33.86, Math.Abs(Bridges.Degrees(cut.Bevel)), 0.006);
    }

    // Common practice, no source: a 70° cut is made with the saw at 50° and a 20° wedge; 45° + 10° = 55° (woodworkers' advice).
    [Theory]
    [InlineData(58, 50, 8)]
    [InlineData(55, 45, 10)]
    [InlineData(-58, 50, 8)]
    [InlineData(50, 50, 0)]
    [InlineData(30, 50, 0)]
    public void Wedge_makes_up_for_what_the_saw_lacks(double mitre, double limit, double wedge)
    {
        var angle = Bridges.Radians(mitre);
        var cut = Measured(
            new Plane(new Vector3d(Math.Cos(angle), Math.Sin(angle), 0), 1), Shop with { MitreLimit = Bridges.Radians(limit) });
        Assert.Equal(wedge, Bridges.Degrees(cut.Wedge), 1e-9);
        Assert.Equal(Math.Abs(mitre) <= limit, cut.InReach);
    }

    [Theory]
    [InlineData(12, 20)]
    [InlineData(-30, 10)]
    [InlineData(44, -35)]
    public void Edge_line_follows_from_mitre_and_bevel(double mitre, double bevel)
    {
        double a = Bridges.Radians(mitre), b = Bridges.Radians(bevel);
        var normal = new Vector3d(Math.Cos(b) * Math.Cos(a), Math.Cos(b) * Math.Sin(a), Math.Sin(b));
        foreach (var end in (Plane[])[new Plane(normal, 1), new Plane(-normal, 1)])
        {
            var cut = Measured(end, Shop);
            Assert.Equal(mitre, Bridges.Degrees(cut.Mitre), 1e-9);
            Assert.Equal(bevel, Bridges.Degrees(cut.Bevel), 1e-9);
            Assert.Equal(Math.Tan(b) / Math.Cos(a), Math.Tan(cut.Edge), 1e-12);
        }
    }

    // A blade of radius R comes down from above until its axis is a above the table: every point of the wood, from the table up to the
    // collar and from the fence to the crosscut, lies within its disc there. At the table the chord is the shortest.
    [Theory]
    [InlineData(0.127, 0.080)]
    [InlineData(0.152, 0.115)]
    public void A_blade_that_comes_down_covers_all_wood_over_its_chord_at_the_table(double radius, double axis)
    {
        var half = Math.Sqrt((radius * radius) - (axis * axis));
        var saw = new SawParameters(2 * half, axis - 0.025, Slides: false, Step: 0.01);
        foreach (var thick in (double[])[0.01, 0.02, saw.Height])
        {
            var most = SawPath.Longest(saw, thick, 0);
            Assert.Equal(2 * half, most, 1e-12);
            for (var i = 0; i <= 20; i++)
            {
                for (var k = 0; k <= 20; k++)
                {
                    var (x, z) = ((most * i / 20) - half, thick * k / 20);
                    Assert.InRange((x * x) + ((z - axis) * (z - axis)), 0, (radius * radius) + 1e-12);
                }
            }
        }

        Assert.Equal(0, SawPath.Longest(saw, saw.Height + 0.001, 0));
        Assert.Equal(0, SawPath.Longest(saw, (saw.Height * Math.Cos(0.3)) + 0.001, 0.3));
    }

    // A saw that does not slide, 8 in and 3-7/8 in: a 4x4 is square within both.
    [Fact]
    public void A_small_saw_cuts_a_post_square()
    {
        var shop = Bridges.Read(Bridges.Garden
            + "\nshop: { saw: { sliding: false, height: 3-7/8 in }, tools: [mitre-saw, table-saw], table_saw: 3 in, "
            + "band_saw: 10 in }").Shop;
        Assert.Equal(8 * 0.0254, shop.Saw.Crosscut, 1e-12);
        Assert.Equal(CutWay.Saw, SawReach.Measure(Inches(3.5, 3.5), near: true, shop).Way);
        Assert.Equal(CutWay.HandSaw, SawReach.Measure(Inches(9.25, 1.5), near: true, shop).Way);
        Assert.Equal((3 * 0.0254, 10 * 0.0254), (shop.Saw.TableDepth, shop.Saw.BandHeight), Almost);
        var given = Bridges.Read(Bridges.Garden + "\nshop: { saw: { sliding: false, crosscut: 9 in } }").Shop;
        Assert.Equal(9 * 0.0254, given.Saw.Crosscut, 1e-12);
    }

    // Capacities that makers print of a sliding 12 in saw (from memory): 12 in at 90° and about 8-1/2 in of board at 45°; 3-5/8 in of
    // thickness upright and about 2-1/2 in at 45° of bevel.
    [Theory]
    [InlineData(0, 12, 3.625)]
    [InlineData(45, 8.485, 2.563)]
    public void Capacities_shrink_with_the_cosine(double angle, double board, double thickness)
    {
        var saw = new SawParameters(12 * 0.0254, 3.625 * 0.0254, Slides: true, Step: 0.01);
        var a = Bridges.Radians(angle);
        bool Reaches(double inches) => SawPath.Across(inches * 0.0254, 0.038, a, 0) <= SawPath.Longest(saw, 0.038, 0);
        Assert.True(Reaches(board - 0.001) && !Reaches(board + 0.001));
        Assert.True(SawPath.Longest(saw, (thickness - 0.001) * 0.0254, a) > 0);
        Assert.Equal(0, SawPath.Longest(saw, (thickness + 0.001) * 0.0254, a));
    }

    // The blade's path from the corners of the cut itself: where the plane meets the four edges, laid along the blade's line on the table.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(30, 0)]
    [InlineData(20, 35)]
    [InlineData(62, 10)]
    public void Path_of_the_blade_is_that_of_the_cuts_corners(double mitre, double bevel)
    {
        double a = Bridges.Radians(mitre), b = Bridges.Radians(bevel), width = 0.14, thick = 0.038;
        var plane = new Plane(new Vector3d(Math.Cos(b) * Math.Cos(a), Math.Cos(b) * Math.Sin(a), Math.Sin(b)), 1);
        var along = new[] { -1, 1 }.SelectMany(y => new[] { -1, 1 }.Select(z => (Y: y * width / 2, Z: z * thick / 2)))
            .Select(c => (c.Y * Math.Cos(a)) - (plane.XAt(c.Y, c.Z) * Math.Sin(a))).ToList();
        Assert.Equal(along.Max() - along.Min(), SawPath.Across(width, thick, a, b), 1e-9);
    }

    // By hand, a 3-1/2 in brace cut at 55°, block 5°, metric: the clamp's middle lies (150 + 25) / cos 55° = 305.1 mm and 25 · tan 55° =
    // 35.7 mm along, its far side 25 mm more: 365.8 mm, · cos 5° less 20 mm is 344.4 mm, so the block is 350 mm long, 12 mm and
    // 12 + 350 · tan 5° = 42.6 mm thick. The line is 88.9 / cos 55° = 155.0 mm; the slope at the blade 12 − 20 · tan 5° = 10.25 mm,
    // 15.9 mm along a blade at 50°. The other way round the clamp's far side lies 305.1 − 35.7 + 25 = 294.4 mm off: 280 mm long, 36.5 mm
    // thick; (36.5 + 20 · tan 5°) / (1 − tan 50° · tan 5°) = 42.7 mm at the blade, 66.4 mm along it.
    [Fact]
    public void A_brace_on_a_block_by_hand()
    {
        var hold = HoldParameters.For(BridgeForm.Quantities.UnitSystem.Metric);
        double m = Bridges.Radians(55), w = Bridges.Radians(5), width = 0.0889;
        var thin = TaperBlock.For(width, 0.038, m, 0, w, thinAtBlade: true, hold);
        Assert.Equal((0.350, 0.0426), (thin.Length, thin.ThickEnd), Almost);
        Assert.Equal(0.1550 + 0.0159, SawPath.OnBlock(width, 0.038, m, 0, thin), 1e-4);
        var thick = TaperBlock.For(width, 0.038, m, 0, w, thinAtBlade: false, hold);
        Assert.Equal((0.280, 0.0365), (thick.Length, thick.ThickEnd), Almost);
        Assert.Equal(0.1550 + 0.0664, SawPath.OnBlock(width, 0.038, m, 0, thick), 1e-4);
    }

    private static bool Almost((double A, double B) a, (double A, double B) b) => Math.Abs(a.A - b.A) < 1e-9 && Math.Abs(a.B - b.B) < 1e-4;

    // The same brace in one shop after the other: whatever is taken away, the next way is told, and nothing that does not reach.
    [Theory]
    [InlineData(12, ShopTools.MitreSaw | ShopTools.CircularSaw, CutWay.SawWithBlock)]
    [InlineData(6.5, ShopTools.MitreSaw | ShopTools.CircularSaw, CutWay.CircularSaw)]
    [InlineData(6.5, ShopTools.MitreSaw | ShopTools.TableSaw | ShopTools.BandSaw, CutWay.TaperJig)]
    [InlineData(12, ShopTools.BandSaw, CutWay.BandSaw)]
    [InlineData(12, ShopTools.None, CutWay.HandSaw)]
    public void A_steep_cut_takes_the_cheapest_way_that_reaches(double crosscut, ShopTools tools, CutWay way)
    {
        var angle = Bridges.Radians(55);
        var plane = new Plane(new Vector3d(Math.Cos(angle), Math.Sin(angle), 0), 1);
        var cut = Measured(plane, Shop with { Tools = tools, Saw = Shop.Saw with { Crosscut = crosscut * 0.0254 } });
        Assert.Equal(way, cut.Way);
        Assert.Equal(way == CutWay.SawWithBlock ? 5 : 0, Bridges.Degrees(cut.Wedge), 1e-9);
        Assert.False(cut.InReach);
        Assert.Equal(way != CutWay.SawWithBlock, cut.NeedsTemplate);
    }

    // Square, but too thick for the blade, or too wide for its path: no angle is beyond the saw, the wood is.
    [Theory]
    [InlineData(5.5, 3.5, CutWay.Saw)]
    [InlineData(5.5, 3.75, CutWay.CircularSaw)]
    [InlineData(11.25, 1.5, CutWay.Saw)]
    [InlineData(12.25, 1.5, CutWay.CircularSaw)]
    [InlineData(5.5, 7.25, CutWay.HandSaw)]
    public void Wide_and_thick_wood_is_judged_too(double width, double thick, CutWay way) => Assert.Equal(
        way, SawReach.Measure(Inches(width, thick), near: true, Shop).Way);

    // A foot and half a foot, or 300 and 150 mm: the round figures that every sheet of a file prints.
    [Theory]
    [InlineData(BridgeForm.Quantities.UnitSystem.Metric, 0.300, 0.150, 0.050)]
    [InlineData(BridgeForm.Quantities.UnitSystem.Imperial, 0.3048, 0.1524, 0.0508)]
    public void A_piece_without_room_for_a_clamp_is_told(
        BridgeForm.Quantities.UnitSystem units, double shortest, double clear, double clamp)
    {
        var hold = HoldParameters.For(units);
        Assert.Equal((shortest, clear, clamp), (hold.Shortest, hold.Clear, hold.Clamp), Near);
        CutStock Stick(double length) => new(0.089, 0.038, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, length));
        Assert.True(Holding.IsShort(Stick(shortest - 0.001), hold));
        Assert.False(Holding.IsShort(Stick(shortest + 0.001), hold));
    }

    // A 2x4 cut at 55° with the saw at 50°. 25 mm in from the edge at the block the cut lies 25 · tan 55° = 35.7 mm back; square from its
    // path 150 mm and half a clamp are (150 + 25) / cos 55° = 305.1 mm along, and 25 mm of clamp: 365.8 mm. With the near end cut back by
    // 45° the other way, 25 mm in from that edge lose 25 mm more: 390.8 mm. At 70°, 25 · tan 70° + 175 / cos 70° + 25 = 605.4 mm would
    // do, but the block there would be 12 + 570 · tan 20° = 219 mm thick, and none is.
    [Theory]
    [InlineData(55, 365, 0, false)]
    [InlineData(55, 367, 0, true)]
    [InlineData(55, 390, -45, false)]
    [InlineData(55, 392, -45, true)]
    [InlineData(70, 457, 0, false)]
    [InlineData(70, 900, 0, false)]
    public void A_block_takes_only_what_is_held_on_it(double mitre, double length, double near, bool held)
    {
        var shop = Shop with { Hold = HoldParameters.For(BridgeForm.Quantities.UnitSystem.Metric) };
        var stick = new CutStock(
            0.0889, 0.038, Slant(0.04445 * Math.Tan(Bridges.Radians(-near)), near).Flipped(),
            Slant((length / 1000) - (0.04445 * Math.Tan(Bridges.Radians(mitre))), mitre));
        Assert.Equal(length / 1000, stick.LengthRange().Far - stick.LengthRange().Near, 1e-9);
        Assert.Equal(held ? CutWay.SawWithBlock : CutWay.CircularSaw, SawReach.Measure(stick, near: false, shop).Way);
    }

    // Mitre 55° and bevel 3° the one way round: the piece lies to the left of the blade, its edge some 45 mm off the fence there, and would
    // run into it 45 / sin 5° = 510 mm on; its edge at the block is 40 · tan 55° = 57 mm shorter. The
    // other way round, to the right, its length does not matter.
    [Theory]
    [InlineData(560, 3, true)]
    [InlineData(575, 3, false)]
    [InlineData(2000, 3, false)]
    [InlineData(2000, -3, true)]
    public void On_a_block_nothing_runs_into_the_fence(double length, double bevel, bool clears)
    {
        double m = Bridges.Radians(55), b = Bridges.Radians(bevel);
        var far = Plane.Through(
            new Vector3d(length / 1000, -0.02, 0), new Vector3d(Math.Cos(b) * Math.Cos(m), Math.Cos(b) * Math.Sin(m), Math.Sin(b)));
        var stick = new CutStock(0.04, 0.02, new Plane(-Vector3d.UnitX, 0), far);
        var cut = SawReach.Measure(stick, near: false, Shop);
        Assert.Equal(clears, cut.Way == CutWay.SawWithBlock);
        Assert.Equal(bevel < 0, CutWays.ThinAtBlade(near: false, cut));
    }

    // A circular saw goes 60 mm deep (common practice, no source): 70 mm of brace are cut from both faces.
    [Theory]
    [InlineData(0.059, false)]
    [InlineData(0.070, true)]
    public void What_a_circular_saw_does_not_go_through_is_cut_from_both_faces(double thick, bool both)
    {
        var stick = new CutStock(0.120, thick, new Plane(-Vector3d.UnitX, 0), Slant(1, 70));
        var cut = SawReach.Measure(stick, near: false, Shop);
        Assert.Equal(CutWay.CircularSaw, cut.Way);
        Assert.Equal(both, CutWays.FromBothFaces(cut, stick));
        Assert.Equal(both, CutWays.Words(cut, stick).EndsWith("from both faces", StringComparison.Ordinal));
    }

    private static bool Near((double A, double B, double C) a, (double A, double B, double C) b) =>
        Math.Abs(a.A - b.A) < 1e-12 && Math.Abs(a.B - b.B) < 1e-12 && Math.Abs(a.C - b.C) < 1e-12;

    /// <summary>A far end that crosses the middle so far on, mitred so many degrees.</summary>
    private static Plane Slant(double middle, double degrees)
    {
        var angle = Bridges.Radians(degrees);
        return Plane.Through(new Vector3d(middle, 0, 0), new Vector3d(Math.Cos(angle), Math.Sin(angle), 0));
    }

    private static CutStock Inches(double width, double thick) =>
        new(width * 0.0254, thick * 0.0254, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1));

    // The far end of a 2x4.
    private static EndCut Measured(Plane far, ShopParameters shop) =>
        SawReach.Measure(new CutStock(3.5 * 0.0254, 0.038, new Plane(-Vector3d.UnitX, 0), far), near: false, shop);
}
