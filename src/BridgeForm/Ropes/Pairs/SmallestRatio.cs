using BridgeForm.Quantities;
using BridgeForm.Ropes.Modes;

namespace BridgeForm.Ropes.Pairs;

/// <summary>
/// The smallest positive x with det(K − x·G) = 0, K positive definite: inverse iteration with a shift, then a proof by
/// inertia. K − x·G has a Cholesky factor for every x from 0 up to that root and for none beyond it, whatever G is: the answer
/// is taken only when a factor exists just below it, so no smaller root was passed over.
/// </summary>
internal static class SmallestRatio
{
    // A root is known when it moves by less than this share from round to round: far more digits than weights have.
    private const double Settled = 1e-9;

    // The proof: no root lies lower by more than this share.
    private const double Proven = 1e-6;

    // Once a root moves by less than a tenth, the shift is brought to two hundredths below it; to twice as far below each time
    // that the smallest root proves to lie lower still. So roots that lie close to each other are told apart in few rounds.
    private const double Near = 0.1;
    private const double Shift = 0.02;
    private const int MostRounds = 60;

    /// <summary>The root, with its shape; infinite when no weight stands above the ropes; 0 when the ropes are not stiff.</summary>
    public static (double Ratio, double[] Shape) Find(BandedMatrix stiffness, BandedMatrix lever)
    {
        var shape = Start(stiffness.Size);
        if (stiffness.Factored() is not { } factor)
        {
            return (0, shape);
        }

        if (!AnyStands(lever))
        {
            return (double.PositiveInfinity, shape);
        }

        var (ratio, shift, below) = (double.PositiveInfinity, 0.0, Shift);
        var force = lever.Times(shape);
        for (var round = 0; round < MostRounds; round++)
        {
            var moved = factor.Solve(force);

            // (K − shift·G)·moved = force: K's product needs no multiplication by K.
            var levered = lever.Times(moved);
            var standing = Dot(moved, levered);
            var stiff = Dot(moved, force) + (shift * standing);
            if (!(standing > 0))
            {
                break;
            }

            var size = 1 / Math.Sqrt(standing);
            shape = Array.ConvertAll(moved, m => m * size);
            force = Array.ConvertAll(levered, f => f * size);
            var (before, now) = (ratio, stiff / standing);
            ratio = now;
            if (Math.Abs(now - before) <= Settled * now)
            {
                break;
            }

            if (Math.Abs(now - before) <= Near * now && shift <= 0)
            {
                var next = (1 - below) * now;
                (shift, factor) = stiffness.Less(next, lever).FactoredInPlace() is { } shifted ? (next, shifted) : (0, factor);
                below = Math.Min(2 * below, 0.5);
            }
        }

        if (double.IsFinite(ratio) && stiffness.Less((1 - Proven) * ratio, lever).FactoredInPlace() is not null)
        {
            return (ratio, shape);
        }

        return (ByHalves(stiffness, lever, ratio), shape);
    }

    // Where the iteration went to a higher root, or found none: between what has a factor and what has none.
    private static double ByHalves(BandedMatrix stiffness, BandedMatrix lever, double above)
    {
        if (!double.IsFinite(above))
        {
            above = 1;
            while (stiffness.Less(above, lever).FactoredInPlace() is not null)
            {
                above *= 2;
                if (!double.IsFinite(above))
                {
                    return above;
                }
            }
        }

        var low = 0.0;
        while (above - low > Proven * above)
        {
            var middle = (low + above) / 2;
            (low, above) = stiffness.Less(middle, lever).FactoredInPlace() is null ? (low, middle) : (middle, above);
        }

        return low;
    }

    // One half wave and two, the ropes of a pair together and against each other, and a ripple so that no mode is missing.
    private static double[] Start(int size)
    {
        var start = new double[size];
        for (var i = 0; i < size; i++)
        {
            var x = Math.PI * (i + 1) / (size + 1);
            start[i] = ((0.5 * Elementary.Sin(x)) + Elementary.Sin(2 * x)) * (i % 4 < 2 ? 1 : -0.5);
            start[i] += 0.05 * (i % 3);
        }

        return start;
    }

    private static bool AnyStands(BandedMatrix lever)
    {
        for (var i = 0; i < lever.Size; i++)
        {
            if (lever[i, i] > 0)
            {
                return true;
            }
        }

        return false;
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
