using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Checks.Ropes;

/// <summary>
/// Bridges that fail, or are told worse, for one kind of load alone: with those cases taken away the same check says less.
/// </summary>
public sealed class EnvelopeTests
{
    private const string Ground =
        "site: { span: 30 ft, ground: [[0 ft, -9 ft], [7 ft, -9 ft], [7.5 ft, Y in], [8 ft, -9 ft], [30 ft, -9 ft]] }";

    // On 38 in between the ropes the right of one half with the left of the other passes 8°, and one side all along does not
    // come near it. Own figure: at most 8° on a private bridge.
    [Fact]
    public void Opposite_sides_of_the_halves_tilt_too_far()
    {
        var context = Contexts.Of(Apart("38 in"));
        Assert.True(Tilt(context, LoadCaseIds.LiveCross) > 8);
        Assert.Equal(CheckStatus.Fail, Contexts.Check(context, "cross-slope").Status);
        Assert.True(Tilt(context, LoadCaseIds.LiveSide) < 4);
        var less = Without(context, LoadCaseIds.LiveCross, LoadCaseIds.MostTilt);
        Assert.NotEqual(CheckStatus.Fail, Contexts.Check(less, "cross-slope").Status);
    }

    // A little wider: now it is only where the sides are looked for.
    [Fact]
    public void Either_side_where_it_is_worst_tilts_too_far()
    {
        var context = Contexts.Of(Apart("43 in"));
        var check = Contexts.Check(context, "cross-slope");
        Assert.Equal(CheckStatus.Fail, check.Status);
        Assert.Contains("case most-tilt", check.Detail, StringComparison.Ordinal);
        Assert.Equal(Math.Tan(Tilt(context, LoadCaseIds.MostTilt) * Math.PI / 180), check.Demand, 1e-9);
        Assert.NotEqual(CheckStatus.Fail, Contexts.Check(Without(context, LoadCaseIds.MostTilt), "cross-slope").Status);
    }

    // 26 ft at 3 % on ropes 36 in apart: 4.3° as marked. Rope grown by 0.5 % hangs as one that was set to that sag at first, but for
    // the heat: that bridge by itself tilts as far (second path: a new design state, its own places of the frames).
    [Fact]
    public void Ropes_that_stretched_tilt_as_those_that_were_hung_deeper()
    {
        const string Flat = """
            name: Flat (invented)
            site: { span: 26 ft, temperatures: [59 F, 61 F] }
            ropes: { type: rope-6x19-iwrc-eips-galvanized-1, spacing: 36 in, sag: 3 % }
            frames: { base: { section: 3x6, length: 56 in }, post: { section: 3x4 }, channel: { depth: 3/4 in, end_depth: 7/8 in } }
            """;
        var context = Contexts.Of(Flat);
        var check = Contexts.Check(context, "cross-slope");
        var grown = context.Ropework.Grown.Max(c => c.CrossSlope!.Value);
        var (most, marked) = (8 * Math.PI / 180, Math.Atan(check.Demand));
        Assert.InRange(marked, 0.5 * most, 0.625 * most);
        Assert.True(grown > most);
        Assert.Equal(CheckStatus.Warn, check.Status);
        Assert.Contains("more than it may: take the ropes up", check.Detail, StringComparison.Ordinal);

        var sag = context.Ropework.Stretch.MaxBy(s => s.Share)!.Shape!.Sag;
        var deeper = Contexts.Of(
            Flat.Replace("sag: 3 %", FormattableString.Invariant($"sag: {sag / 0.0254:0.######} in"), StringComparison.Ordinal));
        Assert.Equal(CheckStatus.Fail, Contexts.Check(deeper, "cross-slope").Status);
        Assert.InRange(Math.Atan(Contexts.Check(deeper, "cross-slope").Demand) / grown, 0.97, 1.03);

        // Of a rope that does not stretch there is nothing to tell; one whose stretch is not known is taken to stretch as far as any.
        var still = Contexts.Of(Flat.Replace("sag: 3 %", "sag: 3 %, stretch: [0 %, 0 %]", StringComparison.Ordinal));
        Assert.Empty(still.Ropework.Grown);
        Assert.Equal(CheckStatus.Pass, Contexts.Check(still, "cross-slope").Status);
        var unknown = Contexts.Of(Flat.Replace("rope-6x19-iwrc-eips-galvanized-1", "strand-ehs-galvanized-3/4", StringComparison.Ordinal));
        var said = Contexts.Of(Flat.Replace(
            "rope-6x19-iwrc-eips-galvanized-1, spacing", "strand-ehs-galvanized-3/4, stretch: [0 %, 0.5 %], spacing",
            StringComparison.Ordinal));
        Assert.NotEmpty(unknown.Ropework.Grown);
        Assert.Equal(said.Ropework.Grown.Select(c => c.CrossSlope), unknown.Ropework.Grown.Select(c => c.CrossSlope));
        Assert.Equal(said.Ropework.Roll.Select(s => s.Factor!.Value), unknown.Ropework.Roll.Select(s => s.Factor!.Value));
        const string Unknown = "how far this rope stretches is not known (ropes.stretch): 0.5 % taken, the most of wire rope";
        Assert.All(
            ["cross-slope", "deck-slope-loaded", "keeper-uplift-load", "roll"],
            id => Assert.Contains(Unknown, Contexts.Check(unknown, id).Detail, StringComparison.Ordinal));
        Assert.DoesNotContain(Unknown, Contexts.Check(said, "roll").Detail, StringComparison.Ordinal);
    }

