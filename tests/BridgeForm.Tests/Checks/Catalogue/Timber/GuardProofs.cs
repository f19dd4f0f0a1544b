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

    // Along the brace, at the lower edge of its head.
    private static readonly double s_thrust = BraceDown / Math.Cos(Way);

    // Pulled along its axis by what the brace lifts, less or more what is pushed sideways.
    private static double Pull(double push, double top)
    {
        var down = push * top / (BraceAxis - PostAxis);
        return (down * Math.Cos(Lean)) + ((push - (down * Math.Tan(Way))) * Math.Sin(Lean));
    }

    // 24 in: free above the brace 17.3 in, 4.9 times the depth of 3.5 in: le = 1.87·free (NDS Table 3.3.3, cantilever with its
    // load at the end, from memory). RB² = le·3.5/1.5².
    [Proves("guard-post", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post", CheckStatus.Fail, Side.Beyond)]
    public static Proof Short(double share)
    {
        var free = (Top - Low) / Math.Cos(Lean);
        return Pulled(share, 200, 24, 1.87 * free);
    }

    // 40 in: free 33.2 in, 9.5 times: le = 1.44·free + 3·3.5.
    [Proves("guard-post", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post", CheckStatus.Fail, Side.Beyond)]
    public static Proof Tall(double share)
    {
        var free = ((40 * Math.Cos(Lean)) + 1.5 - Low) / Math.Cos(Lean);
        return Pulled(share, 200, 40, (1.44 * free) + 10.5);
    }

    // A public guard: 50 plf on 72 in, 300 lbf (IBC 1607.8.1).
    [Proves("guard-post", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public(double share)
    {
        var free = (Top - Low) / Math.Cos(Lean);
        return Pulled(share, 300, 24, 1.87 * free, "public");
    }

    // Wood that bears little pressed: inward, (fc/Fc')² + fb/(Fb'·(1 − fc/FcE)), NDS 3.9.2. Column of 8.177/cos 8° in: CP about
    // its thin side, FcE = 0.822·Emin/(le/3.5)².
    [Proves("guard-post", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post", CheckStatus.Fail, Side.Beyond)]
    public static Proof Pressed(double share)
    {
        const double Emin = 100000;
        var (column, press) = (Low / Math.Cos(Lean), Pull(200, Top));
        var (fc, fb) = (press / Area, 200 * (Top - Low) / S);
        var allowed = fb / 1500 / (1 - (fc / (0.822 * Emin / (column / 3.5 * (column / 3.5)))));
        var pressed = fc / Math.Sqrt(share - allowed);
        var bending = Before(1500, 1.2 * Emin / (1.87 * (Top - Low) / Math.Cos(Lean) * 3.5 / 2.25), 0.95);
        var compression = Before(pressed, 0.822 * Emin / (column / 1.5 * (column / 1.5)), 0.8);
        var check = new LevelDeck().With("2x4", bending: bending / 1.6, compression: compression / 1.6, least: Emin).Check("guard-post");
        return new Proof(check, share, 1).Saying("200 lbf inward", "pressed below the brace by " + Force(press));
    }

    [Proves("guard-post", CheckStatus.Engineer)]
    public static Proof NoPost() => new Proof(new LevelDeck().Unknown.Check("guard-post"), 0).Saying(
        FormattableString.Invariant($"200 lbf outward: M = {200 * (Top - Low):0} in·lbf, fb = {200 * (Top - Low) / S:0} psi"));

    // The brace's force meets the post's axis where a line from the brace's axis on the base, leaning by Way, does: (26.4609 −
    // 20.0172)/(tan 8° + tan Way) up. V = 200·(top − axes)/axes·cos 8°, fv = 1.5·V/5.25 against Fv' = Fv·1.6, wet in the table.
    [Proves("guard-post-shear", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof Shear(double share)
    {
        var stress = PostShear;
        var check = new LevelDeck().With("2x4", shear: stress / share / 1.6).Check("guard-post-shear");
        return new Proof(check, stress * Psi, stress / share * Psi).Saying("200 lbf", "lower edge");
    }

    // A hole of 1-1/16 in through the wide face below the brace, on the post's axis, leaves two parts of 1.21875 in: Σh³/h² of them is
    // 2.4375 in, and V is the same.
    [Proves("guard-post-shear", CheckStatus.Pass, Side.Within)]
    [Proves("guard-post-shear", CheckStatus.Fail, Side.Beyond)]
    public static Proof ShearAtAHole(double share)
    {
        var stress = PostShear * 3.5 / 2.4375;
        var bridge = new LevelDeck { More = "holes: { post: [{ face: wide, from_end: 2.5 in, diameter: 1-1/16 in }] }" };
        var check = bridge.With("2x4", shear: stress / share / 1.6).Check("guard-post-shear");
        return new Proof(check, stress * Psi, stress / share * Psi).Saying("at the hole from ", "Σh³/h² of the parts");
    }

    [Proves("guard-post-shear", CheckStatus.Engineer)]
    public static Proof NoPostShear() => new Proof(new LevelDeck().Unknown.Check("guard-post-shear"), PostShear * Psi).Saying(
        FormattableString.Invariant($"b = 1.5 in, d = 3.5 in; fv = 1.5·V / (b·d) = {PostShear:0.#} psi"));

    private static double PostShear
    {
        get
        {
            var axes = (BraceAxis - PostAxis) / (Math.Tan(Lean) + Math.Tan(Way));
            return 1.5 * 200 * (Top - axes) / axes * Math.Cos(Lean) / Area;
        }
    }

    // Along the bridge one post alone bends about the axis across its 1.5 in: S = 3.5·1.5²/6 = 1.3125 in³; Fb' = Fb·1.6·1.1, the
    // flat-use factor of 2x4 (NDS Supplement table 4A, from memory).
    [Proves("guard-post-along", CheckStatus.Engineer, Side.Within)]
    [Proves("guard-post-along", CheckStatus.Warn, Side.Beyond)]
    public static Proof Along(double share)
    {
        var stress = 200 * Top / 1.3125;
        var check = new LevelDeck().With("2x4", bending: stress / share / 1.6 / 1.1).Check("guard-post-along");
        return new Proof(check, stress * Psi, stress / share * Psi).Saying("200 lbf along the bridge", "above the base");
    }

    // A hole of 1 in through the wide face, 3.5 in from the post's tip, which stands 1.75·tan 8° below its axis, leaves 2.5 × 1.5 in
    // at its lower edge: S = 0.9375 in³.
    [Proves("guard-post-along", CheckStatus.Engineer, Side.Within)]
    [Proves("guard-post-along", CheckStatus.Warn, Side.Beyond)]
    public static Proof AlongAtAHole(double share)
    {
        var stress = 200 * (Top - ((3 - (1.75 * Math.Tan(Lean))) * Math.Cos(Lean))) / 0.9375;
        var bridge = new LevelDeck { More = "holes: { post: [{ face: wide, from_end: 3.5 in, diameter: 1 in }] }" };
        var check = bridge.With("2x4", bending: stress / share / 1.6 / 1.1).Check("guard-post-along");
        return new Proof(check, stress * Psi, stress / share * Psi).Saying("above the hole at");
    }

    [Proves("guard-post-along", CheckStatus.Engineer)]
    public static Proof NoPostAlong() =>
        new Proof(new LevelDeck().Unknown.Check("guard-post-along"), 200 * Top / 1.3125 * Psi).Saying("200 lbf along the bridge");

    // Pressed at the lower edge of its head, 3.5/2 in off its axis: (fc/Fc')² + fb·sec(π/2·√(fc/FcE))/Fb'. NDS 15.4.1 writes the
    // secant as (1 + 0.234·fc/FcE)/(1 − fc/FcE) (from memory), within 1 % of it. On 5.25 in², S = 3.0625 in³. Long edge 23.7
    // in: about its thin side FcE = 0.822·580000/(23.7/1.5)², CP with c = 0.8 (NDS 3.7.1.5); about the other 0.822·580000/
    // (23.7/3.5)². 23.7/3.5 < 7: le = 2.06·23.7 in, RB² = le·3.5/1.5² (NDS 3.3.3).
    [Proves("guard-brace", CheckStatus.Pass, Side.Within)]
    [Proves("guard-brace", CheckStatus.Fail, Side.Beyond)]
    public static Proof Brace(double share)
    {
        const double Allowed = 3000;
        var (fc, fb) = (s_thrust / Area, s_thrust * 1.75 / S);
        var bows = fc / (0.822 * 580000 / (LongEdge / 3.5 * (LongEdge / 3.5)));
        Assert.InRange((1 + (0.234 * bows)) / (1 - bows) * Math.Cos(Math.PI / 2 * Math.Sqrt(bows)), 0.99, 1.01);
        var pressed = fc / Math.Sqrt(share - (fb / Math.Cos(Math.PI / 2 * Math.Sqrt(bows)) / Allowed));
        var euler = 0.822 * 580000 / (LongEdge / 1.5 * (LongEdge / 1.5));
        var check = new LevelDeck().With(
            "2x4", bending: Before(Allowed, Tips, 0.95) / 1.6, compression: Before(pressed, euler, 0.8) / 1.6).Check("guard-brace");
        return new Proof(check, share, 1).Saying("200 lbf outward: pressed", "lower edge", "off the axis by 1.75 in");
    }

    // Inward it is pulled, ft/Ft' + fb/Fb' (NDS 3.9.1), Ft' = Ft·1.6; a hole of 1/2 in through the narrow face leaves 1 × 3.5 in.
    [Proves("guard-brace", CheckStatus.Pass, Side.Within)]
    [Proves("guard-brace", CheckStatus.Fail, Side.Beyond)]
    public static Proof BracePulled(double share)
    {
        const double Allowed = 3000;
        var (ft, fb) = (s_thrust / 3.5, s_thrust * 1.75 / (3.5 * 3.5 / 6));
        var bridge = new LevelDeck { More = "holes: { brace: [{ face: top, from_end: 10 in, diameter: 1/2 in }] }" };
        var check = bridge.With(
            "2x4", bending: Before(Allowed, Tips, 0.95) / 1.6, tension: ft / (share - (fb / Allowed)) / 1.6).Check("guard-brace");
        return new Proof(check, share, 1).Saying("200 lbf inward: pulled", "lower edge");
    }

    private static double Tips => 1.2 * 580000 / (2.06 * LongEdge * 3.5 / 2.25);

    [Proves("guard-brace", CheckStatus.Engineer)]
    public static Proof NoBrace() => new Proof(new LevelDeck().Unknown.Check("guard-brace"), s_thrust / Area * Psi)
        .Saying("2x4 white-oak no1: the built-in tables have no values");

    [Proves("guard-joint-post-foot", CheckStatus.Engineer)]
    public static Proof PostFoot()
    {
        // Inward 784.2 lbf down; at the lower edge of its head the brace pulls more inward than the push: 338 lbf. Outward most comes up
        // where the brace stands on its foot's inner edge, most goes sideways where it stands on the outer.
        var in_ = BraceOut - 200;
        return Joint("guard-joint-post-foot", DownOn(-1)).Saying(
            $"200 lbf outward: {Force(DownOn(-1))} pulled up, {Force(OutOn(1) - 200)} pushed inward",
            $"200 lbf inward: {Force(BraceDown)} pressed down, {Force(in_)} pushed outward");
    }

    [Proves("guard-joint-brace-foot", CheckStatus.Engineer)]
    public static Proof BraceFoot() => Joint("guard-joint-brace-foot", DownOn(-1)).Saying(
        $"200 lbf outward: {Force(DownOn(-1))} pressed down, {Force(OutOn(1))} pushed outward",
        $"200 lbf inward: {Force(BraceDown)} pulled up, {Force(BraceOut)} pulled inward");

    // Along the post's face, from which the force at the lower edge lies 8° + the way's angle.
    [Proves("guard-joint-brace-head", CheckStatus.Engineer)]
    public static Proof BraceHead()
    {
        var (thrust, along) = (DownOn(-1) / Math.Cos(WayOn(-1)), Force(s_thrust * Math.Cos(Lean + Way)));
        return Joint("guard-joint-brace-head", thrust).Saying(
            $"200 lbf outward: {Force(thrust)} thrust along the brace, {Force(thrust * Math.Cos(Lean + WayOn(-1)))} of it along the post's",
            $"200 lbf inward: {Force(s_thrust)} pull along the brace, {along} of it");
    }

    // Brackets by their makers' figures: pull / uplift + push along the face / shear. Outward the post is pulled up by what the brace
    // lifts that stands on its foot's inner edge, and at the lower edge of its head it pushes further out than the push.
    [Proves("guard-joint-post-foot", CheckStatus.Pass, Side.Within)]
    [Proves("guard-joint-post-foot", CheckStatus.Fail, Side.Beyond)]
    public static Proof PostBracket(double share)
    {
        var (up, in_) = (DownOn(-1), OutOn(-1) - 200);
        return Bracket("post-foot", up / (share - (in_ / Ample)), Math.Sqrt((up * up) + (in_ * in_)), share);
    }

    // Inward the brace is pulled, on its axis: up and inward by tan 12° of that.
    [Proves("guard-joint-brace-foot", CheckStatus.Pass, Side.Within)]
    [Proves("guard-joint-brace-foot", CheckStatus.Fail, Side.Beyond)]
    public static Proof BraceBracket(double share) => Bracket(
        "brace-foot", BraceDown / (share - (BraceDown * Math.Tan(BraceLean) / Ample)), BraceDown / Math.Cos(BraceLean), share);

    // The same pull, 20° from the post's face.
    [Proves("guard-joint-brace-head", CheckStatus.Pass, Side.Within)]
    [Proves("guard-joint-brace-head", CheckStatus.Fail, Side.Beyond)]
    public static Proof HeadBracket(double share)
    {
        var (pull, between) = (BraceDown / Math.Cos(BraceLean), Lean + BraceLean);
        return Bracket(
            "brace-head", pull * Math.Sin(between) / (share - (pull * Math.Cos(between) / Ample)), pull, share);
    }

    // So much along the face that the other direction never governs.
    private const double Ample = 20000;

    private static Proof Bracket(string joint, double uplift, double held, double share)
    {
        var capacity = FormattableString.Invariant($"uplift: {uplift:R} lbf, shear: {Ample:R} lbf, source: invented");
        var deck = new LevelDeck { More = $"joints: {{ {joint}: {{ kind: bracket, capacity: {{ {capacity} }} }} }}" };
        return new(deck.Check("guard-joint-" + joint), held * Pound, held / share * Pound) { Error = 1e-7 };
    }

    private static Proof Joint(string id, double force) => new(new LevelDeck().Check(id), force * Pound);

    private static string Force(double pounds) => FormattableString.Invariant($"{pounds:0} lbf");

    // ft/Ft' + fb/Fb' (NDS 3.9.1): Ft' = 1000·1.6, what remains is left to bending.
    private static Proof Pulled(double share, double push, double length, double effective, string use = "private")
    {
        var top = (length * Math.Cos(Lean)) + 1.5;
        var (ft, fb) = (Pull(push, top) / Area, push * (top - Low) / S);
        var allowed = fb / (share - (ft / 1600));
        var euler = 1.2 * 580000 / (effective * 3.5 / 2.25);
        var bridge = new LevelDeck { PostLength = length, Use = use, Loads = "{ live: 60 psf }" };
        var check = bridge.With("2x4", bending: Before(allowed, euler, 0.95) / 1.6, tension: 1000).Check("guard-post");
        return new Proof(check, share, 1).Saying(
            "outward", "lower edge of the brace's contact, at 8.177 in", "pulled below the brace by " + Force(Pull(push, top)));
    }
}
