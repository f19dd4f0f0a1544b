using BridgeForm.Frames;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Part of the plan.</summary>
internal sealed class PlanRow(DrawingContext context, WholeViews views, FrameRange range, DrawingScale scale)
    : GeneralRow(context, views, range, scale)
{
    private const string Note = "seen from above, the right-hand side below, rails left out; ropes' axes chain-dotted";
    private const double AboveRoom = 0.006;
    private const double BelowRoom = 0.003;

    private double HalfWidth => Math.Max(
        Math.Max(Context.Layout.Parameters.Frames.Base.Length / 2, EndDrawing.HalfWidth(Context.Layout.Parameters)),
        Views.Above.Aggregate(0.0, (most, l) => Math.Max(most, Math.Max(Math.Abs(l.From.Y), Math.Abs(l.To.Y)))));

    /// <inheritdoc/>
    public override double Height => AboveRoom + (2 * HalfWidth / Scale.Ratio) + BelowRoom + Captions.Height + 0.003;

    /// <inheritdoc/>
    public override void Draw(Canvas canvas, SheetBox cell)
    {
        var (left, top) = (cell.MinX + LeftRoom, cell.MaxY);
        var half = HalfWidth;
        var box = new SheetBox(MinX, -half, MaxX, half);
        var bottom = top - AboveRoom - (2 * half / Scale.Ratio);
        var map = ViewMap.Placing(box, left, bottom, Scale.Ratio);
        canvas.Draw(Views.Above, map, PageLayers.Dim, PageLayers.Dim, box);
        Landings(canvas, map);
        MatchLines(canvas, map, bottom, top - AboveRoom + 0.001);
        canvas.Caption(
            cell.MinX,
            bottom - BelowRoom,
            IsWhole ? "Plan" : $"Plan, {Names}",
            Note,
            Scale,
            Context.Text);
        Direction(canvas, cell, bottom - BelowRoom);
        KeyPlan(canvas, ((cell.MinX + cell.MaxX) / 2) + 0.056, bottom - BelowRoom - 0.006);
        Widths(canvas, map);
        foreach (var atB in (bool[])[.. AtA ? [false] : Array.Empty<bool>(), .. AtB ? [true] : Array.Empty<bool>()])
        {
            new EndDrawing(Context, atB).DrawPlan(canvas, map, box);
        }
    }

    /// <summary>Beside the caption, or below it where that is as wide as the cell.</summary>
    private void Direction(Canvas canvas, SheetBox cell, double top)
    {
        var beside = Math.Min(((cell.MinX + cell.MaxX) / 2) + 0.060, cell.MaxX - Markers.DirectionWidth);
        if (beside > cell.MinX + PageText.Width(Note, PageText.Small) + 0.004)
        {
            canvas.Direction(beside, top - 0.008, Context.Layout.Parameters.Site.North);
        }
        else
        {
            canvas.Direction(cell.MinX + 0.004, top - Captions.Height - 0.006, Context.Layout.Parameters.Site.North);
        }
    }

    /// <summary>Outlines of landings whose depth is given, by others, as far as the window shows them.</summary>
    private void Landings(Canvas canvas, ViewMap map)
    {
        foreach (var landing in LandingStandIns.Lay(Context.Layout).Where(l => l.Id.EndsWith("/landing", StringComparison.Ordinal)))
        {
            var (middle, depth) = (landing.Place.Origin.X, landing.Body.Width / 2);
            var (from, to) = (Math.Max(MinX, middle - depth), Math.Min(MaxX, middle + depth));
            var half = Context.Layout.Parameters.Frames.Base.Length / 2;
            if (to > from)
            {
                canvas.Line(PageLayers.Hidden, map.Of(from, -half), map.Of(to, -half));
                canvas.Line(PageLayers.Hidden, map.Of(from, half), map.Of(to, half));
                canvas.Line(PageLayers.Hidden, map.Of(from, -half), map.Of(from, half));
                canvas.Line(PageLayers.Hidden, map.Of(to, -half), map.Of(to, half));
            }
        }
    }

    private void Widths(Canvas canvas, ViewMap map)
    {
        var p = Context.Layout.Parameters;
        var rope = p.Ropes.Spacing / 2;
        foreach (var z in (double[])[-rope, rope])
        {
            canvas.Line(PageLayers.Layout, map.Of(MinX, z), map.Of(MaxX, z));
        }

        if (!AtA)
        {
            return;
        }

        var left = map.Of(MinX, 0).X;
        var edge = p.Frames.Base.Length / 2;
        canvas.Upright(map.Of(0, -rope), map.Of(0, rope), left - 0.008, "ropes " + Context.Text.Size(2 * rope));
        var end = -DeckEnd.Beyond(p);
        canvas.Upright(map.Of(end, -edge), map.Of(end, edge), left - 0.016, "base " + Context.Text.Size(2 * edge));
    }
}
