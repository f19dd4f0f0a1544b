using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Modes;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace BridgeForm.Tests.Ropes.Modes;

public sealed class RopeModesTests
{
    /// <summary>
    /// A shallow level cable of many nodes swings as Irvine's formulas say (sag 1 : 60, so that their small-sag theory holds).
    /// </summary>
    [Theory]
    [InlineData(1e6)]
    [InlineData(2e7)]
    [InlineData(5e8)]
    public void Shallow_cable_follows_irvine(double stiffness)
    {
        var modes = RopeModes.Find("dead", Even(120, 1.0 / 60, stiffness))!;
        RopeSamples.Close(modes.IrvineSymmetric, modes.VerticalSymmetric, 0.01);
        RopeSamples.Close(modes.StringSecond, modes.VerticalAntisymmetric!.Value, 0.01);
        RopeSamples.Close(modes.StringFirst, modes.Lateral, 0.002);
    }

    /// <summary>A string of equal beads: ω = 2·√(k/m)·sin(π / 2(n + 1)) with k = H / bay (Lagrange's loaded string).</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(12)]
    [InlineData(77)]
    public void Lateral_modes_are_the_loaded_strings(int bays)
    {
        var shape = Even(bays, 0.06, 1e7);
        var mass = shape.Loads[1] / 9.80665;
        var omega = 2 * Math.Sqrt(shape.Horizontal / (12.0 / bays) / mass) * Math.Sin(Math.PI / 2 / bays);
        RopeSamples.Close(omega / 2 / Math.PI, RopeModes.Find("dead", shape)!.Lateral, 1e-6);
    }

    /// <summary>All modes at once by MathNet's dense solver, of K taken by differences of the case solver's own forces.</summary>
    [Fact]
    public void Modes_are_those_of_the_whole_matrix() => RopeSamples.AnyBridge.Sample(request =>
    {
        var shape = DesignState.Find(
            request with { NodeLoads = n => [.. n.Select(_ => 800.0)], WeightPerLength = 1e-3, Bays = Math.Min(request.Bays!.Value, 16) });
        var dense = Dense(shape);
        var found = RopeModes.Find("dead", shape)!;
        double[] slow = [.. dense.Take(3)];
        RopeSamples.Close(slow[0], found.Vertical, 1e-5);
        Assert.True(slow.Any(f => Math.Abs(f - found.VerticalSymmetric) <= 1e-5 * f), "symmetric");
    }, iter: 20);

    /// <summary>
    /// Three pairs of a kilogram each, held to the ground by a few newtons a metre and tied to each other by 1e13: a pair swings as
    /// one, ω² = (a + b) / 2. Displacements under any forces are the same for both to the last digit.
    /// </summary>
    [Fact]
    public void Stiff_ties_do_not_hide_slow_modes()
    {
        double[] springs = [3, 5, 20, 30, 90, 110];
        var stiffness = new BandedMatrix(6, 1);
        for (var pair = 0; pair < 6; pair += 2)
        {
            stiffness[pair, pair] = 1e13 + springs[pair];
            stiffness[pair + 1, pair + 1] = 1e13 + springs[pair + 1];
            stiffness[pair + 1, pair] = -1e13;
        }

        var modes = LowestModes.Find(stiffness, [1, 1, 1, 1, 1, 1])!.Value;
        double[] squares = [.. modes.Take(3).Select(m => Math.Pow(2 * Math.PI * m.Hertz, 2))];
        Assert.Equal(4, squares[0], 0.05);
        Assert.Equal(25, squares[1], 0.05);
        Assert.Equal(100, squares[2], 0.05);
    }

    [Fact]
    public void Long_bridges_have_modes_too()
    {
        var modes = RopeModes.Find("dead", Even(20_000, 0.06, 1e9))!;
        RopeSamples.Close(modes.StringFirst, modes.Lateral, 1e-4);
        Assert.True(modes.Vertical > 0);
    }

    [Fact]
    public void One_frame_has_no_second_half_and_none_has_no_modes()
    {
        var single = RopeModes.Find("dead", Even(2, 0.06, 1e7))!;
        Assert.Null(single.VerticalAntisymmetric);
        Assert.True(single.Vertical > 0);
        Assert.Null(RopeModes.Find("dead", Even(1, 0.06, 1e7)));
    }

    private static double[] Dense(RopeShape shape)
    {
        var n = shape.Nodes.Length - 2;
        var k = new DenseMatrix(2 * n);
        for (var bay = 0; bay <= n; bay++)
        {
            // Straight bars: a bay's own sag is far below the tolerance here.
            var (a, b) = (shape.Nodes[bay], shape.Nodes[bay + 1]);
            var (x, y) = (b.X - a.X, b.Y - a.Y);
            var (chord, tension) = (Math.Sqrt((x * x) + (y * y)), Tension(shape, bay));
            var along = new[,] { { x * x, x * y }, { x * y, y * y } };
            for (var i = 0; i < 2; i++)
            {
                for (var j = 0; j < 2; j++)
                {
                    var unit = along[i, j] / chord / chord;
                    var value = (shape.AxialStiffness / shape.Segments[bay].UnstressedLength * unit)
                        + (tension / chord * ((i == j ? 1 : 0) - unit));
                    Add(k, n, bay - 1, i, bay - 1, j, value);
                    Add(k, n, bay, i, bay, j, value);
                    Add(k, n, bay - 1, i, bay, j, -value);
                    Add(k, n, bay, i, bay - 1, j, -value);
                }
            }
        }

        var masses = Enumerable.Range(0, 2 * n).Select(d => Mass(shape, d / 2)).ToArray();
        var scaled = DenseMatrix.Create(2 * n, 2 * n, (i, j) => k[i, j] / Math.Sqrt(masses[i] * masses[j]));
        return [.. scaled.Evd(Symmetricity.Symmetric).EigenValues.Select(v => Math.Sqrt(v.Real) / 2 / Math.PI).Order()];
    }

    private static void Add(DenseMatrix k, int n, int p, int i, int q, int j, double value)
    {
        if (p >= 0 && p < n && q >= 0 && q < n)
        {
            k[(2 * p) + i, (2 * q) + j] += value;
        }
    }

    private static double Mass(RopeShape shape, int node) => (shape.Loads[node + 1]
        + (shape.WeightPerLength * (shape.Segments[node].UnstressedLength + shape.Segments[node + 1].UnstressedLength) / 2)) / 9.80665;

    private static double Tension(RopeShape shape, int bay)
    {
        var segment = shape.Segments[bay];
        var middle = segment.VerticalA - (shape.WeightPerLength * segment.UnstressedLength / 2);
        return RopeSamples.Hypotenuse(segment.Horizontal, middle);
    }

    private static RopeShape Even(int bays, double sag, double stiffness) => DesignState.Find(new DesignRequest
    {
        Span = 12,
        Rise = 0,
        Sag = 12 * sag,
        Step = FrameStep.Plan,
        Bays = bays,
        // A grain of weight keeps a single bay solvable; it does not show.
        WeightPerLength = 1e-6,
        AxialStiffness = stiffness,
        NodeLoads = nodes => [.. nodes.Select(_ => 10_000.0 / bays)],
    });
}
