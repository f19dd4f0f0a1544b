using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Space;
using BridgeForm.Solids;
using BridgeForm.Tests.Ropes.Pairs;
using CsCheck;

namespace BridgeForm.Tests.Ropes.Space;

/// <summary>A wind across two ropes and what stands on them, against statics by hand.</summary>
public sealed class SpaceSolverTests
{
    private const double Weight = 15;
    private const double Wind = 9;

    // A rope under its weight and a wind all along it hangs as in the calm under √(w² + q²), in a plane that leans by
    // atan(q / w). Frames without weight or wind change nothing but that both ropes keep their distance.
    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void Ropes_alone_swing_out_to_a_slanting_plane(int bays)
    {
        var rope = Level(bays);
        var calm = LoadCaseSolver.Find(rope);
        var none = new double[bays + 1];
        var shape = SpaceSolver.Find(rope, 1.2, new SpaceLoads([.. none], [.. none], [.. none], [.. none], Wind), calm)!.Shape!;
        var hung = LoadCaseSolver.Find(rope with { WeightPerLength = double.Hypot(Weight, Wind) });
        var (cos, sin) = (Weight / double.Hypot(Weight, Wind), Wind / double.Hypot(Weight, Wind));
        for (var i = 0; i <= bays; i++)
        {
            foreach (var (node, at) in new[] { (shape.Left[i], -0.6), (shape.Right[i], 0.6) })
            {
                Near(hung.Nodes[i].X, node.X);
                Near(cos * hung.Nodes[i].Y, node.Y);
                Near(at - (sin * hung.Nodes[i].Y), node.Z);
            }
        }

        Near(sin * hung.Sag, shape.Sideways, 1e-6);
        RopeSamples.Close(hung.LargestTension, shape.LargestTension, 1e-9);
        RopeSamples.Close(Wind * rope.UnstressedLengths.Sum() / 2, shape.LeftForces[0].Z, 1e-9);
    }

    // Statics: what pulls at the supports is all the wind and all the weight there is, whatever the shape. And each frame alone:
    // forces, and moments about the point midway between its ropes.
    [Fact]
    public void Pulls_at_the_supports_are_all_wind_and_all_weight()
    {
        var stood = 0;
        Samples.OnFixed(40, sample =>
        {
            if (sample.Find() is not { Shape: { } shape } result)
            {
                return;
            }

            stood += result.Share < 1 ? 0 : 1;
            var ends = shape.LeftForces[0] + shape.RightForces[0] + shape.LeftForces[^1] + shape.RightForces[^1];
            var weight = sample.Loads.Weights.Sum() + (2 * sample.Rope.WeightPerLength * sample.Rope.UnstressedLengths.Sum());
            Assert.InRange(ends.Z - sample.Force, -1e-6 * weight, 1e-6 * weight);
            Assert.InRange(ends.Y + weight, -1e-6 * weight, 1e-6 * weight);
            for (var i = 1; i + 1 < shape.Rolls.Length; i++)
            {
                var (up, both) = (SpaceShape.Up(shape.Rolls[i]), shape.LeftForces[i] + shape.RightForces[i]);
                Assert.InRange(both.Y - sample.Loads.Weights[i], -1e-6 * weight, 1e-6 * weight);
                Assert.InRange(both.Z + sample.Loads.Winds[i], -1e-6 * weight, 1e-6 * weight);
                var turning = (sample.Loads.HeightMoments[i] * up.Z) + (sample.Loads.WindMoments[i] * up.Y)
                    + (shape.Right[i] - shape.Left[i]).Cross(shape.RightForces[i] - shape.LeftForces[i]).X / 2;
                Assert.InRange(turning, -1e-6 * weight, 1e-6 * weight);
                RopeSamples.Close(sample.Spacing, (shape.Right[i] - shape.Left[i]).Length, 1e-9);
            }
        });
        Assert.InRange(stood, 20, 40);
    }

