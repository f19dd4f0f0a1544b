using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Tests.Ropes.Pairs;

public sealed class SwayModesTests
{
    // A string under the pull H with n - 1 equal masses m at steps d, by hand: ω² = 2 H / (m d) · (1 - cos(π k / n)). The weights
    // at the height of the ropes, so that nothing rolls; nine tenths of the mass are the ropes' own, half of each bay's to its
    // two nodes.
    [Fact]
    public void Heavy_ropes_sway_with_their_own_mass()
    {
        const int Bays = 12;
        const double Span = 9, Step = Span / Bays, Rope = 270, Node = 30 * Step;
        var design = DesignState.Find(new DesignRequest
        {
            Span = Span,
            Rise = 0,
            Sag = 0.01 * Span,
            Step = FrameStep.Plan,
            Bays = Bays,
            WeightPerLength = Rope,
            AxialStiffness = 1e9,
            NodeLoads = nodes => [.. nodes.Select(_ => Node)],
        });
        var (rope, loads) = (LoadCaseRequest.At(design, 0, Backstays.None), PairSamples.Loads(design, 0, 0));
        var masses = new PairMasses(
            [.. loads.Weights.Select(w => w / 9.80665)], [.. loads.Weights.Select(_ => 0.0)], [.. loads.Weights.Select(_ => 0.1)]);
        var sway = SwayModes.Find(rope, PairSamples.Spacing, loads, PairSamples.Find(rope, loads), masses)!;

        var pull = 300 * Span * Span / 8 / (0.01 * Span);
        double Hertz(int k) => Math.Sqrt(2 * pull / (300 * Step / 9.80665 * Step) * (1 - Math.Cos(Math.PI * k / Bays))) / 2 / Math.PI;
        RopeSamples.Close(Hertz(1), sway.OneHalfWave, 2e-3);
        RopeSamples.Close(Hertz(2), sway.TwoHalfWaves!.Value, 2e-3);
    }
}
