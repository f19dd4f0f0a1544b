using System.Collections.Immutable;
using BridgeForm.Output.Gltf;

namespace BridgeForm.Output.ScaleModel;

/// <summary>Colours of what is printed: those of model.glb, and one for the ground.</summary>
internal static class PrintMaterials
{
    /// <summary>Index of the ground.</summary>
    public const int Ground = 3;

    /// <summary>All of them, by index; the first three are numbered as in <see cref="GltfMaterials"/>.</summary>
    public static ImmutableArray<GltfMaterial> All { get; } =
    [
        GltfMaterials.All[GltfMaterials.Treated],
        GltfMaterials.All[GltfMaterials.Durable],
        GltfMaterials.All[GltfMaterials.Rope],
        new("ground", 0.16, 0.2, 0.09, 0, 1),
    ];
}
