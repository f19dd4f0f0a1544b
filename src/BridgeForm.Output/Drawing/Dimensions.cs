using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>Dimensions on a page: witness lines, a line with strokes at its ends, and a figure that touches no other.</summary>
internal static class Dimensions
{
    /// <summary>Height of the figures' capitals, metres.</summary>
    public const double Height = PageText.Small;

    /// <summary>From one row of dimensions to the next, metres.</summary>
    public const double Row = 0.0062;

    private const double Gap = 0.0010;
    private const double Over = 0.0012;
    private const double Stroke = 0.0009;
    private const double Lift = 0.0011;

    /// <summary>Places along an upright line for a figure that is written level.</summary>
    private static readonly double[] s_shares = [0.5, 0.35, 0.65, 0.2, 0.8];

    /// <summary>Farther beyond the end of its line a figure gets a leader, metres.</summary>
    private const double Away = 0.004;

    /// <summary>
    /// A distance between two points of the page; nothing where they are one, such as a brace's foot flush with the base's end.
    /// </summary>
    /// <param name="offset">From the points to the dimension line, to the left of the way from the first to the second; metres.</param>
    public static void Between(this Canvas canvas, SheetPoint from, SheetPoint to, double offset, string text)
    {
        var length = Distance(from, to);
        if (length < Tolerances.OnePoint)
        {
            return;
        }

        var (ux, uy) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        SheetPoint At(SheetPoint p, double across, double along = 0) =>
            new(p.X - (across * uy) + (along * ux), p.Y + (across * ux) + (along * uy));

        var out1 = Math.Sign(offset);
        foreach (var end in (ReadOnlySpan<SheetPoint>)[from, to])
        {
            if (Math.Abs(offset) > Gap)
            {
                canvas.Line(PageLayers.Dim, At(end, out1 * Gap), At(end, offset + (out1 * Over)));
            }

            canvas.Line(PageLayers.Frame, At(end, offset - Stroke, -Stroke), At(end, offset + Stroke, Stroke));
        }

        canvas.Line(PageLayers.Dim, At(from, offset), At(to, offset));
        Figure(canvas, At(from, offset), At(to, offset), text);
    }

    /// <summary>Level distances one after the other along one line at height <paramref name="y"/>; lines lead up or down to it.</summary>
    /// <param name="stops">Points in order of X, and the figures between them.</param>
    public static void LevelChain(this Canvas canvas, double y, ReadOnlySpan<SheetPoint> stops, ReadOnlySpan<string> texts)
    {
        for (var i = 0; i < texts.Length; i++)
        {
            canvas.Level(stops[i], stops[i + 1], y, texts[i]);
        }
    }

    /// <summary>The level distance of two points, along a line at height <paramref name="y"/>.</summary>
    public static void Level(this Canvas canvas, SheetPoint from, SheetPoint to, double y, string text)
    {
        foreach (var p in (ReadOnlySpan<SheetPoint>)[from, to])
        {
            var away = Math.Sign(y - p.Y);
            if (Math.Abs(y - p.Y) > Gap)
            {
                canvas.Line(PageLayers.Dim, p.X, p.Y + (away * Gap), p.X, y + (away * Over));
            }
        }

        canvas.Between(new SheetPoint(from.X, y), new SheetPoint(to.X, y), 0, text);
    }

    /// <summary>The upright distance of two points, along a line at <paramref name="x"/>.</summary>
    public static void Upright(this Canvas canvas, SheetPoint from, SheetPoint to, double x, string text)
    {
        foreach (var p in (ReadOnlySpan<SheetPoint>)[from, to])
        {
            var away = Math.Sign(x - p.X);
            canvas.Line(PageLayers.Dim, p.X + (away * Gap), p.Y, x + (away * Over), p.Y);
        }

        canvas.Between(new SheetPoint(x, from.Y), new SheetPoint(x, to.Y), 0, text);
    }

    /// <summary>The angle at a corner from one direction to another, counter-clockwise; radians.</summary>
    public static void Angle(this Canvas canvas, SheetPoint corner, double from, double to, double radius, string text)
    {
        canvas.Add(new SheetArc(PageLayers.Dim, corner, radius, from, to));
        foreach (var ray in (ReadOnlySpan<double>)[from, to])
        {
            var (sin, cos) = Elementary.SinCos(ray);
            canvas.Line(PageLayers.Dim, corner, new SheetPoint(corner.X + ((radius + Over) * cos), corner.Y + ((radius + Over) * sin)));
        }

        var middle = (from + to) / 2;
        var reach = radius + 0.0022;
        var room = (PageText.Width(text, Height) / 2) + (2 * Gap);
        SheetText At(double angle, double r) => PageText.Centered(
            corner.X + (r * Elementary.Cos(angle)), corner.Y + (r * Elementary.Sin(angle)) - (Height / 3), text, Height);
        canvas.Label(
            At(middle, reach), At(middle, reach + 0.003), At(middle - 0.3, reach + 0.002), At(middle + 0.3, reach + 0.002),
            At(middle, reach + 0.006),
            At(from - (room / reach), reach), At(to + (room / reach), reach), At(from - (room / radius), radius * 0.8),
            At(to + (room / radius), radius * 0.8),
            At(middle, reach + 0.010), At(middle, reach + 0.014), At(from - (room / radius), radius * 0.6),
            At(to + (room / radius), radius * 0.6));
    }

