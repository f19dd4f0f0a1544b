using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Output.DrawingSet;

/// <summary>First sheet: a picture without hidden lines, key figures, list of drawings.</summary>
internal static class Cover
{
    private const double ColumnWidth = 0.130;
    private const double LabelWidth = 0.034;
    private const double LeastPicture = 0.020;
    private const int LeastFailing = 9;

    /// <summary>The cover.</summary>
    /// <param name="drawings">Numbers and titles of the other sheets.</param>
    public static DrawnPage Draw(DrawingContext context, ImmutableArray<(string Number, string Title)> drawings)
    {
        var canvas = context.NewCanvas();
        var body = context.Body;
        var left = body.MaxX - ColumnWidth;
        var y = canvas.Column(
            left, body.MaxY, PageText.Wrapped(context.Model.Parameters.Name, ColumnWidth, 0.0046, bold: true), 0.0046, bold: true);
        y = canvas.Column(left, y, ["Cable-borne timber footbridge, drawing set"], PageText.Normal) - 0.003;
        if (Checks.Verdict.ToBuild(context.Model.Checks) is { } failing)
        {
            // What stands below should keep its room: measured on a canvas that nobody sees.
            var room = y - body.MinY - Rows(context).Sum(r => r.Height) - 0.003;
            var lines = Math.Max(LeastFailing, (int)(room / PageText.HeightOf(1, PageText.Small)) - 1);
            y = canvas.Column(left, y, [$"{failing.Label}: {failing.Text}"], PageText.Small, bold: true, PageLayers.Accent);
            var titles = CoverVerdict.Failing(context.Model.Checks, ColumnWidth, lines);
            y = canvas.Column(left, y, titles, PageText.Small, bold: true, PageLayers.Accent) - 0.003;
        }

        var foot = body with { MaxX = left - 0.006 };
        var floor = List(canvas, drawings, foot with { MinY = Beside(canvas, foot) });
        var top = Figures(context, canvas, left, y, floor);
        var picture = new SheetBox(body.MinX, floor + Captions.Height + 0.004, left - 0.008, top);
        if (HasPicture(picture))
        {
            var (view, scale) = IsometricView.Draw(context, canvas, picture);
            canvas.Caption(
                body.MinX, floor + Captions.Height + 0.002, view, "to scale along the three axes only: along, up and across", scale,
                context.Text);
        }

        var direction = HasPicture(picture) ? Isometric : "key figures, list of drawings";
        return new DrawnPage(DocumentType.General, "Cover", direction, canvas.Entities)
        {
            LacksPicture = !HasPicture(picture),
        };
    }

    private const string Isometric = "isometric, from above the right-hand side near A";

    private static bool HasPicture(SheetBox picture) => picture.MaxY - picture.MinY > LeastPicture;

    /// <summary>A sheet of the picture alone, for a cover whose words leave it no room.</summary>
    public static DrawnPage Picture(DrawingContext context)
    {
        var (canvas, body) = (context.NewCanvas(), context.Body);
        var (view, scale) = IsometricView.Draw(context, canvas, body with { MinY = body.MinY + Captions.Height + 0.004 });
        canvas.Caption(
            body.MinX, body.MinY + Captions.Height + 0.002, view, "to scale along the three axes only: along, up and across", scale,
            context.Text);
        return new DrawnPage(DocumentType.General, "Isometric view", Isometric, canvas.Entities);
    }

    /// <summary>Key figures below each other; what finds no room stands above the picture.</summary>
    /// <returns>The upper edge of the picture's room.</returns>
    private static double Figures(DrawingContext context, Canvas canvas, double left, double y, double floor)
    {
        var (x, top) = (left, context.Body.MaxY);
        foreach (var (label, lines, height) in Rows(context))
        {
            if (x >= left && y - height < context.Body.MinY)
            {
                (x, y) = (context.Body.MinX, context.Body.MaxY);
            }

            if (x < left && y - height < floor)
            {
                break;
            }

            canvas.Text(PageText.Left(x, y - PageText.Small, label, PageText.Small));
            y = canvas.Column(x + LabelWidth, y, x < left ? Shorter(lines) : lines, PageText.Small);
            top = x < left ? y - 0.004 : top;
        }

        return top;

        // The room to the left is narrower.
        ImmutableArray<string> Shorter(ImmutableArray<string> lines) => PageText.Wrapped(
            string.Join(' ', lines), left - 0.006 - context.Body.MinX - LabelWidth, PageText.Small);
    }

    // In the order in which a bridge needs them.
    private const string Papers =
        "Printed with this set, each for who needs it: survey.pdf before anything; saw-setups.pdf, templates and labels.pdf at the bench; "
        + "erection.pdf for the crew; upkeep.pdf for whoever keeps the bridge; calculations.pdf for the engineer; quote.pdf for the "
        + "customer.";

