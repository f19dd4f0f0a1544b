using System.Text.RegularExpressions;
using BridgeForm.Output.Router;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Router;

public sealed partial class RouterSheetTests
{
    private const double Inch = 0.0254;

    // The file holds six decimals of an inch.
    private const double Written = 2e-6;

    public static TheoryData<string> Names => RouterFiles.Names;

    [Fact]
    public void There_are_files_of_all_kinds()
    {
        Assert.Contains("garden/router/B2", RouterFiles.All.Keys);
        Assert.Contains(RouterFiles.All.Keys, n => n.StartsWith("garden/router/P", StringComparison.Ordinal));
        Assert.Contains(RouterFiles.All.Keys, n => n.StartsWith("garden/boards/", StringComparison.Ordinal));
        Assert.Contains(RouterFiles.All.Keys, n => n.StartsWith("metric/router/K", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_but_closed_polylines_circles_and_engraving_on_layers_of_the_contract(string name)
    {
        foreach (var entity in RouterFiles.File(name).Entities)
        {
            Assert.Matches(Layer(), entity.First(8));
            if (entity.Type is "CIRCLE")
            {
                Assert.StartsWith("HOLE-", entity.First(8), StringComparison.Ordinal);
                Assert.True(entity.Number(40) > 0);
                continue;
            }

            Assert.Equal("LWPOLYLINE", entity.Type);
            Assert.Equal(entity.First(8) is "ENGRAVE" ? "0" : "1", entity.First(70));
            var corners = Outlines.Corners(entity);
            if (entity.First(8) is "ENGRAVE")
            {
                Assert.True(corners.Count > 1);
                continue;
            }

            Assert.All(corners.Zip(corners.Skip(1).Append(corners[0])), p => Assert.True(Length(p.First, p.Second) > 0.01, "tiny edge"));
            Assert.True(Outlines.Area(entity) > 0, "counter-clockwise");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_is_drawn_twice(string name)
    {
        var seen = RouterFiles.File(name).Entities
            .Select(e => e.Type + string.Join(' ', e.Tags.Where(t => t.Code is not (5 or 330)).Select(t => $"{t.Code}={t.Value}")));
        Assert.Equal(seen.Distinct().Count(), RouterFiles.File(name).Entities.Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Everything_lies_in_the_extents_and_the_wood_begins_at_the_origin(string name)
    {
        var file = RouterFiles.File(name);
        double[] low = [.. file.Header("$EXTMIN").Take(2).Select(v => double.Parse(v, System.Globalization.CultureInfo.InvariantCulture))];
        double[] high = [.. file.Header("$EXTMAX").Take(2).Select(v => double.Parse(v, System.Globalization.CultureInfo.InvariantCulture))];
        var corners = file.Entities.Where(e => e.Type is "LWPOLYLINE").SelectMany(Outlines.Corners).ToList();
        Assert.All(
            corners,
            c => Assert.True(c.X >= low[0] - Written && c.Y >= low[1] - Written && c.X <= high[0] + Written && c.Y <= high[1] + Written));
        var wood = file.Entities.Where(e => e.First(8) is "PIECE" or "BLANK").SelectMany(Outlines.Corners).ToList();
        Assert.Equal(0, wood.Min(c => c.Y), Written);
        Assert.True(name.Contains("boards", StringComparison.Ordinal) || Math.Abs(wood.Min(c => c.X)) < Written);
    }

    // For a piece whose faces all stand square to the face that is up, area × thickness is the volume of its solid.
    [Fact]
    public void Area_times_thickness_is_the_volume_of_prisms()
    {
        var seen = 0;
        foreach (
            var piece in RouterFiles.Garden.Pieces.Where(p => p.NotRoutable.IsEmpty && p.Shape.Channels.IsEmpty && p.Shape.Holes.IsEmpty))
        {
            var outline = RouterFiles.File("garden/router/" + piece.Mark).Entities.Single(e => e.First(8) is "PIECE");
            var area = Outlines.Area(outline) * Inch * Inch;
            Assert.Equal(piece.Volume, area * piece.Shape.Thickness, piece.Volume * 1e-6);
            seen++;
        }

        Assert.True(seen >= 2);
    }

    [Fact]
    public void Notches_take_the_channel_and_the_reliefs_of_their_corners()
    {
        var piece = RouterFiles.Notched;
        var area = Outlines.Area(RouterFiles.File("notched").Entities.Single(e => e.First(8) is "PIECE")) * Inch * Inch;
        var wood = StockSolid.Build(piece.Shape).OrNull!.Volume / piece.Shape.Thickness;
        var bit = RouterFiles.Garden.Parameters.Shop.RouterBit;
        var reliefs = 2 * piece.Shape.Channels.Length * CornerRelief.AreaBeyond(bit);
        Assert.Equal(wood - reliefs, area, wood * 1e-6);
        Assert.Equal(wood, area, 4 * piece.Shape.Channels.Length * bit * bit);
    }

    // A square part as wide and deep as the channel must go in: no corner of it may meet wood.
    [Fact]
    public void Reliefs_pass_through_the_corners_and_a_bit_fits_into_them()
    {
        var piece = RouterFiles.Notched;
        var bit = RouterFiles.Garden.Parameters.Shop.RouterBit;
        var corners = Outlines.Corners(RouterFiles.File("notched").Entities.Single(e => e.First(8) is "PIECE"));
        var arcs = corners.Zip(corners.Skip(1).Append(corners[0])).Where(p => p.First.Bulge is not 0).ToList();
        Assert.Equal(2 * piece.Shape.Channels.Length, arcs.Count);
        foreach (var (from, to) in arcs)
        {
            Assert.Equal(-1, from.Bulge, 1e-9);
            var (cx, cy, radius) = ((from.X + to.X) / 2, (from.Y + to.Y) / 2, Length(from, to) / 2);
            Assert.True(radius * Inch > bit / 2);
            var nearest = piece.Shape.Channels
                .SelectMany(c => new[] { c.Center - (c.Width / 2), c.Center + (c.Width / 2) }.Select(x => (X: x / Inch, Y: c.Depth / Inch)))
                .Min(corner => Math.Abs(Math.Sqrt(((corner.X - cx) * (corner.X - cx)) + ((corner.Y - cy) * (corner.Y - cy))) - radius));
            Assert.Equal(0, nearest, Written);
        }
    }

    [Fact]
    public void Base_with_keeper_holes_shows_its_channels_as_pockets_past_both_edges()
    {
        var piece = RouterFiles.Garden.Pieces.Single(p => p.Mark is "B2");
        var file = RouterFiles.File("garden/router/B2");
        var radius = RouterFiles.Garden.Parameters.Shop.RouterBit / 2 / Inch;
        var pockets = file.Entities.Where(e => e.First(8) is "CLEAR-0.625-IN-DEEP").ToList();
        Assert.Equal(piece.Shape.Channels.Length, pockets.Count);
        foreach (var (pocket, channel) in pockets.Zip(piece.Shape.Channels))
        {
            var corners = Outlines.Corners(pocket);
            Assert.Equal((channel.Center - (channel.Width / 2)) / Inch, corners.Min(c => c.X), Written);
            Assert.Equal((channel.Center + (channel.Width / 2)) / Inch, corners.Max(c => c.X), Written);
            Assert.Equal(-radius, corners.Min(c => c.Y), Written);
            Assert.Equal((piece.Shape.Thickness / Inch) + radius, corners.Max(c => c.Y), Written);
        }

        Assert.Equal(4, file.Entities.Count(e => e.Type is "CIRCLE" && e.First(8) is "HOLE-2.000-IN-DEEP"));
    }

    [Fact]
    public void Pieces_with_bevels_have_no_file() =>
        Assert.All(
            RouterFiles.Garden.Pieces.Where(p => Math.Abs(p.Near.Bevel) > 0.001 || Math.Abs(p.Far.Bevel) > 0.001),
            p => Assert.Null(RouterSheet.Draw(p, RouterFiles.Garden.Parameters.Shop, UnitSystem.Imperial)));

    [Theory]
    [MemberData(nameof(Names))]
    public void Depths_in_the_names_of_layers_are_in_the_files_unit(string name) => Assert.DoesNotContain(
        RouterFiles.File(name).Records.Where(r => r.Type is "LAYER").Select(r => r.First(2)),
        layer => layer.Contains(name.StartsWith("metric", StringComparison.Ordinal) ? "-IN" : "-MM", StringComparison.Ordinal));

    // Slots lie past the piece's ends and run out of both edges; what is cleared for notches is what the stick has more than the piece.
    [Fact]
    public void Notches_and_piece_together_are_the_stick_and_ends_are_parted_by_slots()
    {
        var piece = RouterFiles.Notched;
        var bit = RouterFiles.Garden.Parameters.Shop.RouterBit;
        var entities = RouterFiles.File("notched").Entities.ToList();
        var cleared = entities.Where(e => e.First(8) is "CLEAR-THROUGH").ToList();
        Assert.Equal(2 + piece.Shape.Channels.Length, cleared.Count);
        var (stick, past) = (piece.BlankLength * piece.Shape.Width, piece.Shape.Channels.Sum(c => c.Width) * bit / 2);
        var notches = cleared.Skip(2).Sum(Outlines.Area) * Inch * Inch;
        Assert.Equal(stick + past, notches + (Outlines.Area(entities.Single(e => e.First(8) is "PIECE")) * Inch * Inch), stick * 1e-6);

        // A square end: 1.05 bits wide, and half a bit past either edge.
        Assert.All(
            cleared.Take(2),
            slot => Assert.Equal(1.05 * bit * (piece.Shape.Width + bit), Outlines.Area(slot) * Inch * Inch, stick * 1e-6));
    }

    // A cut at angle μ from square: the strip is bit × 1.05 wide and its inner side lies on the cut over the whole width of the wood.
    [Fact]
    public void The_slot_of_a_mitre_lies_along_it()
    {
        var piece = RouterFiles.Garden.Pieces.First(p => p.NotRoutable.IsEmpty && p.Role == Role.Brace);
        var entities = RouterFiles.File("garden/router/" + piece.Mark).Entities.ToList();
        var wood = Outlines.Corners(entities.Single(e => e.First(8) is "PIECE"));
        var slot = Outlines.Corners(entities.First(e => e.First(8) is "CLEAR-THROUGH"));
        var bit = RouterFiles.Garden.Parameters.Shop.RouterBit / Inch;
        var (a, b) = (slot[0], slot[3]);
        Assert.Equal(Math.Abs(Math.Tan(piece.Near.Mitre)), Math.Abs((a.X - b.X) / (a.Y - b.Y)), 1e-5);
        Assert.Equal(1.05 * bit, Length(slot[0], slot[1]), Written);
        Assert.True(Math.Min(a.Y, b.Y) <= -bit / 2 * Math.Cos(piece.Near.Mitre) && Math.Max(a.Y, b.Y) > wood.Max(c => c.Y));
        Assert.Contains(wood, c => Math.Abs(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X))) < 10 * Written);
    }

    [Fact]
    public void Files_say_at_their_head_what_wood_and_bit_they_are_for()
    {
        var remarks = RouterFiles.File("garden/router/B2").Tags.TakeWhile(t => t.Code is 999).Select(t => t.Value).ToList();
        Assert.Contains(remarks, r => r.StartsWith("B2 base, ", StringComparison.Ordinal));
        Assert.Contains("Narrow face up, 5.5 in thick as it lies", remarks);
        Assert.Contains("Bit 0.25 in", remarks);
        Assert.Contains(remarks, r => r.StartsWith("BLANK: ", StringComparison.Ordinal) && r.EndsWith("not cut", StringComparison.Ordinal));
        Assert.Contains(Caution.Text, remarks);
        Assert.DoesNotContain(RouterFiles.File("garden/router/B2").Entities, e => e.First(8) is "CLEAR-THROUGH" or "PIECE");
    }

    // Read as strokes on a grid: the mark stands whole on its piece, clear of everything cut, and no two letters look alike.
    [Fact]
    public void Marks_are_engraved_only_where_asked_for_and_clear_of_cuts()
    {
        Assert.All(
            RouterFiles.All.Keys.Where(n => n.StartsWith("garden", StringComparison.Ordinal)),
            n => Assert.DoesNotContain(RouterFiles.File(n).Entities, e => e.First(8) is "ENGRAVE"));
        var engraved = RouterFiles.All.Keys.Where(n => n.StartsWith("metric/router", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(engraved);
        Assert.All(engraved, n =>
        {
            var entities = RouterFiles.File(n).Entities.ToList();
            var corners = entities.Where(e => e.First(8) is "ENGRAVE").SelectMany(Outlines.Corners).ToList();
            Assert.NotEmpty(corners);
            var wood = Outlines.Corners(entities.Single(e => e.First(8) is "PIECE" or "BLANK"));
            Assert.All(corners, c => Assert.True(Outlines.IsDeepInside(wood, c, 3), n));
            Assert.All(
                entities.Where(e => e.First(8).StartsWith("CLEAR-", StringComparison.Ordinal)).Select(Outlines.Corners),
                cut => Assert.All(corners, c => Assert.False(Outlines.IsDeepInside(cut, c, 0), n)));
        });
    }

    [Fact]
    public void Every_mark_can_be_engraved_and_each_letter_has_strokes_of_its_own()
    {
        var letters = RoleTable.All.SelectMany(r => r.Letter).Concat("0123456789LR").Distinct().ToList();
        var seen = letters.Select(l => string.Join('|', BridgeForm.Output.Router.StrokeLetters
            .Draw(l.ToString(), new BridgeForm.Output.Drawing.SheetPoint(0, 0), 6)
            .Select(s => string.Join(' ', s.Select(v => $"{v.X},{v.Y}"))))).ToList();
        Assert.Equal(letters.Count, seen.Distinct().Count());
        Assert.Equal(16, BridgeForm.Output.Router.StrokeLetters.Width("P1L", 6));
    }

    [Fact]
    public void Pieces_that_do_not_fit_and_bits_too_short_are_told()
    {
        var piece = RouterFiles.Notched;
        RouterParameters Bed(double length, double width, double height) => new()
        {
            Bits = [new RouterBit(0.006)],
            BedLength = length,
            BedWidth = width,
            Height = height,
        };
        var (length, width, thick) = (piece.BlankLength, piece.Shape.Width, piece.Shape.Thickness);
        Assert.Empty(Routing.Obstacles(piece.Shape, Bed(length + 0.001, width + 0.001, thick + 0.001)));
        Assert.Empty(Routing.Obstacles(piece.Shape, Bed(width + 0.001, length + 0.001, thick + 0.001)));
        Assert.Equal("larger than the router's bed", Assert.Single(Routing.Obstacles(piece.Shape, Bed(length - 0.001, 1, 1))));
        Assert.Equal("thicker than goes under the router", Assert.Single(Routing.Obstacles(piece.Shape, Bed(9, 9, thick - 0.001))));
        RouterParameters Bits(params RouterBit[] bits) => new() { Bits = [.. bits] };
        Assert.Equal(
            "no bit reaches deep enough", Assert.Single(Routing.Obstacles(piece.Shape, Bits(new RouterBit(0.006, 0.005)))));
        var chosen = Routing.Setup(piece.Shape, Bits(new RouterBit(0.012, thick / 2), new(0.006, thick), new(0.003, thick)));
        Assert.Empty(chosen.Obstacles);
        Assert.Equal(0.006, chosen.Bit.Diameter);
    }

    private static double Length((double X, double Y, double Bulge) a, (double X, double Y, double Bulge) b) =>
        Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    [GeneratedRegex(
        @"^(PIECE|BLANK|CLEAR-THROUGH|HOLE-THROUGH|ENGRAVE|(CLEAR|HOLE)-[0-9]+\.([0-9]{3}-IN|[0-9]-MM)-DEEP"
            + @"|LEAVE-(0\.118-IN|3\.0-MM)-HIGH)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Layer();
}
