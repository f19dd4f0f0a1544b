using BridgeForm.Checks.Timber;
using BridgeForm.Tests.Checks.Catalogue.Timber;
using static BridgeForm.Tests.Checks.Catalogue.Timber.BaseStatics;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>
/// Every case of the level deck's middle base by hand: what each rope bears, and the bending 21 in to the right of the middle,
/// between post and rope. Live 60 psf and snow 40 psf on 2·18.46 in and 72.007 in; 300 lbf.
/// </summary>
public sealed class BaseCasesTests
{
    private const double At = 21;

    // What an area load of one psf lays on the base.
    private static readonly double s_psf = 2 * HalfWidth * Math.Sqrt((72 * 72) + 1) / 144;

    private static readonly IReadOnlyList<BaseCase> s_cases =
        BaseCases.List(new LevelDeck { Loads = "{ live: 60 psf, snow: 40 psf }" }.Context);

    // Half of an even load on each rope; of one on the right half, from 0 to 18.25 in, 0.5 + 9.125/46 of its half.
    // 0.75·(60 + 40) = 75 psf together (ASCE 7 2.4.1 combination 4, from memory).
    [Theory]
    [InlineData("empty", 0, 0.5, 0, 0.9)]
    [InlineData("live load", 60, 0.5, 0, 1.0)]
    [InlineData("live load on the right half", 30, 0.5 + (9.125 / 46), 0, 1.0)]
    [InlineData("live load and 200 lbf outward", 60, 0.5, 1, 1.6)]
    [InlineData("live load and 200 lbf inward", 60, 0.5, -1, 1.6)]
    [InlineData("snow load", 40, 0.5, 0, 1.15)]
    [InlineData("snow load on the right half", 20, 0.5 + (9.125 / 46), 0, 1.15)]
    [InlineData("snow load and 200 lbf outward", 40, 0.5, 1, 1.6)]
    [InlineData("snow load and 200 lbf inward", 40, 0.5, -1, 1.6)]
    [InlineData("0.75 live + 0.75 snow load", 75, 0.5, 0, 1.15)]
    [InlineData("0.75 live + 0.75 snow load on the right half", 37.5, 0.5 + (9.125 / 46), 0, 1.15)]
    [InlineData("0.75 live + 0.75 snow load and 200 lbf outward", 75, 0.5, 1, 1.6)]
    [InlineData("0.75 live + 0.75 snow load and 200 lbf inward", 75, 0.5, -1, 1.6)]
    [InlineData("200 lbf outward", 0, 0.5, 1, 1.6)]
    [InlineData("200 lbf inward", 0, 0.5, -1, 1.6)]
    public void Deck_and_guard(string name, double psf, double onRight, double push, double duration)
    {
        var load = psf * s_psf;
        var (right, left) = ((load * onRight) + (push * RopeDown), (load * (1 - onRight)) - (push * RopeDown));
        var found = s_cases.Single(c => c.Name == name);
        Assert.Equal((Dead + right) * Pound, found.Beam.Reactions().Right, 1e-6);
        Assert.Equal((Dead + left) * Pound, found.Beam.Reactions().Left, 1e-6);
        Assert.Equal(duration, found.Duration.Factor);

        // No deck beyond 18.25 in: from the right the rope alone, the push apart.
        var moment = (load * onRight * (23 - At)) + DeadMoment(At) + (push * PushMoment(At));
        Assert.Equal(moment * Pound * Inch, found.Beam.Moment(At * Inch), 1e-6);

        // On the left the deck and the dead load mirror it; the push leaves the rope's pull on the left and half of itself there.
        var mirror = (load * (1 - onRight) * (23 - At)) + DeadMoment(At) - (push * ((RopeDown * (23 - At)) - (2.5 * 100)));
        Assert.Equal(mirror * Pound * Inch, found.Beam.Moment(-At * Inch), 1e-6);
    }

    // Whole in the middle and whole at the edge, 18.46 − 6 = 12.46 in.
    [Fact]
    public void Points()
    {
        var middle = s_cases.Single(c => c.Name is "point load in the middle");
        var edge = s_cases.Single(c => c.Name is "point load at the edge");
        Assert.Equal((Dead + 150) * Pound, middle.Beam.Reactions().Right, 1e-6);
        Assert.Equal((Dead + (300 * (0.5 + ((HalfWidth - 6) / 46)))) * Pound, edge.Beam.Reactions().Right, 1e-6);
        Assert.Equal((1.0, 1.0), (middle.Duration.Factor, edge.Duration.Factor));
        Assert.Equal(17, s_cases.Count);
    }

