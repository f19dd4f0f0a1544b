using BridgeForm.Checks;
using BridgeForm.Output.Gltf;
using BridgeForm.Tests.Output.Gltf;
using BridgeForm.Tests.Output.Referees;
using BridgeForm.Tests.Solids;

namespace BridgeForm.Tests.Samples;

public class SampleTests
{
    // Ten digits hold on every machine; the last few depend on its sines.
    private const double Relative = 1e-9;

    // Coordinates in the file are single precision.
    private const double Coordinate = 1e-5;

    public static TheoryData<string> Names => new(Sample.Names);

    [Fact]
    public void There_are_at_least_five() => Assert.True(Sample.Names.Count() >= 5);

    [Theory]
    [MemberData(nameof(Names))]
    public void Numbers_are_as_pinned(string name)
    {
        var sample = new Sample(name);
        var numbers = Sample.Numbers(sample.Build());
        if (Sample.Updating)
        {
            sample.Pin(numbers);
        }

        var pinned = sample.Pinned();
        Assert.Equal(pinned.Keys.Order(StringComparer.Ordinal), numbers.Keys);
        Assert.All(numbers, n => Assert.Equal(pinned[n.Key], n.Value, Math.Abs(pinned[n.Key]) * Relative));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_part_overlaps_floats_or_is_cut_by_a_rope(string name)
    {
        foreach (var check in new Sample(name).Build().Checks.Where(c => c.Id is "parts-overlap" or "parts-bear" or "rope-in-channels"))
        {
            Assert.True(check.Status == CheckStatus.Pass, check.Detail);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_check_fails(string name)
    {
        var failing = new Sample(name).Build().Checks.Where(c => c.Status == CheckStatus.Fail).Select(c => $"{c.Id}: {c.Detail}");
        Assert.Empty(failing);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Committed_model_is_what_the_program_makes(string name)
    {
        var sample = new Sample(name);
        using var made = new MemoryStream();
        GltfWriter.Write(sample.Build(), solid => solid.Triangulate(), made);
        if (Sample.Updating)
        {
            File.WriteAllBytes(sample.FileOf("model.glb"), made.ToArray());
        }

        var committed = new GlbFile(File.ReadAllBytes(sample.FileOf("model.glb"))).Parts();
        var fresh = new GlbFile(made.ToArray());
        var parts = fresh.Parts();
        Assert.Equal(committed.Keys.Order(StringComparer.Ordinal), parts.Keys.Order(StringComparer.Ordinal));
        var old = new GlbFile(File.ReadAllBytes(sample.FileOf("model.glb")));
        foreach (var (path, part) in parts)
        {
            var mesh = fresh.Mesh(part.GetProperty("mesh").GetInt32()).Positions;
            var before = old.Mesh(committed[path].GetProperty("mesh").GetInt32()).Positions;
            Assert.Equal(before.Length, mesh.Length);
            Assert.All(mesh.Zip(before), pair => Assert.InRange((pair.First - pair.Second).Length, 0, Coordinate));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pictures_and_previews_show_the_committed_model(string name)
    {
        const string Mend = "stale: run viewer-samples/refresh.sh";
        var model = File.ReadAllBytes(new Sample(name).FileOf("model.glb"));
        var pictured = File.ReadAllLines(Path.Combine(Sample.Root, "docs", "pictures", "sources.txt"));
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(model));
        Assert.True(pictured.Contains($"{hash} {name}.png", StringComparer.Ordinal), $"docs/pictures/{name}.png is {Mend}");
        var preview = File.ReadAllText(new Sample(name).FileOf("preview.html"));
        Assert.True(preview.Contains(Convert.ToBase64String(model), StringComparison.Ordinal), $"{name}/preview.html is {Mend}");
    }

    [Theory]
    [MemberData(nameof(Names))]
    [Trait("Category", "Referee")]
    public void Khronos_validator_finds_nothing(string name) =>
        Referee.OnFile(File.ReadAllBytes(new Sample(name).FileOf("model.glb")), "model.glb", path =>
        {
            var report = System.Text.Json.JsonDocument.Parse(Referee.Node("gltf-validate.js", path)).RootElement[0];
            Assert.Equal(0, report.GetProperty("numErrors").GetInt32());
            Assert.True(report.GetProperty("numWarnings").GetInt32() == 0, report.GetProperty("messages").GetRawText());
        });

    // Three general readers: glTF-Transform and assimp here, three.js in the preview's browser tests.
    [Theory]
    [MemberData(nameof(Names))]
    [Trait("Category", "Referee")]
    public void General_readers_open_the_model_and_an_optimiser_makes_it_hardly_smaller(string name)
    {
        const double Allowed = 1.2;
        var path = new Sample(name).FileOf("model.glb");
        var nodes = new GlbFile(File.ReadAllBytes(path)).Nodes.Length;
        var size = System.Text.Json.JsonDocument.Parse(Referee.Node("gltf-size.mjs", path)).RootElement;
        Assert.Equal(nodes, size.GetProperty("nodes").GetInt32());
        Assert.InRange(size.GetProperty("bytes").GetDouble(), 1, Allowed * size.GetProperty("optimised").GetDouble());
        Assert.Matches($@"Nodes: +{nodes}\b", Referee.Assimp("info", path));
    }

    // Volume and closedness of all pieces, by manifold-3d's own trims and subtractions.
    [Theory]
    [MemberData(nameof(Names))]
    [Trait("Category", "Referee")]
    public void Manifold_3d_finds_the_same_volumes(string name)
    {
        var pieces = new Sample(name).Build().Pieces;
        var answers = Manifold.Ask(pieces.Select(p => CutBody.Of(p.Shape)));
        Assert.Equal(pieces.Length, answers.Count);
        Assert.All(pieces.Zip(answers), pair =>
        {
            Assert.Equal("NoError", pair.Second.Status);
            Assert.Equal(0, pair.Second.Open);
            Assert.Equal(pair.Second.Volume, pair.First.Volume, pair.First.Volume * 1e-6);
            Assert.Empty(pair.First.Solid.Audit());
        });
    }
}
