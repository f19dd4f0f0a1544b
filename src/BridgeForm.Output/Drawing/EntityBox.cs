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
            if (IsArc(from.Bulge) && (polyline.Closed || i < count - 1))
            {
                box = box.Union(OfBulge(from, polyline.Vertices[(i + 1) % count]));
            }
        }

        return box;
    }

    private static bool IsArc(double bulge) => bulge is < 0 or > 0;

    /// <summary>
    /// Box of the arc of a bulge b = tan(φ/4): with chord c the centre lies c·(1 − b²)/(4b) to the chord's left of its
    /// middle, and the radius is c·(1 + b²)/(4|b|).
    /// </summary>
    private static SheetBox OfBulge(SheetVertex from, SheetVertex to)
    {
        var (dx, dy, b) = (to.X - from.X, to.Y - from.Y, from.Bulge);
        var left = (1 - (b * b)) / (4 * b);
        var center = new SheetPoint(((from.X + to.X) / 2) - (left * dy), ((from.Y + to.Y) / 2) + (left * dx));
        var radius = Math.Sqrt((dx * dx) + (dy * dy)) * (1 + (b * b)) / (4 * Math.Abs(b));
        var start = Math.Atan2(from.Y - center.Y, from.X - center.X);
        var end = Math.Atan2(to.Y - center.Y, to.X - center.X);
        return b > 0 ? Of(center, radius, start, end) : Of(center, radius, end, start);
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
