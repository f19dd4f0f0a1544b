using BridgeForm.Output.Profiles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Router;

/// <summary>Faces of a stick as views and directions.</summary>
internal static class RouterFaces
{
    /// <summary>Out of the wood.</summary>
    public static Vector3d Outward(StockFace face) => face switch
    {
        StockFace.MinusY => -Vector3d.UnitY,
        StockFace.PlusY => Vector3d.UnitY,
        StockFace.MinusZ => -Vector3d.UnitZ,
        StockFace.PlusZ => Vector3d.UnitZ,
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "No such face."),
    };

    /// <summary>The face seen from above the machine: X of the piece to the right, turned, never mirrored.</summary>
    public static PageView View(StockFace face)
    {
        var toward = Outward(face);
        return new PageView(toward.Cross(Vector3d.UnitX), toward);
    }
}
