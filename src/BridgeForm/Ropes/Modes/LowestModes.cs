using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace BridgeForm.Ropes.Modes;

/// <summary>One way to swing.</summary>
/// <param name="Hertz">Frequency.</param>
/// <param name="Shape">Displacement of each degree of freedom.</param>
internal sealed record Mode(double Hertz, ImmutableArray<double> Shape);

/// <summary>
/// The lowest modes of K·φ = ω²·M·φ, by subspace iteration (Bathe, Finite Element Procedures, ch. 11, from
/// memory): a banded solution for each trial shape, and a small dense problem for MathNet.
/// </summary>
internal static class LowestModes
{
    // Trial shapes: a few more than are wanted, so that those wanted converge quickly.
    private const int Trials = 8;

    /// <summary>How many of them have settled unless said otherwise.</summary>
    public const int Wanted = 4;

    private const int MaxRounds = 200;

    // Frequencies have settled when their squares move by less than this share: more digits than they are worth. In long
    // bridges round-off may stop them earlier: then they have when they move by little and by no less than before.
    private const double Settled = 1e-11;
    private const double Little = 1e-6;

    /// <summary>The lowest modes, slowest first; null when the rope is not stiff against every displacement.</summary>
    /// <param name="stiffness">K, N/m.</param>
    /// <param name="masses">M, kg, one a degree of freedom.</param>
    public static ImmutableArray<Mode>? Find(BandedMatrix stiffness, double[] masses) =>
        Find(stiffness, shape => Times(shape, masses), Wanted, Settled);

    /// <summary>The same with masses that move in several degrees of freedom at once.</summary>
    /// <param name="stiffness">K, N/m.</param>
    /// <param name="masses">M, kg.</param>
    /// <param name="wanted">How many of them must have settled.</param>
    /// <param name="settled">Share by which their squares may still move.</param>
    public static ImmutableArray<Mode>? Find(BandedMatrix stiffness, BandedMatrix masses, int wanted, double settled) =>
        Find(stiffness, masses.Times, wanted, settled);

    private static ImmutableArray<Mode>? Find(BandedMatrix stiffness, Func<double[], double[]> masses, int wanted, double settled)
    {
        if (stiffness.Factored() is not { } factor)
        {
            return null;
        }

        var trials = Math.Min(Trials, stiffness.Size);
        var shapes = Start(stiffness.Size, trials);
        double[] before = [];
        var moved = double.PositiveInfinity;
        for (var round = 0; round < MaxRounds; round++)
        {
            (var squares, shapes) = Round(factor, masses, shapes);
            var moves = round == 0 ? moved : Move(before, squares, wanted);
            if (moves <= settled || (moves <= Little && moves >= moved))
            {
                return Modes(squares, shapes);
            }

            (before, moved) = (squares, moves);
        }

        return Modes(before, shapes);
    }

    private static (double[] Squares, double[][] Shapes) Round(BandedMatrix factor, Func<double[], double[]> masses, double[][] shapes)
    {
        var n = shapes.Length;
        var (forces, moved, weighted) = (new double[n][], new double[n][], new double[n][]);
        for (var i = 0; i < n; i++)
        {
            forces[i] = masses(shapes[i]);
            moved[i] = factor.Solve(forces[i]);
            // Of equal size, so that the small problem keeps its digits.
            var size = 1 / Math.Sqrt(Dot(moved[i], masses(moved[i])));
            (forces[i], moved[i]) = (Scaled(forces[i], size), Scaled(moved[i], size));
            weighted[i] = masses(moved[i]);
        }

        var (k, m) = (new DenseMatrix(n), new DenseMatrix(n));
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                k[i, j] = k[j, i] = Dot(moved[i], forces[j]);
                m[i, j] = m[j, i] = Dot(moved[i], weighted[j]);
            }
        }

        var (squares, mix) = Small(k, m);
        return (squares, [.. Enumerable.Range(0, n).Select(c => Mixed(moved, mix, c))]);
    }

    // K·q = λ·M·q with M = L·Lᵀ becomes the symmetric problem L⁻¹·K·L⁻ᵀ.
    private static (double[] Squares, Matrix<double> Mix) Small(Matrix<double> k, Matrix<double> m)
    {
        var inverse = m.Cholesky().Factor.Inverse();
        var symmetric = inverse * k * inverse.Transpose();
        symmetric = (symmetric + symmetric.Transpose()) / 2;
        var found = symmetric.Evd(Symmetricity.Symmetric);
        return ([.. found.EigenValues.Select(v => v.Real)], inverse.Transpose() * found.EigenVectors);
    }

    private static double[] Mixed(double[][] shapes, Matrix<double> mix, int column)
    {
        var sum = new double[shapes[0].Length];
        for (var s = 0; s < shapes.Length; s++)
        {
            for (var i = 0; i < sum.Length; i++)
            {
                sum[i] += mix[s, column] * shapes[s][i];
            }
        }

        return sum;
    }

    // Half waves, one more from shape to shape, in every degree of freedom, shifted so that no two are alike.
    private static double[][] Start(int size, int trials) =>
    [
        .. Enumerable.Range(1, trials).Select(t =>
            Enumerable.Range(1, size).Select(i => Math.Sin(Math.PI * t * i / (size + 1)) + (i % trials == t - 1 ? 1 : 0)).ToArray()),
    ];

    private static double Move(double[] before, double[] now, int wanted) =>
        before.Zip(now).Take(wanted).Max(p => Math.Abs(p.Second - p.First) / Math.Abs(p.Second));

    private static ImmutableArray<Mode> Modes(double[] squares, double[][] shapes) =>
        [.. squares.Zip(shapes, (s, x) => new Mode(Math.Sqrt(Math.Max(0, s)) / (2 * Math.PI), [.. x]))];

    private static double[] Times(double[] a, double[] b)
    {
        var product = new double[a.Length];
        for (var i = 0; i < a.Length; i++)
        {
            product[i] = a[i] * b[i];
        }

        return product;
    }

    private static double[] Scaled(double[] a, double factor)
    {
        var scaled = new double[a.Length];
        for (var i = 0; i < a.Length; i++)
        {
            scaled[i] = a[i] * factor;
        }

        return scaled;
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
