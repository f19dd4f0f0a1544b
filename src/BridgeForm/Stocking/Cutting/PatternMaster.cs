using MathNet.Numerics.LinearAlgebra.Double;

namespace BridgeForm.Stocking.Cutting;

/// <summary>
/// The linear programme over the patterns known so far: the least cost at which fractions of patterns give every length its
/// number. Revised simplex with the inverse of the basis kept; too many pieces of a length are allowed.
/// </summary>
internal sealed class PatternMaster
{
    // A pattern whose price is this share of its cost too high would change the bound in its ninth digit.
    private const double Improvement = 1e-9;

    // Pivots smaller than this would blow up round-off.
    private const double SmallestPivot = 1e-9;

    // Degenerate steps are common and harmless; a run this long is a cycle or near it.
    private const int PivotsPerRow = 40;

    // Round-off of the inverse grows with each pivot.
    private const int PivotsBetweenRefreshes = 60;

    // Counts of pieces are whole numbers up to some hundreds; a pivot of the basis below this is zero with round-off.
    private const double Singular = 1e-10;

    private readonly CuttingProblem _problem;
    private readonly List<Pattern> _patterns = [];
    private readonly int[] _basis;
    private readonly double[] _amounts;
    private double[,] _inverse;
    private int _pivots;

    /// <summary>Starts from one pattern a length, filled with nothing else.</summary>
    public PatternMaster(CuttingProblem problem)
    {
        _problem = problem;
        var m = problem.Count;
        (_basis, _inverse, _amounts) = (new int[m], new double[m, m], new double[m]);
        for (var i = 0; i < m; i++)
        {
            var pattern = OnlyOf(i);
            _basis[i] = _patterns.Count;
            _patterns.Add(pattern);
            _inverse[i, i] = 1.0 / pattern.Counts[i];
            _amounts[i] = problem.Demand[i] * _inverse[i, i];
        }
    }

    /// <summary>Adds a pattern to choose from.</summary>
    public void Add(Pattern pattern) => _patterns.Add(pattern);

    /// <summary>Finds the cheapest mix of the patterns known; the values of the lengths (dual prices), none negative.</summary>
    public double[] Solve()
    {
        var values = Values();
        for (var step = 0; step < PivotsPerRow * _basis.Length; step++)
        {
            var entering = Entering(values);
            if (entering is null || !Pivot(entering.Value))
            {
                break;
            }

            values = Values();
        }

        return [.. values.Select(v => Math.Max(v, 0))];
    }

    /// <summary>Patterns in use with their amounts, not whole numbers.</summary>
    public IEnumerable<PatternUse> InUse() =>
        Enumerable.Range(0, _basis.Length)
            .Where(row => _basis[row] >= 0 && _amounts[row] > 0)
            .Select(row => new PatternUse(_patterns[_basis[row]], _amounts[row]));

    private Pattern OnlyOf(int item)
    {
        var best = default(Pattern);
        for (var b = 0; b < _problem.Boards.Length; b++)
        {
            var count = Math.Min(_problem.Demand[item], (int)(_problem.Capacity(b) / _problem.Weight(item)));
            if (count > 0 && (best is null || CostEach(b, count) < CostEach(best.Board, best.Counts[item])))
            {
                best = new Pattern(b, new int[_problem.Count]);
                best.Counts[item] = count;
            }
        }

        return best ?? throw new ArgumentException("A piece is longer than every board.", nameof(item));
    }

    private double CostEach(int board, int count) => _problem.Boards[board].Cost / count;

    private double Cost(int column) => column >= 0 ? _problem.Boards[_patterns[column].Board].Cost : 0;

    private double[] Values()
    {
        var m = _basis.Length;
        var values = new double[m];
        for (var row = 0; row < m; row++)
        {
            var cost = Cost(_basis[row]);
            for (var i = 0; cost > 0 && i < m; i++)
            {
                values[i] += cost * _inverse[row, i];
            }
        }

        return values;
    }

    /// <summary>The column that pays most: a pattern, or −1 − i for giving away pieces of length i; null when none pays.</summary>
    private int? Entering(double[] values)
    {
        int? best = null;
        var gain = Improvement;
        for (var i = 0; i < values.Length; i++)
        {
            if (-values[i] > gain * _problem.Boards[^1].Cost)
            {
                (best, gain) = (-1 - i, -values[i] / _problem.Boards[^1].Cost);
            }
        }

        for (var k = 0; k < _patterns.Count; k++)
        {
            var worth = 0.0;
            var counts = _patterns[k].Counts;
            for (var i = 0; i < counts.Length; i++)
            {
                worth += counts[i] * values[i];
            }

            var share = (worth / Cost(k)) - 1;
            if (share > gain)
            {
                (best, gain) = (k, share);
            }
        }

        return best;
    }

    private double[] Column(int column)
    {
        var m = _basis.Length;
        var through = new double[m];
        for (var row = 0; row < m; row++)
        {
            if (column < 0)
            {
                through[row] = -_inverse[row, -1 - column];
                continue;
            }

            var counts = _patterns[column].Counts;
            for (var i = 0; i < m; i++)
            {
                through[row] += counts[i] * _inverse[row, i];
            }
        }

        return through;
    }

    private bool Pivot(int entering)
    {
        var column = Column(entering);
        var leaving = -1;
        var least = double.PositiveInfinity;
        for (var row = 0; row < column.Length; row++)
        {
            // Among equal steps the largest pivot is the safest.
            if (column[row] > SmallestPivot && (_amounts[row] / column[row] < least - SmallestPivot
                || (leaving >= 0 && _amounts[row] / column[row] < least + SmallestPivot && column[row] > column[leaving])))
            {
                (leaving, least) = (row, _amounts[row] / column[row]);
            }
        }

        if (leaving < 0)
        {
            return false;
        }

        _basis[leaving] = entering;
        if (++_pivots % PivotsBetweenRefreshes == 0 && TryInvert())
        {
            Reamount();
        }
        else
        {
            Eliminate(column, leaving);
        }

        return true;
    }

    /// <summary>
    /// Inverts the basis anew; false, and the inverse as it was, when round-off has made its columns depend on each other.
    /// </summary>
    private bool TryInvert()
    {
        var factors = DenseMatrix.Create(_basis.Length, _basis.Length, BasisColumn).LU();
        if (factors.U.Diagonal().AbsoluteMinimum() < Singular)
        {
            return false;
        }

        _inverse = factors.Inverse().ToArray();
        return true;
    }

    private double BasisColumn(int row, int column)
    {
        var at = _basis[column];
        return at >= 0 ? _patterns[at].Counts[row] : row == -1 - at ? -1 : 0;
    }

    private void Eliminate(double[] column, int leaving)
    {
        var m = column.Length;
        for (var i = 0; i < m; i++)
        {
            _inverse[leaving, i] /= column[leaving];
        }

        _amounts[leaving] = Math.Max(0, _amounts[leaving] / column[leaving]);
        for (var row = 0; row < m; row++)
        {
            if (row == leaving || column[row] is 0)
            {
                continue;
            }

            for (var i = 0; i < m; i++)
            {
                _inverse[row, i] -= column[row] * _inverse[leaving, i];
            }

            _amounts[row] = Math.Max(0, _amounts[row] - (column[row] * _amounts[leaving]));
        }
    }

    private void Reamount()
    {
        for (var row = 0; row < _amounts.Length; row++)
        {
            var sum = 0.0;
            for (var i = 0; i < _amounts.Length; i++)
            {
                sum += _inverse[row, i] * _problem.Demand[i];
            }

            _amounts[row] = Math.Max(0, sum);
        }
    }
}
