namespace BridgeForm.Solids;

/// <summary>
/// Where a body's own axes lie in the world: origin in metres and three right-handed, orthonormal axes
/// (<c>Z = X × Y</c>). Maps the body's coordinates to the world.
/// </summary>
public readonly record struct Placement(Vector3d Origin, Vector3d X, Vector3d Y, Vector3d Z)
{
    /// <summary>The body's axes are the world's.</summary>
    public static Placement Identity => new(Vector3d.Zero, Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ);

    /// <summary>
    /// Axes from the length direction and the thickness direction, both of length one and square to each other; Y = Z × X.
    /// </summary>
    public static Placement FromLengthAndThickness(Vector3d origin, Vector3d x, Vector3d z) =>
        new(origin, x, z.Cross(x), z);

    /// <summary>A point of the body, in the world.</summary>
    public Vector3d ToWorld(Vector3d local) => Origin + DirectionToWorld(local);

    /// <summary>A direction of the body, in the world.</summary>
    public Vector3d DirectionToWorld(Vector3d local) => (local.X * X) + (local.Y * Y) + (local.Z * Z);

    /// <summary>A point of the world, in the body's axes.</summary>
    public Vector3d ToLocal(Vector3d world) => DirectionToLocal(world - Origin);

    /// <summary>A direction of the world, in the body's axes.</summary>
    public Vector3d DirectionToLocal(Vector3d world) => new(X.Dot(world), Y.Dot(world), Z.Dot(world));

    /// <summary>A plane of the world, in the body's axes.</summary>
    public Plane ToLocal(Plane world) =>
        new(DirectionToLocal(world.Normal), world.Offset - world.Normal.Dot(Origin));

    /// <summary>A plane of the body, in the world.</summary>
    public Plane ToWorld(Plane local)
    {
        var normal = DirectionToWorld(local.Normal);
        return new Plane(normal, local.Offset + normal.Dot(Origin));
    }

    /// <summary>The placement of a body that is itself placed in this body's axes.</summary>
    public Placement Then(Placement inner) => new(
        ToWorld(inner.Origin),
        DirectionToWorld(inner.X),
        DirectionToWorld(inner.Y),
        DirectionToWorld(inner.Z));
}
