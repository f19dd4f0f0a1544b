using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Output.DrawingSet;

/// <summary>First sheet: a picture without hidden lines, key figures, list of drawings, general notes.</summary>
internal static class Cover
{
    /// <summary>Letter of general sheets.</summary>
    public const string Series = "G";

    private const double ColumnWidth = 0.112;

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
            // What stands below must keep its room: measured on a canvas that nobody sees.
            var room = y - body.MinY - (body.MaxY - Figures(context, drawings, context.NewCanvas(), left, body.MaxY)) - 0.003;
            var lines = (int)(room / PageText.HeightOf(1, PageText.Small)) - 1;
            y = canvas.Column(left, y, [$"{failing.Label}: {failing.Text}"], PageText.Small, bold: true, PageLayers.Accent);
            var titles = CoverVerdict.Failing(context.Model.Checks, ColumnWidth, lines);
            y = canvas.Column(left, y, titles, PageText.Small, bold: true, PageLayers.Accent) - 0.003;
        }

        Figures(context, drawings, canvas, left, y);
        var (view, scale) = IsometricView.Draw(
            context, canvas, new SheetBox(body.MinX, body.MinY + Captions.Height, left - 0.008, body.MaxY));
        canvas.Caption(
            body.MinX, body.MinY + Captions.Height, view, "to scale along the three axes only: along, up and across", scale, context.Text);
        return new DrawnPage(Series, "Cover", "isometric, from above the right-hand side near A", canvas.Entities);
    }

    /// <summary>Key figures, drawings and notes below each other.</summary>
    /// <returns>Where they end.</returns>
    private static double Figures(
        DrawingContext context, ImmutableArray<(string Number, string Title)> drawings, Canvas canvas, double left, double y)
    {
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
        foreach (var (note, i) in GeneralNotes.Write(context).Select((n, i) => (n, i)))
        {
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            canvas.Text(PageText.Left(left, y - PageText.Small, number, PageText.Small));
            y = canvas.Column(left + 0.005, y, PageText.Wrapped(note, ColumnWidth - 0.005, PageText.Small), PageText.Small);
        }

        return y;
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
        yield return ("Pull, bridge empty", $"{words.Force(model.Rope.LargestTension)} at most, each rope");
        if (worst is not null)
        {
            yield return ("Largest tension", $"{words.Force(worst.Shape!.LargestTension)}, one rope: {CoverVerdict.Lowered(worst.Title)}");
        }

        if (CoverVerdict.Pull(model.Ropework, words) is { Length: > 0 } pull)
        {
            yield return ("Largest pull of all", pull);
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

/// <summary>Notes that hold for all sheets.</summary>
internal static class GeneralNotes
{
    // The ids of more than so many below leave no room, and such a bridge is not built.
    private const int FailingWithoutRoom = 30;

    /// <summary>The notes in order.</summary>
    public static IEnumerable<string> Write(DrawingContext context)
    {
        var p = context.Model.Parameters;
        var words = context.Text.Words;
        yield return Caution.Text;
        yield return "Levels are heights above the rope's axis at support A; stations are measured level from A. Left and right are those "
            + "of someone walking from A to B. North by others.";
        yield return $"Shape: bridge complete and empty at {words.Temperature(p.Site.ReferenceTemperature)}. The crew sets the ropes by "
            + "the hoisting table, not by these levels.";
        yield return "Written figures go before measured ones; check a scale bar.";
        yield return "Wood touches rope nowhere but in the channels. Ease the channels' mouths. Zinc on the rope must not bear on "
            + "copper-treated wood: use a liner that is not metal.";
        yield return "Brush every cut, hole and channel in treated wood with field preservative. Fasteners in treated wood: hot-dip "
            + "galvanised or stainless.";
        yield return "Angles of cuts are from square, as a saw is set: mitre / bevel. Signs: cut list. Templates and "
            + "saw set-ups: files of their own.";
        yield return "Supports, anchors, saddles and terminations are not designed here; forces on them: load cases."
            + (context.Model.Checks.Count(c => c.Status == Checks.CheckStatus.Fail) > FailingWithoutRoom
                ? ""
                : $" Not looked at: {Checks.Verdict.NotAskedText(p)}.");
    }
}
