using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>The rope's channel, across the rope and along it.</summary>
internal static class ChannelDetail
{
    private const double Wood = 0.10;

    /// <summary>Section across the right-hand rope at the middle of a base; origin at the rope's axis.</summary>
    public static Detail Across(DrawingContext context, int frame)
    {
        var p = context.Layout.Parameters;
        var level = context.Layout.Levels[frame];
        var half = Math.Min((p.Frames.Keeper.Spread / 2) + 0.05, (p.Frames.Base.Length - p.Ropes.Spacing) / 2);
        var box = new SheetBox(-half, Math.Min(level.Bottom, -p.Ropes.Rope.Radius), half, level.Top);
        return new Detail(
            box, "Channel across the rope", "right-hand rope, section at the middle of the base",
            (canvas, map) => Across(canvas, map, context, level, half));
    }

    /// <summary>Section along the right-hand rope; x along t, y along n, origin at the node.</summary>
    public static Detail Along(DrawingContext context, int frame, string title)
    {
        var p = context.Layout.Parameters;
        var level = context.Layout.Levels[frame];
        const double beyond = 0.038;
        var half = (p.Frames.Base.Along / 2) + beyond;
        var top = level.Top
            + context.Layout.Deck.Lifts[frame] + p.Deck.Thickness
            + (half * Math.Abs(Elementary.Tan(context.Layout.Poses[frame].Slope)) / 2);
        var window = new SheetBox(-half, Math.Min(level.Bottom, -p.Ropes.Rope.Radius) - 0.015, half, top + 0.005);
        var note = $"{context.Layout.Poses[frame].Name}, section in the middle of the right-hand rope, seen from the right-hand side";
        return new Detail(window, title, note, (canvas, map) => Along(canvas, map, context, frame, window));
    }

    private static void Across(Canvas canvas, ViewMap map, DrawingContext context, BaseLevels level, double half)
    {
        var (p, text) = (context.Layout.Parameters, context.Text);
        var (w, keeper) = (p.Frames.Channel.Width / 2, p.Frames.Keeper);
        var floor = level.Floor;
        SheetPoint[] section =
        [
            new(-half, level.Bottom), new(-w, level.Bottom), new(-w, floor), new(w, floor), new(w, level.Bottom),
            new(half, level.Bottom), new(half, level.Top), new(-half, level.Top),
        ];
        canvas.Add(new SheetArea(PageLayers.Note, [.. section.Select(map.Of)], Wood));
        for (var i = 0; i < section.Length; i++)
        {
            var (a, b) = (section[i], section[(i + 1) % section.Length]);
            var broken = Math.Abs(a.X - b.X) <= 0 && Math.Abs(a.X) >= half;
            canvas.Line(broken ? PageLayers.Dim : PageLayers.Cut, map.Of(a), map.Of(b));
        }

        FrameDrawing.Rope(canvas, map, 0, p.Ropes.Rope.Radius);
        canvas.Line(PageLayers.Layout, map.Of(0, box(level) - 0.012), map.Of(0, level.Top + 0.008));
        var below = map.Of(0, Math.Min(level.Bottom, -p.Ropes.Rope.Radius)).Y;
        SheetPoint At(double z) => map.Of(z, level.Bottom);
        canvas.Level(At(-w), At(w), below - 0.006, "channel " + text.Size(2 * w));
        canvas.Upright(map.Of(w, level.Bottom), map.Of(w, floor), map.Of(half, 0).X + 0.006, text.Size(level.ChannelDepth));
        canvas.Upright(map.Of(half, level.Bottom), map.Of(half, level.Top), map.Of(half, 0).X + 0.013, text.Size(level.Top - level.Bottom));
        canvas.Level(map.Of(-w, level.Top), map.Of(0, level.Top), map.Of(0, level.Top).Y + 0.006, text.Size(w));
        canvas.Level(map.Of(0, level.Top), map.Of(w, level.Top), map.Of(0, level.Top).Y + 0.006, text.Size(w) + " to each knife line");
        canvas.Leader(
            map.Of(-p.Ropes.Rope.Radius * 0.6, 0), new SheetPoint(map.Of(-half, 0).X - 0.001, map.Of(0, floor).Y + 0.010),
            "rope " + text.Size(2 * p.Ropes.Rope.Radius), toLeft: true);
        if (keeper.Hole > 0)
        {
            Keepers(canvas, map, context, level, below - 0.0135, map.Of(-half, 0).X - 0.001);
        }

        static double box(BaseLevels l) => l.Bottom;
    }

