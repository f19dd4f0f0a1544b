using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// Holes against ends and edges by NDS 2018 Tables 12.5.1A (ends: 7 D, at least 3.5 D), 12.5.1C (edges: 4 D, at least 1.5 D) and
/// 12.5.1B (bolts: 4 D). Posts and braces of 1-1/2 × 3-1/2 in, bases of 2-1/2 × 5-1/2 × 58 in with channels 7/8 × 5/8 in, 46 in
/// apart: the right one's walls are 29 + 23 ∓ 7/16 in from the left end.
/// </summary>
internal static class HoleDistanceProofs
{
    private const double Wall = 29 + 23 - 0.4375;

    // A base's ends are square: from_end is the distance. 3/8 in: 7 D = 2.625 in, 3.5 D = 1.3125 in.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Base_end(double share) =>
        Of("base", Hole(2.625 / share, 0.375), 2.625 / share, 2.625).Saying("along the grain to its left end", "7 D = 2.625 in");

    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Base_end_much_too_near(double share) =>
        Of("base", Hole(1.3125 / share, 0.375), 1.3125 / share, 1.3125).Saying("3.5 D = 1.313 in");

    [Proves("hole-distance", CheckStatus.Warn)]
    public static Proof Base_end_just_far_enough_not_to_fail() => Of("base", Hole(1.3126, 0.375), 1.3126, 2.625);

    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Right_end(double share) =>
        Of("base", FormattableString.Invariant($"from_far_end: {2.625 / share:R} in, diameter: 3/8 in"), 2.625 / share, 2.625)
            .Saying("its right end");

    // A post leans by 8°: the foot's long point is the inner one, and y further out the cut lies y·tan 8° higher. So a hole on the
    // middle line is 1.75·tan 8° nearer to the cut than to the long point, one that is 1 in further out by 1 in · tan 8° more.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Post_foot(double share) =>
        Of("post", Hole((2.625 / share) + (1.75 * Tan(8)), 0.375), 2.625 / share, 2.625).Saying("along the grain to its foot");

    // 1/4 in there: 7 D = 1.75 in; 3/4 in to the edge is 3 D, and on the other side 4 D is further off.
    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Post_foot_outward(double share) =>
        Of("post", Hole((0.875 / share) + (2.75 * Tan(8)), 0.25, "across: 1 in"), 0.875 / share, 0.875).Saying("its foot");

    // Through the narrow face the cut is nearest to the hole at the outer face: 1.75·tan 8° beyond the middle line.
    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Post_foot_through_the_narrow_face(double share) =>
        Of("post", Hole((0.875 / share) + (3.5 * Tan(8)), 0.25, "face: top"), 0.875 / share, 0.875).Saying("its foot");

    // Blind from the inner face, 1 in deep, it ends 3/4 in before the middle line.
    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Post_foot_blind_from_within(double share) =>
        Of("post", Hole((0.875 / share) + (1 * Tan(8)), 0.25, "face: top, depth: 1 in"), 0.875 / share, 0.875).Saying("its foot");

    // The head is cut by the post's outer face, 20° from the brace's own axis: its long point is the outer one. On the middle line the
    // cut lies 1.75·cot 20° short of it, and square to it is sin 20° of what is along the grain: 0.342 < 4/7, so that governs.
    // 1/4 in: 1.5 D = 0.375 in, 4 D = 1 in.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Brace_head(double share) =>
        Of("brace", Head(1 / share), 1 / share, 1).Saying("square to the slanting cut of its head");

    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Brace_head_much_too_near(double share) => Of("brace", Head(0.375 / share), 0.375 / share, 0.375).Saying("its head");

