using System.Globalization;
using System.Text.Json;
using BridgeForm.Output.Live;
using BridgeForm.Output.Preview;
using BridgeForm.Project.Files;
using BridgeForm.Tests.Cli;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.Live;

/// <summary>Figures and checks of the page against the report of the same bridge, and by hand.</summary>
public sealed class PageAnswerTests
{
    private const double Inch = 0.0254;
    private const double PoundForce = 4.4482216152605;

    private static readonly Lazy<JsonElement> s_report =
        new(() => Told.Read(File.ReadAllBytes(MadeSample.Of("alder-dell").FileOf("report.json"))));

    private static readonly string s_alder = File.ReadAllText(new Sample("alder-dell").FileOf("project.yaml"));
    private static readonly Lazy<JsonElement> s_told = new(() => Checked(s_alder, prices: null));

    [Fact]
    public void Names_stand_in_one_order() => Assert.Equal(
        [
            "span", "sag", "steepest deck", "guard height", "clear width", "roll factor", "rope tension", "weight on ropes",
            "distinct pieces", "saw settings", "price",
        ],
        s_told.Value.List("figures").Select(f => f.Text("name")));

    /// <summary>6 % of 30 ft are 21.6 in: 345.6 sixteenths, told as 346.</summary>
    [Fact]
    public void Span_and_sag_are_those_of_the_file()
    {
        AssertFigure("span", "30 ft 0 in", 9.144);
        AssertFigure("sag", "21-5/8 in", 0.06 * 9.144);
    }

    [Fact]
    public void What_checks_measured_is_told_no_larger_than_it_is()
    {
        var (slope, guard, width) = (Demand("deck-slope"), Demand("guard-height"), Demand("clear-width"));
        AssertFigure("steepest deck", string.Create(CultureInfo.InvariantCulture, $"1 : {1 / slope:0.0}"), slope);
        // 39.284 in and 34.646 in of the report: whole sixteenths below.
        AssertFigure("guard height", "39-1/4 in", guard);
        AssertFigure("clear width", "34-5/8 in", width);
        Assert.InRange((guard / Inch) - 39.25, 0, 1.0 / 16);
        Assert.InRange((width / Inch) - 34.625, 0, 1.0 / 16);
    }

    [Fact]
    public void The_roll_factor_is_the_least_of_all_rounded_down()
    {
        var further = new List<double>();
        foreach (var name in Sample.Names)
        {
            var report = Told.Read(File.ReadAllBytes(MadeSample.Of(name).FileOf("report.json")));
            var least = report.GetProperty("ropes").List("roll").Select(r => r.GetProperty("height_factor"))
                .Where(f => f.ValueKind == JsonValueKind.Number).Min(f => f.GetDouble());
            var down = Math.Floor(least * 100) / 100;
            var figure = Figure(Told.Read(PageAnswer.Checked(MadeSample.Of(name).Model)), "roll factor");
            Assert.Equal(down.ToString("0.00", CultureInfo.InvariantCulture), figure.Text("text"));
            Assert.Equal(least, figure.Number("number"), 9);
            further.Add(least - down);
        }

        Assert.True(further.Max() > 0.005, "Rounded to the nearest all would read the same.");
    }

    [Fact]
    public void Tension_and_weight_are_those_of_the_report()
    {
        var tension = s_report.Value.List("cases").Max(c => c.Number("max_tension"));
        var may = s_report.Value.One("checks", "id", "rope-strength").Number("capacity");
        AssertFigure(
            "rope tension",
            string.Create(CultureInfo.InvariantCulture, $"{tension / PoundForce:0} lbf, {tension / may:0.00} of what it may"), tension);
        var loads = 2 * s_report.Value.List("nodes").Sum(n => n.Number("load"));
        AssertFigure("weight on ropes", string.Create(CultureInfo.InvariantCulture, $"{loads / PoundForce:0} lbf"), loads);
    }