    /// <summary>Blind holes to either side, dashed.</summary>
    private static void Keepers(Canvas canvas, ViewMap map, DrawingContext context, BaseLevels level, double y, double left)
    {
        var (keeper, text) = (context.Layout.Parameters.Frames.Keeper, context.Text);
        var (spread, r) = (keeper.Spread / 2, keeper.Hole / 2);
        foreach (var z in (double[])[-spread, spread])
        {
            canvas.Line(PageLayers.Hidden, map.Of(z - r, level.Bottom), map.Of(z - r, level.Bottom + keeper.Depth));
            canvas.Line(PageLayers.Hidden, map.Of(z + r, level.Bottom), map.Of(z + r, level.Bottom + keeper.Depth));
            canvas.Line(PageLayers.Hidden, map.Of(z - r, level.Bottom + keeper.Depth), map.Of(z + r, level.Bottom + keeper.Depth));
            canvas.Line(PageLayers.Dim, map.Of(z, level.Bottom - 0.004), map.Of(z, level.Bottom + keeper.Depth + 0.006));
        }

        canvas.Level(map.Of(-spread, level.Bottom), map.Of(spread, level.Bottom), y, "keeper holes " + text.Size(keeper.Spread));
        Strap(canvas, map, context, level);
        canvas.Leader(
            map.Of(-spread, level.Bottom + (keeper.Depth * 0.8)),
            new SheetPoint(left, map.Of(0, level.Bottom + keeper.Depth).Y + 0.006),
            $"⌀ {text.Size(keeper.Hole)}, {text.Size(keeper.Depth)} deep",
            toLeft: true);
    }

    // A strap's thickness and its ends beyond the holes are stand-ins (own figures): the strap is for the builder or engineer.
    private const double StrapThick = 0.003;
    private const double StrapEnd = 0.018;

    /// <summary>The keeper strap under the rope from hole to hole, and its two fasteners up to the holes' ends.</summary>
    private static void Strap(Canvas canvas, ViewMap map, DrawingContext context, BaseLevels level)
    {
        var (p, keeper) = (context.Layout.Parameters, context.Layout.Parameters.Frames.Keeper);
        var (spread, r) = (keeper.Spread / 2, p.Ropes.Rope.Radius);
        var (end, low, channel) = (spread + StrapEnd, Math.Min(level.Bottom, -r), Math.Min(p.Frames.Channel.Width / 2, spread / 2));
        SheetPoint[] upper =
            [
                new(-end, level.Bottom), new(-channel, level.Bottom), new(-r / 2, low), new(r / 2, low), new(channel, level.Bottom),
                new(end, level.Bottom),
            ];
        SheetPoint[] outline = [.. upper, .. upper.Reverse().Select(u => u with { Y = u.Y - StrapThick })];
        canvas.Add(new SheetPolyline(PageLayers.Cut, [.. outline.Select(map.Of).Select(c => new SheetVertex(c.X, c.Y))], Closed: true));
        foreach (var z in (double[])[-spread, spread])
        {
            var (head, foot) = (level.Bottom - StrapThick, level.Bottom + (keeper.Depth * 0.9));
            canvas.Line(PageLayers.Pocket, map.Of(z - (keeper.Hole * 0.9), head), map.Of(z + (keeper.Hole * 0.9), head));
            canvas.Line(PageLayers.Hidden, map.Of(z, head), map.Of(z, foot));
        }

        var straps = context.Model.Hardware().First(h => h.Item.StartsWith("Keeper straps", StringComparison.Ordinal)).Quantity;
        var at = map.Of(end, level.Bottom - (StrapThick / 2));
        canvas.Leader(
            at, new SheetPoint(at.X + 0.004, at.Y - 0.007),
            string.Create(CultureInfo.InvariantCulture, $"keeper strap, {straps} of them, fasteners: hardware.csv"));
    }

    private static void Along(Canvas canvas, ViewMap map, DrawingContext context, int frame, SheetBox window)
    {
        var (p, level) = (context.Layout.Parameters, context.Layout.Levels[frame]);
        var half = p.Frames.Base.Along / 2;
        double Floor(double t) => level.Floor + (t * level.FloorSlope);
        SheetPoint[] wood = [new(-half, Floor(-half)), new(half, Floor(half)), new(half, level.Top), new(-half, level.Top)];
        canvas.Add(new SheetArea(PageLayers.Note, [.. wood.Select(map.Of)], Wood));
        SheetPoint[] outline = [new(-half, level.Bottom), new(half, level.Bottom), new(half, level.Top), new(-half, level.Top)];
        for (var i = 0; i < outline.Length; i++)
        {
            canvas.Line(PageLayers.Cut, map.Of(outline[i]), map.Of(outline[(i + 1) % outline.Length]));
        }

        canvas.Line(PageLayers.Cut, map.Of(wood[0]), map.Of(wood[1]));
        Rope(canvas, map, context, frame, window);
        Deck(canvas, map, context, frame, window);
        Figures(canvas, map, context, frame, Floor, window.MaxY);
    }

