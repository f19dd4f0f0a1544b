namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// The middle base of the level deck, 3x6 and 58 in long, and all that stands on it, by hand. Pounds, inches; z from the middle
/// to the right. It stands with its bottom 0.375 − 0.625 = −0.25 in from the rope's axis, its top at 5.25, its axis at 2.5 in.
/// </summary>
internal static class BaseStatics
{
    public static readonly double Lean = Bridges.Radians(8);
    public static readonly double BraceLean = Bridges.Radians(12);

    /// <summary>Axes of post and brace on the base's top: 18.25 + 1.75/cos 8° = 20.0172 in, 28.25 − 1.75/cos 12° = 26.4609 in.</summary>
    public static readonly double PostAxis = 18.25 + (1.75 / Math.Cos(Lean));
    public static readonly double BraceAxis = 28.25 - (1.75 / Math.Cos(BraceLean));

    /// <summary>Cap's top above the base's: 24·cos 8° + 1.5 = 25.2664 in.</summary>
    public static readonly double Top = (24 * Math.Cos(Lean)) + 1.5;

    /// <summary>Half the width between the posts at the deck's surface: 18.25 + 1.5·tan 8°.</summary>
    public static readonly double HalfWidth = 18.25 + (1.5 * Math.Tan(Lean));

    /// <summary>Channels of 3/4 + 1/8 in about 23 in.</summary>
    public const double Inner = 23 - 0.4375;
    public const double Outer = 23 + 0.4375;

    /// <summary>Six boards of 5.5 × 1.5 in, 72 in less 1/16 in of butt gap and 1.25 in over the end base: 73.1875 in.</summary>
    public const double Boards = 6 * 8.25 * 73.1875;

    /// <summary>Post 1.5 × 3.5 × 24 in; rail 0.75 × 3.5 and cap 1.5 × 5.5, both 72.75 in.</summary>
    public const double Posts = 5.25 * 24;
    public const double Rails = (2.625 + 8.25) * 72.75;

    /// <summary>
    /// Brace: its long edge from the base to the post's outer face, n = (28.25 − 18.25 − 3.5/cos 8°)/(tan 8° + tan 12°) up, over
    /// cos 12°; its short edge 3.5·(tan 12° + cot 20°) less. Volume of the mean.
    /// </summary>
    public static readonly double LongEdge =
        (10 - (3.5 / Math.Cos(Lean))) / (Math.Tan(Lean) + Math.Tan(BraceLean)) / Math.Cos(BraceLean);
    private static readonly double s_brace = 5.25 * (LongEdge - (3.5 / 2 * (Math.Tan(BraceLean) + (1 / Math.Tan(Lean + BraceLean)))));

    /// <summary>2.5 × 5.5 × 58 in less two channels of 7/8 × 5/8 × 2.5 in.</summary>
    private const double Base = (2.5 * 5.5 * 58) - (2 * 0.875 * 0.625 * 2.5);

    /// <summary>Weights in service; the base's with 3 lb of hardware.</summary>
    public const double DeckWeight = Boards / 48;
    public const double GuardWeight = (Posts / 48) + (Rails / 64);
    public static readonly double BraceWeight = s_brace / 48;
    public const double BaseWeight = (Base / 48) + 3;
    public static readonly double Dead = (DeckWeight + BaseWeight + (2 * (GuardWeight + BraceWeight))) / 2;

    /// <summary>The same of dry wood, on one rope.</summary>
    public static readonly double DryDead =
        (((Boards + Base + (2 * (Posts + s_brace))) / 64) + (2 * Rails / 96) + 3) / 2;

    /// <summary>Bending at z between the posts' feet and the ropes, bottom in tension positive.</summary>
    public static double DeadMoment(double z) =>
        (Dead * (23 - z)) - (BraceWeight * (BraceAxis - z)) - Own(z) - (z < PostAxis ? GuardWeight * (PostAxis - z) : 0)
        - (z < 18.25 ? DeckWeight / 36.5 * (18.25 - z) * (18.25 - z) / 2 : 0);

