using System.Text.Json;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Space;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Referees;
using CsCheck;

namespace BridgeForm.Tests.Ropes.Space;

/// <summary>
/// An independent solution: both ropes as straight elastic bars in space, followed into the wind by scipy
/// (tests/referees/rope_wind.py). Eight bars a bay leave a sixty-fourth of what a bay hangs through by itself.
/// </summary>
[Trait("Category", "Referee")]
public sealed class SpaceRefereeTests
{
    // Any bridge in range; winds up to those that lay the ropes half over, at heights so low that most bridges stand.
    private static readonly Gen<SpaceSample> Any =
        Gen.Select(
            Gen.Double[0.6, 1.3], Gen.Double[-0.3, 0.3], Gen.Double[0.03, 0.1], Gen.Int[2, 14], Gen.Double[0, 1].Array[60], Gen.Int[0, 3])
            .Select((bay, rise, sag, bays, u, stays) =>
            {
                var span = bay * bays;
                var design = DesignState.Find(
                    RopeSamples.Footbridge with { Span = span, Rise = rise * span, Sag = sag * span, Spacing = null, Bays = bays });
                var rope = LoadCaseRequest.At(design, 0, stays switch
                {
                    0 => new Backstays(new BackstayParameters(5, 0.4, Sliding: false), null),
                    1 => new Backstays(null, new BackstayParameters(4, 0.5, Sliding: false)),
                    _ => Backstays.None,
                });
                double At(int i, int k) => i == 0 || i == bays ? 0 : u[((4 * i) + k) % 60];
                var weights = design.Loads.Select(p => 2 * p).ToArray();
                var winds = weights.Select((w, i) => w * 1.6 * At(i, 0)).ToArray();
                return new SpaceSample(design, rope, 1.15, new SpaceLoads(
                    [.. weights],
                    [.. weights.Select((w, i) => w * (0.1 + (0.3 * At(i, 1))))],
                    [.. winds],
                    [.. winds.Select((w, i) => w * (0.1 + (1.2 * At(i, 2))))],
                    4 * u[0])
                {
                    // Frames that lean back as square ones do where the bridge climbs, and somebody beside the guard of one of them.
                    Leans = [.. weights.Select((_, i) => i == 0 || i == bays ? 0 : -rise * u[1])],
                    SideMoments = [.. weights.Select((w, i) => i == bays / 2 ? 0.1 * w : 0)],
                });
            });

    [Fact]
    public void Places_rolls_and_pulls_are_those_of_bars_in_space()
    {
        var asked = new List<SpaceSample>();
        var bridges = Minutes.Cases(4, 24);
        Any.OnFixed(bridges, asked.Add);
        var all = asked.Select(a => (Asked: a, Found: a.Find())).ToList();
        var standing = all.Where(p => p.Found is { Share: 1, Shape: not null }).ToList();
        Assert.InRange(standing.Count, bridges / 2, bridges);
        Assert.True(standing.Max(p => p.Found!.Shape!.Rolls.Max()) > 0.1);
        Assert.True(standing.Max(p => p.Found!.Shape!.Sideways / p.Asked.Rope.Span) > 0.02);
        Judge([.. standing.Select(p => p.Asked)], (answer, i) =>
        {
            var (shape, span) = (standing[i].Found!.Shape!, standing[i].Asked.Rope.Span);
            var total = standing[i].Asked.Loads.Weights.Sum();
            foreach (var (hand, given) in answer.GetProperty("rolls").EnumerateArray().Zip(shape.Rolls.Skip(1)))
            {
                Assert.InRange(given - hand.GetDouble(), -2e-5, 2e-5);
            }

            foreach (var (name, nodes) in new[] { ("left", shape.Left), ("right", shape.Right) })
            {
                foreach (var (hand, given) in answer.GetProperty(name).EnumerateArray().Zip(nodes))
                {
                    Assert.InRange((Vector(hand) - given).Length, 0, 1e-5 * span);
                }
            }

            var ends = answer.GetProperty("ends");
            foreach (var (hand, given) in new[]
            {
                (ends[0][0], shape.LeftForces[0]), (ends[0][1], shape.RightForces[0]),
                (ends[1][0], shape.LeftForces[^1]), (ends[1][1], shape.RightForces[^1]),
            })
            {
                Assert.InRange((Vector(hand) - given).Length, 0, 1e-4 * given.Length);
            }

            foreach (var (hand, frame) in answer.GetProperty("pulls").EnumerateArray().Zip(Enumerable.Range(1, shape.Rolls.Length - 2)))
            {
                Assert.InRange((Vector(hand[0]) - shape.LeftForces[frame]).Length, 0, 1e-3 * total);
                Assert.InRange((Vector(hand[1]) - shape.RightForces[frame]).Length, 0, 1e-3 * total);
            }
        });
    }

    private static Vector3d Vector(JsonElement numbers) =>
        new(numbers[0].GetDouble(), numbers[1].GetDouble(), numbers[2].GetDouble());

    private static void Judge(IReadOnlyList<SpaceSample> asked, Action<JsonElement, int> judge)
    {
        var text = asked.Select(a => new Dictionary<string, object?>
        {
            ["span"] = a.Rope.Span,
            ["rise"] = a.Rope.Rise,
            ["lengths"] = a.Rope.UnstressedLengths,
            ["weight"] = a.Rope.WeightPerLength,
            ["wind"] = a.Loads.WindOnRope,
            ["stiffness"] = a.Rope.AxialStiffness,
            ["spacing"] = a.Spacing,
            ["weights"] = a.Loads.Weights,
            ["heights"] = a.Loads.HeightMoments,
            ["winds"] = a.Loads.Winds,
            ["windHeights"] = a.Loads.WindMoments,
            ["leans"] = a.Loads.Leans,
            ["asides"] = a.Loads.SideMoments,
            ["held"] = new[] { Give(a.Rope.HeldA, a.Rope), Give(a.Rope.HeldB, a.Rope) },
        });
        Referee.OnFile(JsonSerializer.SerializeToUtf8Bytes(text), "winds.json", path =>
        {
            var answers = JsonDocument.Parse(Referee.Scipy("rope_wind.py", path)).RootElement.EnumerateArray().ToArray();
            Assert.Equal(asked.Count, answers.Length);
            for (var i = 0; i < answers.Length; i++)
            {
                judge(answers[i], i);
            }
        });
    }

    private static double[]? Give(HeldBackstay? stay, LoadCaseRequest rope) =>
        stay is null ? null : [stay.Give(0, rope.AxialStiffness).Length, stay.Give(0, rope.AxialStiffness).ByHorizontal];
}
