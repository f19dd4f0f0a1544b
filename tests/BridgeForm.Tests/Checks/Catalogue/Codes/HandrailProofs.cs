using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>A handrail of the file's own: its height, its size, the room around it. All frames of the bridge stand plumb.</summary>
internal static class HandrailProofs
{
    // The deck of 8 in 70.25 is steeper than 1 : 12. At the middle frame nothing is lifted, so there the handrail's top stands as high
    // as written, square to the bases, and no lower than that at the ends.
    [Proves("handrail-height", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-height", CheckStatus.Warn, Side.Beyond)]
    public static Proof Height(double share)
    {
        // Over the frame's middle the top is half the section along the handrail's own normal, 1 / cos of its fall higher than square,
        // and the deck's surface as much for its thickness.
        var bridge = new TwoBays { PostLength = 44 };
        var written = (38 * share) + TwoBays.Upright(bridge.DeckFall) - 1.5 - (Math.Sqrt(1 + (HandFall(bridge) * HandFall(bridge))) - 1);
        var check = With(FormattableString.Invariant($"diameter: 2 in, height: {written:0.##########} in")).Check("handrail-height");
        return new Proof(check, 38 * share * TwoBays.Inch, 38 * TwoBays.Inch) { Error = 2e-4 }.Saying("handrail: top");
    }

    // ADA 2010 505.7.1 (from memory): 1-1/4 to 2 in.
    [Proves("handrail-size", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-size", CheckStatus.Warn, Side.Beyond)]
    public static Proof Thick(double share) => Sized(FormattableString.Invariant($"diameter: {2 * share:0.######} in"), 2 * share, 2);

    [Proves("handrail-size", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-size", CheckStatus.Warn, Side.Beyond)]
    public static Proof Thin(double share) =>
        Sized(FormattableString.Invariant($"diameter: {1.25 / share:0.##########} in"), 1.25 / share, 1.25);

    // ADA 2010 505.7.2 (from memory): 4 to 6-1/4 in around; 1-1/2 by 1-5/8 in is 2.21 in from corner to corner.
    [Proves("handrail-size", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-size", CheckStatus.Warn, Side.Beyond)]
    public static Proof Around(double share) =>
        Sized(FormattableString.Invariant($"section: 1.5 x {(3.125 * share) - 1.5:0.##########} in"), 6.25 * share, 6.25);

    [Proves("handrail-size", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-size", CheckStatus.Warn, Side.Beyond)]
    public static Proof Little_around(double share) =>
        Sized(FormattableString.Invariant($"section: 0.9 x {(2 / share) - 0.9:0.##########} in"), 4 / share, 4);

    // 2 in by the rest of 2-1/4 in from corner to corner, 6.06 in around.
    [Proves("handrail-size", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-size", CheckStatus.Warn, Side.Beyond)]
    public static Proof Across(double share) => Sized(
        FormattableString.Invariant($"section: 2 x {Math.Sqrt((2.25 * 2.25 * share * share) - 4):0.############} in"), 2.25 * share, 2.25);

    // ADA 2010 505.5 (from memory): 1-1/2 in; square to the posts' leaning faces, on which nothing stands.
    [Proves("handrail-clearance", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-clearance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Clear_of_round(double share) => Clear("diameter: 2 in", share);

    [Proves("handrail-clearance", CheckStatus.Pass, Side.Within)]
    [Proves("handrail-clearance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Clear_of_square(double share) => Clear("section: 1.5 x 1.5 in", share);

    private static double HandFall(TwoBays bridge) => (bridge.Drop + 0) / bridge.Half;

    private static TwoBays With(string handrail) => new() { PostLength = 44, Rails = "[]", Guard = $", handrail: {{ {handrail} }}" };

    private static Proof Sized(string size, double had, double limit) => new Proof(
        With(size + ", height: 36 in").Check("handrail-size"), had * TwoBays.Inch, limit * TwoBays.Inch)
    { Error = 1e-7 };

    // The square one falls with the bridge, so its corners stand upright to the fall and not to the posts: a hundredth of an inch.
    private static Proof Clear(string size, double share)
    {
        var gap = FormattableString.Invariant($"{1.5 / share:0.##########} in");
        return new Proof(
            With($"{size}, height: 34 in, gap: {gap}").Check("handrail-clearance"), 1.5 / share * TwoBays.Inch, 1.5 * TwoBays.Inch)
        { Error = 1e-3 };
    }
}
