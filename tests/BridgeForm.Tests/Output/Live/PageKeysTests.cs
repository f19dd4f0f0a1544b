using System.Text.Json;
using BridgeForm.Materials;
using BridgeForm.Output.Live;
using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Files;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.Live;

/// <summary>Every single value of the reference page has a control, once.</summary>
public sealed class PageKeysTests
{
    private const double Degree = Math.PI / 180;

    private static readonly JsonElement s_told = Told.Read(PageKeys.Bytes());
    private static readonly List<JsonElement> s_keys = [.. s_told.List("groups").SelectMany(g => g.List("keys"))];

    /// <summary>By hand: feet, Fahrenheit, degrees, a plain number, a whole one.</summary>
    public static TheoryData<string, double, double> Ranges => new()
    {
        { "site.span", 3 * 0.3048, 20000 * 0.3048 },
        { "site.reference_temperature", -92 / 1.8, 60 },
        { "site.a.backstay.angle", -80 * Degree, 89 * Degree },
        { "ropes.termination.efficiency", 0.1, 1 },
        { "ropes.safety_factor", 1, 20 },
        { "deck.count", 1, 1000 },
    };

    // A row of docs/project-file.md that no other row stands below: no mapping, no list. A rope is one value or a mapping.
    [Fact]
    public void Every_value_of_the_reference_page_at_a_fixed_place_is_there_once()
    {
        var rows = File.ReadLines(Path.Combine(Sample.Root, "docs", "project-file.md"))
            .Where(l => l.StartsWith("| `", StringComparison.Ordinal)).Select(l => l.Split('`')[1]).ToList();
        var fixedPlace = rows.Where(r => !r.Contains('[', StringComparison.Ordinal) && !r.Contains("NAME", StringComparison.Ordinal)
            && !r.StartsWith("ropes.type.", StringComparison.Ordinal));
        var single = fixedPlace.Where(r => r is "ropes.type" || !rows.Exists(
            o => o.StartsWith(r + ".", StringComparison.Ordinal) || o.StartsWith(r + "[", StringComparison.Ordinal))).ToList();
        Assert.True(single.Count > 90, $"{single.Count} rows");
        var keys = s_keys.Select(k => k.Text("path")).ToList();
        Assert.Distinct(keys);
        Assert.Equal(single.Order(StringComparer.Ordinal), keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Each_has_words_and_what_a_control_needs()
    {
        Assert.All(s_keys, k => Assert.NotEmpty(k.Text("words")));
        Assert.All(s_keys, k => Assert.Equal(k.Text("form") is "quantity", k.TryGetProperty("kind", out _)));
        Assert.All(s_keys.Where(k => k.Text("form") is "choice"), k => Assert.True(k.List("choices").Count > 1, k.Text("path")));
        Assert.All(
            s_keys.Where(k => k.TryGetProperty("least", out _)),
            k => Assert.True(k.Number("least") < k.Number("most"), k.Text("path")));
        Assert.Equal("Horizontal distance, support to support", Key("site.span").Text("words"));
        Assert.Equal(["private", "public"], Key("use").Texts("choices"));
        Assert.Equal(("4x6", "95 x 170 mm"), (Key("frames.base.section").Text("imperial"), Key("frames.base.section").Text("metric")));
    }

    [Fact]
    public void The_first_exist_and_a_file_says_all_of_them()
    {
        var first = s_told.Texts("first");
        Assert.Equal(10, first.Distinct(StringComparer.Ordinal).Count());
        Assert.All(first, f => Assert.Equal(f, Key(f).Text("path")));
        var values = ProjectReader.Read("name: a\nsite: { span: 30 ft }\n", "a.yaml", Bridges.Catalogue).AllValues;
        Assert.All(first, f => Assert.NotEmpty(Assert.Single(values, v => string.Equals(v.Path, f, StringComparison.Ordinal)).Text));
    }

    [Theory]
    [MemberData(nameof(Ranges))]
    public void Ranges_are_in_SI_units(string path, double least, double most)
    {
        Assert.Equal(least, Key(path).Number("least"), 9);
        Assert.Equal(most, Key(path).Number("most"), 9);
    }

    [Fact]
    public void What_has_no_range_says_none()
    {
        Assert.Null(KeyRange.InSi(ProjectKeys.At("name")));
        Assert.All((string[])["name", "use", "ropes.sag"], p => Assert.False(Key(p).TryGetProperty("least", out _), p));
    }

    [Fact]
    public void Ropes_are_those_that_a_file_may_name() =>
        Assert.Equal(RopeTable.Catalogue.Keys, s_told.Texts("ropes"));

    private static JsonElement Key(string path) =>
        Assert.Single(s_keys, k => string.Equals(k.Text("path"), path, StringComparison.Ordinal));
}
