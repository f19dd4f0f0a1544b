namespace BridgeForm.Quantities;

/// <summary>
/// Sines, logarithms and their like, of sums, products, quotients and square roots alone. IEEE 754 says to the last digit what
/// these give, and says nothing of sines: <see cref="Math"/> asks each machine's own C library, and no two of them agree. What
/// stands here gives the same bits on every processor, and in a browser. Angles are radians.
/// </summary>
/// <remarks>
/// Errors in steps of the last digit, the largest of some ten thousand values each against mpmath: atan, atan2, asin, atanh, log and
/// log10 0.50, hypot 0.51 (0.72 among subnormals), asinh 0.52, sin, cos and pow 0.60, tan 0.69.
/// Zeros keep their signs; infinities, NaN and quadrants are those of <see cref="Math"/> (ISO C, annex F).
/// </remarks>
public static partial class Elementary
{
    // Below this, 2⁻²⁷, sine, tangent and their inverses differ from their argument by less than half of its last digit.
    private const double Tiny = 1.0 / (1 << 27);

    private const double Nothing = 1.0 / (1L << 60);

    private static readonly double s_down = Math.ScaleB(1, -600);
    private static readonly double s_up = Math.ScaleB(1, 600);

    /// <summary>The sine.</summary>
    public static double Sin(double x) => Math.Abs(x) < Tiny ? x : Wave(QuarterTurns.Of(x), 0).Value;

    /// <summary>The cosine.</summary>
    public static double Cos(double x) => Wave(QuarterTurns.Of(x), 1).Value;

    /// <summary>Both, the same as one by one.</summary>
    public static (double Sin, double Cos) SinCos(double x)
    {
        var turned = QuarterTurns.Of(x);
        return (Math.Abs(x) < Tiny ? x : Wave(turned, 0).Value, Wave(turned, 1).Value);
    }

    /// <summary>The tangent.</summary>
    public static double Tan(double x)
    {
        if (Math.Abs(x) < Tiny)
        {
            return x;
        }

        var turned = QuarterTurns.Of(x);
        var (sin, cos) = (Wave(turned, 0), Wave(turned, 1));
        return Twofold.Quotient(Twofold.Ordered(sin.High, sin.Low), Twofold.Ordered(cos.High, cos.Low)).Value;
    }

    /// <summary>√(a² + b²), without overflow on the way.</summary>
    public static double Hypot(double a, double b)
    {
        var (most, least) = (Math.Max(Math.Abs(a), Math.Abs(b)), Math.Min(Math.Abs(a), Math.Abs(b)));
        if (double.IsInfinity(a) || double.IsInfinity(b))
        {
            return double.PositiveInfinity;
        }

        // Below 2⁻⁶⁰ of the other the shorter one adds nothing; NaN goes the same way.
        if (!(least > most * Nothing))
        {
            return most + least;
        }

        var scale = OffTheEnds(most);
        var (big, small) = (Twofold.Product(most * scale, most * scale), Twofold.Product(least * scale, least * scale));
        var sum = Twofold.Ordered(big.High, small.High);
        return Twofold.Root(Twofold.Ordered(sum.High, sum.Low + (big.Low + small.Low))).Value / scale;
    }

    // What brings a number, and any other not below 2⁻⁶⁰ of it, so far off both ends of the doubles that squares are safe: a power of
    // two, which changes no digit.
    private static double OffTheEnds(double most) => most > 1e140 ? s_down : most < 1e-130 ? s_up : 1;

    // The sine of an angle that is some quarter turns further on.
    private static Twofold Wave(QuarterTurns angle, int further)
    {
        var quarters = angle.Quarters + further;
        var wave = (quarters & 1) == 0 ? CircleSeries.Sin(angle.Rest) : CircleSeries.Cos(angle.Rest);
        return (quarters & 2) == 0 ? wave : new(-wave.High, -wave.Low);
    }
}
