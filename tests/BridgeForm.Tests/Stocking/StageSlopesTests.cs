using BridgeForm.Loads;
using BridgeForm.Ropes;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

public class StageSlopesTests
{
    // A piece stands for parts that are alike within the shop tolerance: the weights differ by a few grams.
    private const double PieceForPart = 5e-5;

    [Theory]
    [InlineData("erection: both-ends")]
    [InlineData("erection: one-end")]
    [InlineData("erection: one-end", "span: 30 ft, a: { backstay: { length: 60 ft, angle: 40 deg } }, b: { backstay: { length: 60 ft, "
        + "angle: 40 deg, saddle: sliding } }")]
    public void The_last_stage_is_the_finished_bridge_and_earlier_ones_are_steeper(string erection, string site = "span: 30 ft")
    {
        var model = Bridges.Build(Bridges.Garden.Replace("span: 30 ft", site, StringComparison.Ordinal) + "\n" + erection + "\n");
        var steps = model.Assembly();
        var slopes = StageSlopes.Find(model.Parameters, model.Rope, model.Pieces, model.Groups, steps);
        Assert.Equal(steps[^1].Stage, slopes.Length);
        Assert.Equal(model.Rope.Sag, slopes[^1].Sag, PieceForPart);
        var (first, last) = model.Rope.EndSlopes();
        var finished = Math.Tan(Math.Max(Math.Abs(first), Math.Abs(last)));
        Assert.Equal(finished, slopes[^1].Steepest, PieceForPart);
        Assert.Contains(slopes, s => s.Steepest > finished * 1.02);

        // Before any frame hangs the ropes carry nothing but themselves, at the hoisting table's bare sag (its chords: half a millimetre).
        var bare = model.Hoisting.First(
            h => h.Stage == Hoisting.Bare && Math.Abs(h.Temperature - model.Parameters.Site.ReferenceTemperature) < 1e-9);
        Assert.Equal(bare.Sag, slopes[0].Sag, 5e-4);
    }

    // Set short for a stretch that has not come, ropes hang flatter and pull harder at every stage: bare by the hoisting table of the marks
    // that the file chose, finished as the table of the owner has it on the first day.
    [Fact]
    public void Ropes_set_short_are_followed_as_they_hang()
    {
        var asIs = Bridges.Build(Bridges.Garden.Replace("sag: 6 %", "sag: 6 %, new: as-is", StringComparison.Ordinal));
        var (plain, stages) = (Bridges.Build(Bridges.Garden).Stages(), asIs.Stages());
        var reference = asIs.Parameters.Site.ReferenceTemperature;
        var bare = asIs.Ropework.Chosen.Hoisting.Rows.First(
            h => h.Stage == Hoisting.Bare && Math.Abs(h.Temperature - reference) < 1e-9);
        Assert.Equal(bare.Sag, stages[0].Sag, 5e-4);
        Assert.All(stages.Zip(plain), s => Assert.True(s.First.Sag < s.Second.Sag && s.First.Tension > s.Second.Tension));
        var newly = UpkeepPlan.Sags(asIs.Parameters, asIs.Rope, asIs.Ropework.Chosen.Shorter - 1)
            .Single(s => Math.Abs(s.Temperature - reference) < 1e-9).Sag;
        Assert.Equal(newly, stages[^1].Sag, PieceForPart);
    }

    [Fact]
    public void A_long_bridge_is_solved_at_some_stages_and_always_at_the_last()
    {
        var model = Bridges.Build(
            Bridges.Garden.Replace("span: 30 ft", "span: 1500 ft", StringComparison.Ordinal) + "\nerection: one-end\n");
        var steps = model.Assembly();
        var slopes = StageSlopes.Find(model.Parameters, model.Rope, model.Pieces, model.Groups, steps);
        Assert.InRange(slopes.Length, 100, 121);
        Assert.Equal(steps[^1].Stage, slopes[^1].Stage);
    }
}
