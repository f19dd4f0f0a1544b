using BridgeForm.Benchmarks.Fuzz;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Pdf;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>A brace's foot flush with the base's end is legal; the distance that is none is left out of the drawings.</summary>
public sealed class FlushFootTests
{
    private const string Flush = """
        name: Flush (invented)
        site: { span: 12 ft }
        frames: { base: { length: 55 in }, brace: { foot: 27-1/2 in } }
        """;

    [Fact]
    public void Every_page_keeps_its_caution_and_every_stream_its_numbers()
    {
        var book = DrawingSheets.Draw(Bridges.Build(Flush));
        Assert.All(book.Pages, page => Assert.Contains(
            page.Content.Entities.OfType<SheetText>(),
            t => t.Text.Contains("Geometry, quantities and check values", StringComparison.Ordinal)));
        using var stream = new MemoryStream();
        PdfWriter.Write(book, stream);
        var streams = PdfContent.Of(stream.ToArray()).ToList();
        Assert.True(streams.Count >= book.Pages.Length);
        Assert.All(streams, s => Assert.DoesNotContain("NaN", s, StringComparison.Ordinal));
    }

    // The library would write it down as it is, and readers leave out the rest of the page.
    [Fact]
    public void A_coordinate_that_is_no_number_stops_the_page()
    {
        SheetLayer[] layers = [new("X", LayerPurpose.Cut)];
        SheetEntity[] bad =
        [
            new SheetCircle("X", new SheetPoint(0, 0), double.NaN),
            new SheetArc("X", new SheetPoint(0, 0), 1, 0, double.NaN),
            new SheetText("X", new SheetPoint(0, 0), double.NaN, "x"),
            new SheetText("X", new SheetPoint(0, 0), 0.002, "x") { Turn = double.PositiveInfinity },
        ];
        Assert.All(bad, entity => Assert.Throws<NotFiniteNumberException>(() =>
            PdfWriter.Write(new SheetBook("x", [new SheetPage(0.2, 0.3, new Sheet("x", [.. layers], [entity]))]), Stream.Null)));
    }
}
