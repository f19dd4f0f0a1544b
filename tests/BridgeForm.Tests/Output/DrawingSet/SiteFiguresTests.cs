using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Ropes;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>What the general arrangement tells of ground and water: whose figures they are, and only where there is water.</summary>
public sealed class SiteFiguresTests
{
    private const string Brook = """
        name: Reed Brook (invented)
        units: metric
        site:
          span: 9 m
          water: -1.6 m
          freeboard: 1.5 m
          north: -110 deg
          ground: [[-2 m, 0.1 m], [0 m, -0.2 m], [3 m, -1.9 m], [6 m, -2.1 m], [9 m, -0.6 m], [11 m, -0.3 m]]
          a: { backstay: { length: 4 m, angle: 35 deg } }
        """;

    private static readonly Lazy<(BridgeModel Model, SheetBook Book)> s_brook = new(() =>
    {
        var model = Bridges.Build(Brook);
        return (model, DrawingSheets.Draw(model));
    });

    /// <summary>A dimension of the empty bridge says so; beside it stands what the check found, and red that it does not hold.</summary>
    [Fact]
    public void The_least_over_water_is_that_of_the_check()
    {
        var (model, book) = s_brook.Value;
        var check = model.Checks.Single(c => c.Id is "water-clearance");
        var text = new DrawingText(model.Parameters.Units);
        Assert.Equal(CheckStatus.Fail, check.Status);
        var frame = check.Parts[0].Split('/')[0];
        var words = $"all cases, {frame}: {text.Length(check.Demand)} over water, asked 1500: FAILS";
        var told = Assert.Single(Texts(book), t => string.Equals(t.Text, words, StringComparison.Ordinal));
        Assert.Equal(PageLayers.Accent, told.Layer);
        var empty = Assert.Single(Texts(book), t => t.Text.StartsWith("empty, over water ", StringComparison.Ordinal)).Text.Split(' ')[^1];
        Assert.True(double.Parse(empty, CultureInfo.InvariantCulture) > (check.Demand * 1000) + 10);
        Assert.DoesNotContain(Texts(book), t => t.Text.StartsWith("over water", StringComparison.Ordinal));
    }

    /// <summary>Over level ground the least room is below the lowest corner of any base, or the lowest of the rope.</summary>
    [Fact]
    public void The_least_over_the_ground_is_dimensioned()
    {
        var model = Bridges.Build(Bridges.Garden.Replace(
            "span: 30 ft", "span: 30 ft, ground: [[-2 ft, -6 ft], [32 ft, -6 ft]]", StringComparison.Ordinal));
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        var half = model.Parameters.Frames.Base.Along / 2;
        var low = Enumerable.Range(1, layout.Bays - 1).SelectMany(i => (double[])[-half, half], (i, t) =>
            layout.Poses[i].At(t, layout.Levels[i].Bottom, 0).Y).Min();
        var rope = Enumerable.Range(0, 9001).Min(i => model.Rope.HeightAt(i * model.Parameters.Site.Span / 9000));
        low = Math.Min(low, rope - model.Parameters.Ropes.Rope.Radius);
        var text = new DrawingText(model.Parameters.Units);
        var texts = Texts(DrawingSheets.Draw(model)).Select(t => t.Text).ToList();
        Assert.Equal(
            "empty, least clear " + text.Length(low + (6 * 0.3048)),
            texts.Single(t => t.StartsWith("empty, least", StringComparison.Ordinal)));
        var check = model.Checks.Single(c => c.Id is "ground-clearance");
        Assert.Contains(texts, t => t.StartsWith("all cases, F", StringComparison.Ordinal)
            && t.EndsWith($": {text.Length(check.Demand)} over ground", StringComparison.Ordinal));
    }

