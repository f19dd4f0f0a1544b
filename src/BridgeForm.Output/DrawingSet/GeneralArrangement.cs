using BridgeForm.Output.Drawing;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Elevation and plan of the whole bridge; a long one runs over several rows, joined at match lines.</summary>
internal static class GeneralArrangement
{
    /// <summary>Right of a row: dimensions and what is drawn of the ropes. Metres.</summary>
    private const double RightRoom = 0.016;
    private const double LeftRoom = GeneralRow.LeftRoom;

    /// <summary>So much smaller than they could be elevation and plan are drawn if then both stand on one sheet: a step of scale.</summary>
    private const double ForOneSheet = 1.5;

    /// <summary>Frames closer than this on paper leave no room for the figures of their columns, metres.</summary>
    private const double ClosestFrames = 0.0045;

    /// <summary>Sheets of the general arrangement.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var views = new WholeViews(context);
        var room = context.Body.MaxX - context.Body.MinX - LeftRoom - RightRoom;
        var scale = Scale(context, views, room);
        if (OneSheet(context, views, scale) is { } sheet)
        {
            yield return Page(sheet);
            yield break;
        }

        var rows = Rows(context, room * scale.Ratio).ToList();
        var blocks = rows.Select(r => (GeneralRow)new ElevationRow(context, views, r, scale))
            .Concat(rows.Select(r => new PlanRow(context, views, r, scale)));
        var canvas = context.NewCanvas();
        var top = context.Body.MaxY;
        foreach (var block in blocks)
        {
            if (top - block.Height < context.Body.MinY && top < context.Body.MaxY)
            {
                yield return Page(canvas);
                (canvas, top) = (context.NewCanvas(), context.Body.MaxY);
            }

            block.Draw(canvas, context.Body with { MaxY = top });
            top -= block.Height;
        }

        yield return Page(canvas);
    }

    /// <summary>The whole bridge on one sheet, plan below the elevation or beside it; null where no scale near enough has room.</summary>
    private static Canvas? OneSheet(DrawingContext context, WholeViews views, DrawingScale largest)
    {
        var (body, whole) = (context.Body, new FrameRange(0, context.Layout.Bays));
        foreach (
            var scale in DrawingScale.All(context.Text.Units).Where(
                s => s.Ratio >= largest.Ratio && s.Ratio <= ForOneSheet * largest.Ratio))
        {
            var (elevation, plan) = (new ElevationRow(context, views, whole, scale), new PlanRow(context, views, whole, scale));
            var width = LeftRoom + (views.Width / scale.Ratio) + RightRoom;
            var height = body.MaxY - body.MinY;
            var isBelow = width <= body.MaxX - body.MinX && elevation.Height + plan.Height <= height;
            if (!isBelow && (2 * width > body.MaxX - body.MinX + RightRoom || elevation.Height > height || plan.Height > height))
            {
                continue;
            }

            if (Closest(context) / scale.Ratio < ClosestFrames)
            {
                return null;
            }

            var canvas = context.NewCanvas();
            elevation.Draw(canvas, isBelow ? body : body with { MaxX = body.MinX + width });
            plan.Draw(canvas, isBelow ? body with { MaxY = body.MaxY - elevation.Height } : body with { MinX = body.MinX + width });
            return canvas;
        }

        return null;
    }

    private static double Closest(DrawingContext context)
    {
        var nodes = context.Layout.Poses;
        return nodes.Zip(nodes.Skip(1), (a, b) => b.Node.X - a.Node.X).Min();
    }

    private static DrawnPage Page(Canvas canvas) => new(
        Cover.Series, "General arrangement", "elevation: from the right-hand side; plan: from above; A at the left", canvas.Entities);

    /// <summary>
    /// The largest scale at which everything fits one row; where frames would come too close, the largest at which they do not
    /// and a row fits the sheet's height.
    /// </summary>
    private static DrawingScale Scale(DrawingContext context, WholeViews views, double room)
    {
        var closest = Closest(context);
        var whole = new FrameRange(0, context.Layout.Bays);
        var all = DrawingScale.All(context.Text.Units);
        var one = all.FirstOrDefault(s => views.Width <= room * s.Ratio && Fits(context, views, whole, s)) ?? all[^1];
        if (closest / one.Ratio >= ClosestFrames)
        {
            return one;
        }

        return all.LastOrDefault(s => closest / s.Ratio >= ClosestFrames
            && Rows(context, room * s.Ratio).All(r => Fits(context, views, r, s))) ?? one;
    }

    private static bool Fits(DrawingContext context, WholeViews views, FrameRange range, DrawingScale scale) =>
        new ElevationRow(context, views, range, scale).Height <= context.Body.MaxY - context.Body.MinY;

    /// <summary>Runs of frames that fit a row of that true length; neighbouring rows share a frame.</summary>
    private static IEnumerable<FrameRange> Rows(DrawingContext context, double length)
    {
        var nodes = context.Layout.Poses;
        var last = context.Layout.Bays;
        var usable = length - (2 * WholeViews.Beyond);
        for (var first = 0; first < last;)
        {
            var to = first + 1;
            while (to < last && nodes[to + 1].Node.X - nodes[first].Node.X <= usable)
            {
                to++;
            }

            yield return new FrameRange(first, to);
            first = to;
        }
    }
}

