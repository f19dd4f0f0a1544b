using System.Text.Encodings.Web;
using System.Text.Json;

namespace BridgeForm.Output.Gltf;

/// <summary>The parts of a glTF's JSON that describe meshes, materials and the buffer.</summary>
internal static class GltfJson
{
    private const int Float = 5126;
    private const int UnsignedShort = 5123;
    private const int UnsignedInt = 5125;
    private const int ArrayBuffer = 34962;
    private const int ElementArrayBuffer = 34963;

    /// <summary>Compact, and safe inside a page's script.</summary>
    public static JsonWriterOptions Options { get; } =
        new() { Encoder = JavaScriptEncoder.Default, Indented = false, SkipValidation = true };

    /// <summary>Version and name of the writer.</summary>
    public static void Asset(Utf8JsonWriter json)
    {
        json.WriteStartObject("asset");
        json.WriteString("version", "2.0");
        json.WriteString("generator", "BridgeForm");
        json.WriteEndObject();
    }

    /// <summary>Materials.</summary>
    public static void Materials(Utf8JsonWriter json)
    {
        json.WriteStartArray("materials");
        foreach (var material in GltfMaterials.All)
        {
            json.WriteStartObject();
            json.WriteString("name", material.Name);
            json.WriteStartObject("pbrMetallicRoughness");
            Array(json, "baseColorFactor", material.Red, material.Green, material.Blue, material.Opacity);
            json.WriteNumber("metallicFactor", material.Metallic);
            json.WriteNumber("roughnessFactor", material.Roughness);
            json.WriteEndObject();
            if (material.Opacity < 1)
            {
                json.WriteString("alphaMode", "BLEND");
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Meshes: of mesh i, accessors 3i, 3i + 1 and 3i + 2 are positions, normals and indices.</summary>
    public static void Meshes(Utf8JsonWriter json, MeshStore store)
    {
        json.WriteStartArray("meshes");
        for (var i = 0; i < store.Meshes.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("name", store.Meshes[i].Name);
            json.WriteStartArray("primitives");
            json.WriteStartObject();
            json.WriteStartObject("attributes");
            json.WriteNumber("POSITION", 3 * i);
            json.WriteNumber("NORMAL", (3 * i) + 1);
            json.WriteEndObject();
            json.WriteNumber("indices", (3 * i) + 2);
            json.WriteNumber("material", store.Meshes[i].Material);
            GltfVariants.Mappings(json, store.Meshes[i].Material);
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Accessors, buffer views and the buffer.</summary>
    public static void Buffers(Utf8JsonWriter json, MeshStore store)
    {
        var views = BufferLayout.Lay(store);
        json.WriteStartArray("accessors");
        foreach (var mesh in store.Meshes)
        {
            Accessor(json, views.Positions, mesh.FirstVertex * MeshStore.VertexSize, Float, mesh.VertexCount, "VEC3", mesh);
            Accessor(json, views.Normals, mesh.FirstVertex * MeshStore.VertexSize, Float, mesh.VertexCount, "VEC3", null);
            Accessor(
                json,
                mesh.Wide ? views.WideIndices : views.NarrowIndices,
                mesh.IndexOffset,
                mesh.Wide ? UnsignedInt : UnsignedShort,
                mesh.IndexCount,
                "SCALAR",
                null);
        }

        json.WriteEndArray();
        json.WriteStartArray("bufferViews");
        var offset = 0L;
        foreach (var (bytes, isVertices) in views.Parts)
        {
            View(json, offset, bytes.Length, isVertices);
            offset += bytes.Length;
        }

        json.WriteEndArray();
        json.WriteStartArray("buffers");
        json.WriteStartObject();
        json.WriteNumber("byteLength", offset);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    /// <summary>An array of numbers.</summary>
    public static void Array(Utf8JsonWriter json, string name, params ReadOnlySpan<double> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
        {
            json.WriteNumberValue(value);
        }

        json.WriteEndArray();
    }

    /// <param name="json">Where to.</param>
    /// <param name="view">Index of the buffer view.</param>
    /// <param name="offset">Byte offset in it.</param>
    /// <param name="type">Component type.</param>
    /// <param name="count">Number of elements.</param>
    /// <param name="shape">Element type.</param>
    /// <param name="bounds">The mesh whose bounds are stated; positions need them.</param>
    private static void Accessor(
        Utf8JsonWriter json, int view, long offset, int type, int count, string shape, StoredMesh? bounds)
    {
        json.WriteStartObject();
        json.WriteNumber("bufferView", view);
        json.WriteNumber("byteOffset", offset);
        json.WriteNumber("componentType", type);
        json.WriteNumber("count", count);
        json.WriteString("type", shape);
        if (bounds is not null)
        {
            Array(json, "min", bounds.Low.X, bounds.Low.Y, bounds.Low.Z);
            Array(json, "max", bounds.High.X, bounds.High.Y, bounds.High.Z);
        }

        json.WriteEndObject();
    }

    private static void View(Utf8JsonWriter json, long offset, long length, bool isVertices)
    {
        json.WriteStartObject();
        json.WriteNumber("buffer", 0);
        json.WriteNumber("byteOffset", offset);
        json.WriteNumber("byteLength", length);
        if (isVertices)
        {
            json.WriteNumber("byteStride", MeshStore.VertexSize);
        }

        json.WriteNumber("target", isVertices ? ArrayBuffer : ElementArrayBuffer);
        json.WriteEndObject();
    }
}
