using BridgeForm.Output.Live;
using BridgeForm.Project.Files;
using BridgeForm.Tests.Cli;
using BridgeForm.Tests.Project;

namespace BridgeForm.Tests.Output.Live;

/// <summary>What each step says of itself, and faults of the bridge in the words of the command line.</summary>
public sealed class PageStepTests
{
    [Fact]
    public void Steps_are_told_until_the_checks_are_made()
    {
        var build = new PageBuild();
        build.Take(Read(Bridges.Garden), prices: null);
        var said = new List<string>();
        for (var more = true; more;)
        {
            var step = Told.Read(build.Step());
            more = step.GetProperty("more").GetBoolean();
            said.Add($"{step.Text("stage")}{Flag(step, "draws")}{Flag(step, "done")}");
            Assert.Empty(step.List("faults"));
        }

        Assert.Equal(
            ["layout", "pieces draws", "contacts", "ropework", "wind", "checks", "checks done"],
            said.Distinct(StringComparer.Ordinal));
        Assert.Equal("checks done", said[^1]);
        Assert.NotEmpty(build.Model.Checks);
        Assert.Equal("""{"more":false}""", System.Text.Encoding.UTF8.GetString(build.Step()));
    }

    [Fact]
    public void What_cannot_be_built_is_told_as_check_tells_it()
    {
        foreach (var text in FaultFiles.Impossible.Values.Take(3))
        {
            using var run = new CommandRun();
            var file = run.Write("bridge.yaml", text);
            var build = new PageBuild();
            build.Take(Read(text), prices: null);
            var step = Told.Read(build.Step());
            var lines = CommandRun.Run("check", file).Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
            Assert.NotEmpty(lines);
            Assert.Equal(lines, step.List("faults").Select(f => Told.Line(f, file)));
            Assert.False(step.GetProperty("more").GetBoolean() || step.GetProperty("done").GetBoolean());
            Assert.False(Told.Read(build.Step()).GetProperty("more").GetBoolean());
        }
    }

    /// <summary>The picture stays the last good one: the model is that of the steps before, until a new one comes.</summary>
    [Fact]
    public void An_edit_half_way_begins_anew()
    {
        var build = new PageBuild();
        build.Take(Read(Bridges.Garden), prices: null);
        build.Step();
        Assert.True(Told.Read(build.Step()).GetProperty("draws").GetBoolean());
        var before = build.Glb();
        build.Take(Read(Bridges.Garden.Replace("span: 30 ft", "span: 33 ft", StringComparison.Ordinal)), prices: null);
        Assert.Equal("layout", Told.Read(build.Step()).Text("stage"));
        Assert.Equal(before, build.Glb());
        Assert.Equal("pieces", Told.Read(build.Step()).Text("stage"));
        Assert.NotEqual(before, build.Glb());
        Assert.Equal(33 * 0.3048, build.Model.Parameters.Site.Span, 9);
    }

    [Fact]
    public void A_faulty_file_and_a_faulty_price_list_have_no_steps_and_no_list()
    {
        var build = new PageBuild();
        Assert.Empty(build.Take(Read("name: a\nsite: { span: 30 }\n"), prices: null));
        Assert.False(Told.Read(build.Step()).GetProperty("more").GetBoolean());
        var faults = build.Take(Read(Bridges.Garden), "stock,section,length,price\noak,2x4,8 ft,1\n");
        Assert.Equal(2, Assert.Single(faults).Line);
        while (Told.Read(build.Step()).GetProperty("more").GetBoolean())
        {
        }

        Assert.Null(build.Model.Parameters.PriceList);
    }

    private static ProjectReading Read(string text) => ProjectReader.Read(text, "project.yaml", Bridges.Catalogue);

    private static string Flag(System.Text.Json.JsonElement step, string name) => step.GetProperty(name).GetBoolean() ? " " + name : "";
}
