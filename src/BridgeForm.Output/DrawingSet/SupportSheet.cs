using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>
/// What both supports and their anchors hold, each cut free: forces of one rope as arrows, their length to scale, in the case that
/// pulls it hardest.
/// </summary>
internal static class SupportSheet
{
    private const double LongestArrow = 0.042;

    /// <summary>The sheets: the schematic, and the figures in a table.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var work = context.Model.Ropework;
        if (work.Supports.IsEmpty)
        {
            yield break;
        }

        var body = context.Body;
        var pulls = work.Supports.Select(s => work.Chosen.How == NewRopeWay.AsIs && work.PullWhenNew(s.Support) is { } fresh
            && fresh.Tension > s.Tension ? fresh : s).ToList();
        var most = pulls.Max(Largest);
        var table = Table(context).Within(body.MaxX - body.MinX, body.MaxY - body.MinY);
        var floor = body.MinY + table.Height() + 0.004;
        var canvas = Canvas.Twice(body, c =>
        {
            c.Column(body.MinX, body.MaxY, ["What one rope does to its supports and anchors"], PageText.Normal, bold: true);
            c.Column(
                body.MinX, body.MaxY - PageText.HeightOf(1, PageText.Normal),
                PageText.Wrapped(
                    "Schematic: directions true, arrows to scale of force, places not. Unfactored, the case that pulls hardest"
                        + (work.Chosen.How == NewRopeWay.AsIs ? ", of new rope set short for its stretch where that is more" : "")
                        + "; two ropes pull at each support, so everything comes twice. Designed by a licensed engineer.",
                    body.MaxX - body.MinX, PageText.Small),
                PageText.Small);
            var half = (body.MaxX - body.MinX) / 2;
            foreach (var (pull, i) in pulls.Select((p, i) => (p, i)))
            {
                var left = body.MinX + (i * half);
                new FreeBody(context, pull, LongestArrow / most) { WhenNew = work.PullWhenNew(pull.Support) }.Draw(
                    c, new SheetBox(left, floor, left + half, body.MaxY - 0.012));
            }
        });
        table.Set(canvas, body.MinX, floor - 0.002, body.MinY);
        yield return new DrawnPage(
            DocumentType.General, "Supports and anchors", "schematic, from the right-hand side; A at the left", canvas.Entities);
    }

    /// <summary>The hardest pull of one rope on each support, with what its backstay adds; what pulls up says so.</summary>
    private static FlowTable Table(DrawingContext context)
    {
        var (w, work) = (context.Text.Words, context.Model.Ropework);
        FlowRow Row(string when, SupportPull s) => new(
        [
            s.Support + when, s.Case, w.Force(s.Tension), w.Force(s.Horizontal), FreeBody.Upright(w, s.Vertical),
            s.Backstay is { } b ? $"{w.Force(b.Tension)} at {DrawingText.Angle(b.Angle)}" : "none",
            w.Force(s.PostHorizontal), FreeBody.Upright(w, s.PostVertical),
        ]);
        return new FlowTable(
            "What each support holds, one rope",
            "In the case that pulls it hardest, unfactored; two ropes pull at each support. Level: towards the other support. New "
                + "rope: set short for its stretch, until it has stretched.",
            [
                new("At"), new("Case"), new("Pull", Figures: true), new("Level", Figures: true), new("Upright", Figures: true),
                new("Backstay", Figures: true), new("On the support, level", 0.03, Figures: true),
                new("On the support, upright", 0.03, Figures: true),
            ],
            [
                .. work.Supports.SelectMany(s => work.PullWhenNew(s.Support) is { } fresh
                    ? [Row("", s), Row(", new rope", fresh)]
                    : (FlowRow[])[Row("", s)]),
            ]);
    }

    private static double Largest(SupportPull pull) =>
        new[] { pull.Tension, pull.Held, Math.Abs(pull.PostVertical), Math.Abs(pull.PostHorizontal) }.Max();
}

/// <summary>One support with the forces on it.</summary>
/// <param name="context">The bridge.</param>
/// <param name="pull">What one rope does to it.</param>
/// <param name="perNewton">Length of an arrow on paper for one newton, metres.</param>
internal sealed class FreeBody(DrawingContext context, SupportPull pull, double perNewton)
{
    private readonly QuantityText _words = context.Text.Words;

    /// <summary>A shorter arrow is none: its label leads to the support instead. Metres.</summary>
    private const double LeastArrow = 0.0026;

    /// <summary>A label farther from the point of its arrow gets a leader, metres.</summary>
    private const double Beside = 0.0025;

    /// <summary>The same support with new rope; null where no stretch is known.</summary>
    public SupportPull? WhenNew { get; init; }

