using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>
/// The content of one page while it is drawn. Labels are placed where they touch no other label and no line; one that finds no such
/// place stands on a white ground.
/// </summary>
internal sealed class Canvas(SheetBox bounds, LinesAbout? about = null, IReadOnlyList<SheetPoint>? named = null)
{
    /// <summary>White around a label, metres.</summary>
    private const double Halo = 0.0003;

    /// <summary>A label that finds no room moves up by steps of this, metres.</summary>
    private const double Step = 0.0010;
    private const int MaxSteps = 90;

    /// <summary>What a line crossed by a leader costs, metres.</summary>
    private const double CrossingCost = 0.002;

    private const int MostRounds = 8;

    /// <summary>So many directions are tried about a place.</summary>
    private const int Ways = 16;

    /// <summary>Clear space between a label and a line, metres: where there is room, and at the least.</summary>
    private static readonly double[] s_clear = [0.0006, 0.0001];

    private readonly List<SheetEntity> _lines = [];
    private readonly List<SheetEntity> _labels = [];
    private readonly List<SheetBox> _taken = [];
    private readonly List<(SheetPoint From, SheetPoint To)> _leaders = [];

    /// <summary>Room for drawing.</summary>
    public SheetBox Bounds => bounds;

    /// <summary>Lines below, labels above.</summary>
    public ImmutableArray<SheetEntity> Entities => [.. _lines, .. _labels];

    /// <summary>
    /// Draws several times: the first time to learn where all lines come to lie, then with the labels clear of them; where labels
    /// move, their leaders do too, so it is drawn until no line crosses a text, or the best of several is taken.
    /// </summary>
    public static Canvas Twice(SheetBox bounds, Action<Canvas> draw)
    {
        var best = new Canvas(bounds);
        draw(best);
        var (last, fewest) = (best, int.MaxValue);
        for (var round = 0; round < MostRounds && fewest > 0; round++)
        {
            // Later rounds leave out where leaders ran before: labels that keep clear of those may be what moves them.
            var lines = round < MostRounds / 2 ? last._lines : [.. last._lines.Where(l => !last.IsLeader(l))];
            var next = new Canvas(bounds, LinesAbout.WithAreas(lines), [.. last._leaders.Select(l => l.From)]);
            draw(next);
            var drawn = LinesAbout.Gather(next._lines);
            var crossed = next._labels.OfType<SheetText>().Count(t => drawn.Cross(t, 0));
            (best, fewest, last) = crossed < fewest ? (next, crossed, next) : (best, fewest, next);
        }

        return best;
    }

    /// <summary>Adds anything but text.</summary>
    public void Add(SheetEntity entity) => _lines.Add(entity);

    /// <summary>A straight line.</summary>
    public void Line(string layer, SheetPoint from, SheetPoint to) => _lines.Add(new SheetLine(layer, from, to));

    /// <summary>A straight line.</summary>
    public void Line(string layer, double x1, double y1, double x2, double y2) =>
        Line(layer, new SheetPoint(x1, y1), new SheetPoint(x2, y2));

    /// <summary>Puts a text exactly where it is; an empty one is none.</summary>
    public void Text(SheetText text)
    {
        if (text.Text.Length == 0)
        {
            return;
        }

        _labels.Add(text);
        _taken.Add(PageBox.Of(text));
    }

    /// <summary>Lines of text below each other from a top edge.</summary>
    /// <returns>Where the next thing may begin.</returns>
    public double Column(double x, double top, IEnumerable<string> lines, double height, bool bold = false, string layer = PageLayers.Note)
    {
        var count = 0;
        foreach (var text in PageText.Column(x, top, lines, height, bold, layer).Cast<SheetText>())
        {
            Text(text);
            count++;
        }

        return top - PageText.HeightOf(count, height);
    }

    /// <summary>Keeps labels out of a box.</summary>
    public void Keep(SheetBox box) => _taken.Add(box);

    /// <summary>
    /// Puts a label at the first place that is free of labels and lines, else at the nearest such place about the first one; where the
    /// page has none, where it touches no other label.
    /// </summary>
    /// <returns>Where it came to stand.</returns>
    public SheetText Label(params ReadOnlySpan<SheetText> places) => Label(_ => 0, places);

    /// <summary>The same where places differ in something else too, such as the leader to them: the cheapest of several.</summary>
    /// <param name="cost">In metres; infinite for a place that will not do.</param>
    public SheetText Label(Func<SheetText, double> cost, params ReadOnlySpan<SheetText> places)
    {
        var first = Inside(places[0]);
        foreach (var space in about is null ? s_clear[..1] : s_clear)
        {
            if (Cheapest(space, cost, places) is { } found)
            {
                return Placed(found);
            }
        }

        foreach (var place in places)
        {
            var inside = Inside(place);
            if (IsFree(inside))
            {
                return Placed(inside);
            }
        }

        return Placed(Around(first).FirstOrDefault(IsFree) ?? first);
    }

