using System.Globalization;
using System.Text;
using System.Xml;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Svg;

/// <summary>Writes a page of a neutral drawing as SVG 1.1 at true size, in millimetres; text stays text.</summary>
public static class SvgWriter
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>Writes the page as a file; the stream stays open. Same page, same bytes.</summary>
    public static void Write(SheetPage page, Stream stream) => Write(page, stream, inside: false);

    /// <summary>Writes the page as an element of a web page: no XML declaration, no space between elements.</summary>
    public static void WriteInside(SheetPage page, Stream stream) => Write(page, stream, inside: true);

    private static void Write(SheetPage page, Stream stream, bool inside)
    {
        var settings = new XmlWriterSettings
        {
            Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            Indent = !inside,
            OmitXmlDeclaration = inside,
            NewLineChars = "\n",
            CloseOutput = false,
        };
        using var xml = XmlWriter.Create(stream, settings);
        var (width, height) = (Millimetres(page.Width), Millimetres(page.Height));
        xml.WriteStartElement("svg", Namespace);
        xml.WriteAttributeString("width", width + "mm");
        xml.WriteAttributeString("height", height + "mm");
        xml.WriteAttributeString("viewBox", $"0 0 {width} {height}");
        xml.WriteElementString("title", Namespace, page.Content.Title);
        new SvgDrawing(xml, page.Height).Draw(page.Content);
        xml.WriteEndElement();
    }

    /// <summary>A length in millimetres to a thousandth of a millimetre, without trailing zeros.</summary>
    internal static string Millimetres(double metres) =>
        Numbers.Rounded(metres * 1000, 4).ToString("0.####", CultureInfo.InvariantCulture);
}
