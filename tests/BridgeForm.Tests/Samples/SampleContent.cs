using System.Text.Json;
using System.Text.Json.Nodes;
using BridgeForm.Tests.Output.Gltf;

namespace BridgeForm.Tests.Samples;

/// <summary>
/// What somebody finds in a sample's page, without the sentences: its title, the marks with their numbers, the checks. As long
/// as this stays, nobody is misled by a committed page that words a detail as it did before.
/// </summary>
/// <param name="Title">The bridge's name.</param>
/// <param name="Marks">Number of parts by mark.</param>
/// <param name="Checks">Status and title by id, such as <c>pass: Sag of the ropes</c>.</param>
internal sealed record SampleContent(string Title, SortedDictionary<string, int> Marks, SortedDictionary<string, string> Checks)
{
    /// <summary>Of a page and the report made with it.</summary>
    public static SampleContent Of(string page, string report)
    {
        var checks = JsonDocument.Parse(report).RootElement.GetProperty("checks").EnumerateArray()
            .ToDictionary(c => c.GetProperty("id").GetString()!, Words, StringComparer.Ordinal);
        return new(View(page).GetProperty("name").GetString()!, MarksOf(page), new(checks, StringComparer.Ordinal));
    }

    /// <summary>Status and title of the checks that a page shows, in order of the alphabet; a page knows no ids.</summary>
    public static IEnumerable<string> ChecksOf(string page) =>
        View(page).GetProperty("checks").EnumerateArray().Select(Words).Order(StringComparer.Ordinal);

    /// <summary>Number of parts by mark; the page's list and the model in it must agree.</summary>
    public static SortedDictionary<string, int> MarksOf(string page)
    {
        var listed = View(page).GetProperty("pieces").EnumerateArray()
            .ToDictionary(p => p.GetProperty("mark").GetString()!, p => p.GetProperty("quantity").GetInt32(), StringComparer.Ordinal);
        var drawn = new GlbFile(Convert.FromBase64String(Between(page, "id=\"model\">"))).Nodes
            .Select(n => n.TryGetProperty("extras", out var e) && e.TryGetProperty("mark", out var mark) ? mark.GetString()! : "")
            .Where(m => m.Length > 0).CountBy(m => m, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        Assert.Equal(
            new SortedDictionary<string, int>(listed, StringComparer.Ordinal), new SortedDictionary<string, int>(
                drawn, StringComparer.Ordinal));
        return new(listed, StringComparer.Ordinal);
    }

    /// <summary>The title that a page shows.</summary>
    public static string TitleOf(string page) => View(page).GetProperty("name").GetString()!;

    public JsonObject Json() => new()
    {
        ["title"] = Title,
        ["marks"] = new JsonObject(Marks.Select(m => KeyValuePair.Create(m.Key, (JsonNode?)JsonValue.Create(m.Value)))),
        ["checks"] = new JsonObject(Checks.Select(c => KeyValuePair.Create(c.Key, (JsonNode?)JsonValue.Create(c.Value)))),
    };

    private static string Words(JsonElement check) =>
        $"{check.GetProperty("status").GetString()}: {check.GetProperty("title").GetString()}";

    private static JsonElement View(string page) => JsonDocument.Parse(Between(page, "id=\"view\">")).RootElement;

    private static string Between(string page, string start)
    {
        var from = page.IndexOf(start, StringComparison.Ordinal) + start.Length;
        return page[from..page.IndexOf("</script>", from, StringComparison.Ordinal)];
    }
}
