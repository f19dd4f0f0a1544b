using System.Collections.Immutable;
using System.Globalization;
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
    public static byte[] Of(ReadOnlyMemory<byte> written, PdfAbout about)
    {
        var parts = PdfParts.Of(written);
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
        Line(file, FormattableString.Invariant($"trailer\n<</ID[<{id}><{id}>]/Info {parts.Info} 0 R/Root {parts.Root} 0 R/Size {objects.Length + 1}>>"));
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
