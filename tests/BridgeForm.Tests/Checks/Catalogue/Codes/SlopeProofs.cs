using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>Slopes of the empty deck, and the handrail that they ask for.</summary>
internal static class SlopeProofs
{
    // ADA 2010 405.2: 1 : 12. Common practice, no source: cleats above 1 : 8. The deck falls over 72 − 1.75 in.
    [Proves("deck-slope", CheckStatus.Pass, Side.Within)]
    [Proves("deck-slope", CheckStatus.Warn, Side.Beyond)]
    public static Proof Ramp(double share) => Falling("deck-slope", 1.0 / 12, share);

    [Proves("deck-grip", CheckStatus.Pass, Side.Within)]
    [Proves("deck-grip", CheckStatus.Warn, Side.Beyond)]
    public static Proof Grip(double share) => Falling("deck-grip", 1.0 / 8, share);

    // IRC R311.8.3 (from memory): 34 to 38 in. The deck of 8 / 70.25 is steeper than 1 : 12. A rail's top is lowest above the
    // deck at the end post's outer face, and highest at the middle frame, where nothing is lifted.
    [Proves("handrail-height", CheckStatus.Warn, Side.Beyond)]
    public static Proof Too_low(double share) => AtHeight(34 / share, 34, Lowest);

    [Proves("handrail-height", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-height", CheckStatus.Warn, Side.Beyond)]
    public static Proof High_enough_and_not_too_high(double share) => AtHeight(38 * share, 38, _ => 0);

    // Not asked for on a private deck of 5.5 / 70.25 = 1 : 12.8, though the cap, the nearest there is, tops 24 in no further.
    [Proves("handrail-height", CheckStatus.Pass)]
    public static Proof Not_asked_for_on_a_private_deck_flatter_than_1_in_12()
    {
        var bridge = Low("private", 5.5);
        return new Proof(bridge.Check("handrail-height"), CapTop(bridge) * TwoBays.Inch, 34 * TwoBays.Inch).Saying("cap", "not asked for");
    }

    // ADA 2010 405.8 and 505.4: on a public bridge steeper than 1 : 20 that rises more than 6 in. The same deck falls 5.5 in
    // less its lift, and no handrail is asked for; one of 6.2 in falls 6.2 − 0.15 in, and one is.
    [Proves("handrail-height", CheckStatus.Pass)]
    public static Proof Not_asked_for_on_a_public_deck_that_rises_less_than_6_in()
    {
        var bridge = Low("public", 5.5);
        return new Proof(bridge.Check("handrail-height"), CapTop(bridge) * TwoBays.Inch, 34 * TwoBays.Inch).Saying("not asked for");
    }

    [Proves("handrail-height", CheckStatus.Warn)]
    public static Proof Asked_for_on_a_public_deck_that_rises_more_than_6_in()
    {
        var bridge = Low("public", 6.2);
        return new Proof(bridge.Check("handrail-height"), CapTop(bridge) * TwoBays.Inch, 34 * TwoBays.Inch).Saying("cap", "fix a handrail");
    }

    private static TwoBays Low(string use, double drop) => new() { Use = use, Sag = drop, Drop = drop };

    private static double CapTop(TwoBays bridge) =>
        (bridge.PostLength * Math.Cos(bridge.LeanRadians)) + TwoBays.Upright(bridge.CapFall) - TwoBays.Upright(bridge.DeckFall) - Lowest(bridge);

    private static Proof Falling(string id, double limit, double share)
    {
        var drop = limit * share * 70.25;
        return new Proof(new TwoBays { Sag = drop, Drop = drop }.Check(id), limit * share, limit);
    }

    private static double Lowest(TwoBays bridge) => bridge.Lift + (0.75 * (bridge.DeckFall - bridge.CapFall));

    // Top of a rail in the middle of its posts, above its centre line on their faces: 3/4 in along its normal, half of 3-1/2
    // in along its width, and along the rail back to the frame: (0.75·sin α + 1.75·cos α / cos φ) / N.
    private static Proof AtHeight(double height, double limit, Func<TwoBays, double> lower)
    {
        var bridge = new TwoBays { PostLength = 42 };
        var (sin, cos) = Math.SinCos(bridge.LeanRadians);
        var top = ((0.75 * sin) + (1.75 * cos / Math.Cos(Math.Atan(bridge.CapFall)))) / bridge.RailNormal;
        var rail = (height - top + TwoBays.Upright(bridge.DeckFall) + lower(bridge)) / cos;
        var railed = bridge with { Rails = FormattableString.Invariant($"[6 in, 12 in, {rail:0.##########} in]") };
        return new Proof(railed.Check("handrail-height"), height * TwoBays.Inch, limit * TwoBays.Inch).Saying("rail 3");
    }
}
