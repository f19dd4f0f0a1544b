using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>
/// Gaps of the deck against 1/2 in (ADA 2010 302.3, from memory) and a ball of 35 mm
/// (EN ISO 14122-2, as walkway makers quote it).
/// </summary>
internal static class DeckGapProofs
{
    private const double Ball = 35 / 25.4;

    // Six boards of 5-1/2 in and five gaps, 1/2 in beside the posts' feet on either side.
    [Proves("deck-gaps", CheckStatus.Pass, Side.Within)]
    [Proves("deck-gaps", CheckStatus.Warn, Side.Beyond)]
    public static Proof Boards(double share) => Of(6, 0.5 * share, 0.5);

    [Proves("deck-gaps", CheckStatus.Fail, Side.Beyond)]
    public static Proof Boards_that_a_sphere_falls_through(double share) => Of(5, Ball * share, Ball);

    [Proves("deck-gaps", CheckStatus.Warn)]
    public static Proof Boards_that_a_sphere_does_not_quite_fall_through() => Of(5, Ball * 0.9995, 0.5);

    [Proves("deck-gaps", CheckStatus.Pass, Side.Within)]
    [Proves("deck-gaps", CheckStatus.Warn, Side.Beyond)]
    public static Proof Ends_of_boards(double share) => new(
        new TwoBays { Deck = FormattableString.Invariant($"deck: {{ count: 6, butt_gap: {0.5 * share:0.######} in }}"), Foot = 18 }
            .Check("deck-gaps"),
        0.5 * share * TwoBays.Inch,
        0.5 * TwoBays.Inch);

    // Twelve treads on stringers 5-1/2 in high, in the bay's line that falls by φ: from the end base's far side, 1.75 in
    // before the middle, where the treads' undersides meet it, to the middle frame, where their tops do:
    // (72 − 7·sin φ + 1.75 + 5.5·sin φ) / cos φ.
    [Proves("deck-gaps", CheckStatus.Pass, Side.Within)]
    [Proves("deck-gaps", CheckStatus.Warn, Side.Beyond)]
    public static Proof Treads(double share)
    {
        var bridge = new TwoBays { Rails = "[10 in, 16 in]" };
        var fall = Math.Atan(bridge.DeckFall);
        var room = (73.75 - (1.5 * Math.Sin(fall))) / Math.Cos(fall);
        var width = ((room / 12) - (0.5 * share)) * 25.4;
        var treads = FormattableString.Invariant($"deck: {{ layout: across, count: 12, board: {{ section: 38.1 x {width:0.########} mm ")
            + "}, stringer: { section: 2x6, count: 3 } }";
        return new Proof(
            (bridge with { Deck = treads }).Check("deck-gaps"), 0.5 * share * TwoBays.Inch,
            0.5 * TwoBays.Inch)
        { Error = 1e-7 }.Saying("treads");
    }

    private static Proof Of(int count, double gap, double limit)
    {
        var foot = 0.5 + (((count * 5.5) + ((count - 1) * gap)) / 2);
        var bridge = new TwoBays { Foot = foot, Deck = $"deck: {{ count: {count} }}" };
        // A sphere falls through a gap of its own size: its ratio is reckoned a billionth of a metre beyond 1.
        return new Proof(bridge.Check("deck-gaps"), gap * TwoBays.Inch, limit * TwoBays.Inch) { Error = 1e-8 }.Saying("boards");
    }
}
