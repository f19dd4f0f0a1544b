using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>Supports, anchors, landings, ground, water and north in the general arrangement; marks that lead to other sheets.</summary>
public sealed class EndsTests
{
    private const string Otter = """
        name: Otter Run (invented)
        units: imperial
        site:
          span: 42 ft
          rise: -2 ft
          water: -6 ft
          freeboard: 24 in
          north: 120 deg
          ground: [[-12 ft, 6 in], [-2 ft, -10 in], [4 ft, -5 ft], [15 ft, -8 ft], [24 ft, -8 ft], [36 ft, -5 ft], [44 ft, -3 ft]]
          a: { support: post, backstay: { length: 11 ft, angle: 28 deg, saddle: sliding }, landing: { level: 8 in, gap: 1/4 in } }
          b: { support: abutment, backstay: { length: 9 ft, angle: 20 deg } }
        """;

    private static readonly Lazy<(BridgeModel Model, SheetBook Book)> s_otter = new(() =>
    {
        var model = Bridges.Build(Otter);
        return (model, DrawingSheets.Draw(model));
    });

    [Fact]
    public void Ends_are_drawn_with_what_the_file_says_of_them()
    {
        var texts = Texts(s_otter.Value.Book);
        Assert.Contains("post, saddle, footing by others", texts);
        Assert.Contains("abutment, saddle by others", texts);
        Assert.Equal(2, texts.Count(t => string.Equals(t, "anchor by others", StringComparison.Ordinal)));
        Assert.Contains("backstay 11'-0\", 28.0°, sliding saddle", texts);
        Assert.Contains("landing +8\", gap 1/4\"", texts);

        // By hand: 11 ft · cos 28° = 9.7124 ft = 9 ft 8-9/16 in; 9 ft · cos 20° = 8.4572 ft = 8 ft 5-1/2 in.
        Assert.Contains("9'-8-9/16\"", texts);
        Assert.Contains("8'-5-1/2\"", texts);
    }

    /// <summary>Points of the ground beyond both banks stand with their station and level, and the line is drawn to them.</summary>
    [Fact]
    public void Ground_goes_on_past_both_banks()
    {
        var texts = Texts(s_otter.Value.Book);
        Assert.Contains("4'-0\", −5'-0\"", texts);
        Assert.Contains("44'-0\", −3'-0\"", texts);
        Assert.Contains("15'-0\", −8'-0\"", texts);
    }

    /// <summary>Over the water: the lowest node's level less what hangs below it, to the sixteenth.</summary>
    [Fact]
    public void Freeboard_is_dimensioned()
    {
        var (model, book) = s_otter.Value;
        var layout = BridgeForm.Frames.BridgeLayout.Lay(model.Parameters, model.Rope);
        var low = layout.Poses.Select((p, i) => p.Node.Y + Math.Min(layout.Levels[i].Bottom, -model.Parameters.Ropes.Rope.Radius)).Min();
        var text = new DrawingText(model.Parameters.Units);
        Assert.Contains($"empty, over water {text.Length(low + (6 * 0.3048))}", Texts(book));
    }

    /// <summary>The needle of 120° clockwise from the way A to B, which runs to the right, points down to the left.</summary>
    [Fact]
    public void North_lies_as_the_file_says()
    {
        var plan = s_otter.Value.Book.Pages.First(p => Texts(p).Contains("N"));
        var letter = plan.Content.Entities.OfType<SheetText>().First(t => string.Equals(t.Text, "N", StringComparison.Ordinal));
        var middle = PageFont.Of(letter).Width("N", letter.Height) / 2;
        var rose = plan.Content.Entities.OfType<SheetCircle>().MinBy(
            c => Math.Abs(c.Radius - (0.004 * 0.12 * 0.0254 / PageText.Small)))!;
        var (dx, dy) = (letter.At.X + middle - rose.Center.X, letter.At.Y + (letter.Height / 2) - rose.Center.Y);
        Assert.Equal(-120, Math.Atan2(dy, dx) * 180 / Math.PI, 0.5);
        Assert.DoesNotContain(Texts(s_otter.Value.Book), t => t.StartsWith("north", StringComparison.Ordinal));
    }

