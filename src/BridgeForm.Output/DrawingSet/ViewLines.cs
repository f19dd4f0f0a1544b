using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Puts visible lines on a page.</summary>
internal static class ViewLines
{
    /// <summary>
    /// Lines with both ends in the same places on this grid are one line on paper: half the width of a thin line, metres.
    /// </summary>
    private const double Grid = 0.0001;

    /// <summary>Draws lines on one layer, outlines on another; what lies outside a window of the view is cut off.</summary>
    public static void Draw(
        this Canvas canvas, IEnumerable<SeenLine> lines, ViewMap map, string inner, string outline, SheetBox? window = null)
    {
        var drawn = new HashSet<(long, long, long, long)>();
        foreach (var line in lines)
        {
            if (Clip(line.From, line.To, window) is not { } cut)
            {
                continue;
            }

            var (from, to) = (map.Of(cut.From), map.Of(cut.To));
            var (a, b) = (Snap(from), Snap(to));
            if (a != b && drawn.Add(a.CompareTo(b) < 0 ? (a.X, a.Y, b.X, b.Y) : (b.X, b.Y, a.X, a.Y)))
            {
                canvas.Line(line.Outline ? outline : inner, from, to);
            }
        }
    }

    /// <summary>Box around lines.</summary>
    public static SheetBox BoxOf(IEnumerable<SeenLine> lines) =>
        lines.Aggregate(SheetBox.Empty, (box, l) => box.With(l.From.X, l.From.Y).With(l.To.X, l.To.Y));

    /// <summary>Part of a line inside a box (Liang and Barsky, 1984); null when none.</summary>
    public static (SheetPoint From, SheetPoint To)? Clip(SheetPoint from, SheetPoint to, SheetBox? window)
    {
        if (window is not { } box)
        {
            return (from, to);
        }

        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        double low = 0, high = 1;
        foreach (var (p, q) in (ReadOnlySpan<(double, double)>)
            [(-dx, from.X - box.MinX), (dx, box.MaxX - from.X), (-dy, from.Y - box.MinY), (dy, box.MaxY - from.Y)])
        {
            if (p is < 0 or > 0)
            {
                (low, high) = p < 0 ? (Math.Max(low, q / p), high) : (low, Math.Min(high, q / p));
            }
            else if (q < 0)
            {
                return null;
            }
        }

        return low < high
            ? (new SheetPoint(from.X + (low * dx), from.Y + (low * dy)), new SheetPoint(from.X + (high * dx), from.Y + (high * dy)))
            : null;
    }

    private static (long X, long Y) Snap(SheetPoint p) => ((long)Math.Round(p.X / Grid), (long)Math.Round(p.Y / Grid));
}
