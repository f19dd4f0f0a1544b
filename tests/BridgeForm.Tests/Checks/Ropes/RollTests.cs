using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Checks.Ropes;

/// <summary>Whether a section that stands on two ropes is told to turn over when it does.</summary>
public class RollTests
{
    private const string HotAndStretched = "at the highest temperature with the rope stretched";

    [Fact]
    public void Heights_are_those_of_the_solids()
    {
        var context = Contexts.Of(Bridges.Garden);
        double moment = 0, second = 0;
        foreach (var (member, share) in Hanging(context.Layout))
        {
            var solid = StockSolid.Build(member.Shape).OrNull!;
            var center = member.Placement.ToWorld(solid.Centroid);
            var mass = share * solid.Volume * context.Parameters.StockNamed(member.Stock).Density.InService;
            var height = center.Y - context.Rope.HeightAt(center.X);
            moment += mass * BridgeMasses.Gravity * height;
            second += mass * ((height * height) + (center.Z * center.Z));
        }

        var standing = StandingWeights.Weigh(context.Layout);
        var hardware = (context.Layout.Bays - 1) * context.Parameters.Frames.HardwareMass * BridgeMasses.Gravity;

        // The hardware lies on the base's top, 5-1/2 in deep on a channel of 5/8 in over a rope of 3/8 in radius: 5.25 in.
        var top = (5.5 - 0.625 + 0.375) * 0.0254;
        Assert.Equal(moment + (hardware * top), standing.Moments.Sum(), 0.005 * moment);

        // Base, treads and packers lie across: a stick's own L²/12 comes on top.
        Assert.InRange(standing.Seconds.Sum(), second, 1.3 * second);
        foreach (var atNodes in ((System.Collections.Immutable.ImmutableArray<double>[])[
            standing.Moments, standing.FrameMoments, standing.Light, standing.LightMoments, standing.Seconds, standing.DeckHeights]))
        {
            Assert.Equal((0.0, 0.0), (atNodes[0], atNodes[^1]));
        }

        Assert.True(standing.FrameMoments.Zip(standing.Moments).Skip(1).SkipLast(1).All(m => m.First > 0 && m.First < m.Second));
    }

    // Southern pine's low density is that much of its density in service (the same stock for all treated wood), and so is cedar's.
    [Fact]
    public void Light_weights_are_those_of_dry_wood()
    {
        var context = Contexts.Of(Bridges.Garden + """

            stock:
              treated: { species: southern-pine, treated: true, lengths: [16 ft], density: { low: 20 lb/ft3, in_service: 40 lb/ft3, high: 50 lb/ft3 } }
              cedar: { species: western-red-cedar, lengths: [16 ft], density: { low: 10 lb/ft3, in_service: 20 lb/ft3, high: 25 lb/ft3 } }
            """);
        var standing = StandingWeights.Weigh(context.Layout);
        var hardware = context.Parameters.Frames.HardwareMass * BridgeMasses.Gravity;
        for (var i = 1; i < context.Layout.Bays; i++)
        {
            Assert.Equal((((2 * context.Rope.Loads[i]) - hardware) / 2) + hardware, standing.Light[i], 1e-3);
        }
    }

    [Fact]
    public void People_stand_one_metre_over_the_deck()
    {
        var context = Contexts.Of(Bridges.Garden);
        var standing = StandingWeights.Weigh(context.Layout);

        // Base's top 5.25 in, boards 1.5 in: 6.75 in over the rope, across a frame that leans by at most 12°.
        Assert.All(standing.DeckHeights[1..^1], h => Assert.InRange(h, 6.74 * 0.0254, 6.87 * 0.0254));
        var pair = context.Cases.Single(c => c.Id == "live-full").Pair!;
        var people = pair.Loads.Weights.Zip(context.Rope.Loads, (w, p) => w - (2 * p)).ToArray();

        // Clear width 2 × (18.25 + 1.5·tan 8°) in = 36.9216 in = 0.937809 m; 60 psf is 2872.82 Pa; half of the end bays rests
        // on the landings.
        var nodes = context.Rope.Nodes;
        var loaded = ((nodes[^1].X + nodes[^2].X) - (nodes[0].X + nodes[1].X)) / 2;
        Assert.Equal(2872.82 * 0.937809 * loaded, people.Sum(), 0.05);
        for (var i = 1; i < context.Layout.Bays; i++)
        {
            Assert.Equal(standing.Moments[i] + (people[i] * (standing.DeckHeights[i] + 1)), pair.Loads.HeightMoments[i], 1e-6);
        }
    }

