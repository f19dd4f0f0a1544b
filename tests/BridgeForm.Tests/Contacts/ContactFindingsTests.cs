using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Contacts;

public class ContactFindingsTests
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
        var found = ContactSweep.OfMembers([members[0], sunk], []);
        var fault = Assert.Single(found.Overlaps);
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
        var found = ContactSweep.OfMembers([post], [rope]);
        Assert.Equal(post.Id, Assert.Single(found.RopeContacts).Second);
    }

    [Fact]
    public void A_board_lifted_off_its_base_is_found()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden));
        var lifts = layout.Deck.Lifts.SetItem(4, 0.003);
        var points = layout.Deck.Points.SetItem(4, layout.Deck.Points[4] + (0.003 * layout.Poses[4].Up));
        var wrong = layout with { Deck = layout.Deck with { Points = points, Lifts = [.. lifts.Select(_ => 0.0)] } };
        var found = ContactSweep.Sweep(wrong, LaidOut(wrong), []);
        Assert.Contains(found.Gaps, g => g.Second == "F04/base");
    }

    [Theory]
    [InlineData(Bridges.Garden)]
    [InlineData(Bridges.Inclined)]
    public void A_base_that_stands_off_its_ropes_is_found_with_the_gap(string text)
    {
        var parameters = Bridges.Read(text);
        Assert.True(Bridge.TryShape(parameters, out var shape, out _));
        var layout = BridgeLayout.Lay(parameters, shape);
        var ropes = RopeRuns.Draw(parameters, shape);
        Assert.InRange(ContactSweep.Sweep(layout, LaidOut(layout), ropes).WidestGap, 0, Tolerances.Seating);
        const double Lowered = 0.004;
        var low = ropes[0] with { Points = [.. ropes[0].Points.Select(p => p - (Lowered * Vector3d.UnitY))] };
        var found = ContactSweep.Sweep(layout, LaidOut(layout), [low, ropes[1]]);
        Assert.Equal(layout.Bays - 1, found.Gaps.Count(g => g.Second is "ropes/left"));
        Assert.DoesNotContain(found.Gaps, g => g.Second is "ropes/right");
        // Square to the floor a lowered rope is less far off, by the cosine of the slope at most 1 : 3.
        Assert.All(found.Gaps.Where(g => g.Second is "ropes/left"), g => Assert.InRange(g.Amount, 0.9 * Lowered, Lowered + 1e-9));
    }

    [Fact]
    public void A_tread_off_any_stringer_is_found()
    {
        var layout = Bridges.Layout(Bridges.Read(
            Bridges.Garden + "\ndeck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n"));
        var bay = Members.Bay(layout, 3);
        var down = 0.005 * layout.Poses[3].Up;
        var sunk = LaidOut(layout).Select(p => p.Id == bay.Name + "/stringer-2"
            ? p with { Placement = p.Placement with { Origin = p.Placement.Origin - down } }
            : p);
        var treads = bay.Members.Count(m => m.Role == Role.Tread);
        var found = ContactSweep.Sweep(layout, [.. sunk], []);
        Assert.Equal(treads, found.Gaps.Count(g => g.Second == bay.Name + "/stringer-2"));
    }

    [Fact]
    public void The_worst_of_many_faults_are_kept_and_all_are_counted()
    {
        var findings = new Findings();
        for (var i = 1; i <= 250; i++)
        {
            findings.AddWood($"a{i}", "b", 0.002 + (1e-5 * i));
            findings.AddBearing($"a{i}", "b", 0.003 + (1e-5 * (251 - i)));
        }

        var found = findings.Result();
        Assert.Equal((250, 250, 0), (found.OverlapCount, found.GapCount, found.RopeContactCount));
        Assert.Equal(Enumerable.Range(151, 100).Reverse().Select(i => $"a{i}"), found.Overlaps.Select(f => f.First));
        Assert.Equal("a1", found.Gaps[0].First);
        Assert.Equal(100, found.Gaps.Length);
    }

    private static ImmutableArray<SweptPart> LaidOut(BridgeLayout layout) =>
        [.. Members.Lay(layout).SelectMany(g => g.Members).Select(SweptPart.Of)];

    private static int RandomBridges => Minutes.Cases(25, 400);

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
        // A fixed seed: what passes here passes everywhere, and a bridge that fails can be looked at.
        var random = new Random(20_261);
        double Between(double low, double high) => low + (random.NextDouble() * (high - low));
        for (var i = 0; i < RandomBridges; i++)
        {
            Judge(
                Text(Between(4, 25), Between(-0.3, 0.3), Between(0.03, 0.11), Between(0.7, 1.5), random.Next(2) == 0, random.Next(2) == 0));
        }
    }

    private static string Text(double span, double slope, double sag, double spacing, bool plumb, bool across) =>
            FormattableString.Invariant($$"""
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
                """);

    private static void Judge(string text)
    {
        var reading = ProjectReader.Read(text, "random.yaml", Bridges.Catalogue);
        if (reading.Parameters is not { } parameters)
        {
            return;
        }

        var model = Bridges.Build(parameters);
        var overlap = model.Checks.Single(c => c.Id == "parts-overlap");
        Assert.True(overlap.Status == CheckStatus.Pass, text + overlap.Detail);

        // Boards get packers; where caps meet at a lifted head, the rising one stands off by the lift, and no more.
        var gap = model.Checks.Single(c => c.Id == "parts-bear");
        var lift = BridgeLayout.Lay(parameters, model.Rope).Caps.Lifts.Max();
        // Parts as cut stand off where they were laid out by the shop's tolerance at most.
        var asCut = parameters.Shop.Tolerance;
        Assert.True(gap.Demand <= Math.Max(Tolerances.Seating, lift) + RopeSag + asCut, text + gap.Detail);

        // Where the rope bends over a frame it rises against the channel's mouths: by half the bend, and no more.
        var deepest = model.Checks.Single(c => c.Id == "rope-in-channels").Demand;
        Assert.InRange(deepest, 0, RiseAtMouths(model) + RopeSag + asCut);
    }
}
