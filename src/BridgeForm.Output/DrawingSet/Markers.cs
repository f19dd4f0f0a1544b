using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Signs on drawings: supports, direction of walking, north.</summary>
internal static class Markers
{
    /// <summary>Of a letter's circle, metres.</summary>
    public const double Radius = 0.0028;

    /// <summary>Width of the arrow with the rose, metres.</summary>
    public const double DirectionWidth = 0.062;

    /// <summary>A letter in a circle.</summary>
    public static void Marker(this Canvas canvas, SheetPoint at, string name)
    {
        canvas.Add(new SheetCircle(PageLayers.Frame, at, Radius));
        canvas.Text(PageText.Centered(at.X, at.Y - (PageText.Normal / 2), name, PageText.Normal, bold: true));
    }

    /// <summary>An arrow from A to B, and north, or an empty rose for whoever surveys the site.</summary>
    /// <param name="north">From the way A to B to north, clockwise, radians; null: not known.</param>
    public static void Direction(this Canvas canvas, double x, double y, double? north)
    {
        const double length = 0.022;
        canvas.Line(PageLayers.Cut, x, y, x + length, y);
        canvas.Add(
            new SheetArea(
                PageLayers.Note,
                [new(x + length + 0.003, y), new(x + length - 0.001, y + 0.0012), new(x + length - 0.001, y - 0.0012)], 1));
        canvas.Label(PageText.Left(x + 0.001, y + 0.0012, "walking A to B", PageText.Small));
        const double radius = 0.004;
        var rose = new SheetPoint(x + length + 0.014, y);
        canvas.Add(new SheetCircle(PageLayers.Dim, rose, radius));
        if (north is { } angle)
        {
            North(canvas, rose, radius, -angle);
            return;
        }

        canvas.Line(PageLayers.Dim, rose.X - radius, rose.Y, rose.X + radius, rose.Y);
        canvas.Line(PageLayers.Dim, rose.X, rose.Y - radius, rose.X, rose.Y + radius);
        canvas.Label(PageText.Left(rose.X + 0.0055, y - (PageText.Small / 2), "north: by others", PageText.Small));
    }

    /// <summary>A half-black needle, and the letter beyond its point.</summary>
    private static void North(Canvas canvas, SheetPoint rose, double radius, double angle)
    {
        var (sin, cos) = Elementary.SinCos(angle);
        SheetPoint At(double along, double across) =>
            new(rose.X + (along * cos) - (across * sin), rose.Y + (along * sin) + (across * cos));
        canvas.Add(new SheetArea(PageLayers.Note, [At(radius, 0), At(-radius / 2, radius / 3), At(-radius / 2, 0)], 1));
        canvas.Add(new SheetPolyline(
            PageLayers.Dim,
            [.. new[] { At(radius, 0), At(-radius / 2, radius / 3), At(-radius / 2, -radius / 3) }.Select(p => new SheetVertex(p.X, p.Y))],
            Closed: true));
        var letter = At(radius + PageText.Small, 0);
        canvas.Text(PageText.Centered(letter.X, letter.Y - (PageText.Small / 2), "N", PageText.Small, bold: true));
    }
}
