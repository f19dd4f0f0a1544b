using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.BaseStatics;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>Cap 2x6 and rail 1x4 from post to post, 72 in; CD 1.6. And what lifts a base off its rope.</summary>
internal static class CapProofs
{
    private const string Cedar = "western-red-cedar, grade: no2";

    // 200·72/4 = 3600 in·lbf (IRC Table R301.5) about the deep way, S = 7.5625 in³; stability as of a stringer: FbE =
    // 1.2·580000/(133.86·5.5/1.5²).
    [Proves("cap-bending-level", CheckStatus.Pass, Side.Within)]
    [Proves("cap-bending-level", CheckStatus.Fail, Side.Beyond)]
    public static Proof Level(double share) => Level(share, 3600, new(), 133.86);

    // 50 plf (IBC 1607.8.1) on 108 in: 50/12·108²/8 = 6075 in·lbf, more than 200·108/4 = 5400. L/d = 19.6: le = 1.84·108.
    [Proves("cap-bending-level", CheckStatus.Pass, Side.Within)]
    [Proves("cap-bending-level", CheckStatus.Fail, Side.Beyond)]
    public static Proof LevelLine(double share) => Level(share, 6075, new() { Use = "public", Bay = 108 }, 1.84 * 108);

    // On 72 in the line load is 2700 in·lbf: the point load counts on a public bridge too; on a private one of 108 in it alone.
    [Proves("cap-bending-level", CheckStatus.Pass, Side.Within)]
    [Proves("cap-bending-level", CheckStatus.Fail, Side.Beyond)]
    public static Proof LevelPublicShort(double share) => Level(share, 3600, new() { Use = "public" }, 133.86);

    [Proves("cap-bending-level", CheckStatus.Pass, Side.Within)]
    [Proves("cap-bending-level", CheckStatus.Fail, Side.Beyond)]
    public static Proof LevelPrivateLong(double share) => Level(share, 5400, new() { Bay = 108 }, 1.84 * 108);

    // Flat S = 2.0625 in³, Cfu 1.15.
    [Proves("cap-bending-down", CheckStatus.Pass, Side.Within)]
    [Proves("cap-bending-down", CheckStatus.Fail, Side.Beyond)]
    public static Proof Down(double share) => Down(share, 3600, new());

    [Proves("cap-bending-down", CheckStatus.Pass, Side.Within)]
    [Proves("cap-bending-down", CheckStatus.Fail, Side.Beyond)]
    public static Proof DownLine(double share) => Down(share, 6075, new() { Use = "public", Bay = 108 });

