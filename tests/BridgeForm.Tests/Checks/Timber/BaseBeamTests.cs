using BridgeForm.Checks.Timber;
using CsCheck;

namespace BridgeForm.Tests.Checks.Timber;

public sealed class BaseBeamTests
{
    // Simple beam under an even load: w·L²/8 in the middle, w·L/2 at the ends (any text on statics).
    [Fact]
    public void An_even_load_between_the_ropes()
    {
        var beam = new BaseBeam(0.6, [], [new(-0.6, 0.6, 1200)], []);
        Assert.Equal((600, 600), beam.Reactions());
        Assert.Equal(1000 * 1.2 * 1.2 / 8, beam.Moment(0), 1e-9);
        Assert.Equal(600, Math.Abs(beam.Shear(0.6 - BaseBeam.Beside)), 1e-5);
        Assert.Contains(beam.Places(-0.6, 0.6), z => Math.Abs(z) < 1e-6);
    }

    // Load beyond a support: −P·a at the support, and the other one is lifted.
    [Fact]
    public void A_load_beyond_a_rope()
    {
        var beam = new BaseBeam(0.5, [new(0.7, 100)], [], []);
        var (left, right) = beam.Reactions();
        Assert.Equal(-20, left, 1e-9);
        Assert.Equal(120, right, 1e-9);
        Assert.Equal(-20, beam.Moment(0.5), 1e-9);
    }

    /// <summary>
    /// By hand, the starter file's numbers: 17-3/4 in + 1-1/2 in · tan 8° is half the clear width; 6 in less, over 44 in
    /// between the ropes, and a half: 0.772 of the point load on the nearer rope, not the 0.5 of the middle line. The same
    /// in the base's case and, before the weights lean, in the ropes'.
    /// </summary>
    [Theory]
    [InlineData("")]
    [InlineData("\nloads: { point: { patch: 10 in } }\n")]
    public void The_point_load_at_the_edge_is_shared_by_statics(string patch)
    {
        var context = Contexts.Of("name: s\nsite: { span: 30 ft }\n" + patch);
        var cases = BaseCases.List(Contexts.Upright(context));
        var (force, share) = (context.Parameters.Loads.PointForce, 0.5 + ((17.75 + (1.5 * Math.Tan(Bridges.Radians(8))) - 6) / 44));
        var (empty, edge) = (cases.Single(c => c.Name is "empty").Beam, cases.Single(c => c.Name is "point load at the edge").Beam);
        Assert.Equal(0.772, share, 1e-3);
        Assert.Equal(share * force, edge.Reactions().Right - empty.Reactions().Right, 1e-6);
        var ropes = context.Cases.Single(c => c.Id is "point-edge-mid");

        // The ropes carry as much together; one a little more of it, as the weights lean with the frames.
        var dead = context.Rope.Loads.Sum();
        Assert.Equal(force, ropes.Shape!.Loads.Sum() + ropes.Lighter!.Loads.Sum() - (2 * dead), 1e-6);
        Assert.InRange(ropes.Shape!.Loads.Sum() - dead, share * force, 1.25 * share * force);
    }

    // A couple in the middle of a simple beam: ± C/2 on its two sides.
    [Fact]
    public void A_couple_in_the_middle()
    {
        var beam = new BaseBeam(0.5, [], [], [new(0, 80)]);
        Assert.Equal((80.0, -80.0), beam.Reactions());
        Assert.Equal(80 * 0.5, Math.Abs(beam.Moment(BaseBeam.Beside)), 1e-6);
        Assert.Equal(80, beam.Moment(-BaseBeam.Beside) - beam.Moment(BaseBeam.Beside), 1e-6);
    }

    [Fact]
    public void Nothing_is_left_beyond_either_end_whatever_stands_on_it()
    {
        var force = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1000, 1000], (at, down) => new BeamForce(at, down));
        var spread = Gen.Select(Gen.Double[-1, 0], Gen.Double[0.1, 1], Gen.Double[-1000, 1000], (a, b, down) => new BeamSpread(a, b, down));
        var couple = Gen.Select(Gen.Double[-1, 1], Gen.Double[-100, 100], (at, turn) => new BeamCouple(at, turn));
        Gen.Select(Gen.Double[0.2, 0.9], force.Array[0, 4], spread.Array[0, 3], couple.Array[0, 3]).Sample(
            (support, forces, spreads, couples) =>
            {
                var beam = new BaseBeam(support, [.. forces], [.. spreads], [.. couples]);
                Assert.Equal(0, beam.Moment(-1.001), 1e-8);
                Assert.Equal(0, beam.Shear(-1.001), 1e-8);

                // Shear is the slope of the moment.
                const double H = 1e-6;
                foreach (var z in (double[])[-0.87654, -0.123456, 0.0567, 0.7321])
                {
                    Assert.Equal(
                        beam.Shear(z), (beam.Moment(z + H) - beam.Moment(z - H)) / (2 * H), 0.01 + Jump(forces, couples, support, z));
                }
            },
            iter: 300);
    }

    [Fact]
    public void No_place_that_was_not_looked_at_bends_more()
    {
        var force = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1000, 1000], (at, down) => new BeamForce(at, down));
        var spread = Gen.Select(Gen.Double[-1, 0], Gen.Double[0.1, 1], Gen.Double[-1000, 1000], (a, b, down) => new BeamSpread(a, b, down));
        Gen.Select(force.Array[0, 4], spread.Array[0, 3]).Sample(
            (forces, spreads) =>
            {
                var beam = new BaseBeam(0.6, [.. forces], [.. spreads], []);
                var most = beam.Places(-0.55, 0.55).Max(z => Math.Abs(beam.Moment(z)));
                Assert.All(Enumerable.Range(0, 200), i => Assert.True(Math.Abs(beam.Moment(-0.55 + (i * 1.1 / 199))) <= most + 1e-4));
            },
            iter: 200);
    }

    // A difference quotient across a place where something stands means nothing.
    private static double Jump(BeamForce[] forces, BeamCouple[] couples, double support, double z) =>
        forces.Select(f => f.At).Concat(couples.Select(c => c.At)).Concat([support, -support]).Any(at => Math.Abs(at - z) < 1e-5)
            ? double.PositiveInfinity
            : 0;
}
