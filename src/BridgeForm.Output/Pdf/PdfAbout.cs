using System.Globalization;
using System.Text;
using System.Xml;

namespace BridgeForm.Output.Pdf;

/// <summary>What a document says about itself, in the two forms that readers look for: an information dictionary and XMP.</summary>
/// <param name="Title">Its title: the user's words.</param>
/// <param name="Subject">What to bear in mind.</param>
internal sealed record PdfAbout(string Title, string Subject)
{
    private const string Creator = "BridgeForm";
    private const string Producer = "PDFsharp";
    private const string FixedDate = "2000-01-01T00:00:00+00:00";
    private const string Rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private const string Dc = "http://purl.org/dc/elements/1.1/";
    private const string Xmp = "http://ns.adobe.com/xap/1.0/";
    private const string XmpMm = "http://ns.adobe.com/xap/1.0/mm/";

    /// <summary>The information dictionary (ISO 32000-1, 14.3.3).</summary>
    public PdfObject Info() => new(
        Encoding.ASCII.GetBytes(
            $"<</CreationDate(D:20000101000000+00'00')/ModDate(D:20000101000000+00'00')/Title{Text(Title)}"
                + $"/Subject{Text(Subject)}/Creator{Text(Creator)}/Producer{Text(Producer)}>>"),
        null);

    /// <summary>The same as XMP (ISO 16684-1), with the identifiers that it asks for made from a digest.</summary>
    public PdfObject Metadata(string digest)
    {
        var packet = Encoding.UTF8.GetBytes(
            "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n" + Xml(digest) + "\n<?xpacket end=\"w\"?>");
        return new PdfObject(
            Encoding.ASCII.GetBytes("<</Type/Metadata/Subtype/XML/Length " + packet.Length.ToString(CultureInfo.InvariantCulture) + ">>"),
            packet);
    }

    private string Xml(string digest)
    {
        var text = new StringBuilder();
        using (var xml = XmlWriter.Create(text, new XmlWriterSettings { OmitXmlDeclaration = true, Indent = true, NewLineChars = "\n" }))
        {
            xml.WriteStartElement("x", "xmpmeta", "adobe:ns:meta/");
            xml.WriteStartElement("rdf", "RDF", Rdf);
            xml.WriteStartElement("rdf", "Description", Rdf);
            xml.WriteAttributeString("rdf", "about", Rdf, "");
            Alternative(xml, "title", Title);
            Alternative(xml, "description", Subject);
            xml.WriteElementString("xmp", "CreatorTool", Xmp, Creator);
            xml.WriteElementString("xmp", "CreateDate", Xmp, FixedDate);
            xml.WriteElementString("xmp", "ModifyDate", Xmp, FixedDate);
            xml.WriteElementString("pdf", "Producer", "http://ns.adobe.com/pdf/1.3/", Producer);
            xml.WriteElementString("xmpMM", "DocumentID", XmpMm, Uuid(digest[..32]));
            xml.WriteElementString("xmpMM", "InstanceID", XmpMm, Uuid(digest[32..]));
            xml.WriteEndDocument();
        }

        return text.ToString();
    }

    private static void Alternative(XmlWriter xml, string name, string words)
    {
        xml.WriteStartElement("dc", name, Dc);
        xml.WriteStartElement("rdf", "Alt", Rdf);
        xml.WriteStartElement("rdf", "li", Rdf);
        xml.WriteAttributeString("xml", "lang", null, "x-default");
        xml.WriteString(words);
        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static string Uuid(string hex) => $"uuid:{hex[..8]}-{hex[8..12]}-{hex[12..16]}-{hex[16..20]}-{hex[20..32]}".ToLowerInvariant();

    /// <summary>
    /// A text string: within ASCII in brackets, with a stroke before brackets and strokes; else as UTF-16 with its mark, in
    /// hexadecimal (ISO 32000-1, 7.9.2.2).
    /// </summary>
    private static string Text(string words) => words.All(c => c is >= ' ' and <= '~')
        ? "(" + words
            .Replace(@"\", @"\\", StringComparison.Ordinal)
            .Replace("(", @"\(", StringComparison.Ordinal)
            .Replace(")", @"\)", StringComparison.Ordinal) + ")"
        : $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(words))}>";
}
