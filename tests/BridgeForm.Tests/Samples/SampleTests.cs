using System.Globalization;
using System.Text;
using BridgeForm.Checks;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Pdf;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Report;
using BridgeForm.Tests.Output.Gltf;
using BridgeForm.Tests.Output.Referees;
using BridgeForm.Tests.Solids;

namespace BridgeForm.Tests.Samples;

public class SampleTests
{
    // Ten digits hold on every machine; the last few depend on its sines.
    private const double Relative = 1e-9;

    private static readonly string LivePage = Path.Combine(Sample.Root, "viewer-samples", "live.html");

    public static TheoryData<string> Names => new(Sample.Names);

    [Fact]
    public void There_are_at_least_five() => Assert.True(Sample.Names.Count() >= 5);

    [Theory]
    [MemberData(nameof(Names))]
    public void Numbers_and_content_are_as_pinned(string name)
    {
        var (sample, made) = (new Sample(name), MadeSample.Of(name));
        var numbers = Sample.Numbers(made.Model);
        var content = SampleContent.Of(File.ReadAllText(made.FileOf("preview.html")), File.ReadAllText(made.FileOf("report.json")));
        if (Sample.Updating)
        {
            sample.Pin(numbers, content);
        }

        var pinned = sample.Pinned();
        var values = pinned["numbers"]!.AsObject();
        Assert.Equal(values.Select(n => n.Key).Order(StringComparer.Ordinal), numbers.Keys);
        Assert.All(numbers, n => Assert.Equal((double)values[n.Key]!, n.Value, Math.Abs((double)values[n.Key]!) * Relative));
        var lines = pinned["content"]!.ToJsonString();
        Assert.True(
            string.Equals(lines, content.Json().ToJsonString(), StringComparison.Ordinal),
            $"viewer-samples/{name} shows other marks, numbers of parts, checks or titles than before: run viewer-samples/refresh.sh");
    }

    /// <summary>A page lists the checks of the report made with it, each with its status and title.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Page_and_report_show_the_same_checks(string name)
    {
        var made = MadeSample.Of(name);
        var page = File.ReadAllText(made.FileOf("preview.html"));
        var content = SampleContent.Of(page, File.ReadAllText(made.FileOf("report.json")));
        Assert.Equal(content.Checks.Values.Order(StringComparer.Ordinal), SampleContent.ChecksOf(page));
    }

    /// <summary>What the pinned content answers to, and what it does not: a page written from a model changed in one thing.</summary>
    [Fact]
    public void A_reworded_detail_leaves_the_content_and_a_changed_status_does_not()
    {
        var model = MadeSample.Of("alder-dell").Model;
        var before = Content(model);
        Assert.Equal(before, Content(Changed(c => c with { Detail = c.Detail + ", in other words", Source = "elsewhere" })));
        Assert.NotEqual(before, Content(Changed(c => c with { Status = CheckStatus.Fail })));
        Assert.NotEqual(before, Content(Changed(c => c with { Title = c.Title + " anew" })));
        Assert.NotEqual(before, Content(Changed(c => c with { Id = c.Id + "-anew" })));
        Assert.NotEqual(before, Content(model with { Parameters = model.Parameters with { Name = "Another (invented)" } }));
        Assert.NotEqual(before, Content(model with { Checks = model.Checks.RemoveAt(3) }));

        BridgeModel Changed(Func<CheckResult, CheckResult> change) =>
            model with { Checks = model.Checks.SetItem(3, change(model.Checks[3])) };

        static string Content(BridgeModel of)
        {
            using var page = new MemoryStream();
            using var report = new MemoryStream();
            PreviewWriter.Write(of, solid => solid.Triangulate(), page);
            ReportWriter.Write(of, () => [], report);
            var (text, list) = (Encoding.UTF8.GetString(page.ToArray()), Encoding.UTF8.GetString(report.ToArray()));
            return SampleContent.Of(text, list).Json().ToJsonString();
        }
    }

    /// <summary>
    /// What is committed to be opened without a build is no older than its content as pinned. Its sentences may be: they are
    /// made anew when the content changes.
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Committed_page_has_the_pinned_content_and_the_model_beside_it(string name)
    {
        var sample = new Sample(name);
        var page = File.ReadAllText(sample.FileOf("preview.html"));
        var pinned = sample.Pinned()["content"]!;
        Assert.Equal((string)pinned["title"]!, SampleContent.TitleOf(page));
        Assert.Equal(
            pinned["marks"]!.AsObject().Select(m => (m.Key, (int)m.Value!)), SampleContent.MarksOf(page).Select(m => (m.Key, m.Value)));
        Assert.Equal(
            pinned["checks"]!.AsObject().Select(c => (string)c.Value!).Order(StringComparer.Ordinal), SampleContent.ChecksOf(page));
        Assert.Contains(Convert.ToBase64String(File.ReadAllBytes(sample.FileOf("model.glb"))), page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_part_overlaps_floats_or_is_cut_by_a_rope(string name)
    {
        var checks = MadeSample.Of(name).Model.Checks;
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
        var failing = MadeSample.Of(name).Model.Checks.Where(c => c.Status == CheckStatus.Fail).Select(c => $"{c.Id}: {c.Detail}");
        Assert.Empty(failing);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Picture_shows_the_committed_model(string name) =>
        Picture.AssertFresh(name + ".png", Picture.Hash(File.ReadAllBytes(new Sample(name).FileOf("model.glb"))));

    [Theory]
    [InlineData(5, "alder-dell-arrangement.png")]
    [InlineData(7, "alder-dell-frame.png")]
    [Trait("Category", "Referee")]
    public void Pictures_of_drawings_show_what_is_drawn_now(int page, string picture)
    {
        using var stream = new MemoryStream();
        PdfWriter.Write(DrawingSheets.Draw(new Sample("alder-dell").Build()), stream);
        var number = page.ToString(CultureInfo.InvariantCulture);
        Referee.OnFile(stream.ToArray(), "drawings.pdf", path =>
            Picture.AssertFresh(
                picture, Picture.Hash(Encoding.UTF8.GetBytes(Referee.Poppler("pdftotext", "-f", number, "-l", number, path, "-")))));
    }

    [Theory]
    [InlineData("alder-dell-loaded.png")]
    [InlineData("alder-dell-walk.png")]
    public void Second_picture_shows_the_committed_model(string picture) =>
        Picture.AssertFresh(picture, Picture.Hash(File.ReadAllBytes(new Sample("alder-dell").FileOf("model.glb"))));

    [Fact]
    public void Picture_shows_the_committed_live_page() => Picture.AssertFresh("live.png", Picture.Hash(File.ReadAllBytes(LivePage)));

    [Fact]
    public void The_committed_live_page_names_the_version_that_it_was_made_by()
    {
        var version = typeof(BridgeModel).Assembly.GetName().Version!.ToString(3);
        Assert.Contains($"<span id=\"version\">{version}</span>", File.ReadAllText(LivePage), StringComparison.Ordinal);
    }

    [Fact]
    public void Pictures_were_made_by_the_scripts_that_are_here() => Picture.AssertScripts();

    [Theory]
    [MemberData(nameof(Names))]
    [Trait("Category", "Referee")]
    public void Khronos_validator_finds_nothing(string name) =>
        Referee.OnFile(File.ReadAllBytes(MadeSample.Of(name).FileOf("model.glb")), "model.glb", path =>
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
        var path = MadeSample.Of(name).FileOf("model.glb");
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
        var pieces = MadeSample.Of(name).Model.Pieces;
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
