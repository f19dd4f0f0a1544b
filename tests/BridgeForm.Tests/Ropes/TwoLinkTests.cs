using BridgeForm.Loads;
using BridgeForm.Tests.Checks.Catalogue;
using BridgeForm.Tests.Checks.Catalogue.Ropes;

namespace BridgeForm.Tests.Ropes;

/// <summary>
/// Everything about the ropes of a bridge of two bays by hand: weights from volumes and densities, then two elastic links
/// with a load between them. Inches, pounds, degrees Fahrenheit.
/// </summary>
public sealed class TwoLinkTests
{
    private const double Inch = 0.0254;

    private static readonly TwoLinks s_rope = new();

    private static readonly TwoBays s_bridge = new()
    {
        Ropes = ", marking_tension: 500 lbf",
        More = """
            loads: { snow: 50 psf, cases: [{ id: herd, live: 30 psf, from: 3 ft, to: 8 ft, force: 400 lbf, at: 9 ft, temperature: 80 F }] }
            stock:
              treated: { species: southern-pine, treated: true, lengths: [16 ft], density: { low: 30 lb/ft3, in_service: 40 lb/ft3, high: 50 lb/ft3 } }
              cedar: { species: western-red-cedar, lengths: [16 ft], density: { low: 15 lb/ft3, in_service: 20 lb/ft3, high: 25 lb/ft3 } }
            """,
    };

    private static double Dead => (FrameWeight + BayWeight) / 2;

    private static double Length => s_rope.Length(Dead, s_bridge.Sag);

    // Base less two channels 7/8 in wide and 5/8 in deep through 3-1/2 in; posts 24 in along their axes; braces by the mean
    // of their edges (docs/bridge.md: outer edge from 10 − 3.5 / cos α over tan α + tan β); four keeper holes 1/4 in wide and
    // 2 in deep; 3 lb of hardware.
    private static double FrameWeight
    {
        get
        {
            var (post, brace) = (s_bridge.LeanRadians, 12 * Math.PI / 180);
            var longEdge = (10 - (3.5 / Math.Cos(post))) / (Math.Tan(post) + Math.Tan(brace)) / Math.Cos(brace);
            var shortEdge = longEdge - (3.5 * (Math.Tan(brace) + (1 / Math.Tan(post + brace))));
            var wood = (3.5 * 5.5 * 58) - (2 * 0.875 * 0.625 * 3.5) - (4 * Math.PI / 4 / 16 * 2)
                + (2 * 1.5 * 3.5 * 24) + (2 * 1.5 * 3.5 * (longEdge + shortEdge) / 2);
            return (wood * 40 / 1728) + 3;
        }
    }

    // Six boards from the end base's far side to half of 1/8 in before the middle frame; six rails and two caps from the end
    // post's far side to the middle frame.
    private static double BayWeight
    {
        get
        {
            var (deck, guard) = (TwoBays.Upright(s_bridge.DeckFall, 1), TwoBays.Upright(s_bridge.CapFall, 1));
            return ((6 * 1.5 * 5.5 * (72 + 1.75 - 0.0625) * deck * 40) + (((6 * 0.75 * 3.5) + (2 * 1.5 * 5.5)) * (72 + 0.75) * guard * 20))
                / 1728;
        }
    }

    [Fact]
    public void Weights_are_volumes_by_densities()
    {
        var masses = s_bridge.Context.Masses;
        RopeSamples.Close(FrameWeight, masses.Frames[1] / 0.45359237, 1e-9);
        RopeSamples.Close(BayWeight, masses.Bays[0] / 0.45359237, 1e-9);
        RopeSamples.Close(TwoLinks.Newtons(Dead), s_bridge.Context.Rope.Loads[1], 1e-9);
    }

