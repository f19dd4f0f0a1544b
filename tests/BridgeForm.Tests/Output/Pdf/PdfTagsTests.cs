using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Tests.Output.Referees;

namespace BridgeForm.Tests.Output.Pdf;

/// <summary>Tags and bookmarks, as poppler reads them.</summary>
[Trait("Category", "Referee")]
public sealed class PdfTagsTests
{
    [Fact]
    public void Each_page_is_a_section_with_its_title() => Referee.OnFile(PdfFile.Bytes(Book("1 Cover", "2 Frame (F05)")), "a.pdf", path =>
    {
        Assert.Matches(@"Tagged:\s+yes", Referee.Poppler("pdfinfo", path));
        var tree = Referee.Poppler("pdfinfo", "-struct-text", path);
        Assert.Equal(2, tree.Split("Sect").Length - 1);
        Assert.Contains("1 Cover", tree, StringComparison.Ordinal);
        Assert.Contains("2 Frame (F05)", tree, StringComparison.Ordinal);
        Assert.Contains("word on 1", tree, StringComparison.Ordinal);
        Assert.Contains("word on 2", tree, StringComparison.Ordinal);
    });

    [Theory]
    [InlineData("1 Cover", "2 Frame (F05)", 2)]
    [InlineData("Labels", "Labels", 0)]
    public void Pages_of_different_titles_have_bookmarks(string first, string second, int bookmarks)
    {
        var text = System.Text.Encoding.Latin1.GetString(PdfFile.Bytes(Book(first, second)));
        Assert.Equal(bookmarks, text.Split("/Dest[").Length - 1 + (text.Split("/Dest [").Length - 1));
        Assert.Equal(bookmarks > 0, text.Contains("/Outlines", StringComparison.Ordinal));
    }

    /// <summary>A bookmark to each heading where every page has the book's own title.</summary>
    [Fact]
    public void Headings_are_the_bookmarks_of_pages_that_share_a_title()
    {
        var book = Book("Erection", "Erection", "Erection");
        var headings = new[] { ("Steps", 0), ("Crew", 0), ("Steps, continued", 2) };
        book = book with
        {
            Pages =
            [
                .. book.Pages.Select((p, i) => p with
                {
                    Content = p.Content with
                    {
                        Entities =
                        [
                            .. p.Content.Entities,
                            .. headings.Where(h => h.Item2 == i).SelectMany(h => PageText.Heading(0.02, 0.08, [h.Item1], h.Item1)),
                        ],
                    },
                }),
            ],
        };
        var text = System.Text.Encoding.Latin1.GetString(PdfFile.Bytes(book));
        Assert.Equal(3, text.Split("/Dest[").Length - 1 + (text.Split("/Dest [").Length - 1));
    }

    private static SheetBook Book(params string[] titles) => new(
        "A book",
        [
            .. titles.Select((t, i) => new SheetPage(0.2, 0.1, new Sheet(
                t, PageLayers.All,
                [PageText.Left(0.02, 0.05, "word on " + (i + 1).ToString(CultureInfo.InvariantCulture))]))),
        ]);
}
