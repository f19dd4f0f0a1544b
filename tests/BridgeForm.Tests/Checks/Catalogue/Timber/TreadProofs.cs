using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// Ten 2x6 across in a bay that runs from the outer face of the 2.5 in end base to the middle frame, 73.25 in: pitch 7.325 in.
/// Three stringers of 1.5 in in 35.5 in stand (35.5 − 1.5)/2 = 17 in apart: L = 17 in, 17²/8 = 36.125 in². S, I, A and own
/// weight as of boards. 60 psf on 7.325 in: 3.0520833 lbf/in.
/// </summary>
internal static class TreadProofs
{
    private const double S = 2.0625;
    private const double I = 1.546875;
    private const double Dead = 0.171875;
    private const double Pitch = 7.325;
    private const double Live = 60 / 144.0 * Pitch;
    private const double Flat = 1.15;

    private static LevelDeck Bridge => new() { Deck = "{ layout: across, count: 10, stringer: { section: 2x6, count: 3 } }" };

    private static LevelDeck OnTwo => Bridge with { Deck = "{ layout: across, count: 10, stringer: { section: 2x6, count: 2 } }" };

    [Proves("tread-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("tread-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof Area(double share) => Bending("tread-bending-area", share, (Dead + Live) * 36.125, Bridge);

    // On two stringers L = 34 in, 34²/8 = 144.5 in².
    [Proves("tread-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("tread-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof AreaOnTwo(double share) => Bending("tread-bending-area", share, (Dead + Live) * 144.5, OnTwo);

    // Of the patch 7.325/30 on a tread and 17/30 of its length on the span: 300·7.325/30·17/30 = 41.508 lbf, /4·(17 − 17/2).
    [Proves("tread-bending-patch", CheckStatus.Pass, Side.Within)]
    [Proves("tread-bending-patch", CheckStatus.Fail, Side.Beyond)]
    public static Proof Patch(double share) =>
        Bending("tread-bending-patch", share, (300 * Pitch / 30 * 17 / 30 / 4 * 8.5) + (Dead * 36.125), Bridge);

    // 300·17/4 = 1275 in·lbf.
    [Proves("tread-bending-point", CheckStatus.Pass, Side.Within)]
    [Proves("tread-bending-point", CheckStatus.Fail, Side.Beyond)]
    public static Proof Point(double share) => Bending("tread-bending-point", share, 1275 + (Dead * 36.125), Bridge);

    // Beside the middle of three stringers 5/8·w·L (beam tables); the point load whole: 0.171875·17·0.625 + 300.
    [Proves("tread-shear", CheckStatus.Pass, Side.Within)]
    [Proves("tread-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof Shear(double share) => Shear(share, 300 + (Dead * 17 * 0.625), Bridge);

    [Proves("tread-shear", CheckStatus.Pass, Side.Within)]
    [Proves("tread-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearOfArea(double share) =>
        Shear(share, (Dead + Live) * 17 * 0.625, Bridge with { Loads = "{ live: 60 psf, point: { force: 0 lbf } }" });

    // On two stringers half of it.
    [Proves("tread-shear", CheckStatus.Pass, Side.Within)]
    [Proves("tread-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearOnTwo(double share) =>
        Shear(share, (Dead + Live) * 17, OnTwo with { Loads = "{ live: 60 psf, point: { force: 0 lbf } }" });

    // 5·w·17⁴/(384·E·I) against 17/360 in.
    [Proves("tread-deflection-area", CheckStatus.Pass, Side.Within)]
    [Proves("tread-deflection-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof DeflectionOfArea(double share) => Deflection("tread-deflection-area", share, 5 * Live * 83521 / (384 * I));

    // 300·17³/(48·E·I).
    [Proves("tread-deflection-point", CheckStatus.Pass, Side.Within)]
    [Proves("tread-deflection-point", CheckStatus.Warn, Side.Beyond)]
    public static Proof DeflectionOfPoint(double share) => Deflection("tread-deflection-point", share, 300 * 4913 / (48 * I));

    [Proves("tread-bending-area", CheckStatus.Engineer)]
    public static Proof NoArea() => Unknown("tread-bending-area", (Dead + Live) * 36.125 / S);

    [Proves("tread-bending-patch", CheckStatus.Engineer)]
    public static Proof NoPatch() => Unknown("tread-bending-patch", ((300 * Pitch / 30 * 17 / 30 / 4 * 8.5) + (Dead * 36.125)) / S);

    [Proves("tread-bending-point", CheckStatus.Engineer)]
    public static Proof NoPoint() => Unknown("tread-bending-point", (1275 + (Dead * 36.125)) / S);

    [Proves("tread-shear", CheckStatus.Engineer)]
    public static Proof NoShear() => Unknown("tread-shear", 1.5 * (300 + (Dead * 17 * 0.625)) / 8.25);

    [Proves("tread-deflection-area", CheckStatus.Engineer)]
    public static Proof NoDeflectionOfArea() => Unknown("tread-deflection-area", 0);

    [Proves("tread-deflection-point", CheckStatus.Engineer)]
    public static Proof NoDeflectionOfPoint() => Unknown("tread-deflection-point", 0);

    private static Proof Bending(string id, double share, double moment, LevelDeck bridge) => new(
        bridge.With("2x6", bending: moment / S / share / Flat).Check(id), moment / S * Psi, moment / S / share * Psi);

    private static Proof Shear(double share, double force, LevelDeck bridge)
    {
        var stress = 3 * force / (2 * 8.25);
        return new(bridge.With("2x6", shear: stress / share).Check("tread-shear"), stress * Psi, stress / share * Psi);
    }

    private static Proof Deflection(string id, double share, double soft) =>
        new(Bridge.With("2x6", modulus: soft / (17 / 360.0 * share)).Check(id), 17 / 360.0 * share * Inch, 17 / 360.0 * Inch);

    private static Proof Unknown(string id, double stress) =>
        new Proof(Bridge.Unknown.Check(id), stress * Psi).Saying("2x6 white-oak no1: the built-in tables have no values");
}
