using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>What lies between bridge and landing.</summary>
internal static class LandingProofs
{
    private static readonly TwoBays s_bridge = new();

    // Where the deck ends, at the outer face of its end base, 1-3/4 in beyond the support: the base's top, the boards' lift
    // and thickness, and what the boards rise on the way there.
    private static double Surface => s_bridge.EndTop + s_bridge.Lift + TwoBays.Upright(s_bridge.DeckFall) + (1.75 * s_bridge.DeckFall);

    // Without newels the landings' guards are not in the project file. IRC 2018 R312.1.3: 4 in.
    [Proves("guard-at-landing", CheckStatus.Engineer)]
    public static Proof Guards() => new Proof(s_bridge.Check("guard-at-landing"), 4 * TwoBays.Inch).Saying("F00", "F02", "4 in");

    // With newels at one end the other is still not in it.
    [Proves("guard-at-landing", CheckStatus.Engineer)]
    public static Proof Guard_at_one_end() => new Proof(
        (s_bridge with { Guard = ", newels: { gap: 2 in, ends: a }" }).Check("guard-at-landing"), 4 * TwoBays.Inch)
        .Saying("at A 2 in clear", "at B the guards end at F02");

    // Newels lean as the posts do: what is clear is the gap, all the way up. 4 in pass, for a sphere passes an opening of its own size.
    [Proves("guard-at-landing", CheckStatus.Pass, Side.Within)]
    [Proves("guard-at-landing", CheckStatus.Fail, Side.Beyond)]
    public static Proof Newels_in_line(double share) => new(
        (s_bridge with { Guard = FormattableString.Invariant($", newels: {{ gap: {4 * share:0.##########} in }}") })
            .Check("guard-at-landing"),
        4 * share * TwoBays.Inch, 4 * TwoBays.Inch);

    // Upright newels of 1-1/2 in beside posts that lean out by 8°: H over the landing the post's inner face lies H·tan 8° out, and the
    // newel's outer one 1-1/2 in; the ball finds the hypotenuse of what is between them and the gap.
    [Proves("guard-at-landing", CheckStatus.Pass, Side.Within)]
    [Proves("guard-at-landing", CheckStatus.Fail, Side.Beyond)]
    public static Proof Upright_newels(double share)
    {
        var bridge = s_bridge with { PostLength = 30, Site = BothAt(Surface) };
        var aside = ((CapTop(bridge) - Surface) * Math.Tan(bridge.LeanRadians)) - 1.5;
        var gap = Math.Sqrt((16 * share * share) - (aside * aside));
        var guard = FormattableString.Invariant($", newels: {{ section: 1.5 x 1.5 in, lean: 0 deg, gap: {gap:0.##########} in }}");
        return new((bridge with { Guard = guard }).Check("guard-at-landing"), 4 * share * TwoBays.Inch, 4 * TwoBays.Inch) { Error = 1e-6 };
    }

    // IRC 2018 R312.1.2, IBC 1015.3: 36 in private, 42 in public, over the landing, which is level with the deck's end here.
    [Proves("newel-height", CheckStatus.Pass, Side.Within)]
    [Proves("newel-height", CheckStatus.Fail, Side.Beyond)]
    public static Proof Private_newels(double share) => Tall("private", 36, share, 0);

