using BridgeForm.Checks;
using BridgeForm.Output.Preview;

namespace BridgeForm.Tests.Output.Preview;

/// <summary>Sentences for people who read no formulas.</summary>
public sealed class PlainVerdictTests
{
    private static readonly CheckResult Check = new("post", "Bending of the post", CheckStatus.Fail, 2, 1, "Pa", 2, "own", "2 > 1");

    // Never better than it is: 1.0001 is 1 % beyond, 0.999 has nothing to spare.
    [Theory]
    [InlineData(CheckStatus.Fail, 1.0001, "does not hold, 1 % beyond what is allowed")]
    [InlineData(CheckStatus.Fail, 1.241, "does not hold, 25 % beyond what is allowed")]
    [InlineData(CheckStatus.Fail, 2.31, "does not hold, 2.4 times what is allowed")]
    [InlineData(CheckStatus.Fail, 1e6, "does not hold, by far")]
    [InlineData(CheckStatus.Fail, null, "does not hold")]
    [InlineData(CheckStatus.Warn, 1.1, "to be reviewed, 10 % beyond the usual")]
    [InlineData(CheckStatus.Warn, 0.9, "to be reviewed")]
    [InlineData(CheckStatus.Engineer, 0.9, "a licensed engineer decides")]
    [InlineData(CheckStatus.Pass, 0.999, "holds, with 0 % to spare")]
    [InlineData(CheckStatus.Pass, 0.614, "holds, with 38 % to spare")]
    [InlineData(CheckStatus.Pass, null, "holds")]
    public void A_check(CheckStatus status, double? ratio, string outcome) =>
        Assert.Equal($"Bending of the post: {outcome}.", PlainVerdict.Of(Check with { Status = status, Ratio = ratio }));

    /// <summary>Every check has words of its own, and none of them is an engineer's.</summary>
    [Fact]
    public void Every_check_has_plain_words()
    {
        var ids = BridgeForm.Checks.Register.AllChecks.Declared.Select(c => c.Id).ToList();
        Assert.Equal([], ids.Where(id => PlainSubject.Find(id) is null));
        string[] terms =
        [
            "shear", "bending", "bearing of", "deflection", "moment", "notch", "mid-span", "live load", "point load", "area load", "patch",
            "mouth", "chord", "tension", "eccentric", "member",
        ];
        Assert.Equal([], ids.Select(id => PlainSubject.Find(id)!).Where(w => Array.Exists(
            terms, t => w.Contains(t, StringComparison.OrdinalIgnoreCase))));
    }

    [Fact]
    public void The_whole_bridge()
    {
        var model = Bridges.Build(Bridges.Garden);
        string Of(params CheckResult[] checks) => PlainVerdict.Of(model with { Checks = [.. checks] });
        var wait = Check with { Status = CheckStatus.Engineer };
        Assert.Equal("Do not build it so: 1 of 2 checks fails.", Of(Check, wait));
        Assert.Equal("Do not build it so: 2 of 3 checks fail.", Of(Check, Check, wait));
        Assert.Equal(
            "Nothing fails, but 1 of 2 checks had no values for the wood.",
            Of(wait, wait with { NotChecked = "2x4 oak no1" }));
        Assert.Equal("Nothing fails on paper; 2 for an engineer.", Of(wait, wait));
    }
}
