namespace BridgeForm.Output.Drawing;

/// <summary>The arc of a polyline's bulge as a circle's part.</summary>
/// <param name="Center">Centre of the circle.</param>
/// <param name="Radius">Its radius, metres.</param>
/// <param name="Start">Direction of the first corner from the centre, radians from +X.</param>
/// <param name="Sweep">Turn from the first corner to the second, radians; positive to the left.</param>
internal readonly record struct BulgeArc(SheetPoint Center, double Radius, double Start, double Sweep)
{
    /// <summary>A straight line has a bulge of zero, written as such.</summary>
    public static bool IsArc(double bulge) => bulge is < 0 or > 0;

    /// <summary>
    /// The arc of a bulge b = tan(φ/4): with chord c the centre lies c·(1 − b²)/(4b) to the chord's left of its middle, and the
    /// radius is c·(1 + b²)/(4|b|).
    /// </summary>
    public static BulgeArc Between(SheetVertex from, SheetVertex to)
    {
        var (dx, dy, b) = (to.X - from.X, to.Y - from.Y, from.Bulge);
        var left = (1 - (b * b)) / (4 * b);
        var center = new SheetPoint(((from.X + to.X) / 2) - (left * dy), ((from.Y + to.Y) / 2) + (left * dx));
        var radius = Math.Sqrt((dx * dx) + (dy * dy)) * (1 + (b * b)) / (4 * Math.Abs(b));
        return new BulgeArc(center, radius, Math.Atan2(from.Y - center.Y, from.X - center.X), 4 * Math.Atan(b));
    }
}
