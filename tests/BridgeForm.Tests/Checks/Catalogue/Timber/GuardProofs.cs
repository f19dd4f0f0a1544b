using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.BaseStatics;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// Post and brace, 2x4, under 200 lbf at the cap's top (IRC Table R301.5); CD 1.6 (NDS Table 2.3.2, from memory). The post is
/// pinned on its axis; the brace's force meets the post's outer face, 18.25 + 3.5/cos 8° = 21.7844 in out at the base, at the
/// lowest place where brace and post touch: from the brace's inner edge, 28.25 − 3.5/cos 12° = 24.6718 in,
/// 2.8875/(tan 8° + tan 12°) = 8.177 in up.
/// </summary>
internal static class GuardProofs
{
    private const double S = 1.5 * 3.5 * 3.5 / 6;
    private const double Area = 5.25;
    private static readonly double s_face = 18.25 + (3.5 / Math.Cos(Lean));
    private static readonly double s_low = (28.25 - (3.5 / Math.Cos(BraceLean)) - s_face) / (Math.Tan(Lean) + Math.Tan(BraceLean));

    // The brace's force runs from its axis on the base to that place.
    private static readonly double s_way = Math.Atan2(BraceAxis - s_face - (s_low * Math.Tan(Lean)), s_low);

    // Pulled along its axis by what the brace lifts, less or more what is pushed sideways.
    private static double Pull(double push, double top)
    {
        var down = push * top / (BraceAxis - PostAxis);
        return (down * Math.Cos(Lean)) + ((push - (down * Math.Tan(s_way))) * Math.Sin(Lean));
    }

