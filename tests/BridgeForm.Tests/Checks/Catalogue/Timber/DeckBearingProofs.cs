using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// Two boards, or stringers, meet on a base with 1/8 in between them: on 2.5 in of it each has 1.1875 in. A tread has the
/// stringer's whole thickness.
/// </summary>
internal static class DeckBearingProofs
{
    private const double Meets = (2.5 - 0.125) / 2;

    // Own weight of a 2x6, 8.25 in² / 48.
    private const double Board = 0.171875;

    // 2.5 in less a gap of about 1/2 in: 1 in each (own figure).
    [Proves("board-bearing-length", CheckStatus.Pass, Side.Within)]
    [Proves("board-bearing-length", CheckStatus.Warn, Side.Beyond)]
    public static Proof ShortBoard(double share) => new(
        new LevelDeck { Deck = Gap(2.5 - (2 / share)) }.Check("board-bearing-length"), Inch / share, Inch);

    // 1.5 in less about 1/4 in: 5/8 in (own figure).
    [Proves("board-bearing-length", CheckStatus.Warn)]
    public static Proof Least() => LeastOf(0.9995, Inch);

    [Proves("board-bearing-length", CheckStatus.Fail, Side.Beyond)]
    public static Proof TooShort(double share) => LeastOf(share, 0.625 * Inch);

    // Stringers on a base of 3.5 in less about 1/2 in: 1.5 in (IRC R502.6).
    [Proves("stringer-bearing-length", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-bearing-length", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShortStringer(double share) => new(
        new LevelDeck { Base = "section: 4x6", Deck = Treads("2x6", 3.5 - (3 / share)) }.Check("stringer-bearing-length"),
        1.5 * Inch / share, 1.5 * Inch);

    // Stringers of 5/8 in.
    [Proves("tread-bearing-length", CheckStatus.Pass, Side.Within)]
    [Proves("tread-bearing-length", CheckStatus.Fail, Side.Beyond)]
    public static Proof ThinStringer(double share)
    {
        var section = FormattableString.Invariant($"{0.625 * 25.4 / share:0.##########} x 140 mm");
        return new(new LevelDeck { Deck = Treads(section, 0.125) }.Check("tread-bearing-length"), 0.625 * Inch / share, 0.625 * Inch);
    }

    // 300 lbf and half of 72 in of its own weight on 5.5 × 1.1875 in; the board softer, then the base.
    [Proves("board-bearing", CheckStatus.Pass, Side.Within)]
    [Proves("board-bearing", CheckStatus.Fail, Side.Beyond)]
    public static Proof SoftBoard(double share) => Pressed("board-bearing", share, "2x6", (300 + (Board * 36)) / (5.5 * Meets), new());

    [Proves("board-bearing", CheckStatus.Pass, Side.Within)]
    [Proves("board-bearing", CheckStatus.Fail, Side.Beyond)]
    public static Proof SoftBase(double share) => Pressed("board-bearing", share, "3x6", (300 + (Board * 36)) / (5.5 * Meets), new());

    // A crowd of 300 psf on a pitch of 6 in: 300/144·6·36 = 450 lbf; snow of 400 psf, more than 3/4 of it and of 100 psf of crowd:
    // 600 lbf. No factor for their duration.
    [Proves("board-bearing", CheckStatus.Pass, Side.Within)]
    public static Proof Crowd(double share) =>
        Pressed("board-bearing", share, "2x6", (450 + (Board * 36)) / (5.5 * Meets), new() { Loads = "{ live: 300 psf }" });

    [Proves("board-bearing", CheckStatus.Fail, Side.Beyond)]
    public static Proof Snow(double share) =>
        Pressed("board-bearing", share, "2x6", (600 + (Board * 36)) / (5.5 * Meets), new() { Loads = "{ live: 100 psf, snow: 400 psf }" });

    // The middle one of three stringers 17 in apart takes 21.25 in of a tread (beam tables: 10/8), and the point load over it.
    [Proves("tread-bearing", CheckStatus.Pass, Side.Within)]
    [Proves("tread-bearing", CheckStatus.Fail, Side.Beyond)]
    public static Proof Tread(double share) =>
        Pressed("tread-bearing", share, "2x6", (300 + (Board * 21.25)) / (5.5 * 1.5), new() { Deck = Treads("2x6", 0.125) });

    // The same of a crowd: 7.325 in of pitch (73.25 in of bay for ten treads) × 21.25 in × 600 psf = 648.6 lbf.
    [Proves("tread-bearing", CheckStatus.Fail, Side.Beyond)]
    public static Proof TreadOfCrowd(double share) => Pressed(
        "tread-bearing", share, "2x6", ((600 / 144.0 * 7.325) + Board) * 21.25 / (5.5 * 1.5),
        new() { Deck = Treads("2x6", 0.125), Loads = "{ live: 600 psf }" });

    // The middle stringer bears 21.25 in of 60 psf and of treads, itself 0.171875, over half of 72 in: 348.8 lbf on 1.5 in.
    [Proves("stringer-bearing", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-bearing", CheckStatus.Fail, Side.Beyond)]
    public static Proof Stringer(double share) => Pressed(
        "stringer-bearing", share, "2x6", (Board + (21.25 * 1.5 / 48) + (60 / 144.0 * 21.25)) * 36 / (1.5 * Meets),
        new() { Deck = Treads("2x6", 0.125) });

    [Proves("board-bearing", CheckStatus.Engineer)]
    public static Proof NoBoard() => Unknown("board-bearing", (300 + (Board * 36)) / (5.5 * Meets), new());

    [Proves("tread-bearing", CheckStatus.Engineer)]
    public static Proof NoTread() => Unknown("tread-bearing", (300 + (Board * 21.25)) / (5.5 * 1.5), new() { Deck = Treads("2x6", 0.125) });

    [Proves("stringer-bearing", CheckStatus.Engineer)]
    public static Proof NoStringer() => Unknown(
        "stringer-bearing", (Board + (21.25 * 1.5 / 48) + (60 / 144.0 * 21.25)) * 36 / (1.5 * Meets),
        new() { Deck = Treads("2x6", 0.125) });

    private static Proof LeastOf(double share, double limit) => new(
        new LevelDeck { Base = "section: 2x6", Deck = Gap(1.5 - (1.25 / share)) }.Check("board-bearing-length"),
        0.625 * Inch / share, limit);

    private static Proof Pressed(string id, double share, string soft, double stress, LevelDeck bridge) =>
        new(bridge.With(soft, across: stress / share).Check(id), stress * Psi, stress / share * Psi);

    private static Proof Unknown(string id, double stress, LevelDeck bridge) =>
        new Proof(bridge.Unknown.Check(id), stress * Psi).Saying("2x6 white-oak no1: the built-in tables have no values");

    private static string Gap(double inches) => FormattableString.Invariant($"{{ count: 6, butt_gap: {inches:0.##########} in }}");

    private static string Treads(string stringer, double gap) => FormattableString.Invariant(
        $"{{ layout: across, count: 10, butt_gap: {gap:0.##########} in, stringer: {{ section: {stringer}, count: 3 }} }}");
}
