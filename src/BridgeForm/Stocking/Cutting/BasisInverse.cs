namespace BridgeForm.Stocking.Cutting;

/// <summary>The inverse of a square matrix by Gauss and Jordan with row exchange.</summary>
internal static class BasisInverse
{
    // Counts of pieces are whole numbers up to some hundreds; a pivot below this is zero with round-off.
    private const double Singular = 1e-10;

    /// <summary>Writes the inverse into <paramref name="inverse"/>; leaves it alone and gives false when there is none.</summary>
    public static bool TryOf(int size, Func<int, int, double> entry, double[,] inverse)
    {
        var work = new double[size, 2 * size];
        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column < size; column++)
            {
                work[row, column] = entry(row, column);
            }

            work[row, size + row] = 1;
        }

        for (var k = 0; k < size; k++)
        {
            if (!Step(work, size, k))
            {
                return false;
            }
        }

        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column < size; column++)
            {
                inverse[row, column] = work[row, size + column];
            }
        }

        return true;
    }

    private static bool Step(double[,] work, int size, int k)
    {
        var pivot = k;
        for (var row = k + 1; row < size; row++)
        {
            pivot = Math.Abs(work[row, k]) > Math.Abs(work[pivot, k]) ? row : pivot;
        }

        if (Math.Abs(work[pivot, k]) < Singular)
        {
            return false;
        }

        for (var column = 0; column < 2 * size; column++)
        {
            (work[k, column], work[pivot, column]) = (work[pivot, column], work[k, column]);
        }

        var by = work[k, k];
        for (var column = 0; column < 2 * size; column++)
        {
            work[k, column] /= by;
        }

        for (var row = 0; row < size; row++)
        {
            var factor = work[row, k];
            for (var column = k; row != k && column < 2 * size; column++)
            {
                work[row, column] -= factor * work[k, column];
            }
        }

        return true;
    }
}
