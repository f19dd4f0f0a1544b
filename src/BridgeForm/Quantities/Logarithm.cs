namespace BridgeForm.Quantities;

/// <summary>Natural logarithms of ratios, by breakpoints and the series of the inverse hyperbolic tangent.</summary>
internal static class Logarithm
{
    private const int Steps = 16;
    private const int Lowest = 11;

    // From √2, 0x3FF6A09E667F3BCD, to 2: what more brings a larger number to the next exponent.
    private const long BelowRoot = 0x4000000000000000 - 0x3FF6A09E667F3BCD;

    // ln 2 to 42 binary digits, so that an exponent times it is exact, and the rest. Worked out as the table.
    private const double Ln2 = 0.6931471805598903;
    private const double Ln2Rest = 5.497923018708371e-14;

    // ln k/16, k from 11 to 23, worked out with mpmath (400 binary digits) and rounded to two doubles.
    private static readonly Twofold[] s_table =
    [
        new(-0.3746934494414107, 3.9243112288632396e-18),
        new(-0.2876820724517809, -2.607160616442564e-17),
        new(-0.2076393647782445, -1.2053243216686129e-17),
        new(-0.13353139262452263, 3.664457663660085e-18),
        new(-0.06453852113757118, 6.470486661692933e-18),
        new(0.0, 0.0),
        new(0.06062462181643484, 2.6424025938726934e-18),
        new(0.11778303565638346, -1.1971685747593677e-18),
        new(0.17185025692665923, -6.0224538210113705e-18),
        new(0.22314355131420976, -9.091270597324799e-18),
        new(0.27193371548364176, 7.83319637697442e-19),
        new(0.3184537311185346, 2.7114779367326236e-17),
        new(0.3629054936893685, -2.1492361455310972e-17),
    ];

    /// <summary>ln x of a finite positive number, with some 65 binary digits.</summary>
    public static Twofold Of(double x)
    {
        var more = double.IsSubnormal(x) ? 54 : 0;
        var bits = BitConverter.DoubleToInt64Bits(x * (1L << more));
        var exponent = Exponent(bits);
        var part = BitConverter.Int64BitsToDouble(bits - ((long)exponent << 52));
        return OfRatio(new(part, 0), new(1, 0), part, exponent - more);
    }

    /// <summary>ln n/d, n/d positive and below 2¹⁰⁰, with some 65 binary digits.</summary>
    public static Twofold Of(Twofold n, Twofold d)
    {
        var ratio = n.High / d.High;
        var exponent = Exponent(BitConverter.DoubleToInt64Bits(ratio));
        var scale = BitConverter.Int64BitsToDouble((1023L - exponent) << 52);
        return OfRatio(new(n.High * scale, n.Low * scale), d, ratio * scale, exponent);
    }

    /// <summary>The e for which a number lies between √½·2ᵉ and √2·2ᵉ: what is above the root of two counts for the next.</summary>
    /// <param name="bits">Of a positive number that is not subnormal.</param>
    public static int Exponent(long bits) => (int)((bits + BelowRoot) >> 52) - 1023;

    // With c the nearest sixteenth ln n/d = ln c + 2·artanh s, s = (n − c·d) / (n + c·d), which is at most 1/45.
    private static Twofold OfRatio(Twofold n, Twofold d, double ratio, int exponent)
    {
        var step = (int)((Steps * ratio) + 0.5);
        var c = step * (1.0 / Steps);
        var cd = Twofold.Few(c, d.High);
        var low = cd.Low + (c * d.Low);
        var below = Twofold.Sum(n.High, cd.High);
        var s = Twofold.Quotient(Twofold.Sum(n.High - cd.High, n.Low - low), new(below.High, below.Low + (n.Low + low)));
        var start = Twofold.Sum(exponent * Ln2, s_table[step - Lowest].High);
        var sum = Twofold.Sum(start.High, 2 * s.High);
        return Twofold.Ordered(
            sum.High,
            sum.Low + start.Low + ((exponent * Ln2Rest) + s_table[step - Lowest].Low + (2 * (s.Low + Series(s.High)))));
    }

    // s³/3 + s⁵/5 + …: what is left out is below s¹³/13, 2⁻⁶⁹ of s.
    private static double Series(double s)
    {
        var z = s * s;
        return s * z * ((1.0 / 3) + (z * ((1.0 / 5) + (z * ((1.0 / 7) + (z * ((1.0 / 9) + (z * (1.0 / 11)))))))));
    }
}
