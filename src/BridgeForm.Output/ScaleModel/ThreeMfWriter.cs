using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using BridgeForm.Output.Gltf;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>
/// Writes the model to print as 3MF (core specification, namespace of 2015/02): a mesh for each body, an object of components for
/// each item, the items in their places, plates side by side along X. Millimetres.
/// </summary>
public static class ThreeMfWriter
{
    private const string Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private const string ModelPart = "3D/3dmodel.model";
    private const string ContentTypes = """
        <?xml version="1.0" encoding="UTF-8"?>
        <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
          <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
          <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
        </Types>

        """;

    private const string Relations = """
        <?xml version="1.0" encoding="UTF-8"?>
        <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
          <Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
        </Relationships>

        """;

    // Of a millimetre: far below what any printer does, and corners that are two stay two.
    private const int Decimals = 6;

    // Between plates, on the floor of the slicing program.
    private const double BetweenPlates = 0.02;
    private const int Materials = 1;

    // The first day that zip archives know: the file says nothing about when it was made.
    private static readonly DateTimeOffset s_noTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes the file; the stream stays open. Same model, same bytes.</summary>
    public static void Write(BridgeModel model, Stream stream) => Write(model, PrintPlan.Of(model), stream);

    internal static void Write(BridgeModel model, PrintPlan plan, Stream stream)
    {
        using var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true);
        Entry(archive, "[Content_Types].xml", part => part.Write(Encoding.UTF8.GetBytes(ContentTypes)));
        Entry(archive, "_rels/.rels", part => part.Write(Encoding.UTF8.GetBytes(Relations)));
        Entry(archive, ModelPart, part =>
        {
            using var xml = XmlWriter.Create(part, new XmlWriterSettings
            {
                Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
                Indent = true,
                IndentChars = " ",
                NewLineChars = "\n",
            });
            Model(xml, model, plan);
        });
    }

    private static void Entry(ZipArchive archive, string name, Action<Stream> write)
    {
        var entry = archive.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = s_noTime;
        using var part = entry.Open();
        write(part);
    }

    private static void Model(XmlWriter xml, BridgeModel model, PrintPlan plan)
    {
        xml.WriteStartElement("model", Core);
        xml.WriteAttributeString("unit", "millimeter");
        xml.WriteAttributeString("xml", "lang", null, "en-US");
        Metadata(xml, "Title", string.Create(
            CultureInfo.InvariantCulture, $"{Clean(model.Parameters.Name)}, 1:{NumberText.Rounded(1 / plan.Rules.Scale, 1)}"));
        Metadata(xml, "Description", string.Join(". ", [.. plan.Told, Caution.Text]));
        Metadata(xml, "Application", "BridgeForm");
        xml.WriteStartElement("resources");
        Colours(xml);
        var objects = Objects(xml, plan);
        xml.WriteEndElement();
        xml.WriteStartElement("build");
        foreach (var (placed, id) in plan.Placed.Zip(objects))
        {
            var x = placed.X + ((placed.Plate - 1) * (plan.Bed.Width + BetweenPlates));
            xml.WriteStartElement("item");
            xml.WriteAttributeString("objectid", Number(id));
            xml.WriteAttributeString("transform", $"1 0 0 0 1 0 0 0 1 {Length(x)} {Length(placed.Y)} 0");
            xml.WriteAttributeString("partnumber", $"plate {Number(placed.Plate)}/{placed.Item.Name}");
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void Colours(XmlWriter xml)
    {
        xml.WriteStartElement("basematerials");
        xml.WriteAttributeString("id", Number(Materials));
        foreach (var material in PrintMaterials.All)
        {
            xml.WriteStartElement("base");
            xml.WriteAttributeString("name", material.Name);
            xml.WriteAttributeString("displaycolor", Hex(ScreenColour.Of(material)));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    /// <summary>Meshes of an item, then the item of them; gives the items' ids. What is named stands before who names it.</summary>
    private static ImmutableArray<int> Objects(XmlWriter xml, PrintPlan plan)
    {
        var items = ImmutableArray.CreateBuilder<int>(plan.Placed.Length);
        var id = Materials;
        foreach (var item in plan.Placed.Select(p => p.Item))
        {
            var low = item.Box().Low;
            var first = id + 1;
            foreach (var body in item.Bodies)
            {
                id++;
                Mesh(xml, id, body, p => plan.Rules.Scale * (item.Lying.ToLocal(p) - low));
            }

            xml.WriteStartElement("object");
            xml.WriteAttributeString("id", Number(id + 1));
            xml.WriteAttributeString("type", "model");
            xml.WriteAttributeString("name", item.Name);
            xml.WriteStartElement("components");
            for (var body = first; body <= id; body++)
            {
                xml.WriteStartElement("component");
                xml.WriteAttributeString("objectid", Number(body));
                xml.WriteEndElement();
            }

            xml.WriteEndElement();
            xml.WriteEndElement();
            id++;
            items.Add(id);
        }

        return items.MoveToImmutable();
    }

    private static void Mesh(XmlWriter xml, int id, PrintBody body, Func<Vector3d, Vector3d> onBed)
    {
        xml.WriteStartElement("object");
        xml.WriteAttributeString("id", Number(id));
        xml.WriteAttributeString("type", "model");
        xml.WriteAttributeString("name", body.Name);
        xml.WriteAttributeString("pid", Number(Materials));
        xml.WriteAttributeString("pindex", Number(body.Material));
        xml.WriteStartElement("mesh");
        xml.WriteStartElement("vertices");
        foreach (var point in body.Points.Select(onBed))
        {
            xml.WriteStartElement("vertex");
            xml.WriteAttributeString("x", Length(point.X));
            xml.WriteAttributeString("y", Length(point.Y));
            xml.WriteAttributeString("z", Length(point.Z));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteStartElement("triangles");
        for (var i = 0; i < body.Corners.Length; i += 3)
        {
            xml.WriteStartElement("triangle");
            xml.WriteAttributeString("v1", Number(body.Corners[i]));
            xml.WriteAttributeString("v2", Number(body.Corners[i + 1]));
            xml.WriteAttributeString("v3", Number(body.Corners[i + 2]));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void Metadata(XmlWriter xml, string name, string text)
    {
        xml.WriteStartElement("metadata");
        xml.WriteAttributeString("name", name);
        xml.WriteString(text);
        xml.WriteEndElement();
    }

    // What no XML may hold is left out.
    private static string Clean(string text) =>
        string.Concat(text.EnumerateRunes().Where(r => !r.IsBmp || XmlConvert.IsXmlChar((char)r.Value)));

    private static string Hex(ScreenColour colour) => string.Create(
        CultureInfo.InvariantCulture, $"#{Byte(colour.Red):X2}{Byte(colour.Green):X2}{Byte(colour.Blue):X2}");

    private static int Byte(double share) => (int)Rounding.ToDecimals(255 * share, 0);

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Length(double metres) => NumberText.Rounded(metres / Rounding.Millimetre, Decimals);
}
