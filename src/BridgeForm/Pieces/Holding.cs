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

/// <summary>
/// What holds a piece at the saw: a clamp no nearer to the blade's path, square to it, than <see cref="HoldParameters.Clear"/>.
/// </summary>
public static class Holding
{
    /// <summary>
    /// How a piece is held. What is cut on a block is long enough to be held there by itself (<see cref="FitsBlock"/>), and never in a
    /// blank with another: beside the blade the blank would have to pass through the fence.
    /// </summary>
    public static HoldWay Of(Piece piece, ShopParameters shop) =>
        IsFirst(piece, near: true) || IsFirst(piece, near: false) ? HoldWay.CutFirst
        : piece.Near.Wedge <= 0 && piece.Far.Wedge <= 0 && IsShort(piece, shop.Hold) ? HoldWay.Pair
        : HoldWay.Clamp;

    /// <summary>
    /// A piece that no clamp holds by itself: shorter than may be sawn so, or without wood far enough from the path of the mitre saw.
    /// What other tools cut is cut while it is part of a longer stick.
    /// </summary>
    public static bool IsShort(Piece piece, HoldParameters hold) =>
        IsShort(piece.Shape, hold)
        || (piece.Near.Way == CutWay.Saw && IsTight(piece.Shape.For(piece.Near), piece.Near.SawMitre, hold))
        || (piece.Far.Way == CutWay.Saw && IsTight(piece.Shape.For(piece.Far), piece.Far.SawMitre, hold));

    /// <summary>Shorter than may be sawn by itself.</summary>
    public static bool IsShort(CutStock stock, HoldParameters hold)
    {
        var (near, far) = stock.LengthRange();
        return far - near < hold.Shortest;
    }

    /// <summary>Wood of a blank that is clamped between two pieces, or beyond one, until they are parted. Metres.</summary>
    public static double Between(Piece piece, HoldParameters hold) =>
        Math.Max(Room(piece.Shape, piece.Near, hold), Room(piece.Shape, piece.Far, hold));

    /// <summary>A blank for two pieces, with what a clamp needs between them. Metres.</summary>
    public static double Pair(Piece piece, HoldParameters hold) => (2 * piece.BlankLength) + Between(piece, hold);

    /// <summary>From the edge at the block to the middle of the clamp, across the work. Metres.</summary>
    public static double ClampAcross(double width, HoldParameters hold) => Math.Min(hold.Clamp, width) / 2;

    /// <summary>
    /// From where the blade meets the work's edge at the fence or the block, on the upper side, to the middle of the clamp, along that
    /// edge; to the right of the blade positive. The clamp's near side is <see cref="HoldParameters.Clear"/> square from the blade's path
    /// on either side of the work: (clear + clamp / 2 + T·tan b) / cos m along the work from the path, which lies over · tan m along where
    /// the clamp is so far over.
    /// </summary>
    public static double ClampAlong(
        double width, double thickness, double mitre, double bevel, bool onBlock, bool right, HoldParameters hold)
    {
        var over = onBlock ? ClampAcross(width, hold) : width / 2;
        var off = (hold.Clear + (hold.Clamp / 2) + (thickness * Elementary.Tan(bevel))) / Elementary.Cos(mitre);
        return (over * Elementary.Tan(mitre)) + (right ? off : -off);
    }

    /// <summary>
    /// Whether a piece can be held and cut on a block: a clamp on its half at the block finds wood far enough from the blade's path, it
    /// is no shorter than what may be sawn by itself, the block is no thicker than stands on the table, and neither piece nor point
    /// runs into the fence. The block's slope carried on meets the fence at OffAtBlade / sin(wedge) along the work's edge: to the right of
    /// the blade the point may reach so far beyond the cut, T·tan(bevel) / cos(mitre) of it by the lean of the blade; to its left the
    /// whole piece must end before.
    /// </summary>
    /// <param name="stock">The stick.</param>
    /// <param name="near">Its near end is cut; else its far one.</param>
    /// <param name="cut">Angles of that end.</param>
    /// <param name="block">The block.</param>
    /// <param name="hold">What a clamp needs.</param>
    internal static bool FitsBlock(CutStock stock, bool near, EndCut cut, TaperBlock block, HoldParameters hold)
    {
        var thin = block.ThinAtBlade;
        var side = (near == (cut.Mitre > 0)) == thin ? 1 : -1;
        var fence = side * stock.Width / 2;
        var (first, last) = stock.LengthRange();
        var slope = block.OffAtBlade / Elementary.Sin(block.Wedge);
        var along = thin ? stock.Thickness * Elementary.Tan(Math.Abs(cut.Bevel)) / Elementary.Cos(cut.Mitre) : Along(stock, fence).Most;
        return last - first >= hold.Shortest
            && block.ThickEnd <= hold.BlockThick + Tolerances.RoundOff
            && Along(stock, fence - (side * ClampAcross(stock.Width, hold))).Least
                >= hold.Clamp / 2 + ((hold.Clear + (hold.Clamp / 2)) / Elementary.Cos(cut.Mitre)) - Tolerances.RoundOff
            && along <= slope + Tolerances.RoundOff;
    }

    private static bool IsFirst(Piece piece, bool near)
    {
        var cut = near ? piece.Near : piece.Far;
        return cut.Wedge > 0 && CutWays.ThinAtBlade(near, cut);
    }

    /// <summary>No clamp finds wood, anywhere across the piece, that is far enough from the path of its blade.</summary>
    private static bool IsTight(CutStock lying, double mitre, HoldParameters hold)
    {
        var edge = (lying.Width / 2) - ClampAcross(lying.Width, hold);
        var longest = Math.Max(Along(lying, edge).Least, Along(lying, -edge).Least);
        return longest < (hold.Clamp / 2) + ((hold.Clear + (hold.Clamp / 2)) / Elementary.Cos(mitre)) - Tolerances.RoundOff;
    }

    private static double Room(CutStock stock, EndCut cut, HoldParameters hold) => cut.Way != CutWay.Saw ? hold.Room
        : (hold.Clamp / 2) + ((hold.Clear + (hold.Clamp / 2)
            + (stock.For(cut).Thickness * Elementary.Tan(Math.Abs(cut.SawBevel)))) / Elementary.Cos(cut.SawMitre));

    /// <summary>Lengths of the stick along a line of its width, at its two wide faces.</summary>
    private static (double Least, double Most) Along(CutStock stock, double y)
    {
        double At(double z) => stock.Far.XAt(y, z) - stock.Near.XAt(y, z);
        var (low, high) = (At(-stock.Thickness / 2), At(stock.Thickness / 2));
        return (Math.Min(low, high), Math.Max(low, high));
    }
}
