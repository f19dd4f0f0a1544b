using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.Loads;

public sealed class LoadCasesTests
{
    private const string Standard =
        "dead live-full live-half-a live-half-b live-side point-mid point-quarter point-edge-mid erect-half cold hot live-full-cold "
        + "live-full-hot live-quarter-1 live-quarter-2 live-quarter-3 live-quarter-4 live-cross most-fall most-tilt most-slope least-roll";

    // The point load at the other frames: mid-span is F07, a quarter F04.
    private static readonly string s_frames =
        string.Concat(Enumerable.Range(1, 13).Where(i => i is not (4 or 7)).Select(i => FormattableString.Invariant($" point-f{i:00}")))
        + string.Concat(Enumerable.Range(1, 13).Where(i => i != 7).Select(i => FormattableString.Invariant($" point-edge-f{i:00}")));

    private static readonly LoadCaseInput Level = Input(
        RopeSamples.Footbridge with { Rise = 0, NodeLoads = n => [.. n.Select(_ => 900.0)] });

    private static readonly ImmutableArray<LoadCaseResult> Cases = LoadCases.All(Level);

    [Fact]
    public void Ids_are_those_promised()
    {
        Assert.Equal(Standard + s_frames, string.Join(' ', Cases.Select(c => c.Id)));
        Assert.All(Cases, c => Assert.Null(c.Failure));
        Assert.All(Cases, c => Assert.NotEmpty(c.Title));
        var more = LoadCases.All(Level with
        {
            Loads = Level.Loads with { Snow = 1500, Cases = [new LoadCaseParameters { Id = "drummers" }] },
        });
        Assert.Equal(
            Standard.Replace("cold hot", "snow live-snow cold hot", StringComparison.Ordinal)
                .Replace("live-full-hot", "snow-cold live-snow-cold live-full-hot", StringComparison.Ordinal) + s_frames + " drummers",
            string.Join(' ', more.Select(c => c.Id)));
    }

    [Fact]
    public void Dead_case_moves_nothing()
    {
        var dead = Case("dead");
        Assert.Equal(0, dead.MidSpanDrop, 1e-9);
        Assert.Equal(0, RopeSamples.Distance(Level.Design, dead.Shape!), 1e-9);
        Assert.Equal(0, dead.CrossSlope!.Value, 1e-12);
    }

    [Fact]
    public void Reactions_carry_what_each_case_hangs_on_the_rope()
    {
        foreach (var result in Cases)
        {
            RopeSamples.Close(result.Shape!.TotalLoad(), -(result.ReactionA.Y + result.ReactionB.Y), 1e-11);
            RopeSamples.Close(result.ReactionA.X, -result.ReactionB.X, 1e-12);
        }
    }

    /// <summary>By hand: pressure × clear width × share × span less half a bay at either end.</summary>
    [Theory]
    [InlineData("live-full", 3000 * 0.9 * 0.6, 1.0)]
    [InlineData("live-side", 3000 * 0.45 * (0.5 + (0.9 / 4 / 1.1)), 1.0)]
    [InlineData("live-half-a", 3000 * 0.9 * 0.6, 0.5)]
    [InlineData("live-half-b", 3000 * 0.9 * 0.6, 0.5)]
    public void Area_loads_add_up(string id, double perMetre, double part)
    {
        var nodes = Level.Design.Nodes;
        var ends = (nodes[1].X + 12 - nodes[^2].X) / 2;
        RopeSamples.Close(perMetre * part * (12 - ends), Added(id).Sum(), 1e-9);
    }

    /// <summary>
    /// By hand: half on each rope in the middle; 0.5 + (0.45 − 0.15) / 1.1 on the nearer one at the edge, whatever the patch.
    /// </summary>
    [Theory]
    [InlineData("point-mid", 1300 * 0.5, 7)]
    [InlineData("point-quarter", 1300 * 0.5, 4)]
    [InlineData("point-edge-mid", 1300 * (0.5 + (0.3 / 1.1)), 7)]
    public void Point_loads_stand_at_one_frame(string id, double load, int node)
    {
        var added = Added(id);
        Assert.Equal(load, added[node], 1e-9);
        Assert.Equal(load, added.Sum(), 1e-9);
    }

    [Fact]
    public void Halves_mirror_each_other_on_a_level_bridge()
    {
        var (a, b) = (Case("live-half-a").Shape!, Case("live-half-b").Shape!);
        RopeSamples.Close(a.Horizontal, b.Horizontal, 1e-9);
        foreach (var (p, q) in a.Nodes.Zip(b.Nodes.Reverse()))
        {
            Assert.Equal(0, RopeSamples.Distance(p, new RopePoint(12 - q.X, q.Y)), 1e-9);
        }
    }

