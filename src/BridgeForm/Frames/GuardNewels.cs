using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Newels: posts on the landings in line with the end frames', whose inner faces they carry on where these reach the landing's level.
/// X from foot to head, Z towards B.
/// </summary>
internal static class GuardNewels
{
    /// <summary>The newel of one side beyond an end frame; none elsewhere, and where the file asks for none.</summary>
    public static IEnumerable<Member> Lay(BridgeLayout layout, int frame, Side side)
    {
        var pose = layout.Poses[frame];
        if (layout.Parameters.Guard.Newels is not { } newels || !pose.IsEnd || !newels.StandAt(frame > 0))
        {
            yield break;
        }

        var (sin, cos) = Elementary.SinCos(newels.Lean);
        var sign = side.Sign();
        var foot = LandingPlace.Level(layout, frame);
        var axis = new Vector3d(0, cos, sign * sin);
        var placement = Placement.FromLengthAndThickness(
            new Vector3d(X(layout, frame, newels), foot, sign * (InnerFoot(layout, frame) + (newels.Section.Width / 2 / cos))),
            axis,
            Vector3d.UnitX);
        yield return new Member(
            new PartId(pose.Name, Role.Newel, side),
            layout.Parameters.StockOf(Role.Newel),
            newels.Section.Name,
            placement,
            LongPart.Shape(
                newels.Section,
                placement,
                Plane.Through(placement.Origin, -Vector3d.UnitY),
                Plane.Through(new Vector3d(0, Top(layout, frame, newels), 0), Vector3d.UnitY)));
    }

    /// <summary>y of a newel's top, metres.</summary>
    public static double Top(BridgeLayout layout, int frame, NewelParameters newels) =>
        newels.Height is { } height ? LandingPlace.Level(layout, frame) + height : CapTop(layout, frame);

    /// <summary>y of the cap's top where it ends beyond an end frame, metres.</summary>
    public static double CapTop(BridgeLayout layout, int frame)
    {
        var along = layout.Caps.Direction(Math.Max(1, frame));
        var top = layout.Caps.Points[frame] + (layout.Parameters.Guard.Cap.Thickness * Vector3d.UnitZ.Cross(along));
        var half = layout.Parameters.Frames.Post.Section.Thickness / 2;
        var end = Plane.Through(layout.Poses[frame].At(LandingPlace.Outward(frame) * half, 0, 0), layout.Poses[frame].Along);
        return (top + (end.LineParameter(top, along) * along)).Y;
    }

    // x of the middle of a newel's thickness.
    private static double X(BridgeLayout layout, int frame, NewelParameters newels) => layout.Poses[frame].Node.X
        + (LandingPlace.Outward(frame)
            * ((layout.Parameters.Frames.Post.Section.Thickness / 2) + newels.Gap + (newels.Section.Thickness / 2)));

    // From the middle to where the line of the posts' inner faces meets the landing's level.
    private static double InnerFoot(BridgeLayout layout, int frame)
    {
        var post = layout.Parameters.Frames.Post;
        var over = LandingPlace.Level(layout, frame) - layout.Poses[frame].Node.Y - layout.Levels[frame].Top;
        return post.Foot + (over * Elementary.Tan(post.Lean));
    }
}