    /// <summary>The other papers, along the foot of a room.</summary>
    /// <returns>Their upper edge.</returns>
    private static double Beside(Canvas canvas, SheetBox room)
    {
        var lines = PageText.Wrapped(Papers, room.MaxX - room.MinX, PageText.Small);
        var top = room.MinY + PageText.HeightOf(lines.Length, PageText.Small);
        canvas.Column(room.MinX, top, lines, PageText.Small);
        return top + 0.002;
    }

    private static IEnumerable<(string Label, ImmutableArray<string> Lines, double Height)> Rows(DrawingContext context) =>
        KeyFigures(context).Select(f => (f.Label, Lines: PageText.Wrapped(f.Value, ColumnWidth - LabelWidth, PageText.Small)))
            .Select(f => (f.Label, f.Lines, PageText.HeightOf(f.Lines.Length, PageText.Small)));

    /// <summary>The list of drawings in two columns along the foot of a room.</summary>
    /// <returns>Its upper edge.</returns>
    private static double List(Canvas canvas, ImmutableArray<(string Number, string Title)> drawings, SheetBox room)
    {
        const double number = 0.016;
        var width = (room.MaxX - room.MinX) / 2;
        var rows = Shortened(drawings).Prepend(("1", "Cover"))
            .Select(d => (d.Item1, Lines: PageText.Wrapped(d.Item2, width - number - 0.003, PageText.Small))).ToList();
        var half = (rows.Sum(r => r.Lines.Length) + 1) / 2;
        var first = 0;
        for (var lines = 0; first < rows.Count && lines < half; first++)
        {
            lines += rows[first].Lines.Length;
        }

        var most = Math.Max(rows.Take(first).Sum(r => r.Lines.Length), rows.Skip(first).Sum(r => r.Lines.Length));
        var top = room.MinY + PageText.HeightOf(most, PageText.Small);
        var floor = top + PageText.HeightOf(1, PageText.Normal);
        canvas.Column(room.MinX, floor, ["Drawings"], PageText.Normal, bold: true);
        foreach (var (column, x) in ((int, double)[])[(0, room.MinX), (1, room.MinX + width)])
        {
            var y = top;
            foreach (var (name, lines) in column == 0 ? rows.Take(first) : rows.Skip(first))
            {
                canvas.Text(PageText.Left(x, y - PageText.Small, name, PageText.Small, bold: true));
                y = canvas.Column(x + number, y, lines, PageText.Small);
            }
        }

        return floor;
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

    private static IEnumerable<(string Label, string Value)> KeyFigures(DrawingContext context)
    {
        var (model, words) = (context.Model, context.Text.Words);
        var p = model.Parameters;
        var worst = model.Ropework.Governing;
        yield return ($"Span, {DrawingText.RiseWord(p.Site.Rise)}", $"{words.Length(p.Site.Span)}, {words.Length(Math.Abs(p.Site.Rise))}");
        yield return ("Sag at mid-span", $"{words.Length(model.Rope.Sag)} ({QuantityText.Share(model.Rope.Sag / p.Site.Span)} of the "
            + "span), bridge empty");
        yield return ("Bays", FormattableString.Invariant($"{model.Rope.Segments.Length}, {words.Size(Chord(model.Rope))} from ")
            + "frame to frame");
        yield return ("Frames stand", p.Frames.Stance == Stance.Square ? "square to the ropes; end frames upright" : "upright");
        yield return ("Slope at the ends", $"{DrawingText.Slope(model.Frames[0].Slope)} at A, "
            + $"{DrawingText.Slope(model.Frames[^1].Slope)} at B");
        yield return ("Guard height", Check(model, "guard-height") is { } g ? words.LeastSize(g) + " at the least" : "see the checks");
        yield return ("Clear width", Check(model, "clear-width") is { } w ? words.LeastSize(w) + " at the narrowest" : "see the checks");
        yield return ("Ropes", $"two, {words.Size(p.Ropes.Rope.Diameter)}, {words.Size(p.Ropes.Spacing)} apart");
        yield return ("Tension, bridge empty", $"{words.Force(model.Rope.LargestTension)} at most, each rope");
        if (worst is not null)
        {
            yield return ("Largest tension", $"{words.Force(worst.Shape!.LargestTension)}, one rope: {CoverVerdict.Lowered(worst.Title)}");
        }

        if (CoverVerdict.Pull(model.Ropework, words) is { Length: > 0 } pull)
        {
            yield return ("Largest tension of all", pull);
        }

        foreach (var row in CoverVerdict.Rows(context))
        {
            yield return row;
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
