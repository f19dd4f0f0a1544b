namespace BridgeForm.Solids;

/// <summary>Whether the volume of a drilled stick is that of the stick less that of its holes.</summary>
internal static class LooseHoles
{
    // Corners of the prism that stands for a hole stand 0.3 % of the radius outside the circle (StockCutters.HoleSides).
    private const double Corner = 1.01;

    /// <summary>
    /// Every hole lies in whole wood: it meets no end, side, rip, channel or other hole. Judged by boxes around them, so that a
    /// hole that passes close by another thing may be taken to meet it, never the other way round.
    /// </summary>
    public static bool Any(CutStock stock)
    {
        if (!stock.Rips.IsEmpty)
        {
            return false;
        }

        for (var i = 0; i < stock.Holes.Length; i++)
        {
            var box = Around(stock, stock.Holes[i]);
            if (!IsWithin(box, stock) || MeetsChannel(box, stock))
            {
                return false;
            }

            for (var k = 0; k < i; k++)
            {
                if (Meet(box, Around(stock, stock.Holes[k])))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>A box that holds the hole's prism.</summary>
    internal static (Vector3d Low, Vector3d High) Around(CutStock stock, Hole hole)
    {
        var (entry, bottom) = stock.HoleAxis(hole);
        var radius = hole.Diameter / 2 * Corner;
        var around = hole.Face is StockFace.MinusY or StockFace.PlusY ? new Vector3d(radius, 0, radius) : new Vector3d(radius, radius, 0);
        return (Least(entry, bottom) - around, -Least(-entry, -bottom) + around);
    }

    private static Vector3d Least(Vector3d a, Vector3d b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static bool IsWithin((Vector3d Low, Vector3d High) box, CutStock stock)
    {
        if (box.Low.Y < -stock.Width / 2 || box.High.Y > stock.Width / 2 || box.Low.Z < -stock.Thickness / 2
            || box.High.Z > stock.Thickness / 2)
        {
            return false;
        }

        foreach (var y in (ReadOnlySpan<double>)[box.Low.Y, box.High.Y])
        {
            foreach (var z in (ReadOnlySpan<double>)[box.Low.Z, box.High.Z])
            {
                if (!(stock.Near.XAt(y, z) < box.Low.X && box.High.X < stock.Far.XAt(y, z)))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static bool MeetsChannel((Vector3d Low, Vector3d High) box, CutStock stock)
    {
        foreach (var channel in stock.Channels)
        {
            if (box.Low.X <= channel.Center + (channel.Width / 2) && box.High.X >= channel.Center - (channel.Width / 2))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Meet((Vector3d Low, Vector3d High) a, (Vector3d Low, Vector3d High) b) =>
        a.Low.X <= b.High.X && b.Low.X <= a.High.X
        && a.Low.Y <= b.High.Y && b.Low.Y <= a.High.Y
        && a.Low.Z <= b.High.Z && b.Low.Z <= a.High.Z;
}
