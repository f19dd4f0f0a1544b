using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.BaseStatics;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// The end base of the level deck, 3x6 and 58 in long, under 200 lbf at the cap's top: 200·(25.2664 + 5.5)/58 = 106.1 lbf press
/// it up at one end and hold it down at the other, at its bottom, 2.75 in below its axis. Its channel is 1.625 in deep, at its
/// deep mouth 1.25/72 in more.
/// </summary>
internal static class EndBaseProofs
{
    // The program looks a nanometre beside a force, not on it.
    private const double Nanometre = 1e-7;

    private static readonly double s_hold = 200 * (Top + 5.5) / 58;
    private static readonly double s_left = 5.5 - (1.625 + (0.375 * (Math.Sqrt(1 + (1 / 5184.0)) - 1)) + (1.25 / 72));

    // Outward the brace presses on its foot's outer edge at 28.25 in and the landing holds up at 29 in; the level forces, on the
    // base's top and all at its bottom at that end, turn it too. CD 1.6; of the net depth L/d = 15: le = 1.84·58 in (NDS Table 3.3.3).
    [Proves("end-base-bending", CheckStatus.Pass, Side.Within)]
    [Proves("end-base-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof AtTheChannel(double share)
    {
        var moment = (Down(OuterFoot) * (OuterFoot - Inner)) - (s_hold * (29 - Inner)) + (2.75 * Out(OuterFoot)) + (2.75 * 200);
        var stress = moment / (2.5 * s_left * s_left / 6);
        var euler = 1.2 * 580000 / (1.84 * 58 * s_left / 6.25);
        var check = new LevelDeck().With("3x6", bending: Before(stress / share, euler, 0.95) / 1.6).Check("end-base-bending");
        return new Proof(check, stress * Psi, stress / share * Psi) { Error = Nanometre }
            .Saying(
                "200 lbf outward, the base held down at its end, brace on its foot's outer edge",
                "top in tension, 22.562 in from the middle");
    }

    // Ropes 54 in apart, under a base of 66 in: the channel is nearer to the brace's foot, and the post's axis, where the moment is
    // largest, asks more. L/d = 12.
    [Proves("end-base-bending", CheckStatus.Pass, Side.Within)]
    [Proves("end-base-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof AtThePost(double share)
    {
        var hold = 200 * (Top + 5.5) / 66;
        var moment = (Down(OuterFoot) * (OuterFoot - PostAxis)) - (hold * (33 - PostAxis)) + (2.75 * Out(OuterFoot)) + (2.75 * 200);
        var stress = moment / (2.5 * 5.5 * 5.5 / 6);
        var euler = 1.2 * 580000 / (((1.63 * 66) + 16.5) * 5.5 / 6.25);
        var check = new LevelDeck { Spacing = 54, BaseLength = 66 }
            .With("3x6", bending: Before(stress / share, euler, 0.95) / 1.6).Check("end-base-bending");
        return new Proof(check, stress * Psi, stress / share * Psi) { Error = Nanometre }.Saying("20.017 in from the middle");
    }

    // The bottom in tension: (2/3)·Fv'·b·dn·(dn/d)² (NDS 3.4.3.2), CD 1.6, what the brace pulls less what the landing holds.
    [Proves("end-base-shear", CheckStatus.Pass, Side.Within)]
    [Proves("end-base-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof Shear(double share)
    {
        var force = BraceDown - s_hold;
        var area = 2.0 / 3 * 2.5 * s_left * (s_left / 5.5) * (s_left / 5.5);
        var check = new LevelDeck().With("3x6", shear: force / share / area / 1.6).Check("end-base-shear");
        return new Proof(check, force * Pound, force / share * Pound) { Error = Nanometre }
            .Saying("200 lbf inward, the base held down at its end", "bottom in tension: (2/3)·Fv'·b·dn·(dn/d)²");
    }

    // Without values nothing tells the notch from the rest: the largest shear, on the foot's inner edge.
    [Proves("end-base-bending", CheckStatus.Engineer)]
    public static Proof NoBending() => Unknown("end-base-bending");

    [Proves("end-base-shear", CheckStatus.Engineer)]
    public static Proof NoShear() => Unknown("end-base-shear");

    private static Proof Unknown(string id)
    {
        var check = new LevelDeck().Unknown.Check(id);
        return new Proof(check, id == "end-base-shear" ? (Down(InnerFoot) - s_hold) * Pound : check.Demand).Saying(
            "3x6 white-oak no1: the built-in tables have no values");
    }
}