    // One rope 1/4 in longer must not turn the empty bridge over, nor any case.
    [Fact]
    public void Ropes_of_two_lengths_may_roll_it_over()
    {
        var context = Contexts.Of(Bridges.Garden);
        var setting = context.Ropework.Setting!;
        Assert.NotEqual(CheckStatus.Fail, Contexts.Check(context, "rope-setting").Status);
        foreach (var over in (RopeSetting[])[setting with { Empty = null }, setting with { Worst = null }])
        {
            var check = Contexts.Check(
                context with { Ropework = context.Ropework with { Setting = over } }, "rope-setting");
            Assert.Equal(CheckStatus.Fail, check.Status);
            Assert.Contains("rolls over", check.Detail, StringComparison.Ordinal);
        }
    }

    // What rolls over once its ropes have stretched fails, and a deck that is steeper than 1 : 2 then is a look.
    [Fact]
    public void Ropes_that_stretched_may_roll_over_and_steepen()
    {
        var context = Contexts.Of(Bridges.Garden);
        Assert.Equal(CheckStatus.Warn, Contexts.Check(context, "cross-slope").Status);
        var over = Grown(context, c => c with { CrossSlope = null, RollsOver = true });
        Assert.Equal(CheckStatus.Fail, Contexts.Check(over, "cross-slope").Status);
        Assert.Contains("it rolls over in case ", Contexts.Check(over, "cross-slope").Detail, StringComparison.Ordinal);
        var steep = Contexts.Check(Grown(context, c => c with { SteepestDeck = 0.6 }), "deck-slope-loaded");
        Assert.Equal(CheckStatus.Warn, steep.Status);
        Assert.Contains("more than it may", steep.Detail, StringComparison.Ordinal);
    }

    private static CheckContext Grown(CheckContext context, Func<LoadCaseResult, LoadCaseResult> changed) => context with
    {
        Ropework = context.Ropework with { Grown = [.. context.Ropework.Grown.Select(changed)] },
    };

    // 12 m up 2 m at 5.6 % sag: people on one quarter make the last bay steeper than 1 : 2, on half of it or all of it they do not.
    [Fact]
    public void A_quarter_makes_the_deck_too_steep()
    {
        var context = Contexts.Of(Bridges.Inclined.Replace("sag: 5 %", "sag: 5.6 %", StringComparison.Ordinal)
            .Replace("spacing: 1200 mm", "spacing: 1500 mm", StringComparison.Ordinal)
            .Replace("length: 1500 mm", "length: 1800 mm", StringComparison.Ordinal));
        var check = Contexts.Check(context, "deck-slope-loaded");
        Assert.Equal(CheckStatus.Fail, check.Status);
        string[] looked = [LoadCaseIds.LiveQuarter1, LoadCaseIds.LiveQuarter4, LoadCaseIds.MostSlope, LoadCaseIds.MostFall];
        Assert.Contains(looked, id => check.Detail.Contains($"case {id};", StringComparison.Ordinal));
        Assert.NotEqual(CheckStatus.Fail, Contexts.Check(Without(context, looked), "deck-slope-loaded").Status);
    }

    // A rock at a quarter, so high that only people who stand there reach it: all over the deck, on either half or on one side
    // they do not, hot or not.
    [Fact]
    public void People_at_a_quarter_touch_a_rock()
    {
        var text = Bridges.Garden.Replace("site: { span: 30 ft }", Ground, StringComparison.Ordinal) + "\n";
        var open = Contexts.Of(text.Replace("Y in", "-90 in", StringComparison.Ordinal));
        string[] others =
        [
            LoadCaseIds.Dead, LoadCaseIds.LiveFull, LoadCaseIds.LiveHalfA, LoadCaseIds.LiveHalfB, LoadCaseIds.LiveSide, LoadCaseIds.Hot,
            LoadCaseIds.LiveFullHot,
        ];
        var usual = open.Cases.Where(c => others.Contains(c.Id)).Min(c => c.OverGround!.Value);
        var least = open.Cases.Single(c => c.Id == LoadCaseIds.LeastGround).OverGround!.Value;
        Assert.Equal(open.Cases.Min(c => c.OverGround ?? 1e9), least, 2e-3);
        Assert.True(least < usual - 0.01);

        // Half-way between the two, without the stretch of the rope.
        var rock = -90 + ((usual + least) / 2 / 0.0254);
        var touched = Contexts.Of(text.Replace("Y in", FormattableString.Invariant($"{rock:0.####} in"), StringComparison.Ordinal));
        touched = touched with { Ropework = touched.Ropework with { Stretch = [], Grown = [] } };
        var check = Contexts.Check(touched, "ground-clearance");
        Assert.Equal(CheckStatus.Fail, check.Status);
        Assert.Equal((least - usual) / 2, check.Demand, 2e-3);
        var without = Without(touched, [.. touched.Cases.Select(c => c.Id).Where(id => !others.Contains(id))]);
        Assert.Equal(CheckStatus.Pass, Contexts.Check(without, "ground-clearance").Status);
    }

