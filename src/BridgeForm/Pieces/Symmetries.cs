using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>Rotations that turn a stick of stock onto itself, as axes without an origin.</summary>
internal static class Symmetries
{
    private static readonly Placement[] Oblong =
    [
        Turn(Vector3d.UnitX, Vector3d.UnitY),
        Turn(Vector3d.UnitX, -Vector3d.UnitY),
        Turn(-Vector3d.UnitX, Vector3d.UnitY),
        Turn(-Vector3d.UnitX, -Vector3d.UnitY),
    ];

    private static readonly Placement[] Square =
    [
        .. Oblong,
        Turn(Vector3d.UnitX, Vector3d.UnitZ),
        Turn(Vector3d.UnitX, -Vector3d.UnitZ),
        Turn(-Vector3d.UnitX, Vector3d.UnitZ),
        Turn(-Vector3d.UnitX, -Vector3d.UnitZ),
    ];

    /// <summary>Half turns about the three axes; quarter turns about the length as well when the section is square within a tolerance in metres.</summary>
    public static ReadOnlySpan<Placement> Of(CutStock stock, double tolerance) =>
        Math.Abs(stock.Width - stock.Thickness) <= tolerance ? Square : Oblong;

    /// <summary>The mirror image of a point, in the plane of length and width.</summary>
    public static Vector3d Mirrored(Vector3d p) => p with { Z = -p.Z };

    private static Placement Turn(Vector3d x, Vector3d y) => new(Vector3d.Zero, x, y, x.Cross(y));
}
