using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Stocking;

/// <summary>
/// What two of the crew do to a bridge half built, where they reach for the next frame: on the frame that this stage hung, of two such
/// frames at the one where it is worse.
/// </summary>
/// <param name="Frame">Number of the frame they stand at.</param>
/// <param name="Steepest">Steepest chord with both in the middle, rise over run, positive; null where even that turns it over.</param>
/// <param name="Tension">Largest tension of one rope then, newtons; null likewise.</param>
/// <param name="Tilt">
/// Cross slope there with both beside one guard, tan θ, positive; null where that turns the frames over.
/// </param>
public sealed record CrewOnStage(int Frame, double? Steepest, double? Tension, double? Tilt)
{
    /// <summary>Of one person with tools, newtons: 250 lbf (1.11 kN), the personnel load of ASCE 37-14, from memory.</summary>
    public const double Person = 250 * Quantities.Units.PoundForce;

    /// <summary>Of both, newtons.</summary>
    public const double Weight = 2 * Person;

    /// <summary>The worst of the frames that a stage hung; null where it hung none.</summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="rope">One rope as it hangs in this stage; its loads are not read.</param>
    /// <param name="stage">What hangs on both ropes so far.</param>
    /// <param name="deckHeights">Deck over the ropes' axes at each node, metres.</param>
    /// <param name="hung">Numbers of the frames that the stage hung.</param>
    internal static CrewOnStage? Worst(
        BridgeParameters parameters, LoadCaseRequest rope, PairLoads stage, ImmutableArray<double> deckHeights, IEnumerable<int> hung)
    {
        var all = hung.Select(f => At(parameters, rope, stage, deckHeights[f] + StandingWeights.PeopleOverDeck, f)).ToList();
        return all.Count == 0 ? null : new CrewOnStage(
            Ties.FirstLargest(all, a => a.Tilt ?? double.PositiveInfinity)!.Frame,
            Largest(all.Select(a => a.Steepest)), Largest(all.Select(a => a.Tension)), Largest(all.Select(a => a.Tilt)));
    }

    // What has no shape is worse than anything that has one.
    private static double? Largest(IEnumerable<double?> all) => all.Aggregate((a, b) => a is { } x && b is { } y ? Math.Max(x, y) : null);

    private static CrewOnStage At(BridgeParameters parameters, LoadCaseRequest rope, PairLoads stage, double height, int frame)
    {
        var (spacing, edge) = (
            parameters.Ropes.Spacing, NodeLoads.EdgeFromMiddle(DeckWidth.BetweenPosts(parameters), parameters.Loads.PointEdge));
        var middle = Solve(With(stage, frame, height, 0));
        var side = Solve(With(stage, frame, height, edge));
        return new CrewOnStage(
            frame,
            middle is null ? null : RopeCurve.Steepest(middle.Left.Nodes),
            middle?.Left.LargestTension,
            side is null ? null : Math.Abs(side.Tilts[frame]));

        PairShape? Solve(PairLoads loads) => PairSolver.TryFind(
            rope, spacing, loads, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var pair, out _)
            && pair is { RollsOver: false } ? pair : null;
    }

    private static PairLoads With(PairLoads stage, int frame, double height, double aside)
    {
        ImmutableArray<double> More(ImmutableArray<double> all, double more) => all.SetItem(frame, all[frame] + more);
        return new PairLoads(
            More(stage.Weights, Weight), More(stage.Moments, Weight * aside), More(stage.HeightMoments, Weight * height));
    }
}
