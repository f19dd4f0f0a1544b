using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace BridgeForm.Output.Pdf;

/// <summary>Gives packed streams the checksum that RFC 1950 asks for and the PDF library leaves out.</summary>
internal static class PackedStream
{
    private const int HeadLength = 2;
    private const int ChecksumLength = 4;

    // RFC 1950, 8.2: the largest prime below 65536, and the largest number of bytes before a sum of 32 bits could run over.
    private const uint Base = 65521;
    private const int Run = 5552;

    /// <summary>The object with its stream's checksum; as it is where it has no stream or an unpacked one.</summary>
    public static PdfObject Checked(PdfObject part)
    {
        if (part.Stream is not { } packed || part.Text.Span.IndexOf("/FlateDecode"u8) < 0)
        {
            return part;
        }

        var whole = new byte[packed.Length + ChecksumLength];
        packed.CopyTo(whole);
        BinaryPrimitives.WriteUInt32BigEndian(whole.AsSpan(packed.Length), Adler32(Unpacked(packed)));
        var before = "/Length " + packed.Length.ToString(CultureInfo.InvariantCulture);
        var after = "/Length " + whole.Length.ToString(CultureInfo.InvariantCulture);
        var text = Encoding.Latin1.GetString(part.Text.Span).Replace(before, after, StringComparison.Ordinal);
        return new PdfObject(Encoding.Latin1.GetBytes(text), whole);
    }

    private static byte[] Unpacked(ReadOnlyMemory<byte> packed)
    {
        using var source = new MemoryStream(packed[HeadLength..].ToArray());
        using var unpack = new DeflateStream(source, CompressionMode.Decompress);
        using var target = new MemoryStream();
        unpack.CopyTo(target);
        return target.ToArray();
    }

    /// <summary>RFC 1950, 2.2 and 8.2.</summary>
    internal static uint Adler32(ReadOnlySpan<byte> bytes)
    {
        uint a = 1, b = 0;
        for (; !bytes.IsEmpty; bytes = bytes[Math.Min(Run, bytes.Length)..])
        {
            foreach (var value in bytes[..Math.Min(Run, bytes.Length)])
            {
                a += value;
                b += a;
            }

            (a, b) = (a % Base, b % Base);
        }

        return (b << 16) | a;
    }
}
