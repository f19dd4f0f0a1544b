using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Tests.Ropes.Pairs;

public sealed class PairSolverTests
{
    private const double Spacing = 1.1;

    // A frame of two links on either side, its weight 0.15 m off the middle and 0.95 m up: the left rope carries
    // W·(½ + (e + h·t)/s), the right one the rest; t = (dLeft − dRight)/s. Solved here by turns.
    [Fact]
    public void A_single_frame_leans_by_hand()
    {
        var (rope, even) = PairSamples.Even(2, 6, 0.3, 1.7e7);
        var (weight, length) = (even.Weights[1], rope.UnstressedLengths[0]);
        var (t, first) = (0.0, double.NaN);
        for (var i = 0; i < 500; i++)
        {
            var share = 0.5 + ((0.15 + (0.95 * t)) / Spacing);
            t = (Links.Drop(3, length, 1.7e7, weight * share) - Links.Drop(3, length, 1.7e7, weight * (1 - share))) / Spacing;
            first = i == 0 ? t : first;
        }

        var pair = PairSamples.Find(rope, PairSamples.ToSide(even, 0.15), Spacing);
        Assert.False(pair.RollsOver);
        Assert.Equal(Math.Atan(t), PairShape.Largest(pair.Tilts), 1e-8);
        Assert.Equal(Math.Atan(first), PairShape.Largest(pair.FirstOrderTilts), 1e-8);
        Assert.True(t > first * 1.01);
        Assert.Equal(weight * (0.5 + ((0.15 + (0.95 * t)) / Spacing)), pair.Left.Loads[1], weight * 1e-7);
        Assert.Equal(weight, pair.Left.Loads[1] + pair.Right.Loads[1], weight * 1e-12);
    }

    [Fact]
    public void Frames_lean_until_loads_and_heights_agree()
    {
        var (rope, even) = PairSamples.Even(12, 9, 0.54, 1.7e7);
        var loads = PairSamples.ToSide(even, 0.1);
        var pair = PairSamples.Find(rope, loads, Spacing);
        for (var i = 1; i < 12; i++)
        {
            var t = (pair.Right.Nodes[i].Y - pair.Left.Nodes[i].Y) / Spacing;
            Assert.Equal(t, pair.Tilts[i], 1e-8);
            Assert.Equal(
                (loads.Weights[i] / 2) + ((loads.Moments[i] + (loads.HeightMoments[i] * t)) / Spacing), pair.Left.Loads[i],
                loads.Weights[i] * 1e-7);
        }
    }

    // Symmetric loads on a level bridge: the tilt of second order grows by 1 / (1 − 1/λ), with λ of the whole bridge rolling to
    // one side. Only about, because a load to one side also stiffens one rope and slackens the other.
    [Fact]
    public void Mirrored_loads_tilt_the_other_way()
    {
        var (rope, even) = PairSamples.Even(12, 9, 0.54, 1.7e7);
        var (left, right) = (PairSamples.Find(rope, PairSamples.ToSide(even, 0.1)), PairSamples.Find(rope, PairSamples.ToSide(even, -0.1)));
        Assert.All(left.Tilts.Zip(right.Tilts), t => Assert.Equal(t.First, -t.Second, 1e-9));
        Assert.True(left.Tilts[6] > 0);
    }

    [Fact]
    public void Without_heights_both_orders_are_the_same()
    {
        var (rope, even) = PairSamples.Even(12, 9, 0.54, 1.7e7);
        var pair = PairSamples.Find(rope, PairSamples.HeightsTimes(PairSamples.ToSide(even, 0.1), 0));
        Assert.All(pair.Tilts.Zip(pair.FirstOrderTilts), t => Assert.Equal(t.First, t.Second, 1e-9));
    }

