using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>The fields that ISO 7200 asks for, on every sheet, in the user's words and in nobody else's.</summary>
public sealed class TitleBlockTests
{
    // Mandatory by ISO 7200:2004, as a maker's table of its fields lists them.
    private static readonly string[] s_fields =
        ["Legal owner", "Identification number", "Date of issue", "Sheet", "Title", "Approved by", "Created by", "Document type"];

    private const string Filled = """
        sheets:
          owner: Path keepers
          site: Lower meadow
          number: OR-7
          issued: 2031-05-20
          created: A. Maker
          approved: B. Reader
          revisions:
            - { index: A, date: 2031-06-02, change: Span measured anew }
            - { index: B, change: Deck wider }
        """;

    private static readonly Lazy<SheetBook> s_empty = new(() => DrawingSheets.Draw(Bridges.Build(Bridges.Garden)));
    private static readonly Lazy<SheetBook> s_filled = new(() => DrawingSheets.Draw(Bridges.Build(Bridges.Garden + "\n" + Filled)));

    [Fact]
    public void Every_sheet_has_every_field_and_what_the_file_gives() => Assert.All(s_filled.Value.Pages, (page, i) =>
    {
        var texts = Texts(page);
        Assert.Superset(
            new HashSet<string>(
                [
                    .. s_fields, "Path keepers", "Lower meadow", "OR-7", "2031-05-20", "A. Maker", "B. Reader", "2031-06-02",
                    "Span measured anew", "Deck wider", $"{i + 1} of {s_filled.Value.Pages.Length}",
                ],
                StringComparer.Ordinal),
            texts.ToHashSet(StringComparer.Ordinal));

        // The latest stands above the earlier one.
        var entities = page.Content.Entities.OfType<SheetText>().ToList();
        Assert.True(Height("Deck wider") > Height("Span measured anew"));
        double Height(string text) => entities.Single(t => string.Equals(t.Text, text, StringComparison.Ordinal)).At.Y;
    });

    [Fact]
    public void What_the_file_leaves_out_is_an_empty_box() => Assert.All(s_empty.Value.Pages, page =>
    {
        var texts = Texts(page).ToList();
        Assert.Superset(s_fields.ToHashSet(StringComparer.Ordinal), texts.ToHashSet(StringComparer.Ordinal));
        Assert.DoesNotContain(texts, t => System.Text.RegularExpressions.Regex.IsMatch(
            t, @"\b(19|20)\d\d-\d\d-\d\d\b", System.Text.RegularExpressions.RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)));
    });

    /// <summary>A sixth and a seventh issue find no row, and nothing is drawn below the border for them.</summary>
    [Fact]
    public void Of_many_revisions_the_latest_stand()
    {
        var rows = string.Join(
            ", ", Enumerable.Range(1, 7).Select(i => FormattableString.Invariant($"{{ index: {i}, change: Issue no. {i} }}")));
        var pages = DrawingSheets.Draw(Bridges.Build(Bridges.Garden + $"\nsheets: {{ revisions: [{rows}] }}\n")).Pages;
        var (page, block) = (pages[1], Texts(pages[^1]).ToList());
        Assert.Contains("Issue no. 7", block);
        Assert.DoesNotContain("Issue no. 1", block);

        // The notes have them all.
        Assert.Contains("Issue no. 1", Texts(page));
        Assert.All(page.Content.Entities.OfType<SheetText>(), t => Assert.True(t.At.Y >= Paper.Margin));
    }

    [Theory]
    [InlineData("issued: 2031-13-20", 2, "date-not-read")]
    [InlineData("issued: 20.5.2031", 2, "date-not-read")]
    [InlineData("created: Somebody with a very long name", 2, "sheet-text-too-long")]
    [InlineData("revisions: [{ index: A1b2, change: x }]", 2, "sheet-text-too-long")]
    [InlineData("revisions: [{ index: A }]", 2, "missing-key")]
    public void What_is_wrong_is_told_with_its_place(string line, int at, string code)
    {
        var reading = ProjectReader.Read("name: a\nsheets: { " + line + " }\nsite: { span: 30 ft }\n", "f.yaml", Bridges.Catalogue);
        var told = Assert.Single(reading.Lines, l => l.Contains("error", StringComparison.Ordinal));
        Assert.StartsWith(FormattableString.Invariant($"f.yaml:{at}:"), told, StringComparison.Ordinal);
        Assert.EndsWith($"[{code}]", told, StringComparison.Ordinal);
    }

    /// <summary>Widths of one group of ISO 128-24: 0.18, 0.25 and 0.35 mm.</summary>
    [Fact]
    public void Lines_are_of_one_group() => Assert.All(
        s_empty.Value.Pages.SelectMany(p => p.Content.Layers).Select(l => l.Purpose).Distinct(),
        p => Assert.Contains(Math.Round(LayerStyle.Of(p).Weight * 1e5), (double[])[18, 25, 35]));

    /// <summary>
    /// Third angle on sheets in inches: the cone's round view lies to the left of it and the plan above the elevation; first angle
    /// on ISO sheets, the other way round (ISO 5456-2).
    /// </summary>
    [Fact]
    public void The_symbol_says_how_the_views_lie()
    {
        var metric = DrawingSheets.Draw(Bridges.Build(Bridges.Inclined));
        Assert.True(RoundLessCone(s_empty.Value.Pages[0]) < 0);
        Assert.True(RoundLessCone(metric.Pages[0]) > 0);
        Assert.True(Place(s_empty.Value, "Plan") < Place(s_empty.Value, "Elevation"));
        Assert.True(Place(metric, "Plan") > Place(metric, "Elevation"));
    }

    private static double RoundLessCone(SheetPage page)
    {
        var cone = page.Content.Entities.OfType<SheetPolyline>()
            .Single(p => p is { Closed: true, Layer: PageLayers.Frame, Vertices.Length: 4 } && p.Vertices[1].X - p.Vertices[0].X < 0.01);
        var middle = cone.Vertices.Average(v => v.X);
        var round = page.Content.Entities.OfType<SheetCircle>().Where(c => Math.Abs(c.Center.Y - cone.Vertices.Average(v => v.Y)) < 1e-6);
        return round.Last().Center.X - middle;
    }

    /// <summary>Place of a caption in reading order: sheet after sheet, from above.</summary>
    private static double Place(SheetBook book, string title) => book.Pages.Select((p, i) => p.Content.Entities.OfType<SheetText>()
        .Where(t => t.Bold && string.Equals(t.Text, title, StringComparison.Ordinal)).Select(t => i - t.At.Y)).SelectMany(y => y).First();

    private static IEnumerable<string> Texts(SheetPage page) => page.Content.Entities.OfType<SheetText>().Select(t => t.Text);
}
