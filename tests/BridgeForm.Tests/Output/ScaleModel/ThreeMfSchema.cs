using System.Collections.Frozen;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace BridgeForm.Tests.Output.ScaleModel;

/// <summary>
/// The schema of 3MF's core namespace (3MF Core Specification, appendix B.1, as the file <c>core 1_2_2.xsd</c> of the consortium's
/// repository has it): which elements stand in which, in what order and how often, and which attributes each has, of what type. Told in
/// words of our own: order as a pattern of names, attributes as <c>name:type</c>, with <c>?</c> where one may be left out. Elements and
/// attributes of other namespaces, which the schema lets in here and there, this writer has none of: they count as foreign.
/// </summary>
internal static partial class ThreeMfSchema
{
    private const string Namespace = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}";
    private const string Language = "{http://www.w3.org/XML/1998/namespace}lang";

    // Before the elements, which name them.
    private static readonly FrozenDictionary<string, Regex> s_types = new Dictionary<string, Regex>
    {
        ["unit"] = Unit(),
        ["kind"] = Kind(),
        ["text"] = Anything(),
        ["name"] = QualifiedName(),
        ["truth"] = Truth(),
        ["colour"] = Colour(),
        ["path"] = RootedPath(),
        ["id"] = PositiveWhole(),
        ["index"] = Whole(),
        ["number"] = Number(),
        ["matrix"] = Matrix(),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, Element> s_elements = new Dictionary<string, Element>
    {
        ["model"] = new("(metadata )*resources build ", "unit:unit? lang:text? requiredextensions:text?"),
        ["metadata"] = new("", "name:name preserve:truth? type:text?"),
        ["metadatagroup"] = new("(metadata )+", ""),
        ["resources"] = new("(basematerials )*(object )*", ""),
        ["basematerials"] = new("(base )+", "id:id"),
        ["base"] = new("", "name:text displaycolor:colour"),
        ["object"] = new(
            "(metadatagroup )?(mesh|components) ",
            "id:id type:kind? thumbnail:path? partnumber:text? name:text? pid:index? pindex:index?"),
        ["mesh"] = new("vertices triangles ", ""),
        ["vertices"] = new("(vertex ){3,}", ""),
        ["vertex"] = new("", "x:number y:number z:number"),
        ["triangles"] = new("(triangle )+", ""),
        ["triangle"] = new("", "v1:index v2:index v3:index p1:index? p2:index? p3:index? pid:id?"),
        ["components"] = new("(component )+", ""),
        ["component"] = new("", "objectid:id transform:matrix?"),
        ["build"] = new("(item )*", ""),
        ["item"] = new("(metadatagroup )?", "objectid:id transform:matrix? partnumber:text?"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>What breaks the schema, from a root element on.</summary>
    public static IEnumerable<string> Broken(XElement model)
    {
        if (model.Name != Namespace + "model")
        {
            return [$"B schema: root {model.Name}"];
        }

        return model.DescendantsAndSelf().SelectMany(BrokenBy);
    }

    private static IEnumerable<string> BrokenBy(XElement element)
    {
        var name = element.Name.LocalName;
        if (element.Name.NamespaceName != Namespace[1..^1] || !s_elements.TryGetValue(name, out var rule))
        {
            yield return $"B schema: foreign element {element.Name}";
            yield break;
        }

        if (!rule.Order.IsMatch(string.Concat(element.Elements().Select(e => e.Name.LocalName + " "))))
        {
            yield return $"B schema: {name} holds {string.Join(' ', element.Elements().Select(e => e.Name.LocalName).Take(20))}";
        }

        if (name is not "metadata" && element.Nodes().OfType<XText>().Any(t => !string.IsNullOrWhiteSpace(t.Value)))
        {
            yield return $"B schema: {name} holds text";
        }

        foreach (var attribute in element.Attributes().Where(a => !a.IsNamespaceDeclaration))
        {
            var key = attribute.Name == Language ? "lang" : attribute.Name.NamespaceName.Length > 0 ? "" : attribute.Name.LocalName;
            if (!rule.Types.TryGetValue(key, out var type))
            {
                yield return $"B schema: {name} has {attribute.Name}";
            }
            else if (!type.IsMatch(attribute.Value))
            {
                yield return $"B schema: {name} has {attribute.Name} '{attribute.Value}'";
            }
        }

        foreach (var required in rule.Required.Where(r => element.Attribute(r) is null))
        {
            yield return $"B schema: {name} has no {required}";
        }
    }

    private sealed class Element
    {
        public Element(string order, string attributes)
        {
            Order = new Regex($"^{order}$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture);
            var all = attributes.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(a => a.Split(':')).ToList();
            Types = all.ToFrozenDictionary(a => a[0], a => s_types[a[1].TrimEnd('?')], StringComparer.Ordinal);
            Required = [.. all.Where(a => !a[1].EndsWith('?')).Select(a => a[0])];
        }

        public Regex Order { get; }

        public FrozenDictionary<string, Regex> Types { get; }

        public string[] Required { get; }
    }

    [GeneratedRegex("^(micron|millimeter|centimeter|inch|foot|meter)$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Unit();

    [GeneratedRegex("^(model|solidsupport|support|surface|other)$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Kind();

    [GeneratedRegex("", RegexOptions.NonBacktracking)]
    private static partial Regex Anything();

    [GeneratedRegex(@"^[A-Za-z_][\w.-]*(:[A-Za-z_][\w.-]*)?$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex QualifiedName();

    [GeneratedRegex("^(0|1|true|false)$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Truth();

    // The schema's own pattern lets a bar stand for a digit, which its words do not mean.
    [GeneratedRegex("^#[0-9A-Fa-f]{6}([0-9A-Fa-f]{2})?$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Colour();

    [GeneratedRegex("^/", RegexOptions.NonBacktracking)]
    private static partial Regex RootedPath();

    // Below 2^31: so many digits are less.
    [GeneratedRegex("^0*[1-9][0-9]{0,8}$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex PositiveWhole();

    [GeneratedRegex("^[0-9]{1,9}$", RegexOptions.NonBacktracking)]
    private static partial Regex Whole();

    [GeneratedRegex(@"^[-+]?([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][-+]?[0-9]+)?$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Number();

    [GeneratedRegex(@"^([-+]?([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][-+]?[0-9]+)?( |$)){12}$",
        RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Matrix();
}
