using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>What lies between bridge and landing.</summary>
internal static class LandingProofs
{
    private static readonly TwoBays s_bridge = new();

    // Where the deck ends, at the outer face of its end base, 1-3/4 in beyond the support: the base's top, the boards' lift
    // and thickness, and what the boards rise on the way there.
    private static double Surface => s_bridge.EndTop + s_bridge.Lift + TwoBays.Upright(s_bridge.DeckFall) + (1.75 * s_bridge.DeckFall);

    // Always: the landings' guards are not in the project file. IRC 2018 R312.1.3: 4 in.
    [Proves("guard-at-landing", CheckStatus.Engineer)]
    public static Proof Guards() => new Proof(s_bridge.Check("guard-at-landing"), 4 * TwoBays.Inch).Saying("F00", "F02", "4 in");

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
