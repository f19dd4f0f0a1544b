using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>
/// A stick and its cuts as they lie on the saw: flat, as they are drawn, or rolled a quarter turn on a narrow edge, where mitre and
/// bevel change places. Rolled, edge 1 takes the place of the face that is up, and the back that of edge 1.
/// </summary>
public static class Lying
{
    /// <summary>The stick as it lies: its two ends, and its section.</summary>
    public static CutStock On(this CutStock stock, bool edge) => edge
        ? new CutStock(stock.Thickness, stock.Width, Rolled(stock.Near), Rolled(stock.Far)) { IsRound = stock.IsRound }
        : stock;

    /// <summary>The stick as it lies for a cut.</summary>
    public static CutStock For(this CutStock stock, EndCut cut) => stock.On(cut.OnEdge);

    /// <summary>A cut by its plane's normal, turned so that X is positive.</summary>
    internal static EndCut Cut(Vector3d normal)
    {
        var m = normal.X < 0 ? -normal : normal;
        return new EndCut(
            Elementary.Atan2(m.Y, m.X), Elementary.Asin(Math.Clamp(m.Z, -1, 1)), Elementary.Atan2(m.Z, m.X), InReach: true, Wedge: 0);
    }

    /// <summary>The same cut of the stick on its edge, or back from there.</summary>
    internal static EndCut Rolled(EndCut cut, bool back = false)
    {
        var n = Normal(cut.Mitre, cut.Bevel);
        return Cut(back ? new Vector3d(n.X, n.Z, -n.Y) : Rolled(n));
    }

    /// <summary>Out of the wood at a far end, from mitre and bevel.</summary>
    internal static Vector3d Normal(double mitre, double bevel) => new(
        Elementary.Cos(bevel) * Elementary.Cos(mitre), Elementary.Cos(bevel) * Elementary.Sin(mitre), Elementary.Sin(bevel));

    private static Plane Rolled(Plane plane) => new(Rolled(plane.Normal), plane.Offset);

    // Axes of the rolled stick in its own: X, −Z, +Y.
    private static Vector3d Rolled(Vector3d v) => new(v.X, -v.Z, v.Y);
}
