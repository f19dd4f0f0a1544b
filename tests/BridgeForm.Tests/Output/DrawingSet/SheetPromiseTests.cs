using System.Globalization;
using BridgeForm.Checks.Codes;
using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>Marks that lead to what they mark, widths that people pass in, forces that point up, words that have room.</summary>
public sealed class SheetPromiseTests
{
    private const string Owl = """
        name: Heath Stair (invented)
        site: { span: 16 ft, rise: 4 ft, a: { support: platform, landing: { level: 9 in, gap: 1/2 in } } }
        ropes: { sag: 5 % }
        use: public
        guard: { pickets: { section: 2x2 }, handrail: { diameter: 1-1/2 in } }
        """;

    private static readonly Lazy<(DrawingContext Context, SheetBook Book)> s_owl = new(() =>
    {
        var context = SiteFiguresTests.Context(Owl);
        return (context, DrawingSheets.Draw(context.Model));
    });

    /// <summary>
    /// From each frame's sheet to the details of its base and its posts' heads: what is drawn there is that frame, or another whose
    /// parts are cut alike.
    /// </summary>
    [Fact]
    public void Details_show_what_their_marks_mark()
    {
        var (context, book) = s_owl.Value;
        var last = context.Layout.Bays;
        Assert.True(context.EndsDiffer);
        Assert.NotEqual(DetailMarks.OfBase(context, 0), DetailMarks.OfBase(context, last));
        foreach (var frame in FrameSheet.Shown(context))
        {
            var name = context.Layout.Poses[frame].Name;
            var sheet = book.Pages.First(p => p.Content.Title.Contains($"({name})", StringComparison.Ordinal)
                && p.Content.Title.Contains("rame", StringComparison.Ordinal));
            var texts = Texts(sheet).Select(t => t.Text).ToList();
            foreach (var (number, role, words) in ((int, Role, string)[])
                [(DetailMarks.Head, Role.Post, "head "), (DetailMarks.BraceHead, Role.Brace, "brace's head ")])
            {
                // A mark, and then the frame that the detail shows is cut alike; or the cut itself.
                var own = Cut(context, name, role);
                if (DetailMarks.ShowsHead(context, frame, role))
                {
                    Assert.Equal(own, Cut(context, DrawnFrame(book, number), role));
                }
                else
                {
                    Assert.Contains(texts, t => t.StartsWith(words + own, StringComparison.Ordinal));
                }

                var shown = FrameSheet.Shown(context).Count(f => DetailMarks.ShowsHead(context, f, role)
                    && sheet.Content.Title.Contains($"({context.Layout.Poses[f].Name})", StringComparison.Ordinal));
                Assert.Equal(shown, Texts(sheet).Count(t => t.Bold && t.Text == number.ToString(CultureInfo.InvariantCulture)));
            }

            var atBase = DetailMarks.OfBase(context, frame);
            Assert.Contains(atBase.ToString(CultureInfo.InvariantCulture), texts);
            if (frame == 0 || frame == last)
            {
                Assert.Equal(name, DrawnFrame(book, atBase));
            }
        }

        // The ends' posts are cut to the caps' slope, those on the ropes square: not every frame has a mark to the one detail.
        Assert.False(DetailMarks.ShowsHead(context, last, Role.Post));
    }

    private static string Cut(DrawingContext context, string frame, Role role) =>
        PartTable.Cut(context.Shapes.PieceAt(new PartId(frame, role, Side.Right).ToString())!.Far);

    /// <summary>The frame that the note below a detail's name names.</summary>
    private static string DrawnFrame(SheetBook book, int number)
    {
        var start = number.ToString(CultureInfo.InvariantCulture) + "  ";
        var page = book.Pages.Single(p => Texts(p).Any(t => t.Text.StartsWith(start, StringComparison.Ordinal)));
        var caption = Texts(page).Single(t => t.Text.StartsWith(start, StringComparison.Ordinal));
        var note = Texts(page).Where(t => Math.Abs(t.At.X - caption.At.X) < 1e-9 && t.At.Y < caption.At.Y).MaxBy(t => t.At.Y)!;
        var at = note.Text.IndexOf('F', StringComparison.Ordinal);
        return note.Text[at..(at + 3)];
    }

