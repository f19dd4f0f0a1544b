using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Checks.Catalogue;
using Side = BridgeForm.Roles.Side;

namespace BridgeForm.Tests.Frames;

public sealed class LayoutFitTests
{
    private const string Treads = """
        name: Treads (invented)
        units: metric
        site: { span: 9 m }
        deck: { layout: across, board: { section: 38 x 140 mm }, gap: 6 mm }
        """;

    // Hand: a bay without a tread is open from one mid-plane to the other, not a board less.
    [Fact]
    public void A_bay_without_a_tread_is_one_gap()
    {
        var layout = Bridges.Layout(Bridges.Read(Treads));
        var stringer = layout.Parameters.Deck.Stringer!;
        var bare = layout.With([.. layout.Steps.Counted.Select((count, i) => i == 3 ? 0 : count)]);
        Assert.Equal(0, bare.Steps.Treads[3]);
        Assert.Equal(DeckTreads.Length(layout, 4, stringer), DeckTreads.Gap(bare, 4, stringer), 12);
        Assert.InRange(DeckTreads.Gap(bare, 4, stringer), 0.8, 0.9);
        var misfit = Assert.Single(LayoutFit.Check(bare));
        Assert.Equal("frames.spacing", misfit.Key);
        Assert.Contains("no tread fits into 1 of", misfit.What, StringComparison.Ordinal);
        Assert.Contains(": B04 has ", misfit.What, StringComparison.Ordinal);
        Assert.Contains("a tread of 140 mm with its gap takes 146 mm", misfit.What, StringComparison.Ordinal);
        Assert.Empty(LayoutFit.Check(layout));
    }

    // Hand: 5 treads of 140 mm in a bay of about 880 mm leave 36 mm each, 7 would lie on each other.
    [Theory]
    [InlineData(5, true)]
    [InlineData(7, false)]
    public void A_count_of_treads_is_judged_on_the_shape(int count, bool fits)
    {
        var parameters = Bridges.Read(Treads.Replace("gap: 6 mm", $"gap: 6 mm, count: {count}", StringComparison.Ordinal));
        Assert.Equal(fits, Bridge.TryLayout(parameters, out _, out _, out var fault));
        Assert.Equal(fits ? null : "deck.count", fault?.Misfits[0].Key);
    }

    // Hand: over an end base the deck, 1.5 in thick, is lifted by 1.75·8/70.25 = 0.1993 in: 1.6993 in / cos 8° = 1.7160 in up along
    // the post. A rail of 3-1/2 in begins half of that under its centre line.
    [Theory]
    [InlineData("3.46 in", false)]
    [InlineData("3.47 in", true)]
    public void The_lowest_rail_begins_above_the_deck(string height, bool fits)
    {
        var bridge = new TwoBays { Rails = $"[{height}, 9 in, 15 in]" };
        Assert.Equal(fits ? [] : ["guard.rails.heights.0"], LayoutFit.Check(Bridges.Layout(Bridges.Read(bridge.Text))).Select(m => m.Key));
    }

    // Hand: upright frames, B 8 in over A, the middle base 8 in under the line between: the deck falls by 4 in 72 and rises by 12,
    // and is lifted most at B, by 1.75·12/70.25 = 0.30 in against 0.10 at A. Its surface is 1.82 and 1.62 in up along the posts.
    [Fact]
    public void Rails_are_measured_where_the_deck_is_lifted_most()
    {
        var bridge = new TwoBays { Site = ", rise: 8 in", Frames = "stance: plumb", Rails = "[3.45 in, 9 in, 15 in]" };
        var misfit = Assert.Single(LayoutFit.Check(Bridges.Layout(Bridges.Read(bridge.Text))));
        Assert.Equal("guard.rails.heights.0", misfit.Key);
        Assert.Contains("below the deck's surface at F02", misfit.What, StringComparison.Ordinal);
    }

    // A deck that comes up to a frame and goes down behind it rests on both edges of the base: nothing to pack between.
    [Fact]
    public void No_packer_where_the_deck_falls_away_to_both_sides()
    {
        var model = Bridges.Build("""
            name: Deep channels at the ends (invented)
            site: { span: 36 in, rise: -4 in }
            ropes: { sag: 8 % }
            frames:
              spacing: 7 in
              stance: plumb
              base: { length: 91 in }
              channel: { depth: 1 in, end_depth: 2-1/2 in }
              post: { foot: 24 in }
              brace: { foot: 40 in }
            """);
        Assert.All(model.Pieces, p => Assert.Empty(p.Solid.Audit()));
    }

    // Hand: a rail of 90 mm and one 80 mm above it, side by side: 10 mm of each lie in the other, and nothing passes between.
    [Theory]
    [InlineData(0.08, 0)]
    [InlineData(0.0899, 0)]
    [InlineData(0.10, 0.01)]
    public void Sticks_that_overlap_have_nothing_clear_between_them(double apart, double clear)
    {
        var below = Rail(0);
        var above = Rail(apart);
        Assert.Equal(clear, CrossSections.Clear(below, above, new Plane(Vector3d.UnitX, 0.5)), 12);
    }

    private static Member Rail(double height) => new(
        "B01/rail", Role.Rail, Side.Right, "cedar", "test",
        Placement.FromLengthAndThickness(new Vector3d(0, height, 0), Vector3d.UnitX, Vector3d.UnitZ),
        new CutStock(0.09, 0.019, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1)));
}
