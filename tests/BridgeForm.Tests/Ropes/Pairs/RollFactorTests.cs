using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Tests.Ropes.Pairs;

/// <summary>
/// Roll factors against closed forms of the shallow elastic cable (derived by hand from Irvine, Cable Structures, 1981,
/// chapter 2, from memory), and against a single frame by hand.
/// </summary>
public sealed class RollFactorTests
{
    // H of one rope, f of the loaded state, Le = L·(1 + 8(f/L)²) + backstays, λ² = (8f/L)²·EA·L / (H·Le), w of the whole bridge:
    // halves against each other H·(2n·sin(π/n)/L)²·s² / (2wh)·(1 + 6(f/L)²); all to one side H·(Ω/L)²·s² / (2wh), Ω the first
    // root of tan(Ω/2) = Ω/2 − (4/λ²)·(Ω/2)³. The lesser governs: all to one side below λ² = 4π².
    [Theory]
    [InlineData(24, 20, 0.06, 1.7e7, 0, false)]
    [InlineData(20, 12, 0.04, 4e7, 0, false)]
    [InlineData(41, 40, 0.06, 4e7, 0, false)]
    [InlineData(80, 60, 0.06, 6e7, 0, false)]
    [InlineData(24, 20, 0.02, 5e6, 0, true)]
    [InlineData(30, 30, 0.015, 1.7e7, 0, true)]
    [InlineData(60, 60, 0.03, 1e7, 0, true)]
    [InlineData(24, 20, 0.02, 1.2e7, 12, true)]
    [InlineData(24, 20, 0.06, 3e7, 12, false)]
    public void Many_bays_follow_the_shallow_cable(
        int bays, double span, double sagShare, double stiffness, double backstay, bool isToOneSide)
    {
        var stays = backstay > 0 ? new Backstays(new BackstayParameters(backstay, 0, Sliding: false), null) : Backstays.None;
        var (rope, loads) = PairSamples.Even(bays, span, sagShare * span, stiffness, stays);
        var pair = PairSamples.Find(rope, PairSamples.HeightsTimes(loads, 1e-3));
        var (h, f) = (pair.Left.Horizontal, pair.Left.Sag);
        var length = (span * (1 + (8 * f * f / (span * span)))) + backstay;
        var lambda = 64 * f * f / (span * span) * stiffness * span / (h * length);
        var scale = PairSamples.Spacing * PairSamples.Spacing / (2 * PairSamples.PerMetre * PairSamples.High);
        var wave = 2 * bays * Math.Sin(Math.PI / bays) / span;
        var halves = h * wave * wave * scale * (1 + (6 * f * f / (span * span)));
        var together = h * Math.Pow(Root(lambda) / span, 2) * scale;
        Assert.Equal(isToOneSide, together < halves);
        Assert.Equal(isToOneSide, lambda < 4 * Math.PI * Math.PI);
        var factor = RollFactor.Find(rope, PairSamples.Spacing, loads, pair)!;
        RopeSamples.Close(Math.Min(halves, together), factor.Value, 0.02);
        Assert.Equal(isToOneSide, factor.IsToOneSide);
    }

    // Two straight links of unstressed length l over half a span a, hanging d: T = EA·(c/l − 1), P = 2·T·d/c, so a rope
    // resists k = dP/dd = 2·EA·(1/l − 1/c + d²/c³). Frames of weight W at h roll at λ = k·s² / (2·W·h).
    [Fact]
    public void A_single_frame_is_reckoned_by_hand()
    {
        var (rope, loads) = PairSamples.Even(2, 6, 0.3, 1.7e7);
        var (a, l, stiffness) = (3.0, rope.UnstressedLengths[0], 1.7e7);
        var d = Links.Drop(a, l, stiffness, loads.Weights[1] / 2);
        var lambda = Links.Stiffness(a, l, stiffness, d) * 1.1 * 1.1 / (2 * loads.Weights[1] * 0.95);
        RopeSamples.Close(lambda, RollFactor.Find(rope, 1.1, loads, PairSamples.Find(rope, loads))!.Value, 1e-6);

        // Unlike loads: the two ropes give way one after the other, kA·kB / (kA + kB) in place of k / 2.
        var aside = PairSamples.ToSide(loads, 0.2);
        var pair = PairSamples.Find(rope, aside);
        var (left, right) = (
            Links.Stiffness(a, l, stiffness, -pair.Left.Nodes[1].Y), Links.Stiffness(a, l, stiffness, -pair.Right.Nodes[1].Y));
        RopeSamples.Close(
            left * right / (left + right) * 1.1 * 1.1 / (loads.Weights[1] * 0.95), RollFactor.Find(rope, 1.1, aside, pair)!.Value, 1e-6);
    }

    [Fact]
    public void Higher_weights_divide_the_factor_and_wider_ropes_square_it()
    {
        var (rope, loads) = PairSamples.Even(11, 9, 0.54, 1.7e7);
        var pair = PairSamples.Find(rope, loads);
        var factor = RollFactor.Find(rope, 1.1, loads, pair)!.Value;
        RopeSamples.Close(factor / 2, RollFactor.Find(rope, 1.1, PairSamples.HeightsTimes(loads, 2), pair)!.Value, 1e-8);
        RopeSamples.Close(factor * 4, RollFactor.Find(rope, 2.2, loads, pair)!.Value, 1e-8);
        Assert.Equal(double.PositiveInfinity, RollFactor.Find(rope, 1.1, PairSamples.HeightsTimes(loads, 0), pair)!.Value);
    }

    // A single frame whose yaw is held has no way along the bridge for its ropes, which takes nothing here, but swings them out
    // under a deck 0.2 m high: 4·H/a·(0.2/s)² of both ropes is added to the k/2 of each of two ropes' drops against each other.
    [Fact]
    public void A_deck_held_in_plan_swings_the_ropes_out()
    {
        var (rope, loads) = PairSamples.Even(2, 6, 0.3, 1.7e7);
        var pair = PairSamples.Find(rope, loads);
        var d = Links.Drop(3, rope.UnstressedLengths[0], 1.7e7, loads.Weights[1] / 2);
        var level = loads.Weights[1] / 4 * 3 / d;
        var stiff = (Links.Stiffness(3, rope.UnstressedLengths[0], 1.7e7, d) / 2 * 1.1 * 1.1) + (4 * level / 3 * 0.2 * 0.2);
        RopeSamples.Close(
            stiff / (loads.Weights[1] * 0.95),
            RollFactor.HeldInPlan(rope, 1.1, loads, pair, PairSamples.All(loads, 0.2)), 1e-6);
    }

    [Fact]
    public void Without_a_frame_on_the_ropes_there_is_none()
    {
        var rope = LoadCaseRequest.At(RopeSamples.Catenary(5, 0, 0.2, 15), 0, Backstays.None);
        var loads = new PairLoads([0, 0], [0, 0], [0, 0]);
        Assert.Null(RollFactor.Find(rope, 1.1, loads, PairSamples.Find(rope, loads)));
    }

    // tan x = x − (4/λ²)·x³ with x = Ω/2, by halves between π/2 and 3π/2, where the form without poles changes its sign once.
    private static double Root(double lambda)
    {
        var (low, high) = (Math.PI / 2, 3 * Math.PI / 2);
        for (var i = 0; i < 200; i++)
        {
            var x = (low + high) / 2;
            var isBelow = Math.Sin(x) > Math.Cos(x) * (x - (4 / lambda * x * x * x));
            (low, high) = isBelow ? (x, high) : (low, x);
        }

        return 2 * low;
    }
}
