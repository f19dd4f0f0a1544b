using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.Router;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Samples;

namespace BridgeForm.Tests.Output.ShopSheets;

/// <summary>What the shop's paper says of round sticks, bits whose reach nobody knows, strips, gangs of one, and many like pages.</summary>
public sealed class ShopWordsTests
{
    private static readonly Lazy<BridgeModel> s_round = new(() => Bridges.Build(
        "name: Round (invented)\nunits: metric\nuse: public\nsite: { span: 11 m, rise: 0.9 m }\ndeck: { layout: across }\n"
        + "guard: { pickets: {}, handrail: { height: 820 mm }, newels: {}, shims: true }"));

    // A round stick has no arris: one line struck along it clocks both ends, on sheet, profile, cut marks and labels alike.
    [Fact]
    public void A_round_stick_is_marked_by_a_line()
    {
        var model = s_round.Value;
        var round = model.Pieces.First(p => p.Shape.IsRound);
        Assert.Contains("on the line struck along", TurnWords.Mark(round), StringComparison.Ordinal);
        Assert.DoesNotContain("arris", TurnWords.Mark(round), StringComparison.Ordinal);
        Assert.Contains("arris", TurnWords.Mark(model.Pieces.First(p => !p.Shape.IsRound)), StringComparison.Ordinal);
        foreach (var cut in SawCut.List(round))
        {
            Assert.Equal(cut.Position.FaceUp ? "line up" : "line down", SawSetup.Up(cut));
            Assert.Equal("round", SawSetup.Fence(cut));

            // It meets fence and stop half way up: the stop is measured at z = 0.
            var (near, far) = (round.Shape.Near, round.Shape.Far);
            var y = (cut.Position.Edge1AtFence ? 1 : -1) * round.Shape.Width / 2;
            Assert.True(cut.Stop is null || Math.Abs(cut.Stop.Value - (far.XAt(y, 0) - near.XAt(y, 0))) < 1e-9);
        }

        var text = string.Join(' ', SawSheet.Draw(model, DisplayUnits.For(UnitSystem.Metric)).Pages[0].Content.Entities
            .OfType<SheetText>().Select(t => t.Text));
        Assert.Contains("A round stick has no arris: strike a line along it", text, StringComparison.Ordinal);
        var profile = ProfileSheet.Draw(round, DisplayUnits.For(UnitSystem.Metric)).Entities;
        var outline = profile.OfType<SheetPolyline>().First(p => p.Layer == ProfileLayers.Outline).Vertices;
        var line = Assert.Single(profile.OfType<SheetLine>(), l => l.Layer == ProfileLayers.Mark);
        Assert.Equal((outline.Max(v => v.Y) + outline.Min(v => v.Y)) / 2, line.From.Y, 1e-9);
        Assert.Equal(line.From.Y, line.To.Y, 1e-12);
    }

    // 38 mm of wood cut through by a bit of which nobody knows how deep it goes: the index and the file say what it must do.
    [Fact]
    public void A_bit_of_unknown_reach_is_told()
    {
        var shape = new CutStock(0.089, 0.038, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1));
        var piece = SamplePieces.Post with { Shape = shape };
        var unknown = new RouterParameters { Bits = [new RouterBit(0.006)] };
        var setup = Routing.Setup(shape, unknown);
        Assert.StartsWith(
            "Not checked: the bit must cut 38 mm deep", RouterRemarks.Depth(piece, setup, UnitSystem.Metric), StringComparison.Ordinal);
        var known = Routing.Setup(shape, unknown with { Bits = [new RouterBit(0.006, 0.040)] });
        Assert.Equal("", RouterRemarks.Depth(piece, known, UnitSystem.Metric));
        var model = Bridges.Build(Bridges.Garden);
        var made = model.Pieces.First(p => p.NotRoutable.IsEmpty);
        Assert.Contains("Not checked: the bit must cut", RouterIndex.Csv(model), StringComparison.Ordinal);
        Assert.Contains(
            RouterSheet.Draw(made, model.Parameters.Shop, UnitSystem.Imperial)!.Remarks,
            r => r.StartsWith("Not checked: the bit must cut", StringComparison.Ordinal));
    }

    // 3.02 in of width and a table saw of 3 in, or of 3-1/8.
    [Theory]
    [InlineData("3 in", RipWay.Hand)]
    [InlineData("3-1/8 in", RipWay.TableSaw)]
    public void The_file_says_how_high_the_table_saw_cuts(string depth, RipWay way)
    {
        var shop = Bridges.Read(Bridges.Garden + $"\nshop: {{ tools: [table-saw], table_saw: {depth} }}").Shop;
        var wide = 3.02 * 0.0254;
        var shape = new CutStock(wide, 0.038, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1))
        {
            Rips = [Plane.Through(Vector3d.Zero, new Vector3d(0, Math.Sin(0.1), Math.Cos(0.1)))],
        };
        var piece = SamplePieces.Post with { Shape = shape, Solid = StockSolid.Build(shape).OrNull! };
        Assert.Equal(way, StripPlan.List([piece], shop)[0].Way);
    }

    [Fact]
    public void Pages_alike_but_for_their_marks_are_one_line_of_the_index()
    {
        string[] pages =
        [
            "K1 · head · face", "B1 · edge 2, channels and holes (1 of 2)", "B1 · edge 2, channels and holes (2 of 2)",
            "B2 · edge 2, channels and holes", "B3 · edge 2, channels and holes; Layout stick for B1", "B4 · edge 2, channels and holes",
        ];
        Assert.Equal(
            [
                (0, 0, "K1 · head · face"), (1, 3, "B1 to B2 · edge 2, channels and holes"),
                (4, 4, "B3 · edge 2, channels and holes; Layout stick for B1"), (5, 5, "B4 · edge 2, channels and holes"),
            ],
            TemplateIndex.Ranges(pages));
    }

    // Knife lines full, the center line between them dash-dotted, in the channel's middle.
    [Fact]
    public void Knife_lines_of_a_channel_are_full_and_its_center_line_is_not()
    {
        var model = Bridges.Build(Bridges.Garden);
        var piece = model.Pieces.First(p => p.Role == Role.Base && p.Shape.Channels.Length == 2);
        var block = ChannelWrap.Draw(new CutUse([piece]), DisplayUnits.For(UnitSystem.Imperial)).First();
        var channel = piece.Shape.Channels[0];
        bool Whole(SheetLine l) => Math.Abs(l.From.Y - l.To.Y) < 1e-12 && Math.Abs(l.From.X - l.To.X) > piece.Shape.Thickness + 0.01;
        var full = block.Entities.OfType<SheetLine>().Where(l => l.Layer == PageLayers.Cut && Whole(l)).Select(l => l.From.Y).Order();
        Assert.Equal([channel.Center - (channel.Width / 2), channel.Center + (channel.Width / 2)], full);
        Assert.Equal(
            channel.Center, Assert.Single(block.Entities.OfType<SheetLine>(), l => l.Layer == PageLayers.Layout && Whole(l)).From.Y, 1e-12);
    }
}
