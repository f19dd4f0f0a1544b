using BridgeForm.Checks;
using BridgeForm.Loads;

namespace BridgeForm.Tests.Checks;

/// <summary>What stands before all figures, wherever a bridge is told of.</summary>
public sealed class HeadlineTests
{
    [Fact]
    public void Counts_stand_worst_first_in_numbers_that_agree()
    {
        CheckResult[] checks =
        [
            Of(CheckStatus.Pass), Of(CheckStatus.Engineer), Of(CheckStatus.Fail),
            Of(CheckStatus.Pass), Of(CheckStatus.Warn), Of(CheckStatus.Fail),
        ];
        Assert.Equal("2 do not hold, 1 to look at again, 1 for an engineer, 2 hold", Verdict.CountText(checks));
        Assert.Equal("1 does not hold, 1 holds", Verdict.CountText([Of(CheckStatus.Pass), Of(CheckStatus.Fail)]));
        Assert.Equal(new Headline("It must not be built so", "2 checks do not hold", IsDanger: true), Verdict.ToBuild(checks));
        Assert.Equal("1 check does not hold", Verdict.ToBuild([Of(CheckStatus.Fail), Of(CheckStatus.Pass)])?.Text);
        Assert.Null(Verdict.ToBuild([Of(CheckStatus.Pass), Of(CheckStatus.Warn), Of(CheckStatus.Engineer)]));
    }

    // Rolling over comes first. A wind that a bridge stands up to in the calm at least is no danger by itself; one that finds no
    // equilibrium in the calm is.
    [Theory]
    [InlineData(100.0, false)]
    [InlineData(null, true)]
    public void Dangers_are_known_as_such(double? standsTo, bool isDanger)
    {
        var parameters = Contexts.Of(Bridges.Garden).Parameters;
        var fallen = new WindState
        {
            Stage = WindWork.Finished,
            Combination = WindWork.Sure,
            Force = 0,
            Ends = null,
            Stands = false,
            StandsTo = standsTo,
            FallsAt = standsTo is null ? null : 110,
        };
        var wind = new WindWork { Pressure = 500, States = [fallen], Leaning = fallen };
        var ropework = new RopeWork { Cases = [Rolling] };
        Assert.Equal(
            [("Not upright", true), ("Wind across it", isDanger), ("Pushed on a guard", true)],
            Verdict.Headlines(ropework, wind, parameters).Select(h => (h.Label, h.IsDanger)));
        Assert.Empty(Verdict.Headlines(new RopeWork(), WindWork.None, parameters));
    }

    private static LoadCaseResult Rolling => Contexts.Of(Bridges.Garden).Cases[0] with { RollsOver = true };

    private static CheckResult Of(CheckStatus status) => new("a", "A", status, 0, null, "1", null, "", "");
}
