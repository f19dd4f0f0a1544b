using BridgeForm.Checks.Timber;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
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
        Holds(name, BraceLean);
        if (Math.Abs(push) > 0)
        {
            Holds(name + ", brace at its lower edge", Way);
        }

        void Holds(string of, double way)
        {
            var found = s_cases.Single(c => c.Name == of);
            Assert.Equal((Dead + right) * Pound, found.Beam.Reactions().Right, 1e-6);
            Assert.Equal((Dead + left) * Pound, found.Beam.Reactions().Left, 1e-6);
            Assert.Equal(duration, found.Duration.Factor);

            // No deck beyond 18.25 in: from the right the rope alone, the push apart.
            var moment = (load * onRight * (23 - At)) + DeadMoment(At) + (push * PushMoment(At, way));
            Assert.Equal(moment * Pound * Inch, found.Beam.Moment(At * Inch), 1e-6);

            // On the left the deck and the dead load mirror it; the push leaves the rope's pull on the left and half of itself there.
            var mirror = (load * (1 - onRight) * (23 - At)) + DeadMoment(At) - (push * ((RopeDown * (23 - At)) - (2.5 * 100)));
            Assert.Equal(mirror * Pound * Inch, found.Beam.Moment(-At * Inch), 1e-6);
        }
    }

    // On an edge of its foot the brace presses by the lever from the post's axis to there, and leans from there to its head.
    [Theory]
    [InlineData("inner")]
    [InlineData("outer")]
    public void Foot_on_an_edge(string edge)
    {
        var foot = edge == "inner" ? InnerFoot : OuterFoot;
        var found = s_cases.Single(c => c.Name == $"200 lbf outward, wood dry, brace on its foot's {edge} edge");
        Assert.Equal(DryMoment(At, foot) * Pound * Inch, found.Beam.Moment(At * Inch), 1e-6);
        Assert.Equal((DryDead + RopeDown) * Pound, found.Beam.Reactions().Right, 1e-6);
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

        // Empty, three area loads on all and half of the deck, two places of the point load; on each of the areas, the empty deck and
        // dry wood a push inward at two places of the brace's head, one outward at these and on both edges of its foot.
        Assert.Equal(1 + 6 + 2 + (5 * (2 + 4)), s_cases.Count);
    }

    // Wood of 50 and 30 lb/ft³ where it gets wet, of 27 and 18 where it dries: 50/36 and 30/27 of the weights by hand, and 27/36
    // and 18/27. Treated are base, boards, post and brace, of cedar rail and cap; the hardware's 3 lb stay.
    [Fact]
    public void Wet_wood_loads_the_base_and_dry_wood_holds_less_against_a_push()
    {
        var bridge = new LevelDeck();
        var members = BridgeForm.Frames.Members.Frame(bridge.Context.Layout, 1).Members
            .AddRange(BridgeForm.Frames.Members.Bay(bridge.Context.Layout, 1).Members);
        double Volume(string stock) => members.Where(m => m.Stock == stock).Sum(m => BridgeForm.Solids.CutStockVolume.Prism(m.Shape));
        var cubicFoot = Math.Pow(12 * Inch, 3);
        var (treated, cedar) = (Volume("treated") / cubicFoot, Volume("cedar") / cubicFoot);
        Assert.True(treated > 1 && cedar > 0.3);

        var wet = BaseCases.List(bridge.Wet);
        double Total(IEnumerable<BaseCase> cases, string name) =>
            cases.Single(c => c.Name == name).Beam.Reactions() is var (left, right) ? (left + right) / Pound : 0;
        Assert.Equal((36 * treated) + (27 * cedar) + 3, Total(s_cases, "empty"), 1e-6);
        Assert.Equal((50 * treated) + (30 * cedar) + 3, Total(wet, "empty"), 1e-6);
        Assert.Equal((50 * treated) + (30 * cedar) + 3, Total(wet, "200 lbf outward"), 1e-6);
        Assert.Equal((27 * treated) + (18 * cedar) + 3, Total(wet, "200 lbf outward, wood dry"), 1e-6);
    }

    // Boards of treated lumber 1-1/2 in thick: 50 lb/ft³ are 6.25 psf.
    [Fact]
    public void Wet_boards_weigh_on_themselves()
    {
        var (dry, wet) = (DeckSpan.List(new LevelDeck().Context).First(), DeckSpan.List(new LevelDeck().Wet).First());
        Assert.Equal(50 / 36.0, wet.Dead / dry.Dead, 1e-9);
        Assert.Equal(50 / 144.0 * 1.5 / 12 * 5.5 * Pound / Inch, wet.Dead, 1e-6);
    }

    // Frames that lean by 4° under people and by 6° under the point load. Deck's surface and people over it, all that is dead at
    // its own height: the right rope carries more by weight × height × tan θ / 46 in, the left one less by as much.
    [Fact]
    public void A_base_that_leans_is_carried_more_by_the_low_rope()
    {
        var bridge = new LevelDeck { Loads = "{ live: 60 psf, snow: 40 psf }" };
        var (level, leaning) = (BaseCases.List(bridge.Context), BaseCases.List(bridge.Leaning(Bridges.Radians(4), Bridges.Radians(6))));
        var standing = bridge.Context.Ropework.Standing!;
        var (deck, own) = (standing.DeckHeights[1] / Inch, standing.Moments[1] / (Pound * Inch));

        // Base's top 5.25 in over the rope's axis, boards of 1.5 in.
        Assert.Equal(6.75, deck, 1e-3);
        Assert.InRange(own, 2 * Dead * 6, 2 * Dead * 14);
        const double Metre = 1 / Inch;
        More("live load", 60 * s_psf * (deck + Metre), 4);
        More("live load on the right half", 30 * s_psf * (deck + Metre), 4);
        More("snow load", 40 * s_psf * deck, 4);
        More("0.75 live + 0.75 snow load", 75 * s_psf * (deck + (0.6 * Metre)), 4);
        More("live load and 200 lbf outward", 60 * s_psf * (deck + Metre), 4);
        More("point load in the middle", 300 * (deck + Metre), 6);
        More("point load at the edge", 300 * (deck + Metre), 6);
        More("empty", -own, 0);
        More("200 lbf outward", -own, 0);

        void More(string name, double moment, double degrees)
        {
            var (before, after) = (level.Single(c => c.Name == name).Beam, leaning.Single(c => c.Name == name).Beam);
            var more = (moment + own) * Math.Tan(Bridges.Radians(degrees)) / 46;
            Assert.Equal(more * Pound, after.Reactions().Right - before.Reactions().Right, 1e-3);
            Assert.Equal(-more * Pound, after.Reactions().Left - before.Reactions().Left, 1e-3);

            // Between post and rope nothing but the rope's reaction changes the bending.
            Assert.Equal(more * (23 - At) * Pound * Inch, after.Moment(At * Inch) - before.Moment(At * Inch), 1e-3);
        }
    }

    // Spread over the deck the turning of what stands there leaves the middle of a full deck where it was: half of it to either side.
    [Fact]
    public void What_turns_a_full_deck_turns_it_evenly()
    {
        var (level, leaning) = (BaseCases.List(new LevelDeck().Context), BaseCases.List(new LevelDeck().Leaning(0.1, 0)));
        BaseBeam Full(IEnumerable<BaseCase> cases) => cases.Single(c => c.Name is "live load").Beam;
        Assert.Equal(Full(level).Moment(0), Full(leaning).Moment(0), 1e-6);
        Assert.True(Full(leaning).Moment(10 * Inch) > Full(level).Moment(10 * Inch));
        Assert.True(Full(leaning).Moment(-10 * Inch) < Full(level).Moment(-10 * Inch));
    }

    // On a public bridge 50 plf of 72 in as well: 300 lbf on one post, half as much again as 200.
    [Fact]
    public void Public_pushes_are_half_as_large_again()
    {
        var cases = BaseCases.List(new LevelDeck { Use = "public" }.Context);
        var outward = cases.Single(c => c.Name is "50 plf on 72 in = 300 lbf outward");
        Assert.Equal((Dead + (1.5 * RopeDown)) * Pound, outward.Beam.Reactions().Right, 1e-6);
        Assert.Equal(
            (DeadMoment(At) - (1.5 * PushMoment(At, BraceLean))) * Pound * Inch,
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
        var weights = FrameWeights.Weigh(bridge.Context.Layout, s => s.Density.InService, 1, 1);
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
        Assert.Equal(longest, BaseCases.Longest(layout));
        var between = lengths.Where(l => l.Key > 1 && l.Key < layout.Bays);
        var shortest = between.MinBy(l => l.Value).Key;
        Assert.Equal(
            FrameWeights.Weigh(layout, s => s.Density.Low, 1, shortest).Total, FrameWeights.Lightest(context).Total, 1e-3);
        var cases = BaseCases.List(Contexts.Upright(context));
        var live =
            cases.Single(c => c.Name is "live load").Beam.Reactions().Right - cases.Single(c => c.Name is "empty").Beam.Reactions().Right;
        Assert.Equal(60 / 144.0 * HalfWidth * lengths[longest] / Inch * Pound, live, 1e-6);

        // Caps as well: the longest from head to head.
        var caps = Enumerable.Range(1, layout.Bays).Max(i => (layout.Caps.Points[i] - layout.Caps.Points[i - 1]).Length);
        Assert.Equal(caps, CapSpans.Longest(layout).Length);
        Assert.True(caps > 1.02 * (layout.Caps.Points[5] - layout.Caps.Points[4]).Length);
        var dry = FrameWeights.Lightest(context).Total / 2;
        var lift = Contexts.Check(context, "keeper-uplift-wind").Demand;
        Assert.Equal((100 / 144.0 * HalfWidth * lengths[longest] / Inch * Pound) - (0.6 * dry), lift, 1e-6);
    }

    // Where the bridge rises the last bay's rails and caps run on further, where it falls the first one's: whichever it is, its weight
    // loads the base, wood wet, and the lightest holds it down, wood dry. Volume × density × g of every member, frame by frame.
    [Theory]
    [InlineData("4 ft", "square")]
    [InlineData("-4 ft", "square")]
    [InlineData("3 ft", "plumb")]
    [InlineData("-3 ft", "plumb")]
    public void Heaviest_and_lightest_frame_and_bay(string rise, string stance)
    {
        var context = Contexts.Of(Bridges.Garden.Replace("spacing: 3 ft", "spacing: 3 ft\n  stance: " + stance, StringComparison.Ordinal)
            .Replace("span: 30 ft", "span: 30 ft, rise: " + rise, StringComparison.Ordinal));
        var (layout, last) = (context.Layout, context.Layout.Bays);
        double Of(MemberGroup group, Func<StockParameters, double> density) => group.Members.Sum(
            m => MemberVolume.Measure(m.Shape, drilled: false) * density(context.Parameters.StockNamed(m.Stock)) * 9.80665);
        var hardware = context.Parameters.Frames.HardwareMass * 9.80665;
        var heavy = Enumerable.Range(1, last - 1).Max(i => Of(Members.Frame(layout, i), s => s.Density.High))
            + Enumerable.Range(1, last).Max(i => Of(Members.Bay(layout, i), s => s.Density.High)) + hardware;
        var light = Enumerable.Range(1, last - 1).Min(i => Of(Members.Frame(layout, i), s => s.Density.Low))
            + Enumerable.Range(2, last - 2).Min(i => Of(Members.Bay(layout, i), s => s.Density.Low)) + hardware;
        var cases = BaseCases.List(Contexts.Upright(context));
        var (left, right) = cases.Single(c => c.Name is "empty").Beam.Reactions();
        Assert.Equal(heavy, left + right, 1e-6);
        (left, right) = cases.First(c => c.Name.Contains("wood dry", StringComparison.Ordinal)).Beam.Reactions();
        Assert.Equal(light, left + right, 1e-6);
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
