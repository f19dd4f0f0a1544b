using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.AsBuilt;

public sealed class CorrectingTests
{
    private static readonly BridgeParameters s_garden = Bridges.Read(Bridges.Garden);

    // The garden bridge with its left rope 20 mm too long and its right one 10 mm too short, as the solver hangs it.
    [Theory]
    [InlineData(BuildStage.Bare)]
    [InlineData(BuildStage.Frames)]
    [InlineData(BuildStage.Complete)]
    public void What_was_built_wrong_is_turned_back(BuildStage stage)
    {
        var found = Found(Wrong(stage, 0.020, -0.010));
        Assert.Equal(0.020, found.TooLong.Left, 1e-6);
        Assert.Equal(-0.010, found.TooLong.Right, 1e-6);

        // 5/8 in or larger by the pull; its coarse thread, both ends of the body.
        var thread = found.Turnbuckle.Thread!;
        Assert.Equal(TurnbuckleThread.CoarseOf(found.Turnbuckle.Size!.Size)!.Pitch, thread.Pitch, 12);
        Assert.Equal(-0.020 / (4 * thread.Pitch), found.Left.Exact, 4);
        Assert.Equal(0.010 / (4 * thread.Pitch), found.Right.Exact, 4);

        // Half a flat of both ends together, times 3/16 of span over sag, by how much a parabola sags more for each length.
        var most = thread.PerTurn / 12 * (3 * s_garden.Site.Span / (16 * s_garden.Ropes.Sag));
        Assert.InRange(Math.Abs(found.Finished.Sags.Left - s_garden.Ropes.Sag), 0, 1.3 * most);
        Assert.InRange(Math.Abs(found.Finished.Sags.Right - s_garden.Ropes.Sag), 0, 1.3 * most);
        Assert.InRange(found.Finished.Tilt, 0, 1.4 * 2 * most / s_garden.Ropes.Spacing);
        Assert.True(found.AsItIs!.Tilt > 5 * found.Finished.Tilt);
    }

    [Fact]
    public void With_frames_on_the_levels_and_the_end_bays_are_told_and_no_marks_are_moved()
    {
        var found = Found(Wrong(BuildStage.Frames, 0.020, -0.010));
        Assert.Equal(found.Anew.Frames.Length, found.Levels.Length);
        Assert.All(found.Levels, l => Assert.InRange(l.OverDrawn, -0.002, 0.002));
        Assert.InRange(found.EndBays.Left, -0.001, 0.001);
    }

    // A span 1/2 in longer than drawn takes 1/2 in more of rope between the supports, and a little for the sag that stays.
    [Fact]
    public void A_longer_span_makes_the_ropes_too_short()
    {
        const double Longer = 0.0127;
        var measured = Wrong(BuildStage.Bare, 0, 0);
        var ropes = Ropes(BuildStage.Bare) with
        {
            Span = s_garden.Site.Span + Longer,
            DegreesAbove = measured.AsBuilt!.Temperature - s_garden.Site.ReferenceTemperature,
        };
        Assert.True(ropes.TryHang(default, out var hung, out _));
        var found = Found(measured with
        {
            AsBuilt = measured.AsBuilt with { Span = ropes.Span, LeftSag = hung!.Sags.Left, RightSag = hung.Sags.Right },
        });
        Assert.Equal(-Longer, found.TooLong.Left, 0.0004);
        Assert.Equal(s_garden.Site.Span + Longer, found.Anew.Frames[^1].Node.X, 9);
    }

    // Frames as far apart as they may be, on supports that came out 2 in further apart: drawn anew there would be one bay more, but parts
    // are cut for so many, and each bay is longer by its share.
    [Theory]
    [InlineData(BuildStage.Bare)]
    [InlineData(BuildStage.Complete)]
    public void There_are_as_many_bays_as_parts_were_cut_for(BuildStage stage)
    {
        const double Further = 0.0508;
        var drawn = Bridges.Build(s_garden);
        var widest = drawn.Rope.Nodes.Zip(drawn.Rope.Nodes.Skip(1), (a, b) => RopeSamples.Distance(a, b)).Max();
        var wrong = Wrong(stage, 0, 0);
        var asked = wrong with
        {
            Frames = wrong.Frames with { Spacing = widest * 1.0001 },
            AsBuilt = wrong.AsBuilt! with { Span = wrong.AsBuilt.Span + Further },
        };
        var anew = asked with { AsBuilt = null, Site = asked.Site with { Span = asked.AsBuilt.Span } };
        Assert.Equal(drawn.Frames.Length + 1, Bridges.Build(anew).Frames.Length);

        var found = Found(asked);
        Assert.Equal(drawn.Frames.Length, found.Anew.Frames.Length);
        Assert.Equal(stage == BuildStage.Bare, found.IsOtherStep);
        Assert.Equal(stage == BuildStage.Bare ? Further / (drawn.Frames.Length - 1) : 0, found.StepChange, 3e-4);
    }

