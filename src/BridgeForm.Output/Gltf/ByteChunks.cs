using System.Buffers;
using System.Collections.Immutable;

namespace BridgeForm.Output.Gltf;

/// <summary>Grows by adding blocks, so that what is already written is never copied.</summary>
internal sealed class ByteChunks : IBufferWriter<byte>
{
    private const int BlockSize = 1 << 16;

    private readonly List<(byte[] Bytes, int Length)> full = [];
    private byte[] block = new byte[BlockSize];
    private int used;

    /// <summary>Bytes written so far.</summary>
    public long Length { get; private set; }

    /// <inheritdoc/>
    public void Advance(int count)
    {
        used += count;
        Length += count;
    }

    /// <inheritdoc/>
    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        Reserve(sizeHint);
        return block.AsMemory(used);
    }

    /// <inheritdoc/>
    public Span<byte> GetSpan(int sizeHint = 0)
    {
        Reserve(sizeHint);
        return block.AsSpan(used);
    }

    /// <summary>Adds a byte until the length is a multiple of four.</summary>
    public void PadToFour(byte filler)
    {
        while (Length % 4 != 0)
        {
            GetSpan(1)[0] = filler;
            Advance(1);
        }
    }

    /// <summary>Writes everything to a stream.</summary>
    public void CopyTo(Stream stream)
    {
        foreach (var (bytes, length) in full)
        {
            stream.Write(bytes, 0, length);
        }

        stream.Write(block, 0, used);
    }

    private void Reserve(int sizeHint)
    {
        if (block.Length - used >= Math.Max(sizeHint, 1))
        {
            return;
        }

        full.Add((block, used));
        block = new byte[Math.Max(BlockSize, sizeHint)];
        used = 0;
    }
}

/// <summary>
/// Order of the parts of the buffer; parts without bytes have no view. Two-byte indices come last, so that all else is aligned
/// to four.
/// </summary>
/// <param name="Parts">Bytes of each buffer view, and whether they are vertices.</param>
/// <param name="Positions">Index of the view of positions.</param>
/// <param name="Normals">Index of the view of normals.</param>
/// <param name="WideIndices">Index of the view of four-byte indices, when there are any.</param>
/// <param name="NarrowIndices">Index of the view of two-byte indices, when there are any.</param>
internal sealed record BufferLayout(
    ImmutableArray<(ByteChunks Bytes, bool IsVertices)> Parts, int Positions, int Normals, int WideIndices, int NarrowIndices)
{
    /// <summary>The layout of a store.</summary>
    public static BufferLayout Lay(MeshStore store)
    {
        var wide = store.WideIndices.Length > 0;
        var all = ImmutableArray.Create(
            (store.Positions, true), (store.Normals, true), (store.WideIndices, false), (store.NarrowIndices, false));
        return new BufferLayout([.. all.Where(p => p.Item1.Length > 0)], 0, 1, 2, wide ? 3 : 2);
    }
}
