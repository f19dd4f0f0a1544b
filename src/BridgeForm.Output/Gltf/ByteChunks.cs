using System.Buffers;

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