    // Every bevel is cut for the rise that was drawn.
    [Fact]
    public void Another_rise_is_told()
    {
        var wrong = Wrong(BuildStage.Bare, 0, 0);
        Assert.False(Found(wrong).IsOtherRise);
        Assert.True(Found(wrong with { AsBuilt = wrong.AsBuilt! with { Rise = wrong.Site.Rise + (0.02 * wrong.Site.Span) } }).IsOtherRise);
    }

    // Ropes drawn far too tight as they are: some check that held does so no more, and does again once they are let out.
    [Fact]
    public void Checks_that_change_are_named_before_and_after()
    {
        var found = Found(Wrong(BuildStage.Complete, -0.055, -0.055));
        Assert.Contains(found.ChangesAsItIs, c => c.Before?.Status == CheckStatus.Pass && c.Now?.Status != CheckStatus.Pass);
        Assert.DoesNotContain(found.Changes, c => c.Now?.Status == CheckStatus.Fail);
    }

    // Supports an inch further apart with the bridge on them: each end bay half of that longer, less what the bays themselves give; boards
    // that bore on half of the base less half the gap bear on so much less, and may on no less than 5/8 in.
    [Theory]
    [InlineData(0.0254, false)]
    [InlineData(0.0610, true)]
    public void Boards_that_slide_off_the_base_keep_people_off(double further, bool isOff)
    {
        var ropes = Wrong(BuildStage.Complete, 0, 0);
        var found = Found(ropes with { AsBuilt = ropes.AsBuilt! with { Span = ropes.Site.Span + further } });
        var (bears, least) = found.EndBearing!.Value;
        var half = (found.Parameters.Frames.Base.Along - found.Parameters.Deck.ButtGap) / 2;
        Assert.Equal(half - (further / 2), bears, 0.004);
        Assert.Equal(0.625 * 0.0254, least, 1e-9);
        Assert.Equal(isOff, found.IsOffBearing);
        Assert.True(!isOff || found.IsOffLimits);
    }

    // A foot more between the supports than the ropes were marked for, and as deep: no turnbuckle does that.
    [Fact]
    public void What_no_turnbuckle_can_do_was_measured_wrong()
    {
        var wrong = Wrong(BuildStage.Bare, 0.02, 0);
        Assert.False(Found(wrong).IsOtherThanMarked);
        var found = Found(wrong with { AsBuilt = wrong.AsBuilt! with { Span = wrong.Site.Span + 0.3048 } });
        Assert.True(found.IsOtherThanMarked);
        Assert.InRange(found.OverMarks.Left, 0.29, 0.36);
    }

    [Fact]
    public void Turns_beyond_the_turnbuckle_are_told()
    {
        var wrong = Wrong(BuildStage.Bare, 0.150, 0);
        Assert.False(Found(wrong).IsBeyondReach);

        // Each takes in half of 150 mm, more than one of 60 mm can.
        var small = wrong.Ropes.Turnbuckle with { TakeUp = 0.06 };
        Assert.True(Found(wrong with { Ropes = wrong.Ropes with { Turnbuckle = small } }).IsBeyondReach);
    }

    // Steel grows by 6.5e-6 for a degree Fahrenheit (from memory); the stretch to come is at most 0.5 % of the rope, of which 0.2 % were
    // seen. Half of it each.
    [Fact]
    public void What_must_be_left_in_the_turnbuckles_is_told()
    {
        var wrong = Wrong(BuildStage.Complete, 0.004, 0.004);
        var (site, length) = (wrong.Site, Bridges.Build(s_garden).Ropework.Cut!.BetweenEnds);
        var found = Found(wrong with { AsBuilt = wrong.AsBuilt! with { Stretch = 0.002 } });
        var hotter = 6.5e-6 * 1.8 * (site.Temperatures.Max() - site.ReferenceTemperature) * length;
        var colder = 6.5e-6 * 1.8 * (site.ReferenceTemperature - site.Temperatures.Min()) * length;
        Assert.Equal(((0.003 * length) + hotter) / 2, found.StillToCome!.Value.In, 1e-6);
        Assert.Equal(colder / 2, found.StillToCome.Value.Out, 1e-6);
        Assert.False(Found(wrong).IsShortLater);

        // 20 mm taken in by each of two turnbuckles that were chosen to the millimetre for what is to come: nothing is left for it.
        var tight = Wrong(BuildStage.Complete, 0.040, 0.040);
        var needed = Bridges.Build(s_garden).Ropework.Cut!.TakeUp!.Value / 2;
        var small = tight.Ropes.Turnbuckle with { TakeUp = needed + 0.002 };
        var later = Found(tight with { Ropes = tight.Ropes with { Turnbuckle = small } });
        Assert.False(later.IsBeyondReach);
        Assert.True(later.IsShortLater);
    }

