using System.Collections.Immutable;

namespace BridgeForm.Stocking.Cutting;

/// <summary>The linear relaxation of a cutting-stock problem, solved.</summary>
/// <param name="InUse">Patterns with their amounts, not whole numbers.</param>
/// <param name="Values">Value of a piece of each length. No board can be filled with more value than it costs, so any plan costs at least the value of its pieces: the certificate.</param>
/// <param name="Bound">No plan costs less.</param>
internal sealed record Relaxation(ImmutableArray<(Pattern Pattern, double Amount)> InUse, double[] Values, double Bound);

/// <summary>Gilmore and Gomory's column generation (1961): patterns are made when the prices of the lengths ask for them.</summary>
internal static class ColumnGeneration
{
    // A filling worth more than its board by less than this share moves the bound in its eighth digit.
    private const double Improvement = 1e-8;

    // Tens of rounds are usual; beyond this the bound below is still a bound, only not the best.
    private const int MostRounds = 400;

    /// <summary>Solves the relaxation. <paramref name="known"/> patterns are taken over with no more pieces than are asked for.</summary>
    public static Relaxation Solve(CuttingProblem problem, IEnumerable<Pattern> known)
    {
        var master = new PatternMaster(problem);
        foreach (var pattern in known)
        {
            master.Add(Cut(pattern, problem.Demand));
        }

        var goals = problem.Boards.Select(b => b.Cost * (1 + Improvement)).ToArray();
        double[] values = [];
        var excess = 1.0;
        for (var round = 0; round < MostRounds; round++)
        {
            values = master.Solve();
            var found = ParetoKnapsack.Best(problem, values, problem.Demand, goals);
            excess = 1 + Improvement;
            for (var b = 0; b < found.Length; b++)
            {
                if (found[b] is { } filling)
                {
                    master.Add(new Pattern(b, filling.Counts));
                    excess = Math.Max(excess, filling.Value / problem.Boards[b].Cost);
                }
            }

            if (found.All(f => f is null))
            {
                break;
            }
        }

        // Farley (1990): values divided by the largest excess fill no board above its cost, so they bound every plan.
        double[] safe = [.. values.Select(v => v / excess)];
        var bound = safe.Select((v, i) => v * problem.Demand[i]).Sum();
        return new Relaxation([.. master.InUse()], safe, bound);
    }

    private static Pattern Cut(Pattern pattern, ImmutableArray<int> demand) =>
        pattern with { Counts = [.. pattern.Counts.Select((c, i) => Math.Min(c, demand[i]))] };
}
