using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Checks;
using BridgeForm.Tests.Output.Gltf;

namespace BridgeForm.Tests.Frames;

/// <summary>Landings, newels and shims: where they lie, by hand, what they weigh on, and that nothing of them is in the way.</summary>
public sealed class LandingPartsTests
{
    private const double Inch = 0.0254;

    private const string Landed = """

        guard: { newels: { section: 4x4, gap: 2 in, height: 40 in } }
        """;

    private static string Garden(string end) => Bridges.Garden.Replace(
        "span: 30 ft",
        $"span: 30 ft, a: {{ landing: {{ level: 5 in, {end} }} }}, b: {{ landing: {{ level: 5 in, {end} }} }}",
        StringComparison.Ordinal);

    // Posts of 2x4 lean 8°, their inner faces 18-1/4 in from the middle at the base's top. The newel begins 3/4 + 2 in beyond the
    // support; its inner face carries on the line of the posts' from where that is at the landing's level.
    [Fact]
    public void A_newel_stands_where_the_hand_says()
    {
        var layout = Bridges.Layout(Bridges.Read(Garden("gap: 1/4 in") + Landed));
        var newel = Assert.Single(GuardNewels.Lay(layout, 0, Side.Right));
        var solid = StockSolid.Build(newel.Shape).OrNull!;
        var corners = solid.Vertices.Select(newel.Placement.ToWorld).ToList();
        Assert.Equal(-2.75 * Inch, corners.Max(c => c.X), 1e-9);
        Assert.Equal(-6.25 * Inch, corners.Min(c => c.X), 1e-9);
        Assert.Equal(5 * Inch, corners.Min(c => c.Y), 1e-9);
        Assert.Equal(45 * Inch, corners.Max(c => c.Y), 1e-9);
        var tan = Math.Tan(8 * Math.PI / 180);
        var foot = (18.25 * Inch) + (((5 * Inch) - layout.Levels[0].Top) * tan);
        Assert.Equal(foot, corners.Min(c => c.Z), 1e-9);
        Assert.Equal(foot + (40 * Inch * tan) + (3.5 * Inch / Math.Cos(8 * Math.PI / 180)), corners.Max(c => c.Z), 1e-9);

        // Width square to its axis: 40 in of height are 40 / cos 8° of length.
        Assert.Equal(3.5 * 3.5 * 40 / Math.Cos(8 * Math.PI / 180) * Inch * Inch * Inch, solid.Volume, 1e-9);
    }

    /// <summary>Neither ropes nor end frames feel them: weights, wind and what holds the end frames down stay.</summary>
    [Fact]
    public void Landings_and_newels_weigh_on_nothing_of_the_bridge()
    {
        var with = Contexts.Of(Garden("gap: 0 in, depth: 4 ft, bearer: sill") + Landed);
        var without = Contexts.Of(Garden("gap: 0 in"));
        Assert.Equal(without.Rope.Loads.AsEnumerable(), with.Rope.Loads);
        Assert.Equal(without.Masses.Frames.Concat(without.Masses.Packers), with.Masses.Frames.Concat(with.Masses.Packers));
        string[] ids = ["end-frame-down", "end-frame-along", "wind-end-frame", "roll"];
        Assert.Equal(Demands(without), Demands(with));
        Assert.Equal(ids.Length, Demands(with).Count);

        List<double> Demands(BridgeForm.Checks.CheckContext context) =>
            [.. BridgeForm.Checks.Register.AllChecks.Run(context).Where(c => ids.Contains(c.Id)).Select(c => c.Demand)];

        var surfaces = (StandingWeights.Weigh(without.Layout).Surfaces.Ends, StandingWeights.Weigh(with.Layout).Surfaces.Ends);
        Assert.Equal(surfaces.Item1.AsEnumerable(), surfaces.Item2);
        Assert.Contains(with.Pieces, p => p.Role == Role.Newel && p.Occurrences.Length > 0);
    }

