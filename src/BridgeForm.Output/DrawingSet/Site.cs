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

        Points(canvas, context, map, box);
        Water(canvas, context, map, box);
        Clearances(canvas, context, map, box);
    }

    /// <summary>Station and level of the ground's points, as many as stand clear of each other.</summary>
    private static void Points(Canvas canvas, DrawingContext context, ViewMap map, SheetBox box)
    {
        const double apart = 0.012;
        var before = double.NegativeInfinity;
        foreach (var point in context.Layout.Parameters.Site.Ground.Where(p => p.X >= box.MinX && p.X <= box.MaxX))
        {
            var at = map.Of(point.X, point.Y);
            canvas.Add(new SheetCircle(PageLayers.Frame, at, 0.0004));
            if (at.X - before >= apart)
            {
                before = at.X;
                canvas.Leader(
                    at, new SheetPoint(at.X + 0.002, at.Y - 0.005),
                    $"{context.Text.Length(point.X)}, {context.Text.Level(point.Y)}");
            }
        }
    }

    /// <summary>Highest water where it stands over the ground, and how much room the bridge leaves over it.</summary>
    private static void Water(Canvas canvas, DrawingContext context, ViewMap map, SheetBox box)
    {
        var (site, text) = (context.Layout.Parameters.Site, context.Text);
        if (site.Water is not { } water)
        {
            return;
        }

        const int steps = 400;
        double X(int i) => box.MinX + ((box.MaxX - box.MinX) * i / steps);
        bool IsWet(int i) => Stations.GroundAt(context.Layout, X(i)) is not { } ground || ground < water;
        int? first = null;
        SheetPoint? label = null;
        for (var i = 0; i <= steps; i++)
        {
            if (IsWet(i) && i < steps)
            {
                first ??= i;
                continue;
            }

            if (first is { } from)
            {
                canvas.Line(PageLayers.Hidden, map.Of(X(from), water), map.Of(X(i), water));
                label ??= map.Of(X(from), water);
            }

            first = null;
        }

        if (label is { } at)
        {
            canvas.Label(
                PageText.Left(at.X + 0.004, at.Y + 0.0008, "highest water " + text.Level(water), PageText.Small),
                PageText.Left(at.X + 0.004, at.Y - 0.0008 - PageText.Small, "highest water " + text.Level(water), PageText.Small));
        }

        Freeboard(canvas, context, map, box, water);
    }

    /// <summary>From the water to the lowest part of the rope's axis less its radius and the bases, in the shape drawn.</summary>
    private static void Freeboard(Canvas canvas, DrawingContext context, ViewMap map, SheetBox box, double water)
    {
        var (layout, text) = (context.Layout, context.Text);
        var low = Enumerable.Range(0, layout.Bays + 1)
            .Select(i => (layout.Poses[i].Node.X, Y: layout.Poses[i].Node.Y + Math.Min(
                layout.Levels[i].Bottom, -layout.Parameters.Ropes.Rope.Radius)))
            .Where(p => p.X >= box.MinX && p.X <= box.MaxX).MinBy(p => p.Y);
        if (low.Y > water)
        {
            var asked = layout.Parameters.Site.Freeboard is { } room ? $" (asked {text.Size(room)})" : "";
            // Beside the clear height, which is often largest at the same place.
            var (from, to) = (map.Of(low.X, water), map.Of(low.X, low.Y));
            canvas.Upright(from, to, from.X + 0.007, $"over water {text.Length(low.Y - water)}{asked}");
        }
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
