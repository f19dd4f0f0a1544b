using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>
/// Where live load brings the section nearest to rolling over. A weight takes from it by its height and the square of the roll where
/// it stands, and steadies it by what it pulls the ropes tighter, which goes with x·(L − x) along the bridge: load lies where the
/// one is more than some share of the other. The shares are tried with the mode of the full deck, then with that of the worst.
/// </summary>
internal sealed class RollLoads(LoadPatterns patterns, LoadCaseInput input, Func<Loading, LoadCaseResult> solve)
{
    // Both at their most are 1. On five bridges of 6 to 30 bays the worst lay between 0.65 and 0.9, and what lies a tenth beside it came
    // out less than 1 % better.
    private static readonly ImmutableArray<double> s_shares = [0.5, 0.7, 0.9];
    private const double Nearby = 0.1;

    /// <summary>The worst; null where nothing lies on the deck, or the full deck does not stand.</summary>
    /// <param name="full">Both ropes with live load on the whole deck.</param>
    public LoadCaseResult? Find(PairCase? full)
    {
        if (!(input.Loads.Live > 0) || full is not { Shape.RollsOver: false } || full.Roll() is not { } mode)
        {
            return null;
        }

        var (share, worst) = Ties.FirstLeast(s_shares.Select(s => (s, Try(mode, s))), t => Factor(t.Item2));
        if (worst.Pair?.Roll() is not { } again || worst.RollsOver)
        {
            return worst;
        }

        double[] nearby = [share - Nearby, share, share + Nearby];
        return Ties.FirstLeast(nearby.Select(s => Try(again, s)).Append(worst), Factor);
    }

    // What does not stand is worse than anything that does.
    private static double Factor(LoadCaseResult result) =>
        result is { RollsOver: false, Pair: { } pair } && pair.Roll() is { } roll ? roll.Value : 0;

    private LoadCaseResult Try(RollFactor mode, double share)
    {
        var nodes = input.Design.Nodes;
        var span = nodes[^1].X;
        double[] line = [.. mode.Shape.Select((roll, i) => (roll * roll) - (share * 4 * nodes[i].X * (span - nodes[i].X) / (span * span)))];
        (line[0], line[^1]) = (0, 0);
        return solve(patterns.OnStretches(
            LoadCaseIds.LeastRoll, "Live load where the section comes nearest to rolling over, wood dry",
            [.. Extents.Positive(nodes, line, DeckPart.Whole)], LoadPatterns.Wood.Dry, input.ReferenceTemperature));
    }
}
