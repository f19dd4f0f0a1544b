using BridgeForm.Checks.Timber;
using BridgeForm.Tests.Checks.Catalogue.Timber;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>What never governs in the level deck's cases, by hand all the same.</summary>
public sealed class DeckLoadTests
{
    // 60 lbf on 30 in of 72 in (BoardProofs): beside a bearing 60·(1 − 30/144) = 47.5 lbf, in the middle at most
    // 60·72³/(48·E·I); a patch at the bearing.
    [Fact]
    public void A_patch_on_a_board()
    {
        var context = new LevelDeck().Context;
        var patch = DeckLoad.List(context, DeckSpan.List(context).Single()).Single(l => l.Name is "patch");
        Assert.Equal(47.5 * Pound, patch.Shear.Value, 1e-6);
        Assert.Equal(60 * 373248 / 48.0, patch.Deflection.Value(Pound * Inch * Inch) / Inch, 1e-3);
        Assert.DoesNotContain("a / patch", patch.Moment.How, StringComparison.Ordinal);
    }

    // The longest span of the deck, wherever it lies, and there the widest gap between treads.
    [Theory]
    [InlineData("-5 ft")]
    [InlineData("5 ft")]
    public void The_longest_bay_counts(string rise)
    {
        var text = Bridges.Garden.Replace("spacing: 3 ft", "spacing: 3 ft\n  step: plan", StringComparison.Ordinal)
            .Replace("span: 30 ft", "span: 30 ft, rise: " + rise, StringComparison.Ordinal);
        var layout = Bridges.Layout(Bridges.Read(text));
        double Length(int i) => (layout.Deck.Points[i] - layout.Deck.Points[i - 1]).Length;
        var context = Contexts.Of(text + "\ndeck: { layout: across, count: 4, stringer: { section: 2x6, count: 3 } }\n");
        var board = DeckSpan.List(Contexts.Of(text)).Single();
        Assert.Equal(Enumerable.Range(1, layout.Bays).Max(Length), board.Span.Length, 1e-9);
        Assert.Equal(rise is "5 ft" ? "B" + layout.Bays : "B01", board.Span.Where);
        var tread = DeckSpan.List(context).Single(s => s.Kind is "tread");
        var widest = Enumerable.Range(1, context.Layout.Bays).Max(
            bay => BridgeForm.Frames.DeckTreads.Gap(context.Layout, bay, context.Parameters.Deck.Stringer!));
        Assert.Equal((5.5 * Inch) + widest, tread.Tributary, 1e-9);
    }

    // Both ways, and on a public bridge 50 plf on 72 in: 300 lbf; joints are told for the largest.
    [Fact]
    public void Pushes_on_a_public_guard()
    {
        var context = new LevelDeck { Use = "public" }.Context;
        Assert.Equal([200.0, -200, 300, -300], GuardPush.List(context).Select(p => Math.Round(p.Force / Pound, 6)));
        Assert.All(GuardJoints.Check(context).Take(2), joint => Assert.Equal(1.5 * BaseStatics.DownOn(-1) * Pound, joint.Demand, 1e-6));
        var keeper = KeeperUplift.Check(context).First();
        Assert.Equal(((1.5 * BaseStatics.RopeDown) - (0.6 * BaseStatics.DryDead)) * Pound, keeper.Demand, 1e-6);
    }

    // Of two holes the one that takes the larger share of its face: 1/2 in of 1-1/2 in, not 5/8 in of 3-1/2 in.
    [Fact]
    public void The_larger_share_of_a_face_counts()
    {
        var check = new LevelDeck
        {
            More = "holes: { post: [{ face: wide, from_end: 20 in, diameter: 5/8 in }], brace: [{ face: top, "
            + "from_end: 8 in, diameter: 1/2 in }] }"
        }.Check("hole-size");
        Assert.Equal((0.5 * Inch, 0.5 * Inch), (check.Demand, check.Capacity!.Value), new PairTolerance());
    }

    // Outside the ropes the dead load always pulls the top: the worst of both ropes' outer sides is what the push inward lifts.
    [Fact]
    public void The_pulled_side_is_told_with_its_moment()
    {
        var check = new LevelDeck().Check("base-channel-notch");
        var moment = BaseStatics.DeadMoment(23) - BaseStatics.PushMoment(23, BaseStatics.Way);
        Assert.Contains(
            FormattableString.Invariant($"200 lbf inward, brace at its lower edge {moment:0} in·lbf"),
            check.Detail, StringComparison.Ordinal);
        Assert.Contains("top in tension, ", check.Detail, StringComparison.Ordinal);
        Assert.Contains("empty", check.Detail, StringComparison.Ordinal);
    }

    private sealed class PairTolerance : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) => Math.Abs(x.Item1 - y.Item1) + Math.Abs(x.Item2 - y.Item2) < 1e-9;

        public int GetHashCode((double, double) obj) => 0;
    }
}
