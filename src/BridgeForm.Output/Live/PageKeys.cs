using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Definition;

namespace BridgeForm.Output.Live;

/// <summary>
/// The keys that the live page has a control for: every single value of the project file that stands at a fixed place, in groups
/// as a builder decides. Words, ranges and choices are those of the definition.
/// </summary>
public static class PageKeys
{
    // What a builder decides first; own choice.
    private static readonly ImmutableArray<string> s_first =
    [
        "site.span", "site.rise", "use", "ropes.sag", "ropes.spacing", "ropes.type", "frames.spacing", "frames.post.foot",
        "frames.post.length", "frames.post.lean",
    ];

    private static readonly ImmutableArray<(string Group, ImmutableArray<string> Begins)> s_groups =
    [
        ("site", ["name", "units", "use", "site"]),
        ("walkway", ["deck"]),
        ("frame", ["frames", "joints", "holes"]),
        ("guard", ["guard"]),
        ("ropes", ["ropes", "saddle", "as_built"]),
        ("loads", ["loads", "limits"]),
        ("lumber", ["stock", "species", "values", "treatment", "fasteners", "prices"]),
        ("shop", ["shop", "erection", "quote", "sheets"]),
    ];

    /// <summary>
    /// <c>{ first: [path], ropes: [key], groups: [{ name, keys: [{ path, form, kind?, choices?, least?, most?, imperial?, metric?, note?,
    /// words }] }] }</c>; <c>least</c> and <c>most</c> in SI units.
    /// </summary>
    public static byte[] Bytes() => PageJson.Object(json =>
    {
        PageJson.Texts(json, "first", s_first);
        PageJson.Texts(json, "ropes", RopeTable.Groups.SelectMany(g => g.Ropes).Select(r => r.Name));
        var all = Walk("", ProjectKeys.Root).ToList();
        PageJson.Objects(json, "groups", s_groups, group =>
        {
            json.WriteString("name", group.Group);
            var keys = all.Where(k => group.Begins.Contains(k.Path.Split('.')[0], StringComparer.Ordinal));
            PageJson.Objects(json, "keys", keys, k => Key(json, k.Path, k.Spec));
        });
    });

    private static IEnumerable<(string Path, KeySpec Spec)> Walk(string above, KeySpec map) => map.Keys.SelectMany(spec =>
    {
        var path = above + spec.Name;
        return spec.Shape switch
        {
            KeyShape.Map => Walk(path + ".", spec),
            KeyShape.Value => [(path, spec)],
            _ => (IEnumerable<(string, KeySpec)>)[],
        };
    });

    private static void Key(Utf8JsonWriter json, string path, KeySpec spec)
    {
        json.WriteString("path", path);
        json.WriteString("form", spec.Type.ToString().ToLowerInvariant());
        PageJson.Maybe(json, "kind", spec.Kinds.IsEmpty ? null : spec.Kinds[0].ToString().ToLowerInvariant());
        if (!spec.Choices.IsEmpty)
        {
            PageJson.Texts(json, "choices", spec.Choices);
        }

        var range = KeyRange.InSi(spec);
        PageJson.Maybe(json, "least", range?.Least);
        PageJson.Maybe(json, "most", range?.Most);
        PageJson.Maybe(json, "imperial", spec.Default);
        PageJson.Maybe(json, "metric", spec.MetricDefault);
        PageJson.Maybe(json, "note", spec.DefaultNote);
        json.WriteString("words", spec.Description);
    }
}
