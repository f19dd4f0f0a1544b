using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>End cuts as a saw sees them.</summary>
public static class SawReach
{
    // Angles are printed to 0.1°; a saw stop is no sharper than a thousandth of that, and 50° computed from a tangent must
    // still count as 50°.
    private const double AngleSlack = 1e-6;

    /// <summary>
    /// Angles of an end plane in radians, by the normal m turned so that m·X &gt; 0: parallel cuts at both ends have equal
    /// angles. A mitre beyond the saw's limit takes a wedge of the angle that is missing, with the saw at its limit.
    /// </summary>
    public static EndCut Of(Plane end, ShopParameters shop)
    {
        var m = end.Normal.X < 0 ? -end.Normal : end.Normal;
        var mitre = Math.Atan2(m.Y, m.X);
        var bevel = Math.Asin(Math.Clamp(m.Z, -1, 1));
        var edge = Math.Atan2(m.Z, m.X);
        var over = Math.Abs(mitre) - shop.MitreLimit;
        var mitreInReach = over <= AngleSlack;
        var bevelInReach = Math.Abs(bevel) - shop.BevelLimit <= AngleSlack;
        return new EndCut(mitre, bevel, edge, mitreInReach && bevelInReach, mitreInReach ? 0 : over)
        {
            NeedsTemplate = !bevelInReach,
        };
    }
}
