using System.Text.Json;

namespace BridgeForm.Output.Gltf;

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

    /// <summary>The materials of a wooden mesh in every variant; nothing for a rope.</summary>
    public static void Mappings(Utf8JsonWriter json, int material)
    {
        if (material == GltfMaterials.Rope)
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
