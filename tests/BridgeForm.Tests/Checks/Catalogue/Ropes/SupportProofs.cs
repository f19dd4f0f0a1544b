using BridgeForm.Checks;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>What only an engineer may judge: each is always told, and names its force, length or item.</summary>
internal static class SupportProofs
{
    private static readonly TwoLinks s_rope = new();

    // Ropes held on saddles, with backstays of 6 ft at 60° below level on both sides: each saddle comes in by
    // u = (H − H₀)·L / (EA·cos²φ) + α·ΔT·L / cos φ, and the backstay is pulled by H / cos φ.
    [Proves("anchor-a", CheckStatus.Engineer)]
    public static Proof Backstay_at_A() => Held("anchor-a");

    [Proves("anchor-b", CheckStatus.Engineer)]
    public static Proof Backstay_at_B() => Held("anchor-b");

    // Without a backstay the support holds the rope's own tension; new rope set short for 0.5 % pulls it hardest.
    [Proves("anchor-a", CheckStatus.Engineer)]
    public static Proof New_rope_at_A() => New("anchor-a");

    [Proves("anchor-b", CheckStatus.Engineer)]
    public static Proof New_rope_at_B() => New("anchor-b");

    // One support 1 in nearer: links of the same length over half of 143 in. Half an inch beside the middle frame the rope has
    // risen by half its chord's slope, less its own arc.
    [Proves("support-move", CheckStatus.Engineer)]
    public static Proof Support_moves()
    {
        var bridge = new TwoBays();
        var dead = TwoLinks.DeadLoad(bridge);
        var length = s_rope.Length(dead, bridge.Sag);
        var nearer = s_rope with { Half = 71.5 };
        var drop = nearer.Drop(dead, length);
        var arc = nearer.PerInch * double.Hypot(71.5, drop) / 71.5 * 0.5 * 71 / (2 * nearer.Level(dead, drop, length));
        var fall = drop - (0.5 * drop / 71.5) + arc - bridge.Sag;
        return new Proof(bridge.Check("support-move"), fall * TwoBays.Inch) { Error = 1e-5 }
            .Saying(FormattableString.Invariant($"falls by up to {fall:0.###} in"), "1 in inward or down");
    }

    [Proves("loss-of-one-rope", CheckStatus.Engineer)]
    public static Proof One_of_two_ropes() =>
        new Proof(new TwoBays().Check("loss-of-one-rope"), 2).Saying("rope-6x19-iwrc-eips-galvanized-3/4", "turns over");

    // Three bays, dead load and a case of its own alone, even on both ropes: symmetrical, so that the middle bay stays level.
    // The frame's load
    // lies across the bisector of its chords; the tensions beside it are H / cos of the rope's own slopes there.
    [Proves("keeper-slip", CheckStatus.Engineer)]
    public static Proof Keeper_of_a_frame_beside_the_middle_bay()
    {
        var bridge = new TwoBays { More = "loads: { live: 0 psf, point: { force: 0 lbf }, cases: [{ id: crowd, live: 80 psf }] }" };
        var text = bridge.Text.Replace("spacing: 74 in", "spacing: 50 in", StringComparison.Ordinal);
        var context = Contexts.Of(Bridges.Even(text));
        var dead = context.Rope.Loads[1] / TwoLinks.Newtons(1);
        var (chord, middle) = ThreeLinks.Chord(s_rope, dead, bridge.Sag);
        var load = dead + (80.0 / 144 * bridge.Between * ((Math.Sqrt((chord * chord) - (middle * middle)) + chord) / 2) * 0.5);
        var (slope, difference) = ThreeLinks.Loaded(s_rope, dead, load, chord, middle);
        var along = load * Math.Sin(slope / 2);
        return new Proof(Contexts.Check(context, "keeper-slip"), TwoLinks.Newtons(Math.Max(along, difference))) { Error = 1e-4 }
            .Saying("case crowd", $"load {load:0} lbf", $"{along:0} lbf", $"{difference:0} lbf");
    }

    private static Proof New(string id)
    {
        var bridge = new TwoBays();
        var dead = TwoLinks.DeadLoad(bridge);
        var length = s_rope.Length(dead, bridge.Sag);
        var cold = 1 - (40 * TwoLinks.Expansion);
        var (load, loadWhenNew) = (TwoLinks.Heavier(bridge, 60, 0.6, cold), TwoLinks.Heavier(bridge, 60, 0.6, cold / 1.005));
        var marked = s_rope.Tension(load, s_rope.Drop(load, length, cold), length);
        var asNew = s_rope.Tension(loadWhenNew, s_rope.Drop(loadWhenNew, length, cold / 1.005), length);
        return new Proof(Contexts.Check(bridge.Context, id), TwoLinks.Newtons(asNew)) { Error = 2e-5 }.Saying(
            $"{marked:0} lbf", $"{asNew:0} lbf", $"down {(load / 2) + (s_rope.PerInch * length):0} lbf", "live-full-cold",
            "two ropes pull");
    }

    private static Proof Held(string id)
    {
        const string Stay = "{ backstay: { length: 6 ft, angle: 60 deg } }";
        var bridge = new TwoBays { Site = $", a: {Stay}, b: {Stay}", Ropes = ", stretch: [0 %, 0 %]", More = "loads: { live: 58 psf }" };
        var (dead, context) = (TwoLinks.DeadLoad(bridge), Contexts.Of(TwoBays.NoWetter(Bridges.Even(bridge.Text))));

        // Even on both ropes: nothing leans.
        var (load, length) = (dead + TwoLinks.AreaLoad(bridge, 58, 0.5), s_rope.Length(dead, bridge.Sag));
        var (still, level, half) = (s_rope.Level(dead, bridge.Sag, length), 0.0, 72.0);
        for (var i = 0; i < 100; i++)
        {
            var links = s_rope with { Half = half };
            level = links.Level(load, links.Drop(load, length, 1 - (40 * TwoLinks.Expansion)), length);
            half = 72 - ((level - still) * 72 / (s_rope.Stiffness * 0.25)) + (TwoLinks.Expansion * 40 * 72 / 0.5);
        }

        var (pull, down) = (level / 0.5, (load / 2) + (s_rope.PerInch * length));
        var given = context.Ropework.Supports.Single(s => id.EndsWith(s.Support, StringComparison.OrdinalIgnoreCase));
        RopeSamples.Close(TwoLinks.Newtons(down + (pull * Math.Sqrt(0.75))), given.PostVertical, 1e-4);
        Assert.Equal(0, given.PostHorizontal, 1e-6);
        return new Proof(Contexts.Check(context, id), TwoLinks.Newtons(pull)) { Error = 1e-4 }.Saying(
            $"level pull {level:0} lbf", $"pull {pull:0} lbf on the anchor", $"down {down:0} lbf + {pull * Math.Sqrt(0.75):0} lbf = ",
            $"level {level:0} lbf − {level:0} lbf = 0 lbf", "60.0°");
    }
}
