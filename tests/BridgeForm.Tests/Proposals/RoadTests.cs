using BridgeForm.Checks;
using BridgeForm.Project.Editing;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;
using BridgeForm.Ropes;

namespace BridgeForm.Tests.Proposals;

/// <summary>Ways out that one road from the file does not lead to: one value for many, other starts, what is only counted.</summary>
public sealed class RoadTests
{
    private const string Plain = "name: Plain (invented)\nsite: { span: 24 ft }\n";

    /// <summary>A wish for two boards where six fit.</summary>
    [Fact]
    public void A_number_of_boards_that_leaves_gaps_is_left_to_the_rule()
    {
        var text = Plain + "deck: { count: 2 }\n";
        Assert.Contains(SearchTests.Model(text).Checks, c => c is { Status: CheckStatus.Fail, Id: "deck-gaps" });
        var result = Search.Propose(SearchTests.Read(text), null, new SearchAsk { Free = ["deck.count", "deck.board.section"] });
        var fewest = result.Proposals[0];
        Assert.Equal(("deck.count", "2", "auto"), (fewest.Changes[0].Path, fewest.Changes[0].Before, fewest.Changes[0].After));
        var gaps = SearchTests.Model(ProposalFile.Written(text, fewest)).Checks.Single(c => c.Id is "deck-gaps");
        Assert.Equal(CheckStatus.Pass, gaps.Status);
    }

    /// <summary>By the design's keys written into the file, read and built anew.</summary>
    [Theory]
    [InlineData("units: imperial\nsite: { span: 40 ft, rise: 12 ft }\n")]
    [InlineData("units: metric\nuse: public\nsite: { span: 30 m }\n")]
    public void A_hard_site_gets_a_design(string site)
    {
        var text = "name: Hard (invented)\n" + site;
        var run = new SearchRun(SearchTests.Read(text), null, new SearchAsk { Free = Search.SiteKeys }, CancellationToken.None);
        var passing = run.Pass(run.OnSale());
        var written = passing.Design.Changes.Aggregate(text, (now, c) => FileEdit.Set(now, c.Key, c.Value).Text!);
        var checks = SearchTests.Model(written).Checks;
        Assert.Empty(checks.Where(c => c.Status == CheckStatus.Fail || c.NotChecked is not null).Select(c => c.Id));
    }

    [Fact]
    public void Other_starts_move_what_may_and_the_nearest_comes_first()
    {
        var all = Starts(Search.SiteKeys);
        Assert.True(all.Count > 8);
        Assert.Equal(all.Select(j => j.Violation).Order(), all.Select(j => j.Violation));
        Assert.All(all, j => Assert.NotEmpty(j.Design.Changes));
        // The rope of the rule, or one of the two strongest galvanized ones of docs/tables.md.
        Assert.Equal(
            [null, "rope-6x19-iwrc-eips-galvanized-1-1/2", "rope-6x19-iwrc-ips-galvanized-1-1/2"],
            all.Select(j => j.Design.Changes.GetValueOrDefault("ropes.type")).Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal));
        Assert.Equal(
            [0.027, 0.033, 0.045, 0.067],
            all.Select(j => Math.Round(j.Parameters!.Ropes.Sag / j.Parameters.Site.Span, 4)).Distinct().Order());
        Assert.All(Starts(["ropes.sag"]).SelectMany(j => j.Design.Changes.Keys), k => Assert.Equal("ropes.sag", k));
        Assert.Empty(Starts(["guard.cap.section"]));
    }

    /// <summary>2 × (loads of all frames + the rope's own weight), of a bridge built by itself; nothing is counted as a look.</summary>
    [Theory]
    [InlineData("frames.base.section", "4x4")]
    [InlineData("guard.rails.section", "1x6")]
    [InlineData("ropes.type", "rope-6x19-iwrc-eips-galvanized-1")]
    public void A_design_is_weighed_as_it_is_when_it_is_built(string path, string value)
    {
        var (reading, design) = (SearchTests.Read(Plain), Design.AsWritten.With([new KeyChange(path, value)]));
        var judge = new Judge(reading, null, new SearchAsk(), CancellationToken.None);
        var weight = judge.Weigh(design);
        Assert.Equal(0, judge.Count);
        Assert.True(new Rebuild().TryAnswer(reading.With(path, value)!, CancellationToken.None, out var model, out _));
        var rope = model!.Rope;
        Assert.Equal(2 * (rope.Loads.Sum() + (rope.WeightPerLength * rope.UnstressedLength())), weight, 6);
        Assert.Equal(judge.Look(design).Figures!.Weight, weight, 9);
        Assert.NotEqual(judge.Weigh(Design.AsWritten), weight);
        Assert.Equal(double.PositiveInfinity, judge.Weigh(design.With([new KeyChange("ropes.sag", "31 %")])));
    }

    [Fact]
    public void One_value_is_found_where_one_is_enough_and_none_where_it_takes_two()
    {
        var low = SearchTests.Sound.Replace("length: 40 in", "length: 35-1/2 in", StringComparison.Ordinal);
        var run = Run(low);
        var single = run.Single(run.AsWritten());
        var change = Assert.Single(single!.Design.Changes);
        // Of 36, 36-1/2, 37-1/2 and 39-1/2 in the first two are too low; a step as long as what is missing ends between, and is enough.
        Assert.Equal(("frames.post.length", "36-13/16 in", true), (change.Key, change.Value, single.Passes));
        Assert.False(run.Judge.Look(Post("36-1/2 in")).Passes);
        Assert.True(run.Judge.Look(Post("40 in")).Figures!.Weight > single.Figures!.Weight);
        var thin = Run(low.Replace("galvanized-1,", "galvanized-5/8,", StringComparison.Ordinal));
        Assert.Null(thin.Single(thin.AsWritten()));
    }

    private static Design Post(string length) => Design.AsWritten.With([new KeyChange("frames.post.length", length)]);

    private static SearchRun Run(string text) => new(SearchTests.Read(text), null, new SearchAsk(), CancellationToken.None);

    private static List<Judged> Starts(System.Collections.Immutable.ImmutableArray<string> free)
    {
        var run = new SearchRun(SearchTests.Read(Plain), null, new SearchAsk { Free = free }, CancellationToken.None);
        return [.. new OtherStarts(run.Judge, run.Levers, run.IsFree).From(run.Judge.Look(Design.AsWritten))];
    }
}
