using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Ropes;

namespace BridgeForm.Tests.Loads.Envelope;

/// <summary>Where a line is positive, by hand: it runs straight from frame to frame.</summary>
public sealed class ExtentsTests
{
    private static readonly ImmutableArray<RopePoint> Nodes = [new(0, 0), new(1, 0), new(2, 0), new(3, 0), new(5, 0)];

    // Through nothing at 1 + 1/(1 + 2)·1 = 4/3 and at 2 + 2/(2 + 4)·1 = 7/3; triangles 1·4/3/2 and 4·(3 − 7/3 + 2)/2.
    [Fact]
    public void Stretches_end_where_the_line_passes_through_nothing()
    {
        double[] line = [0, 1, -2, 4, 0];
        var found = Extents.Positive(Nodes, line, DeckPart.Left).ToList();
        Assert.Equal(2, found.Count);
        Assert.Equal(0, found[0].From, 1e-12);
        Assert.Equal(4.0 / 3, found[0].To, 1e-12);
        Assert.Equal(7.0 / 3, found[1].From, 1e-12);
        Assert.Equal(5, found[1].To, 1e-12);
        Assert.All(found, s => Assert.Equal(DeckPart.Left, s.Part));
        Assert.Equal((4.0 / 6) + (4 * (3 - (7.0 / 3) + 2) / 2), Extents.Sum(Nodes, line), 1e-12);
    }

    [Fact]
    public void A_line_that_is_positive_all_along_takes_the_whole_deck()
    {
        var all = Assert.Single(Extents.Positive(Nodes, [0, 1, 2, 1, 0], DeckPart.Whole));
        Assert.Equal(new LoadedStretch(0, 5, DeckPart.Whole), all);
        Assert.Equal(0.5 + 1.5 + 1.5 + 1, Extents.Sum(Nodes, [0, 1, 2, 1, 0]), 1e-12);
    }

    [Fact]
    public void A_line_that_is_nowhere_positive_takes_nothing()
    {
        Assert.Empty(Extents.Positive(Nodes, [0, -1, -2, -1, 0], DeckPart.Whole));
        Assert.Equal(0, Extents.Sum(Nodes, [0, -1, -2, -1, 0]), 1e-12);
    }

    // What the stretches put on the frames, times the line, is the sum: nothing is lost at their ends.
    [Fact]
    public void Loads_on_the_stretches_do_what_the_sum_says()
    {
        double[] line = [0, 1, -2, 4, 0];
        var done = 0.0;
        foreach (var stretch in Extents.Positive(Nodes, line, DeckPart.Whole))
        {
            var lengths = NodeLoads.TributaryLengths(Nodes, stretch.From, stretch.To);
            done += lengths.Zip(line, (l, c) => l * c).Sum();
        }

        Assert.Equal(Extents.Sum(Nodes, line), done, 1e-12);
    }
}
