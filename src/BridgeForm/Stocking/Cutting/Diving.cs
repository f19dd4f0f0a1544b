using System.Collections.Immutable;

namespace BridgeForm.Stocking.Cutting;

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
            if (Residual.Of(problem, left) is not { } rest)
            {
                return new CuttingPlan(taken.ToImmutable(), taken.Sum(p => problem.Boards[p.Board].Cost));
            }

            var relaxed = ColumnGeneration.Solve(rest.Problem, known.Select(rest.Narrowed).Where(p => p.Counts.Any(c => c > 0)), first.IsExact, effort);
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
