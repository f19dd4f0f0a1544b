using System.Text.RegularExpressions;
using BridgeForm.Output.Router;
using BridgeForm.Pieces;
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
    public void Nothing_but_closed_polylines_and_circles_on_layers_of_the_contract(string name)
    {
        foreach (var entity in RouterFiles.File(name).Entities)
        {
            Assert.Matches(Layer(), entity.First(8));
            if (entity.Type is "CIRCLE")
            {
                Assert.StartsWith("DRILL-", entity.First(8), StringComparison.Ordinal);
                Assert.True(entity.Number(40) > 0);
                continue;
            }

            Assert.Equal("LWPOLYLINE", entity.Type);
            Assert.Equal("1", entity.First(70));
            var corners = Outlines.Corners(entity);
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
        var wood = file.Entities.Where(e => e.First(8) is "OUTLINE").SelectMany(Outlines.Corners).ToList();
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
            var area = Outlines.Area(RouterFiles.File("garden/router/" + piece.Mark).Entities.Single()) * Inch * Inch;
            Assert.Equal(piece.Volume, area * piece.Shape.Thickness, piece.Volume * 1e-6);
            seen++;
        }

        Assert.True(seen >= 2);
    }

    [Fact]
    public void Notches_take_the_channel_and_the_reliefs_of_their_corners()
    {
        var piece = RouterFiles.Notched;
        var area = Outlines.Area(RouterFiles.File("notched").Entities.Single()) * Inch * Inch;
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
        var corners = Outlines.Corners(RouterFiles.File("notched").Entities.Single());
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
        var pockets = file.Entities.Where(e => e.First(8) is "CHANNEL-15.9MM").ToList();
        Assert.Equal(piece.Shape.Channels.Length, pockets.Count);
        foreach (var (pocket, channel) in pockets.Zip(piece.Shape.Channels))
        {
            var corners = Outlines.Corners(pocket);
            Assert.Equal((channel.Center - (channel.Width / 2)) / Inch, corners.Min(c => c.X), Written);
            Assert.Equal((channel.Center + (channel.Width / 2)) / Inch, corners.Max(c => c.X), Written);
            Assert.Equal(-radius, corners.Min(c => c.Y), Written);
            Assert.Equal((piece.Shape.Thickness / Inch) + radius, corners.Max(c => c.Y), Written);
        }

        Assert.Equal(4, file.Entities.Count(e => e.Type is "CIRCLE" && e.First(8) is "DRILL-50.8MM"));
    }

    [Fact]
    public void Pieces_with_bevels_have_no_file() =>
        Assert.All(
            RouterFiles.Garden.Pieces.Where(p => Math.Abs(p.Near.Bevel) > 0.001 || Math.Abs(p.Far.Bevel) > 0.001),
            p => Assert.Null(RouterSheet.Draw(p, RouterFiles.Garden.Parameters.Shop)));

    private static double Length((double X, double Y, double Bulge) a, (double X, double Y, double Bulge) b) =>
        Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    [GeneratedRegex(
        @"^(OUTLINE|CHANNEL-[0-9]+\.[0-9]MM|DRILL-THROUGH|DRILL-[0-9]+\.[0-9]MM|TAB-[0-9]+\.[0-9]MM)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Layer();
}
