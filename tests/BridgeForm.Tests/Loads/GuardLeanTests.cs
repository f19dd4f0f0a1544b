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
        var pushed = Of(inches).Pushed!;
        Assert.True(pushed.State.Stands, $"{pushed.State.StandsTo} {pushed.State.FallsAt}");
        Assert.Equal(degrees, pushed.State.Roll * 180 / Math.PI, 0.4);
    }

    // By the same solution, with 0.5 % of stretch, hottest: 36 in passes 45° between 120 and 124 lbf, 38 in at 145 lbf.
    [Theory]
    [InlineData(36, 120)]
    [InlineData(38, 145)]
    public void On_ropes_that_have_stretched_it_turns_over_sooner(int inches, double pounds)
    {
        var grown = Of(inches).PushedGrown!.State;
        Assert.False(grown.Stands);
        Assert.InRange(pounds, 0.95 * grown.StandsTo!.Value / Pound, 1.05 * grown.FallsAt!.Value / Pound);
    }

    private const double Pound = BridgeForm.Quantities.Units.PoundForce;

    private static WindWork Of(int inches) => Checks.Contexts.Of(Bridges.Read(FormattableString.Invariant($$"""
        name: Short (invented)
        units: imperial
        use: private
        site: { span: 20 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: {{inches}} in, sag: 6 % }
        frames:
          spacing: 3 ft
          base: { section: 3x6, length: 56 in, stock: treated }
          channel: { clearance: 1/8 in, depth: 5/8 in, end_depth: 3/4 in }
          post: { section: 3x4, length: 40 in, lean: 8 deg, foot: 12 in, stock: treated }
          brace: { section: 2x4, lean: 12 deg, foot: 22 in, stock: treated }
          hardware: 3 lb
        deck: { layout: along, board: { section: 2x6, stock: treated }, gap: 1/4 in, side_gap: 1/2 in, butt_gap: 1/8 in }
        guard: { rails: { section: 2x4, count: 6, stock: cedar }, cap: { section: 2x6, stock: cedar } }
        stock:
          treated: { species: southern-pine, grade: no1, treated: true, lengths: [16 ft] }
          cedar: { species: western-red-cedar, grade: no2, lengths: [12 ft] }
        """))).Wind;
}
