using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Dxf;

/// <summary>Colour numbers of the standard drawing palette.</summary>
internal static class DxfColours
{
    /// <summary>White on a dark page, black on a light one.</summary>
    public const int White = 7;

    /// <summary>Colour of a layer by what its lines mean: what is cut stands out.</summary>
    public static int Of(LayerPurpose purpose) => purpose switch
    {
        LayerPurpose.Cut => White,
        LayerPurpose.FarEdge => 6,
        LayerPurpose.Pocket => 5,
        LayerPurpose.Drill => 1,
        LayerPurpose.Layout => 3,
        LayerPurpose.Note => 8,
        LayerPurpose.Dimension => 4,
        _ => throw new ArgumentOutOfRangeException(nameof(purpose), purpose, "No such purpose."),
    };
}
