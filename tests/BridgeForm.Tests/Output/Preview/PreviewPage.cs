using System.Text.Json;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Report;

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
            var demo = File.ReadAllText(Path.Combine(Tool.Repository, "viewer-samples", "alder-dell", "project.yaml"));
            var (page, report) = Write(folder.FullName, "demo", demo);
            // 600 ft in steps of at most 3 ft along the rope: a little over 200 bays.
            var (many, _) = Write(folder.FullName, "long", demo.Replace("span: 30 ft", "span: 600 ft", StringComparison.Ordinal));
            var up = File.ReadAllText(Path.Combine(Tool.Repository, "viewer-samples", "wren-landing", "project.yaml"));
            var (steep, steepReport) = Write(folder.FullName, "steep", up);
            var output = Tool.Run("node", tests, [Path.Combine(tests, "judge.mjs"), page, report, many, steep, steepReport]);
            return (null, JsonSerializer.Deserialize<Dictionary<string, string>>(output)!);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (string Page, string Report) Write(string folder, string name, string project)
    {
        var model = Bridges.Build(project);
        var (page, report) = (Path.Combine(folder, name + ".html"), Path.Combine(folder, name + ".json"));
        using (var stream = File.Create(page))
        {
            PreviewWriter.Write(model, solid => solid.Triangulate(), stream);
        }

        using (var stream = File.Create(report))
        {
            ReportWriter.Write(model, () => [], stream);
        }

        return (page, report);
    }
}
