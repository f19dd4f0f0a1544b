using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Output.Router;

/// <summary><c>router/MARK.dxf</c>: nothing but what is cut of one piece, at true size.</summary>
public static class RouterSheet
{
    /// <summary>The sheet of a piece; null when a router cannot make it in one set-up.</summary>
    public static Sheet? Draw(Piece piece, ShopParameters shop)
    {
        var setup = Routing.Setup(piece.Shape, shop.RouterBit);
        if (!setup.Obstacles.IsEmpty)
        {
            return null;
        }

        var cuts = RouterCuts.Draw(piece, setup, shop.RouterBit);
        return new Sheet(piece.Mark, RouterLayers.Gather(cuts), cuts);
    }
}

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

/// <summary>Layers of router files: one for each operation and depth, so that a machine's programme picks them by name.</summary>
internal static class RouterLayers
{
    /// <summary>Cut through, outside the line.</summary>
    public const string Outline = "OUTLINE";

    private const string Channel = "CHANNEL-";
    private const string Drill = "DRILL-";
    private const string Tab = "TAB-";

    /// <summary>Cleared inside the line to a depth in metres.</summary>
    public static string ChannelOf(double depth) => Channel + Depth(depth);

    /// <summary>Drilled to a depth in metres; null for through.</summary>
    public static string DrillOf(double? depth) => Drill + (depth is { } deep ? Depth(deep) : "THROUGH");

    /// <summary>Where an outline is left standing so high, metres.</summary>
    public static string TabOf(double height) => Tab + Depth(height);

    /// <summary>The layers that entities lie on: the outline, then the others by name.</summary>
    public static ImmutableArray<SheetLayer> Gather(IEnumerable<SheetEntity> entities) =>
    [
        new SheetLayer(Outline, LayerPurpose.Cut),
        .. entities.Select(e => e.Layer)
            .Where(name => name is not Outline)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(name => new SheetLayer(name, Purpose(name))),
    ];

    private static LayerPurpose Purpose(string name) =>
        name.StartsWith(Drill, StringComparison.Ordinal) ? LayerPurpose.Drill
        : name.StartsWith(Tab, StringComparison.Ordinal) ? LayerPurpose.Layout
        : LayerPurpose.Pocket;

    private static string Depth(double metres) => Numbers.Fixed(metres * 1000, 1) + "MM";
}
