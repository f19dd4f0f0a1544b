using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Quantities;
using BridgeForm.Output.Templates;
using BridgeForm.Solids;
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

    /// <summary>By section and length the stick is found; nothing is measured on a label, so no bar of known length stands there.</summary>
    [Fact]
    public void Labels_say_section_and_length_large_and_have_no_scale_bar()
    {
        var texts = Book("labels").Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>().ToList();
        var words = new QuantityText(Model.Value.Parameters.Units);
        foreach (var piece in Model.Value.Pieces)
        {
            var found = texts.Where(t => t.Text == $"{piece.Section} · {words.Size(piece.BlankLength)}").ToList();
            Assert.True(found.Count >= piece.Occurrences.Length, piece.Mark);
            Assert.All(found, t => Assert.True(t.Bold && t.Height > 0.003, t.Text));
        }

        Assert.DoesNotContain(texts, t => CheckBars.Sentence.StartsWith(t.Text, StringComparison.Ordinal));
        Assert.Contains(Book("saw").Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>(), t => t.Text.StartsWith(
            "Measure both bars", StringComparison.Ordinal));
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
        var fullest = Book("saw").Pages.Skip(1).MaxBy(p => PlacedTexts.Of(p.Content).Count())!;
        var marks = PlacedTexts.Of(fullest.Content).Where(t => t.Text.Length > 0)
            .GroupBy(t => Math.Round(t.Box.MinX, 6)).MaxBy(g => g.Count())!.Select(t => t.Box.MinY).Distinct().Order().ToList();
        var steps = marks.Zip(marks.Skip(1)).Select(p => p.Second - p.First).ToList();
        Assert.True(steps.Count(s => Math.Abs(s - 0.0045) < 1e-9) > steps.Count / 2, string.Join(", ", steps));
    }

    [Fact]
    public void Table_of_the_saw_has_a_row_a_cut()
    {
        var rows = SawSheet.Csv(Model.Value, Units).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(1 + (2 * Model.Value.Pieces.Length) + 1, rows.Length);
        Assert.Contains(rows, r => r.Contains(",70.0,0.0,0.0,circular saw along the template line,K1,", StringComparison.Ordinal));
    }

    // A page a set-up: on it its number, its picture with fence and blade, and how the piece lies that is drawn.
    [Fact]
    public void Every_setting_has_a_page_and_a_picture()
    {
        var pages = Book("saw").Pages;
        var settings = SawSheet.Settings(Model.Value);
        Assert.True(pages.Length >= settings);
        var number = 0;
        foreach (var texts in pages.Select(p => PlacedTexts.Of(p.Content).Select(t => t.Text).ToList()))
        {
            var begins = texts.Exists(t => t.StartsWith(FormattableString.Invariant($"{number + 1}. miter"), StringComparison.Ordinal));
            number += begins ? 1 : 0;
            Assert.Equal(begins, texts.Contains("offcut") && (
                (texts.Contains("fence") && texts.Contains("blade"))
                || texts.Exists(t => t.StartsWith("guide, clamped", StringComparison.Ordinal))));
            Assert.Equal(begins, texts.Exists(t => t.StartsWith("Drawn as ", StringComparison.Ordinal)));
        }

        Assert.Equal(settings, number);
    }

    // The blade of the picture crosses the stick as the cut does: from its foot on the fence by W·tan(mitre) along for W across.
    [Theory]
    [InlineData(0, 0, true)]
    [InlineData(30, 0, false)]
    [InlineData(70, 20, true)]
    [InlineData(70, 20, false)]
    public void The_picture_keeps_the_angles(double mitre, double wedge, bool right)
    {
        var shape = new CutStock(0.089, 0.038, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1));
        var plan = new SawPlan(shape, Bridges.Radians(mitre), 0, Bridges.Radians(wedge), right, 0.003);
        var lines = plan.Draw().OfType<SheetLine>().ToList();
        var blade = lines.First(l => l.Layer == PageLayers.Accent);
        var edge = lines.First(l => l.Layer == PageLayers.Cut);
        static double Angle(SheetLine l) => Math.Atan2(l.To.Y - l.From.Y, l.To.X - l.From.X) * 180 / Math.PI;
        var square = (Angle(blade) - Angle(edge) + 720) % 180;
        Assert.Equal(90 + mitre, square, 1e-6);
        Assert.Equal((Angle(blade) + 360) % 180, 90 + mitre - wedge, 1e-6);

        // It ends where the blade leaves the work's far edge.
        var far = lines.Last(l => l.Layer == PageLayers.Cut);
        Assert.Equal(far.From.X, blade.To.X, 1e-9);
        Assert.Equal(far.From.Y, blade.To.Y, 1e-9);
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

    // Who holds the erection plan must know which issue of the drawings it belongs to.
    [Fact]
    public void Number_and_last_issue_stand_on_every_sheet_where_the_file_gives_them()
    {
        const string Issued = """
            sheets:
              number: K-17
              issued: 2031-05-20
              revisions: [{ index: A, date: 2031-06-02, change: higher guard }, { index: B, date: 2031-07-01, change: wider }]
            """;
        SheetBook[] Sheets(string file)
        {
            var model = Bridges.Build(file);
            return [ErectionSheet.Draw(model), UpkeepSheet.Draw(model), SurveySheet.Draw(model), LabelSheet.Draw(model, Order)];
        }

        static bool Says(SheetPage page, string words) => PlacedTexts.Of(page.Content).Any(t => t.Text == words);
        Assert.All(Sheets(Bridges.Garden + "\n" + Issued).SelectMany(b => b.Pages), p => Assert.True(Says(p, "K-17, rev. B, 2031-07-01")));
        var first = Bridges.Garden + "\nsheets: { number: K-17, issued: 2031-05-20 }\n";
        Assert.All(Sheets(first).SelectMany(b => b.Pages), p => Assert.True(Says(p, "K-17, 2031-05-20")));
        Assert.DoesNotContain(
            Sheets(Bridges.Garden).SelectMany(b => b.Pages), p => PlacedTexts.Of(p.Content).Any(t => t.Text.Contains("K-17")));
    }

    private static SheetBook Book(string name) => string.Equals(name, "saw", StringComparison.Ordinal)
        ? SawSheet.Draw(Model.Value, Units)
        : LabelSheet.Draw(Model.Value, Order);
}
