using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Holes that the user asks for in every base, post or brace. Places along the piece are from the long point of its foot or
/// head (ends of a base: left or right). Places across are positive outward from the bridge's middle on the wide face of a
/// post or brace, towards B on its narrow faces; upward on a base's side, towards A on its top and bottom. So what stands left
/// is the mirror image of what stands right.
/// </summary>
internal static class UserHoles
{
    /// <summary>The holes of a base. A standing one has Y up and Z towards A, a flat one Z up and Y towards B.</summary>
    /// <param name="frames">Where the user's list is.</param>
    /// <param name="half">Half its length, metres: X of the right end.</param>
    /// <param name="flat">It lies flat.</param>
    public static IEnumerable<Hole> OfBase(FrameParameters frames, double half, bool flat)
    {
        foreach (var hole in Of(frames, Role.Base))
        {
            var towardsB = flat && hole.Face != DrilledFace.Wide;
            yield return Placed(hole, BaseFace(hole.Face, flat), -half, half, towardsB ? -hole.Across : hole.Across);
        }
    }

    /// <summary>The holes of a post or a brace: Z towards B, so that Y points outward on the right and inward on the left.</summary>
    /// <param name="frames">Where the user's list is.</param>
    /// <param name="role">Post or brace.</param>
    /// <param name="range">X of the long points of foot and head, metres.</param>
    /// <param name="side">Which side it stands on.</param>
    public static IEnumerable<Hole> OfStrut(FrameParameters frames, Role role, (double Near, double Far) range, Side side)
    {
        // The upper face of a post that leans outward is the inward one, of a brace that leans inward the outward one.
        var upIsMinusY = side == (role == Role.Post ? Side.Right : Side.Left);
        foreach (var hole in Of(frames, role))
        {
            var inward = side == Side.Left && hole.Face == DrilledFace.Wide;
            yield return Placed(hole, StrutFace(hole.Face, upIsMinusY), range.Near, range.Far, inward ? -hole.Across : hole.Across);
        }
    }

    private static IEnumerable<HoleParameters> Of(FrameParameters frames, Role role) => frames.Holes.Where(h => h.Part == role);

    private static Hole Placed(HoleParameters hole, StockFace face, double near, double far, double across) =>
        new(face, hole.FromFarEnd ? far - hole.FromEnd : near + hole.FromEnd, across, hole.Diameter, hole.Depth);

    private static StockFace BaseFace(DrilledFace face, bool flat) => face switch
    {
        DrilledFace.Top => flat ? StockFace.PlusZ : StockFace.PlusY,
        DrilledFace.Bottom => flat ? StockFace.MinusZ : StockFace.MinusY,
        _ => flat ? StockFace.MinusY : StockFace.PlusZ,
    };

    private static StockFace StrutFace(DrilledFace face, bool upIsMinusY) => face switch
    {
        DrilledFace.Top => upIsMinusY ? StockFace.MinusY : StockFace.PlusY,
        DrilledFace.Bottom => upIsMinusY ? StockFace.PlusY : StockFace.MinusY,
        _ => StockFace.PlusZ,
    };
}
