using System.Collections.Immutable;

namespace BridgeForm.Stocking.Cutting;

/// <summary>Pieces of one length that are taken together or not at all.</summary>
/// <param name="Item">Which length.</param>
/// <param name="Count">How many.</param>
/// <param name="Weight">What they take up, metres.</param>
/// <param name="Value">What they are worth.</param>
internal readonly record struct Bundle(int Item, int Count, double Weight, double Value)
{
    /// <summary>Value of a metre.</summary>
    public double Density => Value / Weight;

    /// <summary>
    /// Pieces of one length in bundles of 1, 2, 4, … and the rest, so that every number up to the limit can be made; best value
    /// a metre first.
    /// </summary>
    /// <param name="problem">Lengths.</param>
    /// <param name="values">Value of a piece of each length; those at or below 0 are left out.</param>
    /// <param name="limits">Most pieces of each length.</param>
    /// <param name="largest">Room of the longest board, metres.</param>
    public static List<Bundle> List(CuttingProblem problem, double[] values, ImmutableArray<int> limits, double largest)
    {
        var bundles = new List<Bundle>();
        foreach (var item in Enumerable.Range(0, problem.Count)
            .Where(i => values[i] > 0)
            .OrderByDescending(i => values[i] / problem.Weight(i))
            .ThenBy(i => i))
        {
            var left = Math.Min(limits[item], (int)(largest / problem.Weight(item)));
            for (var size = 1; left > 0; size *= 2)
            {
                var count = Math.Min(size, left);
                bundles.Add(new Bundle(item, count, count * problem.Weight(item), count * values[item]));
                left -= count;
            }
        }

        return bundles;
    }
}

/// <summary>What lies on a board.</summary>
/// <param name="Counts">Pieces of each length.</param>
/// <param name="Value">What they are worth together.</param>
internal sealed record Filling(int[] Counts, double Value);
