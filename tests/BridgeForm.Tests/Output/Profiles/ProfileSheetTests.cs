using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Samples;
using CsCheck;

namespace BridgeForm.Tests.Output.Profiles;

public sealed class ProfileSheetTests
{
    /// <summary>Metres and square metres: far above round-off, far below any tool.</summary>
    private const double Close = 1e-9;

    public static TheoryData<string> Marks => [.. All.Keys];

    internal static IReadOnlyDictionary<string, Piece> All { get; } = new[]
    {
        SamplePieces.Post, SamplePieces.Rail, SamplePieces.Board, SamplePieces.Base, SamplePieces.FlatBase,
        SamplePieces.BaseWithFloor(0.1) with { Mark = "B3" },
    }.ToDictionary(p => p.Mark, StringComparer.Ordinal);

    [Theory]
    [InlineData("P1L")]
    [InlineData("B1")]
    public void Outline_of_a_piece_with_square_sides_encloses_its_volume(string mark)
    {
        var piece = All[mark];
        var outline = Polylines(mark, ProfileLayers.Outline)[0];
        Assert.Equal(piece.Volume / piece.Shape.Thickness, Area(outline), Close);
    }

    [Theory]
    [MemberData(nameof(Marks))]
    public void Outline_begins_at_the_origin_and_is_as_long_as_the_wide_face(string mark)
    {
        var outline = Polylines(mark, ProfileLayers.Outline)[0];
        var top =
            All[mark].Solid.Faces.Single(f => f.Plane.Normal.Z > 0.999999).Loops[0].Select(v => All[mark].Solid.Vertices[v].X).ToList();
        Assert.True(outline.Closed);
        Assert.Equal(0, outline.Vertices.Min(v => v.X), Close);
        Assert.Equal(0, outline.Vertices.Min(v => v.Y), Close);
        Assert.Equal(top.Max() - top.Min(), outline.Vertices.Max(v => v.X), Close);
        Assert.True(Area(outline) > 0);
    }

    [Fact]
    public void Outline_of_a_stick_with_any_ends_is_its_upper_section()
    {
        // The section at height z is V / T + z W (d1 - d0), with d = -tan(edge line) the shift of an end along X for each Z.
        var angle = Gen.Double[-0.6, 0.6];
        Gen.Select(angle, angle, angle, angle).Sample((mitre0, bevel0, mitre1, bevel1) =>
        {
            var piece = SamplePieces.Stick("P9", Role.Post, "treated", 1, mitre0, bevel0, mitre1, bevel1);
            var outline = ProfileSheet.Draw(piece, SampleUnits.Metric).Entities.OfType<SheetPolyline>().Single(IsOutline);
            var tilt = Math.Tan(piece.Near.Edge) - Math.Tan(piece.Far.Edge);
            var expected = (piece.Volume / SamplePieces.Thin) + (SamplePieces.Thin / 2 * SamplePieces.Wide * tilt);
            return Math.Abs(Area(outline) - expected) < Close;
        });
    }

    private static bool IsOutline(SheetPolyline line) => string.Equals(line.Layer, ProfileLayers.Outline, StringComparison.Ordinal);

    [Fact]
    public void Foot_mitred_by_eight_degrees_leaves_the_high_corner_at_the_origin()
    {
        var outline = Polylines("P1L", ProfileLayers.Outline)[0];
        var low = outline.Vertices.Where(v => v.Y < 0.001).Min(v => v.X);
        Assert.Equal(SamplePieces.Wide * Math.Tan(SamplePieces.Radians(8)), low, Close);
    }

    [Fact]
    public void Parallel_bevels_are_two_lines_on_the_far_side_with_their_angle()
    {
        var lines = Entities<SheetLine>("R1", ProfileLayers.Bevel);
        var texts = Entities<SheetText>("R1", ProfileLayers.Bevel).Select(t => t.Text).ToList();
        var shift = SamplePieces.Thin * Math.Tan(SamplePieces.Radians(4));
        Assert.Equal([shift, (33 * SamplePieces.Inch)], lines.Select(l => l.From.X).Order(), (a, b) => Math.Abs(a - b) < 1e-8);
        Assert.All(lines, l => Assert.Equal(l.From.X, l.To.X, Close));
        Assert.Equal(["Bevel 4.0°", "Bevel 4.0°"], texts);
    }

    [Fact]
    public void Square_ends_have_no_bevel() => Assert.Empty(Entities<SheetEntity>("P1L", ProfileLayers.Bevel));

