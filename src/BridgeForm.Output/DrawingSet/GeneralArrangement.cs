using BridgeForm.Output.Drawing;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Elevation and plan of the whole bridge; a long one runs over several rows, joined at match lines.</summary>
internal static class GeneralArrangement
{
    /// <summary>Right of a row: dimensions and what is drawn of the ropes. Metres.</summary>
    private const double RightRoom = 0.016;
    private const double LeftRoom = GeneralRow.LeftRoom;

    /// <summary>Frames closer than this on paper leave no room for their names, metres.</summary>
    private const double ClosestFrames = 0.0045;

    /// <summary>A bridge that comes out smaller than this on one sheet runs over several (own figure): true length over length.</summary>
    private const double SmallOnOneSheet = 64;
    private const int MostRows = 4;

    /// <summary>Rows of several sheets are drawn no larger than this.</summary>
    private const double LargestInRows = 48;

    /// <summary>Sheets of the general arrangement.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var views = new WholeViews(context);
        var room = context.Body.MaxX - context.Body.MinX - LeftRoom - RightRoom;
        var scale = Scale(context, views, room);
        var rows = Rows(context, views, room * scale.Ratio);
        var pages = new List<List<(GeneralRow Row, double Top)>>();
        var top = double.NegativeInfinity;
        var pairs = rows.Select((r, i) => InOrder(context, views, r, scale, rows.Count > 1 ? i : null)).ToList();

        // A row's plan goes with its elevation where a sheet has room for both; else all of the one kind come first.
        var together = pairs.TrueForAll(p => p.Sum(r => r.Height) <= context.Body.MaxY - context.Body.MinY);
        foreach (var row in together ? pairs.SelectMany(p => p) : pairs.Select(p => p[0]).Concat(pairs.Select(p => p[1])))
        {
            if (top - row.Height < context.Body.MinY)
            {
                pages.Add([]);
                top = context.Body.MaxY;
            }

            pages[^1].Add((row, top));
            top -= row.Height;
        }

        var table = rows.TrueForAll(r => new ElevationRow(context, views, r, scale).HasLevels) ? null : Stations.Table(context);
        foreach (var page in pages)
        {
            var canvas = Canvas.Twice(context.Body, c =>
            {
                foreach (var (row, at) in page)
                {
                    row.Draw(c, context.Body with { MaxY = at });
                }
            });
            var below = page[^1].Top - page[^1].Row.Height;
            if (table is not null && Set(table, context.NewCanvas(), below))
            {
                Set(table, canvas, below);
                table = null;
            }

            yield return Page(canvas) with { Drawings = [.. page.Select(p => p.Row.Number).Where(n => n > 0)] };
        }

        if (table is not null)
        {
            var flow = new TableFlow(context.Body);
            flow.Add(table);
            foreach (var canvas in flow.Pages)
            {
                yield return new DrawnPage(DocumentType.List, "Stations and levels", "tables", canvas.Entities);
            }
        }
    }

    /// <summary>Sets a table in columns below a height.</summary>
    /// <returns>All of it had room.</returns>
    private static bool Set(FlowTable table, Canvas canvas, double top)
    {
        const double between = 0.008;
        var (room, width) = (canvas.Bounds, table.Widths().Sum());
        var next = 0;
        for (var x = room.MinX; x + width <= room.MaxX && next < table.Rows.Length; x += width + between)
        {
            (next, _) = table.Set(canvas, x, top, room.MinY, next);
        }

        return next >= table.Rows.Length;
    }

    /// <param name="place">Of the row among several; null where there is but one.</param>
    private static GeneralRow[] InOrder(
        DrawingContext context, WholeViews views, FrameRange range, DrawingScale scale, int? place = null)
    {
        var elevation = new ElevationRow(context, views, range, scale) { Number = DetailMarks.Elevations + place ?? 0 };
        var plan = new PlanRow(context, views, range, scale) { Number = DetailMarks.Plans + place ?? 0 };
        return context.PlanAbove ? [plan, elevation] : [elevation, plan];
    }

    private static double Closest(DrawingContext context)
    {
        var nodes = context.Layout.Poses;
        return nodes.Zip(nodes.Skip(1), (a, b) => b.Node.X - a.Node.X).Min();
    }

    private static DrawnPage Page(Canvas canvas) => new(
        DocumentType.General, "General arrangement", "elevation: from the right-hand side; plan: from above; A at the left",
        canvas.Entities);

    /// <summary>
    /// The largest scale at which elevation and plan each fit one row; of a bridge that comes out small so, the largest that takes
    /// no more than a few rows; where frames would come too close even then, the largest at which they do not.
    /// </summary>
    private static DrawingScale Scale(DrawingContext context, WholeViews views, double room)
    {
        var closest = Closest(context);
        var all = context.Scales;
        bool Clear(DrawingScale s) => closest / s.Ratio >= ClosestFrames;
        bool Fits(DrawingScale s, int most) => Rows(context, views, room * s.Ratio) is var rows && rows.Count <= most
            && (most == int.MaxValue || rows.Max(r => r.Last - r.First) - rows.Min(r => r.Last - r.First) <= 1)
            && rows.All(r => RowFits(context, views, r, s));
        var one = all.FirstOrDefault(s => Fits(s, 1)) ?? all[^1];
        if (Clear(one) && one.Ratio <= SmallOnOneSheet * context.Enlargement)
        {
            return one;
        }

        var few = all.FirstOrDefault(s => s.Ratio >= LargestInRows * context.Enlargement && Clear(s) && Fits(s, MostRows));
        return few ?? (Clear(one) ? one : all.LastOrDefault(s => Clear(s) && Fits(s, int.MaxValue))) ?? one;
    }

    private static bool RowFits(DrawingContext context, WholeViews views, FrameRange range, DrawingScale scale) =>
        InOrder(context, views, range, scale).All(r => r.Height <= context.Body.MaxY - context.Body.MinY);

    /// <summary>Runs of frames that fit a row of that length, of as equal bays as they come; neighbouring rows share a frame.</summary>
    private static List<FrameRange> Rows(DrawingContext context, WholeViews views, double length)
    {
        var greedy = Greedy(context, views, length).ToList();
        var bays = context.Layout.Bays;

        // Ends that reach far make the outer rows narrow: a row more, and all are equal again.
        for (var count = greedy.Count; count <= bays; count++)
        {
            var equal = Enumerable.Range(0, count).Select(i => new FrameRange(bays * i / count, bays * (i + 1) / count)).ToList();
            if (equal.TrueForAll(r => views.WidthOf(context, r) <= length))
            {
                return equal;
            }
        }

        return greedy;
    }

    private static IEnumerable<FrameRange> Greedy(DrawingContext context, WholeViews views, double length)
    {
        var last = context.Layout.Bays;
        for (var first = 0; first < last;)
        {
            var to = first + 1;
            while (to < last && views.WidthOf(context, new FrameRange(first, to + 1)) <= length)
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
    /// <summary>What is shown beyond a match line, metres at true size.</summary>
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
        (BeyondA, BeyondB) = (EndDrawing.Reach(context, atB: false), EndDrawing.Reach(context, atB: true));
    }

    /// <summary>From the right-hand side.</summary>
    public IReadOnlyList<SeenLine> Side { get; }

    /// <summary>From above.</summary>
    public IReadOnlyList<SeenLine> Above { get; }

    /// <summary>What is shown beyond support A, metres at true size.</summary>
    public double BeyondA { get; }

    /// <summary>What is shown beyond support B.</summary>
    public double BeyondB { get; }

    /// <summary>True width of a row.</summary>
    public double WidthOf(DrawingContext context, FrameRange range) =>
        context.Layout.Poses[range.Last].Node.X - context.Layout.Poses[range.First].Node.X
            + (range.First == 0 ? BeyondA : Beyond) + (range.Last == context.Layout.Bays ? BeyondB : Beyond);
}

