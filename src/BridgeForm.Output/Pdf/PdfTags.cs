using System.Text;
using BridgeForm.Output.Drawing;
using PdfSharp.Pdf;

namespace BridgeForm.Output.Pdf;

/// <summary>
/// Marks what is on each page as a paragraph of a section with the page's title, so that readers who listen find their way; and a
/// bookmark to each, or to what begins on it where all pages have one title (ISO 32000-1, 12.3.3 and 14.7, from memory).
/// </summary>
internal static class PdfTags
{
    /// <summary>Tags and bookmarks of a document whose pages are drawn.</summary>
    public static void Add(PdfDocument document, SheetBook book)
    {
        var titles = book.Pages.Select(p => p.Content.Title).ToList();
        var root = New(document, "/StructTreeRoot");
        var whole = Element(document, "/Document", root);
        root.Elements.SetReference("/K", whole.Reference!);
        var sections = new PdfArray(document);
        var parents = new PdfArray(document);
        for (var i = 0; i < document.PageCount; i++)
        {
            var page = document.Pages[i];
            Mark(page, i);
            var section = Element(document, "/Sect", whole);
            section.Elements.SetString("/T", titles[i]);
            var content = Element(document, "/P", section);
            content.Elements.SetReference("/Pg", page.Reference!);
            content.Elements.SetInteger("/K", 0);
            section.Elements.SetReference("/K", content.Reference!);
            sections.Elements.Add(section.Reference!);
            parents.Elements.Add(new PdfInteger(i));
            parents.Elements.Add(new PdfArray(document, content.Reference!));
        }

        whole.Elements["/K"] = sections;
        var tree = New(document, null);
        tree.Elements["/Nums"] = parents;
        root.Elements.SetReference("/ParentTree", tree.Reference!);
        root.Elements.SetInteger("/ParentTreeNextKey", document.PageCount);
        var catalogue = document.Internals.Catalog;
        catalogue.Elements.SetReference("/StructTreeRoot", root.Reference!);
        var info = new PdfDictionary(document);
        info.Elements.SetBoolean("/Marked", true);
        catalogue.Elements["/MarkInfo"] = info;
        catalogue.Elements.SetString("/Lang", "en");

        foreach (var (name, page) in Contents(book))
        {
            document.Outlines.Add(name, document.Pages[page], opened: true);
        }
    }

    /// <summary>Bookmarks in order: each page by its title; pages of one title by what begins on them.</summary>
    private static IEnumerable<(string Name, int Page)> Contents(SheetBook book)
    {
        var sheets = book.Pages.Select((p, i) => (p.Content, Page: i)).ToList();
        return sheets.Select(s => s.Content.Title).Distinct(StringComparer.Ordinal).Skip(1).Any()
            ? sheets.Select(s => (s.Content.Title, s.Page))
            : sheets.SelectMany(s => s.Content.Entities.OfType<SheetText>()
                .Where(t => t.Opens is not null).Select(t => (t.Opens!, s.Page)));
    }

    private static void Mark(PdfPage page, int number)
    {
        page.Elements.SetInteger("/StructParents", number);
        page.Elements.SetName("/Tabs", "/S");
        page.Contents.PrependContent().CreateStream(Encoding.ASCII.GetBytes("/P <</MCID 0>> BDC\n"));
        page.Contents.AppendContent().CreateStream(Encoding.ASCII.GetBytes("EMC\n"));
    }

    private static PdfDictionary Element(PdfDocument document, string kind, PdfDictionary parent)
    {
        var element = New(document, "/StructElem");
        element.Elements.SetName("/S", kind);
        element.Elements.SetReference("/P", parent.Reference!);
        return element;
    }

    private static PdfDictionary New(PdfDocument document, string? type)
    {
        var dictionary = new PdfDictionary(document);
        if (type is not null)
        {
            dictionary.Elements.SetName("/Type", type);
        }

        document.Internals.AddObject(dictionary);
        return dictionary;
    }
}