    // On a public bridge 50 plf of 72 in as well: 300 lbf on one post, half as much again as 200.
    [Fact]
    public void Public_pushes_are_half_as_large_again()
    {
        var cases = BaseCases.List(new LevelDeck { Use = "public" }.Context);
        var outward = cases.Single(c => c.Name is "50 plf on 72 in = 300 lbf outward");
        Assert.Equal((Dead + (1.5 * RopeDown)) * Pound, outward.Beam.Reactions().Right, 1e-6);
        Assert.Equal(
            (DeadMoment(At) - (1.5 * PushMoment(At))) * Pound * Inch,
            cases.Single(c => c.Name is "50 plf on 72 in = 300 lbf inward").Beam.Moment(At * Inch), 1e-6);
    }

    // Treads: the deck's weight and its load stand on three stringers 17 in apart, 3/16, 10/16 and 3/16 of it (beam tables).
    [Fact]
    public void Treads_stand_on_their_stringers()
    {
        var bridge = new LevelDeck { Deck = "{ layout: across, count: 10, stringer: { section: 2x6, count: 3 } }" };
        var (full, empty) = (Case("live load"), Case("empty"));
        var load = 60 * 2 * (18.25 + (7 * Math.Tan(Lean))) * Math.Sqrt((72 * 72) + 1) / 144;
        Assert.Equal(load * ((0.5 * 23) - (3 / 16.0 * 17)) * Pound * Inch, full.Moment(0) - empty.Moment(0), 1e-6);

        // Ten treads of 35.5 in and three stringers of 73.1875 in: 8.25/48 lb/in.
        var weights = FrameWeights.Weigh(bridge.Context.Layout, s => s.Density.InService, 1);
        Assert.Equal((355 + (3 * 73.1875)) * 8.25 / 48 * Pound, weights.Deck, 1e-6);

        BaseBeam Case(string name) => BaseCases.List(bridge.Context).Single(c => c.Name == name).Beam;
    }

    // The longest bay loads the base, the shortest holds it down: with equal steps in plan the steepest one, at A where B lies
    // lower, at B where it lies higher, and the flattest. Half of its load on each rope.
    [Theory]
    [InlineData("-5 ft")]
    [InlineData("5 ft")]
    public void Longest_and_shortest_bay(string rise)
    {
        var context = Contexts.Of(Bridges.Garden.Replace("spacing: 3 ft", "spacing: 3 ft\n  step: plan", StringComparison.Ordinal)
            .Replace("span: 30 ft", "span: 30 ft, rise: " + rise, StringComparison.Ordinal)
                + "\nloads: { live: 60 psf, uplift: 100 psf }\n");
        var layout = context.Layout;
        double Length(int i)
        {
            var (from, to) = (layout.Poses[i - 1].Node, layout.Poses[i].Node);
            return Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
        }

        var lengths = Enumerable.Range(1, layout.Bays).ToDictionary(i => i, Length);
        var longest = rise is "5 ft" ? layout.Bays : 1;
        Assert.Equal(lengths.Values.Max(), lengths[longest]);
        Assert.Equal(longest, BaseCases.Bay(layout, longest: true));
        Assert.Equal(lengths.Values.Min(), lengths[BaseCases.Bay(layout, longest: false)]);
        var cases = BaseCases.List(context);
        var live =
            cases.Single(c => c.Name is "live load").Beam.Reactions().Right - cases.Single(c => c.Name is "empty").Beam.Reactions().Right;
        Assert.Equal(60 / 144.0 * HalfWidth * lengths[longest] / Inch * Pound, live, 1e-6);

        // Caps as well: the longest from head to head.
        var caps = Enumerable.Range(1, layout.Bays).Max(i => (layout.Caps.Points[i] - layout.Caps.Points[i - 1]).Length);
        Assert.Equal(caps, CapSpans.Longest(layout).Length);
        Assert.True(caps > 1.02 * (layout.Caps.Points[5] - layout.Caps.Points[4]).Length);
        var dry = FrameWeights.Weigh(layout, s => s.Density.Low, BaseCases.Bay(layout, longest: false)).Total / 2;
        var lift = Contexts.Check(context, "keeper-uplift-wind").Demand;
        Assert.Equal((100 / 144.0 * HalfWidth * lengths[longest] / Inch * Pound) - (0.6 * dry), lift, 1e-6);
    }

    // Plumb frames on a slope: 26 mm in the middle of an 89 mm base, at its deep mouth 44.5 mm · tan θ more, where the rope is
    // steepest under a frame that hangs on it.
    [Fact]
    public void The_deepest_mouth_is_the_notch()
    {
        var context = Contexts.Of(Bridges.Inclined);
        var steepest = context.Layout.Poses.Where(p => !p.IsEnd).Max(p => Math.Tan(Math.Abs(p.Slope)));
        Assert.True(steepest > 0.2);
        Assert.Equal(0.026 + (0.0445 * steepest), BaseSection.Cut(context).Notch, 1e-9);
    }
}
