using BridgeForm.Checks;
using BridgeForm.Checks.Ropes;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Modes;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Checks.Ropes;

/// <summary>Whether a section that stands on two ropes is told to turn over when it does.</summary>
public class RollTests
{
    [Fact]
    public void The_formula_for_halves_against_each_other_is_reckoned_by_hand()
    {
        // s 1.1684 m (46 in), f 0.6 m, h 1.05 m: 9.869604 × 1.365159 / (8 × 0.6 × 1.05) = 13.473574 / 5.04.
        Assert.Equal(2.673328, RollFormulas.Antisymmetric(1.1684, 0.6, 1.05), 5);

        // The same from the tension: H·(2π/L)²·s² / (2·w·h) for one rope, H = w·L² / (16·f) of the whole bridge's weight w.
        var (span, weight) = (9.144, 2600.0);
        var horizontal = weight * span * span / (16 * 0.6);
        var wave = 2 * Math.PI / span;
        Assert.Equal(
            horizontal * wave * wave * 1.1684 * 1.1684 / (2 * weight * 1.05), RollFormulas.Antisymmetric(1.1684, 0.6, 1.05), 9);
    }

    // (n·sin(π/n) / π)², for odd n times 1 − 1/n². Three links, by hand: each inner node's stiffness 3H/a with H = w·a²/f gives
    // 3·s² / (4·f·h), which is (3·sin 60° / π)²·(8/9) = 0.683918 × 0.888889 of π²·s² / (8·f·h) = 1.233701·s² / (f·h).
    [Theory]
    [InlineData(3, 0.75 / 1.2337006)]
    [InlineData(4, 0.8105695)]
    [InlineData(10, 0.9675312)]
    [InlineData(11, 0.9731050 * (1 - (1.0 / 121)))]
    public void A_chain_of_few_bays_is_softer(int bays, double share) => Assert.Equal(share, RollFormulas.FewBays(bays), 4);

    [Fact]
    public void A_single_frame_is_held_by_pull_and_stretch() =>
        // s 1.2 m, f 0.5 m, h 0.9 m, λ² 80: 1.44 / (4 × 0.5 × 0.9) × (1 + 5) = 0.8 × 6.
        Assert.Equal(4.8, RollFormulas.OneFrame(1.2, 0.5, 0.9, 80), 12);

    [Fact]
    public void An_own_load_over_the_whole_deck_is_looked_at()
    {
        var heavy = Contexts.Check(Bridges.Garden + "\nloads: { live: 40 psf, cases: [{ id: crowd, live: 120 psf }] }\n", "roll");
        Assert.Contains("in case crowd,", heavy.Detail, StringComparison.Ordinal);
        var part = Contexts.Check(Bridges.Garden + "\nloads: { live: 40 psf, cases: [{ id: crowd, live: 120 psf, from: 0 ft, to: 20 ft }] }\n", "roll");
        Assert.DoesNotContain("crowd", part.Detail, StringComparison.Ordinal);
    }

    // Irvine's symmetric mode: a taut string for a small λ², the same as the antisymmetric one at 4π², a rope that does not
    // stretch (tan x = x − 0·x³, root 2.8606·π) for a large one. Irvine and Caughey, 1974, from memory.
    [Theory]
    [InlineData(1e-9, 0.25)]
    [InlineData(4 * Math.PI * Math.PI, 1)]
    [InlineData(1e12, 2.8606 / 2 * (2.8606 / 2))]
    public void Rolling_to_one_side_follows_the_symmetric_mode(double lambdaSquared, double share) =>
        Assert.Equal(share, RollFormulas.SymmetricShare(lambdaSquared), 3);

    [Fact]
    public void Heights_are_those_of_the_solids()
    {
        var context = Contexts.Of(Bridges.Garden);
        double weight = 0, moment = 0;
        foreach (var (member, share) in Hanging(context.Layout))
        {
            var solid = StockSolid.Build(member.Shape).OrNull!;
            var center = member.Placement.ToWorld(solid.Centroid);
            var mass = share * solid.Volume * context.Parameters.StockNamed(member.Stock).Density.InService;
            weight += mass * BridgeMasses.Gravity;
            moment += mass * BridgeMasses.Gravity * (center.Y - context.Rope.HeightAt(center.X));
        }

        var dead = StandingWeight.Dead(context);
        var hardware = (context.Layout.Bays - 1) * context.Parameters.Frames.HardwareMass * BridgeMasses.Gravity;
        var ropes = 2 * context.Rope.WeightPerLength * context.Rope.Segments.Sum(s => s.UnstressedLength);
        Assert.Equal(weight + hardware + ropes, dead.Weight, weight * 1e-6);

        // The hardware lies on the base's top, 5-1/2 in deep on a channel of 5/8 in over a rope of 3/8 in radius: 5.25 in.
        var top = (5.5 - 0.625 + 0.375) * 0.0254;
        Assert.Equal(moment + (hardware * top), dead.Moment, 0.005 * moment);
    }

