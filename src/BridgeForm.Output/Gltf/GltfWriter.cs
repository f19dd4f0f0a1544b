using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Solids;

namespace BridgeForm.Output.Gltf;

/// <summary>
/// Writes the bridge as binary glTF 2.0 (Khronos specification, §4.4): metres, Y up, occurrences of one piece share one
/// mesh. The JSON is written straight from the model, without a document in memory, so that time and memory grow with
/// the number of parts and no faster.
/// </summary>
public static class GltfWriter
{
    private const uint Magic = 0x46546C67;
    private const uint Version = 2;
    private const uint JsonChunk = 0x4E4F534A;
    private const uint BinaryChunk = 0x004E4942;
    private const int HeaderBytes = 12;
    private const int ChunkHeaderBytes = 8;

    /// <summary>Writes the file; the stream stays open. Same model, same bytes.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="triangulate">Triangles of a solid, closed and outward.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(BridgeModel model, Func<Solid, TriangleMesh> triangulate, Stream stream)
    {
        var store = Meshes(model, triangulate);
        var text = Json(model, store);
        text.PadToFour((byte)' ');
        store.NarrowIndices.PadToFour(0);
        var parts = BufferLayout.Lay(store).Parts;
        var length = parts.Sum(p => p.Bytes.Length);

        var total = HeaderBytes + ChunkHeaderBytes + text.Length + (length > 0 ? ChunkHeaderBytes + length : 0);
        Words(stream, Magic, Version, checked((uint)total), checked((uint)text.Length), JsonChunk);
        text.CopyTo(stream);
        if (length == 0)
        {
            return;
        }

        Words(stream, checked((uint)length), BinaryChunk);
        foreach (var (bytes, _) in parts)
        {
            bytes.CopyTo(stream);
        }
    }

    private static MeshStore Meshes(BridgeModel model, Func<Solid, TriangleMesh> triangulate)
    {
        var store = new MeshStore();
        foreach (var piece in model.Pieces)
        {
            store.Add(piece.Mark, GltfMaterials.Of(piece, model.Parameters), triangulate(piece.Solid));
        }

        foreach (var rope in model.RopeLines)
        {
            store.Add("rope-" + rope.Name, GltfMaterials.Rope, RopeTube.Build(rope));
        }

        foreach (var part in model.Steel())
        {
            store.Add(part.Name, GltfMaterials.Rope, Joined([.. part.Bodies.Select(b => triangulate(b.ToSolid().OrNull!))]));
        }

        foreach (var landing in model.Landings())
        {
            store.Add(landing.Id, GltfMaterials.Treated, triangulate(landing.Body.ToSolid().OrNull!));
        }

        foreach (var net in model.Nets())
        {
            store.Add(net.Id, GltfMaterials.Netting, triangulate(net.Body.ToSolid().OrNull!));
        }

        return store;
    }

    /// <summary>Several closed meshes as one.</summary>
    private static TriangleMesh Joined(ImmutableArray<TriangleMesh> meshes)
    {
        var starts = meshes.Select((_, i) => meshes.Take(i).Sum(m => m.Positions.Length)).ToList();
        return new TriangleMesh(
            [.. meshes.SelectMany(m => m.Positions)],
            [.. meshes.SelectMany(m => m.Normals)],
            [.. meshes.SelectMany((m, i) => m.Indices.Select(index => index + starts[i]))]);
    }

    private static ByteChunks Json(BridgeModel model, MeshStore store)
    {
        var text = new ByteChunks();
        using var json = new Utf8JsonWriter(text, GltfJson.Options);
        json.WriteStartObject();
        GltfJson.Asset(json);
        SceneCamera.Write(json);
        SceneNodes.Write(json, model);
        if (store.Meshes.Count > 0)
        {
            GltfVariants.Names(json);
            GltfJson.Materials(json);
            GltfJson.Meshes(json, store);
            GltfJson.Buffers(json, store);
        }

        json.WriteEndObject();
        json.Flush();
        return text;
    }

    private static void Words(Stream stream, params ReadOnlySpan<uint> words)
    {
        Span<byte> bytes = stackalloc byte[4];
        foreach (var word in words)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(bytes, word);
            stream.Write(bytes);
        }
    }
}
