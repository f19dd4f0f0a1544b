using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Tapered pieces on the posts' heads, under that one of a frame's two caps which its neighbour lifts off them. X from left to right,
/// Z the upper face.
/// </summary>
internal static class Shims
{
    /// <summary>The shim of one side of a frame; none where there is none (<see cref="BridgeLayout.Steps"/>).</summary>
    public static IEnumerable<Member> Lay(BridgeLayout layout, int frame, Side side)
    {
        if (!layout.Steps.Shims.IsEmpty && layout.Steps.Shims[frame] && Gap(layout, frame) is { Highest: > Tolerances.ShortestEdge } gap)
        {
            yield return Cut(layout, frame, side, gap);
        }
    }

    /// <summary>Whether a cap stands off the whole of the half head that it should lie on by more than the seating tolerance.</summary>
    public static bool StandsClear(BridgeLayout layout, int frame) => Gap(layout, frame) is { Least: > Tolerances.Seating };

    /// <summary>
    /// The gap under the cap that stands further off; null at end frames, whose heads are cut along their one cap. Heights square to the
    /// head, metres, at its middle and at its edge.
    /// </summary>
    private readonly record struct HeadGap(double Middle, double AtEdge, double Edge, Vector3d Up, Vector3d Along, int Bay)
    {
        public double Least => Math.Min(Middle, AtEdge);

        public double Highest => Math.Max(Middle, AtEdge);
    }

    private static HeadGap? Gap(BridgeLayout layout, int frame)
    {
        var pose = layout.Poses[frame];
        if (pose.IsEnd)
        {
            return null;
        }

        var slope = layout.Caps.TopSlopes[frame];
        var (up, along) = (pose.Direction(-slope, 1, 0).Normalized(), pose.Direction(1, slope, 0).Normalized());
        var half = layout.Parameters.Frames.Post.Section.Thickness / 2;
        var (before, after) = (Under(frame, -half), Under(frame + 1, half));
        return before.Least > after.Least ? before : after;

        HeadGap Under(int bay, double edge) => new(Height(bay, 0), Height(bay, edge), edge, up, along, bay);

        // From the head's top to the cap's underside.
        double Height(int bay, double at)
        {
            var from = HeadMiddle(layout, frame) + (at * along);
            var cap = Plane.Through(layout.Caps.Points[frame], Vector3d.UnitZ.Cross(layout.Caps.Direction(bay)));
            return cap.LineParameter(from, up);
        }
    }

    /// <summary>The middle of a frame's heads, in the plane z = 0.</summary>
    private static Vector3d HeadMiddle(BridgeLayout layout, int frame)
    {
        var post = layout.Parameters.Frames.Post;
        return layout.Poses[frame].At(0, layout.Levels[frame].Top + (post.Length * Elementary.Cos(post.Lean)), 0);
    }

    private static Member Cut(BridgeLayout layout, int frame, Side side, HeadGap gap)
    {
        var post = layout.Parameters.Frames.Post;
        var (high, low) = gap.AtEdge > gap.Middle ? (gap.Edge, 0.0) : (0.0, gap.Edge);
        var section = PackerStock.Section(layout.Parameters, gap.Highest, Math.Abs(gap.Edge));

        // The stick's factory edge lies along the high side; the taper and the low side are ripped.
        var way = Math.Sign(high - low);
        var head = HeadMiddle(layout, frame) + new Vector3d(0, 0, side.Sign() * Uprights.AxisHead(post));
        var placement = Placement.FromLengthAndThickness(
            head + ((high - (way * section.Width / 2)) * gap.Along) + (section.Thickness / 2 * gap.Up), Vector3d.UnitZ, gap.Up);
        var cap = Plane.Through(layout.Caps.Points[frame], Vector3d.UnitZ.Cross(layout.Caps.Direction(gap.Bay)));
        var lowSide = Plane.Through(head + (low * gap.Along), -way * gap.Along);
        var half = post.Section.Width / 2 / Elementary.Cos(post.Lean);
        return new Member(
            new PartId(layout.Poses[frame].Name, Role.Shim, side),
            layout.Parameters.StockOf(Role.Shim),
            section.Name,
            placement,
            new CutStock(section.Width, section.Thickness, new Plane(-Vector3d.UnitX, half), new Plane(Vector3d.UnitX, half))
            {
                Rips = [placement.ToLocal(cap), placement.ToLocal(lowSide)],
            });
    }
}