    /// <summary>Stand-ins touch no part, are closed, lie where the file says, and stand in the scene, not among pieces.</summary>
    [Fact]
    public void Landings_stand_beside_the_bridge()
    {
        var model = Bridges.Build(Garden("gap: 1/4 in, depth: 4 ft, bearer: sill") + Landed);
        var landings = model.Landings();
        Assert.Equal(["a/landing", "a/sill", "b/landing", "b/sill"], landings.Select(l => l.Id));
        var first = landings[0].Body.ToSolid().OrNull!.Vertices.Select(landings[0].Place.ToWorld).ToList();
        var edge = -(1.75 + 0.25) * Inch;
        Assert.Equal(edge, first.Max(c => c.X), 1e-9);
        Assert.Equal(edge - (48 * Inch), first.Min(c => c.X), 1e-9);
        Assert.Equal(5 * Inch, first.Max(c => c.Y), 1e-9);
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        List<Member> parts =
        [
            .. Members.Frame(layout, 0).Members, .. Members.Frame(layout, layout.Bays).Members,
            .. landings.Select((l, i) => new Member(new PartId("F99", Role.Board, Side.None, i + 1), "treated", "4x4", l.Place, l.Body)),
        ];
        var found = ContactSweep.OfMembers(parts, []).Overlaps;
        Assert.Empty(found.Where(
            o => o.First.StartsWith("F99", StringComparison.Ordinal) || o.Second.StartsWith("F99", StringComparison.Ordinal)));
        var nodes = new GlbFile(GltfWriterTests.Bytes(model)).Parts().Keys.Where(k => k.Contains("/landings/", StringComparison.Ordinal));
        Assert.Equal(landings.Select(l => "bridge/landings/" + l.Id), nodes);
        Assert.DoesNotContain(model.Groups.SelectMany(g => g.MemberIds), id => id.Contains("sill", StringComparison.Ordinal));
    }

    // End channels 2 in deep and the others 5/8 in bend the caps at the first frame: the second bay's stands off its heads there.
    internal const string Bent = """
        name: Bent (invented)
        site: { span: 30 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-1, spacing: 58 in, sag: 5.4 % }
        frames:
          spacing: 26 in
          base: { section: 4x6, length: 72 in }
          channel: { depth: 5/8 in, end_depth: 2 in, liner: 1/16 in }
          post: { section: 4x4, length: 40 in, foot: 18-1/2 in }
          brace: { section: 2x4, foot: 28-1/4 in }
        guard: { rails: { section: 5/4x6, count: 4, stock: treated }, cap: { section: 2x6 } }
        """;

    internal const string Shimmed = "cap: { section: 2x6 }, shims: true }";

    /// <summary>A shim touches head and cap over the whole half head, and neither enters the other.</summary>
    [Fact]
    public void Shims_fill_what_a_cap_stands_off()
    {
        var layout = Bridges.Layout(Bridges.Read(Bent.Replace("cap: { section: 2x6 } }", Shimmed, StringComparison.Ordinal)));
        var frames = Enumerable.Range(0, layout.Bays + 1).Where(i => layout.Steps.Shims[i]).ToList();
        Assert.Equal([1, layout.Bays - 1], frames);
        var shim = Assert.Single(Shims.Lay(layout, 1, Side.Right));
        var solid = StockSolid.Build(shim.Shape).OrNull!;
        Assert.Empty(solid.Audit());

        // Half of 3-1/2 in along the bridge; across, what the leaning post's head measures.
        var pose = layout.Poses[1];
        var along = solid.Vertices.Select(v => (shim.Placement.ToWorld(v) - pose.Node).Dot(pose.Along)).ToList();
        Assert.Equal(0, along.Min(), 1e-9);
        Assert.Equal(1.75 * Inch, along.Max(), 1e-9);
        var across = solid.Vertices.Select(v => shim.Placement.ToWorld(v).Z).ToList();
        Assert.Equal(3.5 * Inch / Math.Cos(8 * Math.PI / 180), across.Max() - across.Min(), 1e-9);

        // Its thickness is the cap's lift at the middle, and less or more by the cap's slope in the frame at the edge.
        var lift = layout.Caps.Lifts[1];
        var slope = BearingLine.SlopeIn(layout.Poses[1], layout.Caps.Points[1], layout.Caps.Points[2]);
        Assert.True(lift > 1.5e-3);
        Assert.Equal((lift + (lift + (slope * 1.75 * Inch))) / 2 * 1.75 * Inch * (across.Max() - across.Min()), solid.Volume, 1e-9);
        Assert.Empty(ContactSweep.Sweep(layout, [.. Members.Lay(layout).SelectMany(g => g.Members).Select(SweptPart.Of)], [])
            .Gaps.Where(g => g.First.Contains("cap", StringComparison.Ordinal) || g.First.Contains("shim", StringComparison.Ordinal)));
    }

    [Fact]
    public void Without_shims_the_check_names_them_and_with_them_it_holds()
    {
        var check = Contexts.Check(Bent, "parts-bear");
        Assert.Equal(BridgeForm.Checks.CheckStatus.Fail, check.Status);
        Assert.Contains("guard.shims: true", check.Detail, StringComparison.Ordinal);
        Assert.Contains(Bridges.Build(Bent).Remedies, r => r is { CheckId: "parts-bear", Write: "guard.shims true" });
        var cured = Bent.Replace("cap: { section: 2x6 } }", Shimmed, StringComparison.Ordinal);
        Assert.Equal(BridgeForm.Checks.CheckStatus.Pass, Contexts.Check(cured, "parts-bear").Status);
    }
}
