using System.Globalization;
using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Templates;

public sealed class GangLayoutTests
{
    private const double Micron = 1e-6;

    private static readonly Lazy<BridgeModel> Inclined = new(() => Bridges.Build(Bridges.Inclined));

    public static TheoryData<string> Names => ["garden", "inclined"];

    /// <summary>Ticks from the stick's zero end against the spacing of the ropes and the walls of the bases' solids.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Sticks_are_true_size_with_centre_and_knife_lines(string name)
    {
        var model = Model(name);
        var sticks = Blocks(model, "Layout stick for ");
        Assert.NotEmpty(sticks);
        foreach (var (block, piece) in sticks)
        {
            var strip = Assert.Single(block.On<SheetPolyline>(PageLayers.Cut)).Vertices;
            Assert.Equal(0, strip.Min(v => v.X), Micron);
            Assert.Equal(model.Parameters.Frames.Base.Length, strip.Max(v => v.X), Micron);
            var (middle, rope, half) =
                (model.Parameters.Frames.Base.Length / 2, model.Parameters.Ropes.Spacing / 2, model.Parameters.Frames.Channel.Width / 2);
            double[] wanted =
                [middle - rope - half, middle - rope + half, middle + rope - half, middle + rope + half];
            Equal(wanted, block.Ticks(PageLayers.Cut));
            Equal([middle - rope, middle + rope], block.Ticks(PageLayers.Layout));

            // The rope is named at its centre line, and at no other.
            Assert.All(
                block.Entities.OfType<SheetText>().Where(t => t.Text.StartsWith("rope ", StringComparison.Ordinal)),
                t => Assert.Contains(
                    block.Ticks(PageLayers.Layout),
                    x => Math.Abs(x - ((PageBox.Of(t).MinX + PageBox.Of(t).MaxX) / 2)) < 0.0005
                        && t.Text.EndsWith(TestPieces.Units.Length(x), StringComparison.Ordinal)));
            Assert.Equal(2, block.Entities.OfType<SheetText>().Count(t => t.Text.StartsWith("rope ", StringComparison.Ordinal)));
            var walls = piece.Shape.Channels.SelectMany(c => new[] { c.Center - (c.Width / 2), c.Center + (c.Width / 2) }).ToList();
            Assert.All(walls, w => Assert.Contains(piece.Solid.Vertices, v => Math.Abs(v.X - w) < Micron));
            Assert.All(walls, w => Assert.Contains(block.Ticks(PageLayers.Cut), t => Math.Abs(t - w) < Micron));
        }
    }

    /// <summary>No base is forgotten, and none has two.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_base_has_one_stick(string name)
    {
        var bases = Model(name).Pieces.Where(p => p.Role == Role.Base).Select(p => p.Mark);
        var named = GangLayout.Draw(Model(name), TestPieces.Units).Where(
            b => b.Title.StartsWith("Layout stick for ", StringComparison.Ordinal))
            .SelectMany(b => b.Title["Layout stick for ".Length..].Split(", "));
        Assert.Equal(bases.Order(StringComparer.Ordinal), named.Order(StringComparer.Ordinal));
    }

    /// <summary>The small plan keeps the proportions, and its figures are the true distances between the lines it shows.</summary>
    [Fact]
    public void Plans_of_level_floors_are_in_proportion()
    {
        var plans = Blocks(TestPieces.Garden, "Gang of ");
        Assert.NotEmpty(plans);
        foreach (var (block, piece) in plans)
        {
            var width = block.On<SheetPolyline>(PageLayers.Cut).First().Vertices.Max(v => v.X);
            var scale = piece.BlankLength / width;
            Equal(
                [.. piece.Shape.Channels.SelectMany(c => new[] { c.Center - (c.Width / 2), c.Center, c.Center + (c.Width / 2) }).Order()],
                [.. block.Ticks(PageLayers.Layout).Select(x => x * scale)]);
            Assert.All(block.Entities.OfType<SheetDimension>(), d =>
                Assert.Equal(TestPieces.Units.Length((d.To.X - d.From.X) * scale), d.Text));
            Assert.Equal(piece.Shape.Channels.Length, block.Entities.OfType<SheetDimension>().Count());
        }
    }

