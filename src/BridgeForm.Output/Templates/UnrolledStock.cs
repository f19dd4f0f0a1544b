using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>
/// The four long faces of a stick laid out side by side as paper round it lies when taken off: u runs round the section, x
/// along the piece. u = 0 is the edge at −Y of the face at +Z; then follow the faces at +Z, +Y, −Z and −Y, each seen from
/// outside, and over again. Metres.
/// </summary>
/// <param name="Width">Size of the stick along Y.</param>
/// <param name="Thickness">Size along Z.</param>
public readonly record struct UnrolledStock(double Width, double Thickness)
{
    /// <summary>Once round the section.</summary>
    public double Girth => 2 * (Width + Thickness);

    /// <summary>u of the edge where a face begins, in the first round.</summary>
    public double Begin(StockFace face) => face switch
    {
        StockFace.PlusZ => 0,
        StockFace.PlusY => Width,
        StockFace.MinusZ => Width + Thickness,
        StockFace.MinusY => (2 * Width) + Thickness,
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "No such face."),
    };

    /// <summary>Size of a face across the stick.</summary>
    public double Across(StockFace face) => face is StockFace.PlusZ or StockFace.MinusZ ? Width : Thickness;

    /// <summary>u of a place on a face; <paramref name="cross"/> is +Y on a Z face and +Z on a Y face, from the middle.</summary>
    public double At(StockFace face, double cross) =>
        Begin(face) + (Across(face) / 2) + (face is StockFace.PlusZ or StockFace.MinusY ? cross : -cross);

    /// <summary>Where a point of the paper lies on the stick, in the piece's axes.</summary>
    public Vector3d Fold(double u, double x)
    {
        var around = u - (Girth * Math.Floor(u / Girth));
        var (halfY, halfZ) = (Width / 2, Thickness / 2);
        return around < Begin(StockFace.PlusY) ? new Vector3d(x, around - halfY, halfZ)
            : around < Begin(StockFace.MinusZ) ? new Vector3d(x, halfY, halfZ - (around - Begin(StockFace.PlusY)))
            : around < Begin(StockFace.MinusY) ? new Vector3d(x, halfY - (around - Begin(StockFace.MinusZ)), -halfZ)
            : new Vector3d(x, -halfY, -halfZ + (around - Begin(StockFace.MinusY)));
    }

    /// <summary>x of a plane on the paper at u; a straight line on each face.</summary>
    public double CutAt(Plane plane, double u)
    {
        var edge = Fold(u, 0);
        return plane.XAt(edge.Y, edge.Z);
    }
}
