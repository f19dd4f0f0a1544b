using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Tests.Output.Pdf;
using BridgeForm.Tests.Output.Templates;

namespace BridgeForm.Tests.Output.ShopSheets;

public sealed class ShopSheetTests
{
    private static readonly Lazy<BridgeModel> Model = new(() => Bridges.Build(Bridges.Garden));

    private static DisplayUnits Units => DisplayUnits.For(Model.Value.Parameters.Units);

    private static IReadOnlyList<string> Order => [.. Model.Value.Assembly().SelectMany(s => s.Parts)];

    public static TheoryData<string> Names => ["saw", "labels"];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_text_touches_another(string name) => Assert.All(Book(name).Pages, page =>
    {
        var boxes = PlacedTexts.Of(page.Content).ToList();
        Assert.All(boxes, b => Assert.Equal([b.Text], boxes.Where(o => o.Box.Overlaps(b.Box)).Select(o => o.Text)));
        Assert.All(boxes, b => Assert.True(b.Box.MaxX <= page.Width - Paper.Margin + 1e-9, b.Text));
    });

    [Theory]
    [MemberData(nameof(Names))]
    public void Same_model_gives_the_same_bytes(string name) =>
        Assert.Equal(PdfFile.Bytes(Book(name)), PdfFile.Bytes(Book(name)));

    [Fact]
    public void Every_part_has_one_label_with_its_number()
    {
        var ids = Order;
        Assert.Equal(Model.Value.Pieces.SelectMany(p => p.Occurrences).Count(), ids.Count);
        var texts = Book("labels").Pages.SelectMany(p => PlacedTexts.Of(p.Content)).Select(t => t.Text).ToLookup(
            t => t, StringComparer.Ordinal);
        Assert.All(ids, id => Assert.Single(texts[id]));
        Assert.Single(texts[FormattableString.Invariant($"No. {ids.Count}")]);
    }

    // Labels are cut apart along their outlines: side by side without overlap, all on the paper, all of one size.
    [Fact]
    public void Labels_lie_side_by_side_on_the_paper() => Assert.All(Book("labels").Pages, page =>
    {
        var boxes = page.Content.Entities.OfType<SheetPolyline>().Where(p => p.Closed && p.Vertices.Length == 4).Select(p => (
            Left: p.Vertices.Min(v => v.X), Right: p.Vertices.Max(v => v.X),
            Low: p.Vertices.Min(v => v.Y), High: p.Vertices.Max(v => v.Y))).ToList();
        Assert.NotEmpty(boxes);
        Assert.All(boxes, b =>
        {
            Assert.Equal((boxes[0].Right - boxes[0].Left, boxes[0].High - boxes[0].Low), (b.Right - b.Left, b.High - b.Low), Near);
            Assert.True(b.Left > 0 && b.Right < page.Width && b.Low > 0 && b.High < page.Height);
            Assert.Single(boxes, o => o.Left < b.Right - 1e-9 && b.Left < o.Right - 1e-9 && o.Low < b.High - 1e-9 && b.Low < o.High - 1e-9);
        });
    });

    private static bool Near((double Width, double Height) a, (double Width, double Height) b) =>
        Math.Abs(a.Width - b.Width) < 1e-9 && Math.Abs(a.Height - b.Height) < 1e-9 && a.Width > 0.03 && a.Height > 0.01;

    // Rows 4.5 mm apart, so that fingers and pencils find theirs: own rule.
    [Fact]
    public void Rows_of_tables_stand_four_and_a_half_millimetres_apart()
    {
        var marks = PlacedTexts.Of(Book("saw").Pages[0].Content).Where(t => t.Text.Length > 0)
            .GroupBy(t => Math.Round(t.Box.MinX, 6)).MaxBy(g => g.Count())!.Select(t => t.Box.MinY).Distinct().Order().ToList();
        var steps = marks.Zip(marks.Skip(1)).Select(p => p.Second - p.First).ToList();
        Assert.True(steps.Count(s => Math.Abs(s - 0.0045) < 1e-9) > steps.Count / 2, string.Join(", ", steps));
    }

    [Fact]
    public void Table_of_the_saw_has_a_row_a_cut()
    {
        var rows = SawSheet.Csv(Model.Value, Units).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(1 + (2 * Model.Value.Pieces.Length) + 1, rows.Length);
        Assert.Contains(rows, r => r.Contains(",50.0,0.0,20.0,saw with taper block,K1,", StringComparison.Ordinal));
    }

    [Fact]
    public void Failing_checks_are_named_on_every_sheet()
    {
        var words = new SheetWords("A bridge", "A sheet", ["guard-height", "opening"]);
        var page = new PageFrame(words, 0.2159, 0.2794).Page([], 1, 1);
        Assert.Contains(PlacedTexts.Of(page.Content), t => t.Text.Contains("guard-height, opening", StringComparison.Ordinal));
    }

    [Fact]
    public void Wood_that_was_not_checked_is_named_on_every_sheet()
    {
        var words = new SheetWords("A bridge", "A sheet", []) { NotChecked = ["2x4 white-oak no1"] };
        var page = new PageFrame(words, 0.2159, 0.2794).Page([], 1, 1);
        Assert.Contains(
            PlacedTexts.Of(page.Content), t => t.Text.Contains("Not checked, no values: 2x4 white-oak no1.", StringComparison.Ordinal));
    }

    private static SheetBook Book(string name) => string.Equals(name, "saw", StringComparison.Ordinal)
        ? SawSheet.Draw(Model.Value, Units)
        : LabelSheet.Draw(Model.Value, Order);
}
