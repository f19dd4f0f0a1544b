using System.Collections.Immutable;

namespace BridgeForm.Output.Drawing;

/// <summary>What lines on a layer mean; writers choose colours and pens by it.</summary>
public enum LayerPurpose
{
    /// <summary>Cut through, square to the face.</summary>
    Cut,

    /// <summary>An edge on the far side.</summary>
    FarEdge,

    /// <summary>Cut to a depth.</summary>
    Pocket,

    /// <summary>Drilled.</summary>
    Drill,

    /// <summary>Drawn on the work, not cut.</summary>
    Layout,

    /// <summary>Words.</summary>
    Note,

    /// <summary>Dimensions.</summary>
    Dimension,

    /// <summary>Where paper or work is folded or turned.</summary>
    Fold,

    /// <summary>Frames of pages and tables.</summary>
    Frame,

    /// <summary>What the eye must find first; drawn in the accent colour.</summary>
    Emphasis,
}

/// <summary>A layer.</summary>
/// <param name="Name">Upper-case ASCII name.</param>
/// <param name="Purpose">What its lines mean.</param>
public sealed record SheetLayer(string Name, LayerPurpose Purpose);

/// <summary>A drawing in the plane, at true size in metres; knows nothing of what it shows and nothing of file formats.</summary>
/// <param name="Title">One line that names it.</param>
/// <param name="Layers">Every layer its entities may lie on.</param>
/// <param name="Entities">What is drawn, in order.</param>
public sealed record Sheet(string Title, ImmutableArray<SheetLayer> Layers, ImmutableArray<SheetEntity> Entities)
{
    /// <summary>The smallest upright box around everything drawn; texts count with the largest width they may take.</summary>
    public SheetBox Extents() =>
        Entities.Aggregate(SheetBox.Empty, (box, entity) => box.Union(EntityBox.Of(entity)));
}
