using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BridgeForm.Roles;
using BridgeForm.Tests.Cli;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests;

/// <summary>
/// docs/outputs.md against the files of a real run: what is written is described, and what is described is written; and the
/// notices against what the program is built from.
/// </summary>
public sealed partial class DocumentTests : IClassFixture<DocumentTests.Made>
{
    private static readonly string s_page = File.ReadAllText(Path.Combine(Sample.Root, "docs", "outputs.md")).ReplaceLineEndings("\n");

    private readonly Made _made;

    public DocumentTests(Made made) => _made = made;

    /// <summary>A garden bridge on disk, on ropes too thin for it, so that the report has remedies, with a joint described.</summary>
    public sealed class Made : IDisposable
    {
        private readonly CommandRun _run = new();

        public Made()
        {
            var project = Bridges.Garden.Replace("-3/4,", "-3/8,", StringComparison.Ordinal)
                + "\njoints: { post-foot: { kind: bracket, capacity: { uplift: 1500 lbf, shear: 900 lbf, source: invented } } }\n";
            var (code, _, error) = CommandRun.Run("make", _run.Write("bridge.yaml", project), "-o", Folder, "--quiet");
            Assert.True(code == 0, error);
            Assert.Equal(0, CommandRun.Run("make", _run.Path("bridge.yaml"), "-o", Folder, "--only", "usdz,scale-model", "--quiet").Code);
            Files = [.. Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(Folder, f).Replace('\\', '/'))
                .Order(StringComparer.Ordinal)];
        }

        public IReadOnlyList<string> Files { get; }

        private string Folder => _run.Path("out");

        public string Text(string name) => File.ReadAllText(Path.Combine(Folder, name));

