namespace BridgeForm.Output.Drawing;

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
        SheetDimension dimension => DimensionLines.Of(dimension)
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
        box.With(center.X + (radius * Math.Cos(angle)), center.Y + (radius * Math.Sin(angle)));

    private static SheetBox Around(SheetPoint c, double r) => new(c.X - r, c.Y - r, c.X + r, c.Y + r);
}
