using System.Text.Json;
using BridgeForm.Ropes;
using BridgeForm.Tests.Output.Referees;
using CsCheck;

namespace BridgeForm.Tests.Ropes;

/// <summary>
/// An independent solution: total potential energy minimised by scipy's general optimiser (tests/referees/rope_energy.py,
/// which knows nothing of catenaries) agrees on 20 random bridges to 1e-6 of the span.
/// </summary>
[Trait("Category", "Referee")]
public sealed class PotentialEnergyTests
{
    private const int Count = 20;

    private static readonly Gen<LoadCaseRequest> AnyLoadedBridge =
        Gen.Select(
            Gen.Double[0.6, 1.3], Gen.Double[-1.0 / 3, 1.0 / 3], Gen.Double[0.03, 0.15], Gen.Int[3, 18], Gen.Double[0, 3000].Array[20])
            .Select((bay, rise, sag, bays, live) =>
            {
                var span = bay * bays;
                var design = DesignState.Find(RopeSamples.Footbridge with
                {
                    Span = span,
                    Rise = rise * span,
                    Sag = sag * span,
                    Spacing = null,
                    Bays = bays,
                });
                return LoadCaseRequest.At(design, (live[19] / 100) - 15, Backstays.None) with
                {
                    Loads = [.. design.Loads.Select((p, i) => i == 0 || i == bays ? 0 : p + live[i])],
                };
            });

    [Fact]
    public void Least_energy_gives_the_same_shapes()
    {
        var requests = new List<LoadCaseRequest>();
        AnyLoadedBridge.OnFixed(Count, requests.Add);
        var asked = requests.Select(r => new
        {
            span = r.Span,
            rise = r.Rise,
            lengths = r.UnstressedLengths,
            loads = r.Loads,
            weight = r.WeightPerLength,
            stiffness = r.AxialStiffness,
        });
        Referee.OnFile(JsonSerializer.SerializeToUtf8Bytes(asked), "ropes.json", path =>
        {
            var answers = JsonDocument.Parse(Referee.Scipy("rope_energy.py", path)).RootElement.EnumerateArray().ToArray();
            Assert.Equal(Count, answers.Length);
            foreach (var (request, answer) in requests.Zip(answers))
            {
                var nodes = LoadCaseSolver.Find(request).Nodes;
                var furthest = answer.EnumerateArray().Zip(nodes).Max(p =>
                    RopeSamples.Distance(new RopePoint(p.First[0].GetDouble(), p.First[1].GetDouble()), p.Second));
                Assert.True(
                    furthest <= 1e-6 * request.Span, FormattableString.Invariant($"{furthest} m apart on a span of {request.Span} m"));
            }
        });
    }
}
