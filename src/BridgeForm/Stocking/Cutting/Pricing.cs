using System.Collections.Immutable;

namespace BridgeForm.Stocking.Cutting;

/// <summary>Finds the fillings worth more than their board: exactly as long as that is quick, then on a grid.</summary>
/// <param name="problem">Lengths and boards.</param>
/// <param name="goals">Value that a filling of each board must exceed.</param>
/// <param name="exact">Begins exactly.</param>
/// <param name="effort">Work of the whole job, of which this spends.</param>
internal sealed class Pricing(CuttingProblem problem, double[] goals, bool exact, CuttingEffort effort)
{
    // Fillings compared in all rounds together: some hundredths of a second. Boards with many short pieces of many lengths
    // have fillings without number.
    private int _budget = 500_000;

    /// <summary>Fillings are compared one by one so far.</summary>
    public bool IsExact { get; private set; } = exact;

    /// <summary>
    /// Fillings worth more than their board's goal, and the most that any filling of a board is worth, as a share of its cost.
    /// </summary>
    /// <param name="values">Value of a piece of each length.</param>
    public (ImmutableArray<Pattern> Found, double Excess) Find(double[] values)
    {
        if (IsExact && Exactly(values) is { IsDefault: false } best)
        {
            var excess = 0.0;
            var found = ImmutableArray.CreateBuilder<Pattern>();
            for (var b = 0; b < goals.Length; b++)
            {
                excess = Math.Max(excess, (best[b]?.Value ?? goals[b]) / problem.Boards[b].Cost);
                if (best[b] is { } filling)
                {
                    found.Add(new Pattern(b, filling.Counts));
                }
            }

            return (found.ToImmutable(), excess);
        }

        IsExact = false;
        return OnGrid(values);
    }

    private ImmutableArray<Filling?> Exactly(double[] values)
    {
        var before = _budget;
        var best = ParetoKnapsack.Best(problem, values, problem.Demand, goals, ref _budget);
        effort.Compared(before - _budget);
        return best;
    }

    private (ImmutableArray<Pattern> Found, double Excess) OnGrid(double[] values)
    {
        effort.Filled(2 * GridKnapsack.Work(problem, values, problem.Demand));
        var above = GridKnapsack.Best(problem, values, problem.Demand, roundUp: false);
        var below = new Lazy<ImmutableArray<Filling>>(() => GridKnapsack.Best(problem, values, problem.Demand, roundUp: true));
        var found = ImmutableArray.CreateBuilder<Pattern>();
        var excess = 0.0;
        for (var b = 0; b < goals.Length; b++)
        {
            excess = Math.Max(excess, above[b].Value / problem.Boards[b].Cost);
            var filling = problem.Weight(above[b].Counts) <= problem.Capacity(b) ? above[b] : below.Value[b];
            if (filling.Value > goals[b])
            {
                found.Add(new Pattern(b, filling.Counts));
            }
        }

        return (found.ToImmutable(), excess);
    }
}
