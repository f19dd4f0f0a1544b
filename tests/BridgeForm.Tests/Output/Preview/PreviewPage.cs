using System.Text.Json;
using BridgeForm.Output.Preview;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.Preview;

/// <summary>What a browser finds wrong with a page; asked once for all tests, because starting a browser takes longest.</summary>
public sealed class PreviewPage
{
    private readonly Lazy<(string? Missing, Dictionary<string, string> Faults)> _found = new(Judge);

    /// <summary>What is wrong under the name of a check; empty when nothing is, a sentence when a program is missing.</summary>
    public string Fault(string check) =>
        _found.Value.Missing
        ?? (_found.Value.Faults.TryGetValue(check, out var fault) ? fault : $"tests/preview/checks.mjs has no check {check}.");

    /// <summary>Names of all checks that were made.</summary>
    public IEnumerable<string> Names => _found.Value.Faults.Keys;

    private static (string? Missing, Dictionary<string, string> Faults) Judge()
    {
        var tests = Path.Combine(Tool.Repository, "tests", "preview");
        var chromium = Environment.GetEnvironmentVariable("CHROMIUM") ?? "/usr/bin/chromium";
        if (!Directory.Exists(Path.Combine(tests, "node_modules")) || !File.Exists(chromium))
        {
            var missing = File.Exists(chromium)
                ? "The browser driver is not installed: run `npm ci` in tests/preview."
                : "No Chromium is installed: install the package chromium, or name the program in $CHROMIUM.";
            return (missing, []);
        }

        var folder = Directory.CreateTempSubdirectory("bridgeform-preview-");
        try
        {
            var output = Tool.Run("node", tests, [Path.Combine(tests, "judge.mjs"), MadeSample.All(), Long(folder.FullName)]);
            return (null, JsonSerializer.Deserialize<Dictionary<string, string>>(output)!);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // 600 ft in steps of at most 3 ft along the rope: a little over 200 bays.
    private static string Long(string folder)
    {
        var demo = File.ReadAllText(new Sample("alder-dell").FileOf("project.yaml"));
        var page = Path.Combine(folder, "long.html");
        using var stream = File.Create(page);
        PreviewWriter.Write(
            Bridges.Build(demo.Replace("span: 30 ft", "span: 600 ft", StringComparison.Ordinal)), solid => solid.Triangulate(), stream);
        return page;
    }
}
