namespace BridgeForm.Solids;

/// <summary>What can be told of a cut stick without building its solid.</summary>
public static class CutStockMeasures
{
    /// <summary>
    /// Range of X between the long points of the two ends, metres: the blank, as far as only the two end planes cut it.
    /// </summary>
    public static (double Near, double Far) LengthRange(this CutStock stock)
    {
        double near = double.PositiveInfinity, far = double.NegativeInfinity;
        foreach (var y in (ReadOnlySpan<double>)[-stock.Width / 2, stock.Width / 2])
        {
            foreach (var z in (ReadOnlySpan<double>)[-stock.Thickness / 2, stock.Thickness / 2])
            {
                near = Math.Min(near, stock.Near.XAt(y, z));
                far = Math.Max(far, stock.Far.XAt(y, z));
            }
        }

        return (near, far);
    }

    /// <summary>X where a plane that is not parallel to X meets the line (y, z), metres.</summary>
    public static double XAt(this Plane plane, double y, double z) =>
        (plane.Offset - (plane.Normal.Y * y) - (plane.Normal.Z * z)) / plane.Normal.X;

    /// <summary>Whether only its two end planes cut it, and these do not meet inside the section: a plain hexahedron.</summary>
    public static bool IsPlainPrism(this CutStock stock)
    {
        if (!stock.Rips.IsEmpty || !stock.Channels.IsEmpty)
        {
            return false;
        }

        foreach (var y in (ReadOnlySpan<double>)[-stock.Width / 2, stock.Width / 2])
        {
            foreach (var z in (ReadOnlySpan<double>)[-stock.Thickness / 2, stock.Thickness / 2])
            {
                if (!(stock.Far.XAt(y, z) - stock.Near.XAt(y, z) > ShortestPrism))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Where a hole's axis enters the wood and where it ends, in the piece's axes.</summary>
    public static (Vector3d Entry, Vector3d Bottom) HoleAxis(this CutStock stock, Hole hole)
    {
        var onY = hole.Face is StockFace.MinusY or StockFace.PlusY;
        var sign = hole.Face is StockFace.PlusY or StockFace.PlusZ ? 1 : -1;
        var size = onY ? stock.Width : stock.Thickness;
        var at = sign * size / 2;
        var end = at - (sign * (hole.Depth ?? size));
        return onY
            ? (new Vector3d(hole.X, at, hole.Across), new Vector3d(hole.X, end, hole.Across))
            : (new Vector3d(hole.X, hole.Across, at), new Vector3d(hole.X, hole.Across, end));
    }

    /// <summary>The same stick moved along its length, metres.</summary>
    public static CutStock ShiftedAlong(this CutStock stock, double x)
    {
        Plane Moved(Plane plane) => plane with { Offset = plane.Offset + (plane.Normal.X * x) };
        return stock with
        {
            Near = Moved(stock.Near),
            Far = Moved(stock.Far),
            Rips = [.. stock.Rips.Select(Moved)],
            Channels = [.. stock.Channels.Select(c => c with { Center = c.Center + x })],
            Holes = [.. stock.Holes.Select(h => h with { X = h.X + x })],
        };
    }

    // A stick shorter than a tenth of a millimetre along any edge is none: its ends are taken to meet.
    private const double ShortestPrism = 1e-4;
}
