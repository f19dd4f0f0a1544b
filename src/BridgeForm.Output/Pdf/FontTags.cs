using System.Collections.Immutable;
using System.Text;

namespace BridgeForm.Output.Pdf;

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
