namespace BridgeForm.Ropes.Modes;

/// <summary>
/// A symmetric positive definite matrix with few entries beside its diagonal, and its factor L·Lᵀ: cost in step with its
/// size. Row i keeps columns i − width … i.
/// </summary>
internal sealed class BandedMatrix(int size, int width)
{
    private readonly double[] _band = new double[size * (width + 1)];

    /// <summary>Number of rows.</summary>
    public int Size => size;

    /// <summary>The entry at or below the diagonal.</summary>
    public double this[int row, int column]
    {
        get => row - column <= width ? _band[(row * (width + 1)) + column - row + width] : 0;
        set => _band[(row * (width + 1)) + column - row + width] = value;
    }

    /// <summary>The entry at or below the diagonal and within the band, to be added to.</summary>
    public ref double At(int row, int column) => ref _band[(row * (width + 1)) + column - row + width];

    /// <summary>This less so many times another of the same size and width.</summary>
    public BandedMatrix Less(double times, BandedMatrix other)
    {
        var difference = new BandedMatrix(size, width);
        for (var i = 0; i < _band.Length; i++)
        {
            difference._band[i] = _band[i] - (times * other._band[i]);
        }

        return difference;
    }

    /// <summary>The product with a vector.</summary>
    public double[] Times(double[] vector)
    {
        var product = new double[size];
        Times(vector, product);
        return product;
    }

    /// <summary>The product with a vector, written over what stands there.</summary>
    public void Times(double[] vector, double[] product)
    {
        Array.Clear(product);
        for (var i = 0; i < size; i++)
        {
            var first = Math.Max(0, i - width);
            var row = Row(i, first);
            var before = product.AsSpan(first, i - first);
            var onto = vector.AsSpan(first, i - first);
            var (sum, at) = (product[i], vector[i]);
            for (var j = 0; j < before.Length; j++)
            {
                sum += row[j] * onto[j];
                before[j] += row[j] * at;
            }

            product[i] = sum + (row[before.Length] * at);
        }
    }

    // Entries of a row from a column to the diagonal.
    private Span<double> Row(int row, int column) =>
        _band.AsSpan((row * (width + 1)) + column - row + width, row - column + 1);

    /// <summary>Every entry 0.</summary>
    public void Clear() => Array.Clear(_band);

    /// <summary>The lower factor; null when the matrix is not positive definite.</summary>
    /// <param name="into">Where to write it, of the same size and width; null for a new one. It may be this matrix.</param>
    public BandedMatrix? Factored(BandedMatrix? into = null)
    {
        var factor = into ?? new BandedMatrix(size, width);
        for (var i = 0; i < size; i++)
        {
            var first = Math.Max(0, i - width);
            var from = Row(i, first);
            var to = factor.Row(i, first);
            for (var j = 0; j < to.Length; j++)
            {
                // Row j of the factor from its first column that row i has as well.
                var shared = Math.Max(first, first + j - width);
                var sum = from[j];
                var mine = to[(shared - first)..j];
                var other = factor.Row(first + j, shared);
                for (var k = 0; k < mine.Length; k++)
                {
                    sum -= mine[k] * other[k];
                }

                if (j < to.Length - 1)
                {
                    to[j] = sum / other[^1];
                }
                else if (sum > 0)
                {
                    to[j] = Math.Sqrt(sum);
                }
                else
                {
                    return null;
                }
            }
        }

        return factor;
    }

    /// <summary>The same in the place of this matrix, which nobody asks for again.</summary>
    public BandedMatrix? FactoredInPlace() => Factored(this);

    /// <summary>
    /// Of a factor: those entries of the inverse that lie within the band, each from those after it; cost in step with the size.
    /// </summary>
    /// <remarks>Takahashi, Fagan and Chin 1973, as textbooks of sparse matrices give it (from memory): Z = D⁻¹ + (1 − Lᵀ)·Z.</remarks>
    public BandedMatrix InverseInBand()
    {
        var inverse = new BandedMatrix(size, width);
        for (var j = size - 1; j >= 0; j--)
        {
            var diagonal = this[j, j];
            for (var i = Math.Min(size - 1, j + width); i >= j; i--)
            {
                var sum = i == j ? 1 / diagonal : 0;
                for (var k = j + 1; k <= Math.Min(size - 1, j + width); k++)
                {
                    sum -= this[k, j] * (i >= k ? inverse[i, k] : inverse[k, i]);
                }

                inverse[i, j] = sum / diagonal;
            }
        }

        return inverse;
    }

    /// <summary>Of a factor: the solution of L·Lᵀ·x = right.</summary>
    public double[] Solve(double[] right)
    {
        var x = (double[])right.Clone();
        for (var i = 0; i < size; i++)
        {
            var first = Math.Max(0, i - width);
            var row = Row(i, first);
            var before = x.AsSpan(first, i - first);
            var sum = x[i];
            for (var k = 0; k < before.Length; k++)
            {
                sum -= row[k] * before[k];
            }

            x[i] = sum / row[before.Length];
        }

        for (var i = size - 1; i >= 0; i--)
        {
            var first = Math.Max(0, i - width);
            var row = Row(i, first);
            var before = x.AsSpan(first, i - first);
            var at = x[i] /= row[before.Length];
            for (var k = 0; k < before.Length; k++)
            {
                before[k] -= row[k] * at;
            }
        }

        return x;
    }
}
