namespace BridgeForm.Solids;

/// <summary>A point or direction in space, in metres (or unitless for directions). Right-handed axes.</summary>
public readonly record struct Vector3d(double X, double Y, double Z)
{
    /// <summary>The origin, or no direction at all.</summary>
    public static Vector3d Zero => default;

    /// <summary>Unit vector along X.</summary>
    public static Vector3d UnitX => new(1, 0, 0);

    /// <summary>Unit vector along Y.</summary>
    public static Vector3d UnitY => new(0, 1, 0);

    /// <summary>Unit vector along Z.</summary>
    public static Vector3d UnitZ => new(0, 0, 1);

    /// <summary>Euclidean length.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>Sum.</summary>
    public static Vector3d operator +(Vector3d a, Vector3d b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vector3d operator -(Vector3d a, Vector3d b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The opposite direction.</summary>
    public static Vector3d operator -(Vector3d a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Scaled by a number.</summary>
    public static Vector3d operator *(double k, Vector3d a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>Scaled by a number.</summary>
    public static Vector3d operator *(Vector3d a, double k) => k * a;

    /// <summary>Divided by a number.</summary>
    public static Vector3d operator /(Vector3d a, double k) => new(a.X / k, a.Y / k, a.Z / k);

    /// <summary>Scalar product.</summary>
    public double Dot(Vector3d other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product, right-handed.</summary>
    public Vector3d Cross(Vector3d other) => new(
        (Y * other.Z) - (Z * other.Y),
        (Z * other.X) - (X * other.Z),
        (X * other.Y) - (Y * other.X));

    /// <summary>Same direction, length one. The zero vector has none and gives NaN.</summary>
    public Vector3d Normalized() => this / Length;
}
