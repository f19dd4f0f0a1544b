using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.BaseStatics;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// Post and brace, 2x4, pressed on the base and on each other by 200 lbf at the cap's top: 784.2 lbf come down at the brace's
/// foot outward, at the post's inward, with the weight above. Contacts 1.5 in thick, 3.5/cos 8°, 3.5/cos 12° and 3.5/sin 20° long.
/// </summary>
internal static class GuardBearingProofs
{
    private static readonly double s_post = (BraceDown + GuardWeight) / (1.5 * 3.5 / Math.Cos(Lean));
    private static readonly double s_foot = (BraceDown + BraceWeight) / (1.5 * 3.5 / Math.Cos(BraceLean));

    // Square to the post's face, at the lower edge of the brace's head, on all of its 15.35 in².
    private static readonly double s_head =
        BraceDown / Math.Cos(Way) * Math.Sin(Lean + Way) / (1.5 * 3.5 / Math.Sin(Lean + BraceLean));

    // The base is softer.
    [Proves("guard-bearing-post-foot", CheckStatus.Pass, Side.Within)]
    [Proves("guard-bearing-post-foot", CheckStatus.Fail, Side.Beyond)]
    public static Proof PostOnSoftBase(double share) => Soft("guard-bearing-post-foot", s_post, share).Saying("200 lbf inward");

    [Proves("guard-bearing-brace-foot", CheckStatus.Pass, Side.Within)]
    [Proves("guard-bearing-brace-foot", CheckStatus.Fail, Side.Beyond)]
    public static Proof BraceOnSoftBase(double share) => Soft("guard-bearing-brace-foot", s_foot, share).Saying("200 lbf outward");

    // The post softer on its side than the brace, which stands 70° to its own grain.
    [Proves("guard-bearing-brace-head", CheckStatus.Pass, Side.Within)]
    [Proves("guard-bearing-brace-head", CheckStatus.Fail, Side.Beyond)]
    public static Proof BraceOnSoftPost(double share) => new Proof(
        new LevelDeck().With("2x4", across: s_head / share).Check("guard-bearing-brace-head"), s_head * Psi,
        s_head / share * Psi).Saying("200 lbf outward");

    // The upright is softer: Fθ' = Fc*·565 / (Fc*·sin²θ + 565·cos²θ) (NDS 3.10.3, Hankinson), with Fc* = Fc·1.6.
    [Proves("guard-bearing-post-foot", CheckStatus.Pass, Side.Within)]
    [Proves("guard-bearing-post-foot", CheckStatus.Fail, Side.Beyond)]
    public static Proof SoftPost(double share) => AtAnAngle("guard-bearing-post-foot", s_post, share, Lean);

    [Proves("guard-bearing-brace-foot", CheckStatus.Pass, Side.Within)]
    [Proves("guard-bearing-brace-foot", CheckStatus.Fail, Side.Beyond)]
    public static Proof SoftBrace(double share) => AtAnAngle("guard-bearing-brace-foot", s_foot, share, BraceLean);

    [Proves("guard-bearing-brace-head", CheckStatus.Pass, Side.Within)]
    [Proves("guard-bearing-brace-head", CheckStatus.Fail, Side.Beyond)]
    public static Proof SoftBraceHead(double share) =>
        AtAnAngle("guard-bearing-brace-head", s_head, share, (Math.PI / 2) - Lean - BraceLean);

    // A public guard: 50 plf on 72 in, 300 lbf (IBC 1607.8.1).
    [Proves("guard-bearing-post-foot", CheckStatus.Pass, Side.Within)]
    public static Proof Public(double share)
    {
        var stress = ((1.5 * BraceDown) + GuardWeight) / (1.5 * 3.5 / Math.Cos(Lean));
        return new Proof(
            new LevelDeck { Use = "public" }.With("3x6", across: stress / share).Check("guard-bearing-post-foot"), stress * Psi,
            stress / share * Psi);
    }

    [Proves("guard-bearing-post-foot", CheckStatus.Engineer)]
    public static Proof NoPost() => Unknown("guard-bearing-post-foot", s_post, "3x6");

    [Proves("guard-bearing-brace-foot", CheckStatus.Engineer)]
    public static Proof NoBrace() => Unknown("guard-bearing-brace-foot", s_foot, "3x6");

    [Proves("guard-bearing-brace-head", CheckStatus.Engineer)]
    public static Proof NoHead() => Unknown("guard-bearing-brace-head", s_head, "2x4");

    private static Proof Soft(string id, double stress, double share) =>
        new(new LevelDeck().With("3x6", across: stress / share).Check(id), stress * Psi, stress / share * Psi);

    private static Proof AtAnAngle(string id, double stress, double share, double angle)
    {
        double sin = Math.Sin(angle), cos = Math.Cos(angle);
        var along = cos * cos / ((share / stress) - (sin * sin / 565));
        return new(new LevelDeck().With("2x4", compression: along / 1.6).Check(id), stress * Psi, stress / share * Psi);
    }

    private static Proof Unknown(string id, double stress, string section) =>
        new Proof(new LevelDeck().Unknown.Check(id), stress * Psi).Saying($"{section} white-oak no1: the built-in tables have no values");
}
