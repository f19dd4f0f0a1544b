using System.Buffers.Text;
using System.Collections.Immutable;
using System.Text;

namespace BridgeForm.Output.Pdf;

/// <summary>
/// A file that the PDF library wrote, taken apart by its own table of places: numbered objects, and which of them describe the
/// document. Nothing is looked for in the bytes as a whole, where a user's text could look like anything.
/// </summary>
/// <param name="Head">Version and the mark of a binary file.</param>
/// <param name="Objects">Object n + 1 at index n, without its number.</param>
/// <param name="Info">Number of the document's description.</param>
/// <param name="Root">Number of the catalogue.</param>
internal sealed record PdfParts(ReadOnlyMemory<byte> Head, ImmutableArray<PdfObject> Objects, int Info, int Root)
{
    private const int RowLength = 20;
    private const string Changed = "The PDF library no longer writes its files as it used to.";

    /// <summary>Takes a file apart.</summary>
    /// <exception cref="InvalidOperationException">The library has changed its habits.</exception>
    public static PdfParts Read(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        var table = NumberAfter(bytes, bytes.LastIndexOf("startxref"u8), "startxref\n"u8);
        var count = NumberAfter(bytes, table, "xref\n0 "u8);
        var rows = table + "xref\n0 "u8.Length + bytes[(table + "xref\n0 "u8.Length)..].IndexOf((byte)'\n') + 1;
        var trailer = bytes[(rows + (count * RowLength))..];
        var places = new int[count];
        for (var n = 1; n < count; n++)
        {
            places[n] = Number(bytes[(rows + (n * RowLength))..]);
        }

        var ends = places.Append(table).Order().ToArray();
        var objects = ImmutableArray.CreateBuilder<PdfObject>(count - 1);
        for (var n = 1; n < count; n++)
        {
            var end = ends[Array.BinarySearch(ends, places[n]) + 1];
            objects.Add(PdfObject.Read(file[places[n]..end], n));
        }

        return new PdfParts(file[..ends[1]], objects.ToImmutable(), Reference(trailer, "/Info "u8), Reference(trailer, "/Root "u8));
    }

    /// <summary>The object that a key of a dictionary without texts refers to.</summary>
    public static int Reference(ReadOnlySpan<byte> dictionary, ReadOnlySpan<byte> key) =>
        NumberAfter(dictionary, dictionary.IndexOf(key), key);

    /// <summary>The defect to throw when the library's habits have changed.</summary>
    public static InvalidOperationException Unknown() => new(Changed);

    private static int NumberAfter(ReadOnlySpan<byte> bytes, int place, ReadOnlySpan<byte> word) =>
        place >= 0 && bytes[place..].StartsWith(word) ? Number(bytes[(place + word.Length)..]) : throw Unknown();

    private static int Number(ReadOnlySpan<byte> bytes) => Utf8Parser.TryParse(bytes, out int number, out _) ? number : throw Unknown();
}

/// <summary>One object of a file.</summary>
/// <param name="Text">The object itself, a stream's dictionary included; no stream.</param>
/// <param name="Stream">The bytes of its stream; null for none.</param>
internal sealed record PdfObject(ReadOnlyMemory<byte> Text, ReadOnlyMemory<byte>? Stream)
{
    /// <summary>An object as it stands in a file, with its number before it and <c>endobj</c> behind it.</summary>
    public static PdfObject Read(ReadOnlyMemory<byte> bytes, int number)
    {
        var head = Encoding.ASCII.GetBytes(FormattableString.Invariant($"{number} 0 obj\n"));
        if (!bytes.Span.StartsWith(head))
        {
            throw PdfParts.Unknown();
        }

        var body = bytes[head.Length..];
        var length = TextLength(body.Span);
        var (text, rest) = (body[..length], body[length..]);
        if (!rest.Span.StartsWith("\nstream\n"u8))
        {
            return new PdfObject(text, null);
        }

        var size = PdfParts.Reference(text.Span, "/Length "u8);
        return new PdfObject(text, rest.Slice("\nstream\n"u8.Length, size));
    }

    /// <summary>Length of the object, which is a dictionary; brackets within its texts do not count.</summary>
    private static int TextLength(ReadOnlySpan<byte> body)
    {
        var (depth, inText) = (0, 0);
        for (var i = 0; i < body.Length; i++)
        {
            var pair = i + 1 < body.Length ? body.Slice(i, 2) : body[i..];
            if (inText > 0 && body[i] == '\\')
            {
                i++;
            }
            else if (body[i] is (byte)'(')
            {
                inText++;
            }
            else if (body[i] is (byte)')')
            {
                inText--;
            }
            else if (inText == 0 && (pair.SequenceEqual("<<"u8) || pair.SequenceEqual(">>"u8)))
            {
                depth += body[i] == '<' ? 1 : -1;
                i++;
                if (depth == 0)
                {
                    return i + 1;
                }
            }
        }

        throw PdfParts.Unknown();
    }
}
