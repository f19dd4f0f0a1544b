using System.Collections.Immutable;

namespace BridgeForm.Output.Drawing;

/// <summary>Texts of printed pages, placed by the true widths of the page's font. Metres.</summary>
internal static class PageText
{
    /// <summary>Height of capitals of the smallest text, 7.2 points.</summary>
    public const double Small = 0.00185;

    /// <summary>Height of capitals of ordinary text, 9 points.</summary>
    public const double Normal = 0.0023;

    /// <summary>Height of capitals of headings, 12 points.</summary>
    public const double Large = 0.0031;

    /// <summary>From one base line to the next, as a share of the height of capitals.</summary>
    public const double Pitch = 1.75;

    /// <summary>A text that begins at a point.</summary>
    public static SheetText Left(
        double x, double y, string text, double height = Normal, bool bold = false, string layer = PageLayers.Note) =>
        new(layer, new SheetPoint(x, y), height, text) { Bold = bold };

    /// <summary>A text whose middle is at a point.</summary>
    public static SheetText Centered(
        double x, double y, string text, double height = Normal, bool bold = false, string layer = PageLayers.Note) =>
        Left(x - (Width(text, height, bold) / 2), y, text, height, bold, layer);

    /// <summary>A text that ends at a point.</summary>
    public static SheetText Right(
        double x, double y, string text, double height = Normal, bool bold = false, string layer = PageLayers.Note) =>
        Left(x - Width(text, height, bold), y, text, height, bold, layer);

    /// <summary>Width of a line.</summary>
    public static double Width(string text, double height, bool bold = false) =>
        (bold ? PageFont.Bold : PageFont.Regular).Width(text, height);

    /// <summary>A text broken between words into lines no wider than a width; a word wider than that is broken too.</summary>
    public static ImmutableArray<string> Wrapped(string text, double width, double height, bool bold = false)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = string.Empty;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(w => Broken(w, width, height, bold)))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && Width(longer, height, bold) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        lines.Add(line);
        return lines.ToImmutable();
    }

    /// <summary>A word in parts no wider than a width, after a sign where it has one, else between letters.</summary>
    private static IEnumerable<string> Broken(string word, double width, double height, bool bold)
    {
        while (word.Length > 1 && Width(word, height, bold) > width)
        {
            var most = word.Length - 1;
            while (most > 1 && Width(word[..most], height, bold) > width)
            {
                most--;
            }

            var sign = word.LastIndexOfAny(['-', '_', '/', '.', ':'], most - 1) + 1;
            var at = sign > 0 ? sign : most;
            yield return word[..at];
            word = word[at..];
        }

        yield return word;
    }

    /// <summary>Lines one below the other; the first line's capitals reach up to <paramref name="top"/>.</summary>
    public static IEnumerable<SheetEntity> Column(
        double x, double top, IEnumerable<string> lines, double height = Normal, bool bold = false, string layer = PageLayers.Note) =>
        lines.Select((line, i) => Left(x, top - height - (i * Pitch * height), line, height, bold, layer));

    /// <summary>A heading in lines, the first of which opens what follows.</summary>
    public static IEnumerable<SheetText> Heading(double x, double top, IEnumerable<string> lines, string title) =>
        Column(x, top, lines, Normal, bold: true).Cast<SheetText>().Select((t, i) => i == 0 ? t with { Opens = title } : t);

    /// <summary>Height of so many lines, from the first one's capitals to below the last one's tails.</summary>
    public static double HeightOf(int lines, double height) => lines * Pitch * height;
}
