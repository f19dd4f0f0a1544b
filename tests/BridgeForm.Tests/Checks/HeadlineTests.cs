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
        Assert.Equal("2 do not hold, 1 to review, 1 for an engineer, 2 hold", Verdict.CountText(checks));
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
            [("Not upright", true), ("Wind across it", isDanger), ("Pushed on a guard", true), ("Not looked at", false)],
            Verdict.Headlines(ropework, wind, parameters).Select(h => (h.Label, h.IsDanger)));
        Assert.Equal(
            ["Not looked at"], Verdict.Headlines(new RopeWork(), WindWork.None, parameters).Select(h => h.Label));
    }

    // One person's push that tips an empty bridge further than people may tilt it is told, and is no danger by itself.
    [Theory]
    [InlineData(7.9, true, "")]
    [InlineData(8.1, true, "200 lbf on one post: at F03 it rolls by 8.1°; side stays")]
    [InlineData(2, false, "200 lbf on one post: at F03 without side stays it turns over or rolls beyond 30.0° between 112 ")]
    public void A_push_on_one_post_is_told_where_it_tips_or_turns_over(double degrees, bool stands, string told)
    {
        var parameters = Contexts.Of(Bridges.Garden).Parameters;
        var state = new WindState
        {
            Stage = WindWork.Finished,
            Combination = WindWork.All,
            Force = 0,
            Ends = null,
            Stands = stands,
            Roll = Bridges.Radians(degrees),
            RollFrame = "F03",
            StandsTo = stands ? 890 : 500,
            FallsAt = stands ? null : 600,
        };
        var wind = new WindWork { Pressure = 500, Pushed = new PushOnPost("F03", state) };
        var text = Verdict.PushText(wind, parameters);
        if (told.Length > 0)
        {
            var inHeat = Verdict.PushText(wind with { Pushed = null, PushedGrown = wind.Pushed }, parameters);
            var once = told.Replace("post: ", "post: once stretched, hottest and dry, ", StringComparison.Ordinal);
            Assert.StartsWith(once, inHeat, StringComparison.Ordinal);
        }

        Assert.StartsWith(told, text, StringComparison.Ordinal);
        Assert.Equal(told.Length == 0, text.Length == 0);
        if (told.Length > 0)
        {
            Assert.Equal(
                !stands, Verdict.Headlines(new RopeWork(), wind, parameters).Single(h => h.Label == "Pushed on a guard").IsDanger);
        }
    }

    [Fact]
    public void Fewer_people_than_usual_are_told_with_the_reason()
    {
        var few = Bridges.Read(Bridges.Garden + "\nloads: { live: 30 psf, low_live_reason: one household of four }\n");
        Assert.Equal(
            "it is judged for 30 psf of people, at least 40 psf is asked; the file's reason: one household of four (live-load)",
            Verdict.LowLiveText(few));
        Assert.Equal("", Verdict.LowLiveText(Bridges.Read(Bridges.Garden + "\nloads: { live: 40 psf }\n")));
    }

    [Fact]
    public void What_was_not_looked_at_is_told()
    {
        const string Never = "ice, flood, earthquake, falling trees, rot, wear: never";
        Assert.Equal(
            "snow, the ground below, high water: not in the file; " + Never,
            Verdict.NotAskedText(Bridges.Read(Bridges.Garden)));
        var given = Bridges.Garden.Replace(
            "span: 30 ft", "span: 30 ft, water: -12 ft, ground: [[0 ft, -1 ft], [15 ft, -14 ft], [30 ft, -1 ft]]",
            StringComparison.Ordinal);
        Assert.Equal(Never, Verdict.NotAskedText(Bridges.Read(given + "\nloads: { snow: 20 psf }\n")));
    }

    private static LoadCaseResult Rolling => Contexts.Of(Bridges.Garden).Cases[0] with { RollsOver = true };

    private static CheckResult Of(CheckStatus status) => new("a", "A", status, 0, null, "1", null, "", "");
}
