using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Stocking;

/// <summary>
/// What the crew does to a bridge half built where it reaches for the next frame: two people on each frame that this stage hung, so on
/// two frames where it is built from both ends.
/// </summary>
/// <param name="Frames">Numbers of the frames they stand at.</param>
/// <param name="Steepest">
/// Steepest chord with two in the middle of the deck, at either end alone and at both, rise over run, positive; null where even that
/// turns it over.
/// </param>
/// <param name="Tension">Largest tension of one rope then, newtons; null likewise.</param>
/// <param name="Tilt">
/// Largest cross slope of any frame that hangs with two beside one guard, at either end alone, at both ends on one side and on opposite
/// ones, tan θ, positive; null where one of these turns the frames over.
/// </param>
public sealed record CrewOnStage(ImmutableArray<int> Frames, double? Steepest, double? Tension, double? Tilt)
{
    /// <summary>Of one person with tools, newtons: 250 lbf (1.11 kN), the personnel load of ASCE 37-14, from memory.</summary>
    public const double Person = 250 * Quantities.Units.PoundForce;

    /// <summary>Of the two at one frame, newtons.</summary>
    public const double Weight = 2 * Person;

    /// <summary>On the frames that a stage hung; null where it hung none.</summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="rope">One rope as it hangs in this stage; its loads are not read.</param>
    /// <param name="stage">What hangs on both ropes so far.</param>
    /// <param name="deckHeights">Deck over the ropes' axes at each node, metres.</param>
    /// <param name="hung">Numbers of the frames that the stage hung, one or two.</param>
    internal static CrewOnStage? On(
        BridgeParameters parameters, LoadCaseRequest rope, PairLoads stage, ImmutableArray<double> deckHeights, ImmutableArray<int> hung)
    {
        if (hung.IsEmpty)
        {
            return null;
        }

        var (spacing, edge) = (
            parameters.Ropes.Spacing, NodeLoads.EdgeFromMiddle(DeckWidth.BetweenPosts(parameters), parameters.Loads.PointEdge));
        // One crew pulls the ropes down at its own end alone: steeper there than two crews that pull against each other.
        var middle = Crews(hung).Select(frames => Solve(frames.Select(f => (f, 0.0)))).ToList();
        return new CrewOnStage(
            hung,
            Largest(middle.Select(p => p is null ? (double?)null : RopeCurve.Steepest(p.Left.Nodes))),
            Largest(middle.Select(p => p?.Left.LargestTension)),
            Largest(Beside(hung, edge).Select(Solve).Select(p => p is null ? null : LargestOf(p))));

        PairShape? Solve(IEnumerable<(int Frame, double Aside)> people) => PairSolver.TryFind(
            rope, spacing, people.Aggregate(stage, (loads, p) => With(loads, p.Frame, Height(p.Frame), p.Aside)),
            LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var pair, out _) && pair is { RollsOver: false }
            ? pair : null;

        double Height(int frame) => deckHeights[frame] + StandingWeights.PeopleOverDeck;

        // Where nothing hangs there is no frame to lean.
        double? LargestOf(PairShape pair) => pair.Tilts.Where((_, i) => stage.Weights[i] > 0).Max(Math.Abs);
    }

    private static IEnumerable<IEnumerable<int>> Crews(ImmutableArray<int> hung) =>
        hung.Length > 1 ? [.. hung.Select(f => (int[])[f]), hung] : [hung];

    private static IEnumerable<IEnumerable<(int Frame, double Aside)>> Beside(ImmutableArray<int> hung, double edge)
    {
        foreach (var frame in hung)
        {
            yield return [(frame, edge)];
        }

        if (hung is [var one, var other])
        {
            yield return [(one, edge), (other, edge)];
            yield return [(one, edge), (other, -edge)];
        }
    }

    // What turns over is worse than anything that does not.
    private static double? Largest(IEnumerable<double?> all) => all.Aggregate((a, b) => a is { } x && b is { } y ? Math.Max(x, y) : null);

    private static PairLoads With(PairLoads stage, int frame, double height, double aside)
    {
        ImmutableArray<double> More(ImmutableArray<double> all, double more) => all.SetItem(frame, all[frame] + more);
        return new PairLoads(
            More(stage.Weights, Weight), More(stage.Moments, Weight * aside), More(stage.HeightMoments, Weight * height));
    }
}
