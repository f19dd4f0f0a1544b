using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.BaseStatics;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// Ends of rails 1x4 (cedar, G 0.36), caps and boards 2x6 (southern pine, G 0.55) on posts 2x4 and bases 3x6 of southern pine. Brackets by
/// their makers' figures; screws No. 10 by the equations of NDS 2018 12.2 and 12.3, CD 1.6, CM 0.7, all inches and pounds.
/// </summary>
internal static class HeldProofs
{
    private const double Ample = 20000;
    private const double Factors = 1.6 * 0.7;

    [Proves("joint-rail", CheckStatus.Pass, Side.Within)]
    [Proves("joint-rail", CheckStatus.Fail, Side.Beyond)]
    public static Proof RailPulled(double share) =>
        new(Bracketed("rail", 50 / share, Ample).Check("joint-rail"), 50 * Pound, 50 / share * Pound);

    [Proves("joint-rail", CheckStatus.Pass, Side.Within)]
    [Proves("joint-rail", CheckStatus.Fail, Side.Beyond)]
    public static Proof RailStoodOn(double share) =>
        new(Bracketed("rail", Ample, 200 / share).Check("joint-rail"), 200 * Pound, 200 / share * Pound);

    // Mode IIIs: k3 = −1 + √(2(1 + Re)/Re + 2·Fyb(2 + Re)·Dr²/(3·Fem·ls²)), Z = k3·Dr·ls·Fem/((2 + Re)·2.2), Dr 0.152, ls 0.75,
    // Fe = 16600·G^1.84; 2.25 in the post are more than ten diameters.
    private static double Sideways
    {
        get
        {
            var (main, side) = (16600 * Math.Pow(0.55, 1.84), 16600 * Math.Pow(0.36, 1.84));
            var re = main / side;
            var k = Math.Sqrt((2 * (1 + re) / re) + (2 * 80000 * (2 + re) * 0.152 * 0.152 / (3 * main * 0.75 * 0.75))) - 1;
            return k * 0.152 * 0.75 * main / ((2 + re) * 2.2);
        }
    }

    [Proves("joint-rail", CheckStatus.Pass)]
    public static Proof ThreeScrews() => Rail("screw: no10, length: 3 in, count: 3", 3 * Sideways * Factors)
        .Saying("stood on: 200 lbf on 3 × No. 10 wood screws", "mode IIIs");

    [Proves("joint-rail", CheckStatus.Fail)]
    public static Proof TwoScrews() => Rail("screw: no10, length: 3 in, count: 2", 2 * Sideways * Factors).Saying("licensed engineer");

    // 1.25 in in the post, 1.25/1.9 of what ten diameters hold; lm = 1.25 − half a tip of two diameters.
    [Proves("joint-rail", CheckStatus.Fail)]
    public static Proof ShortScrews() =>
        Rail("screw: no10, length: 2 in, count: 2", 2 * Sideways * 1.25 / 1.9 * Factors).Saying("p 1.25 in / 1.9 in");

    [Proves("joint-rail", CheckStatus.Engineer)]
    public static Proof NoRail() => new Proof(new LevelDeck().Check("joint-rail"), 200 * Pound).Saying("50 lbf pulling", "joints.rail");

    // 200 lbf in the worst direction: 1/√(1/u² + 1/s²) of a bracket as strong both ways is u/√2.
    [Proves("joint-cap", CheckStatus.Pass, Side.Within)]
    [Proves("joint-cap", CheckStatus.Fail, Side.Beyond)]
    public static Proof Cap(double share) => new(
        Bracketed("cap", 200 * Math.Sqrt(2) / share, 200 * Math.Sqrt(2) / share).Check("joint-cap"), 200 * Pound, 200 / share * Pound)
    {
        Error = 1e-8,
    };

    // 50 plf on half of 108 in (IBC 1607.8.1): 225 lbf.
    [Proves("joint-cap", CheckStatus.Engineer)]
    public static Proof LongCap() =>
        new Proof(new LevelDeck { Use = "public", Bay = 108 }.Check("joint-cap"), 225 * Pound).Saying("50 plf × 108", "never count");

