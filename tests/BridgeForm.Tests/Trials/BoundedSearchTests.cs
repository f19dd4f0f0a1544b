using System.Text.Json;
using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Output;
using BridgeForm.Output.Report;
using BridgeForm.Output.Tables;
using BridgeForm.Tests.Checks;
using BridgeForm.Trials;

namespace BridgeForm.Tests.Trials;

/// <summary>
/// Random bridges that once took many seconds of looking for what would pass, or for a better plan. What a search may cost is
/// counted, so the same file gets the same answer everywhere, and where the count ends it, the answer says so.
/// </summary>
public sealed class BoundedSearchTests
{
    // Between two settled bands of sags nothing settles: loads and shape chase each other.
    private const string Unsettled = """
        name: A random bridge (invented)
        units: metric
        use: public
        site:
          span: 920 mm
          rise: 84.67 mm
          reference_temperature: 54 F
          temperatures: [-16 F, 64 F, 125 F]
        ropes:
          type: strand-ehs-galvanized-3/8
          spacing: 1223.66 mm
          sag: 6.121 %
          termination: { kind: poured-socket, efficiency: 53 %, source: x }
          safety_factor: 9
          marking_tension: 399.475 kN
        frames:
          spacing: 127.99 mm
          step: plan
          stance: square
          base: { section: 3x8, flat: false, length: 1645.44 mm, stock: treated }
          channel: { width: 16.12 mm, depth: 52.41 mm, end_depth: 14.71 mm, liner: 0 mm }
          post: { section: 4x4, length: 968.27 mm, lean: 12.22 deg, foot: 468.22 mm, stock: treated }
          brace: { section: 2x3, lean: 15.49 deg, foot: 712.56 mm }
        deck:
          layout: along
          board: { section: 21.8 x 59.4 mm, stock: cedar }
          gap: 2.12 mm
          side_gap: 19.57 mm
          butt_gap: 6.39 mm
        guard:
          rails: { section: 1x3, count: 1, stock: cedar }
          cap: { section: 5/4x6, stock: treated }
        loads:
          live: 78.3 psf
          eccentricity: 56 %
          snow: 55.5 psf
          cases: [{ id: own-1, live: 73.3 psf, from: 0.33 m, to: 0.539 m }, { id: own-2, force: 2.05 kN, at: 0.4276 m, temperature: 52 F }]
        stock:
          treated: { species: southern-pine, grade: no3, treated: true, incised: true, lengths: [2 ft, 15 ft, 15 ft, 11 ft] }
          cedar: { species: western-red-cedar, lengths: [20 ft] }
        shop:
          saw: { mitre_limit: 47 deg, bevel_limit: 69 deg, kerf: 4.55 mm }
          router_bit: 30.96 mm
          tolerance: 0.196 mm
          paper: a4
          trim: 17.13 mm
          offcut: 726.9 mm
          share_cuts: true
          tabs: true
        holes:
          post: [{ face: wide, from_end: 51.93 mm, across: -0.3 mm, diameter: 10.8 mm, depth: 6.1 mm }]
        """;

    // Thirty-seven lengths of rail, most a millimetre apart, on boards that take seven.
    private const string ManyLengths = """
        name: A random bridge (invented)
        units: metric
        use: public
        site:
          span: 12.2509 m
          rise: 3.5352 m
          a:
            landing: { level: 384.88 mm }
        ropes:
          type: { diameter: 1.871 mm, mass_per_length: 0.012486 kg/m, breaking_strength: 2.517 kN, metallic_area: 1.469 mm2, modulus: 110.1 GPa }
          spacing: 713.44 mm
          sag: 6.163 %
          termination: { kind: other }
          safety_factor: 1.41
        frames:
          spacing: 350.7 mm
          step: rope
          stance: plumb
          base: { section: 2x4, flat: false, length: 1511.14 mm, stock: treated }
          channel: { clearance: 18.55 mm, depth: 15.97 mm, end_depth: 15.97 mm, liner: 0 mm }
          post: { section: 3x4, length: 1173.82 mm, lean: 4.65 deg, foot: 303.41 mm, stock: treated }
          brace: { section: 87.8 x 81.2 mm, lean: 11.59 deg, foot: 628.74 mm }
          hardware: 16.66 kg
        deck:
          layout: across
          board: { section: 44 x 187 mm, stock: cedar }
          gap: 14.1 mm
          side_gap: 14.96 mm
          stringer: { section: 4x4, count: 2 }
        guard:
          rails: { section: 5/4x6, count: 6, stock: treated }
          cap: { section: 36.6 x 36.3 mm, stock: cedar }
        loads:
          cases: [{ id: own-1, live: 64.6 psf, from: 0.9489 m, to: 7.7381 m }, { id: own-2, force: 0.5 kN, at: 10.995 m, temperature: 19 F }]
        """;

    // Narrow cuts, and lengths told apart more finely: too many fillings to compare.
    private const string MoreLengths = ManyLengths + "\nshop: { saw: { kerf: 3.2 mm }, tolerance: 0.05 mm }\n";

