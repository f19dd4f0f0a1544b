using BridgeForm.Quantities;

namespace BridgeForm.Stocking.Cutting;

/// <summary>
/// Exact search for a few boards: the longest piece left is cut from some board, so every way to fill that board is tried,
/// most promising first, and given up as soon as the value of what is left says that it cannot be cheaper.
/// </summary>
internal sealed class BoardSearch
{
    // Beyond so many ways to fill one board the most promising ones are among those seen: longest pieces come first.
    private const int MostFillings = 2000;

    // Short pieces have more ways to lie on one board than can be listed: work is counted in choices made, so many for each
    // board that may be tried.
    private const int ChoicesPerBoard = 400;

    private readonly CuttingProblem _problem;
    private readonly double[] _values;
    private readonly List<Pattern> _path = [];
    private int[] _left = [];
    private double _than;
    private int _budget;
    private int _choices;
    private CuttingPlan? _best;

    private BoardSearch(CuttingProblem problem, double[] values, double than, int budget)
    {
        _problem = problem;
        _values = values;
        _than = than;
        _budget = budget;
        _choices = budget * ChoicesPerBoard;
    }

    /// <summary>A plan that costs less than <paramref name="than"/>; null when there is none or the search was given up.</summary>
    /// <param name="problem">A small problem.</param>
    /// <param name="values">Values of its pieces that fill no board above its cost.</param>
    /// <param name="than">Cost to beat.</param>
    /// <param name="budget">Most boards to fill before giving up.</param>
    /// <returns>The plan, and whether the whole of the search was done.</returns>
    public static (CuttingPlan? Plan, bool Exhausted) Cheaper(CuttingProblem problem, double[] values, double than, int budget)
    {
        var search = new BoardSearch(problem, values, than, budget) { _left = [.. problem.Demand] };
        search.Fill(0);
        return (search._best, search._budget > 0 && search._choices > 0);
    }

    private void Fill(double cost)
    {
        var first = Array.FindIndex(_left, n => n > 0);
        if (first < 0)
        {
            _best = new CuttingPlan([.. _path], cost);
            _than = cost;
            return;
        }

        foreach (var pattern in Fillings(first))
        {
            if (--_budget <= 0)
            {
                return;
            }

            Change(pattern, -1);
            var next = cost + _problem.Boards[pattern.Board].Cost;
            if (next + _problem.RoundedUp(Worth(_left)) < _than * (1 - Tolerances.SameCost))
            {
                _path.Add(pattern);
                Fill(next);
                _path.RemoveAt(_path.Count - 1);
            }

            Change(pattern, 1);
        }
    }

    private void Change(Pattern pattern, int by)
    {
        for (var i = 0; i < _left.Length; i++)
        {
            _left[i] += by * pattern.Counts[i];
        }
    }

    private double Worth(int[] counts)
    {
        var sum = 0.0;
        for (var i = 0; i < counts.Length; i++)
        {
            sum += counts[i] * _values[i];
        }

        return sum;
    }

    private IEnumerable<Pattern> Fillings(int first)
    {
        var found = new List<Pattern>();
        var counts = new int[_left.Length];
        Extend(first, counts, 0, mustHave: true, found);
        return found
            .OrderBy(p => _problem.Boards[p.Board].Cost - Worth(p.Counts))
            .ThenByDescending(p => _problem.Weight(p.Counts));
    }

    private void Extend(int item, int[] counts, double weight, bool mustHave, List<Pattern> found)
    {
        if (found.Count >= MostFillings || --_choices <= 0)
        {
            return;
        }

        if (item == counts.Length)
        {
            AddIfFull(counts, weight, found);
            return;
        }

        var room = _problem.Capacity(_problem.Boards.Length - 1) - weight;
        var most = Math.Min(_left[item], (int)(room / _problem.Weight(item)));
        for (var n = most; n >= (mustHave ? 1 : 0); n--)
        {
            counts[item] = n;
            Extend(item + 1, counts, weight + (n * _problem.Weight(item)), mustHave: false, found);
        }

        counts[item] = 0;
    }

    /// <summary>Only fillings of their board with no room for one more piece: the others are parts of these.</summary>
    private void AddIfFull(int[] counts, double weight, List<Pattern> found)
    {
        var board = _problem.CheapestFor(weight);
        for (var i = counts.Length - 1; i >= 0; i--)
        {
            if (counts[i] < _left[i] && weight + _problem.Weight(i) <= _problem.Capacity(board))
            {
                return;
            }
        }

        found.Add(new Pattern(board, [.. counts]));
    }
}
