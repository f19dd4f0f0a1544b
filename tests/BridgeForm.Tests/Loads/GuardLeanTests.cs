using BridgeForm.Loads;

namespace BridgeForm.Tests.Loads;

/// <summary>One who pushes on a post: what a bridge does against it has no leaps where it has none.</summary>
public sealed class GuardLeanTests
{
    // A short bridge, as light as wood. Wider ropes roll less under the same push: 44.3°, 41.0°, 37.9° and 34.8° with 36, 38, 40 and
    // 42 in between them, by an independent solution in space in steps of 5 lbf.
    [Theory]
    [InlineData(36, 44.3)]
    [InlineData(38, 41.0)]
    [InlineData(40, 37.9)]
    [InlineData(42, 34.8)]
    public void Wider_ropes_roll_less(int inches, double degrees)
    {
        var state = UpTo45(inches, grown: false);
        Assert.True(state.Stands, $"{state.StandsTo} {state.FallsAt}");
        Assert.Equal(degrees, state.Roll * 180 / Math.PI, 0.4);

        // All of these are beyond 30°: too much for one person's push.
        Assert.False(Work(inches).Pushed!.State.Stands);
    }

    // By the same solution, with 0.5 % of stretch, hottest: 36 in passes 45° between 120 and 124 lbf, 38 in at 145 lbf.
    [Theory]
    [InlineData(36, 120)]
    [InlineData(38, 145)]
    public void On_ropes_that_have_stretched_it_turns_over_sooner(int inches, double pounds)
    {
        var grown = UpTo45(inches, grown: true);
        Assert.False(grown.Stands);
        Assert.InRange(pounds, 0.95 * grown.StandsTo!.Value / Pound, 1.05 * grown.FallsAt!.Value / Pound);
    }

    private const double Pound = BridgeForm.Quantities.Units.PoundForce;

    // Where a bridge that climbs and has an odd number of bays has its worst post is no matter of which end is called A: both frames
    // beside the middle are looked at.
    [Theory]
    [InlineData("3 ft")]
    [InlineData("1 ft")]
    public void The_worst_post_does_not_hang_on_the_names_of_the_ends(string rise)
    {
        var (up, down) = (Of(60, $", rise: {rise}").Wind, Of(60, $", rise: -{rise}").Wind);
        Assert.True(up.Pushed!.State.Stands);
        Assert.Equal(up.Pushed.State.Roll, down.Pushed!.State.Roll, 1e-6);
        Assert.Equal(up.PushedGrown!.State.Roll, down.PushedGrown!.State.Roll, 1e-6);
        Assert.Equal(up.PushedByWeight!.State.Roll, down.PushedByWeight!.State.Roll, 1e-6);
    }

    // No post of the bridge is worse than the one that was found.
    [Theory]
    [InlineData(60, "")]
    [InlineData(72, ", rise: 4 ft")]
    public void No_other_post_is_worse(int inches, string more)
    {
        var context = Of(inches, more);
        var stage = Calm(context, grown: false);
        var worst = Enumerable.Range(1, context.Layout.Bays - 1)
            .Max(i => GuardLean.At(context.Layout, stage, i).Solve(GuardLean.Point, Names(context), default).Roll);
        Assert.InRange(worst, 0.1, GuardLean.MostRoll);
        Assert.Equal(worst, context.Wind.Pushed!.State.Roll, 1e-9);
    }

    // The one frame of two bays by hand, with somebody beside its guard: without a push, and with half of one.
    [Theory]
    [InlineData(0)]
    [InlineData(120)]
    public void Whoever_pushes_weighs_as_well(double pounds)
    {
        var bridge = new Checks.Catalogue.TwoBays { Frames = "hardware: 60 lb" };
        var stage = GuardLean.At(bridge.Context.Layout, Calm(bridge.Context, grown: false), 1);
        var height = stage.Surfaces[1].Moment / Inch;
        var person = (Weight: 165.0, Aside: 12.0, Height: 50.0);
        var by = new Checks.Catalogue.Ropes.BlownFrame(bridge, 144 * pounds, 1, (1, height), onRopes: false, person);
        var state = (stage with { Beside = new Bystander(1, person.Weight * Pound, person.Aside * Inch, person.Height * Inch) })
            .Solve(pounds * Pound, Names(bridge.Context), default);
        Assert.True(state.Stands && by.Stands);
        Assert.InRange(by.Roll, 0.001, 0.3);
        Assert.InRange(state.Roll / by.Roll, 0.995, 1.005);
    }

    private const double Inch = 0.0254;

    private static WindState UpTo45(int inches, bool grown)
    {
        var context = Of(inches);
        var frame = Names(context).IndexOf((grown ? context.Wind.PushedGrown : context.Wind.Pushed)!.Frame);
        return (GuardLean.At(context.Layout, Calm(context, grown), frame) with { Fallen = BridgeForm.Ropes.Space.SpaceSolver.Fallen })
            .Solve(GuardLean.Point, Names(context), default);
    }

    private static WindStage Calm(BridgeForm.Checks.CheckContext context, bool grown)
    {
        var standing = StandingWeights.Weigh(context.Layout);
        var stages = WindStages.List(context.Layout, context.Rope, context.Masses, standing);
        return grown ? GuardLean.Grown(context.Layout, stages, context.Rope, standing) : GuardLean.Finished(stages);
    }

    private static System.Collections.Immutable.ImmutableArray<string> Names(BridgeForm.Checks.CheckContext context) =>
        [.. context.Layout.Poses.Select(p => p.Name)];

    private static WindWork Work(int inches) => Of(inches).Wind;

    private static BridgeForm.Checks.CheckContext Of(int inches, string site = "") =>
        Checks.Contexts.Of(Bridges.Read(FormattableString.Invariant($$"""
        name: Short (invented)
        units: imperial
        use: private
        site: { span: 20 ft{{site}} }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: {{inches}} in, sag: 6 % }
        frames:
          spacing: 3 ft
          base: { section: 3x6, length: {{Math.Max(56, inches + 10)}} in, stock: treated }
          channel: { clearance: 1/8 in, depth: 5/8 in, end_depth: 3/4 in }
          post: { section: 3x4, length: 40 in, lean: 8 deg, foot: 12 in, stock: treated }
          brace: { section: 2x4, lean: 12 deg, foot: 22 in, stock: treated }
          hardware: 3 lb
        deck: { layout: along, board: { section: 2x6, stock: treated }, gap: 1/4 in, side_gap: 1/2 in, butt_gap: 1/8 in }
        guard: { rails: { section: 2x4, count: 6, stock: cedar }, cap: { section: 2x6, stock: cedar } }
        stock:
          treated: { species: southern-pine, grade: no1, treated: true, lengths: [16 ft] }
          cedar: { species: western-red-cedar, grade: no2, lengths: [12 ft] }
        """)));
}
