using System.Buffers.Binary;
using System.Text;

namespace BridgeForm.Output.Usd;

/// <summary>
/// A USDZ package: a zip archive of files that are stored as they are, the bytes of each beginning at a multiple of 64 (USDZ file
/// format specification, from memory). Of one file here. It says nothing of when it was made.
/// </summary>
internal static class UsdzPackage
{
    private const int Alignment = 64;
    private const int LocalHead = 30;
    private const int ExtraHead = 4;

    // An id that no program claims, for bytes that only fill up.
    private const ushort Padding = 0x1986;
    private const ushort Version = 10;

    // The first day that the format knows.
    private const ushort FirstDay = 0x21;

    /// <summary>Writes the archive; the stream stays open.</summary>
    public static void Write(Stream stream, string name, byte[] content)
    {
        var called = Encoding.ASCII.GetBytes(name);
        var filler = (Alignment - ((LocalHead + called.Length + ExtraHead) % Alignment)) % Alignment;
        var sum = Checksum(content);

        Words(stream, 0x04034B50);
        Halves(stream, Version);
        Common(stream, called, content, sum);
        Halves(stream, (ushort)(ExtraHead + filler));
        stream.Write(called);
        Halves(stream, Padding, (ushort)filler);
        stream.Write(new byte[filler]);
        stream.Write(content);

        Words(stream, 0x02014B50);
        Halves(stream, Version, Version);
        Common(stream, called, content, sum);
        Halves(stream, 0, 0, 0, 0); // extra, comment, disk, kind of text
        Words(stream, 0, 0); // rights, where the file begins
        stream.Write(called);

        Words(stream, 0x06054B50);
        Halves(stream, 0, 0, 1, 1); // disks, entries
        Words(stream, (uint)(46 + called.Length), checked((uint)(LocalHead + called.Length + ExtraHead + filler + content.Length)));
        Halves(stream, 0);
    }

    /// <summary>CRC-32 as zip archives have it: the reversed polynomial of IEEE 802.3, from memory.</summary>
    internal static uint Checksum(ReadOnlySpan<byte> bytes)
    {
        var table = new uint[256];
        for (var i = 0u; i < table.Length; i++)
        {
            table[i] = i;
            for (var bit = 0; bit < 8; bit++)
            {
                table[i] = (table[i] & 1) == 0 ? table[i] >> 1 : (table[i] >> 1) ^ 0xEDB88320;
            }
        }

        var sum = uint.MaxValue;
        foreach (var value in bytes)
        {
            sum = table[(sum ^ value) & 0xFF] ^ (sum >> 8);
        }

        return ~sum;
    }

    private static void Common(Stream stream, byte[] name, byte[] content, uint sum)
    {
        Halves(stream, 0, 0, 0, FirstDay); // flags, stored, time, day
        Words(stream, sum, checked((uint)content.Length), checked((uint)content.Length));
        Halves(stream, (ushort)name.Length);
    }

    private static void Words(Stream stream, params ReadOnlySpan<uint> words)
    {
        Span<byte> bytes = stackalloc byte[sizeof(uint)];
        foreach (var word in words)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(bytes, word);
            stream.Write(bytes);
        }
    }

    private static void Halves(Stream stream, params ReadOnlySpan<ushort> halves)
    {
        Span<byte> bytes = stackalloc byte[sizeof(ushort)];
        foreach (var half in halves)
        {
            BinaryPrimitives.WriteUInt16LittleEndian(bytes, half);
            stream.Write(bytes);
        }
    }
}
