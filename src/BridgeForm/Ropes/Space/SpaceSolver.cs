namespace BridgeForm.Ropes.Space;

/// <summary>
/// Two ropes in space under frames that stand above them, in a wind across the bridge: frames move sideways and roll as far as
/// they go, each rope's bays are elastic catenaries in their own slanting planes.
/// </summary>
/// <remarks>
/// Frames are rigid in their plane, which stays square to the bridge's line: the two nodes of a frame keep their distance there
/// and move along the bridge each by itself (yaw free). Weight and wind act at their heights in the frame's plane and keep
/// their directions. All forces come from an energy, and Newton's method runs on moves of the frames and forces of the bays at
/// once, with the exact tangent. An equilibrium counts only where that tangent is positive definite, and where no frame rolls
/// by more than 45°: upside down under the ropes is an equilibrium too. It is looked for at once and, where that fails, step by
/// step from the calm.
/// </remarks>
public static class SpaceSolver
{
    /// <summary>A frame that leans further has turned over, whatever the ropes still hold, radians.</summary>
    public const double Fallen = Math.PI / 4;

    /// <summary>The wind is let in by no smaller share than this, so the largest share that is told is right to as much.</summary>
    public const double SmallestShare = 1.0 / 16;

    /// <summary>The equilibrium, or how much of the wind has one; null where the ropes have no shape in the calm.</summary>
    /// <param name="rope">One rope: lengths, weight, stiffness, supports; its loads are not read.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them and blows against it.</param>
    /// <param name="calm">Either rope under half of the weights, without wind: where the search starts.</param>
    /// <param name="token">Asked at each step.</param>
    public static SpaceResult? Find(
        LoadCaseRequest rope, double spacing, SpaceLoads loads, RopeShape calm, CancellationToken token = default)
    {
        var trial = new SpaceTrial(rope, spacing, calm);
        if (trial.TryReach(loads))
        {
            return new SpaceResult(trial.Shape(loads), 1);
        }

        trial.Begin();
        if (!trial.TryReach(loads.Blowing(0)))
        {
            return calm.Nodes.Length < 3 ? null : new SpaceResult(null, 0);
        }

        var (done, step) = (0.0, 0.5);
        while (done < 1)
        {
            token.ThrowIfCancellationRequested();
            trial.Keep();
            if (trial.TryReach(loads.Blowing(Math.Min(1, done + step))))
            {
                done = Math.Min(1, done + step);
                continue;
            }

            trial.Return();
            step /= 2;
            if (step < SmallestShare)
            {
                return new SpaceResult(null, done);
            }
        }

        return new SpaceResult(trial.Shape(loads), 1);
    }
}
