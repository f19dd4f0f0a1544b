using System.Globalization;
using System.Text.Json;
using BridgeForm.Checks;
using BridgeForm.Output.Live;
using BridgeForm.Project.Files;
using BridgeForm.Ropes;
using BridgeForm.Tests.Proposals;

namespace BridgeForm.Tests.Output.Live;

/// <summary>Texts that the page is given pass, read anew by themselves.</summary>
public sealed class PageSearchTests
{
    private const string Low = "name: Low (invented)  # kept\nsite: { span: 24 ft }\nframes: { post: { length: 34 in } }\n";

    [Fact]
    public void A_site_gets_a_text_that_reads_and_passes()
    {
        var counts = new List<int>();
        var best = new List<string>();
        var told = Told.Read(PageSearch.Start("24 ft", "", isPublic: false, isMetric: false, (count, text) =>
        {
            counts.Add(count);
            best.Add(text);
        }));
        var way = Assert.Single(told.List("ways"));
        AssertPasses(way);
        Assert.Contains("span: 24 ft\n", way.Text("text"), StringComparison.Ordinal);
        Assert.Equal(counts[^1], told.GetProperty("looked").GetInt32());
        Assert.Equal(counts.Order(), counts);
        var weights = best.Where(b => b.Length > 0).Select(Weight).ToList();
        Assert.True(weights.Distinct().Count() > 1, "Nothing better was told on the way.");
        Assert.Equal(weights.OrderDescending(), weights);
        // What is set out a little more steadily may weigh a little more than the lightest.
        Assert.InRange(Weight(way.List("figures")[0].Text("text")), weights[^1], weights[^1] * 1.02);
        Assert.Empty(told.List("why"));
    }

    private static void NothingIsLookedAt(int count, string best) => Assert.Fail("Nothing is looked at.");

    private static int Weight(string text) => int.Parse(text.Split(" lbf")[0].Split(' ')[^1], CultureInfo.InvariantCulture);

    [Fact]
    public void What_was_asked_of_the_site_stands_in_the_text()
    {
        var told = Told.Read(PageSearch.Start("4 m", "0.3 m", isPublic: true, isMetric: true, (_, _) => { }));
        var way = Assert.Single(told.List("ways"));
        AssertPasses(way);
        Assert.Contains("units: metric\nuse: public\nsite:\n  span: 4 m\n  rise: 0.3 m\n", way.Text("text"), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_way_of_a_file_that_fails_passes_as_it_is_written()
    {
        Assert.Contains(SearchTests.Model(Low).Checks, c => c.Status == CheckStatus.Fail);
        var told = Told.Read(PageSearch.Propose(Low, prices: null, (_, _) => { }));
        Assert.False(told.GetProperty("passing").GetBoolean());
        Assert.NotEmpty(told.List("ways"));
        foreach (var way in told.List("ways"))
        {
            AssertPasses(way);
            Assert.StartsWith("name: Low (invented)  # kept\n", way.Text("text"), StringComparison.Ordinal);
            AssertWeight(way);
        }
    }

    [Fact]
    public void A_file_that_passes_says_so()
    {
        var told = Told.Read(PageSearch.Propose(SearchTests.Sound, prices: null, (_, _) => { }));
        Assert.True(told.GetProperty("passing").GetBoolean());
        Assert.Equal((0, 0), (told.List("ways").Count, told.List("why").Count));
    }

    /// <summary>With the boards' prices, of a list for every section that is on sale.</summary>
    [Fact]
    public void Prices_are_told_where_there_is_a_list()
    {
        const string Post = "name: a\nsite: { span: 12 ft }\nframes: { post: { length: 34 in } }\n";
        var stock = SearchTests.Read(Post).Parameters!.Stock;
        var rows = stock.SelectMany(s => s.Sections.SelectMany(c => s.Lengths.Select(l => string.Create(
            CultureInfo.InvariantCulture, $"{s.Name},{c.Name},{l / 0.3048:0} ft,{1e3 * l * c.Width * c.Thickness:0.00}"))));
        var list = "stock,section,length,price\n" + string.Join('\n', rows) + "\n";
        var prices = PriceReader.Read(list, "prices", stock);
        Assert.Empty(prices.Lines);
        foreach (var way in Told.Read(PageSearch.Propose(Post, list, (_, _) => { })).List("ways"))
        {
            var parameters = SearchTests.Read(way.Text("text")).Parameters! with { PriceList = prices.List };
            var cost = Bridges.Build(parameters).StockPlan.Boards.Sum(b => b.Price!.Value);
            Assert.Equal(cost.ToString("0.00", CultureInfo.InvariantCulture), way.One("figures", "name", "price").Text("text"));
        }
    }

    [Theory]
    [InlineData("name: a\nsite: { span: 30 }\nusage: private\n")]
    [InlineData("name: [\n")]
    public void A_faulty_file_tells_its_faults(string text)
    {
        var told = Told.Read(PageSearch.Propose(text, prices: null, (_, _) => Assert.Fail("Nothing is looked at.")));
        Assert.Equal(ProjectReader.Read(text, "project.yaml", Bridges.Catalogue).Lines, told.Texts("why"));
        Assert.NotEmpty(told.List("why"));
        Assert.Empty(told.List("ways"));
    }

    [Theory]
    [InlineData("quick", "", "'quick'")]
    [InlineData("24", "", "has no unit")]
    [InlineData("", "", "span")]
    [InlineData("24 ft", "9 ft", "rise")]
    [InlineData("24 ft", "up", "'up'")]
    public void A_site_that_cannot_be_read_tells_why(string span, string rise, string says)
    {
        var told = Told.Read(PageSearch.Start(span, rise, isPublic: false, isMetric: false, NothingIsLookedAt));
        Assert.Contains(told.Texts("why"), w => w.Contains(says, StringComparison.Ordinal));
        Assert.Empty(told.List("ways"));
    }

    private static void AssertPasses(JsonElement way)
    {
        var reading = SearchTests.Read(way.Text("text"));
        var checks = SearchTests.Model(way.Text("text")).Checks;
        Assert.Empty(checks.Where(c => c.Status == CheckStatus.Fail || c.NotChecked is not null).Select(c => c.Id));
        Assert.NotEmpty(way.List("changes"));
        Assert.All(way.List("changes"), change =>
        {
            var value = Assert.Single(reading.AllValues, v => string.Equals(v.Path, change.Text("path"), StringComparison.Ordinal));
            Assert.Equal((change.Text("after"), true), (value.Text, value.IsGiven));
            Assert.NotEmpty(change.Text("reason"));
        });
    }

    // Loads on both ropes and the ropes' own weight, as propose prints it.
    private static void AssertWeight(JsonElement way)
    {
        var rope = SearchTests.Model(way.Text("text")).Rope;
        var newtons = 2 * (rope.Loads.Sum() + (rope.WeightPerLength * rope.UnstressedLength()));
        Assert.Equal(
            string.Create(CultureInfo.InvariantCulture, $"{newtons / 4.4482216152605:0} lbf"),
            way.One("figures", "name", "weight, ropes included").Text("text"));
    }
}
