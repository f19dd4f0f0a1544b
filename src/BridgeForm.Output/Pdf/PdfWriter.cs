using BridgeForm.Output.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BridgeForm.Output.Pdf;

/// <summary>
/// Writes pages of neutral drawings as PDF, at true size: text stays text in embedded fonts, and readers are told not to
/// scale when they print.
/// </summary>
public static class PdfWriter
{
    /// <summary>Points (1/72 in) in a metre.</summary>
    internal const double Points = 72 / 0.0254;

    /// <summary>The library keeps fonts for the whole process; one document at a time keeps them out of each other's way.</summary>
    private static readonly Lock OneAtATime = new();

    /// <summary>Writes the pages; the stream stays open. Same book, same bytes.</summary>
    public static void Write(SheetBook book, Stream stream)
    {
        using var buffer = new MemoryStream();
        lock (OneAtATime)
        {
            EmbeddedFonts.Install();
            using var document = new PdfDocument();
            Describe(document, book.Title);
            foreach (var page in book.Pages)
            {
                Add(document, page);
            }

            document.Save(buffer, closeStream: false);
        }

        var file = buffer.GetBuffer().AsSpan(0, (int)buffer.Length);
        StableBytes.Settle(file);
        stream.Write(file);
    }

    private static void Describe(PdfDocument document, string title)
    {
        document.Info.Title = title;
        document.Info.Subject = Caution.Text;
        document.Info.Creator = "BridgeForm";
        document.Options.CompressContentStreams = true;
        document.Options.FlateEncodeMode = PdfFlateEncodeMode.Default;
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
        document.ViewerPreferences.DisplayDocTitle = true;
    }

    private static void Add(PdfDocument document, SheetPage page)
    {
        var paper = document.AddPage();
        paper.Width = XUnit.FromPoint(page.Width * Points);
        paper.Height = XUnit.FromPoint(page.Height * Points);
        using var graphics = XGraphics.FromPdfPage(paper);
        new PdfDrawing(graphics, page.Height).Draw(page.Content);
    }
}
