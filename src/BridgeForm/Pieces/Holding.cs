using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>How a piece is held while its ends are sawn.</summary>
public enum HoldWay
{
    /// <summary>By a clamp, cut from a stick of any length.</summary>
    Clamp,

    /// <summary>By a clamp, cut square to exactly its length first: on a block a longer stick would run into the fence.</summary>
    CutFirst,

    /// <summary>Too short for a clamp: two from one blank that is clamped between them, each parted to a line.</summary>
    Pair,
}

/// <summary>What holds a piece at the saw.</summary>
public static class Holding
{
    /// <summary>
    /// How a piece is held. What is cut on a block is long enough to be held there by itself (<see cref="FitsBlock"/>), and never in a
    /// blank with another: beside the blade the blank would have to pass through the fence.
    /// </summary>
    public static HoldWay Of(Piece piece, ShopParameters shop) =>
        IsFirst(piece, near: true) || IsFirst(piece, near: false) ? HoldWay.CutFirst
        : piece.Near.Wedge <= 0 && piece.Far.Wedge <= 0 && SawPath.IsShort(piece.Shape, shop.Hold) ? HoldWay.Pair
        : HoldWay.Clamp;

    /// <summary>A blank for two pieces: their lengths, and what a clamp needs between them until they are parted. Metres.</summary>
    public static double Pair(double blank, HoldParameters hold) => (2 * blank) + hold.Room;

    /// <summary>From the edge at the block to the middle of the clamp, across the work. Metres.</summary>
    public static double ClampAcross(double width, HoldParameters hold) => Math.Min(hold.Clamp, width) / 2;

    /// <summary>
    /// Whether a piece can be held and cut on a block: a clamp on its half at the block finds wood far enough from the blade's path, it
    /// is no shorter than what may be sawn by itself, and neither it nor its point runs into the fence. The block's slope carried on meets
    /// the fence at OffAtBlade / sin(wedge) along the work's edge: to the right of the blade the point may reach so far beyond the cut,
    /// T·tan(bevel) / cos(mitre) of it by the lean of the blade; to its left the whole piece must end before.
    /// </summary>
    /// <param name="stock">The stick.</param>
    /// <param name="near">Its near end is cut; else its far one.</param>
    /// <param name="cut">Angles of that end.</param>
    /// <param name="wedge">Angle of the block, radians.</param>
    /// <param name="hold">What a clamp needs.</param>
    internal static bool FitsBlock(CutStock stock, bool near, EndCut cut, double wedge, HoldParameters hold)
    {
        var thin = CutWays.ThinAtBlade(near, cut);
        var side = (near == (cut.Mitre > 0)) == thin ? 1 : -1;
        var fence = side * stock.Width / 2;
        var (first, last) = stock.LengthRange();
        var slope = SawPath.OffAtBlade(wedge, thin) / Elementary.Sin(wedge);
        var along = thin ? stock.Thickness * Elementary.Tan(Math.Abs(cut.Bevel)) / Elementary.Cos(cut.Mitre) : Along(stock, fence).Most;
        return last - first >= hold.Shortest
            && Along(stock, fence - (side * ClampAcross(stock.Width, hold))).Least >= hold.Room
            && along <= slope + Tolerances.RoundOff;
    }

    private static bool IsFirst(Piece piece, bool near)
    {
        var cut = near ? piece.Near : piece.Far;
        return cut.Wedge > 0 && CutWays.ThinAtBlade(near, cut);
    }

    /// <summary>Lengths of the stick along a line of its width, at its two wide faces.</summary>
    private static (double Least, double Most) Along(CutStock stock, double y)
    {
        double At(double z) => stock.Far.XAt(y, z) - stock.Near.XAt(y, z);
        var (low, high) = (At(-stock.Thickness / 2), At(stock.Thickness / 2));
        return (Math.Min(low, high), Math.Max(low, high));
    }
}
