using BridgeForm.Tests.Output.Dxf;

namespace BridgeForm.Tests.Output.Router;

/// <summary>Measures of closed polylines as a DXF file holds them; independent of what wrote them.</summary>
internal static class Outlines
{
    /// <summary>Area by Green's theorem, arcs of bulges with it, in the file's unit squared.</summary>
    public static double Area(DxfRecord polyline)
    {
        var corners = Corners(polyline);
        var sum = 0.0;
        for (var i = 0; i < corners.Count; i++)
        {
            var (x, y, bulge) = corners[i];
            var (nx, ny, _) = corners[(i + 1) % corners.Count];
            sum += ((x * ny) - (nx * y)) / 2;
            var chord = Math.Sqrt(((nx - x) * (nx - x)) + ((ny - y) * (ny - y)));
            var turn = 4 * Math.Atan(bulge);
            if (turn is not 0)
            {
                var radius = chord / (2 * Math.Sin(turn / 2));
                sum += radius * radius * (turn - Math.Sin(turn)) / 2 * Math.Sign(radius) * Math.Sign(turn);
            }
        }

        return sum;
    }

    /// <summary>Corners with the bulge of the way to the next one.</summary>
    public static List<(double X, double Y, double Bulge)> Corners(DxfRecord polyline)
    {
        var corners = new List<(double X, double Y, double Bulge)>();
        foreach (var (code, value) in polyline.Tags)
        {
            var number = code is 10 or 20 or 42 ? double.Parse(value, System.Globalization.CultureInfo.InvariantCulture) : 0;
            switch (code)
            {
                case 10:
                    corners.Add((number, 0, 0));
                    break;
                case 20:
                    corners[^1] = corners[^1] with { Y = number };
                    break;
                case 42:
                    corners[^1] = corners[^1] with { Bulge = number };
                    break;
            }
        }

        return corners;
    }

    /// <summary>Whether a point lies inside a ring of straight edges by more than a margin: crossings of a ray, after Jordan.</summary>
    public static bool IsDeepInside(
        IReadOnlyList<(double X, double Y, double Bulge)> ring, (double X, double Y, double Bulge) point, double margin)
    {
        var inside = false;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var (dx, dy) = (b.X - a.X, b.Y - a.Y);
            var along = Math.Clamp((((point.X - a.X) * dx) + ((point.Y - a.Y) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
            var (ex, ey) = (point.X - a.X - (along * dx), point.Y - a.Y - (along * dy));
            if (Math.Sqrt((ex * ex) + (ey * ey)) < margin)
            {
                return false;
            }

            inside ^= (a.Y > point.Y) != (b.Y > point.Y) && point.X < a.X + (dx * (point.Y - a.Y) / dy);
        }

        return inside;
    }
}
