using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
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
