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
