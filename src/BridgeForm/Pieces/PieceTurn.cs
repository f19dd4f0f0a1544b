using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>Where the face that a piece's drawing shows (its +Z) looks in one place, in the axes of its role.</summary>
public enum FaceTurn
{
    /// <summary>Where the role says: +Z.</summary>
    Same,

    /// <summary>The other way: −Z.</summary>
    Opposite,

    /// <summary>A quarter turn, towards the role's +Y; square sections only.</summary>
    PlusY,

    /// <summary>A quarter turn, towards the role's −Y; square sections only.</summary>
    MinusY,
}

/// <summary>
/// How a piece lies in one place, against the axes of its role (docs/bridge.md). One that agrees with its part as it is lies
/// as the role says; one that agrees only after a rotation is turned or rolled over.
/// </summary>
/// <param name="EndForEnd">The piece's near end lies where the role has its far end.</param>
/// <param name="Face">Where the face that the drawing shows looks.</param>
public readonly record struct PieceTurn(bool EndForEnd, FaceTurn Face)
{
    /// <summary>Near end and face as the role has them.</summary>
    public static PieceTurn None => default;

    /// <summary>Turned: end for end, whatever its face does.</summary>
    public bool IsTurned => EndForEnd;

    /// <summary>Rolled over: its ends lie as the role says, its drawn face looks another way.</summary>
    public bool IsRolled => !EndForEnd && Face != FaceTurn.Same;

    /// <summary>From the directions of a piece's X and Z in its part's own axes.</summary>
    internal static PieceTurn Of(Vector3d x, Vector3d z) => new(
        x.X < 0,
        Math.Abs(z.Z) > Math.Abs(z.Y)
            ? z.Z > 0 ? FaceTurn.Same : FaceTurn.Opposite
            : z.Y > 0 ? FaceTurn.PlusY : FaceTurn.MinusY);
}

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

    /// <summary>
    /// Half turns about the three axes; quarter turns about the length as well when the section is square within a tolerance in
    /// metres.
    /// </summary>
    public static ReadOnlySpan<Placement> List(CutStock stock, double tolerance) =>
        Math.Abs(stock.Width - stock.Thickness) <= tolerance ? Square : Oblong;

    /// <summary>The mirror image of a point, in the plane of length and width.</summary>
    public static Vector3d Mirrored(Vector3d p) => p with { Z = -p.Z };

    private static Placement Turn(Vector3d x, Vector3d y) => new(Vector3d.Zero, x, y, x.Cross(y));
}
