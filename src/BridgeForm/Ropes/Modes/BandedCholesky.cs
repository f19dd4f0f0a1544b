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

    /// <summary>The lower factor; null when the matrix is not positive definite.</summary>
    public BandedMatrix? Factored()
    {
        var factor = new BandedMatrix(size, width);
        for (var i = 0; i < size; i++)
        {
            for (var j = Math.Max(0, i - width); j <= i; j++)
            {
                var sum = this[i, j];
                for (var k = Math.Max(0, i - width); k < j; k++)
                    sum -= factor[i, k] * factor[j, k];
                if (i != j)
                    factor[i, j] = sum / factor[j, j];
                else if (sum > 0)
                    factor[i, i] = Math.Sqrt(sum);
                else
                    return null;
            }
        }

        return factor;
    }

    /// <summary>Of a factor: the solution of L·Lᵀ·x = right.</summary>
    public double[] Solve(double[] right)
    {
        var x = (double[])right.Clone();
        for (var i = 0; i < size; i++)
        {
            for (var k = Math.Max(0, i - width); k < i; k++)
                x[i] -= this[i, k] * x[k];
            x[i] /= this[i, i];
        }

        for (var i = size - 1; i >= 0; i--)
        {
            x[i] /= this[i, i];
            for (var k = Math.Max(0, i - width); k < i; k++)
                x[k] -= this[i, k] * x[i];
        }

        return x;
    }
}
