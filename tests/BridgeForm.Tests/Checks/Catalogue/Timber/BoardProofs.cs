using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// Six 2x6 of 5.5 in in 2·(18.25 − 0.5) = 35.5 in: gaps of (35.5 − 33)/5 = 0.5 in, pitch 6 in. L = 72 in. On the flat
/// S = 5.5·1.5²/6 = 2.0625 in³, I = 1.546875 in⁴, A = 8.25 in². Own weight 8.25/48 = 0.171875 lbf/in, 72²/8 = 648 in²:
/// 111.375 in·lbf. 60 psf on 6 in: 2.5 lbf/in. Cfu 1.15 (NDS Supplement Table 4A, from memory), no stability factor on the flat.
/// </summary>
internal static class BoardProofs
{
    private const double S = 2.0625;
    private const double Dead = 0.171875;
    private const double Flat = 1.15;

    // (0.171875 + 2.5)·648 = 1731.375 in·lbf; CD 1.0.
    [Proves("board-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof Area(double share) => Bending("board-bending-area", share, 1731.375, 1.0, new());

    // Public, nothing given: 90 psf, 3.75 lbf/in, (0.171875 + 3.75)·648.
    [Proves("board-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public(double share) =>
        Bending("board-bending-area", share, 3.921875 * 648, 1.0, new() { Use = "public", Loads = "{}" });

    // Dead 24.75/6/144: 4.125 psf. Live 64.125/1.0 asks more than both together, (4.125 + 0.75·92.5)/1.15 = 63.9; without the
    // dead load 69.375/1.15 = 60.3 would be more than 60.
    [Proves("board-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof LiveBeforeSnow(double share) =>
        Bending("board-bending-area", share, 1731.375, 1.0, new() { Loads = "{ live: 60 psf, snow: 32.5 psf }" }).Saying(
            "live 60 psf on 6 in");

    // 34 psf: (4.125 + 0.75·94 = 70.5)/1.15 = 64.9 is more than 64.125. 70.5/144·6 = 2.9375 lbf/in; CD 1.15.
    [Proves("board-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof LiveAndSnow(double share) =>
        Bending("board-bending-area", share, (Dead + 2.9375) * 648, 1.15, new() { Loads = "{ live: 60 psf, snow: 34 psf }" });

    // Live 0.4 psf is less than a ninth of the dead 4.125: 4.125/0.9 = 4.58 asks more than 4.525/1.0.
    [Proves("board-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof DeadAlone(double share) =>
        Bending("board-bending-area", share, 111.375, 0.9, new() { Loads = "{ live: 0.4 psf }" });

    // 0.5 psf is more than a ninth: 4.625/1.0 against 4.58. 0.5/144·6·648 = 13.5 in·lbf.
    [Proves("board-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof BarelyLive(double share) =>
        Bending("board-bending-area", share, 124.875, 1.0, new() { Loads = "{ live: 0.5 psf }" });

    // 300 lbf on 30 in square: a board with its gap takes 6/30, 60 lbf; 60/4·(72 − 30/2) = 855 in·lbf, 111.375 more.
    [Proves("board-bending-patch", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-patch", CheckStatus.Fail, Side.Beyond)]
    public static Proof Patch(double share) => Bending("board-bending-patch", share, 966.375, 1.0, new());

    // A patch of 4 in is narrower than a board: 300/4·(72 − 2) = 5250 in·lbf.
    [Proves("board-bending-patch", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-patch", CheckStatus.Fail, Side.Beyond)]
    public static Proof NarrowPatch(double share) =>
        Bending("board-bending-patch", share, 5361.375, 1.0, new() { Loads = "{ live: 60 psf, point: { patch: 4 in } }" });

    // Of a patch of 90 in 72 in lie on the span: 300·6/90·72/90 = 16 lbf, 16/4·(72 − 36) = 144 in·lbf.
    [Proves("board-bending-patch", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-patch", CheckStatus.Fail, Side.Beyond)]
    public static Proof LongPatch(double share) =>
        Bending("board-bending-patch", share, 144 + 111.375, 1.0, new() { Loads = "{ live: 60 psf, point: { patch: 90 in } }" });

    // 300·72/4 = 5400 in·lbf, 111.375 more.
    [Proves("board-bending-point", CheckStatus.Pass, Side.Within)]
    [Proves("board-bending-point", CheckStatus.Fail, Side.Beyond)]
    public static Proof Point(double share) => Bending("board-bending-point", share, 5511.375, 1.0, new());

    // 0.171875·36 + 300 = 306.1875 lbf; 3·V/(2·8.25).
    [Proves("board-shear", CheckStatus.Pass, Side.Within)]
    [Proves("board-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof Shear(double share) => Shear(share, 306.1875, new());

    // Without the point load: (0.171875 + 2.5)·36 lbf.
    [Proves("board-shear", CheckStatus.Pass, Side.Within)]
    [Proves("board-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearOfArea(double share) => Shear(share, 96.1875, new() { Loads = "{ live: 60 psf, point: { force: 0 lbf } }" });

    // 5·2.5·72⁴/(384·E·1.546875) against 72/360 = 0.2 in (IRC Table R301.7): E = 2.83 million psi.
    [Proves("board-deflection-area", CheckStatus.Pass, Side.Within)]
    [Proves("board-deflection-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof DeflectionOfArea(double share) =>
        Deflection("board-deflection-area", share, 5 * 2.5 * 26873856 / (384 * 1.546875), new());

    // Duration does not matter: snow of 70 psf, 0.75·130 = 97.5 psf together, 4.0625 lbf/in.
    [Proves("board-deflection-area", CheckStatus.Pass, Side.Within)]
    [Proves("board-deflection-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof DeflectionOfBoth(double share) => Deflection(
        "board-deflection-area", share, 5 * 4.0625 * 26873856 / (384 * 1.546875), new() { Loads = "{ live: 60 psf, snow: 70 psf }" });

    // 150 lbf on one board, P·L³/(48·E·I), more than 150·6/30 on a patch: E = 3.77 million psi.
    [Proves("board-deflection-point", CheckStatus.Pass, Side.Within)]
    [Proves("board-deflection-point", CheckStatus.Warn, Side.Beyond)]
    public static Proof DeflectionOfPoint(double share) =>
        Deflection(
            "board-deflection-point", share, 150 * 373248 / (48 * 1.546875),
            new() { Loads = "{ live: 60 psf, point: { force: 150 lbf } }" });

    [Proves("board-bending-area", CheckStatus.Engineer)]
    public static Proof NoArea() => Unknown("board-bending-area", 1731.375 / S);

    [Proves("board-bending-patch", CheckStatus.Engineer)]
    public static Proof NoPatch() => Unknown("board-bending-patch", 966.375 / S);

    [Proves("board-bending-point", CheckStatus.Engineer)]
    public static Proof NoPoint() => Unknown("board-bending-point", 5511.375 / S);

    [Proves("board-shear", CheckStatus.Engineer)]
    public static Proof NoShear() => Unknown("board-shear", 1.5 * 306.1875 / 8.25);

    [Proves("board-deflection-area", CheckStatus.Engineer)]
    public static Proof NoDeflectionOfArea() => Unknown("board-deflection-area", 0);

    [Proves("board-deflection-point", CheckStatus.Engineer)]
    public static Proof NoDeflectionOfPoint() => Unknown("board-deflection-point", 0);

    private static Proof Bending(string id, double share, double moment, double duration, LevelDeck bridge) => new(
        bridge.With("2x6", bending: moment / S / share / duration / Flat).Check(id), moment / S * Psi, moment / S / share * Psi);

    private static Proof Shear(double share, double force, LevelDeck bridge)
    {
        var stress = 3 * force / (2 * 8.25);
        return new(bridge.With("2x6", shear: stress / share).Check("board-shear"), stress * Psi, stress / share * Psi);
    }

    /// <param name="id">The check.</param>
    /// <param name="share">Demand over limit.</param>
    /// <param name="soft">Deflection times E, lbf/in.</param>
    /// <param name="bridge">The bridge.</param>
    private static Proof Deflection(string id, double share, double soft, LevelDeck bridge) =>
        new(bridge.With("2x6", modulus: soft / (0.2 * share)).Check(id), 0.2 * share * Inch, 0.2 * Inch);

    private static Proof Unknown(string id, double stress) =>
        new Proof(new LevelDeck().Unknown.Check(id), stress * Psi).Saying("2x6 white-oak no1: the built-in tables have no values");
}
