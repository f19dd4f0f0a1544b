using System.Text.Json;
using System.Text.Json.Nodes;
using BridgeForm.Materials;
using BridgeForm.Project.Files;
using BridgeForm.Ropes;

namespace BridgeForm.Tests.Samples;

/// <summary>The finished examples in viewer-samples/.</summary>
internal sealed record Sample(string Name)
{
    private static readonly JsonSerializerOptions s_written = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static IEnumerable<string> Names => Directory.EnumerateDirectories(Path.Combine(Root, "viewer-samples"))
        .Where(d => File.Exists(Path.Combine(d, "project.yaml")))
        .Select(d => Path.GetFileName(d)!)
        .Order(StringComparer.Ordinal);

    public static string Root { get; } = FindRoot();

    /// <summary>Asked to write what is pinned anew.</summary>
    public static bool Updating => Environment.GetEnvironmentVariable("BRIDGEFORM_UPDATE") is "1";

    public string FileOf(string name) => Path.Combine(Root, "viewer-samples", Name, name);

    public BridgeModel Build()
    {
        var reading = ProjectReader.Read(File.ReadAllText(FileOf("project.yaml")), Name, RopeTable.Catalogue);
        Assert.True(reading.Parameters is not null, string.Join('\n', reading.Lines));
        return Bridges.Build(reading.Parameters!);
    }

    /// <summary>The numbers that are pinned, by name.</summary>
    public static SortedDictionary<string, double> Numbers(BridgeModel model) => new(StringComparer.Ordinal)
    {
        ["bays"] = model.Rope.Segments.Length,
        ["sag"] = model.Rope.Sag,
        ["design_horizontal"] = model.Rope.Horizontal,
        ["design_max_tension"] = model.Rope.LargestTension,
        ["unstressed_length"] = model.Rope.UnstressedLength(),
        ["first_slope_deg"] = Bridges.Degrees(model.Rope.EndSlopes().First),
        ["last_slope_deg"] = Bridges.Degrees(model.Rope.EndSlopes().Last),
        ["pieces"] = model.Pieces.Length,
        ["parts"] = model.Pieces.Sum(p => p.Occurrences.Length),
        ["wood_volume"] = model.Pieces.Sum(p => p.Volume * p.Occurrences.Length),
        ["wood_mass"] = model.Pieces.Sum(p => p.Mass * p.Occurrences.Length),
        ["exposed_cut_area"] = model.Pieces.Sum(p => p.ExposedCutArea * p.Occurrences.Length),
    };

    /// <summary>What is pinned: numbers and content.</summary>
    public JsonObject Pinned() => JsonNode.Parse(File.ReadAllText(FileOf("numbers.json")))!.AsObject();

    public void Pin(SortedDictionary<string, double> numbers, SampleContent content)
    {
        var json = new JsonObject
        {
            ["numbers"] = new JsonObject(numbers.Select(n => KeyValuePair.Create(n.Key, (JsonNode?)JsonValue.Create(n.Value)))),
            ["content"] = content.Json(),
        };
        File.WriteAllText(FileOf("numbers.json"), json.ToJsonString(s_written) + "\n");
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "BridgeForm.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
