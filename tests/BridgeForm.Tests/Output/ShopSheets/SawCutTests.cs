using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Samples;
using CsCheck;

namespace BridgeForm.Tests.Output.ShopSheets;

/// <summary>
/// The cut is made again from what the sheet says: the blade's plane from mitre, bevel and wedge, the piece laid as told and
/// pushed against fence and stop. It must be the piece's own end plane.
/// </summary>
public sealed class SawCutTests
{
    private const double Exact = 1e-9;

    /// <summary>Angles whose tenths of a degree are not zero, or square ends; all four signs; some beyond the saw's 50°.</summary>
    private static readonly Gen<double> Angles = Gen.OneOf(
        Gen.Const(0.0), Gen.Double[0.01, 1.2], Gen.Double[-1.2, -0.01]);

    private static readonly Gen<Piece> Sticks =
        from nearMitre in Angles
        from nearBevel in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.01, 0.75], Gen.Double[-0.75, -0.01])
        from farMitre in Angles
        from farBevel in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.01, 0.75], Gen.Double[-0.75, -0.01])
        from length in Gen.Double[1.5, 4]
        select Stick(Normal(nearMitre, nearBevel), Normal(farMitre, farBevel), length);

    [Fact]
    public void Cut_as_told_is_the_cut_of_the_piece() => Sticks.Sample(
        piece =>
        {
            foreach (var cut in SawCut.List(piece))
            {
                var made = Remade(cut);
                var meant = piece.Plane(cut.End);
                var same = made.Normal.Dot(meant.Normal) < 0 ? made.Flipped() : made;
                Assert.True((same.Normal - meant.Normal).Length < Exact, $"{cut}: normal {same.Normal}, should be {meant.Normal}");
                Assert.True(cut.Stop is null
                    || Math.Abs(same.Offset - meant.Offset) < Exact, $"{cut}: off by {same.Offset - meant.Offset}");
            }
        },
        iter: 2000,
        seed: "0000KOIPe036");

    [Fact]
    public void Saw_is_never_set_beyond_its_limits_or_to_the_other_hand() => Sticks.Sample(
        piece => Assert.All(SawCut.List(piece), cut =>
        {
            Assert.True(cut.Mitre >= 0 && cut.Bevel >= 0 && cut.Wedge >= 0);
            Assert.True(!cut.InReach || (cut.Mitre <= Shop.MitreLimit + Exact && cut.Bevel <= Shop.BevelLimit + Exact));
            Assert.Equal(Math.Abs(piece.Cut(cut.End).SawMitre), cut.Mitre + cut.Wedge, Exact);
        }),
        iter: 500,
        seed: "0000KOIPe036");

    [Fact]
    public void Left_and_right_hands_share_a_setting()
    {
        var model = Bridges.Build(Bridges.Garden);
        var hands = model.Pieces.Where(p => p.Mark is "P1L" or "P1R").ToList();
        Assert.Equal(2, hands.Count);
        var setups = SawSetup.List(model);
        Assert.All(setups.Where(s => s.Cuts.Any(c => c.Piece.Mark is "P1L")), s => Assert.Contains(s.Cuts, c => c.Piece.Mark is "P1R"));
        Assert.Equal(2 * model.Pieces.Sum(p => p.Occurrences.Length), setups.Sum(s => s.Count));
    }

    /// <summary>Posts lean 8°, and the saw is set to 4° at most: their feet take a wedge of 4°.</summary>
    private static readonly Lazy<BridgeModel> s_block =
        new(() => Bridges.Build(Bridges.Garden + "\nshop: { saw: { mitre_limit: 4 deg } }"));

    private static SawCut OnBlock => SawSetup.List(s_block.Value).SelectMany(s => s.Cuts)
        .First(c => c.Wedge > 0 && c.Piece.Role == Role.Post);

    [Fact]
    public void Steep_cut_gets_a_wedge()
    {
        var steep = OnBlock;
        Assert.Equal(4, Bridges.Degrees(steep.Mitre), Exact);
        Assert.Equal(4, Bridges.Degrees(steep.Wedge), 1e-6);
        Assert.Equal(2, steep.Order);
    }

    // The block's slope at 4°: where the blade crosses it, it is 12.7 mm less 20 mm · tan 4° = 11.3 mm off the fence. A stop so far up
    // that slope is found again by walking along the fence and square off it; on the other side the slope runs into the fence.
    [Fact]
    public void The_stop_of_a_wedge_stands_on_the_slope_carried_on()
    {
        var model = s_block.Value;
        var cut = OnBlock;
        var at = cut.OnWedge!.Value;
        Assert.True(cut.PieceAtRight);
        Assert.Equal(cut.Stop!.Value, at.Along / Math.Cos(cut.Wedge), 1e-12);
        Assert.Equal(0.0127 - (0.020 * Math.Tan(Bridges.Radians(4))) + (cut.Stop.Value * Math.Sin(Bridges.Radians(4))), at.Off, 1e-9);
        Assert.Null((cut with { End = cut.End == PieceEnd.Near ? PieceEnd.Far : PieceEnd.Near, Stop = 2 }).OnWedge);

        var page = string.Join(' ', SawSheet.Draw(model, DisplayUnits.For(UnitSystem.Metric)).Pages.SelectMany(p => p.Content.Entities)
            .OfType<SheetText>().Select(t => t.Text));
        Assert.Contains($"{Rounding.ToDecimals(at.Off * 1000, 1)} mm off the fence", page, StringComparison.Ordinal);
        Assert.Contains("stop, ", page, StringComparison.Ordinal);
    }

    // The stop of the picture touches the edge of the work at its place; corners of the block stand before it.
    [Fact]
    public void The_picture_of_a_wedge_has_its_stop()
    {
        var plan = new SawPlan(SamplePieces.Post.Shape, Bridges.Radians(70), 0, Bridges.Radians(20), Right: true, 0.003) { Stop = 0.2 };
        var stop = plan.Draw().OfType<SheetPolyline>().Last(p => p.Layer == PageLayers.Pocket);
        var at = plan.On(0.2, 0);
        Assert.Equal((at.X, at.Y), (stop.Vertices[0].X, stop.Vertices[0].Y), Near);

        // Cut back by 45°: in the work's own axes its next corner lies as far along as off the edge.
        var next = plan.On(0.2 + 0.030, 0.030);
        Assert.Equal((next.X, next.Y), (stop.Vertices[1].X, stop.Vertices[1].Y), Near);
        Assert.DoesNotContain(
            (plan with { Stop = null }).Draw(), e => e is SheetText t && t.Text.StartsWith("stop", StringComparison.Ordinal));
    }

    // A blank with two would stand behind the fence beside the blade. Sheet, picture, template, stock plan and cut list all have one
    // stick of exactly the post's length.
    [Fact]
    public void Posts_on_a_block_are_cut_to_length_first()
    {
        var (model, units) = (s_block.Value, DisplayUnits.For(UnitSystem.Imperial));
        var cut = OnBlock;
        Assert.Equal(HoldWay.CutFirst, cut.Hold);
        var exactly = units.Length(cut.Piece.BlankLength);

        var sheet = string.Join(' ', SawSheet.Draw(model, units).Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>()
            .Select(t => t.Text));
        Assert.Contains($"cut square to exactly {exactly} first", sheet, StringComparison.Ordinal);
        Assert.Contains($"from {exactly}, clamp", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("two from a blank", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("two from", SawSheet.Csv(model, units), StringComparison.Ordinal);
        var plan = BlockPlan.Draw(new CutUse([cut.Piece]), cut.End, model.Parameters.Shop, units);
        Assert.Contains($"exactly its length first, {cut.Piece.Mark} {exactly}", plan.Notes[0], StringComparison.Ordinal);
        Assert.Contains("clamp stands 6 in or more from its path, square to it", plan.Notes[0], StringComparison.Ordinal);
        Assert.DoesNotContain("pairs", plan.Notes[0], StringComparison.Ordinal);
        Assert.All(
            model.StockPlan.Boards.SelectMany(b => b.Pieces).Where(p => p.Mark == cut.Piece.Mark),
            p => Assert.True(p.Held is 0 && Math.Abs(p.BlankLength - cut.Piece.BlankLength) < Exact));
        AssertClear(plan.Entities);
        AssertClear(SetupPicture.Draw(cut, model.Parameters.Shop, units));
    }

    // Y is up the page into the fence: all of the stick, full or dashed, lies before it.
    private static void AssertClear(IEnumerable<SheetEntity> picture) => Assert.All(
        picture.OfType<SheetLine>().Where(l => l.Layer == PageLayers.Hidden || l.Layer == PageLayers.Cut || l.Layer == PageLayers.Fold),
        l => Assert.True(l.From.Y < 1e-9 && l.To.Y < 1e-9, $"{l}"));

    // The clamp of the picture: square from the blade's path, a line through the plan's two ends of it, 150 mm and half a clamp of 50 mm;
    // and the block bears the work to the clamp's far side.
    [Theory]
    [InlineData(70, 20)]
    [InlineData(55, 5)]
    [InlineData(55, 10)]
    [InlineData(30, 0)]
    public void The_clamp_is_square_from_the_blades_path_and_the_block_under_it(double mitre, double wedge)
    {
        foreach (var right in (bool[])[true, false])
        {
            var plan = new SawPlan(SamplePieces.Post.Shape, Bridges.Radians(mitre), 0, Bridges.Radians(wedge), right, 0.003)
            {
                Hold = HoldParameters.For(UnitSystem.Metric),
            };
            var drawn = plan.Draw().ToList();
            var clamp = drawn.OfType<SheetCircle>().Last().Center;
            var turn = Bridges.Radians(mitre - wedge);
            var blade = plan.On(0, 0);
            var square = Math.Abs(((clamp.X - blade.X) * Math.Cos(turn)) + ((clamp.Y - blade.Y) * Math.Sin(turn))) / SawPlan.Scale;
            Assert.Equal(0.150 + 0.025, square, 1e-9);
            if (wedge > 0)
            {
                var box = PageBox.Of([drawn.OfType<SheetPolyline>().First(p => p.Layer == PageLayers.Pocket)]);
                var under = 0.025 * Math.Cos(Bridges.Radians(wedge)) * SawPlan.Scale;
                var foot = plan.On((clamp.X - plan.On(0, 0.025).X) / SawPlan.Scale / Math.Cos(Bridges.Radians(wedge)), 0).X;
                Assert.InRange(foot, box.MinX + under - 1e-9, box.MaxX - under + 1e-9);
            }
        }
    }

    // Post P1L of a plumb bridge, by hand: its foot leans 8° out, and 95 mm · tan 8° = 13.35 mm off the fence lies the point that is the
    // farther one. A block at the fence touches 13.35 mm before; from the solid's own corners.
    [Fact]
    public void A_stop_at_the_fence_touches_the_point_at_the_fence()
    {
        var foot = Normal(Bridges.Radians(8), 0);
        var shape = new CutStock(
            0.095, 0.095, Plane.Through(Vector3d.Zero, -foot), Plane.Through(new Vector3d(1, 0, 0), Normal(Bridges.Radians(8), 0.01)));
        var piece = Stick(shape);
        var cut = SawCut.List(piece).Last();
        Assert.Equal(PieceEnd.Far, cut.End);
        var solid = StockSolid.Build(shape).OrNull!;
        var saw = cut.Position.Saw;
        var laid = solid.Vertices.Select(saw.DirectionToLocal).ToList();
        var way = cut.PieceAtRight ? 1 : -1;
        var atFence = laid.Where(v => Math.Abs(v.Y - 0.0475) < 1e-9).ToList();
        var cutLine = atFence.Where(v => Math.Abs(v.Z - 0.0475) < 1e-9).Min(v => way * v.X);
        Assert.Equal(atFence.Max(v => way * v.X) - cutLine, cut.Stop!.Value, 1e-9);
        var farthest = laid.Max(v => way * v.X) - cutLine;
        Assert.Equal(cut.Other.Lean > 0 ? 0.095 * Math.Tan(Bridges.Radians(8)) : 0, farthest - cut.Stop.Value, 1e-9);

        // Laid the other way round it leans the other way: one of the two hands has the point off the fence.
        var hand = SawCut.List(Stick(shape with { Near = Plane.Through(Vector3d.Zero, -Normal(Bridges.Radians(-8), 0)) })).Last();
        Assert.NotEqual(cut.Other.Lean > 0, hand.Other.Lean > 0);

        // The picture draws the finished end as it leans.
        var picture = SetupPicture.Draw(cut, Shop, DisplayUnits.For(UnitSystem.Metric)).OfType<SheetLine>()
            .Where(l => l.Layer == PageLayers.Cut).ToList();
        Assert.Contains(picture, l => Math.Abs(
            Math.Abs(l.To.X - l.From.X) - (0.095 * Math.Tan(Bridges.Radians(8)) * SawPlan.Scale)) < 1e-9
            && Math.Abs(Math.Abs(l.To.Y - l.From.Y) - (0.095 * SawPlan.Scale)) < 1e-9);
    }

    // Past a face cut back by 45° an end may lean out by 40°; one of 45° touches off the fence, and is cut to the line.
    [Theory]
    [InlineData(38, true)]
    [InlineData(45, false)]
    public void An_end_that_leans_out_far_has_no_stop(double degrees, bool stops)
    {
        var lean = Bridges.Radians(degrees);
        var cuts = ((double[])[lean, -lean]).Select(l => SawCut.List(Stick(Normal(l, 0), Normal(lean, 0), 2)).Last()).ToList();
        Assert.Contains(cuts, c => c.Other.Lean > 0);
        Assert.All(cuts.Where(c => c.Other.Lean > 0), c => Assert.Equal(stops, c.HasStop));
        Assert.All(cuts.Where(c => c.Other.Lean <= 0), c => Assert.True(c.HasStop));
    }

    // Foot 8.0°, head tilted 20.6°: flat the blade's way through 88.9 mm is 88.9 / cos 20.6° = 95.0 mm, more than the 92.1 mm of the saw.
    // Rolled, by hand: miter atan(tan 20.6° / cos 8°) = 20.8°, bevel asin(sin 8° · cos 20.6°) = 7.5°, height 88.9 / cos 7.5° = 89.7 mm.
    [Theory]
    [InlineData(8)]
    [InlineData(-8)]
    public void A_square_post_is_rolled_where_that_reaches(double mitre)
    {
        foreach (var tilt in (double[])[20.6, -20.6])
        {
            var (m, b) = (Bridges.Radians(mitre), Bridges.Radians(tilt));
            var piece = Stick(new CutStock(
                0.0889, 0.0889, new Plane(-Vector3d.UnitX, 0), Plane.Through(new Vector3d(1, 0, 0), Normal(m, b))));
            Assert.True(piece.Far is { OnEdge: true, Way: CutWay.Saw });
            var cut = SawCut.List(piece).Last();
            Assert.Equal(Math.Atan(Math.Tan(Bridges.Radians(20.6)) / Math.Cos(m)), cut.Mitre, 1e-9);
            Assert.Equal(Math.Asin(Math.Sin(Bridges.Radians(8)) * Math.Cos(b)), cut.Bevel, 1e-9);
            Assert.InRange(0.0889 / Math.Cos(cut.Bevel), 0, 0.0921);

            // Laid as told, it is the piece's own cut.
            var made = cut.Position.Saw.DirectionToWorld(Normal(cut.Mitre, cut.Bevel));
            Assert.Equal(1, Math.Abs(made.Dot(Normal(m, b))), 1e-12);
            Assert.Equal(SawSetup.Up(cut) is "edge 1 up" ? Vector3d.UnitY : -Vector3d.UnitY, cut.Position.Saw.Z);
            Assert.Equal(SawSetup.Fence(cut) is "marked face" ? Vector3d.UnitZ : -Vector3d.UnitZ, cut.Position.Saw.Y);
            Assert.Equal(CutWay.Saw, SawSettings.Share([piece], Shop)[0].Far.Way);
            Assert.InRange(SawSettings.Share([piece], Shop)[0].FarGap, 0, 0.0005);
        }
    }

    // Two shims of 90 mm from one blank: the clamp stands on the rest of the blank beyond the blade, and nothing stops the short piece.
    [Fact]
    public void A_short_piece_is_parted_from_a_blank_that_is_clamped_beyond_the_blade()
    {
        var piece = Stick(Vector3d.UnitX, Vector3d.UnitX, 0.09);
        var cut = SawCut.List(piece).Last() with { Hold = Holding.Of(piece, Shop) };
        Assert.True(cut is { IsParted: true, HasStop: false, PieceAtRight: false });
        var picture = SetupPicture.Draw(cut, Shop, DisplayUnits.For(UnitSystem.Imperial));
        var texts = picture.OfType<SheetText>().Select(t => t.Text).ToList();
        Assert.Contains("rest of the blank", texts);
        Assert.Contains("clamp, blank", texts);
        Assert.DoesNotContain("offcut", texts);
        Assert.DoesNotContain(texts, t => t.StartsWith("stop", StringComparison.Ordinal));
        var clamp = Assert.Single(picture.OfType<SheetCircle>()).Center.X / SawPlan.Scale;
        Assert.Equal((6 + 1) * 0.0254, clamp, 1e-9);
        Assert.Contains(
            picture.OfType<SheetLine>(), l => l.Layer == PageLayers.Hidden && l.To.X / SawPlan.Scale > clamp + (0.0254 * 1.01));
    }

    // No word of a picture on its stop, wherever that stands.
    [Theory]
    [InlineData(0, 0, true, 0.31)]
    [InlineData(0, 0, false, 0.31)]
    [InlineData(0, 0, false, 0.9)]
    [InlineData(45, 0, true, 0.34)]
    [InlineData(70, 20, true, 0.346)]
    [InlineData(70, 20, true, 0.9)]
    public void No_word_of_a_picture_lies_on_the_stop(double mitre, double wedge, bool right, double stop)
    {
        var plan = new SawPlan(SamplePieces.Post.Shape, Bridges.Radians(mitre), 0, Bridges.Radians(wedge), right, 0.003) { Stop = stop };
        var drawn = plan.Draw().ToList();
        var block = PageBox.Of([drawn.OfType<SheetPolyline>().Last(p => p.Layer == PageLayers.Pocket)]);
        var texts = drawn.OfType<SheetText>().ToList();
        Assert.Contains(texts, t => t.Text is "fence");
        Assert.All(texts, t => Assert.False(
            PageBox.Of([t]) is var b && b.MinX < block.MaxX && block.MinX < b.MaxX && b.MinY < block.MaxY && block.MinY < b.MaxY, t.Text));
    }

    // Every gap lies within what the sheet's heading allows, in the file's units: 1/32 in = 0.031, 0.5 mm = 0.020, 1/16 in = 0.063.
    [Fact]
    public void Every_gap_is_within_what_the_sheet_says()
    {
        var units = DisplayUnits.For(UnitSystem.Imperial);
        var model = s_block.Value;
        var cuts = SawSetup.List(model).SelectMany(s => s.Cuts).Where(c => c.Gap > 0).ToList();
        Assert.All(cuts, c => Assert.InRange(
            c.Gap, 0, c.IsFree ? 0.0254 / 16 : c.Piece.Role is Role.Post or Role.Brace ? 0.0005 : 0.0254 / 32));
        Assert.All(cuts.Where(c => c.IsFree), c => Assert.EndsWith(" in, free", SawSetup.GapText(c, units), StringComparison.Ordinal));
        Assert.Equal("0.050 in", SawSetup.GapText(cuts[0] with { Gap = 0.00126, IsFree = false }, units));
        Assert.Equal("1.26 mm", SawSetup.GapText(cuts[0] with { Gap = 0.00126, IsFree = false }, DisplayUnits.For(UnitSystem.Metric)));
        var page = string.Join(' ', SawSheet.Draw(model, units).Pages[0].Content.Entities.OfType<SheetText>().Select(t => t.Text));
        Assert.Contains("0.031 in that shop.joint_gap allows", page, StringComparison.Ordinal);
        Assert.Contains("0.020 in under posts", page, StringComparison.Ordinal);
        Assert.Contains("0.063 in at most", page, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", page.Replace("100 mm", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    // What the saw's own steps do not show is set by a gauge, and the sheet says so; a step of 0.5° shows 7.5 and not 7.3.
    [Fact]
    public void A_setting_between_the_steps_is_told()
    {
        Assert.True(SawSetup.IsStep(Bridges.Radians(7.5), Bridges.Radians(0.5)));
        Assert.False(SawSetup.IsStep(Bridges.Radians(7.3), Bridges.Radians(0.5)));
        var model = Bridges.Build("name: Steep (invented)\nunits: imperial\nsite: { span: 15 ft, rise: 4 ft 6 in }");
        var units = DisplayUnits.For(UnitSystem.Metric);
        var step = model.Parameters.Shop.Saw.Step;
        var between = SawSetup.List(model).Count(s => s.Lead.Way == CutWay.Saw
            && !(SawSetup.IsStep(s.Lead.Mitre, step) && SawSetup.IsStep(s.Lead.Bevel, step)));
        var texts = SawSheet.Draw(model, units).Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>()
            .Count(t => t.Text.Contains("by an angle gauge or a protractor", StringComparison.Ordinal));
        Assert.Equal(between, texts);
        Assert.True(between > 0);
        var rows = SawSheet.Csv(model, units).Split('\n');
        Assert.Contains("Gap (mm),Free,Set by,Hold", rows[0], StringComparison.Ordinal);
        Assert.Contains(rows, r => r.Contains(",angle gauge,", StringComparison.Ordinal));
        Assert.Contains(rows, r => r.Contains(",free,", StringComparison.Ordinal));
    }

    // Off the miter saw: the line across the stick as it is cut, a guide along it a base's width off, and the clamp square from it.
    [Fact]
    public void A_cut_off_the_miter_saw_has_a_picture()
    {
        var model = Bridges.Build(Bridges.Garden);
        var cut = SawSetup.List(model).SelectMany(s => s.Cuts).Single(c => c.Way == CutWay.CircularSaw);
        var picture = BenchPicture.Draw(cut, model.Parameters.Shop, DisplayUnits.For(UnitSystem.Imperial));
        var line = Assert.Single(picture.OfType<SheetLine>(), l => l.Layer == PageLayers.Accent);
        var (dx, dy) = (line.To.X - line.From.X, line.To.Y - line.From.Y);
        Assert.Equal(Math.Tan(Bridges.Radians(70)), Math.Abs(dx / dy), 1e-9);
        var guide = picture.OfType<SheetPolyline>().Single(p => p.Layer == PageLayers.Pocket).Vertices;
        double Off(double x, double y) => (((x - line.From.X) * dy) - ((y - line.From.Y) * dx))
            / Math.Sqrt((dx * dx) + (dy * dy)) / SawPlan.Scale;
        Assert.Equal(0.115, Math.Abs(Off(guide[0].X, guide[0].Y)), 1e-9);
        Assert.Equal(0.115, Math.Abs(Off(guide[1].X, guide[1].Y)), 1e-9);
        var clamps = picture.OfType<SheetCircle>().ToList();
        Assert.Equal(3, clamps.Count);
        Assert.Equal(7 * 0.0254, clamps.Max(c => Math.Abs(Off(c.Center.X, c.Center.Y))), 1e-9);
        Assert.Contains(picture, e => e is SheetText { Text: "offcut" });
    }

    // 60° of bevel is beyond the saw: nobody sets fence or stop for it.
    [Fact]
    public void A_cut_beyond_the_saw_has_no_fence_and_no_stop()
    {
        var model = Bridges.Build(Bridges.Garden + "\nshop: { saw: { mitre_limit: 5 deg, bevel_limit: 2 deg }, tools: [circular-saw] }");
        var far = SawSetup.List(model).SelectMany(s => s.Cuts).Where(c => !c.InReach).ToList();
        Assert.NotEmpty(far);
        Assert.All(far, c => Assert.False(c.HasStop));
        var rows = SawSheet.Csv(model, DisplayUnits.For(UnitSystem.Imperial)).Split('\n')
            .Where(r => r.Contains("circular saw", StringComparison.Ordinal)).ToList();
        Assert.Equal(far.Count, rows.Count);
        Assert.All(rows, r => Assert.Matches(",(first|second),,,,,,,,,", r));
    }

    /// <summary>
    /// Blade: normal (cos b·cos m, cos b·sin m, sin b) in the saw's axes, m with the wedge's turn of the work taken back, through
    /// the point on the fence edge of the work's upper side where the stop's length begins.
    /// </summary>
    private static Plane Remade(SawCut cut)
    {
        var saw = cut.Position.Saw;
        var blade = Normal(cut.Mitre + cut.Wedge, cut.Bevel);
        var shape = cut.Piece.Shape;

        // The saw's axes of the laid piece are half turns, so its box keeps its size: fence side at +Y, upper side at +Z. The stop touches
        // the other end at the fence.
        var other = cut.End == PieceEnd.Near ? shape.Far : shape.Near;
        double[] along = [.. Corners(shape).Where(c => saw.Y.Y * c.Y > 0).Select(
            c => saw.X.Dot(new Vector3d(other.XAt(c.Y, c.Z), c.Y, c.Z)))];
        var stop = cut.PieceAtRight ? along.Max() : along.Min();
        var x = stop - ((cut.PieceAtRight ? 1 : -1) * (cut.Stop ?? 0));
        var point = new Vector3d(x, shape.Width / 2, shape.Thickness / 2);
        return Plane.Through(saw.ToWorld(point), saw.DirectionToWorld(blade));
    }

    private static IEnumerable<(double Y, double Z)> Corners(CutStock shape) =>
        from y in new[] { -shape.Width / 2, shape.Width / 2 }
        from z in new[] { -shape.Thickness / 2, shape.Thickness / 2 }
        select (y, z);

    private static bool Near((double A, double B) a, (double A, double B) b) =>
        Math.Abs(a.A - b.A) < Exact && Math.Abs(a.B - b.B) < Exact;

    private static Vector3d Normal(double mitre, double bevel) => new(
        Math.Cos(bevel) * Math.Cos(mitre), Math.Cos(bevel) * Math.Sin(mitre), Math.Sin(bevel));

    private static ShopParameters Shop { get; } = Bridges.Read(Bridges.Garden).Shop;

    private static Piece Stick(Vector3d near, Vector3d far, double length)
    {
        return Stick(new CutStock(
            0.089, 0.038, Plane.Through(Vector3d.Zero, -near), Plane.Through(new Vector3d(length, 0, 0), far)));
    }

    private static Piece Stick(CutStock shape)
    {
        return SamplePieces.Post with
        {
            Shape = shape,
            Near = SawReach.Measure(shape, near: true, Shop),
            Far = SawReach.Measure(shape, near: false, Shop),
        };
    }
}
