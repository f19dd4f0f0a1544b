using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Loads.Envelope;

/// <summary>
/// Live load where it is worst, against every stretch of a grid tried out: no stretch may do more than it by over 2 %. What is
/// found is the best of a few starts, not the very worst; 2 % is far below what limits are known to.
/// </summary>
public sealed class GoverningLoadsTests
{
    private const double Nearly = 1.02;
    private const int Grid = 12;

    private static readonly string s_sloping = Bridges.Inclined.Replace("spacing: 1200 mm", "spacing: 1500 mm", StringComparison.Ordinal)
        .Replace("length: 1500 mm", "length: 1800 mm", StringComparison.Ordinal);

    private static readonly string s_wide = Bridges.Garden.Replace("spacing: 46 in", "spacing: 52 in", StringComparison.Ordinal)
        .Replace("sag: 6 %", "sag: 4 %", StringComparison.Ordinal);

    public static TheoryData<string> Texts => [Bridges.Garden, s_sloping, s_wide];

    [Theory]
    [MemberData(nameof(Texts))]
    public void No_stretch_lets_a_frame_fall_further(string text)
    {
        var (input, cases) = Solve(text);
        var tried = Stretches(input, DeckPart.Whole).Select(s => Try(input, s, LoadPatterns.Wood.Wet, input.Hottest));
        Assert.InRange(tried.Max(Fall), 0.01, Fall(Case(cases, LoadCaseIds.MostFall)) * Nearly);
    }

    [Theory]
    [MemberData(nameof(Texts))]
    public void No_stretch_makes_the_ropes_steeper(string text)
    {
        var (input, cases) = Solve(text);
        var tried = Stretches(input, DeckPart.Whole).Select(s => Try(input, s, LoadPatterns.Wood.Dry, input.ReferenceTemperature));
        Assert.InRange(tried.Max(Steepest), 0.1, Steepest(Case(cases, LoadCaseIds.MostSlope)) * Nearly);
    }

    // Near a roll factor of 2 the lever makes nearly twice of a tilt, and the lines at the first shapes lead to three quarters of it.
    private static readonly string s_tall = Bridges.Garden.Replace("spacing: 46 in", "spacing: 50 in", StringComparison.Ordinal)
        .Replace("span: 30 ft", "span: 34 ft", StringComparison.Ordinal)
        .Replace("length: 58 in", "length: 62 in", StringComparison.Ordinal)
        .Replace("sag: 6 %", "sag: 7.5 %", StringComparison.Ordinal);

    public static TheoryData<string> Tilted => [Bridges.Garden, s_sloping, s_wide, s_tall];

    // One stretch on the left with one on the right: those that begin at an end of the bridge, and every one by itself.
    [Theory]
    [MemberData(nameof(Tilted))]
    public void No_stretches_to_either_side_tilt_a_frame_more(string text)
    {
        var (input, cases) = Solve(text);
        var span = input.Design.Nodes[^1].X;
        var both = from a in Enumerable.Range(1, Grid)
                   from b in Enumerable.Range(0, Grid)
                   select ImmutableArray.Create(
                       new LoadedStretch(0, span * a / Grid, DeckPart.Left), new LoadedStretch(span * b / Grid, span, DeckPart.Right));
        var tried = both.Concat(Stretches(input, DeckPart.Left))
            .Select(s => Try(input, s, LoadPatterns.Wood.Dry, input.ReferenceTemperature));
        var worst = Case(cases, LoadCaseIds.MostTilt).CrossSlope!.Value;
        Assert.InRange(tried.Max(c => c.CrossSlope!.Value), 0.01, worst * Nearly);
        Assert.True(worst > Case(cases, LoadCaseIds.LiveCross).CrossSlope!.Value);
        Assert.True(Case(cases, LoadCaseIds.LiveCross).CrossSlope > Case(cases, LoadCaseIds.LiveSide).CrossSlope * 2);
    }

    // Every newton on a hanging rope pulls it harder, so all of the deck is the worst, and no case of its own is needed.
    [Theory]
    [MemberData(nameof(Texts))]
    public void No_stretch_pulls_harder_than_the_whole_deck(string text)
    {
        var (input, cases) = Solve(text);
        Assert.DoesNotContain(cases, c => c.Id == LoadCaseIds.MostTension);
        var tried = Stretches(input, DeckPart.Whole).Select(s => Try(input, s, LoadPatterns.Wood.Wet, input.Coldest));
        Assert.InRange(
            tried.Max(c => c.Shape!.LargestTension), 1, Case(cases, LoadCaseIds.LiveFullCold).Shape!.LargestTension * (1 + 1e-9));
    }

    // A level bridge is its own mirror image: of two places as bad the one nearer A is named, on every machine.
    [Fact]
    public void Of_two_places_alike_the_one_nearer_A_is_meant()
    {
        var (input, cases) = Solve(Bridges.Garden);
        foreach (var id in (string[])[LoadCaseIds.MostFall, LoadCaseIds.MostTilt, LoadCaseIds.MostSlope])
        {
            var found = Case(cases, id);
            var name = found.Title[(found.Title.IndexOf('F', StringComparison.Ordinal) + 1)..][..2];
            var frame = int.Parse(name, System.Globalization.CultureInfo.InvariantCulture);
            Assert.True(frame <= (input.Design.Nodes.Length - 1) / 2, found.Title);
        }
    }

