using System.Collections.Immutable;
using System.Runtime.InteropServices;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Six-faced bodies, built without clipping. Corner numbers are bits: 1 for high X, 2 for high Y, 4 for high Z.
/// </summary>
internal static class Hexahedron
{
    private static readonly ImmutableArray<ImmutableArray<int>> s_near = [[0, 4, 6, 2]];
    private static readonly ImmutableArray<ImmutableArray<int>> s_far = [[1, 3, 7, 5]];
    private static readonly ImmutableArray<ImmutableArray<int>> s_lowY = [[0, 1, 5, 4]];
    private static readonly ImmutableArray<ImmutableArray<int>> s_highY = [[2, 6, 7, 3]];
    private static readonly ImmutableArray<ImmutableArray<int>> s_lowZ = [[0, 2, 3, 1]];
    private static readonly ImmutableArray<ImmutableArray<int>> s_highZ = [[4, 5, 7, 6]];

    public static Solid Box(Vector3d min, Vector3d max, FaceOrigin origin)
    {
        if (!(min.X < max.X && min.Y < max.Y && min.Z < max.Z))
        {
            throw new ArgumentException("A box's low corner lies below its high corner on every axis.", nameof(min));
        }

        var near = new Plane(-Vector3d.UnitX, -min.X);
        var far = new Plane(Vector3d.UnitX, max.X);
        return Along(near, far, (origin, origin), min, max, (min.X, min.X, min.X, min.X), (max.X, max.X, max.X, max.X));
    }

    /// <summary>
    /// The prism of a rectangle between two end planes, or null when they cross inside it or nearly so.
    /// </summary>
    public static Solid? Prism(double width, double thickness, Plane near, Plane far)
    {
        var max = new Vector3d(0, width / 2, thickness / 2);
        var starts = Ends(near, max);
        var ends = Ends(far, max);
        var least = Math.Min(
            Math.Min(ends.LowLow - starts.LowLow, ends.HighLow - starts.HighLow),
            Math.Min(ends.LowHigh - starts.LowHigh, ends.HighHigh - starts.HighHigh));
        return least > Tolerances.Corner ? Along(near, far, (FaceOrigin.Cut, FaceOrigin.Stock), -max, max, starts, ends) : null;
    }

    /// <summary>X of the plane on the four long edges: first word for Y, second for Z.</summary>
    internal static (double LowLow, double HighLow, double LowHigh, double HighHigh) Ends(Plane plane, Vector3d half)
    {
        var (y, z) = (plane.Normal.Y * half.Y, plane.Normal.Z * half.Z);
        var x = plane.Normal.X;
        return ((plane.Offset + y + z) / x, (plane.Offset - y + z) / x, (plane.Offset + y - z) / x, (plane.Offset - y - z) / x);
    }

    private static Solid Along(
        Plane near,
        Plane far,
        (FaceOrigin Ends, FaceOrigin Long) origin,
        Vector3d min,
        Vector3d max,
        (double LowLow, double HighLow, double LowHigh, double HighHigh) start,
        (double LowLow, double HighLow, double LowHigh, double HighHigh) end)
    {
        Vector3d[] corners =
        [
            new(start.LowLow, min.Y, min.Z), new(end.LowLow, min.Y, min.Z),
            new(start.HighLow, max.Y, min.Z), new(end.HighLow, max.Y, min.Z),
            new(start.LowHigh, min.Y, max.Z), new(end.LowHigh, min.Y, max.Z),
            new(start.HighHigh, max.Y, max.Z), new(end.HighHigh, max.Y, max.Z),
        ];
        Face[] faces =
        [
            new(near, origin.Ends, s_near),
            new(far, origin.Ends, s_far),
            new(new Plane(-Vector3d.UnitY, -min.Y), origin.Long, s_lowY),
            new(new Plane(Vector3d.UnitY, max.Y), origin.Long, s_highY),
            new(new Plane(-Vector3d.UnitZ, -min.Z), origin.Long, s_lowZ),
            new(new Plane(Vector3d.UnitZ, max.Z), origin.Long, s_highZ),
        ];
        return new Solid(ImmutableCollectionsMarshal.AsImmutableArray(corners), ImmutableCollectionsMarshal.AsImmutableArray(faces));
    }
}
