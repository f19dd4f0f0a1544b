using BridgeForm.Materials;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;

namespace BridgeForm.Tests.Proposals;

/// <summary>A way is what its name says: no other that was told, and none that a builder finds by hand, is more so.</summary>
public sealed class WayTests
{
    /// <summary>Two sections that are too thin: with both as the defaults have them it passes, so that two changes are enough.</summary>
    [Fact]
    public void Fewest_changes_are_no_more_than_a_builder_needs()
    {
        const string Thin = "name: Thin\nunits: metric\nsite: { span: 9 m }\nguard: { cap: { section: 45 x 95 mm } }\n"
            + "frames: { post: { section: 45 x 95 mm } }\n";
        var result = Propose(Thin);
        Assert.Equal("fewest changes", result.Proposals[0].Name);
        Assert.InRange(result.Proposals[0].Changes.Length, 1, 2);
    }

    /// <summary>On the way to a flat deck a lighter bridge may be met than weight alone leads to.</summary>
    [Fact]
    public void No_other_way_is_lighter_than_the_lightest()
    {
        const string Steep = "name: Steep\nsite: { span: 14 ft, rise: 3 ft 6 in }\nropes: { sag: 3 %, spacing: 38 in }\n"
            + "frames: { base: { length: 58 in } }\n";
        var ways = Propose(Steep).Proposals;
        var lightest = Assert.Single(ways, w => w.Name is "lightest").Figures.Weight;
        Assert.All(ways, w => Assert.InRange(w.Figures.Weight, lightest * 0.998, double.PositiveInfinity));
    }

    /// <summary>A file that is wrong in nearly everything gets a way as light as its site alone, within a tenth.</summary>
    [MinutesFact]
    public void What_is_wrong_in_everything_is_begun_from_the_rules()
    {
        const string Site = "name: Wrong\nuse: public\nsite: { span: 20 ft, rise: 2 ft }\n";
        const string Wrong = Site + "ropes: { type: rope-6x19-iwrc-eips-galvanized-5/8, spacing: 40 in, sag: 2 % }\n"
            + "frames:\n  spacing: 5 ft\n"
            + "  base: { section: 2x6, length: 60 in }\n  post: { section: 2x4, length: 36 in, foot: 18 in }\n"
            + "  brace: { section: 2x4, foot: 26 in }\nguard: { rails: { count: 2 } }\n";
        var fromSite = Search.Best(Read(Site), null, new SearchAsk { Free = Search.SiteKeys }).Proposals[0].Figures.Weight;
        Assert.InRange(Propose(Wrong).Proposals.Min(p => p.Figures.Weight), 0, fromSite * 1.1);
    }

    /// <summary>A limit of one's own that no design meets is named, with the program's own; one that is not in the way is not.</summary>
    [Fact]
    public void A_limit_of_ones_own_that_is_in_the_way_is_named()
    {
        const string Limited = "name: Flat\nsite: { span: 30 ft }\nropes: { sag: 10 % }\nlimits: { slope: 5 %, roll: 2.1 }\n";
        var result = Search.Propose(Read(Limited), null, new SearchAsk { MostDesigns = 60 });
        Assert.Empty(result.Proposals);
        var named = Assert.Single(result.Why, w => w.StartsWith("It is limits.", StringComparison.Ordinal));
        Assert.StartsWith("It is limits.slope 5 % that cannot be met: with 50 % in its place", named, StringComparison.Ordinal);
    }

    /// <summary>The file as it is stands beside the ways with its own settings and boards.</summary>
    [Fact]
    public void The_file_as_it_is_is_built_whole_beside_the_ways()
    {
        var text = SearchTests.Sound.Replace("spacing: 58 in", "spacing: 36 in", StringComparison.Ordinal);
        var result = Propose(text);
        Assert.NotEmpty(result.Proposals);
        var alone = Bridges.Build(text);
        Assert.Equal(alone.StockPlan.BoardCount, result.Written!.StockPlan.BoardCount);
        Assert.Equal(
            BridgeForm.Output.ShopSheets.SawSheet.Settings(alone), BridgeForm.Output.ShopSheets.SawSheet.Settings(result.Written));
    }