    [Fact]
    public void A_rock_under_a_quarter_is_reached_where_it_stands()
    {
        var (_, cases) = Solve(Bridges.Garden.Replace(
            "site: { span: 30 ft }",
            "site: { span: 30 ft, ground: [[0 ft, -8 ft], [7 ft, -8 ft], [7.5 ft, -3 ft], [8 ft, -8 ft], [30 ft, -8 ft]] }",
            StringComparison.Ordinal));
        var near = Case(cases, LoadCaseIds.LeastGround);
        Assert.Contains("F03", near.Title, StringComparison.Ordinal);
        Assert.Equal(100, near.Temperature * 1.8 + 32, 1e-9);
        Assert.True(near.Stretches.Single().To < 5);
    }

    [Fact]
    public void Where_nobody_stands_nothing_governs()
    {
        var (_, cases) = Solve(Bridges.Garden + "\nloads: { live: 0 psf, low_live_reason: nobody }\n");
        Assert.DoesNotContain(cases, c => c.Id.StartsWith("most-", StringComparison.Ordinal));
    }

    // Cold for pull, hot for room, both with the wood as wet as it gets; the sums by hand from the bridge's own weights.
    [Theory]
    [InlineData("live-full-cold", -6.7, true)]
    [InlineData("live-full-hot", 37.8, true)]
    [InlineData("snow-cold", -6.7, false)]
    [InlineData("live-snow-cold", -6.7, true)]
    public void The_worst_of_each_weather_hangs_wet_wood(string id, double celsius, bool live)
    {
        var (input, cases) = Solve(Bridges.Garden + "\nloads: { snow: 30 psf }\n");
        var found = Case(cases, id);
        Assert.Equal(celsius, found.Temperature, 0.05);
        var (psf, standing) = (47.88025898, input.Standing!);
        var pressure = id switch { "snow-cold" => 30, "live-snow-cold" => 0.75 * 90, _ => 60 } * psf;
        var (a, b) = (input.Design.Nodes[0].X + input.Design.Nodes[1].X, input.Design.Nodes[^1].X + input.Design.Nodes[^2].X);
        var hand = standing.Heavy.Sum() + (pressure * input.ClearWidth * (b - a) / 2);
        Assert.Equal(hand, found.Pair!.Loads.Weights.Sum(), hand * 1e-9);
        Assert.True(standing.Heavy.Sum() > 1.03 * 2 * input.Design.Loads.Sum());
        Assert.True(standing.Light.Sum() < 0.97 * 2 * input.Design.Loads.Sum());
        Assert.Equal(live, found.Title.Contains("ive load", StringComparison.Ordinal));
    }

    // Wood that weighs the same wet and dry hangs the same in all three.
    [Fact]
    public void Weights_of_wood_without_a_range_are_those_of_the_design()
    {
        var parameters = Bridges.Read(Bridges.Garden);
        var layout = Bridges.Layout(parameters with
        {
            Stock = [.. parameters.Stock.Select(s => s with { Density = s.Density with { Low = 600, InService = 600, High = 600 } })],
        });
        var (standing, masses) = (StandingWeights.Weigh(layout), BridgeMasses.Weigh(layout).NodeLoads());
        for (var i = 1; i + 1 < masses.Length; i++)
        {
            Assert.Equal(2 * masses[i], standing.Heavy[i], 1e-9 * masses[i]);
            Assert.Equal(standing.Light[i], standing.Heavy[i], 1e-9 * masses[i]);
            Assert.Equal(standing.Moments[i], standing.HeavyMoments[i], 1e-9 * masses[i]);
        }
    }

    private static (LoadCaseInput Input, ImmutableArray<LoadCaseResult> Cases) Solve(string text)
    {
        var parameters = Bridges.Read(text);
        Assert.True(Bridge.TryShape(parameters, out var rope, out var fault), fault?.Message);
        var layout = BridgeLayout.Lay(parameters, rope);
        var input = LoadCaseInput.Gather(layout, rope, BridgeMasses.Weigh(layout));
        return (input, LoadCases.All(input));
    }

    private static IEnumerable<ImmutableArray<LoadedStretch>> Stretches(LoadCaseInput input, DeckPart part) =>
        from a in Enumerable.Range(0, Grid)
        from b in Enumerable.Range(a + 1, Grid - a)
        let span = input.Design.Nodes[^1].X
        select ImmutableArray.Create(new LoadedStretch(span * a / Grid, span * b / Grid, part));

    private static LoadCaseResult Try(
        LoadCaseInput input, ImmutableArray<LoadedStretch> stretches, LoadPatterns.Wood wood, double temperature) =>
        LoadCases.Solved(input, [new LoadPatterns(input).OnStretches("tried", "tried", stretches, wood, temperature)], default)[0];

    private static LoadCaseResult Case(ImmutableArray<LoadCaseResult> cases, string id) => cases.Single(c => c.Id == id);

    private static double Fall(LoadCaseResult result) => result.Moves.Max(m => -m.Y);

    private static double Steepest(LoadCaseResult result)
    {
        var rope = result.Pair!.Shape.Left;
        return rope.Nodes.Zip(rope.Nodes.Skip(1), (a, b) => Math.Abs((b.Y - a.Y) / (b.X - a.X))).Max();
    }
}