        public void Dispose() => _run.Dispose();
    }

    /// <summary>The demo's lowest place, in metres, which is the underside of a rope: a telephone shows it under the grass.</summary>
    [Fact]
    public void How_deep_the_demo_reaches_under_its_origin_is_told()
    {
        var model = MadeSample.Of("alder-dell").Model;
        var wood = model.Pieces.SelectMany(p => p.Occurrences.SelectMany(o => p.Solid.Placed(o.Placement).Vertices)).Min(v => v.Y);
        var low = model.RopeLines[0].Points.Min(p => p.Y) - (3.0 / 8 * 0.0254);
        Assert.True(low < wood);
        Assert.Contains(FormattableString.Invariant($"of the demo {-low:0.00} m."), s_page, StringComparison.Ordinal);
        using var stream = new MemoryStream();
        BridgeForm.Output.Usd.UsdWriter.Write(model, stream);
        Assert.Contains(
            FormattableString.Invariant($"The bridge reaches {-low:0.##} m below its origin, y = 0."),
            System.Text.Encoding.UTF8.GetString(stream.ToArray()), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_file_has_its_section()
    {
        var written = _made.Files.Select(Pattern).ToHashSet(StringComparer.Ordinal);
        var described = Heads().SelectMany(h => h.Split(" and ")).Where(h => h.Contains('.', StringComparison.Ordinal)).ToHashSet(
            StringComparer.Ordinal);
        Assert.Equal(written.Order(StringComparer.Ordinal), described.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_column_is_in_its_table()
    {
        var tables = _made.Files.Where(f => f.EndsWith(".csv", StringComparison.Ordinal)).ToList();
        Assert.Equal(14, tables.Count);
        Assert.All(tables, table =>
        {
            var columns = Fields(_made.Text(table).Split('\n')[0].TrimEnd('\r')).Select(f => Share().Replace(f, "S %")).Distinct(
                StringComparer.Ordinal);
            var described = TableRows(Section(table), "column").SelectMany(r => Spans(r.First));
            Assert.Equal(columns, described);
        });
    }

    [Fact]
    public void Every_row_below_the_rope_marks_is_named()
    {
        var rows = _made.Text("rope-marks.csv").Split('\n').Select(l => Fields(l)[0])
            .Where(f => f.Length > 3 && f is not "Frame" && f != Caution.Text).ToList();
        var described = TableRows(Section("rope-marks.csv"), "row").SelectMany(r => Spans(r.First)).ToList();
        Assert.All(rows.Zip(described), r => Assert.StartsWith(r.Second, r.First, StringComparison.Ordinal));

        // What new rope does, and what riggers must know: sentences.
        Assert.True(rows.Count > described.Count);
        Assert.All(rows.Skip(described.Count), r => Assert.EndsWith(".", r, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_key_of_the_report_is_in_the_row_of_its_object()
    {
        using var report = JsonDocument.Parse(_made.Text("report.json"));
        var keys = new HashSet<(string Path, string Key)>();
        Collect(report.RootElement, "", keys);
        Assert.Contains(("remedies[]", "text"), keys);
        var rows = TableRows(Section("report.json"), "path")
            .SelectMany(r => Spans(r.First).Select(path => (Path: path, Keys: Spans(r.Keys).ToHashSet(StringComparer.Ordinal))))
            .ToDictionary(r => r.Path, r => r.Keys, StringComparer.Ordinal);
        var missing = keys.Where(k => !IsDescribed(k.Path, k.Key, rows));
        Assert.Empty(missing.Select(k => $"{k.Path}.{k.Key}"));
        var paths = keys.SelectMany(k => new[] { Join(k.Path, k.Key), Join(k.Path, k.Key) + "[]" }).ToHashSet(StringComparer.Ordinal);
        Assert.All(rows.Keys, path => Assert.Contains(path, paths));
    }

    [Fact]
    public void Every_package_that_is_passed_on_is_in_the_notices()
    {
        var notices = File.ReadAllText(Path.Combine(Sample.Root, "THIRD-PARTY-NOTICES.md"));
        var versions = XDocument.Load(Path.Combine(Sample.Root, "Directory.Packages.props")).Descendants("PackageVersion")
            .ToDictionary(p => p.Attribute("Include")!.Value, p => p.Attribute("Version")!.Value.Trim('[', ']'), StringComparer.Ordinal);
        var used = Directory.EnumerateFiles(Path.Combine(Sample.Root, "src"), "*.csproj", SearchOption.AllDirectories)
            .SelectMany(f => XDocument.Load(f).Descendants("PackageReference")).Select(p => p.Attribute("Include")!.Value).ToList();
        Assert.NotEmpty(used);
        Assert.All(used, package => Assert.Contains($"| {package} {versions[package]} |", notices, StringComparison.Ordinal));
        using var page = JsonDocument.Parse(File.ReadAllText(Path.Combine(Sample.Root, "src", "BridgeForm.Preview", "package.json")));
        Assert.All(
            page.RootElement.GetProperty("dependencies").EnumerateObject(),
            d => Assert.Contains($"| {d.Name}.js {d.Value} |", notices, StringComparison.Ordinal));
        Assert.Contains(
            File.ReadAllText(Path.Combine(Sample.Root, "src/BridgeForm.Output/Fonts/LICENSE")).Trim(), notices, StringComparison.Ordinal);
    }

    private static bool IsDescribed(string path, string key, Dictionary<string, HashSet<string>> rows) =>
        (rows.TryGetValue(path, out var keys) && keys.Contains(key))
        || rows.ContainsKey(Join(path, key)) || rows.ContainsKey(Join(path, key) + "[]");

    private static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";

    private static void Collect(JsonElement value, string path, HashSet<(string, string)> keys)
    {
        if (value.ValueKind is JsonValueKind.Object)
        {
            foreach (var property in value.EnumerateObject())
            {
                keys.Add((path, property.Name));
                Collect(property.Value, Join(path, property.Name), keys);
            }
        }
        else if (value.ValueKind is JsonValueKind.Array)
        {
            foreach (var item in value.EnumerateArray())
            {
                Collect(item, path + "[]", keys);
            }
        }
    }

    private static string Pattern(string file)
    {
        var (folder, name) = (Path.GetDirectoryName(file)!, Path.GetFileName(file));
        return folder.Length == 0 || name is "all.pdf" or "index.csv" ? file
            : Board().IsMatch(name) ? $"{folder}/board-NN{Path.GetExtension(name)}"
            : $"{folder}/MARK{Path.GetExtension(name)}";
    }

    private static IEnumerable<string> Heads() => Head().Matches(s_page).Select(m => m.Groups["title"].Value);

    private static string Section(string title)
    {
        var start = Head().Matches(s_page).Single(m => m.Groups["title"].Value == title);
        var next = start.NextMatch();
        return s_page[start.Index..(next.Success ? next.Index : s_page.Length)];
    }

    /// <summary>Rows of the table in a section whose first head is the given word: first cell, and the rest.</summary>
    private static IEnumerable<(string First, string Keys)> TableRows(string section, string head) => section
        .Split('\n')
        .SkipWhile(l => !l.StartsWith($"| {head} |", StringComparison.Ordinal))
        .Skip(2)
        .TakeWhile(l => l.StartsWith('|'))
        .Select(l => l.Split('|', 3))
        .Select(cells => (cells[1], cells[2]));

    private static IEnumerable<string> Spans(string text) => Span().Matches(text).Select(m => m.Groups["code"].Value);

    private static List<string> Fields(string line) =>
        [.. Field().Matches(line).Select(m => m.Groups["quoted"].Success ? m.Groups["quoted"].Value : m.Groups["plain"].Value)];

    [GeneratedRegex("^##+ (?<title>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Head();

    [GeneratedRegex("`(?<code>[^`]+)`", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Span();

    [GeneratedRegex("(?<=^|,)(\"(?<quoted>[^\"]*)\"|(?<plain>[^,\"]*))(?=,|\\r?$)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Field();

    [GeneratedRegex(@"\d+\.\d+ %", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Share();

    [GeneratedRegex(@"^board-\d+\.", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Board();
}
