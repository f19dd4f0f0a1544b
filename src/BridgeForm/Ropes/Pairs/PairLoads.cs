using System.Collections.Immutable;

namespace BridgeForm.Ropes.Pairs;

/// <summary>What stands on two ropes, brought to their nodes, supports included (not read there).</summary>
/// <param name="Weights">Of the whole bridge, newtons down; the ropes' own weight is not in it.</param>
/// <param name="Moments">Weight × its distance from the middle towards the left rope, N·m.</param>
/// <param name="HeightMoments">Weight × its height over the ropes' axes, N·m.</param>
public sealed record PairLoads(
    ImmutableArray<double> Weights, ImmutableArray<double> Moments, ImmutableArray<double> HeightMoments)
{
    /// <summary>Nothing draws to one side.</summary>
    public bool IsEven => !Moments.Any(m => Math.Abs(m) > 0);

    /// <summary>
    /// Load of each node on one rope, newtons: half of the weight, and of a weight's side moment with its lever the share by
    /// statics, ½ ± (e + h·tan θ)/s.
    /// </summary>
    /// <param name="tilts">tan θ of each frame, positive where the left rope hangs lower; null for upright frames.</param>
    /// <param name="spacing">s, between the ropes, metres.</param>
    /// <param name="side">+1 for the left rope, −1 for the right one.</param>
    internal ImmutableArray<double> OnOne(double[]? tilts, double spacing, int side)
    {
        var loads = new double[Weights.Length];
        for (var i = 1; i + 1 < loads.Length; i++)
        {
            var moment = Moments[i] + (tilts is null ? 0 : HeightMoments[i] * tilts[i]);
            loads[i] = (Weights[i] / 2) + (side * moment / spacing);
        }

        return ImmutableArray.Create(loads);
    }
}
