using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Tests.Checks;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.Loads;

/// <summary>Where frames tilt, a base's end lies lower than any rope, and that is what stays clear of ground and water.</summary>
public sealed class UndersideTests
{
    private const double Inch = 0.0254;

    // Half of 110 in less half of the 46 in between the ropes.
    private const double Overhang = 32 * Inch;

    // Channel 5/8 in deep on rope 3/4 in thick.
    private const double BelowAxis = 0.25 * Inch;

    // Half of the 3-1/2 in of a 4x6 along the bridge.
    private const double HalfAlong = 1.75 * Inch;

    private static readonly string s_long = Bridges.Garden.Replace("length: 58 in", "length: 110 in", StringComparison.Ordinal);

    /// <summary>
    /// By hand: the ropes' middle nodes lie 0.5 and 0.6 m low, 46 in apart: sin θ = 0.1 / √(0.1² + 1.1684²) = 0.08528. The base's
    /// end lies 0.8128 · 0.08528 = 0.06931 m lower than the lower rope's axis, its underside 0.00635 · cos θ more.
    /// </summary>
    [Fact]
    public void A_base_that_tilts_reaches_lower_than_its_lower_rope()
    {
        var (high, low) = (RopeSamples.Parabola(12, 0, 0.5, 500, bays: 2), RopeSamples.Parabola(12, 0, 0.6, 500, bays: 2));
        var underside = Underside.Of(Bridges.Read(s_long));
        foreach (var (one, other) in new[] { (high, low), (low, high) })
        {
            var (a, b) = Assert.Single(underside.LowerEnds(one, other));
            Assert.Equal(-0.6 - 0.06931 - (0.00635 * Math.Sqrt(1 - (0.08528 * 0.08528))), a.Y, 1e-5);
            Assert.Equal(a.Y, b.Y, 1e-9);
            Assert.Equal((6 - HalfAlong, 6 + HalfAlong), (a.X, b.X));
        }
    }

    /// <summary>By hand: on ropes that rise by 1 in 6, a base that stands square to them has its lower edge towards A.</summary>
    [Theory]
    [InlineData("square")]
    [InlineData("plumb")]
    public void A_base_on_a_slope_reaches_lower_on_one_side(string stance)
    {
        var rope = RopeSamples.Parabola(12, 2, 0.3, 500, bays: 2);
        var text = s_long.Replace("spacing: 3 ft", "spacing: 3 ft\n  stance: " + stance, StringComparison.Ordinal);
        var (a, b) = Assert.Single(Underside.Of(Bridges.Read(text)).LowerEnds(rope, rope));

        // The middle node lies 1 m up, less the sag; the chords rise by 0.7 and by 1.3 in 6.
        var slope = (Math.Atan(0.7 / 6) + Math.Atan(1.3 / 6)) / 2;
        var (sin, cos) = Math.SinCos(slope);
        var floor = 0.375 * Inch / cos;
        var (low, high) = stance is "square"
            ? (0.7 - (BelowAxis * cos) - (HalfAlong * sin), 0.7 - (BelowAxis * cos) + (HalfAlong * sin))
            : (0.7 + floor - (0.625 * Inch), 0.7 + floor - (0.625 * Inch));
        Assert.Equal(low, a.Y, 1e-6);
        Assert.Equal(high, b.Y, 1e-6);
    }

    /// <summary>
    /// By hand: an edge that rises from −1.0 to −0.9 over 0.2 m, on ground that rises to −1.1 under its middle; beside the ground line
    /// nothing is known.
    /// </summary>
    [Fact]
    public void Ground_under_a_base_is_looked_at_from_face_to_face()
    {
        ImmutableArray<GroundPoint> peak = [new(0, -2), new(1, -1.4), new(1.1, -1.1), new(1.2, -1.6), new(3, -2)];
        Assert.Equal(-0.95 + 1.1, Clearance.OverGround(new(1, -1), new(1.2, -0.9), peak)!.Value, 1e-12);
        Assert.Equal(0.4, Clearance.OverGround(new(1, -1), new(1.05, -0.9), peak[..2].Add(new(1.01, -1.4)))!.Value, 0.03);
        Assert.Null(Clearance.OverGround(new(4, -1), new(4.2, -1), peak));
        Assert.Null(Clearance.OverGround(new(1, -1), new(1.2, -1), []));
    }

