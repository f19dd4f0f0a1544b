namespace BridgeForm.Quantities;

/// <summary>The angles.</summary>
public static partial class Elementary
{
    // A ratio below this, 2⁻³⁰, is its own arc tangent to the last digit.
    private const double Narrow = 1.0 / (1 << 30);

    /// <summary>The arc tangent, from −π/2 to π/2.</summary>
    public static double Atan(double x)
    {
        var size = Math.Abs(x);
        return Math.CopySign(
            size switch
            {
                < Narrow => size,
                <= 1 => ArcTangent.OfRatio(new(size, 0), new(1, 0), size).Value,
                < 1 / Narrow => From(ArcTangent.HalfPi, ArcTangent.OfRatio(new(1, 0), new(size, 0), 1 / size)),
                _ => From(ArcTangent.HalfPi, new(1 / size, 0)),
            },
            x);
    }

    /// <summary>The arc sine, from −π/2 to π/2; NaN beyond −1 and 1.</summary>
    public static double Asin(double x)
    {
        var size = Math.Abs(x);
        if (!(size >= Tiny && size <= 1))
        {
            return size < Tiny ? x : double.NaN;
        }

        var square = Twofold.Product(size, size);
        var rest = Twofold.Ordered(1, -square.High);
        var cos = Twofold.Root(Twofold.Ordered(rest.High, rest.Low - square.Low));
        return Math.CopySign(
            size <= cos.High
                ? ArcTangent.OfRatio(new(size, 0), cos, size / cos.High).Value
                : From(ArcTangent.HalfPi, ArcTangent.OfRatio(cos, new(size, 0), cos.High / size)),
            x);
    }

    /// <summary>The direction of (x, y) from the x axis, from −π to π.</summary>
    public static double Atan2(double y, double x)
    {
        if (double.IsNaN(x) || double.IsNaN(y))
        {
            return double.NaN;
        }

        var (up, along) = (Math.Abs(y), Math.Abs(x));
        if (double.IsInfinity(up) || double.IsInfinity(along))
        {
            (up, along) = (double.IsInfinity(up) ? 1 : 0, double.IsInfinity(along) ? 1 : 0);
        }

        return Math.CopySign(Direction(up, along, double.IsNegative(x)), y);
    }

    private static double Direction(double up, double along, bool backwards)
    {
        if (up <= along)
        {
            var angle = Ratio(up, along);
            return backwards ? From(ArcTangent.Pi, angle) : angle.Value;
        }

        // π/2 + a is π/2 − (−a).
        var steep = Ratio(along, up);
        return From(ArcTangent.HalfPi, backwards ? new(-steep.High, -steep.Low) : steep);
    }

    private static Twofold Ratio(double least, double most)
    {
        if (least is 0)
        {
            return default;
        }

        var ratio = least / most;
        if (ratio < Narrow)
        {
            return new(ratio, 0);
        }

        var scale = OffTheEnds(most);
        return ArcTangent.OfRatio(new(least * scale, 0), new(most * scale, 0), ratio);
    }

    private static double From(Twofold whole, Twofold angle)
    {
        var rest = Twofold.Ordered(whole.High, -angle.High);
        return rest.High + (rest.Low + (whole.Low - angle.Low));
    }
}
