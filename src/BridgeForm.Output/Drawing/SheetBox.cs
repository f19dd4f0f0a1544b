using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>An upright box of the page, metres.</summary>
public readonly record struct SheetBox(double MinX, double MinY, double MaxX, double MaxY)
{
    /// <summary>No box at all: any union with it gives the other.</summary>
    public static SheetBox Empty => new(
        double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>Contains nothing, not even a point.</summary>
    public bool IsEmpty => MaxX < MinX || MaxY < MinY;

    /// <summary>The smallest box around both.</summary>
    public SheetBox Union(SheetBox other) => new(
        Math.Min(MinX, other.MinX), Math.Min(MinY, other.MinY), Math.Max(MaxX, other.MaxX), Math.Max(MaxY, other.MaxY));

    /// <summary>The smallest box around this and a point.</summary>
    public SheetBox With(double x, double y) => Union(new SheetBox(x, y, x, y));

    /// <summary>The two boxes share more than an edge.</summary>
    public bool Overlaps(SheetBox other) =>
        MinX < other.MaxX && other.MinX < MaxX && MinY < other.MaxY && other.MinY < MaxY;
}

/// <summary>Boxes around single entities.</summary>
internal static class EntityBox
{
    /// <summary>The smallest upright box around an entity.</summary>
    public static SheetBox Of(SheetEntity entity) => entity switch
    {
        SheetLine line => SheetBox.Empty.With(line.From.X, line.From.Y).With(line.To.X, line.To.Y),
        SheetPolyline polyline => Of(polyline),
        SheetCircle circle => Around(circle.Center, circle.Radius),
        SheetArc arc => Of(arc.Center, arc.Radius, arc.Start, arc.End),
        SheetText text => new SheetBox(
            text.At.X,
            text.At.Y - (SheetText.Descent * text.Height),
            text.At.X + text.Width,
            text.At.Y + text.Height),
        SheetArea area => area.Corners.Aggregate(SheetBox.Empty, (box, p) => box.With(p.X, p.Y)),
        SheetWindow window => SheetBox.Empty.With(window.At.X, window.At.Y).With(
            window.At.X + window.Window.MaxX - window.Window.MinX, window.At.Y + window.Window.MaxY - window.Window.MinY),
        SheetDimension dimension => DimensionLines.Draw(dimension)
            .Aggregate(SheetBox.Empty, (box, part) => box.Union(Of(part))),
        _ => throw new NotSupportedException(entity.GetType().Name),
    };

    private static SheetBox Of(SheetPolyline polyline)
    {
        var box = SheetBox.Empty;
        var count = polyline.Vertices.Length;
        for (var i = 0; i < count; i++)
        {
            var from = polyline.Vertices[i];
            box = box.With(from.X, from.Y);
            if (BulgeArc.IsArc(from.Bulge) && (polyline.Closed || i < count - 1))
            {
                box = box.Union(OfBulge(from, polyline.Vertices[(i + 1) % count]));
            }
        }

        return box;
    }

    private static SheetBox OfBulge(SheetVertex from, SheetVertex to)
    {
        var arc = BulgeArc.Between(from, to);
        return arc.Sweep > 0
            ? Of(arc.Center, arc.Radius, arc.Start, arc.Start + arc.Sweep)
            : Of(arc.Center, arc.Radius, arc.Start + arc.Sweep, arc.Start);
    }

    private static SheetBox Of(SheetPoint center, double radius, double start, double end)
    {
        var turn = Turn(end - start);
        var box = At(At(SheetBox.Empty, center, radius, start), center, radius, end);
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var angle = quarter * Math.PI / 2;
            box = Turn(angle - start) < turn ? At(box, center, radius, angle) : box;
        }

        return box;
    }

    private static double Turn(double angle) => angle - (Math.Tau * Math.Floor(angle / Math.Tau));

    private static SheetBox At(SheetBox box, SheetPoint center, double radius, double angle) =>
        box.With(center.X + (radius * Elementary.Cos(angle)), center.Y + (radius * Elementary.Sin(angle)));

    private static SheetBox Around(SheetPoint c, double r) => new(c.X - r, c.Y - r, c.X + r, c.Y + r);
}

/// <summary>Boxes around what is drawn on a printed page, with texts as wide as the page's font sets them.</summary>
internal static class PageBox
{
    /// <summary>The smallest upright box around an entity.</summary>
    public static SheetBox Of(SheetEntity entity) => entity switch
    {
        SheetText text => Of(text),
        SheetDimension dimension => Of(DimensionLines.Turned(dimension)),
        _ => EntityBox.Of(entity),
    };

    /// <summary>The smallest upright box around entities.</summary>
    public static SheetBox Of(IEnumerable<SheetEntity> entities) =>
        entities.Aggregate(SheetBox.Empty, (box, entity) => box.Union(Of(entity)));

    private static SheetBox Of(SheetText text)
    {
        var width = PageFont.Of(text).Width(text.Text, text.Height);
        var (sin, cos) = Elementary.SinCos(text.Turn);
        var box = SheetBox.Empty;
        foreach (var along in (ReadOnlySpan<double>)[0, width])
        {
            foreach (var up in (ReadOnlySpan<double>)[-PageFont.Descent * text.Height, text.Height])
            {
                box = box.With(text.At.X + (along * cos) - (up * sin), text.At.Y + (along * sin) + (up * cos));
            }
        }

        return box;
    }
}
