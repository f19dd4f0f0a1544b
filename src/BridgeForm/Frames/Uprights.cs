using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Posts and braces of a frame. X from foot to head, Z towards B.</summary>
internal static class Uprights
{
    /// <summary>The post of one side.</summary>
    public static Member Post(BridgeLayout layout, int frame, Side side)
    {
        var frames = layout.Parameters.Frames;
        var post = frames.Post;
        var pose = layout.Poses[frame];
        var top = layout.Levels[frame].Top;
        var sign = side.Sign();
        var axis = pose.Direction(0, Elementary.Cos(post.Lean), sign * Elementary.Sin(post.Lean));
        var placement = Placement.FromLengthAndThickness(
            pose.At(0, top, sign * AxisFoot(post)), axis, pose.Along);
        var head = Plane.Through(
            placement.ToWorld(new Vector3d(post.Length, 0, 0)),
            pose.Direction(-layout.Caps.TopSlopes[frame], 1, 0));
        var shape = Cut(post.Section, placement, Foot(pose, top), head);
        shape = Drilled(shape, frames, Role.Post, side);
        return new Member(
            new PartId(pose.Name, Role.Post, side), layout.Parameters.StockOf(Role.Post), post.Section.Name, placement, shape);
    }

    /// <summary>The brace of one side.</summary>
    public static Member Brace(BridgeLayout layout, int frame, Side side)
    {
        var frames = layout.Parameters.Frames;
        var brace = frames.Brace;
        var pose = layout.Poses[frame];
        var top = layout.Levels[frame].Top;
        var sign = side.Sign();
        var axis = pose.Direction(0, Elementary.Cos(brace.Lean), -sign * Elementary.Sin(brace.Lean));
        var foot = brace.Foot - (brace.Section.Width / 2 / Elementary.Cos(brace.Lean));
        var placement = Placement.FromLengthAndThickness(pose.At(0, top, sign * foot), axis, pose.Along);
        var shape = Cut(brace.Section, placement, Foot(pose, top), PostOuterFace(frames.Post, pose, top, sign));
        shape = Drilled(shape, frames, Role.Brace, side);
        return new Member(
            new PartId(pose.Name, Role.Brace, side), layout.Parameters.StockOf(Role.Brace), brace.Section.Name, placement, shape);
    }

    /// <summary>z of a post's axis at the base's top, metres from the middle.</summary>
    public static double AxisFoot(PostParameters post) =>
        post.Foot + (post.Section.Width / 2 / Elementary.Cos(post.Lean));

    /// <summary>z of a post's axis at its head, metres from the middle.</summary>
    public static double AxisHead(PostParameters post) =>
        AxisFoot(post) + (post.Length * Elementary.Sin(post.Lean));

    private static Plane Foot(FramePose pose, double top) => Plane.Through(pose.At(0, top, 0), -pose.Up);

    /// <summary>Seen from the brace: the normal points from the brace into the post.</summary>
    private static Plane PostOuterFace(PostParameters post, FramePose pose, double top, double sign) => Plane.Through(
        pose.At(0, top, sign * (post.Foot + (post.Section.Width / Elementary.Cos(post.Lean)))),
        pose.Direction(0, Elementary.Sin(post.Lean), -sign * Elementary.Cos(post.Lean)));

    private static CutStock Cut(Materials.Section section, Placement placement, Plane near, Plane far) =>
        new(section.Width, section.Thickness, placement.ToLocal(near), placement.ToLocal(far));

    // Holes of the user's own come last.
    private static CutStock Drilled(CutStock shape, FrameParameters frames, Role role, Side side) =>
        frames.Holes.IsEmpty && frames.Joints.IsEmpty
            ? shape
            : shape with
            {
                Holes = [.. JointHoles.OfStrut(frames, role, side), .. UserHoles.OfStrut(frames, role, shape.LengthRange(), side)],
            };
}
