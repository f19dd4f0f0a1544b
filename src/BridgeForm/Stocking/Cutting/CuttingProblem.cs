using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking.Cutting;

/// <summary>A length of board on sale.</summary>
/// <param name="Usable">What is left of it for pieces and saw cuts, metres.</param>
/// <param name="Cost">What one costs, in any unit; positive.</param>
internal readonly record struct BoardSize(double Usable, double Cost);

/// <summary>
/// The cutting-stock problem: pieces of several lengths from boards of several lengths, as cheaply as can be. Every piece
/// costs its length and one saw cut, and a board gives its length and one saw cut: n pieces need n − 1 cuts between them,
/// and one more only when wood is left over.
/// </summary>
/// <param name="Lengths">Different lengths of pieces, longest first, metres.</param>
/// <param name="Demand">How many of each; none is 0.</param>
/// <param name="Boards">Boards on sale, shortest first.</param>
/// <param name="Kerf">Width of a saw cut, metres.</param>
internal sealed record CuttingProblem(
    ImmutableArray<double> Lengths, ImmutableArray<int> Demand, ImmutableArray<BoardSize> Boards, double Kerf)
{
    /// <summary>Number of different lengths.</summary>
    public int Count => Lengths.Length;

    /// <summary>What one piece takes up of <see cref="Capacity"/>, metres.</summary>
    public double Weight(int item) => Lengths[item] + Kerf;

    /// <summary>Room of a board for pieces, each with a saw cut, metres.</summary>
    public double Capacity(int board) => Boards[board].Usable + Kerf + Tolerances.RoundOff;

    /// <summary>The cheapest board with room for so much, or −1.</summary>
    public int CheapestFor(double weight)
    {
        var best = -1;
        for (var b = 0; b < Boards.Length; b++)
        {
            if (Capacity(b) >= weight && (best < 0 || Boards[b].Cost < Boards[best].Cost * (1 - Tolerances.SameCost)))
            {
                best = b;
            }
        }

        return best;
    }

    /// <summary>Weight of a pattern's pieces, metres.</summary>
    public double Weight(ReadOnlySpan<int> counts)
    {
        var sum = 0.0;
        for (var i = 0; i < counts.Length; i++)
        {
            sum += counts[i] * Weight(i);
        }

        return sum;
    }

    /// <summary>
    /// The least cost that a plan can have when no plan is cheaper than <paramref name="bound"/>: rounded up to a whole number of
    /// the largest step that all boards' costs are multiples of; as it is when there is no such step.
    /// </summary>
    public double RoundedUp(double bound)
    {
        var step = CostStep();
        return step > 0 ? Math.Ceiling((bound / step) - CostSteps.Slack) * step : bound;
    }

    /// <summary>What a metre of pieces and saw cuts costs at least, on the board that gives most for its cost.</summary>
    public double LeastCostOfLength() => Enumerable.Range(0, Boards.Length).Min(b => Boards[b].Cost / Capacity(b));

    /// <summary>The largest step that all costs are multiples of; 0 for none.</summary>
    public double CostStep() => CostSteps.Common([.. Boards.Select(b => b.Cost)]);
}

/// <summary>How a board is cut: how many pieces of each length.</summary>
/// <param name="Board">Which board.</param>
/// <param name="Counts">One count a length.</param>
internal sealed record Pattern(int Board, int[] Counts);

/// <summary>A plan: patterns with how many boards are cut by each.</summary>
/// <param name="Patterns">Patterns, one a board.</param>
/// <param name="Cost">What the boards cost together.</param>
internal sealed record CuttingPlan(ImmutableArray<Pattern> Patterns, double Cost);

/// <summary>Costs as whole numbers of a common step, such as a cent, or two feet of board.</summary>
internal static class CostSteps
{
    /// <summary>A share of a step that is round-off: costs add up to fifteen digits, steps are a thousandth of a cost or more.</summary>
    public const double Slack = 1e-6;

    // Steps that are a smaller share of the largest cost than this say nothing about the bound.
    private const double SmallestShare = 1e-4;

    // Remainders below this share of the largest cost are round-off of a division.
    private const double RoundOff = 1e-10;

    /// <summary>The largest step that all costs are multiples of (Euclid); 0 when there is none worth having.</summary>
    public static double Common(ReadOnlySpan<double> costs)
    {
        double step = 0, largest = 0;
        foreach (var cost in costs)
        {
            largest = Math.Max(largest, cost);
        }

        foreach (var cost in costs)
        {
            step = Common(Math.Max(step, cost), Math.Min(step, cost), largest);
            if (step < SmallestShare * largest)
            {
                return 0;
            }
        }

        return step;
    }

    private static double Common(double a, double b, double largest)
    {
        while (b > RoundOff * largest)
        {
            if (b < SmallestShare * largest)
            {
                return 0;
            }

            var rest = a - (Math.Floor(a / b) * b);
            (a, b) = (b, b - rest < RoundOff * largest ? 0 : rest);
        }

        return a;
    }
}
