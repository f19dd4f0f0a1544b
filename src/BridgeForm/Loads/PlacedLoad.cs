using System.Collections.Immutable;

namespace BridgeForm.Loads;

/// <summary>A load on the deck, brought to the frames.</summary>
/// <param name="Weights">Newtons of the whole bridge at each node, supports included (0 there).</param>
/// <param name="FromMiddle">Its resultant's distance from the middle line towards the more heavily loaded rope, metres.</param>
/// <param name="Heights">Its height over the ropes' axes at each node, metres.</param>
internal sealed record PlacedLoad(ImmutableArray<double> Weights, double FromMiddle, ImmutableArray<double> Heights)
{
    /// <summary>Share of each frame's weight on that rope, by statics: ½ + (e + h·tan θ)/s; the largest of all frames that carry some of it.</summary>
    /// <param name="tilts">tan θ, positive where that rope hangs lower.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="side">+1 for that rope, −1 for the other.</param>
    public double LargestShare(ImmutableArray<double> tilts, double spacing, int side)
    {
        var largest = 0.0;
        for (var i = 1; i + 1 < Weights.Length; i++)
        {
            if (Weights[i] > 0)
                largest = Math.Max(largest, 0.5 + (side * (FromMiddle + (Heights[i] * tilts[i])) / spacing));
        }

        return largest;
    }
}