    // 30 psf on a sixth of 2·(18.25 + 1.5·tan 8°) in and half of √(72² + 1) in.
    private static double Uplift => 30 / 144.0 * (2 * HalfWidth / 6) * Math.Sqrt((72 * 72) + 1) / 2;

    [Proves("joint-board", CheckStatus.Pass, Side.Within)]
    [Proves("joint-board", CheckStatus.Fail, Side.Beyond)]
    public static Proof Board(double share) => new(
        (Bracketed("board", Uplift / share, Ample) with { Loads = Windy(30) }).Check("joint-board"), Uplift * Pound,
        Uplift / share * Pound)
    { Error = 1e-8 };

    // One screw of 3-1/2 in: its head through 1-1/2 in, 1725·π·0.363²·0.55² = 216 lbf, gives way before 2 in of thread, 2850·0.55²·0.19
    // lbf an inch.
    [Proves("joint-board", CheckStatus.Pass)]
    public static Proof OneScrew() => new Proof(
        new LevelDeck
        {
            More = "joints: { board: { screw: no10, length: 3-1/2 in, count: 1 } }",
            Loads = Windy(30),
        }.Check("joint-board"),
        Uplift * Pound,
        1725 * Math.PI * 0.363 * 0.363 * 0.55 * 0.55 * Factors * Pound)
    { Error = 1e-8 }.Saying("head 0.363 in through 1.5 in");

    // No. 8 of 2-1/2 in: 1 in of thread in the base, 2850·0.55²·0.164·1.12 = 158 lbf.
    [Proves("joint-board", CheckStatus.Fail)]
    public static Proof ShortScrew() => new Proof(
        new LevelDeck
        {
            More = "joints: { board: { screw: no8, length: 2-1/2 in, count: 1 } }",
            Loads = Windy(110),
        }.Check("joint-board"),
        Uplift * 110 / 30 * Pound,
        2850 * 0.55 * 0.55 * 0.164 * 1 * Factors * Pound)
    { Error = 1e-8 }.Saying("thread 1 in in wood of G 0.55");

    [Proves("joint-board", CheckStatus.Engineer)]
    public static Proof NoWind() => new Proof(new LevelDeck().Check("joint-board"), 0).Saying("loads.uplift is not given");

    [Proves("joint-board", CheckStatus.Engineer)]
    public static Proof NoBoard() =>
        new Proof(new LevelDeck { Loads = Windy(30) }.Check("joint-board"), Uplift * Pound) { Error = 1e-8 }.Saying("joints.board");

    // Two stringers carry half of 2·(18.25 − 0.5) in each.
    private static double OnStringer => 30 / 144.0 * 17.75 * Math.Sqrt((72 * 72) + 1) / 2;

    private const string Across = "{ layout: across, stringer: { section: 2x6, count: 2 } }";

    [Proves("joint-stringer", CheckStatus.Pass, Side.Within)]
    [Proves("joint-stringer", CheckStatus.Fail, Side.Beyond)]
    public static Proof Stringer(double share) => new(
        (Bracketed("stringer", OnStringer / share, Ample) with { Deck = Across, Loads = Windy(30) }).Check("joint-stringer"),
        OnStringer * Pound, OnStringer / share * Pound)
    { Error = 1e-8 };

    [Proves("joint-stringer", CheckStatus.Engineer)]
    public static Proof NoStringer() => new Proof(
        new LevelDeck { Deck = Across, Loads = Windy(30) }.Check("joint-stringer"), OnStringer * Pound)
    { Error = 1e-8 }.Saying("joints.stringer");

    private static string Windy(double psf) => FormattableString.Invariant($"{{ live: 60 psf, uplift: {psf} psf }}");

    private static Proof Rail(string screws, double holds) => new(
        new LevelDeck { More = $"joints: {{ rail: {{ {screws} }} }}" }.Check("joint-rail"), 200 * Pound, holds * Pound)
    { Error = 1e-7 };

    private static LevelDeck Bracketed(string joint, double uplift, double shear) => new()
    {
        More = FormattableString.Invariant(
            $"joints: {{ {joint}: {{ kind: bracket, capacity: {{ uplift: {uplift:R} lbf, shear: {shear:R} lbf, source: invented }} }} }}"),
    };
}
