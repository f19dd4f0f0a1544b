using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BridgeForm.Output.Drawing;
using BridgeForm.Tests.Output.Referees;

namespace BridgeForm.Tests.Output.Pdf;

[Trait("Category", "Referee")]
public sealed partial class PdfWriterTests
{
    /// <summary>Accuracy asked of every printed length, metres.</summary>
    private const double TenthOfAMillimetre = 1e-4;

    private const string Words = "Long point ⌀ 1/4 in · 8.0° → Ø½″";

    private static SheetPage Page(double width, double height) =>
        new(width, height, new Sheet("Ticks", PageLayers.All, [.. Entities(width, height)]));

    private static SheetBook Book { get; } = new("A book", [Page(0.2159, 0.2794), Page(0.594, 0.841)]);

    [Fact]
    public void Same_book_gives_the_same_bytes()
    {
        var first = PdfFile.Bytes(Book);
        Assert.Equal(first, PdfFile.Bytes(Book));
        Assert.NotEqual(first, PdfFile.Bytes(Book with { Title = "Another" }));
    }

    [Fact]
    public void No_clock_is_in_the_file()
    {
        var text = Encoding.Latin1.GetString(PdfFile.Bytes(Book));
        Assert.Contains("/CreationDate(D:20000101000000", text, StringComparison.Ordinal);
        Assert.DoesNotContain(
            TimeProvider.System.GetUtcNow().Year.ToString(CultureInfo.InvariantCulture) + "-", text, StringComparison.Ordinal);
        Assert.Contains("/PrintScaling/None", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Fonts_are_embedded_and_text_stays_text() => Referee.OnFile(PdfFile.Bytes(Book), "a.pdf", path =>
    {
        var fonts = Referee.Poppler("pdffonts", path).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
        Assert.Equal(2, fonts.Count);
        Assert.All(fonts, f => Assert.Matches("DejaVu Sans Condensed.* yes yes yes ", f));
        Assert.Contains(Words, Referee.Poppler("pdftotext", path, "-"), StringComparison.Ordinal);
    });

    /// <summary>Sizes in points from ISO 216 (millimetres) and ANSI/ASME Y14.1 (inches).</summary>
    [Theory]
    [InlineData("letter", 8.5 * 72, 11 * 72)]
    [InlineData("tabloid", 11 * 72, 17 * 72)]
    [InlineData("arch-d", 24 * 72, 36 * 72)]
    [InlineData("a4", 210 * 72 / 25.4, 297 * 72 / 25.4)]
    [InlineData("a3", 297 * 72 / 25.4, 420 * 72 / 25.4)]
    [InlineData("a1", 594 * 72 / 25.4, 841 * 72 / 25.4)]
    public void Page_boxes_are_those_of_the_standards(string name, double width, double height)
    {
        var paper = Paper.Named(name);
        Referee.OnFile(PdfFile.Bytes(new SheetBook("Paper", [Page(paper.Width, paper.Height)])), "a.pdf", path =>
        {
            var box = MediaBox().Match(Referee.Poppler("pdfinfo", "-box", path));
            Assert.Equal(width, double.Parse(box.Groups["w"].ValueSpan, CultureInfo.InvariantCulture), 0.01);
            Assert.Equal(height, double.Parse(box.Groups["h"].ValueSpan, CultureInfo.InvariantCulture), 0.01);
        });
    }

    [Theory]
    [InlineData(0.2159, 0.2794)]
    [InlineData(0.210, 0.297)]
    [InlineData(0.594, 0.841)]
    public void Lines_are_where_they_were_drawn_to_a_tenth_of_a_millimetre(double width, double height)
    {
        var raster = Raster.Of(new SheetBook("Ticks", [Page(width, height)]));
        foreach (var x in Ticks(width))
        {
            Assert.Equal(x, raster.InkX(x, 0.012, 0.001), TenthOfAMillimetre);
        }

        foreach (var y in Ticks(height))
        {
            Assert.Equal(y, raster.InkY(0.012, y, 0.001), TenthOfAMillimetre);
        }
    }

    [Fact]
    public void What_lies_outside_a_window_is_not_drawn()
    {
        var content = new Sheet("Line", PageLayers.All, [new SheetLine(PageLayers.Cut, new(0, 0), new(1, 0))]);
        var sheet = new Sheet(
            "Window", PageLayers.All, [new SheetWindow(PageLayers.Cut, content, new SheetBox(0.3, -0.01, 0.35, 0.01), new(0.05, 0.05))]);
        var raster = Raster.Of(new SheetBook("Window", [new SheetPage(0.15, 0.1, sheet)]));
        Assert.Equal(0.075, raster.InkX(0.075, 0.06, 0.07), TenthOfAMillimetre);
        Assert.Equal(0.06, raster.InkY(0.0501, 0.06, 0.01), TenthOfAMillimetre);
        Assert.ThrowsAny<Exception>(() => raster.InkY(0.0498, 0.06, 0.01));
        Assert.ThrowsAny<Exception>(() => raster.InkY(0.1002, 0.06, 0.01));
    }

    /// <summary>Widths that layout counts with are those that poppler finds.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Text_is_as_wide_as_layout_thinks(bool bold)
    {
        var text = new SheetText(PageLayers.Note, new SheetPoint(0.02, 0.05), 0.003, "Wrap-around_12345") { Bold = bold };
        var sheet = new Sheet("Text", PageLayers.All, [text]);
        Referee.OnFile(PdfFile.Bytes(new SheetBook("Text", [new SheetPage(0.2, 0.1, sheet)])), "a.pdf", path =>
        {
            var word = Word().Match(Referee.Poppler("pdftotext", "-bbox", path, "-"));
            var width = Points(word.Groups["to"]) - Points(word.Groups["from"]);
            Assert.Equal(PageBox.Of(text).MaxX - PageBox.Of(text).MinX, width, TenthOfAMillimetre);
        });
    }

    private static double Points(Group group) => double.Parse(group.ValueSpan, CultureInfo.InvariantCulture) * 0.0254 / 72;

    private static IEnumerable<SheetEntity> Entities(double width, double height)
    {
        yield return new SheetText(PageLayers.Note, new SheetPoint(0.05, 0.1), 0.0025, Words);
        yield return new SheetText(PageLayers.Accent, new SheetPoint(0.05, 0.12), 0.0025, "Bold") { Bold = true, Turn = 0.1 };
        foreach (var x in Ticks(width))
        {
            yield return new SheetLine(PageLayers.Cut, new SheetPoint(x, 0.010), new SheetPoint(x, 0.015));
        }

        foreach (var y in Ticks(height))
        {
            yield return new SheetLine(PageLayers.Dim, new SheetPoint(0.010, y), new SheetPoint(0.015, y));
        }
    }

    /// <summary>Steps that fall on no grid of pixels.</summary>
    private static IEnumerable<double> Ticks(double size) =>
        Enumerable.Range(0, 20).Select(i => 0.020 + ((size - 0.040) * i / 19.0) + (i * 1.37e-5 % 1e-4));

    [GeneratedRegex(@"MediaBox:\s+0\.00\s+0\.00\s+(?<w>[0-9.]+)\s+(?<h>[0-9.]+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex MediaBox();

    [GeneratedRegex("xMin=\"(?<from>[0-9.]+)\".*xMax=\"(?<to>[0-9.]+)\".*>Wrap", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Word();
}
