using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Output.DrawingSet;

/// <summary>First sheet: a picture without hidden lines, key figures, list of drawings, general notes.</summary>
internal static class Cover
{
    /// <summary>Letter of general sheets.</summary>
    public const string Series = "G";

    /// <summary>Of more bays than these the picture would be a black band: only the first are drawn.</summary>
    private const int MostBays = 24;

    private const double ColumnWidth = 0.112;

    /// <summary>The cover.</summary>
    /// <param name="drawings">Numbers and titles of the other sheets.</param>
    public static DrawnPage Of(DrawingContext context, ImmutableArray<(string Number, string Title)> drawings)
    {
        var canvas = context.NewCanvas();
        var body = context.Body;
        var left = body.MaxX - ColumnWidth;
        var y = canvas.Column(left, body.MaxY, PageText.Wrapped(context.Model.Parameters.Name, ColumnWidth, 0.0046, bold: true), 0.0046, bold: true);
        y = canvas.Column(left, y, ["Cable-borne timber footbridge, drawing set"], PageText.Normal) - 0.003;
        foreach (var (label, value) in KeyFigures(context))
        {
            canvas.Text(PageText.Left(left, y - PageText.Small, label, PageText.Small));
            y = canvas.Column(left + 0.040, y, PageText.Wrapped(value, ColumnWidth - 0.040, PageText.Small), PageText.Small);
        }

        y = canvas.Column(left, y - 0.003, ["Drawings"], PageText.Normal, bold: true);
        foreach (var (number, title) in Shortened(drawings).Prepend((Series + "-1", "Cover")))
        {
            canvas.Text(PageText.Left(left, y - PageText.Small, number, PageText.Small, bold: true));
            y = canvas.Column(left + 0.018, y, PageText.Wrapped(title, ColumnWidth - 0.018, PageText.Small), PageText.Small);
        }

        y = canvas.Column(left, y - 0.003, ["General notes"], PageText.Normal, bold: true);
        foreach (var (note, i) in GeneralNotes.Of(context).Select((n, i) => (n, i)))
        {
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            canvas.Text(PageText.Left(left, y - PageText.Small, number, PageText.Small));
            y = canvas.Column(left + 0.005, y, PageText.Wrapped(note, ColumnWidth - 0.005, PageText.Small), PageText.Small);
        }

        Picture(context, canvas, new SheetBox(body.MinX, body.MinY, left - 0.008, body.MaxY));
        return new DrawnPage(Series, "Cover", "isometric, from above the right-hand side near A", canvas.Entities);
    }

    /// <summary>Sheets of one title after each other as one line.</summary>
    private static IEnumerable<(string Number, string Title)> Shortened(ImmutableArray<(string Number, string Title)> drawings)
    {
        for (var i = 0; i < drawings.Length;)
        {
            var last = i;
            while (last + 1 < drawings.Length && string.Equals(drawings[last + 1].Title, drawings[i].Title, StringComparison.Ordinal))
            {
                last++;
            }

            yield return (last > i ? $"{drawings[i].Number} to {drawings[last].Number}" : drawings[i].Number, drawings[i].Title);
            i = last + 1;
        }
    }

    private static void Picture(DrawingContext context, Canvas canvas, SheetBox room)
    {
        var view = View.Isometric;
        var (width, height) = (room.MaxX - room.MinX, room.MaxY - room.MinY - Captions.Height);
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
        var map = ViewMap.Placing(box, room.MinX + ((width - w) / 2), room.MinY + Captions.Height + ((height - h) / 2), ratio);
        canvas.Draw(lines, map, PageLayers.Dim, PageLayers.Note);
        var whole = bays == context.Layout.Bays;
        End(canvas, map.Of(view.Of(context.Layout.Poses[0].Node)), "A", -1);
        if (whole)
        {
            End(canvas, map.Of(view.Of(context.Layout.Poses[^1].Node)), "B", 1);
        }

        var title = whole ? "Isometric view" : FormattableString.Invariant($"Isometric view of the first {bays} of {context.Layout.Bays} bays");
        canvas.Caption(room.MinX, room.MinY + Captions.Height, title, "to scale along the three axes only: along, up and across", scale, context.Text);
    }

    /// <summary>Frames and bays of the first so many bays.</summary>
    private static IEnumerable<int> Groups(DrawingContext context, int bays) =>
        Enumerable.Range(0, bays + 1).Concat(Enumerable.Range(1, bays).Select(context.Shapes.BayGroup));

    private static void End(Canvas canvas, SheetPoint support, string name, int side)
    {
        var at = new SheetPoint(support.X + (side * 0.012), support.Y - 0.012);
        canvas.Marker(at, name);
        canvas.Line(PageLayers.Dim, support, new SheetPoint(at.X - (side * 0.002), at.Y + 0.002));
    }

    private static IEnumerable<(string Label, string Value)> KeyFigures(DrawingContext context)
    {
        var (model, words) = (context.Model, context.Text.Words);
        var p = model.Parameters;
        var worst = model.Cases.Where(c => c.Shape is not null).MaxBy(c => c.Shape!.MaxTension);
        yield return ("Span, rise", $"{words.Length(p.Site.Span)}, {words.Length(p.Site.Rise)}");
        yield return ("Sag at mid-span", $"{words.Length(model.Rope.Sag)} ({QuantityText.Share(model.Rope.Sag / p.Site.Span)} of the span), bridge empty");
        yield return ("Bays", FormattableString.Invariant($"{model.Rope.Segments.Length}, {words.Size(Chord(model.Rope))} from frame to frame"));
        yield return ("Frames stand", p.Frames.Stance == Stance.Square ? "square to the ropes; end frames upright" : "upright");
        yield return ("Slope at the ends", $"{DrawingText.Slope(model.Frames[0].Slope)} at A, {DrawingText.Slope(model.Frames[^1].Slope)} at B");
        yield return ("Guard height", Check(model, "guard-height") is { } g ? words.Size(g) + " at the least" : "see the checks");
        yield return ("Clear width", Check(model, "clear-width") is { } w ? words.Size(w) + " at the narrowest" : "see the checks");
        yield return ("Ropes", $"two, {words.Size(p.Ropes.Rope.Diameter)}, {words.Size(p.Ropes.Spacing)} apart");
        yield return ("Pull, bridge empty", $"{words.Force(model.Rope.MaxTension)} at most, each rope");
        if (worst is not null)
        {
            yield return ("Largest pull", $"{words.Force(worst.Shape!.MaxTension)}, one rope: {worst.Title.ToLowerInvariant()}");
        }

        yield return ("Live load", $"{words.Pressure(p.Loads.Live)} ({p.Loads.LiveSource})");
        yield return ("Use", p.Use == BridgeUse.Public ? "public" : "private");
        yield return ("Wood", words.Mass(model.Pieces.Sum(x => x.Mass * x.Occurrences.Length)) + " in service");
    }

    private static double Chord(RopeShape rope) => rope.Nodes.Zip(rope.Nodes.Skip(1), (a, b) =>
        Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)))).Max();

    private static double? Check(BridgeModel model, string id) =>
        model.Checks.FirstOrDefault(c => string.Equals(c.Id, id, StringComparison.Ordinal))?.Demand;
}
