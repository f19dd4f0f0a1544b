using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Pieces;

/// <summary>
/// The tapered block between fence and work for a mitre beyond the saw's limit: its thick end to the right, as long as bears the work
/// from the blade to the far side of the clamp. Metres and radians.
/// </summary>
/// <param name="Wedge">Its angle: what the saw's limit lacks.</param>
/// <param name="ThinAtBlade">The piece lies to the right of the blade, and the block's thin end beside it.</param>
/// <param name="ThinEnd">Thickness of the thin end.</param>
/// <param name="Length">Along the fence.</param>
/// <param name="Setting">The saw's mitre.</param>
public sealed record TaperBlock(double Wedge, bool ThinAtBlade, double ThinEnd, double Length, double Setting)
{
    // Between the block and the blade's path, along the fence. Common practice, no source.
    private const double ClearOfPath = 0.020;

    /// <summary>Thickness of the thick end.</summary>
    public double ThickEnd => ThinEnd + (Length * Elementary.Tan(Wedge));

    /// <summary>
    /// From the block to where the blade meets the work's edge, along the fence. To the right a steep slope carried on may meet the fence
    /// before that, and then the block's thin end stands that much nearer; to the left the blade's path begins at the fence, and has run
    /// OffAtBlade · tan(setting) to the right by then.
    /// </summary>
    public double Beside => ThinAtBlade
        ? Math.Min(ClearOfPath, ThinEnd / Elementary.Tan(Wedge))
        : ClearOfPath + (OffAtBlade * Elementary.Tan(Setting));

    /// <summary>
    /// How far the work's edge lies off the fence where the blade meets it: the block's slope carried on. To the left off = thick +
    /// (clear + off · tan s) · tan w, solved for off.
    /// </summary>
    public double OffAtBlade => ThinAtBlade
        ? ThinEnd - (Beside * Elementary.Tan(Wedge))
        : (ThickEnd + (ClearOfPath * Elementary.Tan(Wedge))) / (1 - (Elementary.Tan(Setting) * Elementary.Tan(Wedge)));

    /// <summary>The block for a cut.</summary>
    /// <param name="width">Width of the work.</param>
    /// <param name="thickness">Its thickness.</param>
    /// <param name="mitre">The cut's mitre, that of saw and block together, not negative.</param>
    /// <param name="bevel">Tilt of the blade, not negative.</param>
    /// <param name="wedge">Angle of the block.</param>
    /// <param name="thinAtBlade">The piece lies to the right of the blade.</param>
    /// <param name="hold">What a clamp needs.</param>
    public static TaperBlock For(
        double width, double thickness, double mitre, double bevel, double wedge, bool thinAtBlade, HoldParameters hold)
    {
        var middle = Holding.ClampAlong(width, thickness, mitre, bevel, onBlock: true, right: thinAtBlade, hold);
        var clamp = Math.Abs(middle) + (hold.Clamp / 2);
        var beside = Math.Min(ClearOfPath, hold.BlockThin / Elementary.Tan(wedge));
        var length = Rounding.Up(Math.Max(hold.Room, (clamp * Elementary.Cos(wedge)) - beside), hold.BlockStep);
        return new TaperBlock(wedge, thinAtBlade, hold.BlockThin, length, mitre - wedge);
    }
}
