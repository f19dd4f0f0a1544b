using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>
/// How far a blade has to run through wood, and how far it does. Metres and radians; angles without their signs.
/// </summary>
public static class SawPath
{
    /// <summary>Thickness of a taper block's thin end: a feather edge would crush. Common practice, no source.</summary>
    public const double ThinEnd = 0.012;

    /// <summary>How far a taper block bears the piece along: to the clamp, and under it. An own figure.</summary>
    public const double Bearing = 0.200;

    /// <summary>Between the blade's path and the block, along the fence.</summary>
    public const double BlockClear = 0.020;

    /// <summary>
    /// The longest line that the saw cuts in wood of a thickness with its blade leaning: on rails the whole crosscut wherever the
    /// blade still goes through; else a chord of the blade, whose crosscut at the table and height above it give its circle:
    /// c(t) = 2·√((H − t)·(C² / (4H) + t)). 0 where it does not go through.
    /// </summary>
    public static double Longest(SawParameters saw, double thickness, double bevel)
    {
        var through = thickness / Elementary.Cos(bevel);
        if (through > saw.Height + Tolerances.RoundOff)
        {
            return 0;
        }

        var left = Math.Max(0, saw.Height - through);
        var chord = 2 * Math.Sqrt(left * ((saw.Crosscut * saw.Crosscut / (4 * saw.Height)) + through));
        return saw.Slides ? saw.Crosscut : Math.Min(saw.Crosscut, chord);
    }

    /// <summary>
    /// The line across a board against the fence: W / cos m, and T·tan b·tan m more, by which the lines on its two faces are
    /// shifted along the blade.
    /// </summary>
    public static double Across(double width, double thickness, double mitre, double bevel) =>
        (width / Elementary.Cos(mitre)) + (thickness * Elementary.Tan(bevel) * Elementary.Tan(mitre));

    /// <summary>
    /// The same of a board on a taper block, from the fence on: the block's thickness where the blade passes it comes before.
    /// </summary>
    /// <param name="width">Width of the board.</param>
    /// <param name="thickness">Its thickness.</param>
    /// <param name="mitre">The cut's mitre, that of saw and block together.</param>
    /// <param name="bevel">Tilt of the blade.</param>
    /// <param name="wedge">Angle of the block.</param>
    /// <param name="thinAtBlade">The block's thin end is at the blade: the piece lies to its right.</param>
    public static double OnBlock(double width, double thickness, double mitre, double bevel, double wedge, bool thinAtBlade) =>
        (BlockAtBlade(wedge, thinAtBlade) / Elementary.Cos(mitre - wedge)) + Across(width, thickness, mitre, bevel);

    /// <summary>The most that a block holds the board off the fence where the blade passes.</summary>
    public static double BlockAtBlade(double wedge, bool thinAtBlade) =>
        ThinEnd + (thinAtBlade ? 0 : (Bearing + BlockClear) * Elementary.Tan(wedge));

    /// <summary>How far the work's edge lies off the fence where the blade meets it: the block's slope carried on. Metres.</summary>
    public static double OffAtBlade(double wedge, bool thinAtBlade) => wedge <= 0 ? 0
        : thinAtBlade ? ThinEnd - (ClearOf(wedge) * Elementary.Tan(wedge)) : BlockAtBlade(wedge, thinAtBlade: false);

    /// <summary>
    /// From the blade's path to the block along the fence: a steep slope meets the fence before the blade, and then the block's thin
    /// end stands that much nearer.
    /// </summary>
    public static double ClearOf(double wedge) => Math.Min(BlockClear, ThinEnd / Elementary.Tan(wedge));

    /// <summary>A piece that no clamp holds far enough from the blade.</summary>
    public static bool IsShort(CutStock stock, HoldParameters hold)
    {
        var (near, far) = stock.LengthRange();
        return far - near < hold.Shortest || stock.EdgeLengths().Short < hold.Clear;
    }
}
