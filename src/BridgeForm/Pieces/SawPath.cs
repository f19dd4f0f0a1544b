using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Pieces;

/// <summary>
/// How far a blade has to run through wood, and how far it does. Metres and radians; angles without their signs.
/// </summary>
public static class SawPath
{
    /// <summary>
    /// The longest line that the saw cuts in wood of a thickness with its blade leaning; 0 where it does not go through. On rails and
    /// coming down in one place alike it is the crosscut. The blade comes from above: with its axis at its lowest, a above the table, its
    /// chord at height t is 2·√(R² − (a − t)²), shortest at the table, t = 0, where the crosscut is measured. All of the wood above lies
    /// within it, up to what goes under the blade's collar, which is the saw's height.
    /// </summary>
    public static double Longest(SawParameters saw, double thickness, double bevel) =>
        thickness / Elementary.Cos(bevel) > saw.Height + Tolerances.RoundOff ? 0 : saw.Crosscut;

    /// <summary>
    /// The line across a board against the fence: W / cos m, and T·tan b·tan m more, by which the lines on its two faces are
    /// shifted along the blade.
    /// </summary>
    public static double Across(double width, double thickness, double mitre, double bevel) =>
        (width / Elementary.Cos(mitre)) + (thickness * Elementary.Tan(bevel) * Elementary.Tan(mitre));

    /// <summary>
    /// The same of a board on a taper block, from the fence on: how far the block holds its edge off where the blade meets it comes
    /// before.
    /// </summary>
    /// <param name="width">Width of the board.</param>
    /// <param name="thickness">Its thickness.</param>
    /// <param name="mitre">The cut's mitre, that of saw and block together.</param>
    /// <param name="bevel">Tilt of the blade.</param>
    /// <param name="block">The block.</param>
    public static double OnBlock(double width, double thickness, double mitre, double bevel, TaperBlock block) =>
        (block.OffAtBlade / Elementary.Cos(mitre - block.Wedge)) + Across(width, thickness, mitre, bevel);
}
