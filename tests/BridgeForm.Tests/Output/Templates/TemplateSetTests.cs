using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Tests.Output.Pdf;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.Templates;

public sealed class TemplateSetTests
{
    private static readonly Lazy<BridgeModel> Garden = new(() => Bridges.Build(Bridges.Garden));
    private static readonly Lazy<BridgeModel> Inclined = new(() => Bridges.Build(Bridges.Inclined));

    public static TheoryData<string, string> PapersAndBridges
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var paper in (string[])["letter", "tabloid", "arch-d", "a4", "a3", "a1", "roll-24", "roll-36"])
            {
                data.Add(paper, "garden");
                data.Add(paper, "inclined");
            }

            return data;
        }
    }

    // A square end that no tool of the list reaches has no line to print: a book without a page cannot be written.
    [Theory]
    [InlineData("shop: { tools: [] }")]
    [InlineData("shop: { tools: [table-saw] }")]
    [InlineData("shop: { saw: { crosscut: 5 in } }")]
    public void A_piece_that_needs_templates_has_a_page_of_them(string shop)
    {
        var model = Bridges.Build($"{Bridges.Garden}\n{shop}\n");
        var units = DisplayUnits.For(UnitSystem.Imperial);
        var needed = model.Pieces.Where(p => TemplateSet.Needs(p, TemplateChoice.Needed)).ToList();
        Assert.NotEmpty(needed);
        Assert.All(needed, p => Assert.NotEmpty(TemplateSet.Draw(model, p, units, TemplateChoice.Needed).Pages));
        Assert.NotEmpty(TemplateSet.All(model, units, TemplateChoice.Needed).Pages);
    }

    [Theory]
    [MemberData(nameof(PapersAndBridges))]
    public void No_text_touches_another_and_none_leaves_the_printable_page(string paper, string bridge)
    {
        var (number, book) = (0, Book(paper, bridge));
        foreach (var page in book.Pages)
        {
            number++;
            var texts = PlacedTexts.Of(page.Content).ToList();
            Assert.All(texts, t => Assert.True(
                t.Box.MinX > Paper.Margin - Slack && t.Box.MinY > Paper.Margin - Slack
                    && t.Box.MaxX < page.Width - Paper.Margin + Slack && t.Box.MaxY < page.Height - Paper.Margin + Slack,
                $"page {number}: '{t.Text}' leaves the page"));
            for (var i = 0; i < texts.Count; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    Assert.False(texts[i].Box.Overlaps(texts[j].Box), $"page {number}: '{texts[i].Text}' touches '{texts[j].Text}'");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(PapersAndBridges))]
    public void Every_page_has_check_bars_caution_and_its_number(string paper, string bridge)
    {
        var book = Book(paper, bridge);
        for (var i = 0; i < book.Pages.Length; i++)
        {
            var texts = string.Join(' ', PlacedTexts.Of(book.Pages[i].Content).Select(t => t.Text));
            Assert.Contains(Caution.Text, texts, StringComparison.Ordinal);
            Assert.Contains(CheckBars.Sentence, texts, StringComparison.Ordinal);
            Assert.Contains(FormattableString.Invariant($"Page {i + 1} of {book.Pages.Length}"), texts, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(PapersAndBridges))]
    public void Letters_are_at_least_seven_points_and_in_the_font(string paper, string bridge) =>
        Assert.All(Book(paper, bridge).Pages.SelectMany(p => PlacedTexts.Of(p.Content)), t =>
        {
            Assert.True(t.Height / PageFont.CapitalShare * 72 / 0.0254 > 7);
            Assert.True(PageFont.Regular.Has(t.Text), t.Text);
        });

    [Theory]
    [InlineData("letter")]
    [InlineData("a4")]
    public void Check_bars_measure_what_they_say(string paper)
    {
        var model = With(Garden.Value, paper);
        var book = TemplateSet.Draw(
            model, model.Pieces.First(p => string.Equals(p.Mark, "K1", StringComparison.Ordinal)), DisplayUnits.For(UnitSystem.Imperial),
            TemplateChoice.Everything);
        for (var page = 1; page <= Math.Min(2, book.Pages.Length); page++)
        {
            var raster = Raster.Of(book, page);
            foreach (var length in (double[])[0.100, 0.1016])
            {
                var bar = book.Pages[page - 1].Content.Entities.OfType<SheetLine>().First(
                    l => string.Equals(l.Layer, PageLayers.Cut, StringComparison.Ordinal) && Math.Abs(l.To.X - l.From.X - length) < 1e-9);
                var above = bar.From.Y + 0.0012;
                var measured = raster.InkX(bar.To.X, above, 0.001) - raster.InkX(bar.From.X, above, 0.0005);
                Assert.Equal(length, measured, 1e-4);
            }
        }
    }

    /// <summary>The cut of the demo's steep brace, measured on paper: rise over run gives its 70° back.</summary>
    [Fact]
    public void A_printed_cut_has_its_angle()
    {
        var model = With(Garden.Value, "tabloid");
        var piece = model.Pieces.First(p => string.Equals(p.Mark, "K1", StringComparison.Ordinal));
        var book = TemplateSet.Draw(model, piece, DisplayUnits.For(UnitSystem.Imperial), TemplateChoice.Everything);
        var (cut, page) = book.Pages.Select((p, i) => (Cut: PlacedLines.Of(p.Content)
                .Where(l => string.Equals(l.Layer, PageLayers.Accent, StringComparison.Ordinal))
                .MaxBy(l => Math.Abs(l.To.X - l.From.X)), Page: i + 1))
            .MaxBy(p => p.Cut is { } l ? Math.Abs(l.To.X - l.From.X) : 0);
        SheetPoint On(double share) => new(
            cut!.From.X + (share * (cut.To.X - cut.From.X)), cut.From.Y + (share * (cut.To.Y - cut.From.Y)));
        var raster = Raster.Of(book, page);
        var (low, high) = (raster.InkY(On(0.3).X, On(0.3).Y, 0.0015), raster.InkY(On(0.7).X, On(0.7).Y, 0.0015));
        Assert.Equal(Math.Abs(On(0.7).Y - On(0.3).Y), Math.Abs(high - low), 1e-4);
        Assert.Equal(piece.Shape.Width * 0.4, Math.Abs(high - low), 1e-4);
        Assert.Equal(piece.Shape.Width * Math.Tan(Bridges.Radians(70)), Math.Abs(cut!.To.X - cut.From.X), 1e-9);
    }

    [Fact]
    public void Sheets_of_a_tiled_drawing_overlap_by_the_stated_band()
    {
        var block = new TemplateBlock("Long", [], [new SheetLine(PageLayers.Cut, new(0, 0), new(1, 0.3))]);
        var windows = Tiling.Cut(block, 0.2, 0.2).Select(c => c.Entities.OfType<SheetWindow>().Single().Window).ToList();
        Assert.Equal(6 * 2, windows.Count);
        Assert.All(windows, w => Assert.True(w.MaxX - w.MinX <= 0.2 + 1e-9 && w.MaxY - w.MinY <= 0.2 + 1e-9));
        Assert.Equal(Tiling.Overlap, windows[0].MaxX - windows[1].MinX, 1e-9);
        Assert.Equal(Tiling.Overlap, windows[0].MaxY - windows[6].MinY, 1e-9);
        Assert.True(windows.Min(w => w.MinX) <= 0 && windows.Max(w => w.MaxX) >= 1);
    }

    [Fact]
    public void Rails_on_the_story_pole_leave_equal_gaps()
    {
        foreach (var heights in GuardHeights.Measure(Garden.Value))
        {
            var width = Garden.Value.Parameters.Guard.Rail.Width;
            List<double> edges = [heights.Deck, .. heights.Rails.SelectMany(h => new[] { h - (width / 2), h + (width / 2) }), heights.Head];
            var gaps = edges.Chunk(2).Select(e => e[1] - e[0]).ToList();
            Assert.Equal(7, gaps.Count);

            // The deck's slope at the posts and seating move a rail by less than the seating tolerance.
            Assert.All(gaps, g => Assert.Equal(gaps.Average(), g, 0.0015));
        }
    }

    [Fact]
    public void Square_pieces_without_channels_need_no_template()
    {
        Assert.All(Garden.Value.Pieces, p => Assert.True(TemplateSet.Needs(p, TemplateChoice.Everything)));
        var square = Garden.Value.Pieces[0];
        Assert.False(TemplateSet.Needs(
            square with { Shape = square.Shape with { Channels = [], Holes = [] } }, TemplateChoice.Everything));
    }

    /// <summary>
    /// Unasked, a template is printed of what the saw does not make and of channels: posts, boards and rails have none, and have
    /// theirs when asked for.
    /// </summary>
    [Fact]
    public void Only_what_the_saw_does_not_reach_is_printed_unasked()
    {
        var pieces = Garden.Value.Pieces;
        Assert.All(pieces, p => Assert.Equal(p.Role is Role.Base or Role.Brace, TemplateSet.Needs(p, TemplateChoice.Needed)));
        var post = pieces.First(p => p.Role == Role.Post);
        var choice = new TemplateChoice(false, [post.Mark]);
        Assert.True(TemplateSet.Needs(post, choice));
        Assert.All(pieces.Where(p => p.Role == Role.Rail), p => Assert.False(TemplateSet.Needs(p, choice)));
        var units = DisplayUnits.For(UnitSystem.Imperial);
        Assert.Equal(Titles(TemplateSet.All(Garden.Value, units, TemplateChoice.Needed)).Append(post.Mark).Distinct().Order(
            StringComparer.Ordinal), Titles(TemplateSet.All(Garden.Value, units, choice)).Order(StringComparer.Ordinal));
    }

    /// <summary>Wrap-arounds are for compound cuts: where both angles print as something, or no saw leans so far.</summary>
    [Fact]
    public void Wrap_arounds_are_drawn_for_compound_cuts_alone()
    {
        var model = Inclined.Value;
        var units = DisplayUnits.For(UnitSystem.Metric);
        var seen = 0;
        foreach (var piece in model.Pieces)
        {
            var wraps = TemplateSet.Draw(model, piece, units, TemplateChoice.Everything).Pages.SelectMany(p => PlacedTexts.Of(p.Content))
                .Count(t => t.Text.EndsWith("wrap-around", StringComparison.Ordinal));
            var compound = new[] { piece.Near, piece.Far }.Count(
                c => Math.Abs(Bridges.Degrees(c.Mitre)) > 0.05 && Math.Abs(Bridges.Degrees(c.Bevel)) > 0.05);
            Assert.Equal(compound, wraps);
            seen += wraps;
        }

        Assert.True(seen > 0);
    }

    /// <summary>Each page's line names what a reader finds on it, and the lines are as many as the pages that follow.</summary>
    [Theory]
    [InlineData("letter", "garden")]
    [InlineData("a4", "inclined")]
    [InlineData("roll-24", "garden")]
    public void The_index_has_a_line_for_each_page(string paper, string bridge)
    {
        var book = Book(paper, bridge);
        var index = PlacedTexts.Of(book.Pages[0].Content).Select(t => t.Text).ToList();
        var culture = System.Globalization.CultureInfo.InvariantCulture;
        List<int[]> lines =
        [
            .. book.Pages.SelectMany(p => PlacedTexts.Of(p.Content))
                .Where(t => t.Bold && t.Text.Split('–').All(n => int.TryParse(n, culture, out _)))
                .Select(t => t.Text.Split('–').Select(n => int.Parse(n, culture)).ToArray()),
        ];

        // Pages alike but for their marks share a line, as from–to; together the lines name every page after the index once.
        var numbers = lines.SelectMany(l => Enumerable.Range(l[0], l[^1] - l[0] + 1)).ToList();
        Assert.Equal(Enumerable.Range(book.Pages.Length - numbers.Count + 1, numbers.Count), numbers);
        Assert.True(numbers.Count >= book.Pages.Length - 3 && numbers[0] > 1);
        Assert.Contains(index, t => t.StartsWith("What is on which page", StringComparison.Ordinal));
        var first = PlacedTexts.Of(book.Pages[numbers[0] - 1].Content).Where(t => t.Bold).Select(t => t.Text).ToList();
        Assert.Contains(first, t => index.Exists(line => line.StartsWith(t, StringComparison.Ordinal)));
    }

    /// <summary>How much paper a bridge takes unasked, index with it.</summary>
    [Theory]
    [InlineData("demo", 20)]
    [InlineData("rise", 25)]
    [InlineData("plumb", 80)]
    [InlineData("plumb, as it comes", 80)]
    [InlineData("plumb, 3 m of rise", 80)]
    public void A_bridge_takes_no_more_paper_than_its_bar(string name, int most)
    {
        var model = Bridges.Build(name switch
        {
            "demo" => File.ReadAllText(Path.Combine(Sample.Root, "viewer-samples", "alder-dell", "project.yaml")),
            "plumb, as it comes" =>
                "name: Plumb\nunits: metric\nsite: { span: 18 m }\nropes: { sag: 6 % }\nframes: { stance: plumb }\n",
            "plumb, 3 m of rise" => "name: Plumb\nunits: metric\nsite: { span: 18 m, rise: 3 m }\nframes: { stance: plumb }\n",
            "rise" => Bridges.Garden.Replace("span: 30 ft", "span: 28 ft, rise: 6 in", StringComparison.Ordinal),
            _ => Bridges.Inclined.Replace("span: 12 m, rise: 2 m", "span: 18 m, rise: 1 m", StringComparison.Ordinal),
        });
        var choice = TemplateChoice.Needed;
        Assert.InRange(TemplateSet.All(model, DisplayUnits.For(model.Parameters.Units), choice).Pages.Length, 2, most);
    }

    private static IEnumerable<string> Titles(SheetBook book) => book.Pages.Skip(1).SelectMany(p => PlacedTexts.Of(p.Content))
        .Where(t => t.Bold && t.Text.Contains(" · ", StringComparison.Ordinal))
        .SelectMany(t => t.Text.Split(" · ")[0].Split(", "))
        .Where(m => Garden.Value.Pieces.Any(p => string.Equals(p.Mark, m, StringComparison.Ordinal)))
        .Distinct();

    /// <summary>Box sums on a page carry round-off, metres.</summary>
    private const double Slack = 1e-9;

    private static SheetBook Book(string paper, string bridge)
    {
        var model = With(string.Equals(bridge, "garden", StringComparison.Ordinal) ? Garden.Value : Inclined.Value, paper);
        return TemplateSet.All(model, DisplayUnits.For(model.Parameters.Units), TemplateChoice.Everything);
    }

    private static BridgeModel With(BridgeModel model, string paper) => model with
    {
        Parameters = model.Parameters with { Shop = model.Parameters.Shop with { Paper = paper } },
    };
}
