namespace BridgeForm.Stocking.Cutting;

/// <summary>A plan and what proves how good it is.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Bound">No plan costs less (value of the linear relaxation).</param>
/// <param name="RoundedBound">The same, rounded up to what boards can cost together.</param>
/// <param name="Proven">No plan is cheaper than this one.</param>
/// <param name="SearchEnded">The search was ended at its limit; a cheaper plan may have been missed.</param>
internal sealed record CuttingResult(CuttingPlan Plan, double Bound, double RoundedBound, bool Proven, bool SearchEnded);

/// <summary>Solves cutting-stock problems: relaxation, whole boards by diving, then improvement a few boards at a time.</summary>
internal static class CuttingSolver
{
    // Cheaper by less than this share is round-off.
    private const double Same = 1e-9;

    // Small jobs are searched through until the plan is proven best or so many boards were tried.
    private const int SmallJob = 24;
    private const int SmallJobBudget = 20000;

    // Further dives for less than this share of a long job's cost are not worth the wait.
    private const double GoodEnough = 2e-3;

    private const int LongJob = 100;

    private static readonly double[] Shares = [0.6, 0.9, 0.35];

    /// <summary>The plan. Every length must fit the longest board. Same problem, same plan.</summary>
    public static CuttingResult Solve(CuttingProblem problem, CancellationToken token = default)
    {
        var effort = CuttingEffort.For(problem.Demand.Sum(), token);
        var relaxed = ColumnGeneration.Solve(problem, [], exact: true, effort);
        var target = problem.RoundedUp(relaxed.Bound);
        var best = default(CuttingPlan);
        foreach (var share in Shares)
        {
            if (best is not null && effort.IsSpent)
            {
                break;
            }

            var plan = Diving.Plan(problem, relaxed, share, effort);
            best = best is null || plan.Cost < best.Cost * (1 - Same) ? plan : best;
            if (best.Cost <= target * (1 + (best.Patterns.Length > LongJob ? GoodEnough : Same)))
            {
                break;
            }
        }

        best = Improvement.Of(problem, best!, relaxed.Values, target, token);
        var proven = best.Cost <= target * (1 + Same);
        if (!proven && problem.Demand.Sum() <= SmallJob)
        {
            var (cheaper, exhausted) = BoardSearch.Cheaper(problem, relaxed.Values, best.Cost, SmallJobBudget);
            best = cheaper ?? best;
            proven = exhausted || best.Cost <= target * (1 + Same);
        }

        return new CuttingResult(best, relaxed.Bound, target, proven, effort.IsSpent && !proven);
    }
}
