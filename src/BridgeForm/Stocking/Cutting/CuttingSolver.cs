using System.Collections.Immutable;
using BridgeForm.Quantities;

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
    // Small jobs are searched through until the plan is proven best or so many boards were tried.
    private const int SmallJob = 24;
    private const int SmallJobBudget = 20000;

    // Looking further for less than this share of a long job's cost is not worth the wait.
    private const double GoodEnough = 2e-3;

    private const int LongJob = 100;

    private static readonly double[] Shares = [0.6, 0.9, 0.35];

    /// <summary>The plan. Every length must fit the longest board. Tolerances.SameCost problem, same plan.</summary>
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
            best = best is null || plan.Cost < best.Cost * (1 - Tolerances.SameCost) ? plan : best;
            if (IsGoodEnough(best, target))
            {
                break;
            }
        }

        best = IsGoodEnough(best!, target) ? best! : Improvement.Improve(problem, best!, relaxed.Values, target, token);
        var proven = best.Cost <= target * (1 + Tolerances.SameCost);
        if (!proven && problem.Demand.Sum() <= SmallJob)
        {
            var (cheaper, exhausted) = BoardSearch.Cheaper(problem, relaxed.Values, best.Cost, SmallJobBudget);
            best = cheaper ?? best;
            proven = exhausted || best.Cost <= target * (1 + Tolerances.SameCost);
        }

        return new CuttingResult(best, relaxed.Bound, target, proven, effort.IsSpent && !proven);
    }

    private static bool IsGoodEnough(CuttingPlan plan, double target) =>
        plan.Cost <= target * (1 + (plan.Patterns.Length > LongJob ? GoodEnough : Tolerances.SameCost));
}

/// <summary>
/// A plan in whole boards from the relaxation: patterns are taken as often as it uses them wholly, and those it uses almost
/// wholly once more; then what is left is relaxed anew, until nothing is left.
/// </summary>
internal static class Diving
{
    // Below a whole number by less than this is round-off of the simplex.
    private const double Whole = 1e-6;

    /// <summary>Dives once.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="first">Its relaxation.</param>
    /// <param name="effort">Work of the whole job, of which this spends.</param>
    /// <param name="share">A pattern whose amount's fraction is at least this is taken once more; the largest one always.</param>
    public static CuttingPlan Plan(CuttingProblem problem, Relaxation first, double share, CuttingEffort effort)
    {
        var left = problem.Demand.ToArray();
        var taken = ImmutableArray.CreateBuilder<Pattern>();
        var known = new List<Pattern>();
        var inUse = first.InUse;
        while (true)
        {
            known.AddRange(inUse.Select(u => u.Pattern));
            Take(problem, inUse, share, left, taken);
            if (Residual.Leave(problem, left) is not { } rest)
            {
                return new CuttingPlan(taken.ToImmutable(), taken.Sum(p => problem.Boards[p.Board].Cost));
            }

            var relaxed = ColumnGeneration.Solve(
                rest.Problem, known.Select(rest.Narrowed).Where(p => p.Counts.Any(c => c > 0)), first.IsExact, effort);
            inUse = [.. relaxed.InUse.Select(u => u with { Pattern = rest.Widened(u.Pattern, problem.Count) })];
        }
    }

    private static void Take(
        CuttingProblem problem,
        ImmutableArray<PatternUse> inUse,
        double share,
        int[] left,
        ImmutableArray<Pattern>.Builder taken)
    {
        var before = taken.Count;
        foreach (var (pattern, amount) in inUse)
        {
            for (var k = 0; k < (int)Math.Floor(amount + Whole) && TakeOne(problem, pattern, left, taken); k++)
            {
            }
        }

        foreach (var use in inUse.OrderByDescending(Fraction).ThenByDescending(u => problem.Weight(u.Pattern.Counts)))
        {
            if (taken.Count > before && Fraction(use) < share)
            {
                return;
            }

            TakeOne(problem, use.Pattern, left, taken);
        }
    }

    private static double Fraction(PatternUse use) => use.Amount - Math.Floor(use.Amount + Whole);

    /// <summary>Takes a pattern once, without pieces that are done; on the cheapest board that holds the rest.</summary>
    private static bool TakeOne(
        CuttingProblem problem, Pattern pattern, int[] left, ImmutableArray<Pattern>.Builder taken)
    {
        var counts = pattern.Counts.Select((c, i) => Math.Min(c, left[i])).ToArray();
        if (counts.All(c => c == 0))
        {
            return false;
        }

        for (var i = 0; i < counts.Length; i++)
        {
            left[i] -= counts[i];
        }

        taken.Add(new Pattern(problem.CheapestFor(problem.Weight(counts)), counts));
        return true;
    }
}
