using System.Security.Cryptography;
using System.Text;

namespace BridgeForm.Output.Pdf;

/// <summary>
/// The PDF library writes the clock and random names into every file: two dates twice, two identifiers of the metadata, the
/// file identifier of the trailer and the tags of font subsets. All have fixed lengths, so they are overwritten in place: dates
/// with a fixed one, the rest with names made from a digest of everything else.
/// </summary>
internal static class StableBytes
{
    private const string FixedDate = "20000101000000+00'00'";
    private const string FixedXmpDate = "2000-01-01T00:00:00+00:00";
    private const int TagLength = 6;

    /// <summary>Overwrites what would differ from run to run.</summary>
    /// <exception cref="InvalidOperationException">The library has changed its habits.</exception>
    public static void Settle(Span<byte> file)
    {
        foreach (var anchor in (string[])["/CreationDate(D:", "/ModDate(D:"])
        {
            Overwrite(file, anchor, FixedDate);
        }

        foreach (var anchor in (string[])["<xmp:CreateDate>", "<xmp:ModifyDate>"])
        {
            Overwrite(file, anchor, FixedXmpDate);
        }

        var fonts = NumberFonts(file);
        var blank = new string('0', 32);
        var id = Overwrite(file, "/ID[<", $"{blank}><{blank}>]");
        var document = Overwrite(file, "DocumentID>uuid:", Uuid(blank));
        var instance = Overwrite(file, "InstanceID>uuid:", Uuid(blank));
        if (Math.Min(id, Math.Min(document, instance)) == 0)
        {
            throw new InvalidOperationException("The PDF library no longer writes the identifiers that it used to.");
        }

        var digest = Convert.ToHexString(SHA256.HashData(file));
        Overwrite(file, "/ID[<", $"{digest[..32]}><{digest[..32]}>]");
        Overwrite(file, "DocumentID>uuid:", Uuid(digest[..32]));
        Overwrite(file, "InstanceID>uuid:", Uuid(digest[32..]));
        foreach (var (at, number) in fonts)
        {
            Encoding.ASCII.GetBytes(Tag(digest, number), file[at..]);
        }
    }

    /// <summary>Writes a text of the same length over what follows each place where the anchor stands.</summary>
    /// <returns>How many places.</returns>
    private static int Overwrite(Span<byte> file, string anchor, string text)
    {
        var places = Places(file, anchor);
        foreach (var place in places)
        {
            Encoding.ASCII.GetBytes(text, file[place..]);
        }

        return places.Count;
    }

    /// <summary>Blanks every font tag and numbers the fonts in order of appearance.</summary>
    private static List<(int At, int Number)> NumberFonts(Span<byte> file)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var places = new List<(int At, int Number)>();
        foreach (var at in Places(file, "/FontName/").Concat(Places(file, "/BaseFont/")).Order())
        {
            var tag = Encoding.ASCII.GetString(file.Slice(at, TagLength));
            if (file[at + TagLength] == '+')
            {
                numbers.TryAdd(tag, numbers.Count);
                places.Add((at, numbers[tag]));
            }
        }

        foreach (var (at, number) in places)
        {
            Encoding.ASCII.GetBytes(Tag(new string('0', TagLength), number), file[at..]);
        }

        return places;
    }

    /// <summary>Five letters from the digest and one for the number of the font, which keeps the fonts of a file apart.</summary>
    private static string Tag(string digest, int number) =>
        string.Concat(digest[..(TagLength - 1)].Select(c => (char)('A' + Convert.ToInt32(c.ToString(), 16)))) + (char)('A' + number);

    private static string Uuid(string hex) => $"{hex[..8]}-{hex[8..12]}-{hex[12..16]}-{hex[16..20]}-{hex[20..32]}".ToLowerInvariant();

    private static List<int> Places(ReadOnlySpan<byte> file, string anchor)
    {
        var places = new List<int>();
        var sought = Encoding.ASCII.GetBytes(anchor);
        for (var from = 0; file[from..].IndexOf(sought) is >= 0 and var found; from += found + sought.Length)
        {
            places.Add(from + found + sought.Length);
        }

        return places;
    }
}