    // A light wind rolls frames as much as their weights do that stand aside by wind × height / weight, and moves them sideways
    // as a string: F·x·(L − x)/(2·H·L) of evenly spread F.
    [Fact]
    public void A_light_wind_rolls_as_weights_aside_and_sways_as_a_string()
    {
        const double Small = 1e-4;
        var (rope, loads) = PairSamples.Even(12, 12, 0.6, 1.7e7);
        loads = PairSamples.HeightsTimes(loads, 0.5);
        var calm = PairSamples.Find(rope, loads).Left;
        var blown = new SpaceLoads(
            loads.Weights, loads.HeightMoments,
            [.. loads.Weights.Select(w => Small * w)], [.. loads.Weights.Select(w => Small * w * 0.7)], 0);
        var shape = SpaceSolver.Find(rope, PairSamples.Spacing, blown, calm)!.Shape!;
        var aside = PairSamples.Find(rope, PairSamples.ToSide(loads, -Small * 0.7));
        for (var i = 1; i < 12; i++)
        {
            RopeSamples.Close(-aside.Tilts[i], shape.Rolls[i], 1e-3);
        }

        var perMetre = Small * PairSamples.PerMetre;
        RopeSamples.Close(perMetre * 12 * 12 / (8 * 2 * calm.Horizontal), (shape.Left[6].Z + shape.Right[6].Z) / 2, 1e-3);
    }

    // Moments about the leeward rope: a wind on upright frames takes the last load off the other rope at F·h = W·s/2, and a
    // little before or beyond it the frames lose their footing: a rope that carries nothing lies where it lies.
    [Fact]
    public void Frames_turn_over_about_where_the_wind_takes_the_load_off_one_rope()
    {
        var (rope, loads) = PairSamples.Even(12, 12, 0.6, 1.7e7);
        loads = PairSamples.HeightsTimes(loads, 0.3);
        var calm = PairSamples.Find(rope, loads).Left;
        var shares = 0.5 * PairSamples.Spacing / 0.7;
        SpaceResult At(double share) => SpaceSolver.Find(
            rope, PairSamples.Spacing,
            new SpaceLoads(
                loads.Weights, loads.HeightMoments,
                [.. loads.Weights.Select(w => share * w)], [.. loads.Weights.Select(w => share * w * 0.7)], 0),
            calm)!;
        Assert.Equal(1, At(0.6 * shares).Share);
        var over = At(2 * shares);
        Assert.InRange(over.Share * 2, 0.6, 1.05);
        Assert.InRange(over.Beyond * 2, 0.7, 1.1);
        Assert.True(over.Share < over.Beyond);
    }

    // Under the ropes, upside down, there is always an equilibrium: never taken for one.
    [Fact]
    public void Frames_that_do_not_stand_in_the_calm_have_no_answer()
    {
        var (rope, loads) = PairSamples.Even(12, 12, 0.6, 1.7e7);
        loads = PairSamples.HeightsTimes(loads, 5);
        var calm = LoadCaseSolver.Find(rope);
        var winds = loads.Weights.Select(w => 0.01 * w).ToArray();
        Assert.Null(SpaceSolver.Find(
            rope, PairSamples.Spacing, new SpaceLoads(loads.Weights, loads.HeightMoments, [.. winds], [.. winds], 0), calm));
    }

    // Rope that slides over its saddles: closed form of ropes alone again, with backstays at both ends.
    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    public void Backstays_feed_a_slanting_rope_as_one_that_hangs(int bays)
    {
        var stays = new Backstays(new BackstayParameters(5, 0.4, Sliding: true), new BackstayParameters(7, 0.3, Sliding: true));
        var rope = LoadCaseRequest.At(LoadCaseSolver.Find(Level(bays)), 0, stays) with { Loads = [.. new double[bays + 1]] };
        var none = new double[bays + 1];
        var shape = SpaceSolver.Find(
            rope, 1.2, new SpaceLoads([.. none], [.. none], [.. none], [.. none], Wind), LoadCaseSolver.Find(rope))!.Shape!;
        var hung = LoadCaseSolver.Find(rope with { WeightPerLength = double.Hypot(Weight, Wind) });
        for (var i = 0; i <= bays; i++)
        {
            Near(hung.Nodes[i].X, shape.Left[i].X);
            Near(Weight / double.Hypot(Weight, Wind) * hung.Nodes[i].Y, shape.Left[i].Y);
        }

        RopeSamples.Close(hung.LargestTension, shape.LargestTension, 1e-9);
    }

