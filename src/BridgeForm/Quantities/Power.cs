namespace BridgeForm.Quantities;

/// <summary>Powers of positive numbers.</summary>
internal static class Power
{
    /// <summary>Whole exponents up to this are multiplied out: a part between √½ and √2 stays far from both ends of the doubles.</summary>
    public const int MostMultiplied = 1000;

    // Beyond these every power of e is infinite or zero.
    private const double Overflow = 720;
    private const double Underflow = -760;

    // A number this near 1, 2⁻⁶⁰, is 1.
    private const double Nothing = 1.0 / (1L << 60);

    // 1/ln 2, and ln 2 in two parts, the first short enough that whole multiples are exact; worked out with mpmath.
    private const double PerLn2 = 1.4426950408889634;
    private const double Ln2 = 0.6931471805598903;
    private const double Ln2Rest = 5.497923018708371e-14;

    // 1/n!, n from 14 down to 2.
    private static readonly double[] s_factorials =
    [
        1.0 / 87178291200, 1.0 / 6227020800, 1.0 / 479001600, 1.0 / 39916800, 1.0 / 3628800, 1.0 / 362880, 1.0 / 40320, 1.0 / 5040,
        1.0 / 720, 1.0 / 120, 1.0 / 24, 1.0 / 6, 1.0 / 2,
    ];

    /// <summary>xⁿ by repeated squares with all digits kept, for finite positive x and n from −1000 to 1000.</summary>
    public static double Whole(double x, int n)
    {
        var more = double.IsSubnormal(x) ? 54 : 0;
        var scaled = x * (1L << more);
        var exponent = Logarithm.Exponent(BitConverter.DoubleToInt64Bits(scaled));
        var (part, product) = (new Twofold(Math.ScaleB(scaled, -exponent), 0), new Twofold(1, 0));
        for (var left = Math.Abs(n); left > 0; left >>= 1)
        {
            product = (left & 1) == 1 ? product * part : product;
            part *= part;
        }

        var power = n < 0 ? Twofold.Quotient(new(1, 0), product) : product;
        return Math.ScaleB(power.Value, (exponent - more) * n);
    }

    /// <summary>xʸ = e^(y·ln x), for finite positive x and finite y.</summary>
    public static double Of(double x, double y)
    {
        var log = Logarithm.Of(x);
        var size = y * log.High;
        return size > Overflow ? double.PositiveInfinity
            : size < Underflow ? 0
            : Math.Abs(size) < Nothing ? 1
            : Exp(log, y);
    }

    // e^(k·ln 2 + r) = 2ᵏ·(1 + r + r²/2 + …): what is left out is below r¹⁵/15!, 2⁻⁶³.
    private static double Exp(Twofold log, double y)
    {
        var x = Twofold.Product(y, log.High);
        var twos = Math.Floor((x.High * PerLn2) + 0.5);
        var rest = Twofold.Sum(x.High - (twos * Ln2), -(twos * Ln2Rest));
        var (r, low) = Twofold.Ordered(rest.High, rest.Low + (x.Low + (y * log.Low)));
        var series = 0.0;
        foreach (var factor in s_factorials)
        {
            series = (series * r) + factor;
        }

        var most = Twofold.Ordered(1, r);
        return Math.ScaleB(most.High + (most.Low + (low + (low * r) + (r * r * series))), (int)twos);
    }
}
