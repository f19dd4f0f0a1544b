using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Net;
using System.Text;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Svg;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Preview;

/// <summary>
/// Writes <c>preview.html</c>: one page that holds its script, its style, the description of the bridge and model.glb, and
/// opens without a network. The page's own files are built in <c>src/BridgeForm.Preview</c> and embedded here.
/// </summary>
public static class PreviewWriter
{
    /// <summary>Writes the page as UTF-8; the stream stays open. Same model, same bytes.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="triangulate">Triangles of a solid, closed and outward.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(BridgeModel model, Func<Solid, TriangleMesh> triangulate, Stream stream)
    {
        var values = new Dictionary<string, Func<byte[]>>(StringComparer.Ordinal)
        {
            ["title"] = () => Html(model.Parameters.Name),
            ["lead"] = () => Html(PreviewFacts.Lead(model)),
            ["facts"] = () => Utf8(FactList(model)),
            ["verdict"] = () => Html(PlainVerdict.Of(model)),
            ["short"] = () => Html(Caution.First),
            ["headlines"] = () => Utf8(PreviewVerdict.HeadlineList(model)),
            ["fails"] = () => Utf8(PreviewVerdict.FailLine(model)),
            ["still"] = () => Still(model),
            ["caution"] = () => Html(PreviewVerdict.CautionText(model)),
            ["licence"] = () => PageFiles.Bytes("three-LICENSE.txt"),
            ["style"] = () => PageFiles.Bytes("preview.css"),
            ["script"] = () => PageFiles.Bytes("preview.js"),
            ["view"] = () => PreviewJson.Bytes(model),
            ["model"] = () => Base64(model, triangulate),
        }.ToFrozenDictionary(StringComparer.Ordinal);
        foreach (var (text, name) in PageFiles.Page)
        {
            stream.Write(Utf8(text));
            if (name is not null)
            {
                stream.Write(values[name]());
            }
        }
    }

    /// <summary>The facts that stand in the page before its script has run, and where no script runs.</summary>
    private static string FactList(BridgeModel model)
    {
        var html = new StringBuilder();
        foreach (var fact in PreviewFacts.Gather(model).Where(f => f.IsKey))
        {
            html.Append("<div><dt>").Append(WebUtility.HtmlEncode(fact.Label))
                .Append("</dt><dd>").Append(WebUtility.HtmlEncode(fact.Text)).Append("</dd></div>");
        }

        return html.ToString();
    }

    /// <summary>The picture for readers that run no script, as those for mail attachments do.</summary>
    private static byte[] Still(BridgeModel model)
    {
        using var svg = new MemoryStream();
        SvgWriter.WriteInside(BridgePicture.Draw(model), svg);
        return svg.ToArray();
    }

    private static byte[] Base64(BridgeModel model, Func<Solid, TriangleMesh> triangulate)
    {
        using var glb = new MemoryStream();
        GltfWriter.Write(model, triangulate, glb);
        return Utf8(Convert.ToBase64String(glb.GetBuffer().AsSpan(0, (int)glb.Length)));
    }

    private static byte[] Html(string text) => Utf8(WebUtility.HtmlEncode(text));

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}

/// <summary>The page's built files, embedded in the assembly.</summary>
internal static class PageFiles
{
    private const string Open = "{{";
    private const string Close = "}}";

    private static readonly ConcurrentDictionary<string, byte[]> s_given = new(StringComparer.Ordinal);

    /// <summary>The page in order: a text and the name of what follows it; the last text is followed by nothing.</summary>
    public static ImmutableArray<(string Text, string? Name)> Page { get; } = Cut(Encoding.UTF8.GetString(Bytes("page.html")));

    /// <summary>Bytes of one file. Throws <see cref="FileNotFoundException"/> when the assembly holds no such file.</summary>
    public static byte[] Bytes(string name)
    {
        if (s_given.TryGetValue(name, out var given))
        {
            return given;
        }

        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream("preview/" + name)
            ?? throw new FileNotFoundException("No such file of the page.", name);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>A file that the assembly was built without, since the page that holds the assembly holds it too.</summary>
    public static void Give(string name, string text) => s_given[name] = Encoding.UTF8.GetBytes(text);

    private static ImmutableArray<(string Text, string? Name)> Cut(string page)
    {
        var parts = ImmutableArray.CreateBuilder<(string, string?)>();
        var at = 0;
        while (page.IndexOf(Open, at, StringComparison.Ordinal) is var open and >= 0)
        {
            var close = page.IndexOf(Close, open, StringComparison.Ordinal);
            parts.Add((page[at..open], page[(open + Open.Length)..close]));
            at = close + Close.Length;
        }

        parts.Add((page[at..], null));
        return parts.ToImmutable();
    }
}
