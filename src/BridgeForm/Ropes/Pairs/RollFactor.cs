using System.Collections.Immutable;

namespace BridgeForm.Ropes.Pairs;

/// <summary>
/// How many times as high the weights could stand over the ropes before the section turns over, tensions and shape held:
/// the smallest λ with det(K − λ·G) = 0, K the stiffness of both ropes, G weight × height on the frames' rotation. It does
/// not say how many times as heavy they could be: more weight pulls the ropes tighter as well.
/// </summary>
/// <param name="Value">λ with the deck free in plan; infinite where nothing stands above the ropes.</param>
/// <param name="IsToOneSide">Most of the bridge rolls to one side; else parts of it roll against each other.</param>
/// <param name="Shape">Roll of each frame in that mode, supports included, the largest 1.</param>
public sealed record RollFactor(double Value, bool IsToOneSide, ImmutableArray<double> Shape)
{
    /// <summary>Of a pair of ropes; null when no frame hangs between the supports.</summary>
    /// <param name="rope">One rope, as <see cref="PairSolver"/> was given it.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them.</param>
    /// <param name="pair">Both ropes under it.</param>
    public static RollFactor? Find(LoadCaseRequest rope, double spacing, PairLoads loads, PairShape pair)
    {
        if (pair.Left.Nodes.Length < 3)
        {
            return null;
        }

        var left = BayStiffness.Find(rope, pair.Left);
        var isAlike = ReferenceEquals(pair.Left, pair.Right);
        var (ratio, mode) = isAlike
            ? SmallestRatio.Find(PairStiffness.OfOne(left), PairStiffness.LeverOnOne(loads, spacing))
            : SmallestRatio.Find(
                PairStiffness.OfBoth(left, BayStiffness.Find(rope, pair.Right)), PairStiffness.LeverOnBoth(loads, spacing));
        var roll = new double[pair.Left.Nodes.Length];
        for (var i = 1; i + 1 < roll.Length; i++)
        {
            roll[i] = isAlike ? mode[(2 * i) - 1] : mode[(4 * i) - 3] - mode[(4 * i) - 1];
        }

        var largest = roll.MaxBy(Math.Abs);
        var scaled = Array.ConvertAll(roll, r => Math.Abs(largest) > 0 ? r / largest : 0);
        return new RollFactor(ratio, scaled.Sum() > scaled.Sum(Math.Abs) / 2, ImmutableArray.Create(scaled));
    }

    /// <summary>
    /// The same with the deck held in plan, as by a deck that is a stiff plate and does not move to the side: no frame yaws,
    /// and the deck's height does not move to the side, so that rolling frames swing the ropes out beneath it. For
    /// information: neither is so of boards on frames.
    /// </summary>
    /// <param name="rope">One rope, as <see cref="PairSolver"/> was given it.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them.</param>
    /// <param name="pair">Both ropes under it.</param>
    /// <param name="heights">Height of the deck over the ropes' axes at each node, metres.</param>
    public static double HeldInPlan(
        LoadCaseRequest rope, double spacing, PairLoads loads, PairShape pair, ImmutableArray<double> heights)
    {
        var (left, right) = (BayStiffness.Find(rope, pair.Left), BayStiffness.Find(rope, pair.Right));
        var stiffness = HeldDeck.Stiffness(left, right);
        HeldDeck.AddSideways(stiffness, pair, spacing, heights);
        return SmallestRatio.Find(stiffness, HeldDeck.Lever(loads, spacing)).Ratio;
    }
}