    [Fact]
    public void Full_load_is_half_on_either_side_together() =>
        Assert.All(
            Added("live-half-a").Zip(Added("live-half-b"), (p, q) => p + q).Zip(Added("live-full")),
            p => Assert.Equal(p.Second, p.First, 1e-9));

    [Fact]
    public void Deck_tilts_where_the_ropes_carry_unlike()
    {
        Assert.Equal(0, Case("point-mid").CrossSlope!.Value, 1e-12);
        Assert.Equal(0, Case("cold").CrossSlope!.Value, 1e-12);
        Assert.True(Case("live-side").CrossSlope > 0.001);
        Assert.True(Case("live-full").CrossSlope > 0.001);
        Assert.True(Case("point-edge-mid").CrossSlope > 0);
    }

    [Fact]
    public void More_load_falls_further_cold_pulls_harder()
    {
        Assert.True(Case("live-full").MidSpanDrop > Case("point-mid").MidSpanDrop);
        Assert.True(Case("point-mid").MidSpanDrop > 0);
        Assert.True(Case("cold").MidSpanDrop < 0);
        Assert.True(Case("hot").MidSpanDrop > 0);
        Assert.True(Case("live-full-cold").Shape!.LargestTension > Case("live-full").Shape!.LargestTension);
        Assert.Equal(-10, Case("cold").Temperature);
        Assert.Equal(35, Case("hot").Temperature);
        Assert.Equal(-10, Case("live-full-cold").Temperature);
    }

    [Fact]
    public void Half_erected_bridge_hangs_deep_on_the_side_of_its_frames()
    {
        var shape = Case("erect-half").Shape!;
        Assert.Equal(7, shape.Loads.Count(p => p > 0));
        Assert.True(shape.HeightAt(4) < shape.HeightAt(8));
        var (first, last) = shape.EndSlopes();
        Assert.True(-first > last);
    }

    [Fact]
    public void Own_case_takes_its_stretch_its_place_and_its_temperature()
    {
        var own = new LoadCaseParameters { Id = "herd", Live = 2000, From = 2, To = 5, PointForce = 900, PointAt = 9, Temperature = -10 };
        var result = LoadCases.All(Level with { Loads = Level.Loads with { Cases = [own] } })[^1];
        var added = result.Shape!.Loads.Zip(Level.Design.Loads, (p, q) => p - q).Sum();
        RopeSamples.Close((2000 * 0.9 * 0.6 * 3) + (900 * (0.5 + (0.3 / 1.1))), added, 1e-9);
        Assert.Equal(-10, result.Temperature);
    }

