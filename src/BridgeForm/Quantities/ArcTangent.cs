namespace BridgeForm.Quantities;

/// <summary>Angles from ratios, by breakpoints and the series of the arc tangent.</summary>
internal static class ArcTangent
{
    /// <summary>π/2, worked out as the table.</summary>
    public static readonly Twofold HalfPi = new(1.5707963267948966, 6.123233995736766e-17);

    /// <summary>π.</summary>
    public static readonly Twofold Pi = new(3.141592653589793, 1.2246467991473532e-16);

    private const int Steps = 16;

    // arctan k/16, k from 0 to 16, worked out with mpmath (400 binary digits) and rounded to two doubles.
    private static readonly Twofold[] s_table =
    [
        new(0.0, 0.0),
        new(0.06241880999595735, -1.5490756308295046e-18),
        new(0.12435499454676144, -3.1253241424539383e-18),
        new(0.18534794999569476, 4.180692268843079e-18),
        new(0.24497866312686414, 1.0698755618734451e-17),
        new(0.3028848683749714, -1.1010827903001369e-17),
        new(0.35877067027057225, -2.4623815582638635e-17),
        new(0.4124104415973873, -1.587652227770689e-17),
        new(0.4636476090008061, 2.2698777452961687e-17),
        new(0.5123894603107377, -2.5462781472855804e-17),
        new(0.5585993153435624, -5.4556305485916264e-18),
        new(0.6022873461349642, 2.950430737228402e-17),
        new(0.6435011087932844, 1.5834785051444286e-17),
        new(0.6823165548747481, 6.943223671560008e-18),
        new(0.7188299996216245, -2.1478388444456983e-17),
        new(0.7531512809621944, -2.4256934659182068e-17),
        new(0.7853981633974483, 3.061616997868383e-17),
    ];

    /// <summary>
    /// arctan n/d for 0 ≤ n ≤ d, d far from both ends of the doubles and n at least 2⁻³⁰ of it: with c the nearest sixteenth,
    /// arctan c + arctan u, u = (n − c·d) / (d + c·n), which is at most 1/32.
    /// </summary>
    /// <param name="ratio">n/d or nearly so.</param>
    public static Twofold OfRatio(Twofold n, Twofold d, double ratio)
    {
        var step = (int)((Steps * ratio) + 0.5);
        if (step == 0)
        {
            return Series(Twofold.Quotient(n, d));
        }

        var c = step * (1.0 / Steps);
        var (cd, cn) = (Twofold.Few(c, d.High), Twofold.Few(c, n.High));
        var above = Twofold.Sum(n.High - cd.High, n.Low - cd.Low - (c * d.Low));
        var below = Twofold.Ordered(d.High, cn.High);
        var rest = Series(Twofold.Quotient(above, new(below.High, below.Low + (cn.Low + d.Low + (c * n.Low)))));
        var sum = Twofold.Ordered(s_table[step].High, rest.High);
        return new(sum.High, sum.Low + (s_table[step].Low + rest.Low));
    }

    // u + (−u³/3 + u⁵/5 − …): what is left out is below u¹³/13, 2⁻⁶³ of u.
    private static Twofold Series(Twofold u)
    {
        var z = u.High * u.High;
        var series = (-1.0 / 3) + (z * ((1.0 / 5) + (z * ((-1.0 / 7) + (z * ((1.0 / 9) + (z * (-1.0 / 11))))))));
        return new(u.High, u.Low + (u.High * z * series));
    }
}
