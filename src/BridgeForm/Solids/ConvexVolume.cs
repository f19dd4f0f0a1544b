using System.Runtime.InteropServices;

namespace BridgeForm.Solids;

/// <summary>Volume of what lies below several planes at once, without building it.</summary>
internal static class ConvexVolume
{
    // Normals whose sine is below this are one direction: far below any bevel, far above round-off.
    private const double SameDirection = 1e-9;

    // Asked first, since it is cheap: its sine is a thousand times that.
    private const double NearlySame = 1 - 1e-12;

    /// <summary>
    /// Volume in m³; 0 where nothing lies below them all. By the divergence theorem: a third of each face's area times the
    /// distance of its plane; a face is a large square on its plane, clipped by all others.
    /// </summary>
    /// <param name="planes">Normals point out; what they enclose must be bounded.</param>
    /// <param name="inside">A point near it, from which distances are measured.</param>
    /// <param name="reach">No point of it is further than this from there, metres.</param>
    public static double Find(List<Plane> planes, Vector3d inside, double reach)
    {
        var all = CollectionsMarshal.AsSpan(planes);
        var (face, spare) = (new Vector3d[all.Length + 4], new Vector3d[all.Length + 4]);
        var six = 0.0;
        for (var i = 0; i < all.Length; i++)
        {
            var count = Square(all[i], inside, reach, face);
            for (var j = 0; j < all.Length && count > 0; j++)
            {
                if (j == i)
                {
                    continue;
                }

                if (all[i].Normal.Dot(all[j].Normal) > NearlySame && all[i].Normal.Cross(all[j].Normal).Length < SameDirection)
                {
                    // Of parallel planes the lower one has the face; of two that are one, the first.
                    var lower = all[j].Offset - all[i].Offset;
                    count = lower < 0 || (lower <= 0 && j < i) ? 0 : count;
                    continue;
                }

                count = Clip(face.AsSpan(0, count), all[j], spare);
                (face, spare) = (spare, face);
            }

            if (count > 2)
            {
                six += all[i].Normal.Dot(TwiceArea(face.AsSpan(0, count))) * -all[i].SignedDistance(inside);
            }
        }

        // Distances of planes below the point are negative: what they take is taken off again.
        return Math.Max(0, six / 6);
    }

    private static int Square(Plane plane, Vector3d inside, double reach, Span<Vector3d> to)
    {
        var middle = inside - (plane.SignedDistance(inside) * plane.Normal);
        var across = plane.Normal.Cross(Math.Abs(plane.Normal.X) < 0.7 ? Vector3d.UnitX : Vector3d.UnitY).Normalized() * (2 * reach);
        var up = plane.Normal.Cross(across);
        (to[0], to[1], to[2], to[3]) = (middle - across - up, middle + across - up, middle + across + up, middle - across + up);
        return 4;
    }

    // Keeps what lies below; a polygon gains at most one corner.
    private static int Clip(ReadOnlySpan<Vector3d> face, Plane by, Span<Vector3d> to)
    {
        var count = 0;
        var from = face[^1];
        var before = by.SignedDistance(from);
        foreach (var corner in face)
        {
            var now = by.SignedDistance(corner);
            if ((before < 0 && now > 0) || (before > 0 && now < 0))
            {
                to[count++] = from + (before / (before - now) * (corner - from));
            }

            if (now <= 0)
            {
                to[count++] = corner;
            }

            (from, before) = (corner, now);
        }

        return count;
    }

    private static Vector3d TwiceArea(ReadOnlySpan<Vector3d> face)
    {
        var sum = Vector3d.Zero;
        for (var k = 2; k < face.Length; k++)
        {
            sum += (face[k - 1] - face[0]).Cross(face[k] - face[0]);
        }

        return sum;
    }
}
