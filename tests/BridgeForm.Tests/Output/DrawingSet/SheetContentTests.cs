using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Quantities;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>What single sheets must hold.</summary>
public sealed class SheetContentTests
{
    private static readonly Lazy<SheetBook> Steep = new(() => DrawingSheets.Draw(StationsTests.SteepModel));

    /// <summary>On a large sheet both have room; on a small one the plan gives way, lest both be drawn smaller.</summary>
    [Fact]
    public void Elevation_and_plan_stand_on_one_sheet_where_they_fit()
    {
        var large = DrawingSheets.Draw(Bridges.Build(Bridges.Garden + "\nshop: { paper: arch-d }\n"));
        var sheet = Assert.Single(large.Pages, Arranged);
        Assert.Contains("Elevation", Texts(sheet));
        Assert.Contains("Plan", Texts(sheet));
        var small = DrawingSheets.Draw(Bridges.Build(Bridges.Garden)).Pages.Where(Arranged).ToList();
        Assert.Equal(2, small.Count);
        Assert.Contains(small.SelectMany(Texts), t => t.Contains("(1 : 32)", StringComparison.Ordinal));

        static bool Arranged(SheetPage p) => p.Content.Title.EndsWith("General arrangement", StringComparison.Ordinal);
    }

    /// <summary>
    /// The builder's own holes stand where the file says: a circle for one along the view, dashes for one across it, a row for
    /// each.
    /// </summary>
    [Fact]
    public void Own_holes_are_drawn_and_listed()
    {
        var model = Bridges.Build(Bridges.Garden + "\nholes:\n  base: [{ diameter: 3/4 in, from_end: 29 in, across: 1 in }]\n  post: [{ "
            + "diameter: 1/2 in, face: top, from_end: 30 in }]\n");
        var sheets = DrawingSheets.Draw(model).Pages.Where(p => p.Content.Title.Contains("rame", StringComparison.Ordinal)).ToList();
        Assert.Single(sheets, s => Texts(s).Contains("29\" from the left end"));
        Assert.Single(sheets, s => Texts(s).Contains("30\" from the foot"));
        foreach (var sheet in sheets.Where(s => !s.Content.Title.Contains("parts", StringComparison.Ordinal)))
        {
            var ropes = sheet.Content.Entities.OfType<SheetCircle>().Where(c => c.Layer == PageLayers.Cut).ToList();
            var ratio = 0.375 * 0.0254 / ropes[0].Radius;
            var own = Assert.Single(
                ropes,
                c => Math.Abs((c.Radius * ratio) - (0.375 * 0.0254)) < 1e-6
                    && Math.Abs(c.Center.X - ((ropes[0].Center.X + ropes[1].Center.X) / 2)) < 1e-5);
            // An inch above the middle of a base 5-1/2 in deep; its bottom lies by the channel's depth less the radius below the axis.
            Assert.True(own.Center.Y > ropes[0].Center.Y + (2 * 0.0254 / ratio));
        }
    }

    /// <summary>An eye at the support lies where the end frame is; behind a saddle it is a place of its own.</summary>
    [Fact]
    public void The_rope_laid_out_names_its_eyes_and_saddles()
    {
        var bare = Laid(Bridges.Garden);
        Assert.Contains("eye A, F00", bare);
        Assert.DoesNotContain("F00, saddle", bare);
        var stayed = Laid(Bridges.Garden.Replace(
            "span: 30 ft", "span: 30 ft, a: {backstay: {length: 12 ft, angle: 35 deg}}, b: {backstay: {length: 12 ft, angle: 35 deg}}",
            StringComparison.Ordinal));
        Assert.Contains("eye A", stayed);
        Assert.Contains("F00, saddle", stayed);

        // No turnbuckle of the table holds so much: behind the saddle the eye's place is not known, and nothing counts from it.
        var unknown = Laid(Bridges.Garden.Replace(
            "span: 30 ft", "span: 30 ft, a: {backstay: {length: 12 ft, angle: 35 deg}}", StringComparison.Ordinal).Replace(
            "eips-galvanized-3/4", "eips-galvanized-1-1/4", StringComparison.Ordinal) + "\nloads: { live: 150 psf }\n", "F00 to");
        Assert.Contains(unknown, t => t.Contains("FROM SUPPORT TO SUPPORT ONLY", StringComparison.Ordinal));
        Assert.DoesNotContain(
            unknown, t => t.StartsWith("eye", StringComparison.Ordinal) || t.Contains("first eye", StringComparison.Ordinal));

        static List<string> Laid(string text, string from = "cut end A to")
        {
            var pages = DrawingSheets.Draw(Bridges.Build(text)).Pages;
            return [.. pages.Select(p => Texts(p).ToList()).First(t => t.Exists(x => x.StartsWith(from, StringComparison.Ordinal)))];
        }
    }