    [Fact]
    public void What_fails_already_or_waits_for_an_engineer_is_told_when_it_asks_for_more()
    {
        static CheckResult Of(CheckStatus status, double demand, double? ratio) => new("x", "X", status, demand, null, "N", ratio, "", "");
        static int Told(CheckResult before, CheckResult now) => CheckChange.Between([before], [now]).Length;
        Assert.Equal(1, Told(Of(CheckStatus.Engineer, 100, null), Of(CheckStatus.Engineer, 106, null)));
        Assert.Equal(0, Told(Of(CheckStatus.Engineer, 100, null), Of(CheckStatus.Engineer, 104, null)));
        Assert.Equal(1, Told(Of(CheckStatus.Fail, 1, 2), Of(CheckStatus.Fail, 1, 2.2)));
        Assert.Equal(0, Told(Of(CheckStatus.Fail, 1, 2), Of(CheckStatus.Fail, 1, 1.9)));
        Assert.Equal(0, Told(Of(CheckStatus.Pass, 1, 0.5), Of(CheckStatus.Pass, 1, 0.9)));
        var change = CheckChange.Between([Of(CheckStatus.Fail, 1, 2)], [Of(CheckStatus.Fail, 1, 2.2)])[0];
        Assert.True(change is { IsOnlyWorse: true, BeginsToFail: false });
    }

    // Set short for its stretch, as the file says, and not stretched yet: the ropes hang as they were to be, and nothing is turned. By the
    // plain marks the same ropes would be 0.3125 % too short.
    [Fact]
    public void Ropes_marked_short_are_right_before_they_have_stretched()
    {
        var asIs = s_garden with { Ropes = s_garden.Ropes with { New = NewRopeWay.AsIs } };
        var model = Bridges.Build(asIs);
        var bare = model.Ropework.Chosen.Hoisting.Rows.First(r => r.Stage == Hoisting.Bare
            && Math.Abs(r.Temperature - asIs.Site.ReferenceTemperature) < 0.01);
        var measured = new AsBuiltParameters
        {
            Stage = BuildStage.Bare,
            Temperature = bare.Temperature,
            Span = asIs.Site.Span,
            Rise = asIs.Site.Rise,
            LeftSag = bare.Sag,
            RightSag = bare.Sag,
            Stretch = 0,
        };
        var found = Found(asIs with { AsBuilt = measured });
        Assert.Equal(0, found.TooLong.Left, 1e-7);
        Assert.Equal(0.003125, found.ToCome, 1e-9);
        Assert.Equal(asIs.Ropes.Sag, found.Finished.Sags.Left, 1e-6);
        Assert.Equal(model.Ropework.Chosen.Marks[^1].Unstressed, found.Marks[^1].Unstressed, 1e-9);
        var plain = Found(s_garden with { AsBuilt = measured });
        Assert.Equal(-0.003125 / 1.003125 * model.Rope.UnstressedLength(), plain.TooLong.Left, 1e-6);
    }

    private static Correction Found(BridgeParameters parameters)
    {
        Assert.True(Correcting.TryFind(parameters, OneByOne, out var found, out var fault), fault?.Message);
        return found;
    }

    private static void OneByOne(params Action[] works) => Array.ForEach(works, w => w());

    private static BridgeParameters Wrong(BuildStage stage, double left, double right)
    {
        const double Cooler = -8;
        var ropes = Ropes(stage) with { DegreesAbove = Cooler };
        Assert.True(ropes.TryHang(new RopePair(left, right), out var hung, out var failure), failure);
        return s_garden with
        {
            AsBuilt = new AsBuiltParameters
            {
                Stage = stage,
                Temperature = s_garden.Site.ReferenceTemperature + Cooler,
                Span = s_garden.Site.Span,
                Rise = s_garden.Site.Rise,
                LeftSag = hung!.Sags.Left,
                RightSag = hung.Sags.Right,
                Stretch = 0,
            },
        };
    }

    private static HungRopes Ropes(BuildStage stage)
    {
        Assert.True(Bridge.TryShape(s_garden, out var rope, out _));
        var layout = BridgeLayout.Lay(s_garden, rope);
        return HungRopes.Of(LoadCaseInput.Gather(layout, rope, BridgeMasses.Weigh(layout)), stage);
    }
}