    /// <summary>Both edges of the rope along its curve.</summary>
    private static void Rope(Canvas canvas, ViewMap map, DrawingContext context, int frame, SheetBox window)
    {
        var pose = context.Layout.Poses[frame];
        var view = new View(pose.Along, pose.Up);
        foreach (var (from, to) in context.Model.RopeLines.Take(1).Select(context.Shapes.RopePoints)
            .SelectMany(r => r.Zip(r.Skip(1), (a, b) => (a, b))))
        {
            var (a, b) = (view.Of(from - pose.Node), view.Of(to - pose.Node));
            if (ViewLines.Clip(a, b, window) is null)
            {
                continue;
            }

            var length = Dimensions.Distance(a, b);
            foreach (var side in (double[])[-1, 0, 1])
            {
                var shift = side * context.Layout.Parameters.Ropes.Rope.Radius / length;
                var (dx, dy) = (-(b.Y - a.Y) * shift, (b.X - a.X) * shift);
                if (ViewLines.Clip(new SheetPoint(a.X + dx, a.Y + dy), new SheetPoint(b.X + dx, b.Y + dy), window) is { } cut)
                {
                    canvas.Line(side is < 0 or > 0 ? PageLayers.Pocket : PageLayers.Layout, map.Of(cut.From), map.Of(cut.To));
                }
            }
        }
    }

    /// <summary>Boards or stringers of both bays, and the packer.</summary>
    private static void Deck(Canvas canvas, ViewMap map, DrawingContext context, int frame, SheetBox window)
    {
        var shapes = context.Shapes;
        var pose = context.Layout.Poses[frame];
        var view = new View(pose.Along, pose.Up);
        var node = view.Of(pose.Node);
        var ids = shapes.Ids(frame).Where(i => shapes.RoleOf(i).Role == Role.Packer).ToList();
        for (var bay = Math.Max(1, frame); bay <= Math.Min(context.Layout.Bays, frame + 1); bay++)
        {
            ids.AddRange(shapes.DeckFromSide(bay));
        }

        var lines = HiddenLines.Find([.. ids.Select(shapes.Of)], view).Select(l => l with
        {
            From = new SheetPoint(l.From.X - node.X, l.From.Y - node.Y),
            To = new SheetPoint(l.To.X - node.X, l.To.Y - node.Y),
        });
        canvas.Draw(lines, map, PageLayers.Pocket, PageLayers.Pocket, window);
    }

    private static void Figures(Canvas canvas, ViewMap map, DrawingContext context, int frame, Func<double, double> floor, double top)
    {
        var (p, level, text) = (context.Layout.Parameters, context.Layout.Levels[frame], context.Text);
        var half = p.Frames.Base.Along / 2;
        var below = map.Of(0, level.Bottom).Y;
        canvas.Level(map.Of(-half, level.Bottom), map.Of(half, level.Bottom), below - 0.014, text.Size(2 * half));
        var (left, right) = (map.Of(-half, 0).X, map.Of(half, 0).X);
        canvas.Between(map.Of(0, level.Bottom), map.Of(0, level.Floor), 0, text.Size(level.ChannelDepth));
        canvas.Upright(map.Of(-half, level.Bottom), map.Of(-half, level.Top), left - 0.015, text.Size(level.Top - level.Bottom));
        if (Math.Abs(level.FloorSlope) > 0)
        {
            canvas.Upright(map.Of(-half, level.Bottom), map.Of(-half, floor(-half)), left - 0.008, text.Size(floor(-half) - level.Bottom));
            canvas.Upright(map.Of(half, level.Bottom), map.Of(half, floor(half)), right + 0.008, text.Size(floor(half) - level.Bottom));
            var at = map.Of(half / 2, floor(half / 2));
            canvas.Leader(
                at, new SheetPoint(right + 0.003, map.Of(0, level.Top * 0.6).Y),
                "floor " + DrawingText.Angle(Elementary.Atan(Math.Abs(level.FloorSlope))));
        }

        var packer = context.Shapes.PieceAt(new PartId(context.Layout.Poses[frame].Name, Role.Packer).ToString());
        if (packer is not null && Taper.Measure(packer) is { } taper)
        {
            var at = map.Of(Math.Sign(-level.FloorSlope) * half * 0.5, level.Top + (taper.Thick * 0.3));
            canvas.Leader(
                at,
                new SheetPoint(at.X - 0.006, map.Of(0, top).Y + 0.006),
                $"tapered shim {packer.Mark}: {text.Size(taper.Thick)} to {text.Size(taper.Thin)}, {DrawingText.Angle(taper.Angle)}",
                toLeft: true);
        }
        else if (frame > 0)
        {
            var at = map.Of(0, level.Top + context.Layout.Deck.Lifts[frame] + (p.Deck.Thickness / 2));
            canvas.Leader(at, new SheetPoint(at.X + 0.006, map.Of(0, top).Y + 0.006), "butt gap " + text.Size(p.Deck.ButtGap));
        }
    }
}