    [Fact]
    public void People_stand_one_metre_over_the_deck()
    {
        var context = Contexts.Of(Bridges.Garden);
        var people = StandingWeight.Area(context, 1000, StandingWeight.PeopleOverDeck);

        // Clear width 2 × (18.25 + 1.5·tan 8°) in = 36.9216 in = 0.937809 m; half of the end bays rests on the landings.
        var nodes = context.Rope.Nodes;
        var loaded = ((nodes[^1].X + nodes[^2].X) - (nodes[0].X + nodes[1].X)) / 2;
        Assert.Equal(1000 * 0.937809 * loaded, people.Weight, 0.01);

        // Base's top 5.25 in, boards 1.5 in: 6.75 in over the rope, across a frame that leans by at most 12°.
        Assert.InRange(people.Height, 1 + (6.74 * 0.0254), 1 + (6.85 * 0.0254));
    }

    [Theory]
    [InlineData(46, CheckStatus.Warn)]
    [InlineData(12, CheckStatus.Fail)]
    [InlineData(52, CheckStatus.Pass)]
    public void Ropes_close_together_under_a_high_deck_fail(double inches, CheckStatus status)
    {
        var result = Contexts.Check(Narrower(Contexts.Of(Bridges.Garden), inches), "roll");
        Assert.True(result.Status == status, result.Detail);
        Assert.Contains("A licensed engineer decides.", result.Detail, StringComparison.Ordinal);
    }

    // The factor goes with the square of the spacing, everything else left as it is.
    [Theory]
    [InlineData(2, CheckStatus.Warn, CheckStatus.Fail)]
    [InlineData(3, CheckStatus.Pass, CheckStatus.Warn)]
    public void The_verdict_turns_at_the_limit(double factor, CheckStatus above, CheckStatus below)
    {
        var context = Contexts.Of(Bridges.Garden);
        var now = Contexts.Check(context, "roll");
        var spacing = context.Parameters.Ropes.Spacing / 0.0254 * Math.Sqrt(factor / now.Demand);
        Assert.Equal(above, Contexts.Check(Narrower(context, spacing * 1.0005), "roll").Status);
        Assert.Equal(below, Contexts.Check(Narrower(context, spacing * 0.9995), "roll").Status);
    }

    [Fact]
    public void The_demand_is_reckoned_by_hand_from_sag_and_height()
    {
        var context = Contexts.Of(Bridges.Garden);
        var sag = context.Cases.Single(c => c.Id == "live-full").Shape!.Sag;

        // 60 psf is 2872.82 Pa.
        var weights = StandingWeight.Dead(context) + StandingWeight.Area(context, 2872.82, 1);
        Assert.Equal(
            Garden * 9.869604 * 1.1684 * 1.1684 / (8 * sag * weights.Height), Contexts.Check(context, "roll").Demand, 4);
    }

    [Fact]
    public void A_taut_rope_rolls_to_one_side_and_the_words_say_it()
    {
        // A rope a fifth as stiff as steel and little sag: λ² well below 4π².
        var context = Contexts.Of(Bridges.Garden
            .Replace("rope-6x19-iwrc-eips-galvanized-3/4", "{ diameter: 3/4 in, mass_per_length: 1 lb/ft, breaking_strength: 60000 lbf, metallic_area: 0.2 in2, modulus: 5000 ksi, source: invented }", StringComparison.Ordinal)
            .Replace("sag: 6 %", "sag: 1.5 %", StringComparison.Ordinal));
        var loaded = context.Cases.Single(c => c.Id == "live-full").Shape!;
        var lambda = CableFormulas.LambdaSquared(9.144, loaded.Sag, loaded.Horizontal, loaded.AxialStiffness);
        Assert.True(lambda < 30);
        var weights = StandingWeight.Dead(context) + StandingWeight.Area(context, 2872.82, 1);
        var halves = Of(context.Layout.Bays) * RollFormulas.Antisymmetric(1.1684, loaded.Sag, weights.Height);
        var roll = Contexts.Check(context, "roll");
        Assert.Equal(halves * RollFormulas.SymmetricShare(lambda), roll.Demand, 3);
        Assert.True(roll.Demand < halves);

        // Backstays of 4 m and 5 m make the rope that gives longer: Le = L·(1 + 8(f/L)²) + 9 m.
        var stretching = 9.144 * (1 + (8 * loaded.Sag * loaded.Sag / (9.144 * 9.144)));
        var longer = context.Parameters.Site with
        {
            A = context.Parameters.Site.A with { Backstay = new BackstayParameters(4, 0.5, Sliding: false) },
            B = context.Parameters.Site.B with { Backstay = new BackstayParameters(5, 0.5, Sliding: false) },
        };
        var held = context with { Parameters = context.Parameters with { Site = longer } };
        Assert.Equal(
            halves * RollFormulas.SymmetricShare(lambda * stretching / (stretching + 9)), Contexts.Check(held, "roll").Demand, 3);
    }

