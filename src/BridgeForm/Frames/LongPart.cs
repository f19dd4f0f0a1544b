using BridgeForm.Materials;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Straight parts that run along a bay: boards, stringers, rails, caps.</summary>
internal static class LongPart
{
    /// <summary>A stick with given axes, ended by two planes of the world.</summary>
    /// <param name="width">Size along Y, metres.</param>
    /// <param name="thickness">Size along Z, metres.</param>
    public static CutStock Shape(double width, double thickness, Placement placement, Plane near, Plane far) =>
        new(width, thickness, placement.ToLocal(near), placement.ToLocal(far));

    /// <summary>Size of a section along Y and Z when its wide face looks along Z.</summary>
    public static CutStock Shape(Section section, Placement placement, Plane near, Plane far) =>
        Shape(section.Width, section.Thickness, placement, near, far);

    /// <summary>
    /// Offsets of <paramref name="count"/> equal parts spread over a width, outermost flush with its edges, metres from the
    /// middle, left first; a single one in the middle.
    /// </summary>
    public static double Spread(int index, int count, double width, double part) => count == 1
        ? 0
        : (-(width - part) / 2) + (index * (width - part) / (count - 1));
}

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