    /// <summary>A note with a line from it to what it names.</summary>
    /// <param name="at">What is named.</param>
    /// <param name="elbow">Where the note begins (or ends, when it lies to the left of what it names).</param>
    public static void Leader(
        this Canvas canvas, SheetPoint at, SheetPoint elbow, string text, bool toLeft = false, string layer = PageLayers.Note)
    {
        var width = PageText.Width(text, Height);
        SheetText Place(double x, double y) => PageText.Left(
            x + (toLeft ? -width - Gap : Gap), y - (Height / 2), text, Height, layer: layer);

        // At the end of the note that looks towards what it names, wherever the note came to stand.
        SheetPoint End(SheetText placed)
        {
            var (left, right) = (placed.At.X - Gap, placed.At.X + width + Gap);
            var atRight = at.X >= right || (at.X > left && toLeft);
            return new SheetPoint(atRight ? right : left, placed.At.Y + (Height / 2));
        }

        double Cost(SheetText placed) => ViewLines.Clip(at, End(placed), PageBox.Of(placed)) is not null
            ? double.PositiveInfinity
            : canvas.Cost(at, End(placed));
        var (dx, dy) = (elbow.X - at.X, elbow.Y - at.Y);
        var placed = canvas.Label(
            Cost,
            Place(elbow.X, elbow.Y), Place(elbow.X + (dx / 2), elbow.Y), Place(elbow.X + dx, elbow.Y), Place(elbow.X, elbow.Y + (dy / 2)),
            Place(elbow.X + (dx / 2), elbow.Y + (dy / 2)));
        canvas.LeaderLine(at, End(placed));
        canvas.Add(new SheetCircle(PageLayers.Dim, at, 0.0003));
    }

    /// <summary>Distance of two points.</summary>
    public static double Distance(SheetPoint a, SheetPoint b) => Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));

    /// <summary>Above the line's middle, else below it, else beyond its ends; read from below or from the right.</summary>
    private static void Figure(Canvas canvas, SheetPoint a, SheetPoint b, string text)
    {
        var angle = Elementary.Atan2(b.Y - a.Y, b.X - a.X);
        if (angle > (Math.PI / 2) + Tolerances.AlmostUpright || angle <= Tolerances.AlmostUpright - (Math.PI / 2))
        {
            (a, b, angle) = (b, a, angle > 0 ? angle - Math.PI : angle + Math.PI);
        }

        var (sin, cos) = Elementary.SinCos(angle);
        var (length, width) = (Distance(a, b), PageText.Width(text, Height));
        SheetText At(double along, double up) => new(
            PageLayers.Dim, new SheetPoint(a.X + (along * cos) - (up * sin), a.Y + (along * sin) + (up * cos)), Height, text)
        { Turn = angle };
        var middle = (length - width) / 2;
        double above = Lift, below = -Lift - Height;
        var inside = new[]
        {
            At(middle, above), At(middle, below), At(middle / 2, above), At(middle * 1.5, above), At(middle / 4, above),
            At(middle * 1.75, above),
        };
        var beside = new[]
        {
            At(length + (2 * Gap), -Height / 2), At(-width - (2 * Gap), -Height / 2), At(length, above), At(-width, above),
            At(length, below), At(-width, below), At(middle, above + (1.6 * Height)), At(middle, below - (1.6 * Height)),
        };

        // Beside an upright line there may be room for what is written level.
        var level = angle < (Math.PI / 2) - Tolerances.AlmostUpright ? [] : s_shares.SelectMany(share => new[]
        {
            new SheetText(PageLayers.Dim, new SheetPoint(a.X + Gap, a.Y + (share * length) - (Height / 2)), Height, text),
            new SheetText(PageLayers.Dim, new SheetPoint(a.X - Gap - width, a.Y + (share * length) - (Height / 2)), Height, text),
        });
        SheetPoint Own(SheetPoint p) => new(((p.X - a.X) * cos) + ((p.Y - a.Y) * sin), ((p.Y - a.Y) * cos) - ((p.X - a.X) * sin));
        SheetPoint World(double x, double y) => new(a.X + (x * cos) - (y * sin), a.Y + (x * sin) + (y * cos));

        // A figure that had to go away from its line says whose it is; one that is written level stands beside it.
        (SheetPoint From, SheetPoint To)? Leader(SheetText placed)
        {
            if (placed.Turn < angle)
            {
                var box = PageBox.Of(placed);
                var on = new SheetPoint(a.X, Math.Clamp((box.MinY + box.MaxY) / 2, a.Y, Math.Max(a.Y, b.Y)));
                var near = new SheetPoint(
                    Math.Clamp(on.X, box.MinX - Gap, box.MaxX + Gap), Math.Clamp(on.Y, box.MinY - Gap, box.MaxY + Gap));
                return Distance(near, on) > 2 * Height ? (near, on) : null;
            }

            var at = Own(placed.At);
            var nearest = Math.Clamp(at.X + (width / 2), 0, length);
            var (along, up) = (Math.Clamp(nearest, at.X, at.X + width), at.Y > 0 ? at.Y - Gap : at.Y + Height + Gap);
            return Math.Abs(up) > 2 * Height || Math.Abs(along - nearest) > Away
                ? (World(along, up), World(nearest, 0))
                : null;
        }

        var placed = canvas.Label(
            t => Leader(t) is { } line ? canvas.Cost(line.From, line.To) : 0,
            width + Gap <= length ? [.. inside, .. level, .. beside] : [.. level, .. beside, .. inside]);
        if (Leader(placed) is { } drawn)
        {
            canvas.LeaderLine(drawn.From, drawn.To);
        }
    }
}
