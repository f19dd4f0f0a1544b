using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Solids;
using CsCheck;

namespace BridgeForm.Tests.Output.Templates;

public sealed class ChannelWrapTests
{
    /// <summary>A micron: the accuracy asked for, metres.</summary>
    private const double Micron = 1e-6;

    /// <summary>Two channels, near one another or far apart, into either face that takes them; half of the floors level.</summary>
    private static readonly Gen<CutStock> Sticks =
        from width in Gen.Double[0.08, 0.2]
        from thickness in Gen.Double[0.08, 0.2]
        from narrow in Gen.Bool
        from level in Gen.Bool
        from slope in Gen.Double[-0.2, 0.2]
        from depth in Gen.Double[0.022, 0.035]
        from wide in Gen.Double[0.012, 0.04]
        from first in Gen.Double[0.05, 0.4]
        from apart in Gen.Double[0.06, 1.2]
        let face = narrow ? StockFace.MinusY : StockFace.MinusZ
        select new CutStock(width, thickness, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 2))
        {
            Channels =
            [
                new Channel(face, first, wide, depth, level ? 0 : slope),
                new Channel(face, first + apart, wide * 1.1, depth * 1.1, level ? 0 : -slope),
            ],
        };

    /// <summary>Floor corners of the drawn pockets, and mouths where knife lines cross the folds, folded round the stick.</summary>
    [Fact]
    public void Pockets_and_knife_lines_folded_back_lie_on_the_channels() => Sticks.Sample(
        stick =>
        {
            var found = Folded(TestPieces.Of(stick)).ToList();
            var shorter = Folded(TestPieces.Of(stick), shorter: true).ToList();
            Assert.Equal(2, found.Count);
            Assert.Equal(2, shorter.Count);
            foreach (var (channel, (floor, mouth)) in stick.Channels.Zip(found).Concat(stick.Channels.Zip(shorter)))
            {
                Assert.Equal(4, floor.Count);
                Assert.Equal(4, mouth.Count);
                Assert.All(floor, p => Assert.Equal(0, Above(stick, channel, p), Micron));
                Assert.All(
                    mouth,
                    p => Assert.Equal(0, channel.Face == StockFace.MinusY ? p.Y + (stick.Width / 2) : p.Z + (stick.Thickness / 2), Micron));
                Assert.All(floor.Concat(mouth), p => Assert.Equal(channel.Width / 2, Math.Abs(p.X - channel.Center), Micron));
            }
        },
        iter: 300,
        seed: "0000KOIPe036",
        threads: 1);

    /// <summary>The solid kernel, which knows nothing of paper, has its own corners there.</summary>
    [Fact]
    public void Corners_are_those_of_the_solid() => Sticks.Sample(
        stick =>
        {
            var piece = TestPieces.Of(stick);
            foreach (var (floor, mouth) in Folded(piece))
            {
                Assert.All(floor.Concat(mouth), p => Assert.Contains(piece.Solid.Vertices, v => (v - p).Length < Micron));
            }
        },
        iter: 100,
        seed: "0000KOIPe036",
        threads: 1);

    [Fact]
    public void Centre_lines_lie_midway_between_the_knife_lines_and_are_named() => Sticks.Sample(
        stick =>
        {
            var blocks = ChannelWrap.Draw(new CutUse([TestPieces.Of(stick)]), TestPieces.Units).ToList();
            var lines = blocks.SelectMany(b => Across(b, b.Ticks(PageLayers.Fold))).Select(l => l.From.Y).Order().ToList();
            var wanted = stick.Channels.SelectMany(c => new[] { c.Center - (c.Width / 2), c.Center, c.Center + (c.Width / 2) }).Order();
            Assert.All(wanted.Zip(lines), p => Assert.Equal(p.First, p.Second, Micron));
            Assert.Equal(6, lines.Count);
            Assert.All(stick.Channels, c => Assert.Contains(
                blocks.SelectMany(b => b.Entities).OfType<SheetText>(),
                t => string.Equals(t.Text, "center " + new QuantityText(TestPieces.Units.System).Fine(c.Center), StringComparison.Ordinal)
                    && Math.Abs(t.At.Y - c.Center) < c.Width));
        },
        iter: 100,
        seed: "0000KOIPe036",
        threads: 1);

    // 300 mm of wood lie between the end and a channel 60 mm wide at 130 mm: to the end the paper is 172 mm long (60/2 + 12 beyond the
    // channel), without it 112 mm (12 beyond either side, 8 for the mark), and is laid by the line from the layout stick.
    [Fact]
    public void Where_the_paper_to_the_end_is_too_long_it_is_laid_by_the_center_line()
    {
        var stick = new CutStock(0.14, 0.09, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 2))
        {
            Channels = [new Channel(StockFace.MinusY, 0.130, 0.060, 0.025, 0.1)],
        };
        var whole = Assert.Single(ChannelWrap.Draw(new CutUse([TestPieces.Of(stick)]), TestPieces.Units));
        Assert.Equal((0, 0.172), Ends(whole), Comparer);
        Assert.Equal((0.080, 0.172), Ends(whole.Shorter!), Comparer);
        Assert.Contains("lay the lower edge of the paper on the near (left) end", string.Join(' ', whole.Notes), StringComparison.Ordinal);
        Assert.Contains(
            $"lay the center line on the one from the layout stick, {new QuantityText(TestPieces.Units.System).Fine(0.130)} from the near",
            string.Join(' ', whole.Shorter!.Notes), StringComparison.Ordinal);
        Assert.Contains(whole.Entities.OfType<SheetText>(), t => t.Text is "left end");
        Assert.DoesNotContain(whole.Shorter!.Entities.OfType<SheetText>(), t => t.Text is "left end");

        // A mitred end is marked from the same paper, which then goes on to it however long it is.
        var slanted = new Plane(new Vector3d(-1, 0.5, 0) / Math.Sqrt(1.25), 0);
        Assert.Null(Assert.Single(ChannelWrap.Draw(new CutUse([TestPieces.Of(stick with { Near = slanted })]), TestPieces.Units)).Shorter);
    }

    private static readonly IEqualityComparer<(double, double)> Comparer =
        EqualityComparer<(double, double)>.Create((a, b) => Math.Abs(a.Item1 - b.Item1) < Micron && Math.Abs(a.Item2 - b.Item2) < Micron);

    private static (double, double) Ends(TemplateBlock block)
    {
        var edge = block.On<SheetPolyline>(PageLayers.Dim).First().Vertices;
        return (edge.Min(v => v.Y), edge.Max(v => v.Y));
    }

    /// <summary>Distance of a point above a channel's floor, by the definition of the channel, metres.</summary>
    private static double Above(CutStock stick, Channel c, Vector3d p) => c.Face == StockFace.MinusY
        ? p.Y + (stick.Width / 2) - c.Depth - (c.FloorSlope * p.Z)
        : p.Z + (stick.Thickness / 2) - c.Depth - (c.FloorSlope * p.Y);

    /// <summary>The paper folded: per channel in order of X the corners of its floor and of its mouth, in the piece's axes.</summary>
    private static IEnumerable<(List<Vector3d> Floor, List<Vector3d> Mouth)> Folded(Piece piece, bool shorter = false)
    {
        var stock = new UnrolledStock(piece.Shape.Width, piece.Shape.Thickness);
        var begin = stock.Begin(piece.Shape.Channels[0].Face);
        foreach (var drawn in ChannelWrap.Draw(new CutUse([piece]), TestPieces.Units))
        {
            var block = shorter ? drawn.Shorter ?? drawn : drawn;
            var folds = block.Ticks(PageLayers.Fold);
            Assert.Equal(2, folds.Count);

            // u runs from right to left on the page, so the face begins at the fold on the right.
            Vector3d Fold(double pageX, double x) => stock.Fold(begin + folds[1] - pageX, x);
            var knives = Across(block, folds).ToList();
            foreach (var pocket in block.On<SheetPolyline>(PageLayers.Pocket))
            {
                var (low, high) = (pocket.Vertices.Min(v => v.Y), pocket.Vertices.Max(v => v.Y));
                var walls = knives.Where(k => Math.Abs(k.From.Y - low) < Micron || Math.Abs(k.From.Y - high) < Micron);
                Assert.All(knives, k => Assert.True(Math.Min(k.From.X, k.To.X) <= folds[0] && Math.Max(k.From.X, k.To.X) >= folds[1]));
                yield return (
                    [.. pocket.Vertices.Select(v => Fold(v.X, v.Y))],
                    [.. walls.SelectMany(w => folds.Select(f => Fold(f, w.From.Y)))]);
            }
        }
    }

    /// <summary>Center and knife lines: level, and over both edges of the face; the line of an end reaches from edge to edge.</summary>
    private static IEnumerable<SheetLine> Across(TemplateBlock block, List<double> folds) =>
        block.On<SheetLine>(PageLayers.Layout).Concat(block.On<SheetLine>(PageLayers.Cut)).Where(
            l => Math.Min(l.From.X, l.To.X) < folds[0] - Micron && Math.Max(l.From.X, l.To.X) > folds[1] + Micron);
}
