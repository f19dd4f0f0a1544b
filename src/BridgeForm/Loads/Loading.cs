using System.Collections.Immutable;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>A load case before it is solved.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">In a person's words.</param>
/// <param name="Temperature">°C.</param>
/// <param name="Hung">What hangs on both ropes by itself, evenly, newtons at each node.</param>
/// <param name="HungMoments">Weight × height over the ropes of that, N·m.</param>
internal sealed record Loading(
    string Id, string Title, double Temperature, ImmutableArray<double> Hung, ImmutableArray<double> HungMoments)
{
    /// <summary>What lies on the deck.</summary>
    public ImmutableArray<PlacedLoad> On { get; init; } = [];

    /// <summary>Where the live load lies, when that was looked for; else empty.</summary>
    public ImmutableArray<LoadedStretch> Stretches { get; init; } = [];

    /// <summary>With one load more.</summary>
    public Loading Plus(PlacedLoad load) => this with { On = On.Add(load) };

    /// <summary>All of it, brought to the nodes.</summary>
    public PairLoads Sum()
    {
        var (weights, moments, heights) = (new double[Hung.Length], new double[Hung.Length], new double[Hung.Length]);
        for (var i = 0; i < weights.Length; i++)
        {
            (weights[i], heights[i]) = (Hung[i], HungMoments[i]);
            foreach (var load in On)
            {
                weights[i] += load.Weights[i];
                moments[i] += load.Weights[i] * load.FromMiddle;
                heights[i] += load.Weights[i] * load.Heights[i];
            }
        }

        return new PairLoads(ImmutableArray.Create(weights), ImmutableArray.Create(moments), ImmutableArray.Create(heights));
    }
}

/// <summary>A load on the deck, brought to the frames.</summary>
/// <param name="Weights">Newtons of the whole bridge at each node, supports included (0 there).</param>
/// <param name="FromMiddle">Its resultant's distance from the middle line towards the more heavily loaded rope, metres.</param>
/// <param name="Heights">Its height over the ropes' axes at each node, metres.</param>
internal sealed record PlacedLoad(ImmutableArray<double> Weights, double FromMiddle, ImmutableArray<double> Heights)
{
    /// <summary>
    /// Share of each frame's weight on that rope, by statics: ½ + (e + h·tan θ)/s; the largest of all frames that carry some of
    /// it.
    /// </summary>
    /// <param name="tilts">tan θ, positive where that rope hangs lower.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="side">+1 for that rope, −1 for the other.</param>
    public double LargestShare(ImmutableArray<double> tilts, double spacing, int side)
    {
        var largest = 0.0;
        for (var i = 1; i + 1 < Weights.Length; i++)
        {
            largest = Math.Max(largest, Share(i, tilts, spacing, side));
        }

        return largest;
    }

    /// <summary>The larger share of either rope at one frame; 0 where nothing of it stands.</summary>
    public double LargestShareAt(int frame, ImmutableArray<double> tilts, double spacing) =>
        Math.Max(Share(frame, tilts, spacing, 1), Share(frame, tilts, spacing, -1));

    private double Share(int frame, ImmutableArray<double> tilts, double spacing, int side) =>
        Weights[frame] > 0 ? 0.5 + (side * (FromMiddle + (Heights[frame] * tilts[frame])) / spacing) : 0;
}

/// <summary>Both ropes of a load case with what stands on them; left is the more heavily loaded one where loads lie to one side.</summary>
/// <param name="Rope">One rope at the temperature of the case.</param>
/// <param name="Spacing">Between the ropes, metres.</param>
/// <param name="Loads">What stands on both.</param>
/// <param name="Shape">Both ropes under it.</param>
internal sealed record PairCase(LoadCaseRequest Rope, double Spacing, PairLoads Loads, PairShape Shape)
{
    /// <summary>How many times as high the weights could stand; null when no frame hangs between the supports.</summary>
    public RollFactor? Roll() => RollFactor.Find(Rope, Spacing, Loads, Shape);
}