    /// <summary>The section in a channel that the sled is set by: its floor slopes as the channel's, as deep in the middle.</summary>
    [Fact]
    public void Sled_sections_have_the_floors_slope_and_depth()
    {
        var sleds = Blocks(Inclined.Value, "Sloped floors: ");
        Assert.NotEmpty(sleds);
        foreach (var (block, piece) in sleds)
        {
            var channel = piece.Shape.Channels[0];
            var floor = block.On<SheetPolyline>(PageLayers.Cut).Single().Vertices.OrderBy(v => v.Y).Take(2).OrderBy(v => v.X).ToList();
            Assert.Equal(channel.FloorSlope, (floor[1].Y - floor[0].Y) / (floor[1].X - floor[0].X), Micron);
            Assert.Equal(channel.Depth, (floor[0].Y + floor[1].Y) / 2, Micron);
            var degrees = Math.Abs(Bridges.Degrees(Math.Atan(channel.FloorSlope))).ToString("F1", CultureInfo.InvariantCulture);
            Assert.Contains(block.Notes, n => n.Contains($"set it to {degrees}°", StringComparison.Ordinal));
        }
    }

    // Over 89 mm, 0.3° are 0.466 mm from arris to arris and 0.33° are 0.513: of 0.5 that a loaded edge may be out.
    [Theory]
    [InlineData(0.3, true)]
    [InlineData(-0.3, true)]
    [InlineData(0.33, false)]
    public void A_floor_that_hardly_slopes_is_cut_level_with_the_others(double degrees, bool level)
    {
        var made = TestPieces.Garden.Pieces.First(p => p.Role == Role.Base);
        var sloped = made with
        {
            Shape = made.Shape with
            {
                Channels = [.. made.Shape.Channels.Select(c => c with { FloorSlope = Math.Tan(Bridges.Radians(degrees)) })],
            },
        };
        var model = TestPieces.Garden with { Pieces = [.. TestPieces.Garden.Pieces.Select(p => p == made ? sloped : p)] };
        var block = GangLayout.Draw(model, TestPieces.Units).First(b => b.Title.Contains(made.Mark, StringComparison.Ordinal));
        Assert.Equal(level, block.Title.StartsWith("Gang of ", StringComparison.Ordinal));
        Assert.Equal(level, block.Notes.Any(n => n.Contains("0.018 in", StringComparison.Ordinal)
            && n.StartsWith($"Floors of {made.Mark} slope by 0.3°: cut level", StringComparison.Ordinal)));
    }

    // A floor of slope 0.2 over 89 mm, 26 mm deep in the middle: 26 + 0.2 · 44.5 = 34.9 mm at the deep mouth, square to the floor
    // 34.9 · cos(atan 0.2) = 34.22 mm, six passes of a bit of 6.5 mm. By the depth in the middle it would be four.
    [Theory]
    [InlineData(0.2)]
    [InlineData(-0.2)]
    public void A_sled_shows_the_channel_as_deep_as_its_deep_mouth(double slope)
    {
        var channel = GangLayout.OnSled(new Channel(StockFace.MinusY, 1, 0.0254, 0.026, slope), 0.089);
        Assert.Equal(0.03422, channel.Depth, 5);
        Assert.Equal((4, 6), GangLayout.Passes(channel, 0.0065));
        Assert.Equal((4, 4), GangLayout.Passes(channel with { Depth = 0.026 }, 0.0065));
    }