    /// <summary>Reaction less what stands to the right of z, which lies between the post's foot and the rope.</summary>
    public static double DeadShear(double z) => Dead - BraceWeight - (BaseWeight / 58 * (29 - z));

    /// <summary>
    /// A push of 200 lbf outward is held by the brace: 200·25.2664/(26.4609 − 20.0172) = 784.2 lbf come down at its foot and go
    /// up at the post's.
    /// </summary>
    public static readonly double BraceDown = 200 * Top / (BraceAxis - PostAxis);

    /// <summary>
    /// The brace's force at the lowest place where post and brace touch: from the brace's inner edge, 28.25 − 3.5/cos 12° =
    /// 24.6718 in, against the post's outer face, 18.25 + 3.5/cos 8° = 21.7844 in out, 2.8875/(tan 8° + tan 12°) = 8.177 in up. It
    /// runs from the brace's axis on the base to that place.
    /// </summary>
    public static readonly double Face = 18.25 + (3.5 / Math.Cos(Lean));
    public static readonly double Low = (28.25 - (3.5 / Math.Cos(BraceLean)) - Face) / (Math.Tan(Lean) + Math.Tan(BraceLean));
    public static readonly double Way = Math.Atan2(BraceAxis - Face - (Low * Math.Tan(Lean)), Low);

    /// <summary>What it pushes outward at the brace's foot.</summary>
    public static readonly double BraceOut = BraceDown * Math.Tan(Way);

    /// <summary>The same of a brace that stands on the inner (−1) or outer (1) edge of its foot, 1.75/cos 12° beside its axis.</summary>
    public static double DownOn(int edge) => 200 * Top / (FootOn(edge) - PostAxis);

    public static double WayOn(int edge) => Math.Atan2(FootOn(edge) - Face - (Low * Math.Tan(Lean)), Low);

    public static double OutOn(int edge) => DownOn(edge) * Math.Tan(WayOn(edge));

    private static double FootOn(int edge) => BraceAxis + (edge * 1.75 / Math.Cos(BraceLean));

    /// <summary>Half of 200·(25.2664 + 5.25)/46 … the pair of forces on the ropes: 132.68 lbf more on the right one.</summary>
    public static readonly double RopeDown = 200 * (Top + 5.25) / 46;

    /// <summary>
    /// Bending by that push at z between post and rope: the brace's foot, its outward push 2.75 in above the base's axis, the
    /// rope's answer, and half the push at the rope, 2.5 in below that axis.
    /// </summary>
    public static double PushMoment(double z, double way) =>
        (-BraceDown * (BraceAxis - z)) - (2.75 * BraceDown * Math.Tan(way)) + (z < 23 ? (RopeDown * (23 - z)) - (2.5 * 100) : 0);

    /// <summary>A foot that stands on its inner edge, 24.6718 in out, or on its outer one, 28.25 in.</summary>
    public static readonly double InnerFoot = 28.25 - (3.5 / Math.Cos(BraceLean));
    public const double OuterFoot = 28.25;

    /// <summary>What comes down at a foot under the push outward: 1085.6 lbf at its inner edge, 613.8 lbf at its outer one.</summary>
    public static double Down(double foot) => 200 * Top / (foot - PostAxis);

    /// <summary>What such a foot pushes outward, its force running to the lowest place where post and brace touch.</summary>
    public static double Out(double foot) => Down(foot) * (foot - Face - (Low * Math.Tan(Lean))) / Low;

    /// <summary>Bending between post and rope of the empty base, its wood dry, under the push outward on such a foot.</summary>
    public static double DryMoment(double z, double foot) =>
        (DryDead * (23 - z)) - (BraceWeight * 48 / 64 * (BraceAxis - z)) - (((Base / 64) + 3) / 58 * (29 - z) * (29 - z) / 2)
        - (Down(foot) * (foot - z)) - (2.75 * Out(foot)) + (RopeDown * (23 - z)) - (2.5 * 100);

    private static double Own(double z) => BaseWeight / 58 * (29 - z) * (29 - z) / 2;
}
