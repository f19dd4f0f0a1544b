using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>The lines of a page as straight strokes, to find out which texts they cross.</summary>
/// <param name="Strokes">Ends of the strokes, on the page.</param>
internal sealed record LinesAbout(ImmutableArray<(SheetPoint From, SheetPoint To)> Strokes)
{
    /// <summary>An arc in chords of at most this angle, radians: off by less than a pen's width at the radii of a page.</summary>
    private const double Chord = Math.PI / 36;

    /// <summary>Side of the squares of the page by which strokes are looked up, metres: about a label's height and width.</summary>
    private const double SquareSide = 0.006;

    private Dictionary<(int X, int Y), List<(SheetPoint From, SheetPoint To)>>? _grid;

    /// <summary>No lines.</summary>
    public static LinesAbout None { get; } = new(ImmutableArray<(SheetPoint From, SheetPoint To)>.Empty);

    /// <summary>Lines, outlines, circles and arcs; texts and areas are none.</summary>
    public static LinesAbout Gather(IEnumerable<SheetEntity> entities) => new([.. entities.SelectMany(StrokesOf)]);

    /// <summary>The same with a cross over each shaded area, so that texts keep out of small ones.</summary>
    public static LinesAbout WithAreas(IEnumerable<SheetEntity> entities) => new(
        [.. entities.SelectMany(e => e is SheetArea { Shade: > 0 and < 1 } area ? Crossed(area.Corners) : StrokesOf(e))]);

    /// <summary>A line runs through the text's own, turned box, or nearer to it than a distance in metres.</summary>
    public bool Cross(SheetText text, double near) => Cross(Near(PageBox.Of(text), near), text, near);

    /// <summary>The same of some strokes alone.</summary>
    public static bool Cross(IEnumerable<(SheetPoint From, SheetPoint To)> strokes, SheetText text, double near)
    {
        var (width, (sin, cos)) = (PageFont.Of(text).Width(text.Text, text.Height), Elementary.SinCos(text.Turn));
        var box = new SheetBox(-near, -(PageFont.Descent / 2 * text.Height) - near, width + near, text.Height + near);
        SheetPoint Own(SheetPoint p)
        {
            var (dx, dy) = (p.X - text.At.X, p.Y - text.At.Y);
            return new SheetPoint((dx * cos) + (dy * sin), (dy * cos) - (dx * sin));
        }

        return strokes.Any(s => ViewLines.Clip(Own(s.From), Own(s.To), box) is not null);
    }

    /// <summary>How many lines a straight way meets.</summary>
    public int Crossings(SheetPoint from, SheetPoint to)
    {
        var box = SheetBox.Empty.With(from.X, from.Y).With(to.X, to.Y);
        return Near(box, 0).Distinct().Count(s => Side(from, to, s.From) * Side(from, to, s.To) < 0
            && Side(s.From, s.To, from) * Side(s.From, s.To, to) < 0);
    }

    /// <summary>Twice the area of a triangle, negative where its corners run clockwise.</summary>
    private static double Side(SheetPoint a, SheetPoint b, SheetPoint p) =>
        ((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X));

    /// <summary>Strokes whose squares of the page a box reaches into; some more than once.</summary>
    private IEnumerable<(SheetPoint From, SheetPoint To)> Near(SheetBox box, double near)
    {
        var grid = _grid ??= Sorted();
        for (var x = Square(box.MinX - near); x <= Square(box.MaxX + near); x++)
        {
            for (var y = Square(box.MinY - near); y <= Square(box.MaxY + near); y++)
            {
                foreach (var stroke in grid.GetValueOrDefault((x, y), []))
                {
                    yield return stroke;
                }
            }
        }
    }

    private Dictionary<(int X, int Y), List<(SheetPoint From, SheetPoint To)>> Sorted()
    {
        var grid = new Dictionary<(int X, int Y), List<(SheetPoint From, SheetPoint To)>>();
        foreach (var (from, to) in Strokes)
        {
            var (left, right) = (Square(Math.Min(from.X, to.X)), Square(Math.Max(from.X, to.X)));
            var (low, high) = (Square(Math.Min(from.Y, to.Y)), Square(Math.Max(from.Y, to.Y)));
            for (var x = left; x <= right; x++)
            {
                for (var y = low; y <= high; y++)
                {
                    if (!grid.TryGetValue((x, y), out var list))
                    {
                        grid.Add((x, y), list = []);
                    }

                    list.Add((from, to));
                }
            }
        }

        return grid;
    }

    private static int Square(double x) => (int)Math.Floor(x / SquareSide);

    /// <summary>From a point to the nearest line, metres; infinite where there is none.</summary>
    public double Distance(SheetPoint p) => Strokes.Select(s => ToStroke(p, s.From, s.To)).DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>How far along the way from one point to another it meets the first line, metres; infinite where it meets none.</summary>
    public double FirstAlong(SheetPoint from, SheetPoint to)
    {
        var length = Dimensions.Distance(from, to);
        var (ux, uy) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        var first = double.PositiveInfinity;
        foreach (var (a, b) in Strokes)
        {
            double Across(SheetPoint p) => ((p.Y - from.Y) * ux) - ((p.X - from.X) * uy);
            double Along(SheetPoint p) => ((p.X - from.X) * ux) + ((p.Y - from.Y) * uy);
            var (p, q) = (Across(a), Across(b));
            if (p * q <= 0 && Math.Abs(p - q) > 0)
            {
                var at = Along(a) + (p / (p - q) * (Along(b) - Along(a)));
                first = at >= 0 && at <= length ? Math.Min(first, at) : first;
            }
        }

        return first;
    }

    private static double ToStroke(SheetPoint p, SheetPoint a, SheetPoint b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var square = (dx * dx) + (dy * dy);
        var share = square > 0 ? Math.Clamp((((p.X - a.X) * dx) + ((p.Y - a.Y) * dy)) / square, 0, 1) : 0;
        return Dimensions.Distance(p, new SheetPoint(a.X + (share * dx), a.Y + (share * dy)));
    }

    private static IEnumerable<(SheetPoint From, SheetPoint To)> StrokesOf(SheetEntity entity) => entity switch
    {
        SheetLine line => [(line.From, line.To)],
        SheetPolyline ring => Joined([.. ring.Vertices.Select(v => new SheetPoint(v.X, v.Y))], ring.Closed),
        SheetCircle circle => Joined(Round(circle.Center, circle.Radius, 0, 2 * Math.PI), closed: true),
        SheetArc arc => Joined(Round(arc.Center, arc.Radius, arc.Start, arc.End), closed: false),
        _ => [],
    };

    private static IEnumerable<(SheetPoint From, SheetPoint To)> Crossed(ImmutableArray<SheetPoint> corners) =>
        corners.Select((c, i) => (c, corners[(i + (corners.Length / 2)) % corners.Length]));

    private static IEnumerable<(SheetPoint From, SheetPoint To)> Joined(ImmutableArray<SheetPoint> points, bool closed) =>
        points.Zip(closed ? [.. points.Skip(1), points[0]] : points.Skip(1));

    private static ImmutableArray<SheetPoint> Round(SheetPoint center, double radius, double start, double end)
    {
        var full = end < start ? end + (2 * Math.PI) : end;
        var steps = (int)Math.Ceiling((full - start) / Chord);
        return
        [
            .. Enumerable.Range(0, steps + 1).Select(i => start + ((full - start) * i / Math.Max(1, steps)))
                .Select(a => new SheetPoint(center.X + (radius * Elementary.Cos(a)), center.Y + (radius * Elementary.Sin(a)))),
        ];
    }
}