    // Heights are raised until the roll factor is 1: just below the section stands, just above it turns over.
    [Fact]
    public void Even_loads_turn_over_where_the_factor_is_one()
    {
        var (rope, loads) = PairSamples.Even(12, 9, 0.54, 1.7e7);
        var factor = RollFactor.Find(rope, Spacing, loads, PairSamples.Find(rope, loads, Spacing))!.Value;
        Assert.False(PairSamples.Find(rope, PairSamples.HeightsTimes(loads, factor * 0.9999), Spacing).RollsOver);
        Assert.True(PairSamples.Find(rope, PairSamples.HeightsTimes(loads, factor * 1.0001), Spacing).RollsOver);
    }

    // With a load to one side there is an end before that: heights are raised by hundredths until there is no equilibrium,
    // which must come before the factor of the upright section is used up, and the tilt must have run away before it.
    [Fact]
    public void Loads_to_one_side_turn_over_before_that()
    {
        var (rope, even) = PairSamples.Even(12, 9, 0.54, 1.7e7);
        var factor = RollFactor.Find(rope, Spacing, even, PairSamples.Find(rope, even, Spacing))!.Value;
        var (last, at) = (0.0, 0.0);
        for (var share = 0.5; share < 1.01; share += 0.01)
        {
            var pair = PairSamples.Find(rope, PairSamples.HeightsTimes(PairSamples.ToSide(even, 0.05), factor * share), Spacing);
            if (pair.RollsOver)
            {
                at = share;
                break;
            }

            var tilt = PairShape.Largest(pair.Tilts);
            Assert.True(tilt > last, FormattableString.Invariant($"{tilt} after {last} at {share}"));
            last = tilt;
        }

        Assert.InRange(at, 0.8, 1.001);
        Assert.All(
            PairSamples.Find(rope, PairSamples.HeightsTimes(PairSamples.ToSide(even, 0.05), factor * 2), Spacing).Tilts,
            t => Assert.True(double.IsFinite(t)));
    }

    [Fact]
    public void A_rope_without_shape_is_told()
    {
        var (rope, loads) = PairSamples.Even(2, 6, 0.3, 1.7e7);
        Assert.False(PairSolver.TryFind(
            rope with { Span = double.NaN }, Spacing, loads, LoadCaseSolver.DefaultAccuracy, 200, out var pair, out var failure));
        Assert.Null(pair);
        Assert.NotEmpty(failure!);
    }

    // Stiffness with sliding and held backstays: a load moved by so little moves the nodes as K says.
    [Theory]
    [InlineData(true, true)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(false, false)]
    public void Stiffness_is_that_of_the_solver_with_its_backstays(bool slidesAtA, bool slidesAtB)
    {
        var design = DesignState.Find(RopeSamples.Footbridge);
        var stays = new Backstays(new BackstayParameters(7, 0.5, slidesAtA), new BackstayParameters(9, 0.3, slidesAtB));
        var rope = LoadCaseRequest.At(design, 20, stays);
        var shape = LoadCaseSolver.Find(rope);
        var matrix = PairStiffness.OfOne(BayStiffness.Find(rope, shape)).Factored()!;
        for (var node = 1; node + 1 < shape.Nodes.Length; node += 3)
        {
            const double Push = 0.5;
            var force = new double[2 * (shape.Nodes.Length - 2)];
            force[(2 * (node - 1)) + 1] = 2 * Push;
            var moves = matrix.Solve(force);
            var (more, less) = (Pushed(Push), Pushed(-Push));
            for (var i = 1; i + 1 < shape.Nodes.Length; i++)
            {
                Assert.Equal(moves[2 * (i - 1)], more.Nodes[i].X - less.Nodes[i].X, 2e-8);
                Assert.Equal(moves[(2 * (i - 1)) + 1], less.Nodes[i].Y - more.Nodes[i].Y, 2e-8);
            }

            RopeShape Pushed(double push) =>
                LoadCaseSolver.Find(rope with { Loads = rope.Loads.SetItem(node, rope.Loads[node] + push), Start = shape });
        }
    }
}
