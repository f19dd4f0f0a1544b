using BridgeForm.Ropes.Modes;
using BridgeForm.Ropes.Pairs;
using CsCheck;
using MathNet.Numerics.LinearAlgebra.Double;

namespace BridgeForm.Tests.Ropes.Pairs;

public sealed class SmallestRatioTests
{
    private const int Size = 12;

    // Random stiffness and levers, some of them below the ropes; against all roots of the dense problem by another library.
    [Fact]
    public void It_is_the_smallest_positive_root_of_all() =>
        Gen.Select(Gen.Double[-1, 1].Array[Size * 4], Gen.Double[-0.3, 1].Array[Size]).Sample(
            (entries, levers) =>
            {
                var (k, g, dense) = (new BandedMatrix(Size, 3), new BandedMatrix(Size, 3), new DenseMatrix(Size));
                for (var i = 0; i < Size; i++)
                {
                    g[i, i] = levers[i];
                    for (var j = Math.Max(0, i - 3); j <= i; j++)
                    {
                        k[i, j] = dense[i, j] = dense[j, i] = i == j ? 6.1 : entries[(4 * i) + j - i + 3];
                    }
                }

                var lower = dense.Cholesky().Factor.Inverse();
                var lever = DenseMatrix.Build.DenseOfDiagonalArray(levers);
                var largest = (lower * lever * lower.Transpose()).Evd().EigenValues.Max(v => v.Real);
                if (largest > 1e-3)
                {
                    RopeSamples.Close(1 / largest, SmallestRatio.Find(k, g).Ratio, 1e-5);
                }
            },
            iter: 300, seed: "0000KxX4oGl1", threads: 1);

    // K = diag(1, 2, 3 …) but for the last, 0.5, which no vector that is nothing there can find: only the proof by inertia does.
    [Fact]
    public void A_root_that_the_iteration_passes_over_is_found()
    {
        var (k, g) = (new BandedMatrix(3, 1), new BandedMatrix(3, 1));
        (k[0, 0], k[1, 1], k[2, 2]) = (4, 9, 1e-3);
        (g[0, 0], g[1, 1], g[2, 2]) = (1, 1, 1e-12);
        RopeSamples.Close(4, SmallestRatio.Find(k, g).Ratio, 1e-5);
        g[2, 2] = 1e-3;
        RopeSamples.Close(1, SmallestRatio.Find(k, g).Ratio, 1e-5);
    }

    [Fact]
    public void What_is_not_stiff_has_none_and_what_has_no_lever_no_end()
    {
        var (k, g) = (new BandedMatrix(2, 1), new BandedMatrix(2, 1));
        Assert.Equal(0, SmallestRatio.Find(k, g).Ratio);
        (k[0, 0], k[1, 1]) = (1, 1);
        Assert.Equal(double.PositiveInfinity, SmallestRatio.Find(k, g).Ratio);
        (g[0, 0], g[1, 1]) = (-1, -1);
        Assert.Equal(double.PositiveInfinity, SmallestRatio.Find(k, g).Ratio);
    }
}