    // 24 in: free above the brace 17.3 in, 4.9 times the depth of 3.5 in: le = 1.87·free (NDS Table 3.3.3, cantilever with its
    // load at the end, from memory). RB² = le·3.5/1.5².
    [Proves("guard-post", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post", CheckStatus.Fail, Side.Beyond)]
    public static Proof Short(double share)
    {
        var free = (Top - s_low) / Math.Cos(Lean);
        return Pulled(share, 200, 24, 1.87 * free);
    }

    // 40 in: free 33.2 in, 9.5 times: le = 1.44·free + 3·3.5.
    [Proves("guard-post", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post", CheckStatus.Fail, Side.Beyond)]
    public static Proof Tall(double share)
    {
        var free = ((40 * Math.Cos(Lean)) + 1.5 - s_low) / Math.Cos(Lean);
        return Pulled(share, 200, 40, (1.44 * free) + 10.5);
    }

    // A public guard: 50 plf on 72 in, 300 lbf (IBC 1607.8.1).
    [Proves("guard-post", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public(double share)
    {
        var free = (Top - s_low) / Math.Cos(Lean);
        return Pulled(share, 300, 24, 1.87 * free, "public");
    }

    // Wood that bears little pressed: inward, (fc/Fc')² + fb/(Fb'·(1 − fc/FcE)), NDS 3.9.2. Column of 8.177/cos 8° in: CP about
    // its thin side, FcE = 0.822·Emin/(le/3.5)².
    [Proves("guard-post", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post", CheckStatus.Fail, Side.Beyond)]
    public static Proof Pressed(double share)
    {
        const double Emin = 100000;
        var (column, press) = (s_low / Math.Cos(Lean), Pull(200, Top));
        var (fc, fb) = (press / Area, 200 * (Top - s_low) / S);
        var allowed = fb / 1500 / (1 - (fc / (0.822 * Emin / (column / 3.5 * (column / 3.5)))));
        var pressed = fc / Math.Sqrt(share - allowed);
        var bending = Before(1500, 1.2 * Emin / (1.87 * (Top - s_low) / Math.Cos(Lean) * 3.5 / 2.25), 0.95);
        var compression = Before(pressed, 0.822 * Emin / (column / 1.5 * (column / 1.5)), 0.8);
        var check = new LevelDeck().With("2x4", bending: bending / 1.6, compression: compression / 1.6, least: Emin).Check("guard-post");
        return new Proof(check, share, 1).Saying("200 lbf inward", "pressed below the brace by " + Force(press));
    }

    [Proves("guard-post", CheckStatus.Engineer)]
    public static Proof NoPost() => new Proof(new LevelDeck().Unknown.Check("guard-post"), 0).Saying(
        FormattableString.Invariant($"200 lbf outward: M = {200 * (Top - s_low):0} in·lbf, fb = {200 * (Top - s_low) / S:0} psi"));

    // The brace's force meets the post's axis where a line from the brace's axis on the base, leaning by s_way, does: (26.4609 −
    // 20.0172)/(tan 8° + tan s_way) up. V = 200·(top − axes)/axes·cos 8°, fv = 1.5·V/5.25 against Fv' = Fv·1.6, wet in the table.
    [Proves("guard-post-shear", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof Shear(double share)
    {
        var stress = PostShear;
        var check = new LevelDeck().With("2x4", shear: stress / share / 1.6).Check("guard-post-shear");
        return new Proof(check, stress * Psi, stress / share * Psi).Saying("200 lbf", "lower edge");
    }

    [Proves("guard-post-shear", CheckStatus.Engineer)]
    public static Proof NoPostShear() => new Proof(new LevelDeck().Unknown.Check("guard-post-shear"), PostShear * Psi).Saying(
        FormattableString.Invariant($"fv = 1.5·V / (1.5 in × 3.5 in) = {PostShear:0.#} psi"));

    private static double PostShear
    {
        get
        {
            var axes = (BraceAxis - PostAxis) / (Math.Tan(Lean) + Math.Tan(s_way));
            return 1.5 * 200 * (Top - axes) / axes * Math.Cos(Lean) / Area;
        }
    }

    // 200·25.2664/(26.4609 − 20.0172)/cos 12° = 801.7 lbf on 5.25 in². Long edge 23.7 in, le/d about 1.5 in: FcE =
    // 0.822·580000/(23.7/1.5)²; CP with c = 0.8 (NDS 3.7.1.5).
    [Proves("guard-brace", CheckStatus.Pass, Side.Within)]
    [Proves("guard-brace", CheckStatus.Fail, Side.Beyond)]
    public static Proof Brace(double share)
    {
        var stress = BraceDown / Math.Cos(BraceLean) / Area;
        var euler = 0.822 * 580000 / (LongEdge / 1.5 * (LongEdge / 1.5));
        var check = new LevelDeck().With("2x4", compression: Before(stress / share, euler, 0.8) / 1.6).Check("guard-brace");
        return new Proof(check, stress * Psi, stress / share * Psi).Saying("200 lbf outward: pressed");
    }

    // Inward it is pulled, Ft' = Ft·1.6; a hole of 1/2 in through the narrow face leaves 1 × 3.5 in.
    [Proves("guard-brace", CheckStatus.Pass, Side.Within)]
    [Proves("guard-brace", CheckStatus.Fail, Side.Beyond)]
    public static Proof BracePulled(double share)
    {
        var stress = BraceDown / Math.Cos(BraceLean) / 3.5;
        var bridge = new LevelDeck { More = "holes: { brace: [{ face: top, from_end: 10 in, diameter: 1/2 in }] }" };
        var check = bridge.With("2x4", tension: stress / share / 1.6).Check("guard-brace");
        return new Proof(check, stress * Psi, stress / share * Psi).Saying("200 lbf inward: pulled");
    }

    [Proves("guard-brace", CheckStatus.Engineer)]
    public static Proof NoBrace() => new Proof(new LevelDeck().Unknown.Check("guard-brace"), BraceDown / Math.Cos(BraceLean) / Area * Psi)
        .Saying("2x4 white-oak no1: the built-in tables have no values");

    [Proves("guard-joint-post-foot", CheckStatus.Engineer)]
    public static Proof PostFoot()
    {
        // 784.2 lbf up; sideways what the brace does not take: 200 − 784.2·tan 12° = 33.3 lbf.
        var out_ = 200 - (BraceDown * Math.Tan(BraceLean));
        return Joint("guard-joint-post-foot", BraceDown).Saying(
            $"200 lbf outward: {Force(BraceDown)} pulled up, {Force(out_)} pushed outward",
            $"200 lbf inward: {Force(BraceDown)} pressed down, {Force(out_)} pushed inward");
    }

    [Proves("guard-joint-brace-foot", CheckStatus.Engineer)]
    public static Proof BraceFoot() => Joint("guard-joint-brace-foot", BraceDown).Saying(
        $"200 lbf outward: {Force(BraceDown)} pressed down, {Force(BraceDown * Math.Tan(BraceLean))} pushed outward",
        $"200 lbf inward: {Force(BraceDown)} pulled up, {Force(BraceDown * Math.Tan(BraceLean))} pulled inward");

    // Along the post's face: post and brace lean 8° + 12° apart.
    [Proves("guard-joint-brace-head", CheckStatus.Engineer)]
    public static Proof BraceHead()
    {
        var (force, along) = (BraceDown / Math.Cos(BraceLean), Force(BraceDown / Math.Cos(BraceLean) * Math.Cos(Lean + BraceLean)));
        return Joint("guard-joint-brace-head", force).Saying(
            $"200 lbf outward: {Force(force)} thrust along the brace, {along} of it along the post's face",
            $"200 lbf inward: {Force(force)} pull along the brace, {along} of it");
    }

    private static Proof Joint(string id, double force) => new(new LevelDeck().Check(id), force * Pound);

    private static string Force(double pounds) => FormattableString.Invariant($"{pounds:0} lbf");

    // ft/Ft' + fb/Fb' (NDS 3.9.1): Ft' = 1000·1.6, what remains is left to bending.
    private static Proof Pulled(double share, double push, double length, double effective, string use = "private")
    {
        var top = (length * Math.Cos(Lean)) + 1.5;
        var (ft, fb) = (Pull(push, top) / Area, push * (top - s_low) / S);
        var allowed = fb / (share - (ft / 1600));
        var euler = 1.2 * 580000 / (effective * 3.5 / 2.25);
        var bridge = new LevelDeck { PostLength = length, Use = use, Loads = "{ live: 60 psf }" };
        var check = bridge.With("2x4", bending: Before(allowed, euler, 0.95) / 1.6, tension: 1000).Check("guard-post");
        return new Proof(check, share, 1).Saying(
            "outward", "lower edge of the brace's contact, at 8.177 in", "pulled below the brace by " + Force(Pull(push, top)));
    }
}
