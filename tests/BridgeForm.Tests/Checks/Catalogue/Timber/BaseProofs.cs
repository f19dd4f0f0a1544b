using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.BaseStatics;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// The middle base beside its channels, by a point load that governs, and at them, by a push inward that does. 2.5 × 5.5 in:
/// S = 12.604 in³. Beam stability (NDS 3.3.3): L = 58 in, L/d = 10.5, le = 1.63·58 + 3·5.5 = 111.04 in, RB² = 111.04·5.5/2.5² =
/// 97.7; of the net depth 4.875 in le = 109.165 in, RB² = 85.15. FbE = 1.2·580000/RB².
/// </summary>
internal static class BaseProofs
{
    private const double S = 2.5 * 5.5 * 5.5 / 6;
    private const double NetS = 2.5 * 4.875 * 4.875 / 6;
    private const double Euler = 1.2 * 580000 / (111.04 * 5.5 / 6.25);
    private const double NetEuler = 1.2 * 580000 / (109.165 * 4.875 / 6.25);

    private const string Nobody = "{ live: 0 psf, point: { force: 0 lbf } }";

    private static LevelDeck Heavy => new() { Loads = "{ live: 60 psf, point: { force: 1000 lbf } }" };

    // In the middle 1000/2·23 and the dead load: its reactions, and what lies on the right half.
    [Proves("base-bending", CheckStatus.Pass, Side.Within)]
    [Proves("base-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof Middle(double share)
    {
        var stress = ((1000 / 2.0 * 23) + DeadMoment(0)) / S;
        return new Proof(
            Heavy.With("3x6", bending: Before(stress / share, Euler, 0.95)).Check("base-bending"), stress * Psi, stress / share * Psi)
        { Error = Nanometre }
            .Saying("point load in the middle: bottom in tension");
    }

    // 60 psf on 2·18.46 in and 72.007 in: half of each frame's bays, W = 1107.9 lbf, over ±18.25 in; W/2·(23 − 9.125).
    [Proves("base-bending", CheckStatus.Pass, Side.Within)]
    [Proves("base-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof Live(double share)
    {
        var load = 60 / 144.0 * 2 * HalfWidth * Math.Sqrt((72 * 72) + 1);
        var stress = ((load / 2 * (23 - 9.125)) + DeadMoment(0)) / S;
        return new Proof(
            new LevelDeck().With("3x6", bending: Before(stress / share, Euler, 0.95)).Check("base-bending"), stress * Psi,
            stress / share * Psi)
            .Saying("live load: bottom in tension, 0 in from the middle");
    }

    // The point load 6 in from the post's face, at 18.46 − 6 = 12.46 in: the right rope bears 0.5 + 12.46/46 of it; beside the
    // channel less what stands beyond. NDS 3.4.2: (2/3)·Fv'·b·d.
    [Proves("base-shear", CheckStatus.Pass, Side.Within)]
    [Proves("base-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof Edge(double share)
    {
        var force = (1000 * (0.5 + ((HalfWidth - 6) / 46))) + DeadShear(Inner);
        var check = Heavy.With("3x6", shear: force / share / (2.0 / 3 * 2.5 * 5.5)).Check("base-shear");
        return new Proof(check, force * Pound, force / share * Pound) { Error = Nanometre }.Saying("point load at the edge, 22.563 in");
    }

    // An empty deck: outward the brace comes down beyond the channel, hardest on its foot's inner edge, and the shear is largest
    // outside the channel. CD 1.6.
    [Proves("base-shear", CheckStatus.Pass, Side.Within)]
    [Proves("base-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof BeyondTheRope(double share)
    {
        var force = Down(InnerFoot) + BraceWeight + (BaseWeight / 58 * (29 - Outer));
        var bridge = new LevelDeck { Loads = Nobody };
        var check = bridge.With("3x6", shear: force / share / (2.0 / 3 * 2.5 * 5.5) / 1.6).Check("base-shear");
        return new Proof(check, force * Pound, force / share * Pound) { Error = Nanometre }
            .Saying("200 lbf outward, brace on its foot's inner edge, 23.43");
    }

    // Outward the brace presses far beyond the rope where it stands on its foot's outer edge, its top in tension, and dry wood holds
    // least against it: at the inner wall. CD 1.6.
    [Proves("base-channel-bending", CheckStatus.Pass, Side.Within)]
    [Proves("base-channel-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof Outward(double share)
    {
        var stress = -DryMoment(Inner, OuterFoot) / NetS;
        var check = new LevelDeck().With("3x6", bending: Before(stress / share, NetEuler, 0.95) / 1.6).Check("base-channel-bending");
        return new Proof(check, stress * Psi, stress / share * Psi) { Error = Nanometre }
            .Saying(
                "200 lbf outward, wood dry, brace on its foot's outer edge: top in tension",
                "22.562 in from the middle");
    }

    // Just inside the rope: what it bears of live and dead load and what the brace pulls up, less the rope's part of the push.
    // The bottom is in tension: (2/3)·Fv'·b·dn·(dn/d)² (NDS 3.4.3.2), CD 1.6.
    [Proves("base-channel-shear", CheckStatus.Pass, Side.Within)]
    [Proves("base-channel-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearInward(double share)
    {
        var force = LiveOnRope + DeadShear(23) + BraceDown - RopeDown;
        var area = 2.0 / 3 * 2.5 * 4.875 * (4.875 / 5.5) * (4.875 / 5.5);
        var check = new LevelDeck().With("3x6", shear: force / share / area / 1.6).Check("base-channel-shear");
        return new Proof(check, force * Pound, force / share * Pound) { Error = Nanometre }
            .Saying("live load and 200 lbf inward, 23 in from the middle", "bottom in tension: (2/3)·Fv'·b·dn·(dn/d)²");
    }

    // 1000 lbf at the edge, CD 1.0, ask more than the push inward, 1266 lbf for CD 1.6.
    [Proves("base-channel-shear", CheckStatus.Pass, Side.Within)]
    [Proves("base-channel-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearOfEdge(double share)
    {
        var force = (1000 * (0.5 + ((HalfWidth - 6) / 46))) + DeadShear(23);
        var area = 2.0 / 3 * 2.5 * 4.875 * (4.875 / 5.5) * (4.875 / 5.5);
        var check = Heavy.With("3x6", shear: force / share / area).Check("base-channel-shear");
        return new Proof(
            check, force * Pound, force / share * Pound)
        { Error = Nanometre }.Saying("point load at the edge, 23 in from the middle");
    }

    // A channel 1 in deep in a 3x6 on an empty deck: inward 781 lbf at the outer wall, over (4.5/5.5)² for the bottom in tension, ask
    // more than 1089 lbf outward on the foot's inner edge with the top in tension.
    [Proves("base-channel-shear", CheckStatus.Pass, Side.Within)]
    [Proves("base-channel-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearOfDryWood(double share)
    {
        // Dry wood, 1/64 lb/in³, holds less against the brace's pull.
        var own = (((2.5 * 5.5 * 58) - (2 * 0.875 * 1 * 2.5)) / 64) + 3;
        var force = BraceDown - (BraceWeight * 48 / 64) - (own / 58 * (29 - Outer));
        var area = 2.0 / 3 * 2.5 * 4.5 * (4.5 / 5.5) * (4.5 / 5.5);
        var bridge = new LevelDeck { Depth = 1, Loads = Nobody };
        var check = bridge.With("3x6", shear: force / share / area / 1.6).Check("base-channel-shear");
        return new Proof(
            check, force * Pound, force / share * Pound)
        { Error = Nanometre }.Saying("200 lbf inward, wood dry, 23.438 in from the middle");
    }

    // A 3x12 with a channel 1/16 in deep, its deck empty: the push outward governs, its top in tension: 1086 lbf of the brace on
    // its foot's inner edge and what the base weighs beyond the rope. Inward it would be 779 lbf over (11.1875/11.25)², 788 lbf.
    [Proves("base-channel-shear", CheckStatus.Pass, Side.Within)]
    [Proves("base-channel-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearOutward(double share)
    {
        var own = (((2.5 * 11.25 * 58) - (2 * 0.875 * 0.0625 * 2.5)) / 48) + 3;
        var force = Down(InnerFoot) + BraceWeight + (own / 58 * 6);
        var bridge = new LevelDeck { Base = "section: 3x12", Depth = 0.0625, Loads = Nobody };
        var check = bridge.With("3x12", shear: force / share / (2.0 / 3 * 2.5 * 11.1875) / 1.6).Check("base-channel-shear");
        return new Proof(check, force * Pound, force / share * Pound) { Error = Nanometre }
            .Saying("200 lbf outward, brace on its foot's inner edge, 23 in from the middle", "top in tension: (2/3)·Fv'·b·dn =");
    }

    [Proves("base-bending", CheckStatus.Engineer)]
    public static Proof NoBending() => Unknown(Heavy, "base-bending", ((1000 / 2.0 * 23) + DeadMoment(0)) / S * Psi);

    [Proves("base-shear", CheckStatus.Engineer)]
    public static Proof NoShear() => Unknown(Heavy, "base-shear", ((1000 * (0.5 + ((HalfWidth - 6) / 46))) + DeadShear(Inner)) * Pound);

    [Proves("base-channel-bending", CheckStatus.Engineer)]
    public static Proof NoNetBending() =>
        Unknown(new(), "base-channel-bending", -DryMoment(Inner, OuterFoot) / NetS * Psi);

    [Proves("base-channel-shear", CheckStatus.Engineer)]
    public static Proof NoNetShear() => Unknown(new(), "base-channel-shear", (LiveOnRope + DeadShear(23) + BraceDown - RopeDown) * Pound);

    // On the projected width 0.75 × 2.5 in, the edge load and the dead one, above Fc⊥' = 565·0.67 = 378.6 psi: 466 psi.
    [Proves("rope-bearing", CheckStatus.Warn)]
    public static Proof Bearing() => new Proof(Heavy.Check("rope-bearing"), OnRope * Psi, 565 * 0.67 * Psi)
        .Saying(
            FormattableString.Invariant($"point load at the edge: {OnRope * 0.75 * 2.5:0} lbf / (0.75 in × 2.5 in)"),
            "Fc⊥' = 565 psi × CM 0.67");

    [Proves("rope-bearing", CheckStatus.Engineer, Side.Within)]
    [Proves("rope-bearing", CheckStatus.Warn, Side.Beyond)]
    public static Proof BearingAtItsLimit(double share) =>
        new(Heavy.With("3x6", across: OnRope / share).Check("rope-bearing"), OnRope * Psi, OnRope / share * Psi);

    // 3/4 in along the grain: (0.75 + 0.375) / 0.75 = 1.5 (NDS 3.10.4, from memory).
    [Proves("rope-bearing", CheckStatus.Fail, Side.Beyond)]
    public static Proof BearingThatCrushes(double share) =>
        new(Heavy.With("3x6", across: OnRope / share / 1.5).Check("rope-bearing"), OnRope * Psi, OnRope / share * Psi);

    [Proves("rope-bearing", CheckStatus.Engineer)]
    public static Proof NoBearing() => Unknown(Heavy, "rope-bearing", OnRope * Psi);

    private static double OnRope => ((1000 * (0.5 + ((HalfWidth - 6) / 46))) + Dead) / (0.75 * 2.5);

    // Moments and shears are looked at a nanometre beside the place where they jump.
    private const double Nanometre = 1e-7;

    private static double LiveOnRope => 60 / 144.0 * HalfWidth * Math.Sqrt((72 * 72) + 1);

    private static Proof Unknown(LevelDeck bridge, string id, double demand) =>
        new Proof(bridge.Unknown.Check(id), demand) { Error = Nanometre }.Saying("3x6 white-oak no1: the built-in tables have no values");
}
