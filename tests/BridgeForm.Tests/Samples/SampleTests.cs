using System.Globalization;
using System.Text;
using BridgeForm.Checks;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Pdf;
using BridgeForm.Output.Preview;
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
        var checks = new Sample(name).Build().Checks;
        foreach (var id in (string[])["parts-overlap", "parts-bear", "rope-in-channels"])
        {
            var check = Assert.Single(checks, c => string.Equals(c.Id, id, StringComparison.Ordinal));
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

        var old = new GlbFile(File.ReadAllBytes(sample.FileOf("model.glb")));
        var fresh = new GlbFile(made.ToArray());
        var (committed, parts) = (old.Parts(), fresh.Parts());
        Assert.Equal(committed.Keys.Order(StringComparer.Ordinal), parts.Keys.Order(StringComparer.Ordinal));
        foreach (var property in (string[])["materials", "extensions", "extensionsUsed", "asset", "cameras"])
        {
            Assert.Equal(old.Json.GetProperty(property).GetRawText(), fresh.Json.GetProperty(property).GetRawText());
        }

        foreach (var (path, part) in parts)
        {
            Assert.Equal(Extras(committed[path]), Extras(part));
            var (now, before) = (fresh.WorldCorners(part), old.WorldCorners(committed[path]));
            Assert.Equal(before.Length, now.Length);
            Assert.All(now.Zip(before), pair => Assert.InRange((pair.First - pair.Second).Length, 0, Coordinate));
        }

        static string Extras(System.Text.Json.JsonElement node) => node.TryGetProperty("extras", out var extras) ? extras.GetRawText() : "";
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Committed_preview_is_what_the_program_makes(string name)
    {
        var sample = new Sample(name);
        using var stream = new MemoryStream();
        PreviewWriter.Write(sample.Build(), solid => solid.Triangulate(), stream);
        var (committed, made) = (new PageText(File.ReadAllText(sample.FileOf("preview.html"))), new PageText(Encoding.UTF8.GetString(stream.ToArray())));
        Assert.Equal(Convert.ToBase64String(File.ReadAllBytes(sample.FileOf("model.glb"))), committed.Model);
        Assert.True(string.Equals(committed.Words, made.Words, StringComparison.Ordinal), $"{name}/preview.html {Picture.Stale}");
        Assert.Equal(committed.Numbers.Length, made.Numbers.Length);
        Assert.All(committed.Numbers.Zip(made.Numbers), n => Assert.Equal(n.First, n.Second, Coordinate + (Math.Abs(n.First) * Coordinate)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Picture_shows_the_committed_model(string name) =>
        Picture.AssertFresh(name + ".png", Picture.Hash(File.ReadAllBytes(new Sample(name).FileOf("model.glb"))));

    [Theory]
    [InlineData(2, "alder-dell-arrangement.png")]
    [InlineData(3, "alder-dell-frame.png")]
    [Trait("Category", "Referee")]
    public void Pictures_of_drawings_show_what_is_drawn_now(int page, string picture)
    {
        using var stream = new MemoryStream();
        PdfWriter.Write(DrawingSheets.Of(new Sample("alder-dell").Build()), stream);
        var number = page.ToString(CultureInfo.InvariantCulture);
        Referee.OnFile(stream.ToArray(), "drawings.pdf", path =>
            Picture.AssertFresh(picture, Picture.Hash(Encoding.UTF8.GetBytes(Referee.Poppler("pdftotext", "-f", number, "-l", number, path, "-")))));
    }

    [Fact]
    public void Pictures_were_made_by_the_scripts_that_are_here() => Picture.AssertScripts();

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