    // Psf on the deck, of which so much comes to the middle frame, 60 % on one rope, and degrees Fahrenheit above 60 °F. What
    // loads half the deck loads one of the frame's two bays. Three quarters each of live load and snow: ASCE 7 2.4.1 (from
    // memory). People's weight lies 1.0 m over the deck (common practice, no source), snow's on it.
    [Theory]
    [InlineData("dead", 0, 0, 0, 0)]
    [InlineData("live-full", 60, 0, 72, 0)]
    [InlineData("live-half-a", 60, 0, 36, 0)]
    [InlineData("live-half-b", 60, 0, 36, 0)]
    [InlineData("snow", 0, 50, 72, 0)]
    [InlineData("live-snow", 45, 37.5, 72, 0)]
    [InlineData("cold", 0, 0, 0, -40)]
    [InlineData("hot", 0, 0, 0, 40)]
    [InlineData("live-full-cold", 60, 0, 72, -40)]
    public void Area_loads(string id, double people, double snow, double tributary, double degrees)
    {
        var area = s_bridge.Between * tributary / 144;
        Holds(id, Empty(degrees).With(people * area, 4.6, RollProofs.PeopleHigh).With(snow * area, 4.6, Deck), degrees);
    }

    // A load on half the width stands a quarter of the width from the middle line.
    [Fact]
    public void Load_on_one_side() => Holds(
        "live-side", Empty(0).With(60.0 / 144 * s_bridge.Between / 2 * 72, s_bridge.Between / 4, RollProofs.PeopleHigh), 0);

    // 300 lbf on the middle line, half on each rope; at the edge 6 in from the posts' inner face.
    [Fact]
    public void Point_loads()
    {
        Holds("point-mid", Empty(0).With(300, 0, RollProofs.PeopleHigh), 0);
        Holds("point-quarter", Empty(0).With(300, 0, RollProofs.PeopleHigh), 0);
        Holds("point-edge-mid", Empty(0).With(300, (s_bridge.Between / 2) - 6, RollProofs.PeopleHigh), 0);
    }

    // The herd of 30 psf from 36 in to 96 in: of the first bay's 36 in, whose middle is at 54 in, three quarters come to the
    // middle frame; of the second bay's 24 in, in whose first third they stand, five sixths. 400 lbf at 108 in: a half.
    [Fact]
    public void Load_case_of_its_own()
    {
        var area = 30.0 / 144 * s_bridge.Between * ((36 * 0.75) + (24.0 * 5 / 6));
        var loads = Empty(20).With(area, 4.6, RollProofs.PeopleHigh).With(200, (s_bridge.Between / 2) - 6, RollProofs.PeopleHigh);
        Holds("herd", loads, 20);
    }

