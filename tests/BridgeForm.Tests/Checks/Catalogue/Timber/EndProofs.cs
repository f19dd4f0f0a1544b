using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.BaseStatics;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>The ends of the bases, and the frames at the bridge's ends.</summary>
internal static class EndProofs
{
    // Four rope diameters from the rope's axis: 3 in, of which the channel of 7/8 in takes 0.4375 in. Ropes 51 in apart.
    [Proves("base-end-distance", CheckStatus.Pass, Side.Within)]
    [Proves("base-end-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Split(double share)
    {
        var bridge = new LevelDeck { Spacing = 51, BaseLength = 51 + 0.875 + (2 * 2.5625 / share) };
        return new(bridge.Check("base-end-distance"), 2.5625 * Inch / share, 2.5625 * Inch);
    }

    // 58 in on ropes 46 in apart leave 5.5625 in. One rope takes 200 lbf: 3·200/(2·2.5·Fv·1.6) in of wood in shear (NDS 3.4.2).
    [Proves("base-end-distance", CheckStatus.Pass, Side.Within)]
    [Proves("base-end-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Shear(double share)
    {
        var bridge = new LevelDeck().With("3x6", shear: 600 / (2 * 2.5 * 1.6 * 5.5625 * share));
        return new Proof(bridge.Check("base-end-distance"), 5.5625 * Inch, 5.5625 * share * Inch).Saying("200 lbf outward");
    }

    // Keeper holes of 1/4 in: 1 in beyond half their spread.
    [Proves("base-end-distance", CheckStatus.Pass, Side.Within)]
    [Proves("base-end-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof KeeperHole(double share)
    {
        var spread = 2 * ((5.5625 * share) + 0.4375 - 1);
        var bridge =
            new LevelDeck { Keeper = FormattableString.Invariant($"{{ hole: 1/4 in, spread: {spread:0.##########} in, depth: 1 in }}") };
        return new Proof(bridge.Check("base-end-distance"), 5.5625 * Inch, 5.5625 * share * Inch);
    }

    [Proves("base-end-distance", CheckStatus.Engineer)]
    public static Proof NoShear() =>
        new Proof(new LevelDeck().Unknown.Check("base-end-distance"), 5.5625 * Inch).Saying(
            "3x6 white-oak no1: the built-in tables have no values");

    // Splitting needs no value of the wood.
    [Proves("base-end-distance", CheckStatus.Fail)]
    public static Proof SplitWithoutValues() => new(
        (new LevelDeck { Spacing = 52, BaseLength = 57 }).Unknown.Check("base-end-distance"), 2.0625 * Inch, 2.5625 * Inch);

    // An end base stands on the landing, its channels 1 in deeper for the sag and a little for the slope. Dry: 27 lb/ft³ treated,
    // 18 lb/ft³ cedar, half of the bay's boards, rails and caps; 0.6 of it.
    private static readonly double s_deep = 0.625 + 1 + (0.375 * (Math.Sqrt(1 + (1 / 5184.0)) - 1));
    private static readonly double s_weight = 0.6 * (
        (((2.5 * 5.5 * 58) - (2 * 0.875 * s_deep * 2.5) + (2 * (Posts + (BraceWeight * 48)))) / 64)
            + 3 + (((Boards / 64) + (2 * Rails / 96)) / 2));
    private static readonly double s_moment = 200 * (Top + 5.5);

    // (200·30.77 − 50·29)/58.
    [Proves("end-frame-down", CheckStatus.Engineer)]
    public static Proof Down()
    {
        var down = (s_moment - (s_weight * 29)) / 58;
        return new Proof(new LevelDeck().Check("end-frame-down"), down * Pound)
            .Saying(FormattableString.Invariant($"{down:0} lbf to hold down at one end of the base; 200 lbf to hold sideways"));
    }

    // Nothing to hold where it is heavy enough.
    [Proves("end-frame-down", CheckStatus.Engineer)]
    public static Proof HeavyEnough() =>
        new Proof(new LevelDeck { Hardware = 400 }.Check("end-frame-down"), 0).Saying("= 0 lbf to hold down");

    // (200·30.77 − 50·1.25)/2.5 at the landing, or over 72.007 in of deck.
    [Proves("end-frame-along", CheckStatus.Engineer)]
    public static Proof Along()
    {
        var tips = s_moment - (s_weight * 1.25);
        return new Proof(new LevelDeck().Check("end-frame-along"), tips / 2.5 * Pound).Saying(
            FormattableString.Invariant($"{tips / 2.5:0} lbf to hold down at one edge of the base"),
            FormattableString.Invariant($"{tips / Math.Sqrt(5185):0} lbf, up on one of its bases"),
            "200 lbf to hold along");
    }

    // A public guard: 50 plf on 72 in, 300 lbf.
    [Proves("end-frame-along", CheckStatus.Engineer)]
    public static Proof AlongPublic() =>
        new Proof(new LevelDeck { Use = "public" }.Check("end-frame-along"), ((1.5 * s_moment) - (s_weight * 1.25)) / 2.5 * Pound).Saying(
            "300 lbf to hold along");
}
