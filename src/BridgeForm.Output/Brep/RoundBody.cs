using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>What is round all along: a cylinder between two planes. Its wall is two halves, so that no face closes on itself.</summary>
internal static class RoundBody
{
    // Planes that the axis meets at a smaller slope would cut an end that is a hundred times as long as the stick is thick.
    private const double Flattest = 0.01;

    /// <summary>A round stick with plain ends; null where anything else is cut into it, or its ends meet inside of it.</summary>
    public static ExactBody? Of(CutStock stock)
    {
        var radius = stock.Width / 2;
        if (!stock.IsRound || !stock.Holes.IsEmpty || !stock.Channels.IsEmpty
            || stock.Near.Normal.X > -Flattest || stock.Far.Normal.X < Flattest)
        {
            return null;
        }

        double Longer(double y, double z) => stock.Far.XAt(y, z) - stock.Near.XAt(y, z);
        var middle = Longer(0, 0);
        var (onY, onZ) = (Longer(radius, 0) - middle, Longer(0, radius) - middle);
        return middle - Math.Sqrt((onY * onY) + (onZ * onZ)) > Tolerances.ShortestStick
            ? Between(Vector3d.Zero, Vector3d.UnitX, Vector3d.UnitY, radius, stock.Near, stock.Far)
            : null;
    }

    /// <summary>The cylinder about a line.</summary>
    /// <param name="point">A point of the line.</param>
    /// <param name="axis">Its unit direction.</param>
    /// <param name="across">Unit direction square to it, to the seam.</param>
    /// <param name="radius">Metres.</param>
    /// <param name="near">Plane of its first end; its normal looks back along the line.</param>
    /// <param name="far">Plane of its last end; its normal looks along the line.</param>
    public static ExactBody Between(Vector3d point, Vector3d axis, Vector3d across, double radius, Plane near, Plane far)
    {
        Vector3d On(Plane plane, double side)
        {
            var start = point + (side * radius * across);
            return start + (plane.LineParameter(start, axis) * axis);
        }

        Ellipse Rim(Plane plane)
        {
            var slope = plane.Normal.Dot(axis);
            var normal = slope < 0 ? -plane.Normal : plane.Normal;
            var along = axis - (Math.Abs(slope) * normal);
            var center = On(plane, 0);
            return along.Length < Tolerances.Parallel
                ? new Ellipse(center, axis, across, radius, radius)
                : new Ellipse(center, normal, along.Normalized(), radius / Math.Abs(slope), radius);
        }

        var wall = new Surface.Round(point, axis, across, radius, IsHole: false);
        var (first, last) = (Rim(near), Rim(far));

        // Rims run counter-clockwise about the axis, seams along it.
        ExactEdge[] edges =
        [
            new(0, 1, first), new(1, 0, first), new(2, 3, last), new(3, 2, last), new(0, 2, null), new(1, 3, null),
        ];
        ExactFace[] faces =
        [
            new(wall, [[new(0, true), new(5, true), new(2, false), new(4, false)]]),
            new(wall, [[new(1, true), new(4, true), new(3, false), new(5, false)]]),
            new(new Surface.Flat(first.Center, near.Normal), [[new(1, false), new(0, false)]]),
            new(new Surface.Flat(last.Center, far.Normal), [[new(2, true), new(3, true)]]),
        ];
        return new ExactBody([On(near, 1), On(near, -1), On(far, 1), On(far, -1)], [.. edges], [.. faces]);
    }
}
