using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Output.Gltf;

/// <summary>A surface without texture: base colour in linear light, how metallic and how rough, each 0 to 1.</summary>
internal sealed record GltfMaterial(string Name, double Red, double Green, double Blue, double Metallic, double Roughness)
{
    /// <summary>How much of what is behind it is hidden, 0 to 1.</summary>
    public double Opacity { get; init; } = 1;
}

/// <summary>A way to finish the wood: one surface for treated and one for naturally durable wood.</summary>
internal sealed record GltfFinish(string Name, GltfMaterial Treated, GltfMaterial Durable);

/// <summary>The surfaces of a bridge. Colours chosen by eye, no source.</summary>
internal static class GltfMaterials
{
    /// <summary>Index of preservative-treated wood in the first finish.</summary>
    public const int Treated = 0;

    /// <summary>Index of naturally durable wood in the first finish.</summary>
    public const int Durable = 1;

    /// <summary>Index of rope and of steel, whatever their metal.</summary>
    public const int Rope = 2;

    /// <summary>Finishes to choose from; the first is what a file shows when nothing is chosen.</summary>
    public static ImmutableArray<GltfFinish> Finishes { get; } =
    [
        new("Natural, first year",
            new("treated wood", 0.36, 0.33, 0.22, 0, 0.9),
            new("naturally durable wood", 0.36, 0.17, 0.09, 0, 0.75)),
        new("Weathered to silver",
            new("treated wood, silver", 0.33, 0.325, 0.295, 0, 0.95),
            new("naturally durable wood, silver", 0.39, 0.37, 0.34, 0, 0.95)),
        new("Honey oil",
            new("treated wood, honey oil", 0.43, 0.255, 0.1, 0, 0.7),
            new("naturally durable wood, honey oil", 0.47, 0.2, 0.06, 0, 0.65)),
        new("Dark walnut stain",
            new("treated wood, walnut stain", 0.1, 0.058, 0.033, 0, 0.75),
            new("naturally durable wood, walnut stain", 0.13, 0.064, 0.033, 0, 0.7)),
        new("Sage green stain",
            new("treated wood, sage stain", 0.17, 0.2, 0.14, 0, 0.8),
            new("naturally durable wood, sage stain", 0.24, 0.28, 0.19, 0, 0.8)),
    ];

    private static readonly GltfMaterial s_rope = new("rope and steel", 0.42, 0.44, 0.46, 0.85, 0.45);

    /// <summary>All of them, by index: the first finish, the rope, the other finishes, netting.</summary>
    public static ImmutableArray<GltfMaterial> All { get; } =
    [
        Finishes[0].Treated,
        Finishes[0].Durable,
        s_rope,
        .. Finishes.Skip(1).SelectMany(f => new[] { f.Treated, f.Durable }),
        s_rope with { Name = "netting", Opacity = 0.35 },
    ];

    /// <summary>Index of netting, which is shown as a panel: what is behind it shows through.</summary>
    public static int Netting => All.Length - 1;

    /// <summary>Index of the material of a piece in the first finish.</summary>
    public static int Of(Piece piece, BridgeParameters parameters) =>
        parameters.StockNamed(piece.Stock).Treated ? Treated : Durable;

    /// <summary>Index of a wood's material in a finish.</summary>
    /// <param name="wood"><see cref="Treated"/> or <see cref="Durable"/>.</param>
    /// <param name="finish">Index of the finish.</param>
    public static int InFinish(int wood, int finish) => finish == 0 ? wood : Rope + 1 + (2 * (finish - 1)) + wood;
}

/// <summary>
/// Finishes as material variants: the extension KHR_materials_variants (Khronos, ratified), which readers that do not know
/// it leave aside.
/// </summary>
internal static class GltfVariants
{
    private const string Name = "KHR_materials_variants";

    /// <summary>Names of the variants, one a finish.</summary>
    public static void Names(Utf8JsonWriter json)
    {
        json.WriteStartArray("extensionsUsed");
        json.WriteStringValue(Name);
        json.WriteEndArray();
        json.WriteStartObject("extensions");
        json.WriteStartObject(Name);
        json.WriteStartArray("variants");
        foreach (var finish in GltfMaterials.Finishes)
        {
            json.WriteStartObject();
            json.WriteString("name", finish.Name);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>The materials of a wooden mesh in every variant; nothing for others.</summary>
    public static void Mappings(Utf8JsonWriter json, int material)
    {
        if (material is not (GltfMaterials.Treated or GltfMaterials.Durable))
        {
            return;
        }

        json.WriteStartObject("extensions");
        json.WriteStartObject(Name);
        json.WriteStartArray("mappings");
        for (var finish = 0; finish < GltfMaterials.Finishes.Length; finish++)
        {
            json.WriteStartObject();
            json.WriteNumber("material", GltfMaterials.InFinish(material, finish));
            json.WriteStartArray("variants");
            json.WriteNumberValue(finish);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