    /// <summary>
    /// Ground that follows the empty bridge a foot below its ropes: people all over the deck leave room, people on either side at
    /// the quarters tilt a base's end into it. By hand from both ropes of that case: the lower axis less overhang · sin θ less what
    /// lies below the axis, slope left out.
    /// </summary>
    [Fact]
    public void A_base_tilts_into_ground_that_follows_the_bridge()
    {
        var context = Contexts.Of(Followed(10));
        var (tilted, ground) = (context.Ropework.Grown.Single(c => c.Id == LoadCaseIds.MostTilt), context.Parameters.Site.Ground);
        var pair = tilted.Pair!.Shape;
        var hand = Enumerable.Range(1, pair.Left.Nodes.Length - 2).Min(i =>
        {
            var (left, right) = (pair.Left.Nodes[i], pair.Right.Nodes[i]);
            var tilt = Math.Atan(Math.Abs(left.Y - right.Y) / (46 * Inch));
            var end = Math.Min(left.Y, right.Y) - (BelowAxis * Math.Cos(tilt)) - (Overhang * Math.Sin(tilt));
            return end - Clearance.Height(ground, left.X);
        });
        Assert.Equal(hand, tilted.OverGround!.Value, HalfAlong * 0.25);
        var check = Contexts.Check(context, "ground-clearance");
        Assert.Equal(CheckStatus.Fail, check.Status);
        Assert.True(check.Demand <= tilted.OverGround.Value + 1e-9);

        // Ropes alone would have kept clear of it.
        var ropes = context.Cases.Concat(context.Ropework.Grown).Min(c => new[] { c.Shape!, c.Lighter! }.Min(
            r => Clearance.OverGround(r, ground, 0.375 * Inch, HalfAlong)!.Value));
        Assert.True(ropes > 0.02);
    }

    /// <summary>What tilts competes for the least room on ropes that have grown, as it does on those as marked.</summary>
    [Fact]
    public void What_tilts_is_looked_at_on_ropes_that_have_grown()
    {
        var parameters = Bridges.Read(Followed(16));
        var context = Contexts.Of(parameters);
        var input = Input(context);
        foreach (var end in context.Ropework.Stretch)
        {
            var tilted = context.Cases.Single(c => c.Id is LoadCaseIds.MostTilt).Loading!;
            var grown = LoadCases.Solved(input with { Stretch = end.Share }, [tilted], default);
            var room = CaseSurroundings.InAll(parameters, grown)[0].OverGround!.Value;
            Assert.True(end.OverGround!.Room <= room + 1e-9);
            Assert.True(end.OverGround.Room < context.Cases.Min(c => c.OverGround!.Value));
        }
    }

