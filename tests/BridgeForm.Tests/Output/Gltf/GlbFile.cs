using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text.Json;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Gltf;

/// <summary>A GLB file taken apart after the glTF 2.0 specification, §4.4, with no knowledge of the writer.</summary>
internal sealed class GlbFile
{
    private readonly byte[] binary;

    public GlbFile(byte[] bytes)
    {
        uint Word(int at) => BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(at));
        Assert.Equal("glTF"u8, bytes.AsSpan(0, 4));
        Assert.Equal(2u, Word(4));
        Assert.Equal((uint)bytes.Length, Word(8));
        var json = (int)Word(12);
        Json = JsonDocument.Parse(bytes.AsMemory(20, json)).RootElement;
        binary = bytes[(28 + json)..];
        Assert.Equal((uint)binary.Length, Word(20 + json));
    }

    public JsonElement Json { get; }

    public JsonElement[] Nodes => [.. Json.GetProperty("nodes").EnumerateArray()];

    /// <summary>Names from the root down, joined by slashes, of every node with a mesh.</summary>
    public IReadOnlyDictionary<string, JsonElement> Parts()
    {
        var parts = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
        void Walk(int index, string path)
        {
            var node = Nodes[index];
            var name = path + node.GetProperty("name").GetString();
            if (node.TryGetProperty("mesh", out _))
            {
                parts.Add(name, node);
            }

            if (node.TryGetProperty("children", out var children))
            {
                children.EnumerateArray().ToList().ForEach(c => Walk(c.GetInt32(), name + "/"));
            }
        }

        Walk(Json.GetProperty("scenes")[0].GetProperty("nodes")[0].GetInt32(), string.Empty);
        return parts;
    }

    /// <summary>Corners of a node's mesh where the node puts them: turned by its quaternion, then moved.</summary>
    public Vector3d[] WorldCorners(JsonElement node)
    {
        double[] Numbers(string name, double[] otherwise) => node.TryGetProperty(name, out var list)
            ? [.. list.EnumerateArray().Select(n => n.GetDouble())]
            : otherwise;
        var (r, t) = (Numbers("rotation", [0, 0, 0, 1]), Numbers("translation", [0, 0, 0]));
        var axis = new Vector3d(r[0], r[1], r[2]);
        var move = new Vector3d(t[0], t[1], t[2]);
        return [.. Mesh(node.GetProperty("mesh").GetInt32()).Positions.Select(p =>
        {
            var twice = 2 * axis.Cross(p);
            return p + (r[3] * twice) + axis.Cross(twice) + move;
        })];
    }

    public (Vector3d[] Positions, Vector3d[] Normals, int[] Indices) Mesh(int index)
    {
        var primitive = Json.GetProperty("meshes")[index].GetProperty("primitives")[0];
        var attributes = primitive.GetProperty("attributes");
        return (
            Vectors(attributes.GetProperty("POSITION").GetInt32()),
            Vectors(attributes.GetProperty("NORMAL").GetInt32()),
            Indices(primitive.GetProperty("indices").GetInt32()));
    }

    private Vector3d[] Vectors(int accessor) =>
        [.. MemoryMarshal.Cast<byte, float>(Bytes(accessor, 12)).ToArray().Chunk(3).Select(c => new Vector3d(c[0], c[1], c[2]))];

    private int[] Indices(int accessor) => Json.GetProperty("accessors")[accessor].GetProperty("componentType").GetInt32() == 5123
        ? [.. MemoryMarshal.Cast<byte, ushort>(Bytes(accessor, 2)).ToArray().Select(i => (int)i)]
        : MemoryMarshal.Cast<byte, int>(Bytes(accessor, 4)).ToArray();

    private Span<byte> Bytes(int index, int size)
    {
        var accessor = Json.GetProperty("accessors")[index];
        var view = Json.GetProperty("bufferViews")[accessor.GetProperty("bufferView").GetInt32()];
        var offset = view.GetProperty("byteOffset").GetInt32() + accessor.GetProperty("byteOffset").GetInt32();
        return binary.AsSpan(offset, accessor.GetProperty("count").GetInt32() * size);
    }
}