    /// <summary>The cheapest of the first places that are so far clear of all lines; null where none is.</summary>
    private SheetText? Cheapest(double space, Func<SheetText, double> cost, ReadOnlySpan<SheetText> places)
    {
        const int looked = 24;
        var near = about is null ? [] : Around(Inside(places[0]));
        var clear = new List<(SheetText Place, double Cost)>();
        foreach (var place in (IEnumerable<SheetText>)[.. places, .. near])
        {
            var inside = clear.Count < places.Length ? Inside(place) : place;
            if (!IsClear(inside, space) || cost(inside) is not (< double.PositiveInfinity and var price))
            {
                continue;
            }

            if (!(price > 0))
            {
                return inside;
            }

            clear.Add((inside, price));
            if (clear.Count >= looked)
            {
                break;
            }
        }

        return clear.Count > 0 ? clear.MinBy(c => c.Cost).Place : null;
    }

    /// <summary>
    /// What a leader costs: its length, and as much again for each line it crosses as a label is high; infinite where it would run
    /// through a label.
    /// </summary>
    public double Cost(SheetPoint from, SheetPoint to) => _taken.Exists(t => ViewLines.Clip(from, to, t) is not null)
        ? double.PositiveInfinity
        : Dimensions.Distance(from, to) + (CrossingCost * (about?.Crossings(from, to) ?? 0));

    /// <summary>Where a leader from a label to what it names begins, beside the label; null where it needs none, being near.</summary>
    public static SheetPoint? Leading(SheetText placed, SheetPoint at, double near)
    {
        const double beside = 0.0006;
        var box = PageBox.Of(placed);
        var from = new SheetPoint(
            Math.Clamp(at.X, box.MinX - beside, box.MaxX + beside), Math.Clamp(at.Y, box.MinY - beside, box.MaxY + beside));
        return Dimensions.Distance(from, at) > near ? from : null;
    }

    /// <summary>Places about one, the nearest first.</summary>
    private static IEnumerable<SheetText> Around(SheetText text)
    {
        for (var ring = 1; ring <= MaxSteps; ring++)
        {
            for (var way = 0; way < Ways; way++)
            {
                // Upwards first, then to both sides, downwards last.
                var (sin, cos) = Elementary.SinCos((Math.PI / 2) + ((way % 2 == 0 ? 1 : -1) * ((way + 1) / 2) * 2 * Math.PI / Ways));
                yield return text with { At = new SheetPoint(text.At.X + (ring * Step * cos), text.At.Y + (ring * Step * sin)) };
            }
        }
    }

    private bool IsClear(SheetText text, double space) =>
        IsFree(text) && about?.Cross(text, space) is not true && !LinesAbout.Cross(_leaders, text, space);

    /// <summary>A line from a label to what it names: labels placed after it keep clear of it.</summary>
    public void LeaderLine(SheetPoint from, SheetPoint to)
    {
        Line(PageLayers.Dim, from, to);
        _leaders.Add((from, to));
    }

    private bool IsLeader(SheetEntity entity) => entity is SheetLine line && _leaders.Contains((line.From, line.To));

    /// <summary>Moved sideways as little as brings it inside the room for drawing.</summary>
    private SheetText Inside(SheetText text)
    {
        var box = PageBox.Of(text);
        var shift = Math.Min(0, bounds.MaxX - (2 * Halo) - box.MaxX) + Math.Max(0, bounds.MinX + (2 * Halo) - box.MinX);
        return text with { At = new SheetPoint(text.At.X + shift, text.At.Y) };
    }

    private SheetText Placed(SheetText text)
    {
        if (about is null || about.Cross(text, 0))
        {
            _labels.Add(Ground(text));
        }

        Text(text);
        return text;
    }

    private static SheetArea Ground(SheetText text)
    {
        var (width, height) = (PageFont.Of(text).Width(text.Text, text.Height), text.Height);
        var (sin, cos) = Elementary.SinCos(text.Turn);
        SheetPoint At(double along, double up) => new(text.At.X + (along * cos) - (up * sin), text.At.Y + (along * sin) + (up * cos));
        var low = -(PageFont.Descent / 2 * height) - Halo;
        return new SheetArea(
            PageLayers.Note,
            [At(-Halo, low), At(width + Halo, low), At(width + Halo, height + Halo), At(-Halo, height + Halo)],
            0);
    }

    /// <summary>A label on what another one names would stand in the way of that one's leader.</summary>
    private bool Covers(SheetBox box) => named is { } points
        && points.Any(p => p.X > box.MinX && p.X < box.MaxX && p.Y > box.MinY && p.Y < box.MaxY);

    /// <summary>Free of labels and lines: room for what is not moved about.</summary>
    public bool HasRoom(SheetBox box) =>
        !_taken.Exists(t => t.Overlaps(box)) && about?.Strokes.Any(s => ViewLines.Clip(s.From, s.To, box) is not null) is not true;

    private bool IsFree(SheetText text)
    {
        var box = PageBox.Of(text);
        var wide = new SheetBox(box.MinX - Halo, box.MinY - Halo, box.MaxX + Halo, box.MaxY + Halo);
        return wide.MinX >= bounds.MinX && wide.MaxX <= bounds.MaxX && wide.MinY >= bounds.MinY && wide.MaxY <= bounds.MaxY
            && !_taken.Exists(t => t.Overlaps(wide)) && !Covers(wide);
    }
}