    /// <summary>
    /// The case that is named for it is the worst of a grid of loads on the left from A and on the right as far as B, or on one side
    /// of any stretch: none brings the bridge lower by over 2 %.
    /// </summary>
    [Theory]
    [InlineData("ground")]
    [InlineData("water")]
    public void No_people_to_either_side_bring_it_nearer(string what)
    {
        const int Grid = 10;
        var text = what is "ground"
            ? Followed(30)
            : s_long.Replace("site: { span: 30 ft }", "site: { span: 30 ft, water: -6 ft }", StringComparison.Ordinal);
        var (parameters, context) = (Bridges.Read(text), Contexts.Of(text));
        var (input, span) = (Input(context), parameters.Site.Span);
        var id = what is "ground" ? LoadCaseIds.LeastGround : LoadCaseIds.LeastWater;
        var found = Room(context.Cases.Single(c => c.Id == id));
        var both = from a in Enumerable.Range(0, Grid + 1)
                   from b in Enumerable.Range(0, Grid + 1)
                   select ImmutableArray.Create(
                       new LoadedStretch(0, span * a / Grid, DeckPart.Left), new LoadedStretch(span * b / Grid, span, DeckPart.Right));
        var one = from a in Enumerable.Range(0, Grid)
                  from b in Enumerable.Range(a + 1, Grid - a)
                  select ImmutableArray.Create(new LoadedStretch(span * a / Grid, span * b / Grid, DeckPart.Left));
        var patterns = new LoadPatterns(input);
        var loadings = both.Concat(one).SelectMany(s => new[] { LoadPatterns.Wood.Dry, LoadPatterns.Wood.Wet }.Select(
            wood => patterns.OnStretches("tried", "tried", s, wood, input.Hottest)));
        var tried = CaseSurroundings.InAll(parameters, LoadCases.Solved(input, loadings, default)).Min(Room);
        var empty = Room(context.Cases.Single(c => c.Id is LoadCaseIds.Hot));
        Assert.True(tried < empty - 0.04, $"{tried} {empty}");
        Assert.True(found <= tried + (0.02 * (empty - tried)), $"{found} {tried} {empty}");
        Assert.True(found < Room(context.Cases.Single(c => c.Id is LoadCaseIds.LiveFullHot)) - 0.004);

        double Room(LoadCaseResult c) => (what is "ground" ? c.OverGround : c.OverWater)!.Value;
    }

    /// <summary>
    /// Under people on a part of the deck, dry wood holds the rest taut less: where a frame falls further with it, that is a case of
    /// its own. Wet wood stays one, for it weighs more on everything else.
    /// </summary>
    [Theory]
    [InlineData("2 %", false)]
    [InlineData("3 %", false)]
    [InlineData("6 %", true)]
    [InlineData("9 %", true)]
    public void The_wood_that_lets_a_frame_fall_further_counts(string sag, bool isFurther)
    {
        var context = Contexts.Of(Bridges.Garden.Replace("sag: 6 %", "sag: " + sag, StringComparison.Ordinal));
        var input = Input(context);
        var found = context.Cases.Single(c => c.Id is LoadCaseIds.MostFall);
        Assert.True(found.Loading!.Hung.SequenceEqual(input.Standing!.Heavy));
        Assert.EndsWith("wood wet", found.Title, StringComparison.Ordinal);
        var dry = found.Loading with { Hung = input.Standing.Light, HungMoments = input.Standing.LightMoments };
        var (fall, hand) = (Fall(found), Fall(LoadCases.Solved(input, [dry], default)[0]));
        Assert.Equal(isFurther, hand > fall);
        var own = context.Cases.SingleOrDefault(c => c.Id is LoadCaseIds.MostFallDry);
        Assert.Equal(isFurther, own is not null);
        if (own is not null)
        {
            Assert.Equal(hand, Fall(own), 1e-9);
            Assert.EndsWith("wood dry", own.Title, StringComparison.Ordinal);
        }

        static double Fall(LoadCaseResult c) => c.Moves.Max(m => -m.Y);
    }

    private static LoadCaseInput Input(CheckContext context) =>
        LoadCaseInput.Gather(context.Layout, context.Rope, BridgeMasses.Weigh(context.Layout));

    // Ground so many inches below the empty bridge's ropes.
    private static string Followed(double inches)
    {
        var nodes = Bridges.Layout(Bridges.Read(s_long)).Poses.Select(p => p.Node);
        var points = nodes.Select(n => FormattableString.Invariant($"[{n.X / Inch:0.####} in, {(n.Y / Inch) - inches:0.####} in]"));
        var site = $"site: {{ span: 30 ft, ground: [{string.Join(", ", points)}] }}";
        return s_long.Replace("site: { span: 30 ft }", site, StringComparison.Ordinal);
    }
}
