using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Checks;

/// <summary>docs/checks.md, and that it speaks of every check there is.</summary>
public sealed class CheckPageTests
{
    private static readonly string[] s_bridges =
    [
        Bridges.Garden,
        Bridges.Inclined,
        Bridges.Garden + "\ndeck: { layout: across, stringer: { section: 2x6, count: 3 } }\nloads: { uplift: 30 psf }\n"
            + "holes: { base: [{ from_end: 12 in, diameter: 3/8 in }] }\n",
        Bridges.Garden.Replace(
            "span: 30 ft",
            "span: 30 ft, ground: [[0 ft, -4 ft], [30 ft, -4 ft]], water: -5 ft, a: { landing: { level: 8 in, gap: 1/4 in, depth: 4 ft, "
                + "bearer: sill } }",
            StringComparison.Ordinal) + "\nguard: { pickets: { gap: 3-1/2 in }, handrail: { height: 34 in }, newels: { gap: 2 in } }\n",
        Bridges.Garden.Replace(
            "span: 30 ft", "span: 30 ft, survey: { out: [[0 ft, 5 ft], [15 ft, 9 ft], [30 ft, 5 ft]] }", StringComparison.Ordinal)
            + "\nguard: { net: { opening: 2 in, mass: 0.1 lb/ft2 } }\n",
    ];

    private static readonly string[] s_failing =
    [
        Bridges.Garden + "\nstock:\n  treated: { species: southern-pine, grade: no1, lengths: [4 ft] }\n  cedar: { species: "
            + "western-red-cedar, grade: no2, lengths: [2 ft] }\n",
        Bridges.Garden + "\nholes: { brace: [{ face: top, from_end: 10 in, diameter: 1/2 in }] }\n",
        Bridges.Garden.Replace("span: 30 ft", "span: 3 ft", StringComparison.Ordinal),
    ];

    /// <summary>Bridges that together have every check, and some that fail what these hold.</summary>
    public static IEnumerable<string> Texts => s_bridges.Concat(s_failing);

    [Fact]
    public void The_committed_page_is_what_the_program_writes()
    {
        var path = Path.Combine(Sample.Root, "docs", "checks.md");
        if (Sample.Updating)
        {
            File.WriteAllText(path, CheckPage.Markdown());
        }

        Assert.Equal(CheckPage.Markdown(), File.ReadAllText(path));
    }

    [Fact]
    public void Every_check_of_a_bridge_is_declared_as_it_is()
    {
        var declared = AllChecks.Declared.ToDictionary(d => d.Id, StringComparer.Ordinal);
        foreach (var check in s_bridges.SelectMany(b => Bridges.Build(b).Checks))
        {
            Assert.True(declared.TryGetValue(check.Id, out var known), $"{check.Id} is not declared");
            Assert.Equal(known.Title, check.Title);
            Assert.Contains(check.Status, known.Statuses);
            Assert.NotEmpty(check.Source);
            Assert.NotEmpty(check.Detail);
        }
    }

    [Fact]
    public void Every_declared_check_is_one_that_some_bridge_has()
    {
        var found = s_bridges.SelectMany(b => Bridges.Build(b).Checks).Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        Assert.Equal([], AllChecks.Declared.Select(d => d.Id).Except(found, StringComparer.Ordinal));
    }

    [Fact]
    public void Ids_are_unique_and_kebab_case()
    {
        var ids = AllChecks.Declared.Select(d => d.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.All(ids, id => Assert.Matches("^[a-z]+(-[a-z0-9]+)*$", id));
        Assert.All(s_bridges, b => Assert.Equal(Bridges.Build(b).Checks.Length, Bridges.Build(b).Checks.DistinctBy(c => c.Id).Count()));
    }

    // Units that CheckResult lists.
    private static readonly string[] s_units = ["m", "N", "Pa", "Hz", "1", "count"];

    [Fact]
    public void Every_check_has_one_unit()
    {
        var samples = Sample.Names.Select(n => new Sample(n).Build());
        var checks = samples.Concat(Texts.Select(Bridges.Build)).SelectMany(m => m.Checks).ToList();
        Assert.Contains(checks, c => c is { Id: "stock-length", Status: CheckStatus.Fail });
        Assert.All(
            checks.GroupBy(c => c.Id, StringComparer.Ordinal), g => Assert.Single(g.Select(c => c.Unit).Distinct(StringComparer.Ordinal)));
        Assert.Equal(
            s_units.Order(StringComparer.Ordinal),
            checks.Select(c => c.Unit).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Numbers_agree_with_their_status()
    {
        foreach (
            var check in s_bridges.SelectMany(b => Bridges.Build(b).Checks).Where(
                c => c.Ratio is not null && c.Status is CheckStatus.Pass or CheckStatus.Fail))
        {
            var deepMouth = check.Id.StartsWith("channel-deep", StringComparison.Ordinal) || check.Id is "base-channel-notch";
            Assert.True(check.Ratio <= 1 + 1e-9 == (check.Status == CheckStatus.Pass) || deepMouth
                || check.Id is "guard-openings", $"{check.Id} {check.Ratio} {check.Status}");
        }
    }
}