    // A held saddle gives along the bridge by its share of the pull: the same closed form once more, where the level pull of
    // the slanting rope is not its pull along the bridge but has the plane's lean in it nowhere, for a level bridge.
    [Fact]
    public void Held_saddles_give_in_the_wind_as_under_weight()
    {
        var stays = new Backstays(new BackstayParameters(5, 0.4, Sliding: false), new BackstayParameters(7, 0.3, Sliding: false));
        var rope = LoadCaseRequest.At(LoadCaseSolver.Find(Level(6)), 0, stays) with { Loads = [.. new double[7]] };
        var none = new double[7];
        var shape = SpaceSolver.Find(
            rope, 1.2, new SpaceLoads([.. none], [.. none], [.. none], [.. none], Wind), LoadCaseSolver.Find(rope))!.Shape!;
        var hung = LoadCaseSolver.Find(rope with { WeightPerLength = double.Hypot(Weight, Wind) });
        Near(hung.Nodes[0].X, shape.Left[0].X);
        Near(hung.Nodes[^1].X, shape.Right[^1].X);
        RopeSamples.Close(hung.LargestTension, shape.LargestTension, 1e-9);
    }

    // Inside of a curve, all the way: ∂force/∂reach of a piece is the inverse of ∂reach/∂force, and both are what differences say.
    [Fact]
    public void A_piece_gives_and_resists_as_differences_say()
    {
        var (force, load) = (new Vector3d(4000, -300, 250), new Vector3d(0, -Weight, Wind));
        var piece = new SpaceCatenary(force, 3, load, 1e7);
        foreach (var by in new[] { Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ })
        {
            var step = 0.5 * by;
            var change = new SpaceCatenary(force + step, 3, load, 1e7).Reach - new SpaceCatenary(force - step, 3, load, 1e7).Reach;
            Assert.InRange(((piece.Give * by) - change).Length, 0, 1e-6 * change.Length);
            Assert.InRange(((piece.Stiffness * (piece.Give * by)) - by).Length, 0, 1e-9);
        }
    }

    private static readonly Gen<SpaceSample> Samples =
        Gen.Select(Gen.Int[1, 12], Gen.Double[0.02, 0.1], Gen.Double[-0.2, 0.2], Gen.Double[0, 1].Array[40]).Select((bays, sag, rise, u) =>
        {
            var design = DesignState.Find(
                RopeSamples.Footbridge with { Span = bays, Rise = rise * bays, Sag = sag * bays, Spacing = null, Bays = bays });
            double At(int i, int k) => i == 0 || i == bays ? 0 : u[((3 * i) + k) % 40];
            var weights = design.Loads.Select(p => 2 * p).ToArray();
            return new SpaceSample(design, LoadCaseRequest.At(design, 0, Backstays.None), 1.1, new SpaceLoads(
                [.. weights], [.. weights.Select(w => 0.3 * w)],
                [.. weights.Select((w, i) => w * 1.5 * At(i, 0))], [.. weights.Select((w, i) => w * 1.5 * At(i, 0) * At(i, 1))], 8 * u[1]));
        });

    private static LoadCaseRequest Level(int bays) => new()
    {
        Span = 12,
        Rise = 0,
        UnstressedLengths = [.. Enumerable.Repeat(12.1 / bays, bays)],
        Loads = [.. new double[bays + 1]],
        WeightPerLength = Weight,
        AxialStiffness = 1.7e7,
    };

    private static void Near(double hand, double given, double most = 1e-8) => Assert.InRange(given - hand, -most, most);
}
