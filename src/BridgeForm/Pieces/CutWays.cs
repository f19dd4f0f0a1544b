using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>How an end is cut, the cheapest way first.</summary>
public enum CutWay
{
    /// <summary>On the mitre saw, against its fence.</summary>
    Saw,

    /// <summary>On the mitre saw, against a tapered block.</summary>
    SawWithBlock,

    /// <summary>With a hand-held circular saw along a line drawn by the template.</summary>
    CircularSaw,

    /// <summary>On the table saw, held in a taper jig.</summary>
    TaperJig,

    /// <summary>On a band saw.</summary>
    BandSaw,

    /// <summary>By hand.</summary>
    HandSaw,
}

/// <summary>Ways to cut ends, by the tools at hand.</summary>
public static class CutWays
{
    /// <summary>Deepest cut of a hand-held circular saw, metres. Common practice, no source.</summary>
    public const double CircularDepth = 0.060;

    // What such tools commonly reach (common practice, no source). Metres, radians.
    internal const double MostTilt = Math.PI / 4;
    private const double LeastTaper = Math.PI / 4;

    /// <summary>What it is called.</summary>
    public static string Words(CutWay way) => way switch
    {
        CutWay.Saw => "saw",
        CutWay.SawWithBlock => "saw with taper block",
        CutWay.CircularSaw => "circular saw along the template line",
        CutWay.TaperJig => "taper jig on the table saw",
        CutWay.BandSaw => "band saw",
        CutWay.HandSaw => "hand saw along the template line",
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "No such way."),
    };

    /// <summary>What it is called for a stick: with how it is gone about where one pass does not go through.</summary>
    public static string Words(EndCut cut, CutStock stock) =>
        Words(cut.Way) + (cut.OnEdge ? ", the piece on its edge"
            : FromBothFaces(cut, stock) ? ", marked on and cut from both faces" : "");

    /// <summary>The circular saw does not go through: the line is marked on both faces, and cut from either.</summary>
    public static bool FromBothFaces(EndCut cut, CutStock stock) =>
        cut.Way == CutWay.CircularSaw && stock.Thickness / Elementary.Cos(cut.Bevel) > CircularDepth;

    /// <summary>
    /// The cheapest way that the tools at hand reach, with width and thickness at its setting, the piece flat or, where that fails, on
    /// its narrow edge. A block makes up for a mitre
    /// beyond the saw's limit, and for nothing else, where it holds the piece (<see cref="Holding.FitsBlock"/>).
    /// </summary>
    /// <param name="stock">The stick.</param>
    /// <param name="near">Its near end; else its far one.</param>
    /// <param name="cut">Angles of that end.</param>
    /// <param name="over">How much of the mitre lies beyond the saw's limit, radians; 0 for none.</param>
    /// <param name="shop">Tools.</param>
    internal static (CutWay Way, bool OnEdge) Choose(CutStock stock, bool near, EndCut cut, double over, ShopParameters shop)
    {
        var (mitre, bevel) = (Math.Abs(cut.Mitre), Math.Abs(cut.Bevel));
        var thick = stock.Thickness;
        if (shop.Tools.HasFlag(ShopTools.MitreSaw))
        {
            if (IsPlain(stock, cut, shop))
            {
                return (CutWay.Saw, false);
            }

            if (!stock.IsRound && IsPlain(stock.On(edge: true), Lying.Rolled(cut), shop))
            {
                return (CutWay.Saw, true);
            }

            if (over > 0 && bevel - shop.BevelLimit <= Tolerances.SawStop && FitsBlock(stock, near, cut, over, shop))
            {
                return (CutWay.SawWithBlock, false);
            }
        }

        var plain = bevel <= Tolerances.SameCut;
        return (shop.Tools.HasFlag(ShopTools.CircularSaw)
            && ((bevel <= MostTilt && thick / Elementary.Cos(bevel) <= CircularDepth) || (plain && thick <= 2 * CircularDepth))
            ? CutWay.CircularSaw
            : shop.Tools.HasFlag(ShopTools.TableSaw) && plain && mitre >= LeastTaper && thick <= shop.Saw.TableDepth ? CutWay.TaperJig
            : shop.Tools.HasFlag(ShopTools.BandSaw) && bevel <= MostTilt && thick <= shop.Saw.BandHeight ? CutWay.BandSaw
            : CutWay.HandSaw, false);
    }

    /// <summary>Against the fence, as it lies: both angles can be set, and the blade goes through.</summary>
    private static bool IsPlain(CutStock stock, EndCut cut, ShopParameters shop)
    {
        var (mitre, bevel) = (Math.Abs(cut.Mitre), Math.Abs(cut.Bevel));
        return mitre - shop.MitreLimit <= Tolerances.SawStop && bevel - shop.BevelLimit <= Tolerances.SawStop
            && SawPath.Across(stock.Width, stock.Thickness, mitre, bevel)
                <= SawPath.Longest(shop.Saw, stock.Thickness, bevel) + Tolerances.RoundOff;
    }

    private static bool FitsBlock(CutStock stock, bool near, EndCut cut, double over, ShopParameters shop)
    {
        var (mitre, bevel, width, thick) = (Math.Abs(cut.Mitre), Math.Abs(cut.Bevel), stock.Width, stock.Thickness);
        var block = TaperBlock.For(width, thick, mitre, bevel, over, ThinAtBlade(near, cut), shop.Hold);
        return SawPath.OnBlock(width, thick, mitre, bevel, block) <= SawPath.Longest(shop.Saw, thick, bevel) + Tolerances.RoundOff
            && Holding.FitsBlock(stock, near, cut, block, shop.Hold);
    }

    /// <summary>
    /// Whether the piece lies to the right of the blade, where the block is thin. A cut without a bevel is made from either side,
    /// and so from that one; else the signs of mitre and bevel, which turn with the piece, decide.
    /// </summary>
    public static bool ThinAtBlade(bool near, EndCut cut) =>
        Math.Abs(cut.Bevel) <= Tolerances.SameCut || near == ((cut.Mitre < 0) == (cut.Bevel < 0));
}
