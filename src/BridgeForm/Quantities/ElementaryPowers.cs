namespace BridgeForm.Quantities;

/// <summary>Logarithms and powers.</summary>
public static partial class Elementary
{
    // Beyond this, 2³⁰, one more below the root is nothing.
    private const double Huge = 1 << 30;

    // 1/ln 10, worked out with mpmath (400 binary digits).
    private static readonly Twofold s_perLn10 = new(0.4342944819032518, 1.098319650216765e-17);

    // Every one of them is a double to the last digit.
    private static readonly double[] s_tens =
    [
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
    ];

    /// <summary>The natural logarithm; minus infinity for zero, NaN below.</summary>
    public static double Log(double x) => IsOrdinary(x) ? Logarithm.Of(x).Value : LogOfOthers(x);

    /// <summary>The decimal logarithm; of a power of ten its exponent.</summary>
    public static double Log10(double x) => IsOrdinary(x) ? (Logarithm.Of(x) * s_perLn10).Value : LogOfOthers(x);

    /// <summary>The inverse hyperbolic sine, ln(x + √(x² + 1)).</summary>
    public static double Asinh(double x)
    {
        var size = Math.Abs(x);
        if (!(size >= Tiny && size <= Huge))
        {
            return size < Tiny || !double.IsFinite(x) ? x : Math.CopySign(BeyondHuge(size), x);
        }

        var square = Twofold.Product(size, size);
        var sum = Twofold.Sum(1, square.High);
        var root = Twofold.Root(Twofold.Ordered(sum.High, sum.Low + square.Low));
        var whole = Twofold.Sum(root.High, size);
        return Math.CopySign(Logarithm.Of(new(whole.High, whole.Low + root.Low), new(1, 0)).Value, x);
    }

    /// <summary>The inverse hyperbolic tangent, ½·ln((1 + x)/(1 − x)); infinite at −1 and 1, NaN beyond.</summary>
    public static double Atanh(double x)
    {
        var size = Math.Abs(x);
        return size switch
        {
            < Tiny => x,
            < 1 => Math.CopySign(0.5 * Logarithm.Of(Twofold.Ordered(1, size), Twofold.Ordered(1, -size)).Value, x),
            1 => Math.CopySign(double.PositiveInfinity, x),
            _ => double.NaN,
        };
    }

    /// <summary>xʸ: whole exponents are multiplied out, and others go by the logarithm.</summary>
    public static double Pow(double x, double y)
    {
        if (y is 0 || x is 1)
        {
            return 1;
        }

        if (double.IsNaN(x) || double.IsNaN(y))
        {
            return double.NaN;
        }

        if (double.IsInfinity(y))
        {
            return Math.Abs(x) is 1 ? 1 : Math.Abs(x) > 1 == y > 0 ? double.PositiveInfinity : 0;
        }

        var isWhole = Math.Floor(y) <= y && Math.Floor(y) >= y;
        var size = PowerOfSize(Math.Abs(x), y, isWhole);
        return !double.IsNegative(x) ? size
            : !isWhole ? x is 0 || double.IsInfinity(x) ? size : double.NaN
            : double.IsOddInteger(y) ? -size : size;
    }

    /// <summary>10ⁿ, rounded once: what people's decimals are worth.</summary>
    public static double PowerOfTen(int n) => Math.Abs(n) >= s_tens.Length ? Pow(10, n) : n < 0 ? 1 / s_tens[-n] : s_tens[n];

    private static double PowerOfSize(double size, double y, bool isWhole) =>
        size is 0 ? y > 0 ? 0 : double.PositiveInfinity
        : double.IsInfinity(size) ? y > 0 ? size : 0
        : isWhole && Math.Abs(y) <= Power.MostMultiplied ? Power.Whole(size, (int)y)
        : Power.Of(size, y);

    private static double BeyondHuge(double size)
    {
        var (log, two) = (Logarithm.Of(size), Logarithm.Of(2));
        return log.High + (two.High + (log.Low + two.Low));
    }

    private static bool IsOrdinary(double x) => x > 0 && double.IsFinite(x);

    private static double LogOfOthers(double x) => x is 0 ? double.NegativeInfinity : x < 0 ? double.NaN : x;
}
