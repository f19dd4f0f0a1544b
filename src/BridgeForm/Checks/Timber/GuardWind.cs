using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Timber;

/// <summary>Wind across the bridge on what one post carries of its guard.</summary>
internal static class GuardWind
{
    private const double Half = 0.5;

    /// <summary>
    /// loads.wind on the solid outline of one side's guard over the longest bay (rails, cap, pickets, netting by its solidity) and of the
    /// post itself: newtons, and the height of its middle over the base's top, metres.
    /// </summary>
    public static (double Force, double Height) OnPost(BridgeLayout layout, BridgeParameters parameters)
    {
        // Rails and caps of end bays run on over the landing, where other posts are.
        var bay = Ties.FirstLargest(BaseCases.Hanging(layout), i => (layout.Poses[i].Node - layout.Poses[i - 1].Node).Length);
        var frame = Math.Max(1, bay - 1);
        var (node, foot) = (layout.Poses[bay].Node, layout.Levels[frame].Top);
        var chord = node - layout.Poses[bay - 1].Node;
        var slope = chord.Y / chord.X;
        var sides = new SideSilhouette(layout);
        var seen = Half * (sides.Posts(frame) - sides.PostsHidden(frame));
        foreach (var part in Members.InBay(layout, bay, Sides.Left))
        {
            if (RoleTable.Of(part.Role).Section == DrawingSection.Guard)
            {
                var (near, far) = part.Shape.LengthRange();
                var middle = part.Placement.ToWorld(new Vector3d((near + far) / 2, 0, 0));
                seen += Half * SideSilhouette.Of(part, parameters.Frames, Over(middle));
            }
        }

        if (parameters.Guard.Net is { } net)
        {
            var panel = NetPanel.Lay(layout, bay, Side.Left);
            var area = net.Solidity * panel.FromSide;
            seen += new SideSurface(area, area * Over(panel.Middle));
        }

        return seen.Area > Tolerances.RoundOff
            ? (parameters.Loads.Wind * seen.Area, Math.Max(0, (seen.Moment / seen.Area) - foot))
            : (0, 0);

        double Over(Vector3d point) => point.Y - node.Y - (slope * (point.X - node.X));
    }
}
