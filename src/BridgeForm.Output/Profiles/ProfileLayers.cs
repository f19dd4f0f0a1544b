using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Profiles;

/// <summary>Layers of a piece's drawing.</summary>
public static class ProfileLayers
{
    /// <summary>Cut through, square to the face.</summary>
    public const string Outline = "OUTLINE";

    /// <summary>Edges on the far face where the cut is not square.</summary>
    public const string Bevel = "BEVEL";

    /// <summary>Pockets.</summary>
    public const string Channel = "CHANNEL";

    /// <summary>Holes.</summary>
    public const string Drill = "DRILL";

    /// <summary>Layout lines.</summary>
    public const string Mark = "MARK";

    /// <summary>Notes.</summary>
    public const string Text = "TEXT";

    /// <summary>Dimensions.</summary>
    public const string Dim = "DIM";

    /// <summary>All of them.</summary>
    public static ImmutableArray<SheetLayer> All { get; } =
    [
        new(Outline, LayerPurpose.Cut),
        new(Bevel, LayerPurpose.FarEdge),
        new(Channel, LayerPurpose.Pocket),
        new(Drill, LayerPurpose.Drill),
        new(Mark, LayerPurpose.Layout),
        new(Text, LayerPurpose.Note),
        new(Dim, LayerPurpose.Dimension),
    ];
}
