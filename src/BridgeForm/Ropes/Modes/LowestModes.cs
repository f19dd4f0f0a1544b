using System.Collections.Immutable;
using BridgeForm.Quantities;
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
    /// <param name="token">Asked from round to round.</param>
    public static ImmutableArray<Mode>? Find(BandedMatrix stiffness, double[] masses, CancellationToken token = default) =>
        Find(stiffness, (shape, product) => Times(shape, masses, product), Wanted, Settled, token);

    /// <summary>The same with masses that move in several degrees of freedom at once.</summary>
    /// <param name="stiffness">K, N/m.</param>
    /// <param name="masses">M, kg.</param>
    /// <param name="wanted">How many of them must have settled.</param>
    /// <param name="settled">Share by which their squares may still move.</param>
    /// <param name="token">Asked from round to round.</param>
    public static ImmutableArray<Mode>? Find(
        BandedMatrix stiffness, BandedMatrix masses, int wanted, double settled, CancellationToken token = default) =>
        Find(stiffness, masses.Times, wanted, settled, token);

    private static ImmutableArray<Mode>? Find(
        BandedMatrix stiffness, Action<double[], double[]> masses, int wanted, double settled, CancellationToken token)
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
            token.ThrowIfCancellationRequested();
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

    private static (double[] Squares, double[][] Shapes) Round(
        BandedMatrix factor, Action<double[], double[]> masses, double[][] shapes)
    {
        var (forces, moved) = Apart(masses, Array.ConvertAll(shapes, shape => Product(masses, shape)), factor);
        var k = new DenseMatrix(moved.Length);
        for (var i = 0; i < moved.Length; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                k[i, j] = k[j, i] = (Dot(moved[i], forces[j]) + Dot(moved[j], forces[i])) / 2;
            }
        }

        var found = k.Evd(Symmetricity.Symmetric);
        return (
            [.. found.EigenValues.Select(v => v.Real)],
            [.. Enumerable.Range(0, moved.Length).Select(c => Mixed(moved, found.EigenVectors, c))]);
    }

    // Displacements of unit mass that do not share any motion (Gram and Schmidt, each twice, which is enough), with their forces.
    // Ropes stretch much less easily than they swing: the first displacements of a short bridge are nearly alike.
    private static (double[][] Forces, double[][] Moved) Apart(Action<double[], double[]> masses, double[][] forces, BandedMatrix factor)
    {
        var (kept, pulls, weighted) = (new List<double[]>(), new List<double[]>(), new List<double[]>());
        foreach (var force in forces)
        {
            var (move, weight) = (factor.Solve(force), new double[force.Length]);
            Unit(masses, move, force, weight);
            for (var pass = 0; pass < 2; pass++)
            {
                for (var j = 0; j < kept.Count; j++)
                {
                    var share = Dot(move, weighted[j]);
                    Take(move, share, kept[j]);
                    Take(force, share, pulls[j]);
                }

                Unit(masses, move, force, weight);
            }

            if (double.IsFinite(move[0]))
            {
                kept.Add(move);
                pulls.Add(force);
                weighted.Add(weight);
            }
        }

        return ([.. pulls], [.. kept]);
    }

    // Scales all three to a displacement of unit mass, once its product with the masses is worked out.
    private static void Unit(Action<double[], double[]> masses, double[] move, double[] force, double[] weight)
    {
        masses(move, weight);
        var size = 1 / Math.Sqrt(Dot(move, weight));
        Scale(move, size);
        Scale(force, size);
        Scale(weight, size);
    }

    private static double[] Product(Action<double[], double[]> masses, double[] shape)
    {
        var product = new double[shape.Length];
        masses(shape, product);
        return product;
    }

    private static void Take(double[] from, double times, double[] other)
    {
        for (var i = 0; i < from.Length; i++)
        {
            from[i] -= times * other[i];
        }
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
            Enumerable.Range(1, size).Select(i => Elementary.Sin(Math.PI * t * i / (size + 1)) + (i % trials == t - 1 ? 1 : 0)).ToArray()),
    ];

    private static double Move(double[] before, double[] now, int wanted) =>
        before.Zip(now).Take(wanted).Max(p => Math.Abs(p.Second - p.First) / Math.Abs(p.Second));

    private static ImmutableArray<Mode> Modes(double[] squares, double[][] shapes) =>
        [.. squares.Zip(shapes, (s, x) => new Mode(Math.Sqrt(Math.Max(0, s)) / (2 * Math.PI), [.. x]))];

    private static void Times(double[] a, double[] b, double[] product)
    {
        for (var i = 0; i < a.Length; i++)
        {
            product[i] = a[i] * b[i];
        }
    }

    private static void Scale(double[] a, double factor)
    {
        for (var i = 0; i < a.Length; i++)
        {
            a[i] *= factor;
        }
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