    /// <summary>By hand, the lever rule: a force between two frames weighs on each by its distance from the other.</summary>
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.3)]
    [InlineData(1.0)]
    public void Own_point_load_is_shared_by_the_frames_beside_it(double part)
    {
        var (a, b) = (Level.Design.Nodes[3].X, Level.Design.Nodes[4].X);
        var added = Own(a + (part * (b - a)));
        var load = 900 * (0.5 + (0.3 / 1.1));
        Assert.Equal(load * (1 - part), added[3], 1e-9);
        Assert.Equal(load * part, added[4], 1e-9);
        Assert.Equal(load, added.Sum(), 1e-9);
    }

    [Fact]
    public void What_an_own_point_load_puts_on_an_end_frame_rests_on_the_landing()
    {
        var (first, load) = (Level.Design.Nodes[1].X, 900 * (0.5 + (0.3 / 1.1)));
        var added = Own(first / 4);
        Assert.Equal(load / 4, added[1], 1e-9);
        Assert.Equal(load / 4, added.Sum(), 1e-9);
        Assert.Equal(load / 4, Own(12 - (first / 4)).Sum(), 1e-6);
        Assert.Equal(0, Own(0).Sum(), 1e-9);
        Assert.Equal(0, Own(12).Sum(), 1e-9);
    }

    [Fact]
    public void An_edge_beyond_the_middle_is_the_middle() =>
        Assert.Equal(0, NodeLoads.EdgeFromMiddle(0.9, 0.5), 1e-15);

    private static double[] Own(double at)
    {
        var own = new LoadCaseParameters { Id = "cow", PointForce = 900, PointAt = at };
        var result = LoadCases.All(Level with { Loads = Level.Loads with { Cases = [own] } })[^1];
        return [.. result.Shape!.Loads.Zip(Level.Design.Loads, (p, q) => p - q)];
    }

    [Fact]
    public void Sliding_backstays_let_the_bridge_down()
    {
        var stay = new BackstayParameters(10, 0.5, Sliding: true);
        var sliding = LoadCases.All(Level with { Backstays = new Backstays(stay, stay) });
        Assert.Equal(0, sliding[0].MidSpanDrop, 1e-9);
        Assert.True(sliding[1].MidSpanDrop > Cases[1].MidSpanDrop);
        var held = LoadCases.All(Level with { Backstays = new Backstays(stay with { Sliding = false }, null) });
        Assert.Equal(0, held[0].MidSpanDrop, 1e-9);
        Assert.True(held[1].MidSpanDrop > Cases[1].MidSpanDrop);
        Assert.True(held[1].Moves[0].X > 0);
        Assert.Equal(0, held[1].Moves[^1].X, 1e-9);
    }

    [Fact]
    public void A_case_that_fails_says_why()
    {
        var broken = LoadCases.All(Level with { FrameLoads = Level.FrameLoads.SetItem(3, double.NaN) });
        var failed = Assert.Single(broken, c => c.Shape is null);
        Assert.Equal("erect-half", failed.Id);
        Assert.NotNull(failed.Failure);
    }

    [Fact]
    public void One_bay_rests_all_loads_on_its_landings()
    {
        var input = Input(RopeSamples.Footbridge with { Bays = 1 });
        Assert.All(LoadCases.All(input), c => Assert.Equal(0, c.Shape!.Loads.Sum()));
    }

    [Theory]
    [InlineData(0, 3, 1, 1, 0.5)]
    [InlineData(0, 2.5, 1, 0.875, 0.125)]
    [InlineData(1, 1.5, 0.375, 0.125, 0)]
    [InlineData(0.25, 0.75, 0.25, 0, 0)]
    [InlineData(-5, 9, 1, 1, 1)]
    [InlineData(-5, 0, 0, 0, 0)]
    [InlineData(3, 2, 0, 0, 0)]
    public void Each_bay_of_the_deck_is_a_simple_beam(double from, double to, double first, double second, double third)
    {
        ImmutableArray<RopePoint> nodes = [new(0, 0), new(1, 0), new(2, 0), new(3, 0), new(4, 0)];
        double[] expected = [0, first, second, third, 0];
        Assert.Equal(expected, NodeLoads.TributaryLengths(nodes, from, to).Select(l => Math.Round(l, 12)));
    }

    private static LoadCaseResult Case(string id) => Cases.Single(c => string.Equals(c.Id, id, StringComparison.Ordinal));

    private static double[] Added(string id) =>
        [.. Case(id).Shape!.Loads.Zip(Level.Design.Loads, (p, q) => p - q)];

    private static LoadCaseInput Input(DesignRequest request)
    {
        var design = DesignState.Find(request);
        return new LoadCaseInput
        {
            Design = design,
            FrameLoads = [.. design.Loads.Select(p => 0.4 * p)],
            ClearWidth = 0.9,
            RopeSpacing = 1.1,
            ReferenceTemperature = 15,
            Temperatures = [-10, 35],
            Loads = new LoadParameters
            {
                Live = 3000,
                LiveSource = "test",
                PointForce = 1300,
                PointPatch = 0.4,
                PointEdge = 0.15,
                Eccentricity = 0.6,
                Wind = 960,
                WindSource = "test",
            },
        };
    }

    /// <summary>The reserved ids are those of the cases that are solved, in their order; one is solved only where it is needed.</summary>
    [Fact]
    public void Every_standard_case_has_a_reserved_id()
    {
        const string Wet = "site: { span: 30 ft, water: -12 ft, ground: [[0 ft, -12 ft], [30 ft, -12 ft]] }";
        var text = Bridges.Garden.Replace("site: { span: 30 ft }", Wet, StringComparison.Ordinal) + "\nloads: { snow: 20 psf }\n";
        var cases = Bridges.Build(text).Cases;
        Assert.All(cases, c => Assert.True(LoadCaseIds.IsTaken(c.Id), c.Id));
        Assert.Equal(
            LoadCaseIds.All.Remove(LoadCaseIds.MostTension),
            cases.Select(c => c.Id).Where(id => LoadCaseIds.All.Contains(id, StringComparer.Ordinal)));
    }
}