    [Theory]
    [InlineData("alder-dell")]
    [InlineData("fern-rise")]
    [InlineData("wren-landing")]
    [InlineData("steep")]
    public void Letters_of_the_supports_stand_clear_of_the_picture(string name)
    {
        var book = string.Equals(name, "steep", StringComparison.Ordinal) ? Steep.Value : DrawingSheets.Draw(new Sample(name).Build());
        var entities = book.Pages[0].Content.Entities;
        var lines = LinesAbout.Gather(entities.OfType<SheetLine>());
        var letters = entities.OfType<SheetText>().Where(t => t is { Bold: true, Text: "A" or "B" }).ToList();
        Assert.Equal(["A", "B"], letters.Select(t => t.Text).Order(StringComparer.Ordinal));
        Assert.All(letters, letter =>
        {
            var circle = entities.OfType<SheetCircle>().MinBy(c => Distance(c.Center, letter.At))!;
            // Nothing but the leader, which begins at the circle, comes so near.
            Assert.True(lines.Distance(circle.Center) > circle.Radius - 1e-9, $"{letter.Text}: {lines.Distance(circle.Center)}");
            var crossing = lines.Strokes.Count(s => new LinesAbout([s]).Distance(circle.Center) < circle.Radius + 0.001);
            Assert.InRange(crossing, 0, 1);
        });
    }

