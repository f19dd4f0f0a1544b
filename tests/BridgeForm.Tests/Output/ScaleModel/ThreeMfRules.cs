using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml.Linq;

namespace BridgeForm.Tests.Output.ScaleModel;

/// <summary>
/// What the 3MF core specification (version 1.2, read in the consortium's repository) asks of a file beyond its schema, clause by
/// clause, as far as a file of meshes, components, base materials and items can break it. Numbers are the specification's sections.
/// </summary>
internal static class ThreeMfRules
{
    private const string Core = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}";
    private static readonly string[] s_wellKnown =
    [
        "Title", "Designer", "Description", "Copyright", "LicenseTerms", "Rating", "CreationDate", "ModificationDate", "Application",
    ];

    /// <summary>What is broken; empty when nothing is.</summary>
    public static IReadOnlyList<string> Broken(byte[] file)
    {
        using var archive = new ZipArchive(new MemoryStream(file));
        List<string> faults = [.. Package(archive)];
        var model = Part(archive, "3D/3dmodel.model").Root!;
        faults.AddRange(ThreeMfSchema.Broken(model));
        if (faults.Said().Count > 0)
        {
            return faults; // what has not the form cannot be asked more
        }

        faults.AddRange(Model(model));
        faults.AddRange(Objects(model));
        faults.AddRange(Build(model));
        return faults;
    }

    private static XDocument Part(ZipArchive archive, string name)
    {
        using var stream = archive.GetEntry(name)!.Open();
        return XDocument.Load(stream);
    }

    // 2.1: parts, content types and the one relationship to the model (appendix C).
    private static IEnumerable<string> Package(ZipArchive archive)
    {
        string[] names = [.. archive.Entries.Select(e => e.FullName)];
        yield return names is ["[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"] ? "" : "2.1 parts: " + string.Join(", ", names);
        var types = Part(archive, "[Content_Types].xml").Root!.Elements().ToDictionary(
            e => e.Attribute("Extension")!.Value, e => e.Attribute("ContentType")!.Value);
        yield return types["rels"] is "application/vnd.openxmlformats-package.relationships+xml"
            && types["model"] is "application/vnd.ms-package.3dmanufacturing-3dmodel+xml" ? "" : "C.1 content types";
        var start = Part(archive, "_rels/.rels").Root!.Elements().Single();
        yield return start.Attribute("Target")!.Value is "/3D/3dmodel.model"
            && start.Attribute("Type")!.Value is "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel" ? "" : "C.2 relationship";
    }

    // 3.4: one model; metadata of well-known names, none twice. 2.3: no mark of byte order is asked for, and no DTD allowed.
    private static IEnumerable<string> Model(XElement model)
    {
        yield return model.Name == Core + "model" && model.Document!.DocumentType is null ? "" : "2.3 root " + model.Name;
        yield return model.Attribute("unit")?.Value is "millimeter" ? "" : "3.4 unit";
        string[] told = [.. model.Elements(Core + "metadata").Select(m => m.Attribute("name")!.Value)];
        yield return told.Except(s_wellKnown).Any() || told.Distinct().Count() < told.Length ? "3.4.1 metadata" : "";
    }

    // 3.4.2: ids each once; 3.4: defined before they are named; 4: no property on what has components; 4.1: manifold, outward meshes.
    private static IEnumerable<string> Objects(XElement model)
    {
        var known = new HashSet<string>(StringComparer.Ordinal);
        var resources = model.Element(Core + "resources")!;
        var materials = resources.Elements(Core + "basematerials").Single();
        yield return resources.Elements().First() == materials ? "" : "B schema: base materials stand before objects";
        foreach (var resource in resources.Elements())
        {
            var id = resource.Attribute("id")!.Value;
            yield return known.Add(id) && int.Parse(id, CultureInfo.InvariantCulture) > 0 ? "" : $"3.4.2 id {id}";
            if (resource.Element(Core + "components") is { } components)
            {
                yield return resource.Attribute("pid") is null ? "" : $"4 object {id} of components has a property";
                yield return components.Elements().All(c => known.Contains(c.Attribute("objectid")!.Value)) ? "" : $"3.4 object {id}";
                yield return components.HasElements ? "" : $"4.2 object {id} is empty";
            }
            else if (resource.Element(Core + "mesh") is { } mesh)
            {
                yield return resource.Attribute("pid") is null && resource.Attribute("pindex") is not null ? $"4 object {id}: pindex" : "";
                var index = int.Parse(resource.Attribute("pindex")!.Value, CultureInfo.InvariantCulture);
                yield return resource.Attribute("pid")!.Value == materials.Attribute("id")!.Value && index < materials.Elements().Count()
                    ? "" : $"4 object {id}: property";
                foreach (var fault in Mesh(mesh))
                {
                    yield return $"4.1 {resource.Attribute("name")?.Value}: {fault}";
                }
            }
        }
    }

    private static IEnumerable<string> Mesh(XElement mesh)
    {
        double[][] points = [.. mesh.Element(Core + "vertices")!.Elements().Select(v => new[] { "x", "y", "z" }
            .Select(a => double.Parse(v.Attribute(a)!.Value, CultureInfo.InvariantCulture)).ToArray())];
        int[][] triangles = [.. mesh.Element(Core + "triangles")!.Elements().Select(t => new[] { "v1", "v2", "v3" }
            .Select(a => int.Parse(t.Attribute(a)!.Value, CultureInfo.InvariantCulture)).ToArray())];
        if (triangles.Length < 4)
        {
            yield return "fewer than four triangles";
        }

        if (triangles.Any(t => t.Any(i => i >= points.Length) || t.Distinct().Count() < 3))
        {
            yield return "a triangle names one corner twice, or one that is none";
            yield break;
        }

        var edges = triangles.SelectMany(t => new[] { (t[0], t[1]), (t[1], t[2]), (t[2], t[0]) }).ToLookup(e => e);
        if (edges.Any(e => e.Count() > 1 || !edges.Contains((e.Key.Item2, e.Key.Item1))))
        {
            yield return "an edge is not used once each way";
        }

        if (points.Select(p => (p[0], p[1], p[2])).Distinct().Count() < points.Length)
        {
            yield return "two corners lie at one place";
        }

        if (Volume(points, triangles) <= 0)
        {
            yield return "its volume is not positive";
        }
    }

    private static double Volume(double[][] p, int[][] triangles) => triangles.Sum(t =>
    {
        var (a, b, c) = (p[t[0]], p[t[1]], p[t[2]]);
        return ((a[0] * ((b[1] * c[2]) - (b[2] * c[1]))) + (a[1] * ((b[2] * c[0]) - (b[0] * c[2])))
            + (a[2] * ((b[0] * c[1]) - (b[1] * c[0])))) / 6;
    });

    // 3.4.3: items name objects that are there, and none of type "other", not even through components; 4.1: supports only beside what
    // they support, in an object of components. 3.3: what is built lies in the positive octant.
    private static IEnumerable<string> Build(XElement model)
    {
        var objects = model.Descendants(Core + "object").GroupBy(o => o.Attribute("id")!.Value, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        foreach (var item in model.Element(Core + "build")!.Elements())
        {
            var found = objects.TryGetValue(item.Attribute("objectid")!.Value, out var built);
            yield return found ? "" : "3.4.3 item without object";
            string[] types = found ? [.. Types(built!, objects)] : [];
            yield return types.Contains("other") ? "3.4.3.1 item of an object of type other" : "";
            yield return types.Length > 0 && types.All(t => t is "support" or "solidsupport") ? "4.1 item of nothing but supports" : "";
            var moved = item.Attribute("transform")!.Value.Split(' ').Skip(9).Select(v => double.Parse(v, CultureInfo.InvariantCulture));
            yield return moved.All(v => v >= 0) ? "" : "3.3 item outside the positive octant";
        }

        yield return model.Descendants(Core + "vertex").SelectMany(v => v.Attributes())
            .All(a => double.Parse(a.Value, CultureInfo.InvariantCulture) >= 0) ? "" : "3.3 corner outside the positive octant";
    }

    // 4: the type of what has components is theirs.
    private static IEnumerable<string> Types(XElement built, Dictionary<string, XElement> objects) =>
        built.Element(Core + "components") is { } components
            ? components.Elements().Where(c => objects.ContainsKey(c.Attribute("objectid")!.Value))
                .SelectMany(c => Types(objects[c.Attribute("objectid")!.Value], objects))
            : [built.Attribute("type")?.Value ?? "model"];

    /// <summary>Only what is broken.</summary>
    public static IReadOnlyList<string> Said(this IEnumerable<string> faults) => [.. faults.Where(f => f.Length > 0)];

    /// <summary>The same file with its model's text changed.</summary>
    public static byte[] Changed(byte[] file, Func<string, string> change)
    {
        using var read = new ZipArchive(new MemoryStream(file));
        using var stream = new MemoryStream();
        using (var write = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in read.Entries)
            {
                using var reader = new StreamReader(entry.Open());
                using var part = write.CreateEntry(entry.FullName).Open();
                var text = reader.ReadToEnd();
                part.Write(Encoding.UTF8.GetBytes(entry.FullName is "3D/3dmodel.model" ? change(text) : text));
            }
        }

        return stream.ToArray();
    }
}
