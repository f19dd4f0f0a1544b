using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace BridgeForm.Output.Pdf;

/// <summary>
/// Puts a file of the PDF library together anew. The library writes clock and random names into every file, metadata that is
/// no XML where a title holds <c>&amp;</c>, and packed streams without their checksum (RFC 1950). Here the two descriptions of
/// the document are written afresh, with a fixed date and with names made from a digest of everything else; the random tags of
/// its fonts are numbered; and every packed stream gets its checksum.
/// </summary>
internal static class StableFile
{
    /// <summary>The file anew. Same document, same bytes.</summary>
    /// <param name="written">What the library wrote.</param>
    /// <param name="about">What the document is.</param>
    /// <exception cref="InvalidOperationException">The library has changed its habits.</exception>
    public static byte[] Write(ReadOnlyMemory<byte> written, PdfAbout about)
    {
        var parts = PdfParts.Read(written);
        var metadata = PdfParts.Reference(parts.Objects[parts.Root - 1].Text.Span, "/Metadata "u8);
        ImmutableArray<PdfObject> objects = [.. FontTags.Numbered(parts.Objects, parts.Info).Select(PackedStream.Checked)];
        var blank = Together(parts, objects, metadata, about, new string('0', 64));
        return Together(parts, objects, metadata, about, Convert.ToHexString(SHA256.HashData(blank)));
    }

    private static byte[] Together(PdfParts parts, ImmutableArray<PdfObject> objects, int metadata, PdfAbout about, string digest)
    {
        using var file = new MemoryStream();
        file.Write(parts.Head.Span);
        var places = new List<long>();
        for (var n = 1; n <= objects.Length; n++)
        {
            places.Add(file.Position);
            Line(file, FormattableString.Invariant($"{n} 0 obj"));
            Write(file, n == parts.Info ? about.Info() : n == metadata ? about.Metadata(digest) : objects[n - 1]);
            Line(file, "endobj");
        }

        var table = file.Position;
        Line(file, FormattableString.Invariant($"xref\n0 {objects.Length + 1}\n0000000000 65535 f "));
        foreach (var place in places)
        {
            Line(file, place.ToString("D10", CultureInfo.InvariantCulture) + " 00000 n ");
        }

        var id = digest[..32];
        Line(file, FormattableString.Invariant($"trailer\n<</ID[<{id}><{id}>]/Info {parts.Info} 0 R/Root {parts.Root} 0 R/Size ")
            + FormattableString.Invariant($"{objects.Length + 1}>>"));
        Line(file, FormattableString.Invariant($"startxref\n{table}\n%%EOF"));
        return file.ToArray();
    }

    private static void Write(MemoryStream file, PdfObject part)
    {
        file.Write(part.Text.Span);
        file.WriteByte((byte)'\n');
        if (part.Stream is { } stream)
        {
            Line(file, "stream");
            file.Write(stream.Span);
            Line(file, "\nendstream");
        }
    }

    private static void Line(MemoryStream file, string text) => file.Write(Encoding.ASCII.GetBytes(text + "\n"));
}

/// <summary>
/// The library tags the part of a font that a file holds with six random letters. They are replaced by a number in letters, in
/// order of appearance, which keeps the fonts of a file apart; ISO 32000-1, 9.6.4 asks for no more.
/// </summary>
internal static class FontTags
{
    private const int TagLength = 6;
    private const int Letters = 26;

    /// <summary>The objects with their fonts numbered. Only dictionaries of fonts are looked at: names of the library's own.</summary>
    public static IEnumerable<PdfObject> Numbered(ImmutableArray<PdfObject> objects, int info)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var n = 1; n <= objects.Length; n++)
        {
            var part = objects[n - 1];
            var isFont = n != info && part.Stream is null && part.Text.Span.IndexOf("/Type/Font"u8) >= 0;
            yield return isFont ? part with { Text = Numbered(part.Text, numbers) } : part;
        }
    }

    private static ReadOnlyMemory<byte> Numbered(ReadOnlyMemory<byte> text, Dictionary<string, int> numbers)
    {
        var bytes = text.ToArray();
        foreach (var key in (string[])["/FontName/", "/BaseFont/"])
        {
            var at = bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(key)) + key.Length;
            if (at >= key.Length && at + TagLength < bytes.Length && bytes[at + TagLength] == '+')
            {
                var tag = Encoding.ASCII.GetString(bytes, at, TagLength);
                numbers.TryAdd(tag, numbers.Count);
                Tag(bytes.AsSpan(at, TagLength), numbers[tag]);
            }
        }

        return bytes;
    }

    private static void Tag(Span<byte> letters, int number)
    {
        for (var i = letters.Length - 1; i >= 0; i--)
        {
            letters[i] = (byte)('A' + (number % Letters));
            number /= Letters;
        }
    }
}

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
