using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Ground and water below the bridge, and the clearance over them.</summary>
internal static class Site
{
    private const double Hatch = 0.0022;

    /// <summary>Levels of ground and water that a part of the elevation must show.</summary>
    public static IEnumerable<double> Levels(DrawingContext context, double from, double to)
    {
        var site = context.Layout.Parameters.Site;
        foreach (var p in site.Ground.Where(p => p.X >= from && p.X <= to))
        {
            yield return p.Y;
        }

        foreach (var x in (double[])[from, to])
        {
            if (Stations.GroundAt(context.Layout, x) is { } y)
            {
                yield return y;
            }
        }

        if (site.Water is { } water)
        {
            yield return water;
        }
    }

    /// <summary>Draws what the project file gives.</summary>
    public static void Draw(Canvas canvas, DrawingContext context, ViewMap map, SheetBox box)
    {
        var site = context.Layout.Parameters.Site;
        for (var i = 1; i < site.Ground.Length; i++)
        {
            var (a, b) = (site.Ground[i - 1], site.Ground[i]);
            if (ViewLines.Clip(new SheetPoint(a.X, a.Y), new SheetPoint(b.X, b.Y), box with { MinY = double.MinValue / 4 }) is { } cut)
            {
                Ground(canvas, map.Of(cut.From), map.Of(cut.To));
            }
        }

        if (site.Water is { } water)
        {
            var (from, to) = (map.Of(box.MinX, water), map.Of(box.MaxX, water));
            canvas.Line(PageLayers.Hidden, from, to);
            canvas.Label(PageText.Left(from.X + 0.001, from.Y + 0.0008, "highest water " + context.Text.Level(water), PageText.Small));
        }

        Clearances(canvas, context, map, box);
    }

    private static void Ground(Canvas canvas, SheetPoint from, SheetPoint to)
    {
        canvas.Line(PageLayers.Cut, from, to);
        var length = Dimensions.Distance(from, to);
        for (var at = Hatch; at < length; at += 2 * Hatch)
        {
            var (x, y) = (from.X + (at / length * (to.X - from.X)), from.Y + (at / length * (to.Y - from.Y)));
            var slant = Elementary.Atan2(to.Y - from.Y, to.X - from.X) - (Math.PI * 3 / 4);
            canvas.Line(PageLayers.Dim, x, y, x + (Hatch * Elementary.Cos(slant)), y + (Hatch * Elementary.Sin(slant)));
        }
    }

    /// <summary>Clear height below the ropes at the quarter points and where it is greatest.</summary>
    private static void Clearances(Canvas canvas, DrawingContext context, ViewMap map, SheetBox box)
    {
        const int stations = 200;
        var rope = context.Model.Rope;
        var radius = context.Layout.Parameters.Ropes.Rope.Radius;
        var span = context.Layout.Parameters.Site.Span;
        (double X, double Ground, double Under)? At(double x) => Stations.GroundAt(context.Layout, x) is { } ground
            ? (x, ground, rope.HeightAt(x) - radius)
            : null;
        var all = Enumerable.Range(1, stations - 1).Select(i => At(span * i / stations)).OfType<(double X, double Ground, double Under)>()
            .Where(c => c.X > box.MinX && c.X < box.MaxX && c.X > span / 20 && c.X < span * 19 / 20).ToList();
        foreach (
            var c in all.Where(
                c => Math.Abs(c.X - (span / 4)) < span / stations / 2 || Math.Abs(c.X - (span * 3 / 4)) < span / stations / 2)
            .Concat(all.Count > 0 ? [all.MaxBy(c => c.Under - c.Ground)] : []))
        {
            if (c.Under > c.Ground)
            {
                canvas.Between(map.Of(c.X, c.Ground), map.Of(c.X, c.Under), 0, "clear " + context.Text.Length(c.Under - c.Ground));
            }
        }
    }
}
