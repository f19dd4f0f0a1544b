using BridgeForm.Loads;
using BridgeForm.Ropes.Pairs;
using BridgeForm.Tests.Checks;

namespace BridgeForm.Tests.Loads;

public sealed class SideMotionTests
{
    // What comes on top of the empty bridge's weight are people: 1.0 m above the deck (common practice, no source) and all over
    // the width b, of which b²/12 is the mean square of the distance from the middle.
    [Fact]
    public void People_sway_with_the_bridge_above_its_deck()
    {
        const double G = 9.80665;
        var context = Contexts.Of(Bridges.Garden);
        var input = LoadCaseInput.Gather(context.Layout, context.Rope, context.Masses);
        var standing = StandingWeights.Weigh(context.Layout);
        var (dead, full) = (LoadCases.Evenly(input, "dead")!, LoadCases.Evenly(input, "live-full")!);
        double[] people = [.. full.Loads.Weights.Zip(dead.Loads.Weights).Select(w => (w.First - w.Second) / G)];
        Assert.InRange(people[5], 40 * 4.88 * 0.9 * 0.9, 60 * 4.88 * 1.2 * 1.1);
        double Square(int i) => Math.Pow(standing.DeckHeights[i] + 1.0, 2) + (input.ClearWidth * input.ClearWidth / 12);
        var masses = new PairMasses(
            [.. full.Loads.Weights.Select(w => w / G)], [.. full.Loads.HeightMoments.Select(m => m / G)],
            [.. people.Select((p, i) => standing.Seconds[i] + (p * Square(i)))]);
        var by = SwayModes.Find(full.Rope, full.Spacing, full.Loads, full.Shape, masses)!;
        var given = context.Ropework.Modes.Single(m => m.Case == "live-full");
        Assert.Equal(by.OneHalfWave, given.LateralOneHalfWave!.Value, 1e-9);
        Assert.Equal(by.TwoHalfWaves!.Value, given.LateralTwoHalfWaves!.Value, 1e-9);
    }
}