    /// <summary>A force down on what bears it, or up.</summary>
    public static string Upright(QuantityText words, double down) =>
        (down < 0 && !string.Equals(words.Force(-down), words.Force(0), StringComparison.Ordinal) ? "up " : "down ")
            + words.Force(Math.Abs(down));

    /// <summary>Towards the span: 1 at A, −1 at B.</summary>
    private readonly int _in = pull.Support is "A" ? 1 : -1;

    /// <summary>Draws it into a part of the page.</summary>
    public void Draw(Canvas canvas, SheetBox cell)
    {
        var at = new SheetPoint((cell.MinX + cell.MaxX) / 2, cell.MinY + (0.62 * (cell.MaxY - cell.MinY)));
        canvas.Marker(new SheetPoint(at.X, cell.MaxY - Markers.Radius), pull.Support);
        canvas.Column(
            at.X + 0.006, cell.MaxY - 0.001, [$"case {pull.Case}"], PageText.Small, bold: true);
        if (WhenNew is { PostVertical: < 0 } fresh)
        {
            canvas.Column(
                at.X + 0.006, cell.MaxY - 0.001 - PageText.HeightOf(1, PageText.Small),
                [$"new rope: on the {Stood} {Upright(_words, fresh.PostVertical)}"], PageText.Small, bold: true, PageLayers.Accent);
        }

        Stand(canvas, at, cell);
        Arrow(canvas, at, _in * pull.Horizontal, -pull.Vertical, $"pull of the rope {_words.Force(pull.Tension)}");
        if (pull.Backstay is { } stay)
        {
            Anchor(canvas, at, stay, cell);
            Arrow(
                canvas, at, -_in * stay.Horizontal, -stay.Vertical,
                $"backstay {_words.Force(stay.Tension)}, {DrawingText.Angle(stay.Angle)}");
        }

        On(canvas, at, pull.PostHorizontal * _in, 0, "level " + _words.Force(Math.Abs(pull.PostHorizontal)));
        On(canvas, at, 0, -pull.PostVertical, Upright(_words, pull.PostVertical));
    }

    /// <summary>Room for an anchor's words below it, metres.</summary>
    private const double Words = 0.013;

    /// <summary>What stands there, dashed, with a line for the ground; a sign for its kind, no shape.</summary>
    private void Stand(Canvas canvas, SheetPoint at, SheetBox cell)
    {
        const double half = 0.0025, ground = 0.010, wide = 0.008;
        var (foot, top) = (cell.MinY + 0.006, at.Y - 0.0012);
        var kind = Support.Kind;
        var back = at.X - (_in * (half + wide));
        double[] uprights = kind switch
        {
            SupportKind.Abutment => [back, at.X + (_in * half)],
            SupportKind.Tree => [back, at.X - (_in * half)],
            _ => [at.X - half, at.X + half],
        };
        foreach (var x in uprights)
        {
            canvas.Line(PageLayers.Hidden, x, foot, x, kind is SupportKind.Tree ? at.Y + wide : top);
        }

        // The wall's top, the bracket on the trunk, the boards of the platform.
        if (kind is SupportKind.Abutment or SupportKind.Tree)
        {
            canvas.Line(PageLayers.Hidden, kind is SupportKind.Tree ? at.X - (_in * half) : back, top, at.X + (_in * half), top);
        }
        else if (kind is SupportKind.Platform)
        {
            canvas.Line(PageLayers.Hidden, at.X - (_in * half), top - half, back - (_in * wide), top - half);
            canvas.Line(PageLayers.Hidden, back - (_in * wide), top - half, back - (_in * wide), foot);
        }

        canvas.Line(PageLayers.Cut, at.X - ground - wide, foot, at.X + ground + wide, foot);
        canvas.Add(new SheetArc(PageLayers.Cut, new SheetPoint(at.X, at.Y - 0.0012), 0.0012, 0, Math.PI));
        canvas.Add(new SheetCircle(PageLayers.Cut, at, 0.0005));
    }

