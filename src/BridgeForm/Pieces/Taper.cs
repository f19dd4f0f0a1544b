using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>The taper of a ripped piece, as the saw's operator marks it on the end. Metres and radians.</summary>
/// <param name="Thick">Thickness at the high edge.</param>
/// <param name="Thin">Thickness at the low edge.</param>
/// <param name="Width">From edge to edge.</param>
public sealed record Taper(double Thick, double Thin, double Width)
{
    /// <summary>Tilt of the rip from the wide face.</summary>
    public double Angle => Elementary.Atan2(Thick - Thin, Width);

    /// <summary>The taper of a piece; null when nothing is ripped off it.</summary>
    public static Taper? Measure(Piece piece)
    {
        if (piece.Shape.Rips.IsEmpty || piece.Shape.IsRound)
        {
            return null;
        }

        var (min, max) = piece.Solid.Bounds;
        var middle = (min.Y + max.Y) / 2;
        var low = Height(piece.Solid, v => v.Y < middle);
        var high = Height(piece.Solid, v => v.Y >= middle);
        return new Taper(Math.Max(low, high), Math.Min(low, high), max.Y - min.Y);
    }

    private static double Height(Solid solid, Func<Vector3d, bool> isThere)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (var vertex in solid.Vertices)
        {
            if (isThere(vertex))
            {
                (low, high) = (Math.Min(low, vertex.Z), Math.Max(high, vertex.Z));
            }
        }

        return high - low;
    }
}
