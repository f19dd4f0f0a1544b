using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// The middle one of three 2x6 standing 17 in apart carries 10/8 of 17 in = 21.25 in (beam tables). L = 72 in, 72²/8 = 648 in².
/// S = 1.5·5.5²/6 = 7.5625 in³, I = 20.796875 in⁴, A = 8.25 in². Dead: itself 8.25/48 = 0.171875, treads 21.25·1.5/48 =
/// 0.6640625, together 0.8359375 lbf/in. 60 psf: 8.8541667 lbf/in. Beam stability (NDS 3.3.3): L/d = 13.09, le = 1.63·72 + 3·5.5
/// = 133.86 in, RB² = 133.86·5.5/1.5² = 327.213, FbE = 1.2·580000/327.213 = 2127.1 psi.
/// </summary>
internal static class StringerProofs
{
    private const double S = 7.5625;
    private const double I = 20.796875;
    private const double Dead = 0.8359375;
    private const double Live = 60 / 144.0 * 21.25;
    private const double Euler = 1.2 * 580000 / (133.86 * 5.5 / 2.25);

    // 30 in over the middle stringer, from 2 to 32 of 34 in. Three moments, each span loaded from 2 to 17 in with 1/30 lbf/in:
    // M·2·(17 + 17) = −2·(1/30)/(4·17)·(17²·17² − 2²·(2·17² − 2²)) = −2·39.8162, M = −1.171066 in·lbf. A span gives the middle
    // 0.5·9.5/17 + 1.171066/17 = 0.348298 lbf; both 0.696596.
    private const double Term = 1 / 30.0 / 68 * (83521 - (4 * 574));
    private const double Share = 2 * ((0.5 * 9.5 / 17) + (Term * 2 / 68 / 17));

    private static LevelDeck Bridge => On(3);

    [Proves("stringer-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof Area(double share) => Bending("stringer-bending-area", share, (Dead + Live) * 648, Bridge);

    // Two stringers carry half of 35.5 in each: 17.75 in; treads on them 17.75·1.5/48 = 0.5546875 lbf/in.
    [Proves("stringer-bending-area", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-bending-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof AreaOnTwo(double share) =>
        Bending("stringer-bending-area", share, (0.171875 + 0.5546875 + (60 / 144.0 * 17.75)) * 648, On(2));

    // 300·0.6966/4·(72 − 15).
    [Proves("stringer-bending-patch", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-bending-patch", CheckStatus.Fail, Side.Beyond)]
    public static Proof Patch(double share) => Bending("stringer-bending-patch", share, (300 * Share / 4 * 57) + (Dead * 648), Bridge);

    // Two stringers 34 in apart, the load's middle 6 in from the posts' face at the deck's surface, 18.25 + 7·tan 8° = 19.2338 in
    // (stringer 5.5 in and tread 1.5 in): 13.2338 in outward, 0.5 + 13.2338/34 of it.
    [Proves("stringer-bending-patch", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-bending-patch", CheckStatus.Fail, Side.Beyond)]
    public static Proof PatchOnTwo(double share)
    {
        var on = 0.5 + ((18.25 + (7 * Math.Tan(Bridges.Radians(8))) - 6) / 34);
        return Bending("stringer-bending-patch", share, (300 * on / 4 * 57) + (0.7265625 * 648), On(2));
    }

    // 300·72/4.
    [Proves("stringer-bending-point", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-bending-point", CheckStatus.Fail, Side.Beyond)]
    public static Proof Point(double share) => Bending("stringer-bending-point", share, 5400 + (Dead * 648), Bridge);

    // (0.8359375 + 8.8541667)·36 = 348.84 lbf; of the point load 300 + 30.1.
    [Proves("stringer-shear", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof Shear(double share) => Shear(share, (Dead + Live) * 36, Bridge);

    [Proves("stringer-shear", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearOfPoint(double share) =>
        Shear(share, 400 + (Dead * 36), Bridge with { Loads = "{ live: 60 psf, point: { force: 400 lbf } }" });

    // 5·8.8541667·72⁴/(384·E·20.796875).
    [Proves("stringer-deflection-area", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-deflection-area", CheckStatus.Fail, Side.Beyond)]
    public static Proof DeflectionOfArea(double share) => Deflection("stringer-deflection-area", share, 5 * Live * 26873856 / (384 * I));

    // 300·72³/(48·E·20.796875).
    [Proves("stringer-deflection-point", CheckStatus.Pass, Side.Within)]
    [Proves("stringer-deflection-point", CheckStatus.Warn, Side.Beyond)]
    public static Proof DeflectionOfPoint(double share) => Deflection("stringer-deflection-point", share, 300 * 373248 / (48 * I));

    [Proves("stringer-bending-area", CheckStatus.Engineer)]
    public static Proof NoArea() => Unknown("stringer-bending-area", (Dead + Live) * 648 / S);

    [Proves("stringer-bending-patch", CheckStatus.Engineer)]
    public static Proof NoPatch() => Unknown("stringer-bending-patch", ((300 * Share / 4 * 57) + (Dead * 648)) / S);

    [Proves("stringer-bending-point", CheckStatus.Engineer)]
    public static Proof NoPoint() => Unknown("stringer-bending-point", (5400 + (Dead * 648)) / S);

    [Proves("stringer-shear", CheckStatus.Engineer)]
    public static Proof NoShear() => Unknown("stringer-shear", 1.5 * (Dead + Live) * 36 / 8.25);

    [Proves("stringer-deflection-area", CheckStatus.Engineer)]
    public static Proof NoDeflectionOfArea() => Unknown("stringer-deflection-area", 0);

    [Proves("stringer-deflection-point", CheckStatus.Engineer)]
    public static Proof NoDeflectionOfPoint() => Unknown("stringer-deflection-point", 0);

    private static LevelDeck On(int stringers) =>
        new() { Deck = FormattableString.Invariant($"{{ layout: across, count: 10, stringer: {{ section: 2x6, count: {stringers} }} }}") };

    private static Proof Bending(string id, double share, double moment, LevelDeck bridge)
    {
        var allowed = moment / S / share;
        return new(bridge.With("2x6", bending: Before(allowed, Euler, 0.95)).Check(id), moment / S * Psi, allowed * Psi);
    }

    private static Proof Shear(double share, double force, LevelDeck bridge)
    {
        var stress = 3 * force / (2 * 8.25);
        return new(bridge.With("2x6", shear: stress / share).Check("stringer-shear"), stress * Psi, stress / share * Psi);
    }

    private static Proof Deflection(string id, double share, double soft) =>
        new(Bridge.With("2x6", modulus: soft / (0.2 * share)).Check(id), 0.2 * share * Inch, 0.2 * Inch);

    private static Proof Unknown(string id, double stress) =>
        new Proof(Bridge.Unknown.Check(id), stress * Psi).Saying("2x6 white-oak no1: the built-in tables have no values");
}
