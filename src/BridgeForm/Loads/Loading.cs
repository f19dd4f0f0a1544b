using System.Collections.Immutable;
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