    [Fact]
    public void Half_erected() => Holds("erect-half", new TwoRopes(46, s_bridge.Sag, FrameWeight, 0, 1) { Marked = 2 * Dead }, 0);

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(100)]
    public void Hoisting_with_frames(double fahrenheit)
    {
        var rows = s_bridge.Context.Ropework.Hoisting.Rows;
        var row = rows.Single(r => r.Stage == Hoisting.Frames && Math.Abs(r.Temperature - ((fahrenheit - 32) / 1.8)) < 0.01);
        var drop = s_rope.Drop(FrameWeight / 2, Length, Growth(fahrenheit - 60));
        var level = s_rope.Level(FrameWeight / 2, drop, Length);
        RopeSamples.Close(drop * Inch, row.Sag, Hand(level));
        RopeSamples.Close(TwoLinks.Newtons(level), row.Horizontal, Hand(level));
        RopeSamples.Close(TwoLinks.Newtons(s_rope.Tension(FrameWeight / 2, drop, Length)), row.LargestTension, Hand(level));
    }

    [Fact]
    public void Marks_and_cut()
    {
        var work = s_bridge.Context.Ropework;
        for (var i = 0; i <= 2; i++)
        {
            Assert.Equal(i * Length * Inch, work.Marks[i].Unstressed, 1e-7);
            Assert.Equal(i * Length * (1 + (500 / s_rope.Stiffness)) * Inch, work.Marks[i].AtMarkingTension, 1e-7);
            // New rope to be stretched by 0.125 % to 0.5 % (rope catalogues, steel core).
            Assert.Equal(i * Length / 1.00125 * Inch, work.Stretch[0].Marks[i].Unstressed, 1e-7);
            Assert.Equal(i * Length / 1.005 * (1 + (500 / s_rope.Stiffness)) * Inch, work.Stretch[1].Marks[i].AtMarkingTension, 1e-7);
        }

        // 18 in of turn-back for 3/4 in (Calif. 8 CCR §8497 table 1) and 6 diameters round the thimble, at both ends.
        RopeSamples.Close(((2 * Length) + (2 * (18 + 4.5))) * Inch, work.Cut!.Length!.Value, 1e-7);
        RopeSamples.Close(2 * Length * 80 * TwoLinks.Expansion * Inch, work.Cut.TemperatureChange, 1e-6);
        RopeSamples.Close(2 * Length * 0.005 * Inch, work.Stretch[1].TakeUp, 1e-6);
        RopeSamples.Close((s_rope.Drop(Dead, Length, 1.005) - s_bridge.Sag) * Inch, work.Stretch[1].MidSpanDrop!.Value, 1e-4);
    }

    // What links instead of arcs leave out.
    private static double Hand(double level) => 2e-6 + (Math.Pow(s_rope.PerInch * Length / level, 2) / 8);

    private static double Growth(double degrees) => 1 + (TwoLinks.Expansion * degrees);

    // Base's top 5.25 in over the rope, boards 1.5 in.
    private const double Deck = 5.25 + 1.5;

    private static TwoRopes Empty(double degrees) => new(46, s_bridge.Sag, 2 * Dead, RollProofs.Dead(s_bridge).Moment, Growth(degrees));

    private static void Holds(string id, TwoRopes ropes, double degrees)
    {
        var result = s_bridge.Context.Cases.Single(c => c.Id == id);
        var (heavier, lighter) = ropes.Loads;
        var drop = s_rope.Drop(heavier, Length, Growth(degrees));
        RopeSamples.Close(TwoLinks.Newtons(heavier), result.Shape!.Loads[1], 1e-5);
        RopeSamples.Close(TwoLinks.Newtons(lighter), result.Lighter!.Loads[1], 1e-5);
        var level = s_rope.Level(heavier, drop, Length);
        RopeSamples.Close(drop * Inch, result.Shape.Sag, Hand(level));
        RopeSamples.Close(TwoLinks.Newtons(level), result.Shape.Horizontal, 1e-5 + Hand(level));
        RopeSamples.Close(TwoLinks.Newtons(s_rope.Tension(heavier, drop, Length)), result.Shape.LargestTension, 1e-5 + Hand(level));
        Assert.Equal((drop - s_bridge.Sag) * Inch, result.MidSpanDrop, 1e-5);
        Assert.Equal(-(drop - s_bridge.Sag) * Inch, result.Moves[1].Y, 1e-5);
        Assert.False(result.RollsOver);
        Assert.Equal(Math.Atan(ropes.Tilt), result.CrossSlope!.Value, 1e-5);
        Assert.Equal(Math.Atan(ropes.FirstTilt), result.FirstOrderCrossSlope, 1e-5);
        // Down on both supports with half the load and a link's weight, and inward with the horizontal tension.
        RopeSamples.Close(-TwoLinks.Newtons((heavier / 2) + (s_rope.PerInch * Length)), result.ReactionA.Y, 1e-5 + Hand(level));
        RopeSamples.Close(-TwoLinks.Newtons((heavier / 2) + (s_rope.PerInch * Length)), result.ReactionB.Y, 1e-5 + Hand(level));
        RopeSamples.Close(TwoLinks.Newtons(level), result.ReactionA.X, 1e-5 + Hand(level));
        RopeSamples.Close(-TwoLinks.Newtons(level), result.ReactionB.X, 1e-5 + Hand(level));
    }
}
