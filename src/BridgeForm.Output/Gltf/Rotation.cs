using BridgeForm.Solids;

namespace BridgeForm.Output.Gltf;

/// <summary>A rotation as glTF holds it: a unit quaternion (x, y, z, w).</summary>
internal readonly record struct Rotation(double X, double Y, double Z, double W)
{
    /// <summary>
    /// The rotation that turns the world's axes into those of a placement. Of the four possible formulas the one with the
    /// largest divisor is taken (S. W. Shepperd, 1978, from memory).
    /// </summary>
    public static Rotation Of(Placement p)
    {
        var (xx, yy, zz) = (p.X.X, p.Y.Y, p.Z.Z);
        if (xx + yy + zz > 0)
        {
            var s = 2 * Math.Sqrt(1 + xx + yy + zz);
            return new((p.Y.Z - p.Z.Y) / s, (p.Z.X - p.X.Z) / s, (p.X.Y - p.Y.X) / s, s / 4);
        }

        if (xx > yy && xx > zz)
        {
            var s = 2 * Math.Sqrt(1 + xx - yy - zz);
            return new(s / 4, (p.X.Y + p.Y.X) / s, (p.Z.X + p.X.Z) / s, (p.Y.Z - p.Z.Y) / s);
        }

        if (yy > zz)
        {
            var s = 2 * Math.Sqrt(1 + yy - xx - zz);
            return new((p.X.Y + p.Y.X) / s, s / 4, (p.Y.Z + p.Z.Y) / s, (p.Z.X - p.X.Z) / s);
        }

        var t = 2 * Math.Sqrt(1 + zz - xx - yy);
        return new((p.Z.X + p.X.Z) / t, (p.Y.Z + p.Z.Y) / t, t / 4, (p.X.Y - p.Y.X) / t);
    }
}
