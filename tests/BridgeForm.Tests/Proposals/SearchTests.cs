using System.Globalization;
using System.Text.RegularExpressions;
using BridgeForm.Checks;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;

namespace BridgeForm.Tests.Proposals;

/// <summary>Designs that are proposed pass, written out and read anew; what may not move stays; the reasons are true.</summary>
public sealed class SearchTests
{
    internal const string Sound = """
        name: Sound (invented)   # this remark stays
        units: imperial
        site: { span: 30 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-1, spacing: 58 in, sag: 5.4 % }
        frames:
          spacing: 34 in
          base: { section: 4x6, length: 72 in }
          channel: { depth: 5/8 in, end_depth: 3/4 in, liner: 1/16 in }
          post: { section: 4x4, length: 40 in, foot: 18-1/2 in }
          brace: { section: 2x4, foot: 28-1/4 in }
        guard: { rails: { section: 5/4x6, count: 4, stock: treated }, cap: { section: 2x6 } }
        """;

    /// <summary>What is broken, by the text that is put in place of another.</summary>
    public static TheoryData<string, string, string> Broken => new()
    {
        { "section: 4x4, length", "section: 2x4, length", "guard-post" },
        { "section: 4x6, length", "section: 2x6, length", "base-shear" },
        { "section: 5/4x6, count: 4", "section: 1x4, count: 6", "rail-bending" },
        { "section: 5/4x6, count: 4", "section: 5/4x6, count: 3", "guard-openings" },
        { "galvanized-1,", "galvanized-5/8,", "rope-strength" },
        { "spacing: 34 in", "spacing: 52 in", "board-bending-point" },
        { "length: 40 in", "length: 34 in", "guard-height" },
        { "spacing: 58 in", "spacing: 36 in", "guard-line-load" },
        { "depth: 5/8 in, end_depth", "depth: 3/16 in, end_depth", "channel-shallow-mouth" },
        { "end_depth: 3/4 in", "end_depth: 1/4 in", "channel-shallow-mouth-end" },
        { "section: 2x6", "section: 1x4", "cap-bending-level" },
    };

    [Fact]
    public void The_bridge_that_is_broken_passes() =>
        Assert.Empty(Model(Sound).Checks.Where(c => c.Status == CheckStatus.Fail).Select(c => c.Id));

