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
            Assert.Equal(Math.Abs(piece.Cut(cut.End).Mitre), cut.Mitre + cut.Wedge, Exact);
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

    /// <summary>Leans of 8° and 12° make a top cut of 90° − 20° = 70°: 50° on the saw at its limit and a wedge of 20°.</summary>
    [Fact]
    public void Steep_cut_gets_a_wedge()
    {
        var model = Bridges.Build(Bridges.Garden);
        var steep = SawSetup.List(model).SelectMany(s => s.Cuts).Single(c => c.Wedge > 0);
        Assert.Equal(50, Bridges.Degrees(steep.Mitre), Exact);
        Assert.Equal(20, Bridges.Degrees(steep.Wedge), 1e-6);
        Assert.Equal(2, steep.Order);
    }

    // The block's slope at 20°: where the blade crosses it, it is 12 mm less 20 mm · tan 20° = 4.7 mm off the fence. A stop so far up
    // that slope is found again by walking along the fence and square off it; on the other side the slope runs into the fence.
    [Fact]
    public void The_stop_of_a_wedge_stands_on_the_slope_carried_on()
    {
        var model = Bridges.Build(Bridges.Garden);
        var cut = SawSetup.List(model).SelectMany(s => s.Cuts).Single(c => c.Wedge > 0);
        var at = cut.OnWedge!.Value;
        Assert.True(cut.PieceAtRight);
        Assert.Equal(cut.Stop!.Value, at.Along / Math.Cos(cut.Wedge), 1e-12);
        Assert.Equal(0.012 - (0.020 * Math.Tan(Bridges.Radians(20))) + (cut.Stop.Value * Math.Sin(Bridges.Radians(20))), at.Off, 1e-9);
        Assert.Null((cut with { End = cut.End == PieceEnd.Near ? PieceEnd.Far : PieceEnd.Near, Stop = 0.9 }).OnWedge);

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
        var face = stop.Vertices.Take(2).ToList();
        var across = ((face[1].X - face[0].X) * (at.Y - face[0].Y)) - ((face[1].Y - face[0].Y) * (at.X - face[0].X));
        Assert.Equal(0, across, 1e-9);
        Assert.DoesNotContain(
            (plan with { Stop = null }).Draw(), e => e is SheetText t && t.Text.StartsWith("stop", StringComparison.Ordinal));
    }

    private static readonly Lazy<BridgeModel> s_short = new(() => Bridges.Build(Bridges.Garden.Replace(
        "brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in }", "brace: { section: 2x4, lean: 12 deg, foot: 26-1/2 in }",
        StringComparison.Ordinal)));

    // Braces with less than 6 in of short edge, on a block: a blank with two would stand behind the fence beside the blade. Sheet,
    // picture, template, stock plan and cut list all have one stick of exactly the brace's length.
    [Fact]
    public void Short_braces_on_a_block_are_cut_to_length_first()
    {
        var (model, units) = (s_short.Value, DisplayUnits.For(UnitSystem.Imperial));
        var cut = SawSetup.List(model).SelectMany(s => s.Cuts).Single(c => c.Wedge > 0);
        Assert.True(SawPath.IsShort(cut.Piece.Shape, model.Parameters.Shop.Hold));
        Assert.Equal(HoldWay.CutFirst, cut.Hold);
        var exactly = units.Length(cut.Piece.BlankLength);
        Assert.Equal(exactly, units.Length(cut.Stop!.Value));

        var sheet = string.Join(' ', SawSheet.Draw(model, units).Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>()
            .Select(t => t.Text));
        Assert.Contains($"cut square to exactly {exactly} first", sheet, StringComparison.Ordinal);
        Assert.Contains($"from {exactly}, clamp", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("two from a blank", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("two from", SawSheet.Csv(model, units), StringComparison.Ordinal);
        var plan = BlockPlan.Draw(new CutUse([cut.Piece]), cut.End, model.Parameters.Shop, units);
        Assert.Contains($"exactly its length first, {cut.Piece.Mark} {exactly}", plan.Notes[0], StringComparison.Ordinal);
        Assert.Contains("Clamps stand 6 in or more", plan.Notes[0], StringComparison.Ordinal);
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

    // The clamp of the picture: on wood, and as far from the blade's path along the work as is told.
    [Fact]
    public void The_clamp_on_a_block_is_on_wood_and_clear_of_the_blade()
    {
        var plan = new SawPlan(SamplePieces.Post.Shape, Bridges.Radians(70), 0, Bridges.Radians(20), Right: true, 0.003)
        {
            Length = 0.346,
            Hold = HoldParameters.For(UnitSystem.Metric),
        };
        var clamp = plan.Draw().OfType<SheetCircle>().Last().Center;

        // 25 mm in from the edge, the path is 25 · tan 70° = 68.7 mm along; 150 mm clear and half of 50 mm on.
        var meant = plan.On(0.0687 + 0.175, 0.025);
        Assert.Equal(meant.X, clamp.X, 1e-4);
        Assert.Equal(meant.Y, clamp.Y, 1e-4);
        Assert.True(0.0687 + 0.175 + 0.025 < 0.346);
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
        var model = s_short.Value;
        var cuts = SawSetup.List(model).SelectMany(s => s.Cuts).Where(c => c.Gap > 0).ToList();
        Assert.Contains(cuts, c => c.IsFree);
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

        // The saw's axes of the laid piece are half turns, so its box keeps its size: fence side at +Y, upper side at +Z.
        var other = cut.End == PieceEnd.Near ? shape.Far : shape.Near;
        double[] along = [.. Corners(shape).Select(c => saw.X.Dot(new Vector3d(other.XAt(c.Y, c.Z), c.Y, c.Z)))];
        var stop = cut.PieceAtRight ? along.Max() : along.Min();
        var x = stop - ((cut.PieceAtRight ? 1 : -1) * (cut.Stop ?? 0));
        var point = new Vector3d(x, shape.Width / 2, shape.Thickness / 2);
        return Plane.Through(saw.ToWorld(point), saw.DirectionToWorld(blade));
    }

    private static IEnumerable<(double Y, double Z)> Corners(CutStock shape) =>
        from y in new[] { -shape.Width / 2, shape.Width / 2 }
        from z in new[] { -shape.Thickness / 2, shape.Thickness / 2 }
        select (y, z);

    private static Vector3d Normal(double mitre, double bevel) => new(
        Math.Cos(bevel) * Math.Cos(mitre), Math.Cos(bevel) * Math.Sin(mitre), Math.Sin(bevel));

    private static ShopParameters Shop { get; } = Bridges.Read(Bridges.Garden).Shop;

    private static Piece Stick(Vector3d near, Vector3d far, double length)
    {
        var shape = new CutStock(
            0.089, 0.038, Plane.Through(Vector3d.Zero, -near), Plane.Through(new Vector3d(length, 0, 0), far));
        return SamplePieces.Post with
        {
            Shape = shape,
            Near = SawReach.Measure(shape, near: true, Shop),
            Far = SawReach.Measure(shape, near: false, Shop),
        };
    }
}