/// <summary>Frames of one row, both ends included.</summary>
internal readonly record struct FrameRange(int First, int Last);

/// <summary>The whole bridge from the side and from above, with hidden lines left out.</summary>
internal sealed class WholeViews
{
    /// <summary>What is shown beyond a support or a match line, metres at true size.</summary>
    public const double Beyond = 0.40;

    /// <summary>Computes both views.</summary>
    public WholeViews(DrawingContext context)
    {
        Shape[] shapes = [.. context.Shapes.All(), .. context.Shapes.Ropes()];
        const double blot = 0.00025;
        const double coarse = 100;
        var smallest = context.Layout.Parameters.Site.Span > coarse ? blot * coarse : 0;
        Side = HiddenLines.Find(shapes, View.Side, smallest);
        // Rails lean over the deck's edge and would blacken it: they are in the elevation.
        Shape[] withoutRails = [.. context.Shapes.Without(Role.Rail), .. context.Shapes.Ropes()];
        Above = HiddenLines.Find(withoutRails, View.Above, smallest);
        Width = context.Layout.Parameters.Site.Span + (2 * Beyond);
    }

    /// <summary>From the right-hand side.</summary>
    public IReadOnlyList<SeenLine> Side { get; }

    /// <summary>From above.</summary>
    public IReadOnlyList<SeenLine> Above { get; }

    /// <summary>True width of both.</summary>
    public double Width { get; }
}

/// <summary>Part of the elevation or plan, as high as it needs.</summary>
internal abstract class GeneralRow(DrawingContext context, FrameRange range, DrawingScale scale)
{
    /// <summary>Height on paper with its caption, metres.</summary>
    public abstract double Height { get; }

    /// <summary>The bridge and its sheets.</summary>
    protected DrawingContext Context => context;

    /// <summary>Frames shown.</summary>
    protected FrameRange Range => range;

    /// <summary>Scale.</summary>
    protected DrawingScale Scale => scale;

    /// <summary>True x of the window's edges.</summary>
    protected double MinX => context.Layout.Poses[range.First].Node.X - WholeViews.Beyond;

    /// <summary>True x of the window's edges.</summary>
    protected double MaxX => context.Layout.Poses[range.Last].Node.X + WholeViews.Beyond;

    /// <summary>Shows support A.</summary>
    protected bool AtA => range.First == 0;

    /// <summary>Shows support B.</summary>
    protected bool AtB => range.Last == context.Layout.Bays;

    /// <summary>Shows the whole bridge.</summary>
    protected bool IsWhole => AtA && AtB;

    /// <summary>Frames as words.</summary>
    protected string Names => $"{context.Layout.Poses[range.First].Name} to {context.Layout.Poses[range.Last].Name}";

    /// <summary>Left of the drawing: dimensions, and words of the table below it. Metres.</summary>
    public const double LeftRoom = 0.030;

    /// <summary>Draws into the upper left corner of a part of the page.</summary>
    public abstract void Draw(Canvas canvas, SheetBox cell);

    /// <summary>Match lines where the bridge goes on in another row.</summary>
    protected void MatchLines(Canvas canvas, ViewMap map, double from, double to)
    {
        foreach (var (frame, here) in (ReadOnlySpan<(int, bool)>)[(range.First, !AtA), (range.Last, !AtB)])
        {
            if (here)
            {
                var pose = context.Layout.Poses[frame];
                var x = map.Of(pose.Node.X, 0).X;
                canvas.Line(PageLayers.Layout, x, from, x, to);
                canvas.Label(PageText.Centered(x, to + 0.0008, "match line " + pose.Name, PageText.Small));
            }
        }
    }
}
