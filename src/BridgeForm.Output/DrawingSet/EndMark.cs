using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A support's letter beside a picture of the bridge, where nothing is drawn.</summary>
internal static class EndMark
{
    /// <summary>White between the letter's circle and any line, metres.</summary>
    private const double Clear = 0.0015;

    /// <summary>A leader ends so far from the line it leads to, metres.</summary>
    private const double Short = 0.0006;

    /// <summary>A shorter leader is none, metres.</summary>
    private const double LeastLeader = 0.002;

    private const double Nearest = 0.006;
    private const double Farthest = 0.090;
    private const double Step = 0.001;

    /// <summary>Turns away from the straight way out that are tried, radians.</summary>
    private static readonly double[] Turns = [0, -Math.PI / 6, Math.PI / 6, -Math.PI / 3, Math.PI / 3, -Math.PI / 2, Math.PI / 2];

    /// <summary>
    /// Puts the letter at the nearest clear place, straight out from the support before to either side, with a leader that
    /// stops at the first line of the drawing.
    /// </summary>
    /// <param name="lines">What is drawn, on the page.</param>
    /// <param name="room">The letter stays inside.</param>
    /// <param name="support">The support's point on the page.</param>
    /// <param name="outward">Direction on the page away from the bridge, radians.</param>
    public static void Draw(Canvas canvas, LinesAbout lines, SheetBox room, SheetPoint support, double outward, string name)
    {
        for (var reach = Nearest; reach <= Farthest; reach += Step)
        {
            foreach (var turn in Turns)
            {
                var (sin, cos) = Math.SinCos(outward + turn);
                var at = new SheetPoint(support.X + (reach * cos), support.Y + (reach * sin));
                if (IsInside(room, at) && lines.Distance(at) > Markers.Radius + Clear)
                {
                    canvas.Marker(at, name);
                    Leader(canvas, lines, at, support);
                    return;
                }
            }
        }
    }

    private static bool IsInside(SheetBox room, SheetPoint at) =>
        at.X - Markers.Radius >= room.MinX && at.X + Markers.Radius <= room.MaxX
        && at.Y - Markers.Radius >= room.MinY && at.Y + Markers.Radius <= room.MaxY;

    private static void Leader(Canvas canvas, LinesAbout lines, SheetPoint at, SheetPoint support)
    {
        var length = Dimensions.Distance(at, support);
        var (ux, uy) = ((support.X - at.X) / length, (support.Y - at.Y) / length);
        SheetPoint On(double way) => new(at.X + (way * ux), at.Y + (way * uy));
        var end = Math.Min(length, lines.FirstAlong(at, support) - Short);
        if (end - Markers.Radius >= LeastLeader)
        {
            canvas.Line(PageLayers.Dim, On(Markers.Radius), On(end));
        }
    }
}
