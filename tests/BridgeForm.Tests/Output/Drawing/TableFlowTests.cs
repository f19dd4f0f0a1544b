using BridgeForm.Output.Drawing;

namespace BridgeForm.Tests.Output.Drawing;

/// <summary>Tables end, whatever stands in them, and stay on the paper.</summary>
public sealed class TableFlowTests
{
    private static readonly SheetBox s_body = new(0.01, 0.02, 0.41, 0.27);

    // Five columns that want 150 mm each have 400 mm between them: all of their words are set, and none beyond the edge.
    [Fact]
    public void A_table_that_is_too_wide_gives_way()
    {
        var words = string.Join(' ', Enumerable.Range(100, 90));
        FlowRow row = new([words, words, words, words, words]);
        FlowTable table = new("Wide (invented)", "", [.. Enumerable.Range(1, 5).Select(i => new FlowColumn($"{i}", 0.150))], [row, row]);
        Assert.True(table.Widths().Sum() > 0.7);
        Assert.Equal(0.4, table.Within(0.4, 0.25).Widths().Sum(), 1e-9);
        var flow = new TableFlow(s_body);
        flow.Add(table);
        var texts = flow.Pages.SelectMany(p => p.Entities).OfType<SheetText>().ToList();
        Assert.Equal(2 * 5 * 90, texts.Sum(t => t.Text.Split(' ').Count(w => w.Length == 3)));
        Assert.All(texts, t => Assert.InRange(t.At.X + PageText.Width(t.Text, t.Height, bold: false), s_body.MinX, s_body.MaxX));
    }

    // 9,000 words in one entry are several pages of it: all are set in their order, none below the foot.
    [Fact]
    public void A_row_that_is_higher_than_a_page_goes_on_over_the_next()
    {
        var words = string.Join(' ', Enumerable.Range(10000, 9000));
        FlowTable table = new(
            "High (invented)", "A note.", [new("no."), new("words", 0.2)], [new(["1", "few"]), new(["2", words]), new(["3", "few"])]);
        var flow = new TableFlow(s_body);
        flow.Add(table);
        Assert.InRange(flow.Pages.Count, 2, 20);
        var texts = flow.Pages.SelectMany(p => p.Entities).OfType<SheetText>().ToList();
        Assert.Equal(
            Enumerable.Range(10000, 9000).Select(i => $"{i}"),
            texts.SelectMany(t => t.Text.Split(' ')).Where(w => w.Length == 5 && w[0] == '1'));
        Assert.All(texts, t => Assert.InRange(t.At.Y, s_body.MinY, s_body.MaxY));
        Assert.Equal(1, texts.Count(t => t.Text == "2"));
        Assert.Contains(texts, t => t.Text == "3");
    }

    // Narrow columns keep what they have.
    [Fact]
    public void Narrow_columns_stay()
    {
        FlowTable table = new(
            "Two (invented)", "", [new("short"), new("long", 0.5)], [new(["abc", string.Join(' ', Enumerable.Range(100, 200))])]);
        var before = table.Widths();
        var after = table.Within(0.1, 1).Widths();
        Assert.Equal(before[0], after[0], 1e-12);
        Assert.Equal(0.1, after.Sum(), 1e-9);
        Assert.Same(table, table.Within(1, 1));
    }
}
