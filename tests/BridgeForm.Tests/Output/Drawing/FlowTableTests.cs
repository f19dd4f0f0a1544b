using BridgeForm.Output.Drawing;

namespace BridgeForm.Tests.Output.Drawing;

public sealed class FlowTableTests
{
    private static readonly string s_long = string.Join(' ', Enumerable.Repeat("a sentence of some length.", 30));

    /// <summary>Where the next row has no room there is no heading either: the table goes on where it has.</summary>
    [Theory]
    [InlineData(0.030, 0)]
    [InlineData(0.200, 2)]
    public void A_heading_stands_over_a_row_or_not_at_all(double room, int set)
    {
        var table = new FlowTable("Checks", "", [new("What", 0.050)], [new([s_long]), new([s_long])]);
        var canvas = new Canvas(new SheetBox(0, 0, 0.2, 0.25));
        var (next, _) = table.Set(canvas, 0, room, 0);
        Assert.Equal(set, next);
        Assert.Equal(set > 0, canvas.Entities.OfType<SheetText>().Any(t => t.Opens is "Checks"));
    }

    /// <summary>A table over several pages repeats its heading where it goes on, each time over rows.</summary>
    [Fact]
    public void Every_part_of_a_long_table_has_rows()
    {
        var flow = new TableFlow(new SheetBox(0, 0, 0.2, 0.15));
        flow.Add(new FlowTable("Short", "", [new("What", 0.050)], [.. Enumerable.Repeat(new FlowRow(["one line"]), 18)]));
        flow.Add(new FlowTable("Checks", "", [new("What", 0.190)], [.. Enumerable.Repeat(new FlowRow([s_long]), 12)]));
        var rows = 0;
        foreach (var page in flow.Pages)
        {
            var texts = page.Entities.OfType<SheetText>().ToList();
            foreach (var heading in texts.Where(t => t.Opens is not null))
            {
                var below = texts.Count(t => t.Text.StartsWith("a sentence", StringComparison.Ordinal) && t.At.Y < heading.At.Y);
                Assert.True(below > 0 || heading.Opens is "Short", $"{heading.Opens} at {heading.At.Y} over nothing");
                rows += below;
            }
        }

        Assert.True(flow.Pages.Count > 1 && rows > 12);
    }
}
