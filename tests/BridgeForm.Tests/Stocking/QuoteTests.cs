using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Project.Files;
using BridgeForm.Ropes;

namespace BridgeForm.Tests.Stocking;

public sealed class QuoteTests
{
    private const double Foot = 0.3048;

    private const string Priced = """

        quote:
          rates: { rope: 4.20 XYZ/ft, clip: 5 XYZ/each, shop: 60 XYZ/h, erection: 240 XYZ/h, delivery: 150 XYZ/each }
          cut: 3
          stage: 90
          contingency: 10 %
          margin: 20 %
          tax: 8 %
        """;

    // Without a rate there is no amount and no sum, only quantities.
    [Fact]
    public void Without_rates_there_are_quantities_alone()
    {
        var lines = QuoteSheet.Lines(Bridges.Build(Bridges.Garden));
        Assert.All(lines, l => Assert.Null(l.Amount));
        Assert.Empty(QuoteSheet.Sums(new(), lines));
        Assert.Contains(lines, l => l.Item is "cuts of the saw" && !l.Quantity.Contains('h', StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Item.StartsWith("Turnbuckles", StringComparison.Ordinal) && l.Quantity is "4");
    }

    // By hand: two ropes of their cut length at 4.20 a foot; four clips at each of four ends at 5; 3 minutes a cut and 1 1/2 hours a stage.
    [Fact]
    public void What_has_a_rate_costs_quantity_times_rate()
    {
        var model = Bridges.Build(Bridges.Garden + Priced);
        var lines = QuoteSheet.Lines(model);
        double Of(string item) => lines.Single(l => l.Item.StartsWith(item, StringComparison.Ordinal)).Amount!.Value;
        Assert.Equal(2 * (model.Rope.UnstressedLength() + (45 * 0.0254)) / Foot * 4.20, Of("rope-6x19"), 0.01);
        Assert.Equal(16 * 5, Of("Rope clips"), 1e-9);
        var cuts = model.Pieces.Sum(p => p.Occurrences.Length * 2);
        Assert.InRange(Of("cuts of the saw"), 0.5 * cuts * 3 / 60 * 60, 1.5 * cuts * 3 / 60 * 60);

        // Two channels a base, 20 minutes each at 60 an hour.
        var routed = QuoteSheet.Lines(Bridges.Build(
                Bridges.Garden + Priced.Replace("cut: 3", "channel: 20\n  cut: 3", StringComparison.Ordinal)))
            .Single(l => l.Item is "channels");
        Assert.Equal(2 * model.Frames.Length * 20 / 60.0 * 60, routed.Amount!.Value, 1e-6);
        Assert.Equal(model.Assembly()[^1].Stage * 1.5 * 240, Of("stages of the assembly"), 1e-6);
        Assert.Null(lines.Single(l => l.Item.StartsWith("Shackles", StringComparison.Ordinal)).Amount);
        Assert.Contains("settings of the saw", QuoteSheet.Unpriced(lines), StringComparison.Ordinal);
    }

    // Spare boards are bought: the lumber's lines come to what the plan costs, spares with them. A rope without a known end is said.
    [Fact]
    public void Spare_boards_are_in_it_and_a_rope_of_unknown_length_is_named()
    {
        var spare = Bridges.Build(Bridges.Garden
            + "\nstock:\n  treated: { species: southern-pine, grade: no2, treated: true, lengths: [8 ft, 12 ft, 16 ft], spare: 15 % }\n"
            + "  cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft, 12 ft], spare: 15 % }\n");
        var jobs = spare.StockPlan.Jobs;
        Assert.All(jobs, j => Assert.True(j.Spare!.Count > 0));
        Assert.Equal(
            jobs.Select(j => $"{j.Boards.Length + j.Spare!.Count} boards, {j.Spare!.Count} spare"),
            QuoteSheet.Lines(spare).Where(l => l.Group is "lumber").Select(l => l.Quantity));
        var unknown = Bridges.Build(Bridges.Garden.Replace(
            "galvanized-3/4,", "galvanized-3/4, termination: { kind: wedge-socket },", StringComparison.Ordinal));
        Assert.Contains(QuoteSheet.Lines(unknown), l => l.Group is "ropes" && l.Item.StartsWith("rope-6x19", StringComparison.Ordinal));
        Assert.Contains("rope-6x19", QuoteSheet.Unpriced(QuoteSheet.Lines(unknown)), StringComparison.Ordinal);
    }

    // Nine bases of 58 in, and boards of 4 ft: they are in no sum.
    [Fact]
    public void Pieces_that_no_board_gives_are_named()
    {
        var model = Bridges.Build(Bridges.Garden
            + "\nstock:\n  treated: { species: southern-pine, grade: no2, treated: true, lengths: [4 ft] }\n"
            + "  cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft] }\n");
        Assert.NotEmpty(model.StockPlan.TooLong);
        Assert.Contains(
            QuoteSheet.Lines(model), l => l.Amount is null && l.Item.Contains("no board on sale is long enough", StringComparison.Ordinal));
    }

    // 10 % of the sum, 20 % of both, 8 % of all: sum × 1.1 × 1.2 × 1.08.
    [Fact]
    public void Contingency_margin_and_tax_come_one_on_the_other()
    {
        var model = Bridges.Build(Bridges.Garden + Priced);
        var lines = QuoteSheet.Lines(model);
        var sums = QuoteSheet.Sums(model.Parameters.Quote, lines);
        var sum = lines.Sum(l => l.Amount ?? 0);
        Assert.Equal(["sum", "contingency", "margin", "tax", "total"], sums.Select(s => s.Group));
        Assert.Equal(sum * 1.1 * 1.2 * 1.08, sums[^1].Amount!.Value, 1e-6);
    }

    [Fact]
    public void Table_and_sheet_say_the_same_total()
    {
        var model = Bridges.Build(Bridges.Garden + Priced);
        var total = QuoteSheet.Sums(model.Parameters.Quote, QuoteSheet.Lines(model))[^1].Amount!.Value;
        var text = total.ToString("F2", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains($",{text},XYZ", QuoteSheet.Csv(model), StringComparison.Ordinal);
        Assert.Contains(
            text, QuoteSheet.Draw(model).Pages.SelectMany(p => p.Content.Entities.OfType<SheetText>()).Select(t => t.Text));
    }

    // A rate without its unit, with one of another kind, without money: told at its line with what would be right.
    [Theory]
    [InlineData("4.20")]
    [InlineData("4.20 XYZ")]
    [InlineData("4.20 XYZ/h")]
    [InlineData("4.20/ft")]
    [InlineData("cheap XYZ/ft")]
    public void A_rate_that_is_none_is_a_fault_at_its_line(string rate)
    {
        var reading = ProjectReader.Read(
            $"name: a\nsite: {{ span: 30 ft }}\nquote:\n  rates:\n    rope: {rate}\n", "a.yaml", Bridges.Catalogue);
        var fault = Assert.Single(reading.Faults);
        Assert.Equal(5, fault.Line);
        Assert.Contains("4.20 USD/ft", fault.Message, StringComparison.Ordinal);
    }
}
