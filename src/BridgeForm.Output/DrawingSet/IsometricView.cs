using BridgeForm.Output.Drawing;

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
        var scale = DrawingScale.Fitting(context.Text.Units, large * (box.MaxX - box.MinX), large * (box.MaxY - box.MinY), width, height);
        var ratio = scale.Ratio / large;

        // An edge shorter than a line is wide is a blot on paper; long bridges are drawn without them.
        const double blot = 0.0004;
        var lines = HiddenLines.Of(shapes, view, blot * ratio);
        var (w, h) = ((box.MaxX - box.MinX) / ratio, (box.MaxY - box.MinY) / ratio);
        var map = ViewMap.Placing(box, room.MinX + ForMarks + ((width - w) / 2), room.MinY + ((height - h) / 2), ratio);
        canvas.Draw(lines, map, PageLayers.Dim, PageLayers.Note);
        var whole = bays == context.Layout.Bays;
        var drawn = new LinesAbout([.. lines.Select(l => (map.Of(l.From), map.Of(l.To)))]);
        var along = Math.Atan2(View.Isometric.Up.X, View.Isometric.Right.X);
        var (a, b) = (context.Layout.Poses[0].Node, context.Layout.Poses[^1].Node);
        EndMark.Draw(canvas, drawn, room, map.Of(view.Of(a)), along + Math.PI, "A");
        if (whole)
        {
            EndMark.Draw(canvas, drawn, room, map.Of(view.Of(b)), along, "B");
        }

        var title = whole ? "Isometric view" : FormattableString.Invariant($"Isometric view of the first {bays} of {context.Layout.Bays} bays, without support B");
        return (title, scale);
    }

    /// <summary>Frames and bays of the first so many bays.</summary>
    private static IEnumerable<int> Groups(DrawingContext context, int bays) =>
        Enumerable.Range(0, bays + 1).Concat(Enumerable.Range(1, bays).Select(context.Shapes.BayGroup));
}
