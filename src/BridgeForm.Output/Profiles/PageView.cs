using BridgeForm.Output.Drawing;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>A face of a stick laid in the page: X of the piece runs to the right, and the reader looks at the face from outside.</summary>
/// <param name="Up">Direction of the piece that points up the page.</param>
/// <param name="Toward">Direction of the piece that points at the reader, X × Up.</param>
internal readonly record struct PageView(Vector3d Up, Vector3d Toward)
{
    /// <summary>The wide face at the high end of Z.</summary>
    public static PageView Wide => new(Vector3d.UnitY, Vector3d.UnitZ);

    /// <summary>The narrow face at the low end of Y.</summary>
    public static PageView NarrowLow => new(Vector3d.UnitZ, -Vector3d.UnitY);

    /// <summary>The narrow face at the high end of Y.</summary>
    public static PageView NarrowHigh => new(-Vector3d.UnitZ, Vector3d.UnitY);

    /// <summary>Where a point of the piece falls on the page.</summary>
    public SheetPoint Project(Vector3d point) => new(point.X, Up.Dot(point));
}