    /// <summary>The anchor at the foot of its backstay, with what it holds up and level.</summary>
    private void Anchor(Canvas canvas, SheetPoint at, BackstayPull stay, SheetBox cell)
    {
        const double side = 0.005, clear = 0.011;
        var reach = Math.Min(((cell.MaxX - cell.MinX) / 2) - 0.020, 0.055);
        var (sin, cos) = Elementary.SinCos(stay.Angle);
        var length = Math.Min(reach / Math.Max(cos, Tolerances.Level), (at.Y - cell.MinY - side - Words) / Math.Max(sin, Tolerances.Level));
        var foot = new SheetPoint(at.X - (_in * length * cos), at.Y - (length * sin));
        canvas.Line(PageLayers.Dim, at, foot);
        canvas.Add(new SheetPolyline(
            PageLayers.Hidden,
            [
                new(foot.X - side, foot.Y - side), new(foot.X + side, foot.Y - side), new(foot.X + side, foot.Y),
                new(foot.X - side, foot.Y),
            ],
            Closed: true));

        // Below each other, below the anchor or beside it, where no arrow goes through.
        string[] lines =
            [
                $"anchor {_words.Force(stay.Tension)}", $"level {_words.Force(stay.Horizontal)}",
                $"{(stay.Vertical < 0 ? "down" : "up")} {_words.Force(Math.Abs(stay.Vertical))}",
            ];
        var width = lines.Max(l => PageText.Width(l, PageText.Small));
        var height = PageText.HeightOf(lines.Length, PageText.Small);
        double Outward(double near) => _in > 0
            ? Math.Max(cell.MinX, Math.Min(near - width, at.X - clear - width))
            : Math.Min(cell.MaxX - width, Math.Max(near, at.X + clear));
        SheetPoint[] places =
        [
            new(Outward(foot.X + (_in * width / 2)), foot.Y - side - 0.0015),
            new(Outward(foot.X - (_in * (side + 0.002))), foot.Y),
            new(Outward(foot.X - (_in * (side + 0.002))), foot.Y + height),
            new(Outward(foot.X - (_in * 0.020)), foot.Y),
        ];
        var room = Array.Find(places, p => canvas.HasRoom(new SheetBox(p.X, p.Y - height, p.X + width, p.Y)));
        var place = room.Y > 0 ? room : places[0];
        canvas.Column(place.X, place.Y, lines, PageText.Small);

        // What stands next to these lines would read as one of them.
        const double around = 0.004;
        canvas.Keep(new SheetBox(place.X - around, place.Y - height - around, place.X + width + around, place.Y + around));
    }

    /// <summary>The resultant on what bears the saddle, by its parts, red.</summary>
    private void On(Canvas canvas, SheetPoint at, double x, double y, string word)
    {
        var force = Math.Abs(x) + Math.Abs(y);
        if (string.Equals(_words.Force(force), _words.Force(0), StringComparison.Ordinal))
        {
            return;
        }

        var words = $"on the {Stood} {word}";
        if (force * perNewton >= LeastArrow)
        {
            Arrow(canvas, at, x, y, words, PageLayers.Accent);
            return;
        }

        // Too small for an arrow to scale, and still to be held: an uplift above all.
        canvas.Leader(at, new SheetPoint(at.X - (_in * 0.006), at.Y + 0.008), words, toLeft: _in > 0, layer: PageLayers.Accent);
    }

    private SupportParameters Support => pull.Support is "A" ? context.Layout.Parameters.Site.A : context.Layout.Parameters.Site.B;

    private string Stood => Support.Kind switch
    {
        SupportKind.Post => "post",
        SupportKind.Tree => "tree",
        SupportKind.Platform => "platform",
        SupportKind.Abutment => "abutment",
        _ => "support",
    };

    /// <summary>A force from a point, its head at the far end, named there.</summary>
    private void Arrow(Canvas canvas, SheetPoint at, double x, double y, string words, string layer = PageLayers.Cut)
    {
        const double head = LeastArrow, slope = 0.3;
        var length = Math.Sqrt((x * x) + (y * y)) * perNewton;
        if (length < head)
        {
            return;
        }

        var (ux, uy) = (x * perNewton / length, y * perNewton / length);
        SheetPoint At(double along, double across) => new(at.X + (along * ux) - (across * uy), at.Y + (along * uy) + (across * ux));
        canvas.Line(layer, at, At(length - head, 0));
        canvas.Add(new SheetArea(layer, [At(length, 0), At(length - head, slope * head), At(length - head, -slope * head)], 1));
        var tip = At(length, 0);
        var width = PageText.Width(words, PageText.Small);
        SheetText Place(double dx, double dy) => PageText.Left(
            tip.X + dx, tip.Y + dy, words, PageText.Small, layer: layer is PageLayers.Accent ? layer : PageLayers.Note);
        var (above, below, middle) = (0.0015, -0.0015 - PageText.Small, -PageText.Small / 2);
        var placed = canvas.Label(
            t => Canvas.Leading(t, tip, Beside) is { } way ? canvas.Cost(way, tip) : 0,
            ux >= 0
                ? [Place(0.0015, middle), Place(-width, above), Place(-width, below), Place(0, above), Place(0, below)]
                : [Place(-width - 0.0015, middle), Place(0, above), Place(0, below), Place(-width, above), Place(-width, below)]);
        if (Canvas.Leading(placed, tip, Beside) is { } from)
        {
            canvas.LeaderLine(from, tip);
        }
    }
}