    // Each case in turn is given a sag of 3 m, so that it governs. People 40 psf (1915.21 Pa), snow 20 psf (957.605 Pa).
    [Theory]
    [InlineData("dead", 0, 0)]
    [InlineData("hot", 0, 0)]
    [InlineData("live-full", 1915.21, 0)]
    [InlineData("snow", 0, 957.605)]
    [InlineData("live-snow", 0.75 * 1915.21, 0.75 * 957.605)]
    public void Every_case_with_one_load_all_along_is_looked_at(string id, double people, double snow)
    {
        var context = Contexts.Of(Bridges.Garden + "\nloads: { live: 40 psf, snow: 20 psf }\n");
        var deep = context with
        {
            Ropework = context.Ropework with
            {
                Cases = [.. context.Cases.Select(c => c.Id == id ? c with { Shape = c.Shape! with { Sag = 3 } } : c)],
            },
        };
        var weights = StandingWeight.Dead(context) + StandingWeight.Area(context, people, 1) + StandingWeight.Area(context, snow, 0);
        var roll = Contexts.Check(deep, "roll");
        Assert.Equal(Garden * 9.869604 * 1.1684 * 1.1684 / (8 * 3 * weights.Height), roll.Demand, 4);
        Assert.Contains($"in case {id},", roll.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_hanging_frame_an_engineer_is_named()
    {
        var result = Contexts.Check(Bridges.Garden.Replace("span: 30 ft", "span: 3 ft", StringComparison.Ordinal), "roll");
        Assert.Equal(CheckStatus.Engineer, result.Status);
        Assert.Contains("no frame hangs", result.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_without_shape_is_not_called_upright()
    {
        var context = Contexts.Of(Bridges.Garden);
        var without = context with
        {
            Ropework = context.Ropework with
            {
                Cases = [.. context.Cases.Select(c => c.Id == "live-full" ? c with { Shape = null } : c)],
            },
        };
        var result = Contexts.Check(without, "roll");
        Assert.Equal(CheckStatus.Engineer, result.Status);
        Assert.Contains("live-full", result.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_without_shape_excuses_none_that_fails()
    {
        var context = Narrower(Contexts.Of(Bridges.Garden), 12);
        var without = context with
        {
            Ropework = context.Ropework with
            {
                Cases = [.. context.Cases.Select(c => c.Id == "hot" ? c with { Shape = null } : c)],
            },
        };
        var result = Contexts.Check(without, "roll");
        Assert.Equal(CheckStatus.Fail, result.Status);
        Assert.Contains("no shape of the ropes in hot", result.Detail, StringComparison.Ordinal);
    }

    // The garden bridge has eleven bays: (11·sin(π/11) / π)²·(1 − 1/121).
    private const double Garden = 0.9731050 * (1 - (1.0 / 121));

    private static double Of(int bays) => RollFormulas.FewBays(bays);

    private static CheckContext Narrower(CheckContext context, double inches) => context with
    {
        Parameters = context.Parameters with { Ropes = context.Parameters.Ropes with { Spacing = inches * 0.0254 } },
    };

    private static IEnumerable<(Member Member, double Share)> Hanging(BridgeLayout layout)
    {
        for (var i = 1; i < layout.Bays; i++)
        {
            foreach (var member in Members.Frame(layout, i).Members) yield return (member, 1);
        }

        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            foreach (var member in Members.Bay(layout, bay).Members) yield return (member, bay == 1 || bay == layout.Bays ? 0.5 : 1);
        }
    }
}