    /// <summary>Who asks for the flattest gets no steeper deck than who asks for a slope that can be had.</summary>
    [MinutesFact]
    public void The_flattest_is_no_steeper_than_what_a_wish_for_a_slope_gets()
    {
        const string Stock = "stock:\n"
            + "  treated: {species: southern-pine, grade: no1, treated: true, lengths: [8 ft, 12 ft, 16 ft], sections: [2x4, 2x6, 4x4]}\n"
            + "  cedar: {species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft, 12 ft], sections: [2x4, 2x6, 4x4]}\n";
        var reading = Read("name: Flat\nsite: { span: 16 ft }\n" + Stock);
        var ask = new SearchAsk { Free = Search.SiteKeys };
        var flat = Search.Best(reading, null, ask with { Prefer = Preference.Flat }).Proposals[0].Figures.Slope;
        // A twentieth flatter than the flattest is not to be had by asking for it.
        Assert.Empty(Search.Best(reading, null, ask with { MostSlope = flat / 1.05, MostDesigns = 150 }).Proposals);
    }

    [Fact]
    public void Sections_that_are_not_on_sale_are_named_and_replaced_when_they_may_move()
    {
        var text = SearchTests.Sound.Replace("section: 4x6, length", "section: 3x6, length", StringComparison.Ordinal)
            .Replace("depth: 5/8 in, end_depth: 3/4 in, ", "depth: 5/8 in, end_depth: 5/8 in, ", StringComparison.Ordinal);
        var free = new SearchAsk { Free = ["frames.base.section", "frames.base.length", "frames.brace.foot", "frames.channel.end_depth"] };
        var asWritten = Propose(text);
        Assert.True(asWritten.IsPassing, string.Join("; ", asWritten.Why));
        Assert.Equal("frames.base.section", Assert.Single(asWritten.Unsold));
        var ways = Propose(text, free).Proposals;
        Assert.NotEmpty(ways);
        foreach (var way in ways)
        {
            Assert.Contains(way.Changes, c => c.Path is "frames.base.section");
            Assert.DoesNotContain(way.Model.Checks, c => c.Id is "section-on-sale" && c.Status == BridgeForm.Checks.CheckStatus.Warn);
        }
    }

    /// <summary>Redwood is in no table of values: nothing that moves helps, and it is said so at once.</summary>
    [Fact]
    public void Wood_without_values_is_told_at_once()
    {
        const string Text = "name: Red\nsite: { span: 30 ft }\nstock:\n"
            + "  treated: { species: redwood, grade: no1, treated: true, lengths: [8 ft, 12 ft] }\n"
            + "  cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft, 12 ft] }\n";
        var result = Propose(Text);
        Assert.Empty(result.Proposals);
        Assert.InRange(result.Looked, 1, 3);
        Assert.Contains("redwood", Assert.Single(result.Why), StringComparison.Ordinal);
    }

    /// <summary>Wishes that clash: the one that is in the way is named, with the flattest that is to be had.</summary>
    [Fact]
    public void A_wish_that_is_in_the_way_is_named()
    {
        var ask = new SearchAsk { Free = Search.SiteKeys, MostSlope = 1.0 / 19 };
        var result = Search.Best(Read("name: Flat\nsite: { span: 30 ft }\n"), null, ask);
        Assert.Empty(result.Proposals);
        Assert.Contains(result.Why, w => w.Contains("the flattest that was found to pass without it is 1 : ", StringComparison.Ordinal));
    }

    [Fact]
    public void Lumber_without_a_price_is_named()
    {
        var reading = Read(SearchTests.Sound);
        var list = PriceReader.Read("stock,section,length,price\ntreated,2x4,8 ft,4.00\n", "prices.csv", reading.Parameters!.Stock).List;
        var way = Search.Propose(reading, list, new SearchAsk { Prefer = Preference.Cheap, Free = ["guard.cap.section"] }).Proposals[^1];
        Assert.Null(way.Figures.Price);
        Assert.Contains("treated 4x6", way.Unpriced);
        Assert.DoesNotContain("treated 2x4", way.Unpriced);
    }

    private static ProjectReading Read(string text) => ProjectReader.Read(text, "site.yaml", RopeTable.Catalogue);

    private static SearchResult Propose(string text, SearchAsk? ask = null) => Search.Propose(Read(text), null, ask ?? new SearchAsk());
}