    [Fact]
    public void A_search_for_a_sag_that_does_not_settle_is_ended_and_says_so()
    {
        var model = Bridges.Build(Unsettled);
        var sag = model.Remedies.Single(r => r.CheckId is "rope-strength" && r.Rope is null);
        Assert.True(sag.SearchEnded);
        Assert.Contains("; less may do. The search was ended after ", sag.Text, StringComparison.Ordinal);
        Assert.Contains(Report(model).GetProperty("remedies").EnumerateArray(), r => r.GetProperty("search_ended").GetBoolean());
        Assert.Contains(model.Remedies, r => r.Rope is not null && !r.SearchEnded);

        // What it found passes all the same.
        var deeper = model.Parameters with { Ropes = model.Parameters.Ropes with { Sag = sag.Length!.Value } };
        var checks = AllChecks.Run(Contexts.Of(deeper));
        Assert.Equal(CheckStatus.Pass, checks.Single(c => c.Id is "rope-strength").Status);
        Assert.Equal(CheckStatus.Fail, model.Checks.Single(c => c.Id is "rope-strength").Status);
        Assert.Equal(
            model.Remedies.Where(r => r.CheckId is "rope-strength").Select(r => r.Text),
            Remedies.Find(model.Parameters, model.Cases, model.Checks, Bridge.ShapeWithin).Select(r => r.Text));
    }

    // 402 bays of 2 ft on ropes too thin and too close: nothing is tried, and that is said for each check.
    [Fact]
    public void On_a_long_bridge_no_remedy_is_looked_for_and_that_is_said()
    {
        var model = Bridges.Build("""
            name: Long (invented)
            site: { span: 804 ft }
            ropes: { type: rope-6x19-iwrc-eips-galvanized-1/2 }
            frames: { spacing: 24 in }
            """);
        foreach (var id in new[] { "rope-strength", "roll" })
        {
            Assert.Equal(CheckStatus.Fail, model.Checks.Single(c => c.Id == id).Status);
            var remedy = model.Remedies.First(r => r.CheckId == id);
            Assert.StartsWith("On a bridge of more than 400 bays no remedy is looked for: try ", remedy.Text, StringComparison.Ordinal);
            Assert.True(remedy is { SearchEnded: true, Length: null, Rope: null });
        }

        Assert.Contains(model.Remedies, r => r.CheckId is "roll" && r.Text.StartsWith("Side stays ", StringComparison.Ordinal));
    }

    // Seven weighings settle a bridge; one of a few bays may be weighed more often, one of many may not.
    [Theory]
    [InlineData(1, 4150, 420)]
    [InlineData(8, 650, 70)]
    [InlineData(2000, 152, 20)]
    public void A_search_may_weigh_short_bridges_more_often_than_long_ones(double bays, int most, int ofTrial)
    {
        var effort = Remedies.Begin(bays, CancellationToken.None);
        var weighed = 0;
        while (effort.TryBegin())
        {
            var ofThis = 0;
            while (effort.TrySpend())
            {
                ofThis++;
            }

            Assert.True(ofThis == ofTrial || effort.IsSpent);
            weighed += ofThis;
        }

        // The weighing that is refused is counted as well.
        Assert.InRange(weighed + effort.Trials, most, most + 1);
    }

    [Fact]
    public void A_search_for_a_plan_that_is_ended_says_so_in_table_and_report()
    {
        var model = Bridges.Build(MoreLengths);
        var ended = Assert.Single(model.StockPlan.Jobs, j => j.SearchEnded);
        Assert.False(ended.Proven);
        Assert.True(ended.Total > ended.RoundedBound);
        const string Note = "; the search was ended at its limit, and a better plan may have been missed";
        var row = Assert.Single(
            StockPlanTable.Csv(model, DisplayUnits.For(model.Parameters.Units)).Split('\n'),
            r => r.Contains(Note, StringComparison.Ordinal));
        Assert.Contains(ended.Section, row, StringComparison.Ordinal);
        Assert.Equal(
            model.StockPlan.Jobs.Select(j => j.SearchEnded),
            Report(model).GetProperty("stock_jobs").EnumerateArray().Select(j => j.GetProperty("search_ended").GetBoolean()));
        var again = Bridges.Build(MoreLengths).StockPlan;
        Assert.Equal(
            model.StockPlan.Boards.Select(b => string.Join(' ', b.Pieces.Select(p => p.Id))),
            again.Boards.Select(b => string.Join(' ', b.Pieces.Select(p => p.Id))));
    }

    [Fact]
    public void A_plan_that_was_searched_through_is_proven_best()
    {
        // Whole boards: with their ends trimmed the bound of this bridge is a board away.
        var model = Bridges.Build(ManyLengths + "\nshop: { trim: 0 mm }\n");
        Assert.All(model.StockPlan.Jobs, j => Assert.True(j.Proven && !j.SearchEnded));
        Assert.DoesNotContain(
            "the search was ended", StockPlanTable.Csv(model, DisplayUnits.For(model.Parameters.Units)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_counted_ends_a_trial_and_then_the_search()
    {
        var effort = new Effort(5, 3, CancellationToken.None);
        Assert.True(effort.TryBegin());
        Assert.Equal([true, true, true, false], Enumerable.Range(0, 4).Select(_ => effort.TrySpend()));
        Assert.True(effort.TryBegin());
        Assert.Equal([true, false], Enumerable.Range(0, 2).Select(_ => effort.TrySpend()));
        Assert.False(effort.TryBegin());
        Assert.Equal((true, 2), (effort.IsSpent, effort.Trials));
    }

    private static JsonElement Report(BridgeModel model)
    {
        using var stream = new MemoryStream();
        ReportWriter.Write(model, () => [], stream);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
