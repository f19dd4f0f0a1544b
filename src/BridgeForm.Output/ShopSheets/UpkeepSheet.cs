using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.ShopSheets;

/// <summary><c>upkeep.pdf</c>: where to look, when to close the bridge, a log for ten years. Signatures are left blank.</summary>
public static class UpkeepSheet
{
    private const double FigureHeight = 0.058;
    private const int BlankRows = 44;
    private const double Ring = 0.0022;
    private const double MonthWidth = 0.013;

    /// <summary>The book.</summary>
    public static SheetBook Draw(BridgeModel model)
    {
        var paper = Paper.Named(model.Parameters.Shop.Paper);
        var words = SheetWords.For(model, "Upkeep");
        var frame = PageFrame.On(paper, words);
        var flow = new TableFlow(frame.Body);
        var parts = UpkeepPlan.Parts(model.Parameters);
        Elevation(model, flow.Fresh(FigureHeight));
        flow.Add(new FlowTable(
            "Close the bridge and call an engineer", $"At any one of these ({UpkeepPlan.CloseSource}).", [new("What is seen", 0.120)],
            [.. UpkeepPlan.Close.Select(c => new FlowRow([c], Strong: true))]));
        flow.Add(new FlowTable(
            "What to inspect", "Numbers as on the elevation.", [new("No."), new("Part", 0.045), new("Look", 0.115)],
            [.. parts.Select(p => new FlowRow([p.Number.ToString(CultureInfo.InvariantCulture), p.Part, p.Look]))]));
        flow.Add(Sags(model));
        foreach (var part in parts)
        {
            flow.Add(Log(part));
        }

        flow.Add(Measured());
        return new SheetBook(words.Title, [.. flow.Pages.Select((p, i) => frame.Page(p.Entities, i + 1, flow.Pages.Count))]);
    }

    private static FlowTable Sags(BridgeModel model)
    {
        var w = new QuantityText(model.Parameters.Units);
        var setShort = model.Ropework.Chosen.Shorter - 1;
        var drawn = UpkeepPlan.Sags(model.Parameters, model.Rope);
        if (setShort > -Tolerances.RoundOff)
        {
            return new FlowTable(
                "Sag that is expected", "Finished, nobody on it, at half the span; ropes that have not stretched since they were set.",
                [new("Ropes at", Figures: true), new("Sag", Figures: true)],
                [.. drawn.Select(s => new FlowRow([w.Temperature(s.Temperature), w.Size(s.Sag)]))]);
        }

        var newly = UpkeepPlan.Sags(model.Parameters, model.Rope, setShort);
        return new FlowTable(
            "Sag that is expected",
            "Finished, nobody on it, at half the span; the ropes were set short for stretch to come (ropes.new: as-is)."
                + StretchWords(model, newly),
            [new("Ropes at", Figures: true), new("Newly set", Figures: true), new("Once stretched", Figures: true)],
            [.. newly.Zip(drawn, (s, d) =>
                new FlowRow([w.Temperature(s.Temperature), w.Size(s.Sag), w.Size(d.Sag)]))]);
    }

    // A sag alone does not tell stretch that has come from ropes that are too long: what lies between two marks does.
    private static string StretchWords(BridgeModel model, ImmutableArray<SagAt> newly)
    {
        var reference = model.Parameters.Site.ReferenceTemperature;
        if (newly.FirstOrDefault(s => Math.Abs(s.Temperature - reference) < SameTemperature) is not { BetweenMarks: > 0 } set)
        {
            return "";
        }

        var w = new QuantityText(model.Parameters.Units);
        return $" Stretch seen (as_built.stretch): tape along each rope from the middle of base {model.Frames[1].Name} to that of base "
            + $"{model.Frames[^2].Name}, nobody on the bridge, ropes at {w.Temperature(reference)}: newly set {w.Fine(set.BetweenMarks)}; "
            + $"each 0.1 % of stretch is {w.Caliper(set.BetweenMarks / 1000)} more.";
    }

    // No thermometer on a rope tells this apart, °C.
    private const double SameTemperature = 0.01;

    // A cell that is due says so; whoever looked writes over it.
    // Only months in which it is ever due have a row, so that there is room to write.
    private static FlowTable Log(UpkeepPart part) => new(
        string.Create(CultureInfo.InvariantCulture, $"{part.Number}. {part.Part}: initials and date"),
        "Months count from the day the bridge was opened.",
        [
            new("Month", MonthWidth) { Least = MonthWidth },
            .. Enumerable.Range(1, UpkeepPlan.Years).Select(y => new FlowColumn(
                string.Create(CultureInfo.InvariantCulture, $"Year {y}"), WriteIn.Width) { Least = WriteIn.Width }),
        ],
        [.. part.FirstYear.Union(part.Later).Order().Select(month => new FlowRow(
        [
            month.ToString(CultureInfo.InvariantCulture),
            .. Enumerable.Range(1, UpkeepPlan.Years).Select(y => (y == 1 ? part.FirstYear : part.Later).Contains(month) ? "due" : ""),
        ]))])
    { LeastRow = WriteIn.Height, Ruled = true };

