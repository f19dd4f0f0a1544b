using System.Runtime.CompilerServices;

namespace BridgeForm.Quantities;

/// <summary>
/// Sine and cosine of at most an eighth of a turn by Taylor's series, as a number and what is to be added to it. The first term
/// left out is below a hundredth of the last digit.
/// </summary>
internal static class CircleSeries
{
    // 1/n!, every other one negative; the factorials are whole numbers below 2⁵³.
    private const double S3 = -1.0 / 6;
    private const double S5 = 1.0 / 120;
    private const double S7 = -1.0 / 5040;
    private const double S9 = 1.0 / 362880;
    private const double S11 = -1.0 / 39916800;
    private const double S13 = 1.0 / 6227020800;
    private const double S15 = -1.0 / 1307674368000;
    private const double S17 = 1.0 / 355687428096000;
    private const double C4 = 1.0 / 24;
    private const double C6 = -1.0 / 720;
    private const double C8 = 1.0 / 40320;
    private const double C10 = -1.0 / 3628800;
    private const double C12 = 1.0 / 479001600;
    private const double C14 = -1.0 / 87178291200;
    private const double C16 = 1.0 / 20922789888000;

    /// <summary>
    /// r + (−r³/6 + … + l − l·r²/2), with r and l the angle's two parts, radians. The cube has both halves: its last digits count.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Twofold Sin(Twofold angle)
    {
        var (r, z) = (angle.High, angle.High * angle.High);
        var zz = z * z;
        var series = S5 + (z * S7) + (zz * (S9 + (z * S11))) + (zz * zz * (S13 + (z * S15) + (zz * S17)));
        var (half, halfSquare) = (Twofold.Half(r), Twofold.Half(z));
        var squareRest = (half * half) - z + ((r - half) * (r + half));
        var cubeRest = (half * (z - halfSquare + squareRest)) + ((r - half) * z);
        var most = Twofold.Ordered(r, S3 * (half * halfSquare));
        return new(most.High, most.Low + ((S3 * cubeRest) + (r * zz * series) + (angle.Low * (1 - (0.5 * z)))));
    }

    /// <summary>1 − r²/2 + (r⁴/24 − … − l·r): the square with both halves, since its last digit counts.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Twofold Cos(Twofold angle)
    {
        var (r, z) = (angle.High, angle.High * angle.High);
        var zz = z * z;
        var series = C4 + (z * C6) + (zz * (C8 + (z * C10))) + (zz * zz * (C12 + (z * C14) + (zz * C16)));
        var half = Twofold.Half(r);
        var (square, rest) = (0.5 * half * half, 0.5 * (r - half) * (r + half));
        var most = Twofold.Ordered(1, -square);
        return new(most.High, most.Low + ((zz * series) - rest - (angle.Low * r)));
    }
}
