using BridgeForm.Project.Reading;

namespace BridgeForm.Tests;

/// <summary>
/// Values of a plain bridge for keys that a test's file leaves out, so that its numbers stay whatever the program's own defaults
/// become. Those are tested by files that are read without it.
/// </summary>
internal static class Ground
{
    private const string Imperial = """
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 44 in, sag: 6 % }
        frames:
          spacing: 3 ft
          base: { section: 4x4, length: 56 in }
          channel: { depth: 5/8 in, end_depth: 3/4 in, liner: 0 in }
          post: { section: 2x4, length: 40 in, foot: 17-3/4 in }
          brace: { foot: 27-1/2 in }
        deck: { side_gap: 1/2 in }
        guard: { rails: { section: 1x4, count: 6, stock: cedar } }
        """;

    private const string Metric = """
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 1150 mm, sag: 6 % }
        frames:
          spacing: 900 mm
          base: { section: 89 x 89 mm, length: 1450 mm }
          channel: { depth: 16 mm, end_depth: 19 mm, liner: 0 mm }
          post: { section: 38 x 89 mm, length: 1020 mm, foot: 450 mm }
          brace: { section: 38 x 89 mm, foot: 695 mm }
        deck: { board: { section: 38 x 140 mm }, stringer: { section: 38 x 140 mm }, side_gap: 12 mm }
        guard: { rails: { section: 19 x 89 mm, count: 6, stock: cedar }, cap: { section: 38 x 140 mm } }
        """;

    // Keys of which a file gives one: neither is put in where the other stands.
    private static readonly Dictionary<string, string> s_inPlaceOf =
        new(StringComparer.Ordinal) { ["foot"] = "length", ["count"] = "heights" };

    /// <summary>The file with the ground under it, in flow style; as it is where it is no mapping.</summary>
    public static string Under(string text)
    {
        var faults = new FaultList();
        if (YamlTree.Read(text, faults) is not MapNode map || faults.Any)
        {
            return text;
        }

        var metric = map.Entries.Any(e => e is { Key: "units", Value: ScalarNode { Text: "metric" } });
        return Written(Merged(map, (MapNode)YamlTree.Read(metric ? Metric : Imperial, faults)!, ""));
    }

    private static MapNode Merged(MapNode file, MapNode ground, string path) =>
        Over(file, IsPicketed(file, path) ? WithoutCount(ground) : ground, path);

    private static MapNode Over(MapNode file, MapNode ground, string path) => file with
    {
        Entries =
        [
            .. file.Entries.Select(e => ground.Entries.FirstOrDefault(g => g.Key == e.Key) is { Value: MapNode under }
                && e.Value is MapNode over ? e with { Value = Merged(over, under, e.Key) } : e),
            .. ground.Entries.Where(g => file.Entries.All(e => e.Key != g.Key) && !IsReplaced(file, g.Key, path))
                .Select(g => g.Value is MapNode under ? g with { Value = Merged(new MapNode(g.KeyPlace, []), under, g.Key) } : g),
        ],
    };

    // Pickets stand on two rails, a net hangs to one, however many the ground has.
    private static bool IsPicketed(MapNode file, string path) => path is "guard" && file.Entries.Any(e => e.Key is "pickets" or "net");

    private static MapNode WithoutCount(MapNode guard) => guard with
    {
        Entries =
        [
            .. guard.Entries.Select(e => e is { Key: "rails", Value: MapNode rails }
                ? e with { Value = rails with { Entries = [.. rails.Entries.Where(r => r.Key is not "count")] } } : e),
        ],
    };

    // A key in another's place, or stringers of a deck without treads.
    private static bool IsReplaced(MapNode file, string key, string path) => (path, key) switch
    {
        ("deck", "stringer") => !file.Entries.Any(e => e is { Key: "layout", Value: ScalarNode { Text: "across" } }),
        ("brace" or "rails", _) when s_inPlaceOf.TryGetValue(key, out var other) => file.Entries.Any(e => e.Key == other),
        _ => false,
    };

    private static string Written(FileNode node) => node switch
    {
        MapNode map => $"{{ {string.Join(", ", map.Entries.Select(e => $"{Quoted(e.Key)}: {Written(e.Value)}"))} }}",
        ListNode list => $"[ {string.Join(", ", list.Items.Select(Written))} ]",
        ScalarNode scalar => scalar.Text.Length == 0 && !scalar.Quoted ? "" : Quoted(scalar.Text),
        _ => throw new ArgumentOutOfRangeException(nameof(node), node, "Was told as a fault."),
    };

    private static string Quoted(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
}
