using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>
/// The end that touches the stop, as the piece lies: its corners along the fence from where the cut meets the edge there, on the upper
/// side, away from the blade. A stop at the fence touches the point at the fence; where the end leans out from there, its farthest point
/// lies off the fence, and no stop at the fence touches it. Metres.
/// </summary>
/// <param name="UpperAtFence">On the upper side, at the fence.</param>
/// <param name="UpperAway">On the upper side, away from it.</param>
/// <param name="LowerAtFence">On the table, at the fence.</param>
/// <param name="LowerAway">On the table, away from it.</param>
/// <param name="Width">From the fence on.</param>
internal sealed record FinishedEnd(double UpperAtFence, double UpperAway, double LowerAtFence, double LowerAway, double Width)
{
    /// <summary>From the cut to the stop.</summary>
    public double Touch => Math.Max(UpperAtFence, LowerAtFence);

    /// <summary>How far it leans out from the fence, to a metre of width; not below 0.</summary>
    public double Lean => Math.Max(0, (UpperAway - UpperAtFence) / Width);

    /// <summary>The other end of the one that is cut. A round stick touches stop and fence half way up.</summary>
    public static FinishedEnd Of(CutStock lying, PieceEnd end, bool edge1AtFence, bool faceUp)
    {
        var (plane, other) = end == PieceEnd.Near ? (lying.Near, lying.Far) : (lying.Far, lying.Near);
        var y = (edge1AtFence ? 1 : -1) * lying.Width / 2;
        var z = lying.IsRound ? 0 : (faceUp ? 1 : -1) * lying.Thickness / 2;
        var from = plane.XAt(y, z);
        double At(double across, double up) => end == PieceEnd.Near ? other.XAt(across, up) - from : from - other.XAt(across, up);
        return new FinishedEnd(At(y, z), At(-y, z), At(y, -z), At(-y, -z), lying.Width);
    }
}
