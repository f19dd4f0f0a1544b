using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>A point on a post's inner face at t = 0, and the face's normal, out of the post.</summary>
internal readonly record struct PostFace(Vector3d Point, Vector3d Inward)
{
    public static PostFace Lay(BridgeLayout layout, int frame, Side side, double height)
    {
        var post = layout.Parameters.Frames.Post;
        var pose = layout.Poses[frame];
        var (sin, cos) = Elementary.SinCos(post.Lean);
        var sign = side.Sign();
        return new PostFace(
            pose.At(0, layout.Levels[frame].Top + (height * cos), sign * (post.Foot + (height * sin))),
            pose.Direction(0, sin, -sign * cos));
    }
}
