using BridgeForm.Output.Drawing;
using BridgeForm.Roles;
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
    internal const double Points = 72 / Quantities.Units.MetresPerInch;

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
            SetUp(document);
            foreach (var page in book.Pages)
            {
                Add(document, page);
            }

            PdfTags.Add(document, book);
            document.Save(buffer, closeStream: false);
        }

        stream.Write(StableFile.Write(buffer.GetBuffer().AsMemory(0, (int)buffer.Length), new PdfAbout(book.Title, Caution.Text)));
    }

    /// <summary>
    /// What the document says about itself is written by <see cref="StableFile"/>: the user's text never passes through the
    /// library's.
    /// </summary>
    private static void SetUp(PdfDocument document)
    {
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
