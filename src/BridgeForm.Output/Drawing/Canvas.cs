using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>
/// The content of one page while it is drawn. Labels are placed where they touch no other label, and stand over the lines on
/// a white ground, so that no line crosses a figure.
/// </summary>
internal sealed class Canvas(SheetBox bounds, LinesAbout? about = null)
{
    /// <summary>White around a label, metres.</summary>
    private const double Halo = 0.0003;

    /// <summary>A label that finds no room moves up by steps of this, metres.</summary>
    private const double Step = 0.0008;
    private const int MaxSteps = 200;

    /// <summary>Clear space between a label and a line where there is room, metres.</summary>
    private const double Clear = 0.0001;

    private readonly List<SheetEntity> _lines = [];
    private readonly List<SheetEntity> _labels = [];
    private readonly List<SheetBox> _taken = [];

    /// <summary>Room for drawing.</summary>
    public SheetBox Bounds => bounds;

    /// <summary>Lines below, labels above.</summary>
    public ImmutableArray<SheetEntity> Entities => [.. _lines, .. _labels];

    /// <summary>
    /// Draws twice: the first time to learn where all lines come to lie, the second time with the labels clear of them where
    /// there is room.
    /// </summary>
    public static Canvas Twice(SheetBox bounds, Action<Canvas> draw)
    {
        var sketch = new Canvas(bounds);
        draw(sketch);
        var canvas = new Canvas(bounds, LinesAbout.Gather(sketch._lines));
        draw(canvas);
        return canvas;
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

    /// <summary>Puts a label at the first place that is free, of lines too if there is one; failing all, above the first place.</summary>
    /// <returns>Where it came to stand.</returns>
    public SheetText Label(params ReadOnlySpan<SheetText> places)
    {
        if (about is not null)
        {
            foreach (var place in places)
            {
                var inside = Inside(place);
                if (IsFree(inside) && !about.Cross(inside, Clear))
                {
                    return Placed(inside);
                }
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

        var first = Inside(places[0]);

        for (var step = 1; step <= MaxSteps; step++)
        {
            foreach (var sign in (ReadOnlySpan<int>)[1, -1])
            {
                var moved = first with { At = new SheetPoint(first.At.X, first.At.Y + (sign * step * Step)) };
                if (IsFree(moved))
                {
                    return Placed(moved);
                }
            }
        }

        return Placed(first);
    }

    /// <summary>Moved sideways as little as brings it inside the room for drawing.</summary>
    private SheetText Inside(SheetText text)
    {
        var box = PageBox.Of(text);
        var shift = Math.Min(0, bounds.MaxX - (2 * Halo) - box.MaxX) + Math.Max(0, bounds.MinX + (2 * Halo) - box.MinX);
        return text with { At = new SheetPoint(text.At.X + shift, text.At.Y) };
    }

    private SheetText Placed(SheetText text)
    {
        var (width, height) = (PageFont.Of(text).Width(text.Text, text.Height), text.Height);
        var (sin, cos) = Elementary.SinCos(text.Turn);
        SheetPoint At(double along, double up) => new(text.At.X + (along * cos) - (up * sin), text.At.Y + (along * sin) + (up * cos));
        var low = -(PageFont.Descent / 2 * height) - Halo;
        _labels.Add(new SheetArea(
            PageLayers.Note,
            [At(-Halo, low), At(width + Halo, low), At(width + Halo, height + Halo), At(-Halo, height + Halo)],
            0));
        Text(text);
        return text;
    }

    private bool IsFree(SheetText text)
    {
        var box = PageBox.Of(text);
        var wide = new SheetBox(box.MinX - Halo, box.MinY - Halo, box.MaxX + Halo, box.MaxY + Halo);
        return wide.MinX >= bounds.MinX && wide.MaxX <= bounds.MaxX && wide.MinY >= bounds.MinY && wide.MaxY <= bounds.MaxY
            && !_taken.Exists(t => t.Overlaps(wide));
    }
}
