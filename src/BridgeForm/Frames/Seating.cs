namespace BridgeForm.Frames;

/// <summary>How closely parts of wood seat on each other.</summary>
public static class Seating
{
    /// <summary>
    /// Parts that bear on each other at a small angle may press into each other, and rope may enter wood at a channel's mouth,
    /// by as much, metres. Wood gives way and a plane takes off as much (the project's own definition).
    /// </summary>
    public const double Tolerance = 1.5e-3;
}
