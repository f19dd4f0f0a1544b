using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Numerics;
using BridgeForm.Solids;

namespace BridgeForm.Output.Gltf;

/// <summary>Where one mesh lies in the store.</summary>
/// <param name="Name">Name of the mesh.</param>
/// <param name="Material">Index of its material.</param>
/// <param name="FirstVertex">Number of vertices before it.</param>
/// <param name="VertexCount">Number of its vertices.</param>
/// <param name="IndexOffset">Byte offset of its indices, in the store of their width.</param>
/// <param name="IndexCount">Number of its indices.</param>
/// <param name="Wide">Indices of four bytes instead of two.</param>
/// <param name="Low">Least coordinates, exactly as stored.</param>
/// <param name="High">Greatest coordinates, exactly as stored.</param>
internal sealed record StoredMesh(
    string Name,
    int Material,
    long FirstVertex,
    int VertexCount,
    long IndexOffset,
    int IndexCount,
    bool Wide,
    Vector3 Low,
    Vector3 High);

/// <summary>Collects meshes as the little-endian bytes of a glTF buffer: positions, normals, wide indices, narrow indices.</summary>
internal sealed class MeshStore
{
    /// <summary>Bytes of one position or normal.</summary>
    public const int VertexSize = 12;

    /// <summary>
    /// Two-byte indices reach this many vertices; the highest value of all is kept free for restarts (glTF 2.0, §3.7.2.1).
    /// </summary>
    private const int NarrowLimit = ushort.MaxValue;

    private readonly List<StoredMesh> meshes = [];
    private long vertices;

    /// <summary>Meshes in the order of adding.</summary>
    public IReadOnlyList<StoredMesh> Meshes => meshes;

    /// <summary>Positions of all meshes.</summary>
    public ByteChunks Positions { get; } = new();

    /// <summary>Normals of all meshes.</summary>
    public ByteChunks Normals { get; } = new();

    /// <summary>Four-byte indices.</summary>
    public ByteChunks WideIndices { get; } = new();

    /// <summary>Two-byte indices.</summary>
    public ByteChunks NarrowIndices { get; } = new();

    /// <summary>Adds a mesh. Triangles that rounding to single precision made a line are left out; the rest stays closed.</summary>
    public void Add(string name, int material, TriangleMesh mesh)
    {
        var points = mesh.Positions.Select(Single).ToArray();
        var indices = Proper(mesh.Indices, points);
        var wide = points.Length > NarrowLimit;
        var target = wide ? WideIndices : NarrowIndices;
        meshes.Add(new StoredMesh(
            name,
            material,
            vertices,
            points.Length,
            target.Length,
            indices.Length,
            wide,
            points.Aggregate(Vector3.Min),
            points.Aggregate(Vector3.Max)));
        vertices += points.Length;
        Write(Positions, points);
        Write(Normals, mesh.Normals.Select(Single));
        Write(target, indices, wide);
    }

    /// <summary>Rounded to single precision, without negative zero.</summary>
    private static Vector3 Single(Vector3d v) => new Vector3((float)v.X, (float)v.Y, (float)v.Z) + Vector3.Zero;

    private static int[] Proper(ImmutableArray<int> indices, Vector3[] points)
    {
        var kept = new List<int>(indices.Length);
        for (var i = 0; i < indices.Length; i += 3)
        {
            var (a, b, c) = (points[indices[i]], points[indices[i + 1]], points[indices[i + 2]]);
            if (!a.Equals(b) && !b.Equals(c) && !c.Equals(a))
            {
                kept.AddRange(indices.AsSpan(i, 3));
            }
        }

        return [.. kept];
    }

    private static void Write(ByteChunks target, IEnumerable<Vector3> vectors)
    {
        foreach (var vector in vectors)
        {
            var span = target.GetSpan(VertexSize);
            BinaryPrimitives.WriteSingleLittleEndian(span, vector.X);
            BinaryPrimitives.WriteSingleLittleEndian(span[4..], vector.Y);
            BinaryPrimitives.WriteSingleLittleEndian(span[8..], vector.Z);
            target.Advance(VertexSize);
        }
    }

    private static void Write(ByteChunks target, int[] indices, bool wide)
    {
        foreach (var index in indices)
        {
            if (wide)
            {
                BinaryPrimitives.WriteInt32LittleEndian(target.GetSpan(4), index);
            }
            else
            {
                BinaryPrimitives.WriteUInt16LittleEndian(target.GetSpan(2), (ushort)index);
            }

            target.Advance(wide ? 4 : 2);
        }
    }
}
