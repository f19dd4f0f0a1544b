using BridgeForm.Output.Drawing;

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

    /// <summary>An arrow from A to B, and an empty rose for whoever surveys the site.</summary>
    public static void Direction(this Canvas canvas, double x, double y)
    {
        const double length = 0.022;
        canvas.Line(PageLayers.Cut, x, y, x + length, y);
        canvas.Add(new SheetArea(PageLayers.Note, [new(x + length + 0.003, y), new(x + length - 0.001, y + 0.0012), new(x + length - 0.001, y - 0.0012)], 1));
        canvas.Label(PageText.Left(x + 0.001, y + 0.0012, "walking A to B", PageText.Small));
        var rose = new SheetPoint(x + length + 0.014, y);
        canvas.Add(new SheetCircle(PageLayers.Dim, rose, 0.004));
        canvas.Line(PageLayers.Dim, rose.X - 0.004, rose.Y, rose.X + 0.004, rose.Y);
        canvas.Line(PageLayers.Dim, rose.X, rose.Y - 0.004, rose.X, rose.Y + 0.004);
        canvas.Label(PageText.Left(rose.X + 0.0055, y - (PageText.Small / 2), "north: by others", PageText.Small));
    }
}
