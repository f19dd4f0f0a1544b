using System.Text.Json;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;
using BridgeForm.Tests.Output.Referees;
using CsCheck;

namespace BridgeForm.Tests.Ropes.Pairs;

/// <summary>
/// An independent solution: both ropes as straight elastic bars in three dimensions, solved and judged by scipy
/// (tests/referees/rope_pairs.py). Tilts agree to 1e-6 rad and 1e-5 of themselves (a bay's own sag, of which four bars leave a
/// sixteenth), roll factors to 0.1 %, frequencies of swaying and rolling to 0.1 %.
/// </summary>
[Trait("Category", "Referee")]
public sealed class PairRefereeTests
{
    private sealed record Asked(LoadCaseRequest Rope, double Spacing, PairLoads Loads, double[] Deck, PairMasses? Masses);

    // Any bridge in range, loads of any size to either side, heights so low that most stay upright.
    private static readonly Gen<Asked> Any =
        Gen.Select(Gen.Double[0.6, 1.3], Gen.Double[-0.3, 0.3], Gen.Double[0.03, 0.1], Gen.Int[2, 16], Gen.Double[0, 1].Array[60], Gen.Bool)
            .Select((bay, rise, sag, bays, u, held) =>
            {
                var span = bay * bays;
                var design = DesignState.Find(
                    RopeSamples.Footbridge with { Span = span, Rise = rise * span, Sag = sag * span, Spacing = null, Bays = bays });
                var stays = held ? new Backstays(new BackstayParameters(5, 0.4, Sliding: false), null) : Backstays.None;
                double At(int i, int k) => i == 0 || i == bays ? 0 : u[((3 * i) + k) % 60];
                var weights = design.Loads.Select((p, i) => (2 * p) + (6000 * At(i, 0))).ToArray();
                return new Asked(
                    LoadCaseRequest.At(design, 20, stays), 1.15,
                    new PairLoads(
                        [.. weights],
                        [.. weights.Select((w, i) => w * 0.2 * (At(i, 1) - 0.3))],
                        [.. weights.Select((w, i) => w * (0.2 + (0.3 * At(i, 2))))]),
                    [.. weights.Select(_ => 0.17)], null);
            });

    [Fact]
    public void Tilts_and_roll_factors_are_those_of_bars_in_space()
    {
        var asked = new List<Asked>();
        Any.OnFixed(16, asked.Add);
        var pairs = asked.Select(a => PairSamples.Find(a.Rope, a.Loads, a.Spacing)).ToList();
        Assert.True(pairs.Count(p => !p.RollsOver) >= 10);
        var tilted = pairs.Zip(asked).Where(p => !p.First.RollsOver).ToList();
        Judge([.. tilted.Select(p => p.Second)], (answer, i) =>
        {
            var (pair, (rope, spacing, loads, deck, _)) = (tilted[i].First, tilted[i].Second);
            foreach (var (hand, given) in Numbers(answer, "second").Zip(pair.Tilts))
            {
                Assert.InRange(Math.Atan(given) - hand, -1e-6 - (1e-5 * Math.Abs(hand)), 1e-6 + (1e-5 * Math.Abs(hand)));
            }

            foreach (var (hand, given) in Numbers(answer, "first").Zip(pair.FirstOrderTilts))
            {
                Assert.InRange(Math.Atan(given) - hand, -1e-6 - (1e-5 * Math.Abs(hand)), 1e-6 + (1e-5 * Math.Abs(hand)));
            }

            RopeSamples.Close(answer.GetProperty("roll").GetDouble(), RollFactor.Find(rope, spacing, loads, pair)!.Value, 1e-3);
            RopeSamples.Close(
                answer.GetProperty("held").GetDouble(), RollFactor.HeldInPlan(rope, spacing, loads, pair, [.. deck]), 1e-3);
        });
    }

    // What a bridge's own case of people on opposite sides of its halves was solved to, its own weights and heights included:
    // all cases of three bridges where frames lean against each other.
    [Theory]
    [InlineData(Bridges.Garden)]
    [InlineData(Bridges.Inclined)]
    [InlineData(LongAndFlat)]
    public void A_bridge_with_people_on_opposite_sides_leans_and_rolls_as_bars_in_space(string text)
    {
        var parameters = Bridges.Read(text);
        Assert.True(Bridge.TryShape(parameters, out var shape, out var fault), fault?.Message);
        var layout = BridgeLayout.Lay(parameters, shape);
        var pairs = LoadCases.All(LoadCaseInput.Gather(layout, shape, BridgeMasses.Weigh(layout)))
            .Where(c => c is { Id: LoadCaseIds.LiveCross or LoadCaseIds.LiveSide or LoadCaseIds.LeastRoll, RollsOver: false })
            .Select(c => c.Pair!)
            .ToList();
        Assert.Equal(3, pairs.Count);
        Judge(
            [.. pairs.Select(p => new Asked(p.Rope, p.Spacing, p.Loads, [.. PairSamples.All(p.Loads, 0.17)], null))],
            (answer, i) =>
            {
                var steepest = pairs[i].Shape.Tilts.Max(t => Math.Atan(Math.Abs(t)));
                Assert.InRange(steepest, 0.005, 0.2);
                foreach (var (hand, given) in Numbers(answer, "second").Zip(pairs[i].Shape.Tilts))
                {
                    Assert.InRange(Math.Atan(given) - hand, -1e-4 * steepest, 1e-4 * steepest);
                }

                RopeSamples.Close(answer.GetProperty("roll").GetDouble(), pairs[i].Roll()!.Value, 1e-3);
            });
    }

