using System.Globalization;

namespace BridgeForm.Solids;

/// <summary>
/// An oriented plane: the points p with <c>Normal · p = Offset</c>. The normal has length one; its side is "above".
/// </summary>
/// <param name="Normal">Unit normal.</param>
/// <param name="Offset">Distance of the plane from the origin along the normal, metres.</param>
public readonly record struct Plane(Vector3d Normal, double Offset)
{
    /// <summary>The same points seen from the other side. (A method: as a property it would print without end.)</summary>
    public Plane Flipped() => new(-Normal, -Offset);

    /// <summary>The plane through a point; <paramref name="normal"/> need not have length one.</summary>
    public static Plane Through(Vector3d point, Vector3d normal)
    {
        var unit = normal.Normalized();
        return new Plane(unit, unit.Dot(point));
    }

    /// <summary>Distance of a point above the plane in metres; negative below.</summary>
    public double SignedDistance(Vector3d point) => Normal.Dot(point) - Offset;

    /// <summary>Where the line <c>point + s · direction</c> meets the plane; infinite or NaN when parallel.</summary>
    public double LineParameter(Vector3d point, Vector3d direction) =>
        -SignedDistance(point) / Normal.Dot(direction);

    /// <summary>The plane moved along its normal by a distance in metres.</summary>
    public Plane Shifted(double distance) => this with { Offset = Offset + distance };

    /// <summary>
    /// Normal and offset; the text that records make would print <see cref="Flipped"/> of <see cref="Flipped"/> without end.
    /// </summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"({Normal.X}, {Normal.Y}, {Normal.Z}) at {Offset}");
}
