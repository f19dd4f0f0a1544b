using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace BridgeForm.Stocking.Cutting;

/// <summary>
/// The most valuable filling of boards on a grid of lengths (Bellman's dynamic programme, 1957), for problems with so many
/// short pieces that fillings cannot be compared one by one. Its work is the same whatever the lengths are.
/// </summary>
/// <remarks>
/// Pieces rounded up give fillings that fit, perhaps not the best; pieces rounded down give at least the value of the best,
/// perhaps with a filling that does not fit. Both together say how good a filling is.
/// </remarks>
internal static class GridKnapsack
{
    /// <summary>Cells of the longest board: about half a millimetre of a board of 16 ft.</summary>
    private const int Cells = 8192;

    /// <summary>Cells that are filled at once.</summary>
    private const int Lanes = 4;

    /// <summary>Cells filled for one set of values.</summary>
    public static long Work(CuttingProblem problem, double[] values, ImmutableArray<int> limits) =>
        (long)Cells * Bundle.List(problem, values, limits, problem.Capacity(problem.Boards.Length - 1)).Count;

    /// <summary>The best filling of each board on the grid, whether or not it exceeds a goal; one entry a board.</summary>
    /// <param name="problem">Lengths and boards.</param>
    /// <param name="values">Value of a piece of each length; those at or below 0 are left out.</param>
    /// <param name="limits">Most pieces of each length.</param>
    /// <param name="roundUp">Pieces take up whole cells: the filling fits. Otherwise its value is not less than the best's.</param>
    public static ImmutableArray<Filling> Best(
        CuttingProblem problem, double[] values, ImmutableArray<int> limits, bool roundUp)
    {
        var last = problem.Boards.Length - 1;
        var cell = problem.Capacity(last) / Cells;
        var bundles = Bundle.List(problem, values, limits, problem.Capacity(last))
            .Select(b => (Bundle: b, Wide: Wide(problem, b, cell, roundUp)))
            .Where(b => b.Wide <= Cells)
            .ToList();
        var best = new double[Cells + Lanes]; // whole blocks, the last of which begins at the longest board
        var taken = new byte[bundles.Count][];
        for (var k = 0; k < bundles.Count; k++)
        {
            taken[k] = Offer(best, bundles[k].Bundle.Value, bundles[k].Wide);
        }

        return [.. Enumerable.Range(0, problem.Boards.Length).Select(OfBoard)];

        Filling OfBoard(int board)
        {
            var room = Math.Min(Cells, (int)(problem.Capacity(board) / cell));
            var counts = new int[problem.Count];
            var at = room;
            for (var k = bundles.Count - 1; k >= 0; k--)
            {
                if ((taken[k][at / Lanes] >> (at % Lanes) & 1) != 0)
                {
                    counts[bundles[k].Bundle.Item] += bundles[k].Bundle.Count;
                    at -= bundles[k].Wide;
                }
            }

            return new Filling(counts, best[room]);
        }
    }

    /// <summary>Cells that a bundle takes up: of each of its pieces, so that bundles of one length add up.</summary>
    private static int Wide(CuttingProblem problem, Bundle bundle, double cell, bool roundUp)
    {
        var each = problem.Weight(bundle.Item) / cell;
        return bundle.Count * (int)(roundUp ? Math.Ceiling(each) : Math.Floor(each));
    }

    /// <summary>
    /// Value of the best filling of every length with and without a bundle; where it was taken, a bit for each cell, a byte for
    /// each block of them. From the longest down: what a block reads lies below it, untouched so far.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)] // the first job of a run is most of its work
    private static byte[] Offer(double[] best, double value, int wide)
    {
        var taken = new byte[best.Length / Lanes];
        var block = taken.Length - 1;
        if (Vector256.IsHardwareAccelerated && wide >= Lanes)
        {
            for (var each = Vector256.Create(value); block * Lanes >= wide; block--)
            {
                var without = Vector256.Create(best, block * Lanes);
                var with = Vector256.Create(best, (block * Lanes) - wide) + each;
                var better = Vector256.GreaterThan(with, without);
                Vector256.ConditionalSelect(better, with, without).CopyTo(best, block * Lanes);
                taken[block] = (byte)better.ExtractMostSignificantBits();
            }
        }

        for (var at = (block * Lanes) + Lanes - 1; at >= wide; at--)
        {
            var with = best[at - wide] + value;
            if (with > best[at])
            {
                best[at] = with;
                taken[at / Lanes] |= (byte)(1 << (at % Lanes));
            }
        }

        return taken;
    }
}
