using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>The planes that end the parts of a bay, in the world; normals point out of the part.</summary>
internal static class EndPlanes
{
    /// <summary>
    /// End of a part at its frame nearer to A: the frame's mid-plane drawn back by <paramref name="inset"/>, or at end frame
    /// F00 the plane at t = −<paramref name="overrun"/>, where the part runs on over the frame.
    /// </summary>
    public static Plane AtStart(FramePose frame, double inset, double overrun) =>
        Plane.Through(frame.At(frame.IsEnd ? -overrun : inset, 0, 0), -frame.Along);

    /// <summary>End of a part at its frame nearer to B; as <see cref="AtStart"/>, mirrored.</summary>
    public static Plane AtFinish(FramePose frame, double inset, double overrun) =>
        Plane.Through(frame.At(frame.IsEnd ? overrun : -inset, 0, 0), frame.Along);
}
