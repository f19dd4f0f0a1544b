using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Checks;
using BridgeForm.Tests.Output.Gltf;
using BridgeForm.Tests.Proposals;

namespace BridgeForm.Tests.Frames;

/// <summary>Netting: where it hangs and what it weighs, by hand; which ball goes through; what is bought of it.</summary>
public sealed class NettingTests
{
    private static string Level(string net) => GuardPartsTests.Level("rails: { section: 38 x 90 mm }" + net);

    private static string Netted(string net) => SearchTests.Sound.Replace(
        "rails: { section: 5/4x6, count: 4, stock: treated }", $"rails: {{ section: 2x4 }}, net: {{ {net} }}", StringComparison.Ordinal);

    // One rail, 50 mm over the deck along the post, so that its middle is 38 / cos 8° + 50 + 45 mm up; from there, 38 mm inside the
    // posts' faces, to their heads at 1200 mm. Two of these on 900 mm of a level bay, 0.6 kg on each m².
    [Fact]
    public void A_net_weighs_what_it_measures()
    {
        var layout = Bridges.Layout(Bridges.Read(Level(", net: { opening: 50 mm, mass: 0.6 kg/m2 }")));
        Assert.Single(GuardRails.Lay(layout, 2, Side.Right));
        var up = 1.2 - ((0.038 / Math.Cos(8 * Math.PI / 180)) + 0.05 + 0.045);
        var area = 2 * 0.9 * Math.Sqrt((up * up) + (0.038 * 0.038));
        Assert.Equal(area, GuardNet.Area(layout, 2), 1e-4 * area);
        var wood = Members.Bay(layout, 2).Members
            .Sum(m => StockSolid.Build(m.Shape).OrNull!.Volume * layout.Parameters.StockNamed(m.Stock).Density.InService);
        Assert.Equal(0.6 * area, BridgeMasses.Weigh(layout).Bays[1] - wood, 1e-3);
    }

    // Both sides, seen from the side: half of what they measure is open where half of it is said to be solid.
    [Fact]
    public void The_wind_blows_against_what_of_it_is_solid()
    {
        var closed = Bridges.Layout(Bridges.Read(Level(", net: { opening: 50 mm, mass: 0.6 kg/m2 }")));
        var open = Bridges.Layout(Bridges.Read(Level(", net: { opening: 50 mm, mass: 0.6 kg/m2, solidity: 50 % }")));
        var (all, half) = (StandingWeights.Weigh(closed), StandingWeights.Weigh(open));
        var seen = 0.9 * (1.2 - ((0.038 / Math.Cos(8 * Math.PI / 180)) + 0.095)) * Math.Cos(8 * Math.PI / 180);
        var rail = 0.9 * 0.038 * Math.Sin(8 * Math.PI / 180);
        Assert.Equal(seen - rail, all.Surfaces.Finished[1].Area - half.Surfaces.Finished[1].Area, 1e-3);
        Assert.Equal(all.Moments.AsEnumerable(), half.Moments);
    }

    // A mesh of cord gives until it is a circle of the same girth: 4 in across when its side is π in. One of wire keeps its shape.
    [Theory]
    [InlineData("opening: 3.14 in", CheckStatus.Pass)]
    [InlineData("opening: 3.15 in", CheckStatus.Fail)]
    [InlineData("opening: 3.99 in, kind: wire", CheckStatus.Pass)]
    [InlineData("opening: 4 in, kind: wire", CheckStatus.Fail)]
    [InlineData("opening: 2 in, bottom: 3-7/8 in", CheckStatus.Pass)]
    [InlineData("opening: 2 in, bottom: 4-1/8 in", CheckStatus.Fail)]
    public void A_ball_finds_meshes_and_the_gap_below(string net, CheckStatus status) =>
        Assert.Equal(status, Contexts.Status(Netted(net + ", mass: 0.1 lb/ft2"), "guard-openings"));

    /// <summary>Stages of building end with the whole bridge's weight, netting and all; two strips are bought, panels shown.</summary>
    [Fact]
    public void Netting_is_hung_bought_and_shown()
    {
        var model = Bridges.Build(Netted("opening: 2 in, mass: 0.5 lb/ft2"));

        // Pieces that are cut alike differ by their shop tolerance; a tenth of the weight left out would be millimetres.
        Assert.Equal(model.Rope.Sag, model.Stages()[^1].Sag, 1e-5);
        var row = Assert.Single(model.Hardware(), h => h.Item.StartsWith("Guard netting, mesh 2 in, cord", StringComparison.Ordinal));
        Assert.Equal(2, row.Quantity);
        Assert.DoesNotContain(model.Pieces, p => p.Mark.Contains("net", StringComparison.Ordinal));
        var panels = model.Nets();
        Assert.Equal(2 * (model.Frames.Length - 1), panels.Length);
        Assert.All(panels, p => Assert.Empty(StockSolid.Build(p.Body).OrNull!.Audit()));

        // Thin panels measure what is bought, but for the rail and cap that they end at.
        var shown = panels.Sum(p => StockSolid.Build(p.Body).OrNull!.Volume / p.Body.Thickness);
        Assert.Equal(model.NetArea(), shown, 0.03 * shown);
        var nodes = new GlbFile(GltfWriterTests.Bytes(model)).Parts().Keys
            .Where(k => k.StartsWith("bridge/nets/", StringComparison.Ordinal));
        Assert.Equal(panels.Select(p => "bridge/nets/" + p.Id), nodes);
    }
}