    /// <summary>
    /// By hand: from A down to (3, −1.9) the ground is at −1.6 where x = 3·1.4 / 1.7 = 2.47059; up to B where x = 6 + 3·0.5 / 1.5 = 7.
    /// </summary>
    [Fact]
    public void Water_lies_where_the_ground_is_lower()
    {
        var (model, book) = s_brook.Value;
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        var (from, to) = Assert.Single(Site.Wet(layout, -5, 20));
        Assert.Equal(3 * 1.4 / 1.7, from, 1e-9);
        Assert.Equal(7, to, 1e-9);

        // Seen through a part of the elevation it ends with the part.
        Assert.Equal((4, 5), Assert.Single(Site.Wet(layout, 4, 5)));
        Assert.Empty(Site.Wet(layout, 8, 20));
        Assert.Single(Texts(book), t => t.Text.StartsWith("highest water", StringComparison.Ordinal));
    }

    /// <summary>Nobody knows the ground past its last point, and water below all ground is none.</summary>
    [Theory]
    [InlineData(-0.5, true)]
    [InlineData(-20, false)]
    public void No_water_lies_past_the_ground_or_below_it(double water, bool isThere)
    {
        var parameters = s_brook.Value.Model.Parameters;
        var site = parameters.Site with { Water = water, Ground = [new(1, 0), new(2, -1), new(8, -1)] };
        var layout = BridgeLayout.Lay(parameters with { Site = site }, s_brook.Value.Model.Rope);
        if (isThere)
        {
            Assert.Equal((1.5, 8), Assert.Single(Site.Wet(layout, -5, 20)));
        }
        else
        {
            Assert.Empty(Site.Wet(layout, -5, 20));
        }
    }

    /// <summary>North is by others only where the file does not give it.</summary>
    [Fact]
    public void The_notes_say_who_knows_north()
    {
        Assert.Contains(Joined(s_brook.Value.Book), t => t.Contains("North: needle on the plan", StringComparison.Ordinal));
        Assert.DoesNotContain(Joined(s_brook.Value.Book), t => t.Contains("North by others", StringComparison.Ordinal));

        static IEnumerable<string> Joined(SheetBook book) =>
            book.Pages.Select(p => string.Join(' ', p.Content.Entities.OfType<SheetText>().Select(t => t.Text)));
    }

    /// <summary>No landing is drawn that the file says nothing of.</summary>
    [Fact]
    public void A_landing_is_drawn_where_the_file_has_one() =>
        Assert.DoesNotContain(Texts(s_brook.Value.Book), t => t.Text.StartsWith("landing ", StringComparison.Ordinal));

    /// <summary>Trunks stand in line with the ropes, none between them.</summary>
    [Fact]
    public void Trees_stand_where_the_ropes_end()
    {
        var context = Context(Brook.Replace(
            "  a: { backstay: { length: 4 m, angle: 35 deg } }", "  b: { support: tree }", StringComparison.Ordinal));
        var canvas = context.NewCanvas();
        new EndDrawing(context, atB: true).DrawPlan(
            canvas, new ViewMap(new SheetPoint(0, 0), 1), new SheetBox(-1, -2, 12, 2));
        var ring = canvas.Entities.OfType<SheetLine>().Where(l => l.Layer == PageLayers.Cut).SelectMany(l => (SheetPoint[])[l.From, l.To])
            .ToList();
        var half = context.Layout.Parameters.Ropes.Spacing / 2;
        const double trunk = 0.20;
        Assert.NotEmpty(ring);
        Assert.All(ring, p => Assert.InRange(Math.Abs(Math.Abs(p.Y) - half), 0, trunk + 1e-9));
        Assert.Contains(ring, p => p.Y > 0);
        Assert.Contains(ring, p => p.Y < 0);
    }

    internal static DrawingContext Context(string file)
    {
        var model = Bridges.Build(file);
        return new DrawingContext(
            model, new BridgeShapes(model), new DrawingText(model.Parameters.Units), new SheetBox(-100, -100, 100, 100));
    }

    private static IEnumerable<SheetText> Texts(SheetBook book) => book.Pages.SelectMany(p => p.Content.Entities.OfType<SheetText>());
}
