using System.Text.RegularExpressions;
using BridgeForm.Proposals;

namespace BridgeForm.Tests.Proposals;

/// <summary>Why nothing passes: figures that show a failure as one, and what is not on sale.</summary>
public sealed class ReasonTests
{
    private const string Rails = """
        name: Rails (invented)
        site: { span: 24 ft }
        frames: { spacing: 60 in }
        guard: { rails: { section: 1x4, stock: rails } }
        stock:
          treated: { species: southern-pine, grade: no1, treated: true, lengths: [8 ft, 16 ft] }
          cedar: { species: western-red-cedar, grade: no2, lengths: [8 ft] }
          rails: { species: western-red-cedar, grade: no2, lengths: [8 ft], sections: [SOLD] }

        """;

    /// <summary>Two decimals; what would read 1.00 has four, rounded up.</summary>
    [Theory]
    [InlineData(1.25678, "1.26")]
    [InlineData(1.2, "1.20")]
    [InlineData(1.0071, "1.01")]
    [InlineData(1.00301, "1.0031")]
    [InlineData(1.00002, "1.0001")]
    public void A_ratio_above_one_never_reads_as_one(double ratio, string told)
    {
        var run = Run("name: a\nsite: { span: 12 ft }\n", []);
        var looked = run.Judge.Look(Design.AsWritten);
        var why = Assert.Single(Reasons.Why(run, looked with { Shortfalls = [new Shortfall("live-load", ratio, "Live load")] }));
        Assert.StartsWith($"Live load (live-load): in the nearest design it is {told} of what it may be; ", why, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_compared_tells_its_numbers()
    {
        var run = Run("name: a\nsite: { span: 12 ft }\n", []);
        var looked = run.Judge.Look(Design.AsWritten);
        var none = new Shortfall("live-load", null, "Live load") { Detail = "no people at all" };
        Assert.Contains(
            "it fails in the nearest design: no people at all", Assert.Single(Reasons.Why(run, looked with { Shortfalls = [none] })),
            StringComparison.Ordinal);
        Assert.Equal(
            ["It cannot be built: no shape"], Reasons.Why(run, looked with { Figures = null, Trouble = "no shape" }).AsEnumerable());
    }

    [Theory]
    [InlineData("1x4", true)]
    [InlineData("1x4, 1x6", false)]
    public void That_no_stronger_section_is_on_sale_is_told_where_it_is_so(string sold, bool isTold)
    {
        var run = Run(Rails.Replace("SOLD", sold, StringComparison.Ordinal), ["guard.rails.section"]);
        var looked = run.Judge.Look(Design.AsWritten);
        var rail = Assert.Single(looked.Shortfalls, s => s.Id is "rail-bending");
        var why = Assert.Single(Reasons.Why(run, looked with { Shortfalls = [rail] }));
        Assert.Equal(isTold, why.Contains("; no stronger section for guard.rails.section is on sale", StringComparison.Ordinal));
    }

    /// <summary>The value that is told meets its check, looked at again, and what is named is the worst that is left.</summary>
    [Fact]
    public void The_nearest_value_that_meets_a_check_is_told_with_what_fails_then()
    {
        var run = Run(
            "name: a\nsite: { span: 24 ft }\nframes: { base: { section: 4x4 }, post: { length: 34 in } }\nropes: { spacing: 40 in }\n",
            ["frames.post.length"]);
        var looked = run.Judge.Look(Design.AsWritten);
        var low = Assert.Single(looked.Shortfalls, s => s.Id is "guard-height");
        var why = Assert.Single(Reasons.Why(run, looked with { Shortfalls = [low] }));
        var told = Regex.Match(
            why, "; frames.post.length (?<value>[^;]+ in) meets it, but then .* [(](?<then>[a-z-]+)[,)]", RegexOptions.NonBacktracking);
        Assert.True(told.Success, why);
        var with = run.Judge.Look(Design.AsWritten.With([new("frames.post.length", told.Groups["value"].Value)]));
        Assert.DoesNotContain(with.Shortfalls, s => s.Id is "guard-height");
        Assert.Equal(with.Shortfalls[0].Id, told.Groups["then"].Value);
    }

    private static SearchRun Run(string text, System.Collections.Immutable.ImmutableArray<string> free) =>
        new(SearchTests.Read(text), null, new SearchAsk { Free = free }, CancellationToken.None);
}
