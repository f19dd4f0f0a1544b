using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Netting of one side of a bay, from frame to frame: its lower edge along the middle of its rail's inner face, its upper edge where the
/// posts' inner faces meet the cap. World axes, metres.
/// </summary>
/// <param name="LowFrom">Lower corner at the frame towards A.</param>
/// <param name="LowTo">Lower corner at the frame towards B.</param>
/// <param name="HighFrom">Upper corner at the frame towards A.</param>
/// <param name="HighTo">Upper corner at the frame towards B.</param>
public readonly record struct NetPanel(Vector3d LowFrom, Vector3d LowTo, Vector3d HighFrom, Vector3d HighTo)
{
    /// <summary>The net of a side of bay 1 … n.</summary>
    public static NetPanel Lay(BridgeLayout layout, int bay, Side side)
    {
        var (from, to) = (Corners(layout, bay - 1, side), Corners(layout, bay, side));
        return new(from.Low, to.Low, from.High, to.High);
    }

    /// <summary>Half of the cross product of its diagonals: what it measures, and how it looks.</summary>
    private Vector3d Half => 0.5 * (HighTo - LowFrom).Cross(HighFrom - LowTo);

    /// <summary>m².</summary>
    public double Area => Half.Length;

    /// <summary>Seen across the bridge, m².</summary>
    public double FromSide => Math.Abs(Half.Z);

    /// <summary>Middle of its corners.</summary>
    public Vector3d Middle => 0.25 * (LowFrom + LowTo + HighFrom + HighTo);

    private static (Vector3d Low, Vector3d High) Corners(BridgeLayout layout, int frame, Side side)
    {
        var low = PostFace.Lay(layout, frame, side, GuardRails.Heights(layout, frame)[0]);
        var high = PostFace.Lay(layout, frame, side, layout.Parameters.Frames.Post.Length);
        return (low.Point + (layout.Parameters.Guard.Rail.Thickness * low.Inward), high.Point);
    }
}

/// <summary>Netting of a bridge: its mass, and thin panels that show where it hangs. It is cut from no wood and is no piece.</summary>
public static class GuardNet
{
    // Thick enough to be seen (own figure).
    private const double Shown = 0.003;

    /// <summary>Of both sides of a bay, kilograms; 0 without a net.</summary>
    public static double Mass(BridgeLayout layout, int bay) => layout.Parameters.Guard.Net is { } net
        ? net.Mass * Area(layout, bay)
        : 0;

    /// <summary>Of both sides of a bay, m²; 0 without a net.</summary>
    public static double Area(BridgeLayout layout, int bay) => layout.Parameters.Guard.Net is null
        ? 0
        : Sides.Both.Sum(side => NetPanel.Lay(layout, bay, side).Area);

    /// <summary>A panel for each side of each bay, ending in the frames' mid-planes; none without a net.</summary>
    public static IEnumerable<StandIn> Panels(BridgeLayout layout)
    {
        for (var bay = 1; layout.Parameters.Guard.Net is not null && bay <= layout.Bays; bay++)
        {
            foreach (var side in Sides.Both)
            {
                yield return Panel(layout, bay, side, NetPanel.Lay(layout, bay, side));
            }
        }
    }

    private static StandIn Panel(BridgeLayout layout, int bay, Side side, NetPanel net)
    {
        var along = (net.LowTo - net.LowFrom).Normalized();
        var across = net.HighFrom + net.HighTo - net.LowFrom - net.LowTo;
        var inward = side.Sign() * along.Cross(across).Normalized();
        inward = inward.Z * side.Sign() > 0 ? -inward : inward;
        var place = Placement.FromLengthAndThickness(net.Middle + (Shown * inward), along, inward);
        var up = Vector3d.UnitZ.Cross(layout.Caps.Direction(bay));
        var name = FramePoses.BayName(bay, layout.Bays) + "/net-" + (side == Side.Left ? "left" : "right");
        return new StandIn(
            name,
            "Netting of the guard",
            LongPart.Shape(
                across.Length,
                Shown,
                place,
                EndPlanes.AtStart(layout.Poses[bay - 1], 0, 0),
                EndPlanes.AtFinish(layout.Poses[bay], 0, 0)) with
            {
                Rips =
                [
                    place.ToLocal(Plane.Through(layout.Caps.Points[bay], up)),
                    place.ToLocal(Plane.Through(net.LowFrom, -across.Normalized())),
                ],
            },
            place);
    }
}
