using System.Buffers.Binary;
using System.Text;

namespace BridgeForm.Output.Drawing;

/// <summary>
/// Widths of letters of the font that pages are set in, read from its file. Tables cmap (format 4), head, hhea and hmtx after
/// the OpenType specification, from memory.
/// </summary>
internal sealed class PageFont
{
    /// <summary>Height of a capital letter as a share of the font's size: the letter H is 1493 of 2048 units high.</summary>
    public const double CapitalShare = 1493.0 / 2048;

    /// <summary>How far letters reach below the base line, as a share of a capital's height (the deepest of ASCII).</summary>
    public const double Descent = 0.34;

    private readonly byte[] _file;
    private readonly int _unitsPerEm;
    private readonly int _metrics;
    private readonly int _metricCount;
    private readonly int _cmap;

    // Glyph of each character plus one, once it was asked for; 0 before. Two threads that ask at once write the same.
    private readonly int[] _glyphs = new int[char.MaxValue + 1];

    private PageFont(string resource)
    {
        _file = ReadFile(resource);
        _unitsPerEm = U16(Table("head") + 18);
        _metrics = Table("hmtx");
        _metricCount = U16(Table("hhea") + 34);
        _cmap = FindFormat4(Table("cmap"));
    }

    /// <summary>The ordinary face.</summary>
    public static PageFont Regular { get; } = new("DejaVuSansCondensed.ttf");

    /// <summary>The bold face.</summary>
    public static PageFont Bold { get; } = new("DejaVuSansCondensed-Bold.ttf");

    /// <summary>The whole font file.</summary>
    public ReadOnlyMemory<byte> File => _file;

    /// <summary>The face that a text is set in.</summary>
    public static PageFont Of(SheetText text) => text.Bold ? Bold : Regular;

    /// <summary>Width of a line whose capitals have that height, metres.</summary>
    public double Width(string text, double height)
    {
        var units = 0L;
        foreach (var rune in text.EnumerateRunes())
        {
            units += Advance(Glyph(rune));
        }

        return units * height / (_unitsPerEm * CapitalShare);
    }

    /// <summary>The font can draw every character of the text.</summary>
    public bool Has(string text) => text.EnumerateRunes().All(r => Glyph(r) != 0);

    private int Advance(int glyph) => U16(_metrics + (4 * Math.Min(glyph, _metricCount - 1)));

    private int Glyph(Rune rune)
    {
        if (!rune.IsBmp)
        {
            return 0;
        }

        ref var glyph = ref _glyphs[rune.Value];
        if (glyph == 0)
        {
            glyph = Mapped(rune.Value) + 1;
        }

        return glyph - 1;
    }

    private int Mapped(int code)
    {
        var count = U16(_cmap + 6) / 2;
        for (var i = 0; i < count; i++)
        {
            if (code <= U16(_cmap + 14 + (2 * i)))
            {
                return InSegment(code, i, count);
            }
        }

        return 0;
    }

    private int InSegment(int code, int segment, int count)
    {
        var startAt = _cmap + 16 + (2 * (count + segment));
        var start = U16(startAt);
        if (code < start)
        {
            return 0;
        }

        var delta = U16(startAt + (2 * count));
        var rangeAt = startAt + (4 * count);
        var range = U16(rangeAt);
        var glyph = range == 0 ? code : U16(rangeAt + range + (2 * (code - start)));
        return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
    }

    private int FindFormat4(int cmap)
    {
        for (var i = 0; i < U16(cmap + 2); i++)
        {
            var table = cmap + (int)BinaryPrimitives.ReadUInt32BigEndian(_file.AsSpan(cmap + 8 + (8 * i)));
            if (U16(table) == 4)
            {
                return table;
            }
        }

        throw new InvalidOperationException("The font has no character map that is understood.");
    }

    private int Table(string tag)
    {
        for (var i = 0; i < U16(4); i++)
        {
            var entry = _file.AsSpan(12 + (16 * i), 16);
            if (string.Equals(Encoding.ASCII.GetString(entry[..4]), tag, StringComparison.Ordinal))
            {
                return (int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]);
            }
        }

        throw new InvalidOperationException($"The font has no table {tag}.");
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_file.AsSpan(at));

    private static byte[] ReadFile(string name)
    {
        using var stream = typeof(PageFont).Assembly.GetManifestResourceStream("BridgeForm.Output.Fonts." + name)
            ?? throw new InvalidOperationException($"The font {name} is missing from the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
