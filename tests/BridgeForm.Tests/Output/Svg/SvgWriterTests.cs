using System.Text;
using System.Xml.Linq;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Svg;

namespace BridgeForm.Tests.Output.Svg;

/// <summary>SVG 1.1 (W3C): y runs down, user units are millimetres here, so that a page is true to size.</summary>
public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static SheetPage Page { get; } = new(0.21, 0.297, new Sheet("A <page> & more", PageLayers.All,
    [
        new SheetLine(PageLayers.Cut, new SheetPoint(0.01, 0.02), new SheetPoint(0.11, 0.02)),
        new SheetPolyline(PageLayers.Cut, [new SheetVertex(0.05, 0.1, 1), new SheetVertex(0.07, 0.1)], false),
        new SheetText(PageLayers.Note, new SheetPoint(0.03, 0.2), 0.003, "8.0° < ⌀ ½"),
    ]));

    private static XElement Root { get; } = XDocument.Parse(Encoding.UTF8.GetString(Bytes(Page))).Root!;

    [Fact]
    public void The_page_is_as_large_as_its_paper()
    {
        Assert.Equal("210mm", Root.Attribute("width")!.Value);
        Assert.Equal("297mm", Root.Attribute("height")!.Value);
        Assert.Equal("0 0 210 297", Root.Attribute("viewBox")!.Value);
    }

    [Fact]
    public void Lines_and_bulges_lie_at_true_size_with_y_down()
    {
        var paths = Root.Descendants(Svg + "path").Select(p => p.Attribute("d")!.Value).ToArray();
        Assert.Equal("M10,277L110,277", paths[0]);

        // A bulge of 1 is a half circle to the right of the way (DXF's definition): from 50 to 70 its radius is 10.
        Assert.Matches(
            "^M50,197A10,10 0 [01] [01],? ?70,197|^M50,197A10 10 0 [01] [01] 70,197",
            paths[1].Replace(", ", ",", StringComparison.Ordinal));
    }

    [Fact]
    public void Text_stays_text()
    {
        var text = Assert.Single(Root.Descendants(Svg + "text"));
        Assert.Equal("8.0° < ⌀ ½", text.Value);
        Assert.Equal(("30", "97"), (text.Attribute("x")!.Value, text.Attribute("y")!.Value));
        Assert.Equal("A <page> & more", Root.Element(Svg + "title")!.Value);
    }

    [Fact]
    public void Same_page_gives_the_same_bytes() => Assert.Equal(Bytes(Page), Bytes(Page));

    private static byte[] Bytes(SheetPage page)
    {
        using var stream = new MemoryStream();
        SvgWriter.Write(page, stream);
        return stream.ToArray();
    }
}
