using BridgeForm.Checks;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Contacts;

/// <summary>Contacts are looked at, and wood is weighed for the tables, as it is cut: alike parts by the first of them.</summary>
public class PartsAsCutTests
{
    // Slope and sag make neighbouring caps and boards differ by millimetres, which 6 mm of tolerance hides.
    private const string Coarse = """
        name: Coarse shop (invented)
        units: metric
        site: { span: 9 m, rise: 0.9 m }
        ropes: { type: rope-6x19-iwrc-eips-3/4, spacing: 1200 mm, sag: 6 % }
        frames:
          spacing: 900 mm
          base: { section: 89 x 140 mm, length: 1550 mm }
          channel: { clearance: 3 mm, depth: 20 mm, end_depth: 26 mm }
          post: { section: 38 x 89 mm, length: 1020 mm, lean: 8 deg, foot: 470 mm }
          brace: { section: 38 x 89 mm, lean: 12 deg, foot: 735 mm }
        shop: { tolerance: 6 mm }
        """;

    [Fact]
    public void Parts_that_press_into_each_other_only_as_cut_fail_the_check()
    {
        var model = Bridges.Build(Coarse);
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        var laidOut = ContactSweep.Sweep(layout, [.. Members.Lay(layout).SelectMany(g => g.Members).Select(SweptPart.Of)], model.RopeLines);
        Assert.Equal(0, laidOut.OverlapCount);
        var check = model.Checks.Single(c => c.Id == "parts-overlap");
        Assert.Equal(CheckStatus.Fail, check.Status);
        Assert.True(check.Demand > 2 * Tolerances.Seating, check.Detail);
    }

    public static TheoryData<string> Texts =>
    [
        Bridges.Garden,
        Bridges.Inclined,
        Bridges.Garden + "\ndeck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n",
        Coarse.Replace("6 mm }", "0.5 mm }", StringComparison.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Texts))]
    public void Wood_as_cut_weighs_what_the_ropes_were_shaped_for(string text)
    {
        var model = Bridges.Build(text);
        Assert.Equal(0.5e-3, model.Parameters.Shop.Tolerance, 1e-12);
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        var masses = BridgeMasses.Weigh(layout);
        var hardware = model.Parameters.Frames.HardwareMass * layout.Poses.Length;
        var laidOut = masses.Frames.Sum() + masses.Packers.Sum() + masses.Bays.Sum() - hardware;
        var cut = model.Pieces.Sum(p => p.Mass * p.Occurrences.Length);
        const double Share = 1e-3;
        Assert.InRange(cut, laidOut * (1 - Share), laidOut * (1 + Share));
    }
}
