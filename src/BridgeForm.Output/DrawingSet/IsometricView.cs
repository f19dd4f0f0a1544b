using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>The bridge from above its right-hand side near A, hidden lines removed.</summary>
internal static class IsometricView
{
    /// <summary>Of more bays than these the picture would be a black band: only the first are drawn.</summary>
    private const int MostBays = 24;

    /// <summary>Room for the supports' letters to either side, metres.</summary>
    private const double ForMarks = 0.007;

    /// <summary>Draws it with its ends marked, as large as the room allows.</summary>
    /// <returns>What it shows, and to which scale along the three axes.</returns>
    public static (string Title, DrawingScale Scale) Draw(DrawingContext context, Canvas canvas, SheetBox room)
    {
        var view = View.Isometric;
        var (width, height) = (room.MaxX - room.MinX - (2 * ForMarks), room.MaxY - room.MinY);
        var bays = Math.Min(MostBays, context.Layout.Bays);
        Shape[] shapes = [.. context.Shapes.Of(Groups(context, bays)), .. context.Shapes.Ropes(bays)];
        var box = SheetBox.Empty;
        foreach (var corner in shapes.SelectMany(s => s.Cells).SelectMany(c => c.Corners))
        {
            var p = view.Of(corner);
            box = box.With(p.X, p.Y);
        }

        // Isometric drawings are enlarged so that lengths along the three axes are to scale (ISO 5456-3, from memory).
        var large = 1 / View.IsometricShare;
        var scale = DrawingScale.Fitting(context.Scales, large * (box.MaxX - box.MinX), large * (box.MaxY - box.MinY), width, height);
        var ratio = scale.Ratio / large;

        // An edge shorter than a line is wide is a blot on paper; long bridges are drawn without them.
        const double blot = 0.0004;
        var lines = HiddenLines.Find(shapes, view, blot * ratio);
        var (w, h) = ((box.MaxX - box.MinX) / ratio, (box.MaxY - box.MinY) / ratio);
        var map = ViewMap.Placing(box, room.MinX + ForMarks + ((width - w) / 2), room.MinY + ((height - h) / 2), ratio);
        canvas.Draw(lines, map, PageLayers.Dim, PageLayers.Note);
        var whole = bays == context.Layout.Bays;
        var drawn = new LinesAbout([.. lines.Select(l => (map.Of(l.From), map.Of(l.To)))]);
        var along = Elementary.Atan2(View.Isometric.Up.X, View.Isometric.Right.X);
        var (a, b) = (context.Layout.Poses[0].Node, context.Layout.Poses[^1].Node);
        EndMark.Draw(canvas, drawn, room, map.Of(view.Of(a)), along + Math.PI, "A");
        if (whole)
        {
            EndMark.Draw(canvas, drawn, room, map.Of(view.Of(b)), along, "B");
        }

        var title = whole ? "Isometric view" : FormattableString.Invariant(
            $"Isometric view of the first {bays} of {context.Layout.Bays} bays, without support B");
        return (title, scale);
    }

    /// <summary>Frames and bays of the first so many bays.</summary>
    private static IEnumerable<int> Groups(DrawingContext context, int bays) =>
        Enumerable.Range(0, bays + 1).Concat(Enumerable.Range(1, bays).Select(context.Shapes.BayGroup));
}

/// <summary>A support's letter beside a picture of the bridge, where nothing is drawn.</summary>
internal static class EndMark
{
    /// <summary>White between the letter's circle and any line, metres.</summary>
    private const double Clear = 0.0015;

    /// <summary>A leader ends so far from the line it leads to, metres.</summary>
    private const double Short = 0.0006;

    /// <summary>A shorter leader is none, metres.</summary>
    private const double LeastLeader = 0.002;

    private const double Nearest = 0.006;
    private const double Farthest = 0.090;
    private const double Step = 0.001;

    /// <summary>Turns away from the straight way out that are tried, radians.</summary>
    private static readonly double[] Turns = [0, -Math.PI / 6, Math.PI / 6, -Math.PI / 3, Math.PI / 3, -Math.PI / 2, Math.PI / 2];

    /// <summary>
    /// Puts the letter at the nearest clear place, straight out from the support before to either side, with a leader that
    /// stops at the first line of the drawing.
    /// </summary>
    /// <param name="lines">What is drawn, on the page.</param>
    /// <param name="room">The letter stays inside.</param>
    /// <param name="support">The support's point on the page.</param>
    /// <param name="outward">Direction on the page away from the bridge, radians.</param>
    public static void Draw(Canvas canvas, LinesAbout lines, SheetBox room, SheetPoint support, double outward, string name)
    {
        for (var reach = Nearest; reach <= Farthest; reach += Step)
        {
            foreach (var turn in Turns)
            {
                var (sin, cos) = Elementary.SinCos(outward + turn);
                var at = new SheetPoint(support.X + (reach * cos), support.Y + (reach * sin));
                if (IsInside(room, at) && lines.Distance(at) > Markers.Radius + Clear)
                {
                    canvas.Marker(at, name);
                    Leader(canvas, lines, at, support);
                    return;
                }
            }
        }
    }

    private static bool IsInside(SheetBox room, SheetPoint at) =>
        at.X - Markers.Radius >= room.MinX && at.X + Markers.Radius <= room.MaxX
        && at.Y - Markers.Radius >= room.MinY && at.Y + Markers.Radius <= room.MaxY;

    private static void Leader(Canvas canvas, LinesAbout lines, SheetPoint at, SheetPoint support)
    {
        var length = Dimensions.Distance(at, support);
        var (ux, uy) = ((support.X - at.X) / length, (support.Y - at.Y) / length);
        SheetPoint On(double way) => new(at.X + (way * ux), at.Y + (way * uy));
        var end = Math.Min(length, lines.FirstAlong(at, support) - Short);
        if (end - Markers.Radius >= LeastLeader)
        {
            canvas.Line(PageLayers.Dim, On(Markers.Radius), On(end));
        }
    }
}

/// <summary>A still picture of the bridge: the isometric view alone, for where nothing else can be shown.</summary>
public static class BridgePicture
{
    private const double Width = 0.240;
    private const double Height = 0.160;
    private const double Edge = 0.005;

    /// <summary>One page of 240 by 160 mm.</summary>
    public static SheetPage Draw(BridgeModel model)
    {
        var room = new SheetBox(Edge, Edge, Width - Edge, Height - Edge);
        var context = new DrawingContext(model, new BridgeShapes(model), new DrawingText(model.Parameters.Units), room);
        var canvas = context.NewCanvas();
        // Without a scale: a screen shows it in any size.
        var (title, _) = IsometricView.Draw(context, canvas, room);
        return new SheetPage(Width, Height, new Sheet($"{model.Parameters.Name}: {title}", PageLayers.All, canvas.Entities));
    }
}
