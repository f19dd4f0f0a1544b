using System.Collections.Immutable;

namespace BridgeForm.Stocking.Cutting;

/// <summary>What is still to be cut: the problem without the lengths that are done.</summary>
/// <param name="Problem">The smaller problem.</param>
/// <param name="Items">Index of each of its lengths in the whole problem.</param>
internal sealed record Residual(CuttingProblem Problem, ImmutableArray<int> Items)
{
    /// <summary>The rest of a problem; null when nothing is left.</summary>
    public static Residual? Leave(CuttingProblem whole, int[] left)
    {
        ImmutableArray<int> items = [.. Enumerable.Range(0, whole.Count).Where(i => left[i] > 0)];
        return items.IsEmpty ? null : new Residual(
            whole with { Lengths = [.. items.Select(i => whole.Lengths[i])], Demand = [.. items.Select(i => left[i])] },
            items);
    }

    /// <summary>A pattern of the rest as one of the whole.</summary>
    public Pattern Widened(Pattern pattern, int count)
    {
        var counts = new int[count];
        for (var i = 0; i < Items.Length; i++)
        {
            counts[Items[i]] = pattern.Counts[i];
        }

        return pattern with { Counts = counts };
    }

    /// <summary>A pattern of the whole with only the lengths of the rest.</summary>
    public Pattern Narrowed(Pattern pattern) => pattern with { Counts = [.. Items.Select(i => pattern.Counts[i])] };
}

/// <summary>How often the relaxation uses a pattern.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="Amount">Boards cut by it, not a whole number.</param>
internal sealed record PatternUse(Pattern Pattern, double Amount);
