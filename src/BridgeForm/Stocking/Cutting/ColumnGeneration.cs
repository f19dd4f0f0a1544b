using System.Collections.Immutable;

namespace BridgeForm.Stocking.Cutting;

/// <summary>The linear relaxation of a cutting-stock problem, solved.</summary>
/// <param name="InUse">Patterns with their amounts, not whole numbers.</param>
/// <param name="Values">
/// Value of a piece of each length. No board can be filled with more value than it costs, so any plan costs at least the value
/// of its pieces: the certificate.
/// </param>
/// <param name="Bound">No plan costs less.</param>
/// <param name="IsExact">Fillings were compared one by one; otherwise on a grid of lengths, and the bound may be a little low.</param>
internal sealed record Relaxation(ImmutableArray<PatternUse> InUse, double[] Values, double Bound, bool IsExact);

/// <summary>Gilmore and Gomory's column generation (1961): patterns are made when the prices of the lengths ask for them.</summary>
internal static class ColumnGeneration
{
    // A filling worth more than its board by less than this share moves the bound in its eighth digit.
    private const double Improvement = 1e-8;

    // Cells of the grid overstate fillings by about this share; the bound is asked for to fifteen times as much.
    private const double GridSlack = 1e-3;

    // Tens of rounds are usual; beyond this the bound below is still a bound, only not the best.
    private const int MostRounds = 400;

    /// <summary>Solves the relaxation. <paramref name="known"/> patterns are taken over with no more pieces than are asked for.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="known">Patterns to begin with.</param>
    /// <param name="exact">
    /// Compares fillings one by one as long as that is quick; a part of a problem that was too much for it need not try.
    /// </param>
    public static Relaxation Solve(CuttingProblem problem, IEnumerable<Pattern> known, bool exact = true) =>
        Solve(problem, known, exact, CuttingEffort.For(problem.Demand.Sum()));

    /// <summary>The same within the effort of a job: where it is spent, rounds end, and the bound is a bound all the same.</summary>
    public static Relaxation Solve(CuttingProblem problem, IEnumerable<Pattern> known, bool exact, CuttingEffort effort)
    {
        var master = new PatternMaster(problem);
        foreach (var pattern in known)
        {
            master.Add(Cut(pattern, problem.Demand));
        }

        var pricing = new Pricing(problem, [.. problem.Boards.Select(b => b.Cost * (1 + Improvement))], exact, effort);
        double[] values = [];
        var excess = 1.0;
        for (var round = 0; round < MostRounds; round++)
        {
            values = master.Solve();
            (var found, excess) = pricing.Find(values);
            excess = Math.Max(excess, 1 + Improvement);
            foreach (var pattern in found)
            {
                master.Add(pattern);
            }

            if (found.IsEmpty || effort.IsSpent || (!pricing.IsExact && IsEnough(problem, values, excess)))
            {
                break;
            }
        }

        // Farley (1990): values divided by the largest excess fill no board above its cost, so they bound every plan.
        double[] safe = [.. values.Select(v => v / excess)];
        // No filling of any board gives more length for its cost than the best board does: a bound where rounds were ended.
        var wood = Enumerable.Range(0, problem.Count).Sum(i => problem.Demand[i] * problem.Weight(i));
        var bound = Math.Max(safe.Select((v, i) => v * problem.Demand[i]).Sum(), wood * problem.LeastCostOfLength());
        return new Relaxation([.. master.InUse()], safe, bound, pricing.IsExact);
    }

    /// <summary>More rounds on the grid would not raise the bound by a board, or by much.</summary>
    private static bool IsEnough(CuttingProblem problem, double[] values, double excess)
    {
        var worth = values.Select((v, i) => v * problem.Demand[i]).Sum();
        return excess <= 1 + GridSlack || problem.RoundedUp(worth / excess) >= problem.RoundedUp(worth);
    }

    private static Pattern Cut(Pattern pattern, ImmutableArray<int> demand) =>
        pattern with { Counts = [.. pattern.Counts.Select((c, i) => Math.Min(c, demand[i]))] };
}
