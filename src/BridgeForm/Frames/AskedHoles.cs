using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Holes that the user asks for in every base, post or brace.</summary>
internal static class AskedHoles
{
    /// <summary>The holes of one member.</summary>
    /// <param name="frames">Where the user's list is.</param>
    /// <param name="part">Kind of member.</param>
    /// <param name="near">X of the long point of the near end, metres.</param>
    /// <param name="far">X of the long point of the far end, metres.</param>
    /// <param name="turned">
    /// The face that looks up is the one at the other end of the axis: a flat base (its top is a wide face), or a member of
    /// the side on which Y points down.
    /// </param>
    public static IEnumerable<Hole> Of(FrameParameters frames, DrilledPart part, double near, double far, bool turned)
    {
        foreach (var hole in frames.Holes)
        {
            if (hole.Part == part)
            {
                yield return new Hole(
                    part == DrilledPart.Base ? BaseFace(hole.Face, turned) : StrutFace(hole.Face, turned),
                    hole.FromFarEnd ? far - hole.FromEnd : near + hole.FromEnd,
                    hole.Across,
                    hole.Diameter,
                    hole.Depth);
            }
        }
    }

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
