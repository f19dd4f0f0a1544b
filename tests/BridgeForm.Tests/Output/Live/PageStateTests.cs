using System.Text.Json;
using BridgeForm.Output.Live;
using BridgeForm.Project.Files;
using BridgeForm.Tests.Cli;
using BridgeForm.Tests.Project;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.Live;

/// <summary>What a text says and what is wrong with it, as the command line reads it.</summary>
public sealed class PageStateTests
{
    public static TheoryData<string> Faulty =>
    [
        "name: a\nunits: metrc\nsite: { span: 30 }\nusage: private\ndeck: { count: 2.5 }\n",
        "name: [\n",
        "name: a\nsite:\n  span: 30 ft\n  rise: 11 ft\nropes:\n  sag: 6 %\n",
    ];

    [Theory]
    [MemberData(nameof(Faulty))]
    public void Faults_are_those_that_check_prints(string text)
    {
        using var run = new CommandRun();
        var file = run.Write("bridge.yaml", text);
        var lines = CommandRun.Run("check", file).Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.NotEmpty(lines);
        var state = State(text);
        Assert.Equal(lines, state.List("faults").Select(f => Told.Line(f, file)));
        Assert.False(state.GetProperty("ok").GetBoolean());
        Assert.False(state.TryGetProperty("chosen", out _) || state.TryGetProperty("sections", out _));
    }

    [Fact]
    public void A_value_with_a_fault_is_told_as_written_and_the_others_as_ever()
    {
        var state = State("name: a\nunits: metric\nsite: { span: 30 }\ndeck: { gap: 7 mm }\n");
        var (span, gap) = (Value(state, "site.span"), Value(state, "deck.gap"));
        Assert.Equal(("30", true, false), (span.Text("text"), Flag(span, "given"), Flag(span, "good")));
        Assert.Equal(("7 mm", true, true), (gap.Text("text"), Flag(gap, "given"), Flag(gap, "good")));
        Assert.Equal(0.007, gap.Number("number"), 12);
        Assert.False(span.TryGetProperty("number", out _));
        Assert.True(state.GetProperty("metric").GetBoolean());
    }

    /// <summary>Alder Dell by hand: 30 ft, 6 %, 8°, 60 psf, 300 lbf, 3 lb, 60 F.</summary>
    [Fact]
    public void Values_are_those_of_the_file_in_SI_units()
    {
        var state = State(File.ReadAllText(new Sample("alder-dell").FileOf("project.yaml")));
        Assert.True(state.GetProperty("ok").GetBoolean());
        Assert.False(state.GetProperty("metric").GetBoolean());
        Assert.Empty(state.List("faults"));
        AssertGiven(state, "site.span", "30 ft", 9.144);
        AssertGiven(state, "frames.post.lean", "8 deg", 8 * Math.PI / 180);
        AssertGiven(state, "loads.live", "60 psf", 60 * 4.4482216152605 / (0.3048 * 0.3048));
        AssertGiven(state, "loads.point.force", "300 lbf", 300 * 4.4482216152605);
        AssertGiven(state, "frames.hardware", "3 lb", 3 * 0.45359237);
        AssertGiven(state, "site.reference_temperature", "60 F", 28 / 1.8);
        AssertGiven(state, "ropes.safety_factor", "5", null);
        AssertGiven(state, "frames.post.section", "3x4", null);
        AssertGiven(state, "ropes.type", "rope-6x19-iwrc-eips-galvanized-3/4", null);
        Assert.Equal(0.06, Value(state, "ropes.sag").Number("number"), 12);
        var trim = Value(state, "shop.trim");
        Assert.Equal((false, true), (Flag(trim, "given"), Flag(trim, "good")));
    }

    [Fact]
    public void What_rules_chose_is_what_the_report_says()
    {
        const string Short = "name: a\nunits: metric\nsite: { span: 8 m }\n";
        using var run = new CommandRun();
        CommandRun.Run("check", run.Write("bridge.yaml", Short), "--json", run.Path("report.json"));
        var report = Told.Read(File.ReadAllBytes(run.Path("report.json")));
        var state = State(Short);
        Assert.NotEmpty(state.List("chosen"));
        Assert.Equal(
            report.List("chosen").Select(c => (c.Text("key"), c.Text("value"), c.Text("rule"))),
            state.List("chosen").Select(c => (c.Text("path"), c.Text("text"), c.Text("rule"))));
        Assert.All(state.List("chosen"), c => Assert.Equal(c.Text("text"), Value(state, c.Text("path")).Text("text")));
        Assert.All(state.List("chosen"), c => Assert.False(Value(state, c.Text("path")).GetProperty("given").GetBoolean()));
    }

    [Fact]
    public void Sections_on_sale_are_those_of_each_stock()
    {
        var state = State(File.ReadAllText(new Sample("fern-rise").FileOf("project.yaml")));
        Assert.True(state.GetProperty("metric").GetBoolean());
        Assert.Equal(["treated", "cedar"], state.List("sections").Select(s => s.Text("stock")));
        Assert.Equal(
            ["38 x 140 mm", "38 x 89 mm", "64 x 184 mm", "64 x 89 mm"],
            state.One("sections", "stock", "treated").Texts("names").Order(StringComparer.Ordinal));
        Assert.Equal(2, state.One("sections", "stock", "cedar").List("names").Count);
    }

    [Fact]
    public void Faults_of_a_price_list_stand_by_themselves()
    {
        var prices = PriceReader.Read(FaultFiles.Prices.Last().Value, "prices", Bridges.Read(Bridges.Garden).Stock);
        var reading = ProjectReader.Read(Bridges.Garden, "bridge.yaml", Bridges.Catalogue);
        var state = Told.Read(PageState.Bytes(reading, prices.Faults));
        Assert.True(state.GetProperty("ok").GetBoolean());
        Assert.Empty(state.List("faults"));
        Assert.NotEmpty(prices.Lines);
        Assert.Equal(prices.Lines, state.List("priceFaults").Select(f => Told.Line(f, "prices")));
    }

    private static JsonElement State(string text) =>
        Told.Read(PageState.Bytes(ProjectReader.Read(text, "bridge.yaml", Bridges.Catalogue), []));

    private static JsonElement Value(JsonElement state, string path) => state.One("values", "path", path);

    private static bool Flag(JsonElement value, string name) => value.GetProperty(name).GetBoolean();

    private static void AssertGiven(JsonElement state, string path, string text, double? number)
    {
        var value = Value(state, path);
        Assert.Equal(text, value.Text("text"));
        Assert.True(Flag(value, "given") && Flag(value, "good"), path);
        if (number is { } si)
        {
            Assert.Equal(si, value.Number("number"), 9);
        }
    }
}