    private static FlowTable Measured() => new(
        "Measured", "Turns of the turnbuckles: as_built and correct.",
        [
            .. ((string[])["Date", "Ropes at", "Expected", "Left", "Right"]).Select(
                h => new FlowColumn(h, WriteIn.Width) { Least = WriteIn.Width }),
            .. ((string[])["Turned, which and how far", "Signature"]).Select(
                h => new FlowColumn(h, 2 * WriteIn.Width) { Least = 2 * WriteIn.Width }),
        ],
        [.. Enumerable.Repeat(new FlowRow(["", "", "", "", "", "", ""]), BlankRows)])
    { LeastRow = WriteIn.Height, Ruled = true };

    // From the side, A at the left: ropes' axis, bases and posts as lines.
    private static void Elevation(BridgeModel model, Canvas canvas)
    {
        var body = canvas.Bounds;
        var nodes = model.Frames.Select(f => f.Node).ToList();
        var (post, low, high) = (model.Parameters.Frames.Post.Length, nodes.Min(n => n.Y), nodes.Max(n => n.Y));
        var ratio = Rounding.Up(
            Math.Max((nodes[^1].X - nodes[0].X) / (body.MaxX - body.MinX - 0.03), (high + post - low) / (FigureHeight - 0.022)), 5);
        var (x0, y0) = (body.MinX + 0.015, body.MaxY - 0.012 - ((high + post) / ratio));
        SheetPoint At(double x, double y) => new(x0 + (x / ratio), y0 + (y / ratio));
        canvas.Column(
            body.MinX, body.MaxY, [$"Where to look, from the side, 1 : {NumberText.Rounded(ratio, 0)}; both sides alike"], PageText.Small,
            bold: true);
        for (var i = 0; i < nodes.Count; i++)
        {
            var (n, up) = (nodes[i], model.Frames[i].Up);
            canvas.Line(PageLayers.Frame, At(n.X, n.Y), At(n.X + (post * up.X), n.Y + (post * up.Y)));
            if (i > 0)
            {
                canvas.Line(PageLayers.Cut, At(nodes[i - 1].X, nodes[i - 1].Y), At(n.X, n.Y));
                var before = model.Frames[i - 1];
                canvas.Line(
                    PageLayers.Frame, At(nodes[i - 1].X + (post * before.Up.X), nodes[i - 1].Y + (post * before.Up.Y)),
                    At(n.X + (post * up.X), n.Y + (post * up.Y)));
            }
        }

        var (a, b, middle, quarter) = (nodes[0], nodes[^1], nodes[nodes.Count / 2], nodes[nodes.Count / 4]);
        Mark(canvas, At(a.X, a.Y), -0.009, -0.003, 1);
        Mark(canvas, At(b.X, b.Y), 0.009, -0.003, 1);
        Mark(canvas, At(a.X, a.Y), -0.009, 0.004, 2);
        Mark(canvas, At(b.X, b.Y), 0.009, 0.004, 2);
        Mark(canvas, At((quarter.X + a.X) / 2, (quarter.Y + a.Y) / 2), 0, -0.006, 3);
        Mark(canvas, At(quarter.X, quarter.Y), 0.003, -0.006, 4);
        Mark(canvas, At(middle.X, middle.Y), -0.006, -0.006, 5);
        Mark(canvas, At(middle.X, middle.Y), 0.004, 0.004, 6);
        Mark(canvas, At(quarter.X, quarter.Y + (post / 2)), 0.004, 0, 7);
        Mark(canvas, At(middle.X, middle.Y), 0.002, -0.006, 8);
    }

    private static void Mark(Canvas canvas, SheetPoint at, double dx, double dy, int number)
    {
        var place = new SheetPoint(at.X + dx, at.Y + dy);
        canvas.Line(PageLayers.Accent, at, place);
        canvas.Add(new SheetCircle(PageLayers.Accent, place, Ring));
        canvas.Label(PageText.Centered(
            place.X, place.Y - (PageText.Small / 2), number.ToString(CultureInfo.InvariantCulture), PageText.Small, bold: true));
    }
}