    [Fact]
    public void Pieces_and_settings_are_counted()
    {
        using var run = new CommandRun();
        CommandRun.Run("make", run.Write("bridge.yaml", s_alder), "--only", "tables", "-o", run.Path("out"), "--quiet");
        // Rows begin with the number of the set-up; the caution stands below them.
        var settings = File.ReadLines(run.Path("out/saw-setups.csv")).Select(l => l.Split(',')[0])
            .Where(n => int.TryParse(n, CultureInfo.InvariantCulture, out _)).Distinct(StringComparer.Ordinal);
        AssertCount("saw settings", settings.Count());
        AssertCount("distinct pieces", s_report.Value.List("pieces").Select(p => p.Text("mark")).Distinct(StringComparer.Ordinal).Count());
    }

    /// <summary>The price of every board of the stock plan, though the page builds no plan until files are made.</summary>
    [Fact]
    public void The_price_is_that_of_the_boards()
    {
        Assert.Equal("no price file", Figure(s_told.Value, "price").Text("text"));
        var reading = ProjectReader.Read(s_alder, "a.yaml", Bridges.Catalogue);
        var rows = reading.Parameters!.Stock.SelectMany(s => s.Sections.SelectMany(c => s.Lengths.Select(l => string.Create(
            CultureInfo.InvariantCulture, $"{s.Name},{c.Name},{l / 0.3048:0} ft,{1e3 * l * c.Width * c.Thickness:0.00}")))).ToList();
        var all = "stock,section,length,price\n" + string.Join('\n', rows) + "\n";
        using var run = new CommandRun();
        run.Write("prices.csv", all);
        CommandRun.Run(
            "make", run.Write("bridge.yaml", s_alder + "prices: prices.csv\n"), "--only", "report", "-o", run.Path("out"), "--quiet");
        var cost = Told.Read(File.ReadAllBytes(run.Path("out/report.json"))).List("stock").Sum(b => b.Number("cost"));
        var price = Figure(Checked(s_alder, all), "price");
        Assert.Equal(cost, price.Number("number"), 6);
        Assert.Equal(cost.ToString("0.00", CultureInfo.InvariantCulture), price.Text("text"));
        var some = string.Join('\n', rows.Where(r => !r.StartsWith("treated,3x6", StringComparison.Ordinal)));
        var part = Figure(Checked(s_alder, "stock,section,length,price\n" + some + "\n"), "price");
        Assert.Equal("not of every board", part.Text("text"));
        Assert.False(part.TryGetProperty("number", out _));
    }

    [Fact]
    public void Checks_are_those_of_the_report()
    {
        var checks = s_told.Value.List("checks").ToDictionary(c => c.Text("id"), StringComparer.Ordinal);
        Assert.Equal(s_report.Value.List("checks").Count, checks.Count);
        foreach (var check in s_report.Value.List("checks"))
        {
            var told = checks[check.Text("id")];
            Assert.Equal(
                (check.Text("title"), Word(check.Text("status")), check.Text("detail"), check.Text("source")),
                (told.Text("title"), told.Text("status"), told.Text("detail"), told.Text("source")));
            Assert.Equal(check.Texts("parts"), told.Texts("parts"));
            Assert.StartsWith(PlainSubject.Find(check.Text("id")) + ": ", told.Text("sentence"), StringComparison.Ordinal);
            Assert.NotEmpty(told.Text("help"));
            Assert.Equal(check.GetProperty("ratio").ValueKind == JsonValueKind.Number, told.TryGetProperty("ratio", out _));
        }

        Assert.Equal(["F00/post-left", "F00/post-right"], checks["guard-height"].Texts("parts"));
    }