    // 50 lbf on one foot (IRC Table R301.5): 50/4·(72 − 6) = 825 in·lbf on 3.5·0.75²/6 = 0.328125 in³.
    [Proves("rail-bending", CheckStatus.Pass, Side.Within)]
    [Proves("rail-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof Rail(double share) => new(
        new LevelDeck().With("1x4", bending: 825 / 0.328125 / share / 1.6, wood: Cedar).Check("rail-bending"),
        825 / 0.328125 * Psi,
        825 / 0.328125 / share * Psi);

    // 200 lbf in the middle of 72 in: 3600 in·lbf on π·2³/32 = 0.7854 in³ of a round one, on 1.5³/6 = 0.5625 in³ of a square one.
    [Proves("handrail-bending", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof RoundHandrail(double share) => HandrailOf(share, "diameter: 2 in", Math.PI * 8 / 32);

    [Proves("handrail-bending", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof SquareHandrail(double share) => HandrailOf(share, "section: 2x2", 0.5625);

    // 50 lbf on one foot: 50/4·(L − 6) on 1.5³/6 = 0.5625 in³. The rails' middle lines lie 3 in and half of 3-1/2 in inside deck and
    // head: L = 42 − 1.5 / cos 8° − 2·4.75.
    [Proves("picket-bending", CheckStatus.Pass, Side.Within)]
    [Proves("picket-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof Picket(double share) => new(
        WithPickets.With("dimension", bending: PicketStress / share / 1.6, wood: Cedar).Check("picket-bending"),
        PicketStress * Psi,
        PicketStress / share * Psi);

    [Proves("picket-bending", CheckStatus.Engineer)]
    public static Proof NoPicket() =>
        new Proof(WithPickets.Unknown.Check("picket-bending"), PicketStress * Psi).Saying("2x2 white-oak no2: the built-in tables");

    private static double PicketStress => 50.0 / 4 * (42 - (1.5 / Math.Cos(8 * Math.PI / 180)) - 9.5 - 6) / 0.5625;

    private static LevelDeck WithPickets =>
        new() { PostLength = 42, Rails = "{ section: 2x4 }, pickets: { section: 2x2, gap: 3 in }" };

    // 50 lbf on one foot square (IRC Table R301.5) against what the maker declares.
    [Proves("net-load", CheckStatus.Pass, Side.Within)]
    [Proves("net-load", CheckStatus.Fail, Side.Beyond)]
    public static Proof Net(double share) => new(
        Netted(FormattableString.Invariant($", capacity: {50 / share:0.##########} lbf, source: a maker (invented)")).Check("net-load"),
        50 * Pound,
        50 / share * Pound);

    [Proves("net-load", CheckStatus.Engineer)]
    public static Proof NoNet() => new Proof(Netted("").Check("net-load"), 50 * Pound).Saying("guard.net.capacity");

    private static LevelDeck Netted(string more) =>
        new() { PostLength = 42, Rails = $"{{ section: 2x4 }}, net: {{ opening: 2 in, mass: 0.1 lb/ft2{more} }}" };

    // A newel of 40 in pushed at its top: 200·40 = 8000 in·lbf on 3.5·1.5²/6 = 1.3125 in³, its weaker way.
    [Proves("newel-bending", CheckStatus.Pass, Side.Within)]
    [Proves("newel-bending", CheckStatus.Fail, Side.Beyond)]
    public static Proof Newel(double share) => new(
        WithNewels.With("dimension", bending: 8000 / 1.3125 / share / 1.6).Check("newel-bending"),
        8000 / 1.3125 * Psi,
        8000 / 1.3125 / share * Psi);

    [Proves("newel-bending", CheckStatus.Engineer)]
    public static Proof NoNewel() => new Proof(WithNewels.Unknown.Check("newel-bending"), 8000 / 1.3125 * Psi)
        .Saying("2x4 white-oak no1: the built-in tables");

    [Proves("newel-foot", CheckStatus.Engineer)]
    public static Proof NewelFoot() => new Proof(WithNewels.Check("newel-foot"), 200 * Pound).Saying("200 lbf × 40 in");

    private static LevelDeck WithNewels => new()
    {
        PostLength = 42,
        Rails = "{ section: 1x4, heights: [12 in] }, newels: { section: 2x4, height: 40 in }",
    };

    [Proves("handrail-bending", CheckStatus.Engineer)]
    public static Proof NoHandrail() =>
        new Proof(WithHandrail("diameter: 2 in").Unknown.Check("handrail-bending"), 3600 / (Math.PI * 8 / 32) * Psi)
            .Saying("2 in round white-oak no1: the built-in tables");

    private static Proof HandrailOf(double share, string size, double modulus) => new(
        WithHandrail(size).With("dimension", bending: 3600 / modulus / share / 1.6).Check("handrail-bending"),
        3600 / modulus * Psi,
        3600 / modulus / share * Psi);

    private static LevelDeck WithHandrail(string size) =>
        new() { PostLength = 42, Rails = $"{{ section: 1x4, heights: [12 in] }}, handrail: {{ {size}, height: 36 in }}" };

    [Proves("cap-bending-level", CheckStatus.Engineer)]
    public static Proof NoLevel() =>
        new Proof(new LevelDeck().Unknown.Check("cap-bending-level"), 3600 / 7.5625 * Psi).Saying("2x6 white-oak no2: the built-in tables");

    [Proves("cap-bending-down", CheckStatus.Engineer)]
    public static Proof NoDown() =>
        new Proof(new LevelDeck().Unknown.Check("cap-bending-down"), 3600 / 2.0625 * Psi).Saying("2x6 white-oak no2: the built-in tables");

    // Without values of its own 1x lumber is reckoned as No. 3 of its species: cedar 400·1.6 psi, no factor for size or flat use.
    [Proves("rail-bending", CheckStatus.Fail)]
    public static Proof ThinRail() => new Proof(new LevelDeck().Check("rail-bending"), 825 / 0.328125 * Psi, 640 * Psi)
        .Saying("= 640 psi (No. 3 of the species: 1x lumber is stress-rated only if so stamped)");

    // Treated southern pine, 5/4x4 of 1 in: 825/(3.5/6) psi against 650·1.6, holds nothing by size either.
    [Proves("rail-bending", CheckStatus.Fail)]
    public static Proof ThickerRail() => new Proof(
        new LevelDeck { Rails = "{ section: 5/4x4, stock: treated, heights: [12 in] }" }.Check("rail-bending"), 825 / (3.5 / 6) * Psi,
        1040 * Psi)
        .Saying("Fb' = 650 psi", "stress-rated only if so stamped");

    [Proves("rail-bending", CheckStatus.Engineer)]
    public static Proof NoRail() => new Proof(new LevelDeck().Unknown.Check("rail-bending"), 825 / 0.328125 * Psi)
        .Saying("1x4 white-oak no2: the built-in tables have no No. 3 values of it for lumber thinner than 2 in");

    // Moments about the other rope: 200·(25.2664 + 5.25)/46 = 132.7 lbf up, less 0.6 of what dry wood lays on the rope.
    [Proves("keeper-uplift-guard", CheckStatus.Engineer)]
    public static Proof Push()
    {
        var lift = RopeDown - (0.6 * DryDead);
        return new Proof(new LevelDeck().Check("keeper-uplift-guard"), lift * Pound).Saying(
            string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"200 lbf × {Top + 5.25:0.###} in above the rope / 46 in − 0.6 × {DryDead:0} lbf dead on a rope = {lift:0} lbf to hold down at "
                + $"one channel"));
    }

    // Heavy hardware holds it down: 400 lb, 198.5 lbf more on each rope.
    [Proves("keeper-uplift-guard", CheckStatus.Engineer)]
    public static Proof HeldDown() =>
        new Proof(new LevelDeck { Hardware = 400 }.Check("keeper-uplift-guard"), 0).Saying("= 0 lbf to hold down");

    // 30 psf on 36.92 × 72.007 in, half of it on a rope, less 0.6 of dry wood's dead load (ASCE 7 2.4.1).
    [Proves("keeper-uplift-wind", CheckStatus.Engineer)]
    public static Proof Wind()
    {
        var lift = (30 / 144.0 * HalfWidth * Math.Sqrt((72 * 72) + 1)) - (0.6 * DryDead);
        return new Proof(new LevelDeck { Loads = "{ live: 60 psf, uplift: 30 psf }" }.Check("keeper-uplift-wind"), lift * Pound)
            .Saying(FormattableString.Invariant($"0.6 × {DryDead:0} lbf dead on a rope = {lift:0} lbf to hold down at one channel"));
    }

    [Proves("keeper-uplift-wind", CheckStatus.Engineer)]
    public static Proof Calm() => new Proof(new LevelDeck { Loads = "{ live: 60 psf, uplift: 1 psf }" }.Check("keeper-uplift-wind"), 0)
        .Saying("= 0 lbf to hold down");

    [Proves("keeper-uplift-wind", CheckStatus.Engineer)]
    public static Proof NoWind() => new Proof(new LevelDeck().Check("keeper-uplift-wind"), 0)
        .Saying("loads.uplift is not given: wind under the deck is not looked at");

    private static Proof Level(double share, double moment, LevelDeck bridge, double effective)
    {
        var (stress, euler) = (moment / 7.5625, 1.2 * 580000 / (effective * 5.5 / 2.25));
        var check = bridge.With("2x6", bending: Before(stress / share, euler, 0.95) / 1.6, wood: Cedar).Check("cap-bending-level");
        return new(check, stress * Psi, stress / share * Psi);
    }

    private static Proof Down(double share, double moment, LevelDeck bridge)
    {
        var stress = moment / 2.0625;
        return new(
            bridge.With("2x6", bending: stress / share / 1.15 / 1.6, wood: Cedar).Check("cap-bending-down"), stress * Psi,
            stress / share * Psi);
    }
}
