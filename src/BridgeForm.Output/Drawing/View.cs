using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Drawing;

/// <summary>A way of looking at the bridge, without perspective.</summary>
/// <param name="Right">Unit vector of the world that runs to the right on paper.</param>
/// <param name="Up">Unit vector that runs up on paper, square to <paramref name="Right"/>.</param>
internal readonly record struct View(Vector3d Right, Vector3d Up)
{
    /// <summary>From the right-hand side: A on the left, B on the right.</summary>
    public static View Side => new(Vector3d.UnitX, Vector3d.UnitY);

    /// <summary>From above: A on the left, the right-hand side of the bridge below.</summary>
    public static View Above => new(Vector3d.UnitX, -Vector3d.UnitZ);

    /// <summary>Isometric, from above the right-hand side, near A: the three axes are foreshortened alike.</summary>
    public static View Isometric { get; } = FromAbove(Math.PI / 4, Elementary.Atan(1 / Math.Sqrt(2)));

    /// <summary>Length on paper of a length along an axis in the isometric view.</summary>
    public static double IsometricShare { get; } = Math.Sqrt(2.0 / 3);

    /// <summary>Unit vector towards the eye.</summary>
    public Vector3d Toward => Right.Cross(Up);

    /// <summary>Where a point comes to lie, metres at true size.</summary>
    public SheetPoint Of(Vector3d p) => new(Right.Dot(p), Up.Dot(p));

    /// <summary>Turned about the upright axis from the side view, then tilted to look down.</summary>
    private static View FromAbove(double turn, double tilt)
    {
        var right = new Vector3d(Elementary.Cos(turn), 0, Elementary.Sin(turn));
        var level = right.Cross(Vector3d.UnitY);
        var toward = (Elementary.Cos(tilt) * level) + (Elementary.Sin(tilt) * Vector3d.UnitY);
        return new View(right, toward.Cross(right));
    }
}

/// <summary>From a view's plane at true size to the paper.</summary>
/// <param name="Origin">Where the view's origin lies on paper, metres.</param>
/// <param name="Ratio">True length over length on paper.</param>
internal readonly record struct ViewMap(SheetPoint Origin, double Ratio)
{
    /// <summary>A point of the view on paper.</summary>
    public SheetPoint Of(SheetPoint p) => Of(p.X, p.Y);

    /// <summary>A point of the view on paper.</summary>
    public SheetPoint Of(double x, double y) => new(Origin.X + (x / Ratio), Origin.Y + (y / Ratio));

    /// <summary>The map that puts the lower left corner of a box of the view at a point of the paper.</summary>
    public static ViewMap Placing(SheetBox box, double x, double y, double ratio) =>
        new(new SheetPoint(x - (box.MinX / ratio), y - (box.MinY / ratio)), ratio);
}

/// <summary>Puts visible lines on a page.</summary>
internal static class ViewLines
{
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

    private static (long X, long Y) Snap(SheetPoint p) =>
        ((long)Math.Round(p.X / Tolerances.SameLine), (long)Math.Round(p.Y / Tolerances.SameLine));
}
