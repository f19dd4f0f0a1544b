using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Tests.Output.Gltf;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Checks.Parts;

/// <summary>Parts that checks name, of all samples and of bridges that fail: they are there, once, in the same order each time.</summary>
public sealed class NamedPartsTests
{
    /// <summary>Checks that name no part, and why. All others name one at least where they have something to tell.</summary>
    private static readonly Dictionary<string, string> s_ofTheFile = new(StringComparer.Ordinal)
    {
        ["safety-factor"] = "a number of the file",
        ["live-load"] = "a number of the file",
        ["point-load"] = "a number of the file",
        ["mild-inputs"] = "counts values of the file",
        ["wood-values"] = "counts values of the file, in use or not",
    };

    /// <summary>Checks that name what does not hold, and nothing where all of it holds.</summary>
    private static readonly Dictionary<string, string> s_ofFaults = new(StringComparer.Ordinal)
    {
        ["section-on-sale"] = "parts of sections that are not on sale",
        ["wood-outdoors"] = "parts of wood that rots",
        ["fasteners-in-treated-wood"] = "parts of treated wood, if any",
        ["parts-overlap"] = "the two that press most, if any do",
        ["parts-bear"] = "the two that stand apart most, if any do",
        ["rope-in-channels"] = "rope and base that press most, if any do",
        ["keeper-uplift-wind"] = "not looked at without loads.uplift",
    };

    private const string RotsAndIsSawnToOrder = "\nstock:\n  treated: { species: southern-pine, grade: no1, treated: false, "
        + "lengths: [16 ft], sections: [2x4] }\n  cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [12 ft] }\n";

    private static readonly Lazy<List<BridgeModel>> s_models = new(() =>
    [
        .. Sample.Names.Select(n => new Sample(n).Build()),
        .. CheckPageTests.Texts.Append(Bridges.Garden + RotsAndIsSawnToOrder).Select(Bridges.Build),
    ]);

    // Names of the last two nodes on the way to a mesh, read from the written file.
    [Fact]
    public void Every_part_is_one_of_the_model()
    {
        foreach (var model in s_models.Value)
        {
            var nodes = new GlbFile(GltfWriterTests.Bytes(model)).Parts().Keys
                .Select(path => string.Join('/', path.Split('/')[^2..])).ToHashSet(StringComparer.Ordinal);
            var named = model.Checks.SelectMany(c => c.Parts).ToHashSet(StringComparer.Ordinal);
            Assert.Equal([], named.Where(id => !nodes.Contains(id)));
            Assert.Contains("ropes/left", named);
        }
    }

    [Fact]
    public void Every_part_is_named_once() => Assert.All(
        s_models.Value.SelectMany(m => m.Checks), c => Assert.Equal(c.Parts.Distinct(StringComparer.Ordinal), c.Parts));

    [Fact]
    public void The_same_bridge_names_the_same_parts_in_the_same_order()
    {
        var again = CheckPageTests.Texts.Select(Bridges.Build).SelectMany(m => m.Checks).ToList();
        var before = s_models.Value.Skip(Sample.Names.Count()).SelectMany(m => m.Checks).Take(again.Count);
        Assert.Equal(before.Select(c => string.Join(' ', c.Parts)), again.Select(c => string.Join(' ', c.Parts)));
    }

    [Fact]
    public void Every_check_but_those_of_the_file_names_a_part()
    {
        var checks = s_models.Value.SelectMany(m => m.Checks).ToLookup(c => c.Id, StringComparer.Ordinal);
        var none = AllChecks.Declared.Select(d => d.Id).Where(id => checks[id].All(c => c.Parts.IsEmpty));
        Assert.Equal(s_ofTheFile.Keys.Order(StringComparer.Ordinal), none.Order(StringComparer.Ordinal));
        var sometimes = AllChecks.Declared.Select(d => d.Id).Where(id => checks[id].Any(c => c.Parts.IsEmpty)).Except(s_ofTheFile.Keys);
        Assert.Equal(s_ofFaults.Keys.Order(StringComparer.Ordinal), sometimes.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_fails_names_a_part() => Assert.All(
        s_models.Value.SelectMany(m => m.Checks).Where(c => c.Status == CheckStatus.Fail && !s_ofTheFile.ContainsKey(c.Id)),
        c => Assert.NotEmpty(c.Parts));
}