    [Proves("newel-height", CheckStatus.Pass, Side.Within)]
    [Proves("newel-height", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public_newels(double share) => Tall("public", 42, share, 0);

    // A landing 1/4 in under the deck: who stands on the deck has that much less.
    [Proves("newel-height", CheckStatus.Pass, Side.Within)]
    [Proves("newel-height", CheckStatus.Fail, Side.Beyond)]
    public static Proof Newels_on_a_lower_landing(double share) => Tall("private", 36, share, 0.25);

    // Only stated: where a bearer is said to be.
    [Proves("landing-bearer", CheckStatus.Engineer)]
    public static Proof Sill() => new Proof(
        (s_bridge with { Site = ", a: { landing: { depth: 4 ft, bearer: sill } }, b: { landing: { depth: 4 ft, bearer: ledger } }" })
            .Check("landing-bearer"), 2)
        .Saying("at A a sill on the ground", "treated for contact with the ground", "at B a ledger", "keep the galvanized ropes clear");

    private static Proof Tall(string use, double inches, double share, double under)
    {
        var guard = FormattableString.Invariant($", newels: {{ height: {(inches / share) + under:0.##########} in }}");
        var bridge = s_bridge with { Use = use, Site = BothAt(Surface - under), Guard = guard };
        return new(bridge.Check("newel-height"), inches / share * TwoBays.Inch, inches * TwoBays.Inch) { Error = 1e-7 };
    }

    // The cap lies on the head, which is cut along it, and runs on to the post's outer face, 3/4 in further.
    private static double CapTop(TwoBays bridge) => bridge.EndTop + (bridge.PostLength * Math.Cos(bridge.LeanRadians))
        + TwoBays.Upright(bridge.CapFall) + (0.75 * bridge.CapFall);

    private static string BothAt(double level) => FormattableString.Invariant(
        $", a: {{ landing: {{ level: {level:0.##########} in }} }}, b: {{ landing: {{ level: {level:0.##########} in }} }}");

    // ADA 2010 303 (from memory): 1/2 in.
    [Proves("landing-step", CheckStatus.Pass, Side.Within)]
    [Proves("landing-step", CheckStatus.Fail, Side.Beyond)]
    public static Proof Landing_A_higher_than_the_deck(double share) => Step(Surface + (0.5 * share), Surface, 0.5 * share);

    [Proves("landing-step", CheckStatus.Pass, Side.Within)]
    [Proves("landing-step", CheckStatus.Fail, Side.Beyond)]
    public static Proof Landing_B_lower_than_the_deck(double share) => Step(Surface + 0.1, Surface - (0.5 * share), 0.5 * share);

    // B not given and A 1/4 in off: nothing fails, and nothing holds.
    [Proves("landing-step", CheckStatus.Warn)]
    public static Proof Landing_B_not_given()
    {
        var check = (s_bridge with
        {
            Site = FormattableString.Invariant($", a: {{ landing: {{ level: ")
            + FormattableString.Invariant($"{Surface - 0.25:0.##########} in }} }}")
        }).Check("landing-step");
        return new Proof(check, 0.25 * TwoBays.Inch, 0.5 * TwoBays.Inch) { Error = 1e-7 }.Saying("site.b.landing.level");
    }

    // ADA 2010 302.3 (from memory): 1/2 in.
    [Proves("landing-gap", CheckStatus.Pass, Side.Within)]
    [Proves("landing-gap", CheckStatus.Warn, Side.Beyond)]
    public static Proof Gap_at_A(double share) => Gap(0.5 * share, 0.1, share);

    [Proves("landing-gap", CheckStatus.Pass, Side.Within)]
    [Proves("landing-gap", CheckStatus.Warn, Side.Beyond)]
    public static Proof Gap_at_B(double share) => Gap(0.1, 0.5 * share, share);

    // Own figure: 4 in, as between boards.
    [Proves("landing-gap", CheckStatus.Fail, Side.Beyond)]
    public static Proof A_hole_at_A(double share) => Hole(4 * share, 0.1, share);

    [Proves("landing-gap", CheckStatus.Fail, Side.Beyond)]
    public static Proof A_hole_at_B(double share) => Hole(0.1, 4 * share, share);

    [Proves("landing-gap", CheckStatus.Warn)]
    public static Proof Nearly_a_hole() => Gap(3.999, 0.1, 2 * 3.999);

    private static Proof Hole(double atA, double atB, double share)
    {
        var proof = Gap(atA, atB, 8 * share);
        return proof with { Capacity = 4 * TwoBays.Inch };
    }

    private static Proof Step(double atA, double atB, double step)
    {
        var site = FormattableString.Invariant(
            $", a: {{ landing: {{ level: {atA:0.##########} in }} }}, b: {{ landing: {{ level: {atB:0.##########} in }} }}");
        return new((s_bridge with { Site = site }).Check("landing-step"), step * TwoBays.Inch, 0.5 * TwoBays.Inch) { Error = 1e-7 };
    }

    private static Proof Gap(double atA, double atB, double share)
    {
        var site = FormattableString.Invariant(
            $", a: {{ landing: {{ gap: {atA:0.##########} in }} }}, b: {{ landing: {{ gap: {atB:0.##########} in }} }}");
        return new((s_bridge with { Site = site }).Check("landing-gap"), 0.5 * share * TwoBays.Inch, 0.5 * TwoBays.Inch);
    }
}