    private const string LongAndFlat = """
        name: A long, flat bridge (invented)
        units: imperial
        use: private
        site: { span: 72 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-1, spacing: 84 in, sag: 3 % }
        frames:
          spacing: 3 ft
          base: { section: 4x8, length: 96 in }
          channel: { clearance: 1/8 in, depth: 5/8 in, end_depth: 3/4 in }
          post: { section: 2x4, length: 40 in, lean: 8 deg, foot: 26 in }
          brace: { section: 2x4, lean: 12 deg, foot: 36 in }
        """;

    // Of the referee's modes the slowest with each parity of its motion to the side.
    [Theory]
    [InlineData(12, 0.54, 1.7e7)]
    [InlineData(20, 0.3, 6e6)]
    [InlineData(2, 0.09, 1.7e7)]
    public void Swaying_and_rolling_have_the_frequencies_of_bars_in_space(int bays, double sag, double stiffness)
    {
        var (rope, loads) = PairSamples.Even(bays, 0.75 * bays, sag, stiffness);
        loads = PairSamples.HeightsTimes(loads, 0.5);
        var pair = PairSamples.Find(rope, loads);
        const double G = 9.80665;
        var masses = new PairMasses(
            [.. loads.Weights.Select(w => w / G)], [.. loads.HeightMoments.Select(m => m / G)],
            [.. loads.HeightMoments.Select(m => m / G * 0.8)]);
        var sway = SwayModes.Find(rope, PairSamples.Spacing, loads, pair, masses)!;
        Judge([new Asked(rope, PairSamples.Spacing, loads, [.. PairSamples.All(loads, 0.17)], masses)], (answer, _) =>
        {
            var modes = answer.GetProperty("sway").EnumerateArray()
                .Select(m => (Hertz: m[0].GetDouble(), Share: m[1].GetDouble(), Parity: m[2].GetDouble()))
                .Where(m => m.Share > 0.01)
                .ToList();
            RopeSamples.Close(modes.Where(m => m.Parity > 0).Min(m => m.Hertz), sway.OneHalfWave, 1e-3);
            if (bays > 2)
            {
                RopeSamples.Close(modes.Where(m => m.Parity < 0).Min(m => m.Hertz), sway.TwoHalfWaves!.Value, 1e-3);
            }
            else
            {
                Assert.Null(sway.TwoHalfWaves);
            }
        });
    }

    private static void Judge(IReadOnlyList<Asked> asked, Action<JsonElement, int> judge)
    {
        var text = asked.Select(a =>
        {
            var held = a.Rope.HeldA is { } stay
                ? new[] { [stay.Give(0, a.Rope.AxialStiffness).Length, stay.Give(0, a.Rope.AxialStiffness).ByHorizontal], (double[]?)null }
                : [null, null];
            var all = new Dictionary<string, object?>
            {
                ["span"] = a.Rope.Span,
                ["rise"] = a.Rope.Rise,
                ["lengths"] = a.Rope.UnstressedLengths,
                ["weight"] = a.Rope.WeightPerLength,
                ["stiffness"] = a.Rope.AxialStiffness,
                ["spacing"] = a.Spacing,
                ["weights"] = a.Loads.Weights,
                ["moments"] = a.Loads.Moments,
                ["heights"] = a.Loads.HeightMoments,
                ["deck"] = a.Deck,
                ["held"] = held,
            };
            if (a.Masses is { } m)
            {
                (all["masses"], all["firsts"], all["seconds"]) = (m.Masses, m.Firsts, m.Seconds);
            }

            return all;
        });
        Referee.OnFile(JsonSerializer.SerializeToUtf8Bytes(text), "pairs.json", path =>
        {
            var answers = JsonDocument.Parse(Referee.Scipy("rope_pairs.py", path)).RootElement.EnumerateArray().ToArray();
            Assert.Equal(asked.Count, answers.Length);
            for (var i = 0; i < answers.Length; i++)
            {
                judge(answers[i], i);
            }
        });
    }

    private static double[] Numbers(JsonElement answer, string name) =>
        [.. answer.GetProperty(name).EnumerateArray().Select(n => n.GetDouble())];
}