    /// <summary>Parts that are named are parts of the picture.</summary>
    [Fact]
    public void Parts_are_known_to_the_description_of_the_model()
    {
        var build = Built(s_alder, prices: null);
        var view = System.Text.Encoding.UTF8.GetString(PageAnswer.View(build.Model));
        var parts = s_told.Value.List("checks").SelectMany(c => c.Texts("parts")).ToHashSet(StringComparer.Ordinal);
        Assert.True(parts.Count > 10);
        Assert.All(parts, p => Assert.Contains($"\"{p}\"", view, StringComparison.Ordinal));
    }

    [Fact]
    public void Checks_come_worst_first_and_the_verdict_counts_those_that_fail()
    {
        var told = Checked(s_alder.Replace("length: 40 in", "length: 30 in", StringComparison.Ordinal), prices: null);
        string[] order = ["fails", "review", "engineer", "holds"];
        var ranks = told.List("checks").Select(c => Array.IndexOf(order, c.Text("status"))).ToList();
        Assert.Equal(ranks.Order(), ranks);
        Assert.Equal(4, ranks.Distinct().Count());
        foreach (var group in told.List("checks").GroupBy(c => c.Text("status"), StringComparer.Ordinal))
        {
            var none = group.Key is "holds" ? 0 : double.PositiveInfinity;
            var ratios = group.Select(c => c.TryGetProperty("ratio", out var r) ? r.GetDouble() : none).ToList();
            Assert.Equal(ratios.OrderDescending(), ratios);
        }

        var failing = told.List("checks").Count(c => c.Text("status") is "fails");
        Assert.InRange(failing, 1, 5);
        Assert.StartsWith($"Do not build it so: {failing} of ", told.Text("verdict"), StringComparison.Ordinal);
        Assert.StartsWith("Nothing fails on paper; ", s_told.Value.Text("verdict"), StringComparison.Ordinal);
        Assert.StartsWith(
            "Geometry, quantities and check values for preliminary work only.", told.Text("caution"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_before_all_figures_is_told()
    {
        var told = Checked(s_alder.Replace("spacing: 46 in", "spacing: 12 in", StringComparison.Ordinal), prices: null);
        var upright = told.One("headlines", "label", "Not upright");
        Assert.True(upright.GetProperty("danger").GetBoolean());
        Assert.StartsWith("it rolls over in ", upright.Text("text"), StringComparison.Ordinal);
        Assert.DoesNotContain(s_told.Value.List("headlines"), h => h.Text("label") is "Not upright");
        Assert.False(s_told.Value.One("headlines", "label", "Not looked at").GetProperty("danger").GetBoolean());
    }

    [Theory]
    [InlineData(0.125, "1 : 8.0")]
    [InlineData(0.2236, "1 : 4.5")]
    [InlineData(0.0001, "level")]
    [InlineData(0, "level")]
    public void Slopes(double slope, string text) => Assert.Equal(text, PageAnswer.Slope(slope));

    private static string Word(string status) => status switch { "fail" => "fails", "warn" => "review", "pass" => "holds", _ => status };

    private static PageBuild Built(string text, string? prices)
    {
        var build = new PageBuild();
        Assert.Empty(build.Take(ProjectReader.Read(text, "a.yaml", Bridges.Catalogue), prices));
        while (Told.Read(build.Step()).GetProperty("more").GetBoolean())
        {
        }

        return build;
    }

    private static JsonElement Checked(string text, string? prices) => Told.Read(PageAnswer.Checked(Built(text, prices).Model));

    private static JsonElement Figure(JsonElement told, string name) => told.One("figures", "name", name);

    private static double Demand(string check) => s_report.Value.One("checks", "id", check).Number("demand");

    private static void AssertFigure(string name, string text, double number)
    {
        var figure = Figure(s_told.Value, name);
        Assert.Equal(text, figure.Text("text"));
        Assert.InRange(figure.Number("number") / number, 1 - 1e-9, 1 + 1e-9);
    }

    private static void AssertCount(string name, int count) => AssertFigure(name, count.ToString(CultureInfo.InvariantCulture), count);
}