    /// <summary>
    /// By hand: pickets of 1-1/2 in on leaning rails take 2 · 1.5 · cos lean of the width between these; the least of all frames is the
    /// check's.
    /// </summary>
    [Fact]
    public void Clear_width_is_between_what_stands_furthest_in()
    {
        var (context, book) = s_owl.Value;
        var (layout, lean) = (context.Layout, context.Layout.Parameters.Frames.Post.Lean);
        var rail = new FrameDrawing(context, layout.Bays / 2).StubsOf(Role.Rail, Side.Right)[0].Box.MinX;
        var width = PassableWidth.At(layout, layout.Bays / 2);
        Assert.Equal((2 * rail) - (2 * 1.5 * 0.0254 * Math.Cos(lean)), width, 0.002);
        Assert.Equal(
            context.Model.Checks.Single(c => c.Id is "clear-width").Demand,
            Enumerable.Range(0, layout.Bays + 1).Min(i => PassableWidth.At(layout, i)), 1e-9);
        var texts = book.Pages.SelectMany(Texts).Select(t => t.Text).ToList();
        Assert.Contains("clear width " + context.Text.LeastSize(width), texts);
        var bay = layout.Bays / 2;
        Assert.Contains(texts, t => t.EndsWith(
            ", gaps up to " + context.Text.Size(PicketGaps.Widest(layout, bay + 1)!.Value), StringComparison.Ordinal));
        Assert.Contains(texts, t => t.StartsWith('H') && t.EndsWith(" over deck", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.Contains(" handrail  ", StringComparison.Ordinal));
    }

    /// <summary>An uplift too small for an arrow is told, red; a backstay that goes up pulls its anchor down; nothing is a post.</summary>
    [Fact]
    public void What_pulls_up_is_told()
    {
        var context = s_owl.Value.Context;
        var words = context.Text.Words;
        const double pound = 4.4482216152605;
        var canvas = new Canvas(new SheetBox(0, 0, 0.2, 0.1));
        new FreeBody(context, new SupportPull("A", "empty", 8328 * pound, 8326 * pound, -177 * pound, null), 0.042 / (8328 * pound))
        {
            WhenNew = new SupportPull("A", "empty", 12196 * pound, 12151 * pound, -1039 * pound, null),
        }.Draw(canvas, new SheetBox(0.02, 0.01, 0.18, 0.09));
        var up = Assert.Single(canvas.Entities.OfType<SheetText>(), t => t.Text is "on the platform up 177 lbf");
        Assert.Equal(PageLayers.Accent, up.Layer);
        Assert.Contains(canvas.Entities.OfType<SheetText>(), t => t.Text is "new rope: on the platform up 1039 lbf");
        Assert.Equal("down 12 lbf", FreeBody.Upright(words, 12 * pound));

        canvas = new Canvas(new SheetBox(0, 0, 0.2, 0.1));
        var stay = new BackstayPull(-5 * Math.PI / 180, 9000 * pound);
        new FreeBody(context, new SupportPull("B", "empty", 9000 * pound, 8966 * pound, 2000 * pound, stay), 0.042 / (9000 * pound))
            .Draw(canvas, new SheetBox(0.02, 0.01, 0.18, 0.09));

        // 9000 lbf · sin 5° = 784 lbf, down on the anchor; 2000 − 784 = 1216 lbf on the support.
        Assert.Contains(canvas.Entities.OfType<SheetText>(), t => t.Text is "down 784 lbf");
        Assert.Contains(canvas.Entities.OfType<SheetText>(), t => t.Text is "on the support down 1216 lbf");
        Assert.DoesNotContain(
            s_owl.Value.Book.Pages.Where(p => p.Content.Title.Contains("Supports", StringComparison.Ordinal)).SelectMany(Texts),
            t => t.Text.StartsWith("On the post", StringComparison.Ordinal));
    }

    /// <summary>A figure written level beside an upright line that had to go away from it says whose it is.</summary>
    [Fact]
    public void A_figure_far_from_its_line_has_a_leader()
    {
        var canvas = Canvas.Twice(new SheetBox(0, 0, 0.2, 0.1), c =>
        {
            c.Keep(new SheetBox(0.085, 0.03, 0.115, 0.07));
            c.Upright(new SheetPoint(0.1, 0.045), new SheetPoint(0.1, 0.05), 0.1, "a long figure");
        });
        var text = PageBox.Of(Assert.Single(canvas.Entities.OfType<SheetText>()));
        Assert.Contains(
            canvas.Entities.OfType<SheetLine>(), l => Math.Abs(l.To.X - 0.1) < 1e-9 && l.To.Y is >= 0.045 and <= 0.05
                && l.From.X >= text.MinX - 0.0011 && l.From.X <= text.MaxX + 0.0011 && l.From.Y >= text.MinY - 0.0011
                && l.From.Y <= text.MaxY + 0.0011);
    }

    /// <summary>A word wider than its column is broken after a sign, or between letters; nothing of it is lost.</summary>
    [Theory]
    [InlineData("piano-movers-on-the-left-quarter-of-it")]
    [InlineData("WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW")]
    public void Long_words_are_broken(string word)
    {
        const double width = 0.02;
        var lines = PageText.Wrapped("a " + word + " b", width, PageText.Small);
        Assert.True(lines.Length > 2);
        Assert.All(lines, l => Assert.True(PageText.Width(l, PageText.Small) <= width));
        Assert.Equal("a" + word + "b", string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        Assert.Equal(word[0] == 'p', lines[1].EndsWith('-'));
    }

    /// <summary>Fields too long for their boxes and revisions without a row stand in full among the notes, and the block says so.</summary>
    [Fact]
    public void What_the_title_block_cannot_hold_stands_in_the_notes()
    {
        var revisions = string.Concat(Enumerable.Range(0, 7).Select(i =>
            $"    - {{ index: {(char)('A' + i)}, date: 2031-06-1{i.ToString(CultureInfo.InvariantCulture)}, change: Change {i + 1} }}\n"));
        var book = DrawingSheets.Draw(Bridges.Build(
            Bridges.Garden + "\nsheets:\n  approved: WWWWWWWWWWWWWWWWWWWWWWWW\n  revisions:\n" + revisions));
        var texts = book.Pages.SelectMany(Texts).Select(t => t.Text).ToList();
        Assert.Contains("WWWWWWWWWWWWWWWWWWWWWWWW", texts);
        Assert.Contains("revision A", texts);
        Assert.All(book.Pages, p => Assert.Contains(Texts(p), t => t.Text is "A to D: see the general notes"));
        Assert.DoesNotContain(
            s_owl.Value.Book.Pages.SelectMany(Texts), t => t.Text.StartsWith("Title block and revisions", StringComparison.Ordinal));
    }

    /// <summary>On paper the part has its printed name.</summary>
    [Fact]
    public void Shims_have_one_name()
    {
        var texts = s_owl.Value.Book.Pages.SelectMany(Texts).Select(t => t.Text).ToList();
        Assert.DoesNotContain(texts, t => t.StartsWith("Fasteners, packer", StringComparison.Ordinal));
        Assert.Contains("Fasteners, tapered shim", texts);
    }

    /// <summary>A steep bridge's elevation takes the room beside it for its caption, and a larger scale.</summary>
    [Fact]
    public void Steep_bridges_are_drawn_larger()
    {
        var book = DrawingSheets.Draw(Bridges.Build("""
            name: Thistle Stair (invented)
            site: { span: 14 ft, rise: 4 ft }
            ropes: { sag: 5 % }
            """));
        var page = book.Pages.Single(p => Texts(p).Any(t => t.Text is "Elevation"));
        Assert.Contains(Texts(page), t => t.Text.EndsWith("(1 : 32)", StringComparison.Ordinal));
    }

    /// <summary>Ends that reach far take a row more, not longer rows; match lines name the sheet on which the bridge goes on.</summary>
    [Fact]
    public void Rows_with_far_ends_have_equal_bays_and_lead_to_each_other()
    {
        var book = DrawingSheets.Draw(Bridges.Build("""
            name: Long Walk (invented)
            site:
              span: 90 ft
              a: { backstay: { length: 20 ft, angle: 30 deg } }
              b: { backstay: { length: 20 ft, angle: 30 deg } }
            ropes: { sag: 3 % }
            """));
        foreach (var kind in (string[])["Elevation", "Plan"])
        {
            var rows = book.Pages.SelectMany((p, i) => Texts(p).Where(t => t.Text.StartsWith(kind + ", F", StringComparison.Ordinal))
                .Select(t => (Sheet: i + 1, Ends: t.Text.Split(", F")[1].Split(" to F")
                    .Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToList()))).ToList();
            Assert.True(rows.Count > 1);
            var bays = rows.ConvertAll(r => r.Ends[1] - r.Ends[0]);
            Assert.True(bays.Max() - bays.Min() <= 1);
            foreach (var (from, to) in rows.Zip(rows.Skip(1)))
            {
                var name = "F" + from.Ends[1].ToString("00", CultureInfo.InvariantCulture);
                Assert.Contains(
                    Texts(book.Pages[from.Sheet - 1]),
                    t => t.Text == string.Create(CultureInfo.InvariantCulture, $"match line {name}, sheet {to.Sheet}"));
                Assert.Contains(
                    Texts(book.Pages[to.Sheet - 1]),
                    t => t.Text == string.Create(CultureInfo.InvariantCulture, $"match line {name}, sheet {from.Sheet}"));
            }
        }

        Assert.Equal(
            book.Pages.SelectMany(Texts).Count(t => t.Text.StartsWith("Elevation, F", StringComparison.Ordinal)) * 2,
            book.Pages.SelectMany(Texts).Count(t => t.Text.StartsWith("key plan", StringComparison.Ordinal)));
    }

    private static IEnumerable<SheetText> Texts(SheetPage page) => page.Content.Entities.OfType<SheetText>();
}
