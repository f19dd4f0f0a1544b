using System.Collections.Immutable;
using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Output.Gltf;

/// <summary>A surface without texture: base colour in linear light, how metallic and how rough, each 0 to 1.</summary>
internal sealed record GltfMaterial(string Name, double Red, double Green, double Blue, double Metallic, double Roughness);

/// <summary>The three surfaces of a bridge. Colours chosen by eye, no source.</summary>
internal static class GltfMaterials
{
    /// <summary>Index of preservative-treated wood, weathered.</summary>
    public const int Treated = 0;

    /// <summary>Index of naturally durable wood, red-brown.</summary>
    public const int Durable = 1;

    /// <summary>Index of galvanised rope.</summary>
    public const int Rope = 2;

    /// <summary>All of them, by index.</summary>
    public static ImmutableArray<GltfMaterial> All { get; } =
    [
        new("treated wood, weathered", 0.36, 0.33, 0.22, 0, 0.9),
        new("naturally durable wood", 0.38, 0.16, 0.075, 0, 0.75),
        new("galvanised rope", 0.42, 0.44, 0.46, 0.85, 0.45),
    ];

    /// <summary>Index of the material of a piece.</summary>
    public static int Of(Piece piece, BridgeParameters parameters) =>
        parameters.StockNamed(piece.Stock).Treated ? Treated : Durable;
}