    // An independent stiffness of the project file's defaults, ropes 44 in apart, 6 % sag, 60 psf evenly on both ropes, each
    // span on the smallest rope that is strong enough: 34 ft 2.3, 50 ft 1.6, 65 ft 1.24, 80 ft 1.02, 100 ft 0.82.
    [Theory]
    [InlineData(34, "3/4", 2.3, 0.05)]
    [InlineData(50, "7/8", 1.6, 0.05)]
    [InlineData(65, "1", 1.24, 0.005)]
    [InlineData(80, "1-1/8", 1.02, 0.01)]
    [InlineData(100, "1-1/4", 0.82, 0.01)]
    public void Long_bridges_on_ropes_that_far_apart_turn_over(int feet, string rope, double factor, double within)
    {
        var context = Contexts.Of(Bridges.Even($$"""
            name: s
            site: { span: {{feet}} ft }
            ropes: { type: rope-6x19-iwrc-eips-{{rope}}, stretch: [0 %, 0 %] }
            frames: { channel: { depth: 1 in, end_depth: 1-1/8 in } }
            """));
        var full = context.Ropework.Roll.Single(r => r is { Case: "live-full", InHeat: false });
        Assert.InRange(full.Factor!.Value, factor - within, factor + within);
        Assert.False(full.Factor.IsToOneSide);
        Assert.Equal(factor < 1, full.RollsOver);
    }

    [Theory]
    [InlineData(46, CheckStatus.Warn)]
    [InlineData(14, CheckStatus.Fail)]
    [InlineData(66, CheckStatus.Pass)]
    public void Ropes_close_together_under_a_high_deck_fail(int inches, CheckStatus status)
    {
        var result = Contexts.Check(Apart(inches), "roll");
        Assert.True(result.Status == status, result.Detail);
        Assert.Contains("A licensed engineer decides.", result.Detail, StringComparison.Ordinal);
        Assert.Contains(
            "how many times as high the weights could stand over the ropes, not how many times as heavy", result.Detail,
            StringComparison.Ordinal);
    }

    // Dead, full, half and one-sided live loads, as they are and in the heat with the rope stretched; the worst is the last of
    // them, for a rope that has stretched hangs deeper.
    [Fact]
    public void Every_state_is_looked_at()
    {
        var context = Contexts.Of(Bridges.Garden + "\nloads: { snow: 20 psf, cases: [{ id: crowd, live: 120 psf }] }\n");
        string[] standard = ["dead", "live-full", "live-half-a", "live-half-b", "live-side"];
        var states = context.Ropework.Roll;
        Assert.Equal(
            [.. standard, "snow", "live-snow", "hot", "live-full-cold", "least-roll", "crowd"],
            states.Where(s => !s.InHeat).Select(s => s.Case));
        Assert.Equal([.. standard, "crowd", "least-roll"], states.Where(s => s.InHeat).Select(s => s.Case));
        foreach (var id in (string[])[.. standard, "crowd", "least-roll"])
        {
            Assert.True(
                states.Single(s => s.InHeat && s.Case == id).Factor!.Value < states.Single(s => !s.InHeat && s.Case == id).Factor!.Value);
        }

        Assert.Contains(HotAndStretched, Contexts.Check(Bridges.Garden, "roll").Detail, StringComparison.Ordinal);
        Assert.Equal(1, states.Count(s => s.HeldInPlan is not null));
        var held = states.Single(s => s.HeldInPlan is not null);
        Assert.True(held.HeldInPlan > held.Factor!.Value);
    }