    /// <summary>The outlines of a rope do not cross where it bends over its saddle: the drawn axis turns by little at each point.</summary>
    [Fact]
    public void Rope_bends_over_its_saddle()
    {
        var shapes = new BridgeShapes(s_otter.Value.Model);
        var points = shapes.RopePoints(s_otter.Value.Model.RopeLines[0]);
        var turns = points.Zip(points.Skip(1), (a, b) => (b - a).Normalized()).ToList();
        Assert.All(turns.Zip(turns.Skip(1)), t => Assert.True(t.First.Dot(t.Second) > Math.Cos(12 * Math.PI / 180)));
        var raw = s_otter.Value.Model.RopeLines[0].Points;
        Assert.True((raw[1] - raw[0]).Normalized().Dot((raw[2] - raw[1]).Normalized()) < Math.Cos(30 * Math.PI / 180));
    }

    /// <summary>Every mark names a sheet whose caption begins with its number.</summary>
    [Fact]
    public void Marks_lead_to_the_sheets_of_their_drawings()
    {
        var pages = s_otter.Value.Book.Pages;
        var marks = 0;
        foreach (var page in pages)
        {
            var texts = page.Content.Entities.OfType<SheetText>().ToList();
            foreach (var circle in page.Content.Entities.OfType<SheetCircle>())
            {
                var inside = texts.Where(t => int.TryParse(t.Text, CultureInfo.InvariantCulture, out _)
                    && Math.Abs(t.At.Y + (t.Height / 2) - circle.Center.Y) < circle.Radius
                    && Math.Abs(t.At.X - circle.Center.X) < circle.Radius).OrderByDescending(t => t.At.Y).ToList();
                if (inside.Count == 2)
                {
                    marks++;
                    var sheet = pages[int.Parse(inside[1].Text, CultureInfo.InvariantCulture) - 1];
                    Assert.Contains(Texts(sheet), t => t.StartsWith(inside[0].Text + "  ", StringComparison.Ordinal));
                }
            }
        }

        // Three frames on the elevation, and four details on the sheet of each but the end frames' heads, which are cut otherwise.
        Assert.Equal(3 + 4 + (2 * 3), marks);
    }

    /// <summary>A long bridge runs over rows of equal bays with match lines and a key plan; each frame stands in one row, or two.</summary>
    [Fact]
    public void Long_bridges_run_over_rows_of_equal_bays()
    {
        var model = Bridges.Build(Bridges.Garden.Replace("span: 30 ft", "span: 120 ft", StringComparison.Ordinal));
        var pages = DrawingSheets.Draw(model).Pages;
        var captions = pages.SelectMany(Texts).Where(t => t.StartsWith("Elevation, F", StringComparison.Ordinal)).ToList();
        Assert.InRange(captions.Count, 2, 4);
        var bays = captions.Select(c => c.Replace("Elevation, F", "", StringComparison.Ordinal).Split(" to F"))
            .Select(r => (From: int.Parse(r[0], CultureInfo.InvariantCulture), To: int.Parse(r[1], CultureInfo.InvariantCulture))).ToList();
        Assert.Equal(0, bays[0].From);
        Assert.Equal(model.Frames.Length - 1, bays[^1].To);
        Assert.All(bays.Zip(bays.Skip(1)), p => Assert.Equal(p.First.To, p.Second.From));
        Assert.True(bays.Max(b => b.To - b.From) - bays.Min(b => b.To - b.From) <= 1);
        Assert.Equal(2 * captions.Count, pages.SelectMany(Texts).Count(t => t.StartsWith("key plan", StringComparison.Ordinal)));
        Assert.Contains(pages.SelectMany(Texts), t => t.StartsWith("match line F", StringComparison.Ordinal));
    }

    private static List<string> Texts(SheetBook book) => [.. book.Pages.SelectMany(Texts)];

    private static IEnumerable<string> Texts(SheetPage page) => page.Content.Entities.OfType<SheetText>().Select(t => t.Text);
}
