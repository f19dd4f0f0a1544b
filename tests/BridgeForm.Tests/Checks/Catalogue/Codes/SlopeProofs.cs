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

    // Cleats on a deck of 1 : 6: three in a bay of 72 in are 24 in apart, six are 12 in; a step is 16 in.
    [Proves("deck-grip", CheckStatus.Pass)]
    public static Proof Cleats() => Cleated("12.5 in").Saying("would hold; look at their screws");

    [Proves("deck-grip", CheckStatus.Warn)]
    public static Proof Cleats_too_far_apart() => Cleated("26 in").Saying("16 in would hold: write a smaller deck.cleats.spacing");

    private static Proof Cleated(string spacing)
    {
        var drop = 70.25 / 6;
        var deck = $"deck: {{ count: 6, grip: cleats, cleats: {{ spacing: {spacing} }} }}";
        return new Proof(new TwoBays { Sag = drop, Drop = drop, Deck = deck }.Check("deck-grip"), 1.0 / 6);
    }

    // IRC R311.8.3 (from memory): 34 to 38 in. The deck of 8 / 70.25 is steeper than 1 : 12. A rail's top is lowest above the
    // deck at the end post's outer face, and highest at the middle frame, where nothing is lifted.
    [Proves("handrail-height", CheckStatus.Warn, Side.Beyond)]
    public static Proof Too_low(double share) => AtHeight(34 / share, 34, Lowest);

    [Proves("handrail-height", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-height", CheckStatus.Warn, Side.Beyond)]
    public static Proof High_enough_and_not_too_high(double share) => AtHeight(38 * share, 38, _ => 0);

    // Asked for on a private deck steeper than 1 : 12. The cap, the nearest there is, tops 24 in and no more.
    [Proves("handrail-height", CheckStatus.Pass)]
    public static Proof Private_deck_just_flatter_than_1_in_12() => Low("private", 72, 70.25 / 12 * 0.9995).Saying("cap", "not asked for");

    [Proves("handrail-height", CheckStatus.Warn)]
    public static Proof Private_deck_just_steeper_than_1_in_12() => Low("private", 72, 70.25 / 12 * 1.0005).Saying("cap", "fix a handrail");

    // ADA 2010 405.8 and 505.4: on a public bridge steeper than 1 : 20 that rises more than 6 in. Its boards' undersides rise
    // by the drop and their lift at the end, all of it fall × half the span: 6 in.
    [Proves("handrail-height", CheckStatus.Pass)]
    public static Proof Public_deck_that_rises_just_less_than_6_in() => Low("public", 72, 6 * 0.9995 / 72 * 70.25).Saying("not asked for");

    [Proves("handrail-height", CheckStatus.Warn)]
    public static Proof Public_deck_that_rises_just_more_than_6_in() => Low("public", 72, 6 * 1.0005 / 72 * 70.25).Saying("fix a handrail");

    // Over half of 320 in a deck as steep as 1 : 20 rises 8 in.
    [Proves("handrail-height", CheckStatus.Pass)]
    public static Proof Public_deck_just_flatter_than_1_in_20() => Low("public", 160, 158.25 / 20 * 0.9995).Saying("not asked for");

    [Proves("handrail-height", CheckStatus.Warn)]
    public static Proof Public_deck_just_steeper_than_1_in_20() => Low("public", 160, 158.25 / 20 * 1.0005).Saying("fix a handrail");

    private static Proof Low(string use, double half, double drop)
    {
        var bridge = new TwoBays { Use = use, Half = half, Sag = drop, Drop = drop };
        return new Proof(bridge.Check("handrail-height"), CapTop(bridge) * TwoBays.Inch, 34 * TwoBays.Inch);
    }

    private static double CapTop(TwoBays bridge) =>
        (bridge.PostLength * Math.Cos(bridge.LeanRadians))
            + TwoBays.Upright(bridge.CapFall) - TwoBays.Upright(bridge.DeckFall) - Lowest(bridge);

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
