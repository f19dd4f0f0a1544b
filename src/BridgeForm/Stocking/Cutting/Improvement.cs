using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking.Cutting;

/// <summary>Makes a plan cheaper a few boards at a time: they are emptied and filled anew by exact search.</summary>
internal static class Improvement
{
    private const int Rounds = 40;

    // After so many in vain one after another the rest find nothing either, nearly always.
    private const int MostInVain = 16;
    private const int Budget = 500;
    private const int FewestBoards = 3;
    private const int MostBoards = 9;

    /// <summary>The plan, or a cheaper one; stops at <paramref name="target"/>. Tolerances.SameCost problem, same plan.</summary>
    public static CuttingPlan Improve(
        CuttingProblem problem, CuttingPlan plan, double[] values, double target, CancellationToken token = default)
    {
        var vain = 0;
        for (var round = 0; round < Rounds && vain < MostInVain && plan.Cost > target * (1 + Tolerances.SameCost); round++)
        {
            token.ThrowIfCancellationRequested();
            var chosen = Chosen(problem, plan, values, round);
            vain++;
            if (Better(problem, plan, chosen, values) is { } better)
            {
                (plan, vain) = (better, 0);
            }
        }

        return plan;
    }

    /// <summary>
    /// The boards with the largest loss (cost less the value of the pieces) in even rounds, and boards spread over the plan
    /// with them in odd ones, more of them the later the round.
    /// </summary>
    private static HashSet<int> Chosen(CuttingProblem problem, CuttingPlan plan, double[] values, int round)
    {
        var byLoss = Enumerable.Range(0, plan.Patterns.Length)
            .OrderByDescending(k => Loss(problem, plan.Patterns[k], values))
            .ToArray();
        var count = Math.Min(byLoss.Length, FewestBoards + (round * (MostBoards - FewestBoards) / Rounds));
        var chosen = new HashSet<int>();
        var spread = round % 2 == 0 ? 1 : 2 + (round / 2);
        for (var k = 0; chosen.Count < count; k++)
        {
            chosen.Add(byLoss[k < 2 ? k % byLoss.Length : ((k * spread) + (round / 2)) % byLoss.Length]);
            if (k > byLoss.Length * 2)
            {
                break;
            }
        }

        return chosen;
    }

    private static double Loss(CuttingProblem problem, Pattern pattern, double[] values) =>
        problem.Boards[pattern.Board].Cost - pattern.Counts.Select((c, i) => c * values[i]).Sum();

    private static CuttingPlan? Better(CuttingProblem problem, CuttingPlan plan, HashSet<int> chosen, double[] values)
    {
        var left = new int[problem.Count];
        var cost = 0.0;
        foreach (var k in chosen)
        {
            cost += problem.Boards[plan.Patterns[k].Board].Cost;
            for (var i = 0; i < left.Length; i++)
            {
                left[i] += plan.Patterns[k].Counts[i];
            }
        }

        if (Residual.Leave(problem, left) is not { } rest
            || BoardSearch.Cheaper(rest.Problem, [.. rest.Items.Select(i => values[i])], cost, Budget).Plan is not { } found)
        {
            return null;
        }

        ImmutableArray<Pattern> patterns =
        [
            .. plan.Patterns.Where((_, k) => !chosen.Contains(k)),
            .. found.Patterns.Select(p => rest.Widened(p, problem.Count)),
        ];
        return new CuttingPlan(patterns, patterns.Sum(p => problem.Boards[p.Board].Cost));
    }
}