    // New rope set short pulls harder than any case as marked: where the file chose such marks fittings are sized for it, so the cover
    // says it where it says the pull; supports have it anyway. And what the wind does stands on the cover.
    [Fact]
    public void Papers_say_what_new_rope_pulls_and_what_the_wind_does()
    {
        var model = Bridges.Build(Bridges.Garden);
        var words = new QuantityText(model.Parameters.Units);
        var texts = DrawingSheets.Draw(model).Pages.SelectMany(Texts).ToList();
        foreach (var support in new[] { "A", "B" })
        {
            var (marked, fresh) = (model.Ropework.Supports.Single(s => s.Support == support), model.Ropework.PullWhenNew(support)!);
            Assert.True(fresh.Tension > 1.1 * marked.Tension);
            Assert.Contains($"{support}, new rope", texts);
            Assert.Contains(words.Force(fresh.Tension), texts);
            Assert.Contains(words.Force(marked.Tension), texts);
        }

        Assert.DoesNotContain(texts, t => t.Contains("one rope: new rope", StringComparison.Ordinal));
        var asIs = Bridges.Build(Bridges.Garden.Replace("sag: 6 %", "sag: 6 %, new: as-is", StringComparison.Ordinal));
        Assert.Contains(
            DrawingSheets.Draw(asIs).Pages.Take(1).SelectMany(Texts), t => t.StartsWith(words.Force(asIs.Ropework.LargestPull),
                StringComparison.Ordinal) && t.Contains("new rope", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.StartsWith("without side stays it turns over between ", StringComparison.Ordinal));
    }

    [Fact]
    public void Supports_that_go_down_say_fall()
    {
        var texts = DrawingSheets.Draw(Bridges.Build(Bridges.Inclined.Replace("rise: 2 m", "rise: -500 mm", StringComparison.Ordinal)))
            .Pages.Take(5).SelectMany(Texts).ToList();
        Assert.Contains("fall 500", texts);
        Assert.Contains("Span, fall", texts);
        Assert.DoesNotContain(texts, t => t.StartsWith("rise ", StringComparison.Ordinal));
    }

    /// <summary>All that hoisting.csv and rope-marks.csv give a crew stands on paper too, by the marks that were chosen.</summary>
    [Theory]
    [InlineData("alder-dell")]
    [InlineData("fern-rise")]
    [InlineData("heron-reach")]
    public void Crew_sheets_hold_lines_of_sight_and_both_ends_of_the_stretch(string name)
    {
        var model = new Sample(name).Build();
        var (work, text) = (model.Ropework, new DrawingText(model.Parameters.Units));
        var texts = DrawingSheets.Draw(model).Pages.Where(
            p => p.Content.Title.Contains("Ropes: marks", StringComparison.Ordinal)).SelectMany(Texts).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(2, work.Stretch.Length);
        foreach (var row in work.Chosen.Hoisting.Rows)
        {
            Assert.Superset(
                new HashSet<string>(
                    [
                        text.Words.Size(row.Sag), text.Words.Size(row.Sight), text.Level(-row.Sight),
                        text.Level(model.Rope.Nodes[^1].Y - row.Sight),
                    ],
                    StringComparer.Ordinal),
                texts);
        }

        Assert.All(
            RopeTape.Of(model.Parameters, work)?.Readings ?? [],
            r => Assert.Contains(text.Words.Length(Rounding.ToTape(r.AtTension, model.Parameters.Units)), texts));
        foreach (var end in work.Stretch)
        {
            Assert.Contains(text.Words.Size(end.TakeUp), texts);
            Assert.Contains(text.Words.Size(end.MidSpanDrop!.Value), texts);
        }
    }

    [Fact]
    public void Clearance_of_both_ends_of_the_stretch_stands_on_the_crew_sheet()
    {
        var words = new QuantityText(StationsTests.SteepModel.Parameters.Units) { InSigns = true };
        var texts = Steep.Value.Pages.SelectMany(Texts).ToList();
        Assert.All(StationsTests.SteepModel.Ropework.Stretch, end =>
            Assert.Contains($"{words.Size(end.OverGround!.Room)} ({end.OverGround.Case})", texts));
    }

    /// <summary>A set that is read, not weighed.</summary>
    [Fact]
    public void The_demo_takes_no_more_than_25_sheets() =>
        Assert.InRange(DrawingSheets.Draw(new Sample("alder-dell").Build()).Pages.Length, 10, 25);

    /// <summary>What the sheets leave out of a check stands in the calculations: every figure and every source.</summary>
    [Fact]
    public void Calculations_hold_every_figure_and_source()
    {
        var model = StationsTests.SteepModel;
        var words = string.Join(' ', CalculationBook.Draw(model).Pages.SelectMany(Texts)).Split(' ').ToHashSet(StringComparer.Ordinal);
        Assert.All(model.Checks, c => Assert.Superset(
            $"{c.Title} ({c.Id}) {c.Detail} {c.Source}".Split(' ', StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.Ordinal),
            words));
    }

    [Fact]
    public void Checks_stand_on_paper_worst_first()
    {
        var model = StationsTests.SteepModel;
        var all = string.Join(
            ' ', Steep.Value.Pages.Where(p => p.Content.Title.Contains("Checks", StringComparison.Ordinal)).SelectMany(Texts));
        var places = CheckOrder.WorstFirst(model.Checks)
            .Select(c => all.IndexOf($"{c.Title} ({c.Id})", StringComparison.Ordinal)).ToList();
        Assert.Equal(places.Order(), places);
        Assert.DoesNotContain(-1, places);
        var ranks = CheckOrder.WorstFirst(model.Checks).Select(c => c.Status).ToList();
        Assert.Equal(
            ranks.OrderBy(r => r switch { CheckStatus.Fail => 0, CheckStatus.Warn => 1, CheckStatus.Engineer => 2, _ => 3 }), ranks);
    }

    /// <summary>A stringer's mark on a tread would name the tread: they stand to the left of the deck.</summary>
    [Fact]
    public void Marks_of_stringers_stand_beside_the_deck()
    {
        var model = new Sample("wren-landing").Build();
        var room = new SheetBox(0, 0, 0.4, 0.25);
        var context = new DrawingContext(model, new BridgeShapes(model), new DrawingText(model.Parameters.Units), room);
        for (var bay = 1; bay <= context.Layout.Bays; bay++)
        {
            var deck = new BayDeck(context, bay);
            var canvas = new Canvas(room);
            deck.Draw(canvas, ViewMap.Placing(deck.Box, 0.1, 0.05, 12));
            var texts = canvas.Entities.OfType<SheetText>().ToList();
            var stringers = texts.Where(t => t.Text.StartsWith('S')).ToList();
            var treads = texts.Where(t => t.Text.StartsWith('T')).ToList();
            Assert.Equal(3, stringers.Count);
            Assert.Equal(
                model.Groups[context.Shapes.BayGroup(bay)].MemberIds.Count(i => i.Contains("/tread-", StringComparison.Ordinal)),
                treads.Count);
            Assert.All(
                stringers,
                s => Assert.True(
                    s.At.X + PageFont.Of(s).Width(s.Text, s.Height) < 0.1, s.Text + s.At.X.ToString(CultureInfo.InvariantCulture)));
            Assert.All(treads, t => Assert.True(t.At.X > 0.1, t.Text));
            Assert.DoesNotContain(texts, t => t.Text.Contains("along the boards", StringComparison.Ordinal));
        }
    }

    private static IEnumerable<string> Texts(SheetPage page) => page.Content.Entities.OfType<SheetText>().Select(t => t.Text);

    private static double Distance(SheetPoint a, SheetPoint b) => BridgeForm.Output.Drawing.Dimensions.Distance(a, b);
}
