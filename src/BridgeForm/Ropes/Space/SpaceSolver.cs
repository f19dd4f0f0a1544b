namespace BridgeForm.Ropes.Space;

/// <summary>
/// Two ropes in space under frames that stand above them, in a wind across the bridge: frames move sideways and roll as far as
/// they go, each rope's bays are elastic catenaries in their own slanting planes.
/// </summary>
/// <remarks>
/// Frames are rigid and yaw freely: the two nodes of a frame keep their distance, and a frame whose nodes have not moved alike along
/// the bridge is less broad across it. Weight and wind act at their heights in the plane across the bridge and keep
/// their directions. All forces come from an energy, and Newton's method runs on moves of the frames and forces of the bays at
/// once, with the exact tangent. An equilibrium counts only where that tangent is positive definite, and where no frame rolls
/// by more than 45°: upside down under the ropes is an equilibrium too. It is looked for at once and, where that fails, step by
/// step from the calm.
/// </remarks>
public static class SpaceSolver
{
    /// <summary>A frame that leans further has turned over, whatever the ropes still hold, radians.</summary>
    public const double Fallen = Math.PI / 4;

    // The wind is let in by no smaller share than this, and by no smaller part of what has been let in: where it stops is told
    // between two figures.
    private const double SmallestShare = 1.0 / 64;
    private const double SmallestPart = 1.0 / 8;

    // Upright frames lose their footing where the wind's moments come near to those of the weights: a little less goes first.
    private const double Nearly = 0.75;
    private const double Half = 0.5;

    // From one step to the next no frame rolls by more than this, radians: who does has lost its footing in between and swung to
    // where the ropes catch it.
    private const double Jump = 0.15;

    /// <summary>
    /// The equilibrium, how much of the wind leads there from the calm, or both; null where the calm itself has none.
    /// </summary>
    /// <param name="rope">One rope: lengths, weight, stiffness, supports; its loads are not read.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them and blows against it.</param>
    /// <param name="calm">Either rope under half of the weights, without wind: where the search starts.</param>
    /// <param name="token">Asked at each step.</param>
    public static SpaceResult? Find(
        LoadCaseRequest rope, double spacing, SpaceLoads loads, RopeShape calm, CancellationToken token = default) =>
        Find(rope, spacing, loads, calm, (Fallen, true), token);

    /// <summary>The same to another limit, or without following the way.</summary>
    /// <param name="rope">One rope.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them and blows against it.</param>
    /// <param name="calm">Either rope under half of the weights, without wind.</param>
    /// <param name="ends">
    /// A frame that rolls further than so many radians counts as turned over; and whether the way from the calm is followed where an
    /// equilibrium is found at once.
    /// </param>
    /// <param name="token">Asked at each step.</param>
    internal static SpaceResult? Find(
        LoadCaseRequest rope, double spacing, SpaceLoads loads, RopeShape calm, (double Fallen, bool IsFollowed) ends,
        CancellationToken token)
    {
        var trial = new SpaceTrial(rope, spacing, calm, ends.Fallen);
        var found = trial.TryReach(loads) ? trial.Shape(loads) : null;
        if (found is not null && (!ends.IsFollowed || found.Rolls.Max(Math.Abs) <= Jump))
        {
            return new SpaceResult(found, 1, 1);
        }

        trial.Begin();
        return trial.TryReach(loads.Blowing(0), onTheWay: true)
            ? BySteps(trial, loads, Nearly * Balance(spacing, loads), found, token)
            : null;
    }

    private static SpaceResult BySteps(SpaceTrial trial, SpaceLoads loads, double first, SpaceShape? leapt, CancellationToken token)
    {
        trial.Begin();
        var (done, last, step) = (0.0, 0.0, first is > 0 and < Half ? first : Half);
        while (true)
        {
            token.ThrowIfCancellationRequested();
            var next = Math.Min(1, done + step);
            if (last > 0)
            {
                trial.GoOn((next - done) / last);
            }

            var isReached = trial.TryReach(loads.Blowing(next), onTheWay: next < 1);
            if (isReached && trial.Rolled <= Jump)
            {
                if (next >= 1)
                {
                    return new SpaceResult(trial.Shape(loads), 1, 1);
                }

                trial.Keep();
                (last, step, done) = (next - done, done > 0 ? step : step / 2, next);
                continue;
            }

            trial.Return();
            step /= 2;

            // Frames that roll far in a long step may follow in short ones: who swings does so in the shortest as well.
            if (step < (isReached ? SmallestShare : Math.Max(SmallestShare, SmallestPart * done)))
            {
                return new SpaceResult(leapt, done, next);
            }
        }
    }

    // Share of the wind at which it turns the whole bridge about its leeward rope against all weights.
    private static double Balance(double spacing, SpaceLoads loads) => loads.Weights.Sum() * spacing / 2 / loads.WindMoments.Sum();
}
