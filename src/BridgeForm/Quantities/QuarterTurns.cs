using System.Numerics;
using System.Runtime.CompilerServices;

namespace BridgeForm.Quantities;

/// <summary>An angle as a number of quarter turns and a rest of at most an eighth of a turn either way.</summary>
/// <param name="Rest">Radians.</param>
/// <param name="Quarters">Quarter turns, of which only the last two binary digits mean something.</param>
internal readonly record struct QuarterTurns(Twofold Rest, int Quarters)
{
    // π/2 in parts of 33 binary digits, so that any number of quarter turns below 2²⁰ times a part is exact, and what is left. Third
    // is the third part with all its 53 digits. Worked out with mpmath (400 binary digits).
    private const double First = 1.5707963267341256;
    private const double Second = 6.077100506303966e-11;
    private const double Third = 2.0222662487959506e-21;
    private const double ThirdShort = 2.0222662487111665e-21;
    private const double Fourth = 8.4784276603689e-32;
    private const double PerRadian = 2 / Math.PI;

    // Radians up to which the parts serve: 63 662 quarter turns.
    private const double Near = 1e5;

    // A rest below this has lost so many digits that three parts do not give them all: 2⁻³⁰.
    private const double Cancelled = 1.0 / (1 << 30);

    /// <summary>Of any finite angle.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static QuarterTurns Of(double angle) => Math.Abs(angle) switch
    {
        <= Math.PI / 4 => new(new(angle, 0), 0),
        <= Near => OfNear(angle),
        _ => FarAngle.Reduced(angle),
    };

    // Cody and Waite's reduction (from memory): what the first two parts take away is exact up to one rounding, which is kept.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static QuarterTurns OfNear(double angle)
    {
        var quarters = Math.Floor((angle * PerRadian) + 0.5);
        var rest = Twofold.Sum(angle - (quarters * First), -(quarters * Second));
        return new(
            Math.Abs(rest.High) > Cancelled
                ? Twofold.Ordered(rest.High, rest.Low - (quarters * Third))
                : Finer(rest, quarters),
            (int)quarters);
    }

    private static Twofold Finer(Twofold rest, double quarters)
    {
        var finer = Twofold.Sum(rest.High, -(quarters * ThirdShort));
        return Twofold.Ordered(finer.High, rest.Low + (finer.Low - (quarters * Fourth)));
    }
}

/// <summary>Angles of more turns than anything has: slow, and as exact as the others.</summary>
internal static class FarAngle
{
    // Binary digits after the point of π/2: the largest double has 1024 before it, and 126 are left for the rest.
    private const int Digits = 1150;

    // Digits of the rest that are looked at.
    private const int Kept = 160;

    private static readonly Lazy<BigInteger> s_halfPi = new(HalfPi);

    /// <summary>Of a finite angle; what is none gives a rest that is none.</summary>
    public static QuarterTurns Reduced(double angle)
    {
        if (!double.IsFinite(angle))
        {
            return new(new(double.NaN, double.NaN), 0);
        }

        var bits = BitConverter.DoubleToInt64Bits(Math.Abs(angle));
        var exponent = (int)(bits >> 52) - 1075;
        var whole = (BigInteger)((bits & ((1L << 52) - 1)) | (1L << 52)) << (Digits + exponent);
        var quarters = ((2 * whole) + s_halfPi.Value) / (2 * s_halfPi.Value);
        var rest = (whole - (quarters * s_halfPi.Value)) >> (Digits - Kept);
        var high = (double)rest;
        var low = (double)(rest - (BigInteger)high);
        var (scale, sign) = (Math.ScaleB(1, -Kept), Math.Sign(angle));
        return new(new(sign * high * scale, sign * low * scale), sign * (int)(quarters & 3));
    }

    // π/4 = 4·arctan 1/5 − arctan 1/239 (Machin), with a few digits more than are kept.
    private static BigInteger HalfPi()
    {
        const int More = 32;
        return (2 * ((4 * Inverse(5)) - Inverse(239))) >> More;

        static BigInteger Inverse(int of)
        {
            var (sum, power) = (BigInteger.Zero, (BigInteger.One << (Digits + More)) / of);
            for (var n = 1; !power.IsZero; n += 4)
            {
                sum += (power / n) - (power / of / of / (n + 2));
                power = power / of / of / of / of;
            }

            return sum;
        }
    }
}
