using BridgeForm.Output.Drawing;
using PdfSharp.Fonts;

namespace BridgeForm.Output.Pdf;

/// <summary>Gives the PDF library the fonts inside the program, so that no font of the machine is ever used.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    /// <summary>The one family there is.</summary>
    public const string Family = "DejaVu Sans Condensed";

    private const string RegularFace = "regular";
    private const string BoldFace = "bold";

    /// <summary>Makes the library use these fonts; does nothing the second time.</summary>
    public static void Install() => GlobalFontSettings.FontResolver ??= new EmbeddedFonts();

    /// <inheritdoc/>
    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(isBold ? BoldFace : RegularFace);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) =>
        (string.Equals(faceName, BoldFace, StringComparison.Ordinal) ? PageFont.Bold : PageFont.Regular).File.ToArray();
}