    // A rope a fifth as stiff as steel and little sag: λ² well below 4π².
    [Fact]
    public void A_taut_rope_rolls_to_one_side_and_the_words_say_it()
    {
        var roll = Contexts.Check(
            Bridges.Garden
                .Replace("rope-6x19-iwrc-eips-galvanized-3/4", "{ diameter: 3/4 in, mass_per_length: 1 lb/ft, breaking_strength: 60000 "
                    + "lbf, metallic_area: 0.2 in2, modulus: 5000 ksi, source: invented }", StringComparison.Ordinal)
                .Replace("sag: 6 %", "sag: 1.5 %, stretch: [0 %, 0 %]", StringComparison.Ordinal),
            "roll");
        Assert.Contains("all rolls to one side", roll.Detail, StringComparison.Ordinal);
        Assert.Contains("one half rolls against the other", Contexts.Check(Bridges.Garden, "roll").Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stricter_limit_of_the_file_is_the_limit()
    {
        var now = Contexts.Check(Bridges.Garden, "roll");
        Assert.Equal(CheckStatus.Warn, now.Status);
        var states = Contexts.Of(Bridges.Garden).Ropework.Roll.ToLookup(s => s.Case is "least-roll", s => s.Factor!.Value);
        var least = states[false].Min();
        var stricter = Contexts.Check(
            Bridges.Garden + FormattableString.Invariant($"\nlimits: {{ roll: {least + 0.01:0.###} }}\n"), "roll");
        Assert.Equal(CheckStatus.Fail, stricter.Status);
        Assert.True(states[true].Min() / 0.75 < least);
        Assert.Equal(0.75 * (least + 0.01), stricter.Capacity!.Value, 1e-3);
        Assert.Contains(FormattableString.Invariant($"needed {least + 0.01:0.##}"), stricter.Detail, StringComparison.Ordinal);
        Assert.Contains("limits of the project file", stricter.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_hanging_frame_an_engineer_is_named()
    {
        var result = Contexts.Check(Bridges.Garden.Replace("span: 30 ft", "span: 3 ft", StringComparison.Ordinal), "roll");
        Assert.Equal(CheckStatus.Engineer, result.Status);
        Assert.Contains("no frame hangs", result.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void A_state_without_shape_is_not_called_upright_and_excuses_none_that_fails()
    {
        var result = Contexts.Check(Without(Contexts.Of(Bridges.Garden), "live-full"), "roll");
        Assert.Equal(CheckStatus.Engineer, result.Status);
        Assert.Contains("no shape of the ropes in case live-full", result.Detail, StringComparison.Ordinal);
        var narrow = Contexts.Check(Without(Apart(14), "hot"), "roll");
        Assert.Equal(CheckStatus.Fail, narrow.Status);
        Assert.Contains("no shape of the ropes in case hot", narrow.Detail, StringComparison.Ordinal);
    }

    // Ropes 12 in apart under a deck 36 in wide: every loaded case turns over, no tilt is told, every check that would judge by
    // it fails, and a case's tension is still that of ropes with upright frames.
    [Fact]
    public void What_rolls_over_has_no_tilt()
    {
        var context = Apart(12);
        var full = context.Cases.Single(c => c.Id == "live-full");
        Assert.True(full.RollsOver);
        Assert.Null(full.CrossSlope);
        Assert.True(full.FirstOrderCrossSlope > 0);
        Assert.NotNull(full.Shape);
        foreach (var id in (string[])["roll", "cross-slope", "load-tips", "cases-solved"])
        {
            var check = Contexts.Check(context, id);
            Assert.True(check.Status == CheckStatus.Fail, check.Detail);
            Assert.Contains("rolls over", check.Detail, StringComparison.OrdinalIgnoreCase);
        }

        Assert.True(Contexts.Check(context, "roll").Demand < 1);
        var toppled = context.Cases.Count(c => c.CrossSlope is null);
        Assert.InRange(toppled, context.Cases.Length - 1, context.Cases.Length);
        Assert.StartsWith(
            FormattableString.Invariant($"it rolls over in {toppled} of {context.Cases.Length} load cases, the empty"),
            Verdict.RollText(context.Ropework), StringComparison.Ordinal);
        Assert.Equal("dead", context.Ropework.Governs().Single(g => g.Response == "cross slope").Case);

        // A single case that does is named, and is the worst for tilt and share, though others tilt.
        var good = Apart(46).Ropework;
        Assert.Equal("", Verdict.RollText(good));
        var one = good with { Cases = [.. good.Cases.Select(c => c.Id == "live-half-b" ? c with { RollsOver = true } : c)] };
        Assert.StartsWith(
            FormattableString.Invariant($"it rolls over in 1 of {good.Cases.Length} load cases, live-half-b the first"),
            Verdict.RollText(one), StringComparison.Ordinal);
        Assert.All(
            one.Governs().Where(g => g.Response is "cross slope" or "share on one rope"), g => Assert.Equal("live-half-b", g.Case));
        Assert.EndsWith("; it rolls over", one.TitleOf("live-half-b"), StringComparison.Ordinal);
        Assert.DoesNotContain("rolls over", one.TitleOf("live-half-a"), StringComparison.Ordinal);

        // Nor is the new rope, flatter and set short for its stretch, said to be solved.
        Assert.Contains("of stretch: dead: it rolls over", Contexts.Check(context, "cases-solved").Detail, StringComparison.Ordinal);
        Assert.All(context.Ropework.Stretch, e => Assert.Contains("rolls over", e.NewFailure, StringComparison.Ordinal));
    }

    // 62 m on ropes 1.2 m apart at 5 % of sag: whatever the ropes are, (π²/8)·s² / (f·h) = 1.234 × 1.44 / (3.1 × 0.95) is 0.6.
    [Fact]
    public void A_long_bridge_on_narrow_ropes_turns_over()
    {
        var context = Contexts.Of("""
            name: Long and narrow (invented)
            units: metric
            site: { span: 62 m }
            ropes: { type: { diameter: 40 mm, mass_per_length: 7 kg/m, breaking_strength: 1400 kN, metallic_area: 900 mm2, modulus: 110 GPa, source: invented }, spacing: 1200 mm, sag: 5 % }
            frames:
              spacing: 0.9 m
              base: { section: 64 x 235 mm, length: 1600 mm }
              channel: { depth: 34 mm, end_depth: 38 mm }
              post: { section: 38 x 140 mm, length: 1230 mm, foot: 460 mm }
              brace: { section: 38 x 89 mm, foot: 730 mm }
            """);
        var roll = Contexts.Check(context, "roll");
        Assert.Equal(CheckStatus.Fail, roll.Status);
        Assert.InRange(roll.Demand, 0.35, 0.65);
        Assert.Contains("It rolls over in", roll.Detail, StringComparison.Ordinal);
        Assert.Equal(CheckStatus.Fail, Contexts.Check(context, "cross-slope").Status);
    }

    // 30 ft, ropes 46 in apart, 6 % sag: about 2.7 as marked, by an independent stiffness.
    [Fact]
    public void An_ordinary_garden_bridge_stays_upright()
    {
        var context = Contexts.Of(Bridges.Garden);
        Assert.InRange(context.Ropework.Roll.Single(r => r is { Case: "live-full", InHeat: false }).Factor!.Value, 2.5, 2.8);
        Assert.NotEqual(CheckStatus.Fail, Contexts.Check(context, "roll").Status);
        Assert.Equal(CheckStatus.Pass, Contexts.Check(context, "load-tips").Status);

        // Own figures for private bridges: worth a look above 5°, too much above 8°. With live load where it is worst, wood dry.
        var tilt = Contexts.Check(context, "cross-slope");
        Assert.Equal(CheckStatus.Warn, tilt.Status);
        Assert.InRange(Math.Atan(tilt.Demand) * 180 / Math.PI, 6, 7.9);
        Assert.Contains("case most-tilt", tilt.Detail, StringComparison.Ordinal);
        foreach (var id in (string[])["rope-strength", "deck-slope-loaded", "cases-solved"])
        {
            Assert.NotEqual(CheckStatus.Fail, Contexts.Check(context, id).Status);
        }
    }

    [Fact]
    public void Point_loads_that_fall_steeply_are_a_look_and_area_loads_fail()
    {
        var context = Contexts.Of(Bridges.Garden);
        Assert.Equal(CheckStatus.Fail, Sloped("live-half-a", 0.501));
        Assert.Equal(CheckStatus.Warn, Sloped("live-half-a", 0.499));
        Assert.Equal(CheckStatus.Fail, Sloped("dead", 0.501));
        Assert.Equal(CheckStatus.Warn, Sloped("point-quarter", 0.7));

        CheckStatus Sloped(string id, double slope) =>
            Contexts.Check(Changed(context, id, c => c with { SteepestDeck = slope }), "deck-slope-loaded").Status;
    }

    // ADA 2010 405.3: 1 : 48.
    [Theory]
    [InlineData(0.9995 / 48, false)]
    [InlineData(1.0005 / 48, true)]
    public void An_empty_deck_that_leans_is_a_look(double slope, bool isTold)
    {
        var wide = Contexts.Of(
            Bridges.Garden.Replace("spacing: 46 in", "spacing: 62 in", StringComparison.Ordinal).Replace(
                "length: 58 in", "length: 74 in", StringComparison.Ordinal));
        var check = Contexts.Check(Changed(wide, "dead", c => c with { CrossSlope = Math.Atan(slope) }), "cross-slope");
        Assert.Equal(isTold ? CheckStatus.Warn : CheckStatus.Pass, check.Status);
        Assert.Equal(isTold, check.Detail.Contains("the empty deck alone", StringComparison.Ordinal));
    }

    private static CheckContext Without(CheckContext context, string id) => context with
    {
        Ropework = context.Ropework with
        {
            Roll = [.. context.Ropework.Roll.Select(r => r.Case == id && !r.InHeat ? r with { Factor = null, Failure = "none" } : r)],
        },
    };

    private static CheckContext Changed(CheckContext context, string id, Func<LoadCaseResult, LoadCaseResult> change) => context with
    {
        Ropework = context.Ropework with { Cases = [.. context.Cases.Select(c => c.Id == id ? change(c) : c)] },
    };

    private static CheckContext Apart(int inches) =>
        Contexts.Of(Bridges.Garden.Replace("spacing: 46 in", $"spacing: {inches} in", StringComparison.Ordinal)
            .Replace("length: 58 in", $"length: {Math.Max(58, inches + 12)} in", StringComparison.Ordinal));

    private static IEnumerable<(Member Member, double Share)> Hanging(BridgeLayout layout)
    {
        for (var i = 1; i < layout.Bays; i++)
        {
            foreach (var member in Members.Frame(layout, i).Members)
            {
                yield return (member, 1);
            }
        }

        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            foreach (var member in Members.Bay(layout, bay).Members)
            {
                yield return (member, bay == 1 || bay == layout.Bays ? 0.5 : 1);
            }
        }
    }
}
