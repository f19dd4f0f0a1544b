using System.Runtime.CompilerServices;

namespace BridgeForm.Quantities;

/// <summary>
/// A number as the sum of two doubles, the second below the last digit of the first: some 105 binary digits. What rounding takes
/// from a sum or a product is a double itself, and is found by sums and products alone (Dekker 1971, Knuth; from memory).
/// </summary>
/// <param name="High">The number, rounded or nearly so.</param>
/// <param name="Low">What it lacks.</param>
internal readonly record struct Twofold(double High, double Low)
{
    // All but the last 27 of 53 digits: products of such halves are exact.
    private const long Upper = ~0x7FFFFFFL;

    /// <summary>Rounded to a double.</summary>
    public double Value => High + Low;

    /// <summary>The sum of two doubles, exact.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Twofold Sum(double a, double b)
    {
        var sum = a + b;
        var second = sum - a;
        return new(sum, (a - (sum - second)) + (b - second));
    }

    /// <summary>The same, quicker, where the first is not smaller than the second, or is zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Twofold Ordered(double large, double small)
    {
        var sum = large + small;
        return new(sum, small - (sum - large));
    }

    /// <summary>The product of two doubles, exact but for the last of 107 digits; neither near overflow nor underflow.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Twofold Product(double a, double b)
    {
        var product = a * b;
        var (aHigh, bHigh) = (Half(a), Half(b));
        var (aLow, bLow) = (a - aHigh, b - bHigh);
        return new(product, ((aHigh * bHigh) - product + (aHigh * bLow) + (aLow * bHigh)) + (aLow * bLow));
    }

    /// <summary>The same where the first has no more than 26 digits: exact.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Twofold Few(double few, double b)
    {
        var product = few * b;
        var high = Half(b);
        return new(product, ((few * high) - product) + (few * (b - high)));
    }

    /// <summary>n / d to some hundred digits, by one slow division: what the first part is off, the second has.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Twofold Quotient(Twofold n, Twofold d)
    {
        var one = 1 / d.High;
        var quotient = n.High * one;
        var back = Product(quotient, d.High);
        return new(quotient, ((n.High - back.High) - back.Low + (n.Low - (quotient * d.Low))) * one);
    }

    /// <summary>The square root; of zero too.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Twofold Root(Twofold square)
    {
        var root = Math.Sqrt(square.High);
        var back = Product(root, root);
        return root > 0 ? new(root, ((square.High - back.High) - back.Low + square.Low) / (2 * root)) : default;
    }

    /// <summary>Product to some hundred digits.</summary>
    public static Twofold operator *(Twofold a, Twofold b)
    {
        var product = Product(a.High, b.High);
        return Ordered(product.High, product.Low + ((a.High * b.Low) + (a.Low * b.High)));
    }

    /// <summary>The upper 26 digits of a double; what is left has no more than 27.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Half(double number) => BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(number) & Upper);
}