    [Theory]
    [MemberData(nameof(Broken))]
    public void What_fails_has_a_way_out_that_passes_as_it_is_written(string right, string wrong, string check)
    {
        var text = Sound.Replace(right, wrong, StringComparison.Ordinal);
        Assert.Contains(Model(text).Checks, c => c.Status == CheckStatus.Fail && c.Id == check);
        var result = Propose(text);
        Assert.NotEmpty(result.Proposals);
        foreach (var way in result.Proposals)
        {
            var written = ProposalFile.Written(text, way);
            var model = Model(written);
            Assert.Empty(model.Checks.Where(c => c.Status == CheckStatus.Fail).Select(c => c.Id));
            Assert.Equal(model.Rope.Loads.Sum(), way.Model.Rope.Loads.Sum(), 9);
            Assert.Contains("# this remark stays", written, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Nothing_but_the_named_keys_moves()
    {
        var text = Sound.Replace("galvanized-1,", "galvanized-3/4,", StringComparison.Ordinal);
        var result = Propose(text, new SearchAsk { Free = ["ropes.sag"] });
        Assert.All(result.Proposals.SelectMany(p => p.Changes), c => Assert.Equal("ropes.sag", c.Path));
        Assert.NotEmpty(result.Proposals);
        var (before, after) = (text.Split('\n'), ProposalFile.Written(text, result.Proposals[0]).Split('\n'));
        Assert.Empty(before.Where(l => !l.Contains("sag:", StringComparison.Ordinal)).Except(after, StringComparer.Ordinal));
    }

    [Fact]
    public void The_same_file_gets_the_same_answer()
    {
        var text = Sound.Replace("section: 4x4, length", "section: 2x4, length", StringComparison.Ordinal);
        string Told() => string.Join('\n', Propose(text).Proposals.SelectMany(p => p.Changes).Select(c => c.ToString()));
        Assert.Equal(Told(), Told());
    }

    /// <summary>The figure that a reason tells is that of the bridge without the change.</summary>
    [Fact]
    public void Reasons_are_what_the_checks_say_without_the_change()
    {
        var text = Sound.Replace("section: 5/4x6, count: 4", "section: 1x4, count: 6", StringComparison.Ordinal);
        var way = Propose(text).Proposals.First(p => p.Changes.Any(c => c.Path is "guard.rails.section"));
        var change = Assert.Single(way.Changes, c => c.Path is "guard.rails.section");
        var others = way.Changes.Remove(change);
        var ratio = Model(ProposalFile.Written(text, way with { Changes = others })).Checks
            .Where(c => c.Status == CheckStatus.Fail).Max(c => c.Ratio!.Value);
        Assert.EndsWith(ratio.ToString("0.00", CultureInfo.InvariantCulture), change.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_passes_needs_nothing()
    {
        var result = Propose(Sound);
        Assert.True(result.IsPassing);
        Assert.Empty(result.Proposals);
        Assert.Empty(result.Why);
    }

    // The long one sags more than its ropes may at the distance they have; the public one is too narrow, and wider its boards gape.
    [Theory]
    [InlineData("name: Long\nsite: { span: 120 ft }\n", "ropes.spacing")]
    [InlineData("name: Public\nuse: public\nsite: { span: 40 ft, rise: 4 ft }\n", "deck.side_gap")]
    public void What_no_single_step_helps_is_helped_by_two(string text, string moved)
    {
        var reading = ProjectReader.Read(text, "site.yaml", BridgeForm.Materials.RopeTable.Catalogue);
        var run = new SearchRun(reading, null, new SearchAsk { Free = Search.SiteKeys }, CancellationToken.None);
        var passing = run.Pass(run.OnSale());
        Assert.True(passing.Passes);
        Assert.Contains(moved, passing.Design.Changes.Keys);
    }

    [Fact]
    public void Where_only_a_thin_rope_is_on_sale_the_check_and_the_nearest_are_told()
    {
        var text = Sound.Replace("site: { span: 30 ft }", "site: { span: 140 ft }", StringComparison.Ordinal)
            .Replace("sag: 5.4 %", "sag: 5.4 %, on_sale: [rope-6x19-iwrc-eips-galvanized-3/8]", StringComparison.Ordinal);
        // What is told is of the nearest design, whichever that is: a hundred are enough for it.
        var result = Propose(text, new SearchAsk { MostDesigns = 100 });
        Assert.Empty(result.Proposals);
        var why = result.Why.Single(w => w.Contains("(rope-strength): in the nearest design it is ", StringComparison.Ordinal));

        // What would do is the rope's own strength times what is missing, told to two decimals.
        var told = Regex.Match(
            why,
            "it is (?<ratio>[0-9.]+) of what it may be.*a rope that breaks at (?<needed>[0-9]+) lbf would carry it, the strongest of "
                + "its kind on sale breaks at (?<has>[0-9]+) lbf",
            RegexOptions.NonBacktracking);
        var (ratio, needed, has) = (Number("ratio"), Number("needed"), Number("has"));
        Assert.Equal(13590, has);

        // The nearest design keeps the rope of the file, which breaks at 93060 lbf and is not on sale.
        Assert.InRange(needed / 93060, ratio - 0.006, ratio + 0.006);
        double Number(string group) => double.Parse(told.Groups[group].Value, CultureInfo.InvariantCulture);
        Assert.True(result.Looked > 5);
    }

    // The value that is told is tried by hand beside the rest of the nearest design: the check holds, and the one that is named fails.
    [Fact]
    public void Where_nothing_passes_the_value_that_one_check_wants_is_told_with_what_it_costs()
    {
        var text = "name: Thin\nsite: { span: 40 ft }\nropes: { on_sale: [rope-6x19-iwrc-eips-galvanized-1/2] }\n";
        var reading = ProjectReader.Read(text, "site.yaml", BridgeForm.Materials.RopeTable.Catalogue);
        var run = new SearchRun(reading, null, new SearchAsk { Free = Search.SiteKeys }, CancellationToken.None);
        var nearest = run.Pass(run.OnSale());
        var told = Reasons.Why(run, nearest)
            .Select(w => Regex.Match(
                w,
                @"\((?<check>[a-z-]+)\): in the nearest.*; (?<key>[a-z_.]+) (?<value>[^;]+) meets it, "
                    + @"but then .* \((?<then>[a-z-]+), (?<by>[0-9.]+)\)",
                RegexOptions.NonBacktracking))
            .First(m => m.Success);
        var by = nearest.Design.With([new(told.Groups["key"].Value, told.Groups["value"].Value)]);
        var changed = reading.Changed(by.AsKeys());
        Assert.True(new Rebuild().TryAnswer(changed.Parameters!, CancellationToken.None, out var model, out _));
        Assert.NotEqual(CheckStatus.Fail, model.Checks.Single(c => c.Id == told.Groups["check"].Value).Status);
        var then = model.Checks.Single(c => c.Id == told.Groups["then"].Value);
        Assert.Equal(CheckStatus.Fail, then.Status);
        Assert.InRange(then.Ratio!.Value - double.Parse(told.Groups["by"].Value, CultureInfo.InvariantCulture), -0.0051, 0.0051);
        Assert.Contains(nearest.Shortfalls, s => s.Id == told.Groups["check"].Value);
    }

    [Fact]
    public void Wishes_that_clash_are_named_with_what_may_not_move()
    {
        var text = Sound.Replace("sag: 5.4 %", "sag: 10 %", StringComparison.Ordinal);
        var result = Propose(text, new SearchAsk { Free = ["ropes.type", "ropes.spacing"], MostSlope = 1.0 / 12 });
        Assert.Contains(result.Why, w => w.Contains("steeper than asked", StringComparison.Ordinal)
            && w.Contains("it may not move what may help: ropes.sag", StringComparison.Ordinal));
    }

    /// <summary>deck-slope is the check of another file, with a limit of its own: its figure is the steepest bay's.</summary>
    [Theory]
    [InlineData(10)]
    public void A_slope_that_is_wished_for_is_kept(double run)
    {
        var site = SiteFile.Text(new SiteWish("24 ft"));
        var result = Best(site, new SearchAsk { Free = [.. Search.Keys], MostSlope = 1 / run });
        var slope = Model(SiteFile.Finished(site, Assert.Single(result.Proposals))).Checks.Single(c => c.Id is "deck-slope").Demand;
        Assert.InRange(slope, 0, 1 / run);
    }

    [Fact]
    public void A_width_that_is_wished_for_is_kept()
    {
        var site = SiteFile.Text(new SiteWish("20 ft"));
        var result = Best(site, new SearchAsk { Free = [.. Search.Keys], LeastWidth = 1.2 });
        var model = Model(SiteFile.Finished(site, Assert.Single(result.Proposals)));
        Assert.InRange(model.Checks.Single(c => c.Id is "clear-width").Demand, 1.2, 1.35);
    }

    /// <summary>Boards cost what a list says; a list in which thin ones are dear makes another bridge than the lightest.</summary>
    [Fact]
    public void Prices_are_those_of_the_stock_plan()
    {
        var text = Sound.Replace("section: 4x4, length", "section: 2x4, length", StringComparison.Ordinal);
        var reading = Read(text);
        var lines = reading.Parameters!.Stock.SelectMany(s => s.Sections.SelectMany(c => s.Lengths.Select(
            l => string.Create(
                CultureInfo.InvariantCulture, $"{s.Name},{c.Name},{Math.Round(l / 0.3048)} ft,{1e4 * l * c.Width * c.Thickness:0.00}"))));
        var prices = PriceReader.Read("stock,section,length,price\n" + string.Join('\n', lines), "prices.csv", reading.Parameters.Stock);
        Assert.Empty(prices.Lines);
        var result = Search.Propose(reading, prices.List, new SearchAsk { Prefer = Preference.Cheap });
        Assert.NotEmpty(result.Proposals);
        Assert.All(result.Proposals, p => Assert.Equal(p.Model.StockPlan.Boards.Sum(b => b.Price!.Value), p.Figures.Price!.Value, 6));
    }

    [Fact]
    public void A_search_ends_when_it_is_told_to()
    {
        using var source = new CancellationTokenSource();
        var text = Sound.Replace("section: 4x4, length", "section: 2x4, length", StringComparison.Ordinal);
        var ask = new SearchAsk
        {
            Looked = n =>
            {
                if (n > 3)
                {
                    source.Cancel();
                }
            },
        };
        Assert.ThrowsAny<OperationCanceledException>(() => Search.Propose(Read(text), null, ask, source.Token));
    }

    internal static ProjectReading Read(string text)
    {
        var reading = ProjectReader.Read(text, "bridge.yaml", Bridges.Catalogue);
        Assert.Empty(reading.Lines);
        return reading;
    }

    internal static BridgeModel Model(string text)
    {
        Assert.True(new Rebuild().TryAnswer(Read(text).Parameters!, CancellationToken.None, out var model, out var fault), fault?.Message);
        return model!;
    }

    internal static SearchResult Propose(string text, SearchAsk? ask = null) => Search.Propose(Read(text), null, ask ?? new SearchAsk());

    private static SearchResult Best(string text, SearchAsk ask) => Search.Best(Read(text), null, ask);
}
