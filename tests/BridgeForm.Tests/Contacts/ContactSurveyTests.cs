using BridgeForm.Checks;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Solids;
using CsCheck;

namespace BridgeForm.Tests.Contacts;

public class ContactSurveyTests
{
    [Theory]
    [InlineData(Bridges.Garden)]
    [InlineData(Bridges.Inclined)]
    public void Nothing_overlaps_hangs_in_the_air_or_is_cut_by_a_rope(string text)
    {
        var model = Bridges.Build(text);
        foreach (var id in (string[])["parts-overlap", "parts-bear", "rope-in-channels"])
        {
            var check = model.Checks.Single(c => c.Id == id);
            Assert.True(check.Status == CheckStatus.Pass, check.Detail);
        }
    }

    [Fact]
    public void A_planted_overlap_is_found_with_its_depth()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden));
        var members = Members.Frame(layout, 3).Members;
        var post = members.First(m => m.Role == Role.Post);
        const double Depth = 0.004;
        var sunk = post with
        {
            Placement = post.Placement with { Origin = post.Placement.Origin - (Depth * layout.Poses[3].Up) },
        };
        var survey = ContactSurveyor.OfMembers([members[0], sunk], []);
        var fault = Assert.Single(survey.Overlaps);
        Assert.Equal((members[0].Id, post.Id), (fault.First, fault.Second));
        Assert.Equal(Depth, fault.Amount, 1e-9);
    }

    [Fact]
    public void A_rope_planted_in_a_post_is_found()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden));
        var post = Members.Frame(layout, 3).Members.First(m => m.Role == Role.Post);
        var middle = post.Placement.ToWorld(new Vector3d(0.5, 0, 0));
        var rope = new RopeLine("left", 0.01, [middle - (0.4 * Vector3d.UnitX), middle + (0.4 * Vector3d.UnitX)]);
        var survey = ContactSurveyor.OfMembers([post], [rope]);
        Assert.Equal(post.Id, Assert.Single(survey.RopeContacts).Second);
    }

    [Fact]
    public void A_board_lifted_off_its_base_is_found()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden));
        var lifts = layout.Deck.Lifts.SetItem(4, 0.003);
        var points = layout.Deck.Points.SetItem(4, layout.Deck.Points[4] + (0.003 * layout.Poses[4].Up));
        var wrong = layout with { Deck = layout.Deck with { Points = points, Lifts = [.. lifts.Select(_ => 0.0)] } };
        var survey = ContactSurveyor.Survey(wrong, []);
        Assert.Contains(survey.Gaps, g => g.Second == "F04/base");
    }

    // A bay of rope sags this much below its chord at most: its ends are steeper than the chord by 4 × sag / bay.
    private const double RopeSag = 3e-4;

    private static double RiseAtMouths(BridgeModel model)
    {
        var half = model.Parameters.Frames.Base.Along / 2;
        var nodes = model.Rope.Nodes;
        var slopes = Enumerable.Range(1, nodes.Length - 1)
            .Select(i => Math.Atan2(nodes[i].Y - nodes[i - 1].Y, nodes[i].X - nodes[i - 1].X)).ToArray();
        return slopes.Zip(slopes.Skip(1), (a, b) => half * Math.Tan(Math.Abs(b - a) / 2)).DefaultIfEmpty(0).Max();
    }

    /// <summary>Bridges nobody named: any that the file reader lets pass must be free of faults of the model.</summary>
    [Fact]
    public void Random_bridges_have_no_contact_faults()
    {
        var bridges = Gen.Select(
            Gen.Double[4, 25], Gen.Double[-0.3, 0.3], Gen.Double[0.03, 0.11], Gen.Double[0.7, 1.5], Gen.Bool, Gen.Bool,
            (span, slope, sag, spacing, plumb, across) => FormattableString.Invariant($$"""
                name: Random (invented)
                units: metric
                site: { span: {{span:0.000}} m, rise: {{span * slope:0.000}} m }
                ropes: { type: rope-6x19-iwrc-eips-5/8, spacing: 1200 mm, sag: {{sag * 100:0.00}} % }
                frames:
                  spacing: {{spacing:0.000}} m
                  stance: {{(plumb ? "plumb" : "square")}}
                  base: { section: 89 x 140 mm, length: 1500 mm }
                  channel: { clearance: 3 mm, depth: 45 mm, end_depth: 50 mm }
                  post: { section: 38 x 89 mm, length: 1150 mm, lean: 8 deg, foot: 470 mm }
                  brace: { section: 38 x 89 mm, lean: 12 deg, foot: 725 mm }
                deck:
                  layout: {{(across ? "across" : "along")}}
                  {{(across ? "stringer: { section: 38 x 89 mm, count: 3 }" : "count: auto")}}
                """));
        bridges.Sample(
            text =>
            {
                var reading = BridgeForm.Project.ProjectReader.Read(text, "random.yaml", Bridges.Catalogue);
                if (reading.Parameters is not { } parameters)
                {
                    return;
                }

                var model = Bridges.Build(parameters);
                var overlap = model.Checks.Single(c => c.Id == "parts-overlap");
                Assert.True(overlap.Status == CheckStatus.Pass, overlap.Detail);

                // Boards get packers; where caps meet at a lifted head, the rising one stands off by the lift, and no more.
                var gap = model.Checks.Single(c => c.Id == "parts-bear");
                var lift = BridgeLayout.Of(parameters, model.Rope.Nodes).Caps.Lifts.Max();
                Assert.True(gap.Demand <= Math.Max(Seating.Tolerance, lift) + RopeSag, gap.Detail);

                // Where the rope bends over a frame it rises against the channel's mouths: by half the bend, and no more.
                var deepest = model.Checks.Single(c => c.Id == "rope-in-channels").Demand;
                Assert.InRange(deepest, 0, RiseAtMouths(model) + RopeSag);
            },
            iter: 60,
            seed: "0000aBcDeF12");
    }
}
