using BridgeForm.Checks;
using BridgeForm.Frames;
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

        if (site.Water is { } water && Wet(context.Layout, from, to).Any())
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

        Checked(canvas, context, map, box);
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

    /// <summary>
    /// Stretches of the highest water within a part of the elevation: where the ground, as far as the file gives it, lies lower; between
    /// the supports where it gives none.
    /// </summary>
    internal static IEnumerable<(double From, double To)> Wet(BridgeLayout layout, double from, double to)
    {
        var site = layout.Parameters.Site;
        if (site.Water is not { } water)
        {
            yield break;
        }

        if (site.Ground.IsEmpty)
        {
            (double From, double To) all = (Math.Max(from, 0), Math.Min(to, site.Span));
            if (all.To > all.From)
            {
                yield return all;
            }

            yield break;
        }

        double? begun = null;
        for (var i = 1; i < site.Ground.Length; i++)
        {
            var (a, b) = (site.Ground[i - 1], site.Ground[i]);
            var (left, right) = (Math.Max(a.X, from), Math.Min(b.X, to));
            if (right <= left)
            {
                continue;
            }

            double Above(double x) => a.Y + ((x - a.X) / (b.X - a.X) * (b.Y - a.Y)) - water;
            var (low, high) = (Above(left), Above(right));
            var shore = left + ((right - left) * low / (low - high));
            begun ??= low < 0 ? left : high < 0 ? shore : (double?)null;
            if (begun is { } start && (high >= 0 || i == site.Ground.Length - 1 || right >= to))
            {
                yield return (start, high >= 0 ? shore : right);
                begun = null;
            }
        }
    }

    /// <summary>Highest water where it stands over the ground, and how much room the bridge leaves over it.</summary>
    private static void Water(Canvas canvas, DrawingContext context, ViewMap map, SheetBox box)
    {
        if (context.Layout.Parameters.Site.Water is not { } water)
        {
            return;
        }

        var wet = Wet(context.Layout, box.MinX, box.MaxX).ToList();
        foreach (var (from, to) in wet)
        {
            canvas.Line(PageLayers.Hidden, map.Of(from, water), map.Of(to, water));
        }

        if (wet.Count > 0)
        {
            var (at, words) = (map.Of(wet[0].From, water), "highest water " + context.Text.Level(water));
            canvas.Label(
                PageText.Left(at.X + 0.004, at.Y + 0.0008, words, PageText.Small),
                PageText.Left(at.X + 0.004, at.Y - 0.0008 - PageText.Small, words, PageText.Small));
            Freeboard(canvas, context, map, wet, water);
        }
    }

    /// <summary>From the water to the lowest part of the rope's axis less its radius and the bases over it, in the shape drawn.</summary>
    private static void Freeboard(
        Canvas canvas, DrawingContext context, ViewMap map, List<(double From, double To)> wet, double water)
    {
        var over = Enumerable.Range(0, context.Layout.Bays + 1).Select(i => LowestPart(context, i))
            .Where(p => wet.Exists(w => p.X >= w.From && p.X <= w.To)).ToList();
        if (over.Count > 0 && over.MinBy(p => p.Y) is var low && low.Y > water)
        {
            // Beside the clear height, which is often largest at the same place.
            var (from, to) = (map.Of(low.X, water), map.Of(low.X, low.Y));
            canvas.Upright(from, to, from.X + 0.007, $"empty, over water {context.Text.Length(low.Y - water)}");
        }
    }

    /// <summary>The underside of a frame's base, or of the rope where that hangs lower, in the shape drawn.</summary>
    private static SheetPoint LowestPart(DrawingContext context, int frame)
    {
        var node = context.Layout.Poses[frame].Node;
        var under = Math.Min(context.Layout.Levels[frame].Bottom, -context.Layout.Parameters.Ropes.Rope.Radius);
        return new SheetPoint(node.X, node.Y + under);
    }

    /// <summary>
    /// What the checks found to be least, of all load cases and stretched ropes, at the frame that they name: the figures beside it are
    /// those of the empty bridge. Red where the check does not hold.
    /// </summary>
    private static void Checked(Canvas canvas, DrawingContext context, ViewMap map, SheetBox box)
    {
        var site = context.Layout.Parameters.Site;
        foreach (var (id, over) in (ReadOnlySpan<(string, string)>)
            [("water-clearance", "water"), ("ground-clearance", "ground")])
        {
            if (context.Model.Checks.FirstOrDefault(c => string.Equals(c.Id, id, StringComparison.Ordinal)) is not { } check
                || FrameOf(context, check) is not { } frame)
            {
                continue;
            }

            var (at, fails) = (map.Of(LowestPart(context, frame)), check.Status == CheckStatus.Fail);
            if (context.Layout.Poses[frame].Node.X is var x && (x < box.MinX || x > box.MaxX))
            {
                continue;
            }

            var isWater = over is "water";
            canvas.Leader(
                at, new SheetPoint(at.X + 0.005, at.Y - (isWater ? 0.010 : 0.014)),
                Words(context, check, over, context.Layout.Poses[frame].Name, isWater ? site.Freeboard : null),
                layer: fails ? PageLayers.Accent : PageLayers.Note);
        }
    }

    private static string Words(DrawingContext context, CheckResult check, string over, string frame, double? asked)
    {
        var room = check.Demand;
        var figure = room < 0 ? $"{context.Text.Length(-room)} too low for the {over}" : $"{context.Text.Length(room)} over {over}";
        var needed = asked is { } least ? $", asked {context.Text.Size(least)}" : "";
        var status = check.Status switch
        {
            CheckStatus.Fail => ": FAILS",
            CheckStatus.Warn => ": to review",
            CheckStatus.Engineer => ": for an engineer",
            _ => "",
        };
        return $"all cases, {frame}: {figure}{needed}{status}";
    }

    /// <summary>The frame that a check names; where it names none, the lowest of the shape drawn.</summary>
    private static int? FrameOf(DrawingContext context, CheckResult check)
    {
        var poses = context.Layout.Poses;
        var named = check.Parts.Select(p => poses.Select(q => q.Name).ToList().IndexOf(p.Split('/')[0])).Where(i => i >= 0).ToList();
        return named.Count > 0 ? named[0]
            : check.Capacity is null && !(check.Demand > 0) ? null
            : Enumerable.Range(0, poses.Length).MinBy(i => LowestPart(context, i).Y);
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

    /// <summary>
    /// Clear height of the empty bridge: below the ropes at the quarter points and where it is greatest, and where the ground comes
    /// nearest to a rope or a base between the end bases.
    /// </summary>
    private static void Clearances(Canvas canvas, DrawingContext context, ViewMap map, SheetBox box)
    {
        const int stations = 200;
        var span = context.Layout.Parameters.Site.Span;
        var least = Least(context);
        if (least is { } low && low.X > box.MinX && low.X < box.MaxX && low.Under <= low.Ground)
        {
            var at = map.Of(low.X, low.Under);
            canvas.Leader(
                at, new SheetPoint(at.X + 0.005, at.Y - 0.008),
                $"empty, {context.Text.Length(low.Ground - low.Under)} too low for the ground", layer: PageLayers.Accent);
        }

        if (least is { } l && l.X > box.MinX && l.X < box.MaxX && l.Under > l.Ground)
        {
            canvas.Between(
                map.Of(l.X, l.Ground), map.Of(l.X, l.Under), 0, "empty, least clear " + context.Text.Length(l.Under - l.Ground));
        }

        var all = Enumerable.Range(1, stations - 1).Select(i => UnderRope(context, span * i / stations)).OfType<Room>()
            .Where(c => c.X > box.MinX && c.X < box.MaxX && c.X > span / 20 && c.X < span * 19 / 20).ToList();
        foreach (
            var c in all.Where(
                c => Math.Abs(c.X - (span / 4)) < span / stations / 2 || Math.Abs(c.X - (span * 3 / 4)) < span / stations / 2)
            .Concat(all.Count > 0 ? [all.MaxBy(c => c.Under - c.Ground)] : []))
        {
            // Lines so near to each other on paper could not be told apart.
            const double apart = 0.003;
            var isLeast = least is { } place && Math.Abs(place.X - c.X) < apart * map.Ratio;
            if (c.Under > c.Ground && !isLeast)
            {
                canvas.Between(map.Of(c.X, c.Ground), map.Of(c.X, c.Under), 0, "empty, clear " + context.Text.Length(c.Under - c.Ground));
            }
        }
    }

    /// <summary>Ground and what hangs over it at a place along the bridge, world axes.</summary>
    internal readonly record struct Room(double X, double Ground, double Under);

    private static Room? UnderRope(DrawingContext context, double x) => Stations.GroundAt(context.Layout, x) is { } ground
        ? new Room(x, ground, context.Model.Rope.HeightAt(x) - context.Layout.Parameters.Ropes.Rope.Radius)
        : null;

    /// <summary>
    /// Where the empty bridge comes nearest to the ground, as <c>ground-clearance</c> looks: under the ropes from one end base's inner
    /// face to the other's, and under both lower edges of the bases between.
    /// </summary>
    internal static Room? Least(DrawingContext context)
    {
        const int perBay = 4;
        var (layout, p) = (context.Layout, context.Layout.Parameters);
        var (from, half) = (DeckEnd.Beyond(p), p.Frames.Base.Along / 2);
        var to = p.Site.Span - from;
        var ropes = context.Model.Rope.Curve(perBay).Select(c => c.X).Concat(p.Site.Ground.Select(g => g.X)).Append(from).Append(to)
            .Where(x => x >= from && x <= to).Select(x => UnderRope(context, x));
        var bases = Enumerable.Range(1, Math.Max(0, layout.Bays - 1))
            .SelectMany(i => (double[])[-half, half], (i, t) => layout.Poses[i].At(t, layout.Levels[i].Bottom, 0))
            .Select(c => Stations.GroundAt(layout, c.X) is { } ground ? new Room(c.X, ground, c.Y) : (Room?)null);
        var rooms = ropes.Concat(bases).OfType<Room>().ToList();
        return rooms.Count == 0 ? null : rooms.MinBy(r => r.Under - r.Ground);
    }
}