    [Fact]
    public void Notches_of_a_base_are_in_the_outline_and_drawn_again_in_the_narrow_face()
    {
        var outlines = Polylines("B1", ProfileLayers.Outline);
        Assert.Equal(12, outlines[0].Vertices.Length);
        Assert.Equal(2, outlines.Count);
        Assert.Equal(56 * SamplePieces.Inch * SamplePieces.Wide, Area(outlines[1]), Close);
        Assert.True(outlines[1].Vertices.Max(v => v.Y) < 0);

        var pockets = Polylines("B1", ProfileLayers.Channel);
        Assert.Equal(2, pockets.Count);
        Assert.All(pockets, p => Assert.Equal(0.875 * SamplePieces.Inch * SamplePieces.Wide, Area(p), Close));
        Assert.Equal(6 * SamplePieces.Inch, pockets[0].Vertices.Average(v => v.X), Close);
        Assert.Equal(
            2, Entities<SheetText>("B1", ProfileLayers.Channel).Count(t => t.Text.Contains("0.625 in deep", StringComparison.Ordinal)));
    }

    [Fact]
    public void Centre_line_and_knife_lines_stand_at_half_the_width()
    {
        var x = Entities<SheetLine>("B1", ProfileLayers.Mark).Select(l => l.From.X / SamplePieces.Inch).Order().ToList();
        Assert.Equal([5.5625, 6, 6.4375, 49.5625, 50, 50.4375], x, (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void Keeper_holes_are_circles_in_the_narrow_face()
    {
        var circles = Entities<SheetCircle>("B1", ProfileLayers.Drill);
        var face = Polylines("B1", ProfileLayers.Outline)[1];
        Assert.Equal(4, circles.Count);
        Assert.All(circles, c => Assert.Equal(face.Vertices.Average(v => v.Y), c.Center.Y, Close));
        Assert.All(circles, c => Assert.Equal(SamplePieces.Inch / 8, c.Radius, Close));
        Assert.Equal(
            4,
            Entities<SheetText>("B1", ProfileLayers.Drill).Count(
                t => t.Text.StartsWith("⌀ 0.25 in 2 in deep, at ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Channel_in_the_wide_face_is_a_pocket_of_the_first_view()
    {
        var pocket = Assert.Single(Polylines("B2", ProfileLayers.Channel));
        Assert.Equal(1 * SamplePieces.Inch * SamplePieces.Wide, Area(pocket), Close);
        Assert.Single(Polylines("B2", ProfileLayers.Outline));
        var circle = Assert.Single(Entities<SheetCircle>("B2", ProfileLayers.Drill));
        Assert.Equal((SamplePieces.Wide / 2) + (0.5 * SamplePieces.Inch), circle.Center.Y, Close);
    }

    // A hole is moved towards the far end, a millimetre at a time: the last text that stands before the end's witness line
    // has as much room before that as it stands off its own.
    [Fact]
    public void A_distance_stands_before_the_far_end_as_long_as_there_is_room()
    {
        var stick = SamplePieces.Stick("P9", Role.Post, "treated", 1, 0, 0, 0, 0);
        double room = 0, off = 0;
        for (var x = 0.7; x < 0.995; x += 0.001)
        {
            var shape = stick.Shape with { Holes = [new Hole(StockFace.PlusZ, x, 0, 0.006, null)] };
            var text = ProfileSheet.Draw(stick with { Shape = shape, Solid = StockSolid.Build(shape).OrNull! }, SampleUnits.Metric)
                .Entities.OfType<SheetText>().Single(t => t.Layer == ProfileLayers.Dim);
            if (text.At.X < 1)
            {
                (room, off) = (1 - (text.At.X + text.Width), text.At.X - x);
            }
        }

        Assert.InRange(off, 0.001, 0.01);
        Assert.InRange(room, off, off + 0.001);
    }

    /// <summary>By hand: the upper edge of 40 in, 3.5 in wide, is shorter by 3.5 · tan 8° = 0.4919 in.</summary>
    [Fact]
    public void Overall_length_width_and_the_shorter_edge_are_dimensioned() =>
        Assert.Equal(["39.5081 in", "40 in", "3.5 in"], Entities<SheetDimension>("P1L", ProfileLayers.Dim).Select(d => d.Text));

    [Fact]
    public void Sloped_floor_shows_its_far_edge()
    {
        var lines = Entities<SheetLine>("B3", ProfileLayers.Bevel);
        var depth = (0.625 * SamplePieces.Inch) - (0.1 * SamplePieces.Wide / 2);
        Assert.Equal(2, lines.Count);
        Assert.All(lines, l => Assert.Equal(depth, l.From.Y, Close));
    }

    [Fact]
    public void Tapered_packer_shows_its_sloping_face_and_says_the_angle()
    {
        // 30 mm high at one edge and 10 mm at the other, over 80 mm: atan(20 / 80) = 14.04 degrees.
        (double, double)[] profile = [(-0.04, -0.015), (0.04, -0.015), (0.04, -0.005), (-0.04, 0.015)];
        var solid = Prism.AlongX(profile, 0.5);
        var rip = Plane.Through(new Vector3d(0, 0, 0.005), new Vector3d(0, 20, 80));
        var shape = new CutStock(0.08, 0.03, SamplePieces.Square(0, -1), SamplePieces.Square(0.5, 1)) { Rips = [rip] };
        var sheet = ProfileSheet.Draw(SamplePieces.Post with { Solid = solid, Shape = shape, BlankLength = 0.5 }, SampleUnits.Metric);
        Assert.Equal(0.5 * 0.08, Area(sheet.Entities.OfType<SheetPolyline>().Single(IsOutline)), Close);
        Assert.Contains(sheet.Entities.OfType<SheetText>(), t => t.Text.StartsWith("Ripped to a taper of 14.0°", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Marks))]
    public void Nothing_but_the_far_face_reaches_left_of_the_near_end(string mark)
    {
        var sheet = ProfileSheet.Draw(All[mark], SampleUnits.Imperial);
        Assert.All(
            sheet.Entities.Where(e => !string.Equals(e.Layer, ProfileLayers.Bevel, StringComparison.Ordinal)),
            e => Assert.True(EntityBox.Of(e).MinX > -Close, e.ToString()));
    }

    [Fact]
    public void Drilled_hole_is_no_outline()
    {
        (double, double)[] outline = [(0, -0.05), (1, -0.05), (1, 0.05), (0, 0.05)];
        (double, double)[] hole = [(0.45, -0.01), (0.55, -0.01), (0.55, 0.01), (0.45, 0.01)];
        var piece = SamplePieces.Post with { Solid = Prism.WithHole(outline, hole, SamplePieces.Thin) };
        var sheet = ProfileSheet.Draw(piece, SampleUnits.Imperial);
        Assert.Single(sheet.Entities.OfType<SheetPolyline>(), IsOutline);
    }

    /// <summary>A base of 56 in: channels at 6 and 50 in, keeper holes 1-1/4 in to either side.</summary>
    [Fact]
    public void Distances_of_channels_and_holes_are_dimensioned_from_the_near_end()
    {
        var texts = Entities<SheetText>("B1", ProfileLayers.Dim).Select(t => t.Text).ToList();
        Assert.Equal(["51.25 in", "50 in", "48.75 in", "7.25 in", "6 in", "4.75 in"], texts);
        var reach = Entities<SheetLine>("B1", ProfileLayers.Dim).Where(l => l.From.X is 0 && l.To.X > 0.05).Select(
            l => l.To.X / SamplePieces.Inch);
        Assert.Equal([51.25, 50, 48.75, 7.25, 6, 4.75], reach, (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void Mitres_are_written_below_their_ends() =>
        Assert.Contains(Entities<SheetText>("P1L", ProfileLayers.Dim), t => string.Equals(t.Text, "Miter 8.0°", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Marks))]
    public void Texts_touch_neither_wood_nor_each_other(string mark)
    {
        var sheet = ProfileSheet.Draw(All[mark], SampleUnits.Imperial);
        var texts = sheet.Entities.OfType<SheetText>().Select(t => EntityBox.Of(t)).ToList();
        var drawn = sheet.Entities.SelectMany(e => e is SheetDimension d ? DimensionLines.Draw(d) : [e])
            .Where(e => e is not SheetText).Select(EntityBox.Of).ToList();
        Assert.All(texts, t => Assert.DoesNotContain(drawn, d => d.Overlaps(t)));
        Assert.All(texts, t => Assert.Single(texts, u => u.Overlaps(t)));
    }

    [Theory]
    [MemberData(nameof(Marks))]
    public void Notes_say_what_the_maker_needs(string mark)
    {
        var notes = string.Join(' ', Entities<SheetText>(mark, ProfileLayers.Text).Select(t => t.Text));
        Assert.Contains(mark, notes, StringComparison.Ordinal);
        Assert.Contains(All[mark].Section, notes, StringComparison.Ordinal);
        Assert.Contains("Units: inches", notes, StringComparison.Ordinal);
        Assert.Contains(Caution.Text, notes, StringComparison.Ordinal);
    }

    private static List<SheetPolyline> Polylines(string mark, string layer) => Entities<SheetPolyline>(mark, layer);

    private static List<T> Entities<T>(string mark, string layer)
        where T : SheetEntity =>
        [
            .. ProfileSheet.Draw(All[mark], SampleUnits.Imperial).Entities.OfType<T>().Where(
                e => string.Equals(e.Layer, layer, StringComparison.Ordinal)),
        ];

    /// <summary>Shoelace formula; positive when counter-clockwise.</summary>
    private static double Area(SheetPolyline p) => p.Vertices
        .Zip(p.Vertices.Skip(1).Append(p.Vertices[0]), (a, b) => ((a.X * b.Y) - (b.X * a.Y)) / 2).Sum();
}