    // Edges: half of 3-1/2 in less across. 1/4 in: 1 in and 3/8 in.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Post_edge(double share) => Of(
        "post", Hole(18, 0.25, FormattableString.Invariant($"across: {1.75 - (1 / share):R} in")), 1 / share, 1)
        .Saying("to its edge", "4 D = 1 in");

    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Post_edge_much_too_near(double share) => Of(
        "post", Hole(18, 0.25, FormattableString.Invariant($"across: {-1.75 + (0.375 / share):R} in")), 0.375 / share, 0.375)
        .Saying("to its edge", "1.5 D = 0.375 in");

    // From above, half of 1-1/2 in: 4 D of 3/16 in, 1.5 D of 1/2 in.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Narrow_face(double share) => Of("brace", Hole(5, 0.1875 * share, "face: top"), 0.75, 0.75 * share);

    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Narrow_face_much_too_wide(double share) => Of("brace", Hole(5, 0.5 * share, "face: top"), 0.75, 0.75 * share);

    // From below beside the channel: 1/4 in, 7 D = 1.75 in, 3.5 D = 0.875 in from its wall.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Channel_wall(double share) =>
        Of("base", Hole(Wall - (1.75 / share), 0.25, "face: bottom, depth: 2 in"), 1.75 / share, 1.75)
            .Saying("along the grain to a rope channel");

    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Channel_wall_much_too_near(double share) =>
        Of("base", Hole(Wall + 0.875 + (0.875 / share), 0.25, "face: bottom, depth: 2 in"), 0.875 / share, 0.875).Saying("a rope channel");

    // A base that lies flat is 2-1/2 in deep, and its bottom is a wide face.
    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Channel_wall_of_a_flat_base(double share) => new Proof(
        (Deck("base", Hole(Wall - (0.875 / share), 0.25, "face: bottom, depth: 1 in")) with { Base = "section: 3x6, flat: true" })
            .Check("hole-distance"),
        0.875 / share * Inch,
        0.875 * Inch).Saying("along the grain to a rope channel");

    // Through the side above the channel: its end channels are 5/8 + 1 in of sag deep, and 0.375·(1/cos θ − 1) more, sloped over
    // half of 2-1/2 in by 1 in in 72 in. 1/4 in: 4 D = 1 in from that floor, its middle below 2-3/4 in above the bottom face.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Channel_floor(double share) =>
        Of("base", Hole(29 + 23, 0.25, FormattableString.Invariant($"across: {Floor - 2.75 + (1 / share):R} in")), 1 / share, 1)
            .Saying("to a rope channel", "4 D = 1 in");

    [Proves("hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Channel_floor_much_too_near(double share) =>
        Of("base", Hole(29 + 23, 0.25, FormattableString.Invariant($"across: {Floor - 2.75 + (0.375 / share):R} in")), 0.375 / share, 0.375)
            .Saying("to a rope channel");

    // Into the channel itself.
    [Proves("hole-distance", CheckStatus.Fail)]
    public static Proof Channel_hit() => Of("base", Hole(29 + 23, 0.25, "face: top"), 0, 0.875).Saying("a rope channel");

    // Two holes 4 D of the larger one apart, 3 to 4 to 5: 3/5 and 4/5 of it along and across.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Two_holes(double share)
    {
        var other = Hole(16 + (0.6 / share), 0.125, FormattableString.Invariant($"across: {-0.4 + (0.8 / share):R} in"));
        return Of("post", $"{Hole(16, 0.25, "across: -0.4 in")} }}, {{ {other}", 1 / share, 1).Saying("to another one", "4 D = 1 in");
    }

    // The inner keeper hole at 23 − 1-1/4 in from the middle; 4 D of 1/4 in before it, also from below.
    [Proves("hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Keeper_hole(double share)
    {
        var deck = Deck("base", Hole(29 + 21.75 - (1 / share), 0.25, "face: bottom, depth: 2 in")) with
        {
            Keeper = "{ hole: 1/4 in, spread: 2-1/2 in, depth: 2 in }",
        };
        return new Proof(deck.Check("hole-distance"), 1 / share * Inch, 1 * Inch).Saying("to a keeper hole");
    }

    private static double Floor => 0.625 + 1 + (0.375 * (Math.Sqrt(1 + (1.0 / 72 / 72)) - 1)) + (1.25 / 72);

    private static string Head(double square)
    {
        var along = square / Math.Sin(20 * Math.PI / 180);
        return FormattableString.Invariant($"from_far_end: {along + (1.75 / Tan(20)):R} in, diameter: 1/4 in");
    }

    private static double Tan(double degrees) => Math.Tan(degrees * Math.PI / 180);

    private static string Hole(double from, double diameter, string more = "face: wide") =>
        FormattableString.Invariant($"from_end: {from:R} in, diameter: {diameter:R} in, {more}");

    private static LevelDeck Deck(string part, string hole) => new() { More = $"holes: {{ {part}: [{{ {hole} }}] }}" };

    private static Proof Of(string part, string hole, double had, double limit) =>
        new(Deck(part, hole).Check("hole-distance"), had * Inch, limit * Inch);
}