    [Fact]
    public void Sleds_tell_passes_and_depth_stop()
    {
        foreach (var (block, piece) in Blocks(Inclined.Value, "Sloped floors: "))
        {
            var channel = piece.Shape.Channels[0];
            var along = channel.Face == StockFace.MinusY ? piece.Shape.Thickness : piece.Shape.Width;
            var deep = (channel.Depth + (Math.Abs(channel.FloorSlope) * along / 2)) * Math.Cos(Math.Atan(channel.FloorSlope));
            Assert.Contains(block.Notes, n => n.StartsWith($"Depth stop {TestPieces.Units.Length(deep)}. ", StringComparison.Ordinal)
                && n.Contains(" in depth", StringComparison.Ordinal));
        }
    }

    // On sheets: the same lines as on the stick, in figures that are exact to a quarter of a millimetre instead of a sixteenth.
    [Theory]
    [MemberData(nameof(Names))]
    public void On_sheets_the_stick_is_told_and_not_printed(string name)
    {
        var model = Model(name);
        var blocks = GangLayout.Draw(model, DisplayUnits.For(UnitSystem.Metric), trueSize: false)
            .Where(b => b.Title.StartsWith("Layout stick", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(blocks);
        Assert.All(blocks, b => Assert.True(PageBox.Of(b.Entities).MaxX < 0.2));
        var piece = model.Pieces.First(p => p.Role == Role.Base);
        var note = blocks.First(b => b.Title.Contains(piece.Mark, StringComparison.Ordinal)).Notes[0];
        var told = note.Split("knife line ").Skip(1).Select(t => double.Parse(t[..t.IndexOf(' ', StringComparison.Ordinal)],
            CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(2 * piece.Shape.Channels.Length, told.Count);
        Assert.All(
            piece.Shape.Channels.SelectMany(c => new[] { c.Center - (c.Width / 2), c.Center + (c.Width / 2) }).Zip(told),
            p => Assert.Equal(p.First * 1000, p.Second, 0.0501));
    }

    // 11 mm are 7/16 in and 0.1 mm short of it: told to a sixteenth, a channel of 22 mm would come out 0.2 mm too wide. A whole
    // thirty-second is told as one.
    [Theory]
    [InlineData(0.011, "0.43 in")]
    [InlineData(13 * 0.0254 / 32, "13/32 in")]
    public void Knife_lines_are_told_finer_than_a_tape(double half, string text) =>
        Assert.Equal(text, new QuantityText(UnitSystem.Imperial).Fine(half));

    /// <summary>A bit of half the width makes two passes; one a hair too small, three.</summary>
    [Theory]
    [InlineData(0.020, 0.010, 0.010, 2, 1)]
    [InlineData(0.020, 0.011, 0.0099, 3, 2)]
    [InlineData(0.0254, 0.0191, 0.0127, 2, 2)]
    public void Passes_cover_the_channel(double width, double depth, double bit, int across, int deep) =>
        Assert.Equal((across, deep), GangLayout.Passes(new Channel(StockFace.MinusY, 1, width, depth, 0), bit));

    private static BridgeModel Model(string name) =>
        string.Equals(name, "garden", StringComparison.Ordinal) ? TestPieces.Garden : Inclined.Value;

    /// <summary>Blocks whose title begins so, each with the first piece that it names.</summary>
    private static List<(TemplateBlock Block, Piece Piece)> Blocks(BridgeModel model, string title) =>
    [
        .. GangLayout.Draw(model, TestPieces.Units)
            .Where(b => b.Title.StartsWith(title, StringComparison.Ordinal))
            .Select(
                b => (
                    b,
                    model.Pieces.First(p => p.Role == Role.Base && b.Title.Split(' ', ',', ':').Contains(p.Mark, StringComparer.Ordinal)))),
    ];

    private static void Equal(IReadOnlyList<double> wanted, List<double> drawn)
    {
        Assert.Equal(wanted.Count, drawn.Count);
        Assert.All(wanted.Zip(drawn), p => Assert.Equal(p.First, p.Second, Micron));
    }
}
