using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>A straight stretch of rope as a cylinder, its ends square to it.</summary>
internal static class RopeBody
{
    /// <summary>
    /// The cylinder about the line from one point to another; its wall is two halves, so that no face closes on itself. The line
    /// must not run along Z.
    /// </summary>
    public static ExactBody Build(Vector3d from, Vector3d to, double radius)
    {
        var axis = (to - from).Normalized();
        var across = axis.Cross(Vector3d.UnitZ).Normalized();
        var wall = new Surface.Round(from, axis, across, radius, IsHole: false);
        Ellipse Rim(Vector3d center) => new(center, axis, across, radius, radius);
        Vector3d[] corners = [from + (radius * across), from - (radius * across), to + (radius * across), to - (radius * across)];

        // Rims run counter-clockwise about the axis, seams along it.
        ExactEdge[] edges =
        [
            new(0, 1, Rim(from)), new(1, 0, Rim(from)), new(2, 3, Rim(to)), new(3, 2, Rim(to)), new(0, 2, null), new(1, 3, null),
        ];
        ExactFace[] faces =
        [
            new(wall, [[new(0, true), new(5, true), new(2, false), new(4, false)]]),
            new(wall, [[new(1, true), new(4, true), new(3, false), new(5, false)]]),
            new(new Surface.Flat(from, -axis), [[new(1, false), new(0, false)]]),
            new(new Surface.Flat(to, axis), [[new(2, true), new(3, true)]]),
        ];
        return new ExactBody([.. corners], [.. edges], [.. faces]);
    }
}
