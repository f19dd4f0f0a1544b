using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Pdf;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Output.Pdf;

/// <summary>What a strict reader asks of a file, whatever the title says; read here with no knowledge of the writer.</summary>
public sealed partial class PdfStructureTests
{
    public static TheoryData<string> Titles =>
    [
        "A book",
        "Fern & Moss",
        "</dc:title>]]><?x?> \"'<!--",
        "A <xmp:CreateDate> B",
        "<xmp:ModifyDate>2031-02-03T04:05:06+00:00 DocumentID>uuid:0 InstanceID>uuid:0",
        "/CreationDate(D:20310203040506+00'00') /ModDate(D:2) /ID[<00><00>] /FontName/ABCDEF+x /BaseFont/ABCDEF+x",
        ")>>\nendobj".Replace('\n', ' ') + " 7 0 obj <</Length 4/Filter/FlateDecode>> stream xx endstream \\",
        "((\\",
        "startxref 12 %%EOF trailer <</Root 1 0 R>> xref",
        "Überm Bach · ½ 橋 🌉",
        "e\u0301 \u200D",
    ];

    [Theory]
    [MemberData(nameof(Titles))]
    public void The_title_is_the_users_own_in_both_descriptions(string title)
    {
        var bytes = PdfFile.Bytes(Book(title));
        var xmp = XDocument.Parse(Packet(bytes));
        XNamespace rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#", dc = "http://purl.org/dc/elements/1.1/";
        Assert.Equal(title, xmp.Descendants(dc + "title").Single().Descendants(rdf + "li").Single().Value);
        Assert.Equal(Caution.Text, xmp.Descendants(dc + "description").Single().Value.Trim());
        Assert.Equal(title, InfoTitle(bytes));
        Assert.Equal(bytes, PdfFile.Bytes(Book(title)));
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void Every_object_is_where_the_table_says_and_every_stream_as_long_as_it_says(string title)
    {
        var bytes = PdfFile.Bytes(Book(title));
        var text = Encoding.Latin1.GetString(bytes);
        var table = int.Parse(
            text.AsSpan(text.LastIndexOf("startxref\n", StringComparison.Ordinal) + 10).TrimEnd("\n%EOF"), CultureInfo.InvariantCulture);
        Assert.Equal("xref\n0 ", text.Substring(table, 7));
        var rows = Row().Matches(text[table..]).ToList();
        Assert.Equal(
            rows.Count + 1, int.Parse(text.AsSpan(table + 7, text.IndexOf('\n', table + 7) - table - 7), CultureInfo.InvariantCulture));
        for (var n = 1; n <= rows.Count; n++)
        {
            var at = int.Parse(rows[n - 1].Groups["at"].ValueSpan, CultureInfo.InvariantCulture);
            Assert.StartsWith(
                FormattableString.Invariant($"{n} 0 obj\n<<"), text[at..Math.Min(text.Length, at + 20)], StringComparison.Ordinal);
        }

        Assert.NotEmpty(Streams(bytes));
    }

    // ISO 32000-1, 7.4.4: the filter's data are those of RFC 1950, which end with the checksum of what was packed.
    [Fact]
    public void Every_packed_stream_ends_with_its_checksum()
    {
        var streams =
            Streams(PdfFile.Bytes(Book("A book"))).Where(s => s.Dictionary.Contains("/FlateDecode", StringComparison.Ordinal)).ToList();
        Assert.True(streams.Count >= 4); // a page, a font's file, its table of characters …
        Assert.All(streams, s =>
        {
            using var unpack = new ZLibStream(new MemoryStream(s.Data), CompressionMode.Decompress);
            using var plain = new MemoryStream();
            unpack.CopyTo(plain);
            Assert.Equal(Sums(plain.ToArray()), Convert.ToHexString(s.Data[^4..]));
        });
    }

    // RFC 1950, 2.2, word by word; the check value of "Wikipedia" is that of its page on Adler-32 (from memory).
    [Fact]
    public void The_checksum_is_that_of_its_standard()
    {
        Assert.Equal(0x11E60398u, PackedStream.Adler32("Wikipedia"u8));
        Assert.Equal(1u, PackedStream.Adler32([]));
        var long_ = Enumerable.Repeat((byte)255, 20_000).ToArray();
        Assert.Equal(Sums(long_), PackedStream.Adler32(long_).ToString("X8", CultureInfo.InvariantCulture));
    }

    private static string Sums(byte[] bytes)
    {
        ulong s1 = 1, s2 = 0;
        foreach (var b in bytes)
        {
            s1 = (s1 + b) % 65521;
            s2 = (s2 + s1) % 65521;
        }

        return ((s2 * 65536) + s1).ToString("X8", CultureInfo.InvariantCulture);
    }

    private static SheetBook Book(string title) => new(title,
    [
        new SheetPage(0.2, 0.1, new Sheet("A", PageLayers.All,
        [
            new SheetText(PageLayers.Note, new SheetPoint(0.02, 0.05), 0.003, "Words"),
            new SheetText(PageLayers.Note, new SheetPoint(0.02, 0.03), 0.003, "Bold") { Bold = true },
        ])),
    ]);

    private static string Packet(byte[] bytes)
    {
        var packet = Encoding.UTF8.GetString(Streams(bytes).Single(s => s.Dictionary.Contains("/Metadata", StringComparison.Ordinal)).Data);
        return packet[packet.IndexOf("<x:", StringComparison.Ordinal)..packet.LastIndexOf("<?xpacket", StringComparison.Ordinal)];
    }

    private static string InfoTitle(byte[] bytes)
    {
        var text = Encoding.Latin1.GetString(bytes);
        var title = text[(text.IndexOf("/Title", StringComparison.Ordinal) + 6)..];
        if (title[0] is '<')
        {
            var hex = Convert.FromHexString(title[1..title.IndexOf('>', StringComparison.Ordinal)]);
            Assert.Equal([0xFE, 0xFF], hex[..2]);
            return Encoding.BigEndianUnicode.GetString(hex, 2, hex.Length - 2);
        }

        var read = new StringBuilder();
        for (var i = 1; title[i] is not ')'; i++)
        {
            Assert.NotEqual('(', title[i]);
            i += title[i] is '\\' ? 1 : 0;
            read.Append(title[i]);
        }

        return read.ToString();
    }

    private static List<(string Dictionary, byte[] Data)> Streams(byte[] bytes)
    {
        var text = Encoding.Latin1.GetString(bytes);
        var streams = new List<(string, byte[])>();
        for (var at = 0; StreamHead().Match(text, at) is { Success: true } head;)
        {
            var from = head.Index + head.Length;
            var to = from + int.Parse(Length().Match(head.Value).Groups["length"].ValueSpan, CultureInfo.InvariantCulture);
            Assert.StartsWith("\nendstream\nendobj\n", text[to..Math.Min(text.Length, to + 30)], StringComparison.Ordinal);
            streams.Add((head.Value, bytes[from..to]));
            at = to;
        }

        return streams;
    }

    [GeneratedRegex(@"^(?<at>\d{10}) 00000 n $", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Row();

    [GeneratedRegex(@"(?<=\n)\d+ 0 obj\n<<[^()>]*>>\nstream\n", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex StreamHead();

    [GeneratedRegex(@"/Length (?<length>\d+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Length();
}