/// <summary>Part of the elevation or plan, as high as it needs.</summary>
internal abstract class GeneralRow(DrawingContext context, WholeViews views, FrameRange range, DrawingScale scale)
{
    /// <summary>Number by which the match lines of its neighbors lead to it; 0 where it has none.</summary>
    public int Number { get; init; }

    /// <summary>Height on paper with its caption, metres.</summary>
    public abstract double Height { get; }

    /// <summary>The bridge and its sheets.</summary>
    protected DrawingContext Context => context;

    /// <summary>Both views of the whole bridge.</summary>
    protected WholeViews Views => views;

    /// <summary>Frames shown.</summary>
    protected FrameRange Range => range;

    /// <summary>Scale.</summary>
    protected DrawingScale Scale => scale;

    /// <summary>True x of the window's edges.</summary>
    protected double MinX => context.Layout.Poses[range.First].Node.X - (AtA ? views.BeyondA : WholeViews.Beyond);

    /// <summary>True x of the window's edges.</summary>
    protected double MaxX => context.Layout.Poses[range.Last].Node.X + (AtB ? views.BeyondB : WholeViews.Beyond);

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

    /// <summary>The whole bridge as a line with what this row shows of it thick; nothing where it shows all.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="end">Right edge, B's letter included.</param>
    /// <param name="y">Of the line.</param>
    protected void KeyPlan(Canvas canvas, double end, double y)
    {
        if (IsWhole)
        {
            return;
        }

        const double length = 0.040;
        var (left, span) = (end - length - 0.010, context.Layout.Parameters.Site.Span);
        double X(int frame) => left + (context.Layout.Poses[frame].Node.X / span * length);
        canvas.Line(PageLayers.Dim, left, y, left + length, y);
        canvas.Add(new SheetArea(
            PageLayers.Note,
            [
                new(X(range.First), y - 0.0006), new(X(range.Last), y - 0.0006), new(X(range.Last), y + 0.0006),
                new(X(range.First), y + 0.0006),
            ],
            1));
        canvas.Text(PageText.Right(left - 0.002, y - (PageText.Small / 2), "A", PageText.Small, bold: true));
        canvas.Text(PageText.Left(left + length + 0.002, y - (PageText.Small / 2), "B", PageText.Small, bold: true));
        canvas.Text(PageText.Right(left + length, y - 0.0045, "key plan: thick, this part", PageText.Small));
    }

    /// <summary>Draws into the upper left corner of a part of the page.</summary>
    public abstract void Draw(Canvas canvas, SheetBox cell);

    /// <summary>Match lines where the bridge goes on in another row.</summary>
    protected void MatchLines(Canvas canvas, ViewMap map, double from, double to)
    {
        foreach (var (frame, here, other) in (ReadOnlySpan<(int, bool, int)>)
            [(range.First, !AtA, Number - 1), (range.Last, !AtB, Number + 1)])
        {
            if (here)
            {
                var pose = context.Layout.Poses[frame];
                var x = map.Of(pose.Node.X, 0).X;
                canvas.Line(PageLayers.Layout, x, from, x, to);
                canvas.Label(PageText.Centered(
                    x, to + 0.0008, $"match line {pose.Name}, sheet {DetailMarks.SheetOf(other)}", PageText.Small));
            }
        }
    }
}