    // 130 psf of snow, more than three quarters of it and of 40 psf together; in the cold, and the wood as wet as it gets.
    [Fact]
    public void Wet_wood_pulls_the_rope_harder()
    {
        var context = Contexts.Of(Bridges.Garden + "\nloads: { live: 40 psf, snow: 130 psf }\n");
        var check = Contexts.Check(context, "rope-strength");
        Assert.Contains("case snow-cold", check.Detail, StringComparison.Ordinal);
        var less = Contexts.Check(Without(context, LoadCaseIds.SnowCold), "rope-strength");
        Assert.True(check.Demand > less.Demand * 1.005);
        Assert.Equal(LoadCaseIds.SnowCold, context.Ropework.Supports[0].Case);
        Assert.Equal(LoadCaseIds.SnowCold, context.Ropework.Stretch[^1].NewPull!.Case);
    }

    // Someone at the edge beside an end: the frame there tilts more than at mid-span, and more of the load is on one rope.
    [Fact]
    public void Someone_at_the_edge_near_an_end_tips_the_frame()
    {
        var context = Contexts.Of(Apart("38 in"));
        var mid = context.Cases.Single(c => c.Id is LoadCaseIds.PointEdgeMid).LargestShare!.Value;
        var worst = context.Cases.Where(c => c.Id.StartsWith("point-edge", StringComparison.Ordinal)).MaxBy(c => c.LargestShare)!;
        Assert.True(worst.LargestShare > mid + 0.02);

        // Without people all over one side somewhere it is what the check tells.
        var alone = Without(context, [.. context.Cases.Where(c => !LoadCaseIds.IsPoint(c.Id)).Select(c => c.Id)]);
        var check = Contexts.Check(alone, "load-tips");
        Assert.Equal(worst.LargestShare.Value, check.Demand, 1e-9);
        Assert.Contains("case point-edge-f0", check.Detail, StringComparison.Ordinal);
    }

    // A frame that is not solved counts by its bound.
    [Fact]
    public void A_bound_counts_where_a_frame_is_not_solved()
    {
        var context = Contexts.Of(Apart("60 in").Replace("length: 58 in", "length: 72 in", StringComparison.Ordinal));
        var bounded = context with
        {
            Ropework = context.Ropework with { Points = [new PointBound("F04", 0.1, 9 * Math.PI / 180, 1.2, IsSolved: false)] },
        };
        var tilt = Contexts.Check(bounded, "cross-slope");
        Assert.Equal(CheckStatus.Fail, tilt.Status);
        Assert.Equal(Math.Tan(9 * Math.PI / 180), tilt.Demand, 1e-12);
        Assert.Contains("at F04: bounded, not solved", tilt.Detail, StringComparison.Ordinal);
        var tips = Contexts.Check(bounded, "load-tips");
        Assert.Equal((CheckStatus.Warn, 1.2), (tips.Status, tips.Demand));
        var unbounded = context with
        {
            Ropework = context.Ropework with { Points = [new PointBound("F04", 0.1, null, null, IsSolved: false)] },
        };
        Assert.Contains("the point load at the edge at F04", Contexts.Check(unbounded, "cross-slope").Detail, StringComparison.Ordinal);
        Assert.Equal(CheckStatus.Warn, Contexts.Check(unbounded, "cross-slope").Status);
        Assert.Equal(CheckStatus.Warn, Contexts.Check(unbounded, "load-tips").Status);
    }

    [Fact]
    public void Every_frame_falls_furthest_in_some_case_and_the_furthest_is_named()
    {
        var work = Contexts.Of(Bridges.Garden).Ropework;
        var falls = work.Falls();
        Assert.Equal(work.Marks.Length - 2, falls.Length);
        Assert.Equal(falls.MaxBy(f => f.Down)!.Down, falls.Single(f => f.Frame == "F02").Down, 1e-4);
        var governs = work.Governs().ToDictionary(g => g.Response, g => g.Case, StringComparer.Ordinal);
        Assert.Equal(LoadCaseIds.LiveFullCold, governs["tension"]);
        Assert.Equal(LoadCaseIds.MostTilt, governs["cross slope"]);
        Assert.Equal(falls.MaxBy(f => f.Down)!.Case, governs["deflection of a frame"]);
        Assert.False(governs.ContainsKey("clearance over ground"));
    }

    private static string Apart(string spacing) =>
        Bridges.Garden.Replace("spacing: 46 in", $"spacing: {spacing}", StringComparison.Ordinal);

    private static double Tilt(CheckContext context, string id) =>
        context.Cases.Single(c => c.Id == id).CrossSlope!.Value * 180 / Math.PI;

    private static CheckContext Without(CheckContext context, params IReadOnlyCollection<string> ids) => context with
    {
        Ropework = context.Ropework with { Cases = [.. context.Cases.Where(c => !ids.Contains(c.Id))] },
    };
}
