using System.Numerics;

namespace BridgeForm.Tests.Quantities;

/// <summary>
/// A number with 320 binary digits after the point, and its sines and logarithms by the plainest series there are: what the
/// program's own are measured against. Nothing here has a table or a double in it.
/// </summary>
internal readonly record struct LongNumber(BigInteger Units)
{
    private const int Digits = 320;

    private static readonly BigInteger s_one = BigInteger.One << Digits;
    private static readonly Lazy<LongNumber> s_ln2 = new(() => new(2 * AtanhSeries(s_one / 3)));

    // Størmer: π/4 = 6·arctan 1/8 + 2·arctan 1/57 + arctan 1/239 (from memory; π's first digits are held in a test).
    private static readonly Lazy<LongNumber> s_pi = new(
        () => new(4 * ((6 * AtanSeries(s_one / 8)) + (2 * AtanSeries(s_one / 57)) + AtanSeries(s_one / 239))));

    public static LongNumber Pi => s_pi.Value;

    public static LongNumber One => new(s_one);

    /// <summary>Of a double of at most 2⁻²⁶⁰ in its last digit: exact.</summary>
    public static LongNumber Of(double number)
    {
        var bits = BitConverter.DoubleToInt64Bits(number);
        var exponent = (int)((bits >> 52) & 0x7FF);
        BigInteger part = (bits & ((1L << 52) - 1)) | (exponent > 0 ? 1L << 52 : 0);
        var shift = Math.Max(exponent, 1) - 1075 + Digits;
        return new((number < 0 ? -part : part) * (shift >= 0 ? BigInteger.One << shift : 1) / (shift < 0 ? BigInteger.One << -shift : 1));
    }

    public static LongNumber operator +(LongNumber a, LongNumber b) => new(a.Units + b.Units);

    public static LongNumber operator -(LongNumber a, LongNumber b) => new(a.Units - b.Units);

    public static LongNumber operator *(LongNumber a, LongNumber b) => new((a.Units * b.Units) >> Digits);

    public static LongNumber operator /(LongNumber a, LongNumber b) => new((a.Units << Digits) / b.Units);

    /// <summary>How many steps of the last of 53 digits a double is away.</summary>
    public double Steps(double found)
    {
        var difference = BigInteger.Abs(Of(found).Units - Units);
        var step = (int)BigInteger.Abs(Units).GetBitLength() - 53;
        return (double)((difference << 40) >> step) / (1L << 40);
    }

    /// <summary>By Newton's way, on whole numbers.</summary>
    public LongNumber Root()
    {
        var square = Units << Digits;
        var root = BigInteger.One << (int)((square.GetBitLength() / 2) + 1);
        while ((root + (square / root)) / 2 is var next && next < root)
        {
            root = next;
        }

        return new(root);
    }

    public LongNumber Sin()
    {
        var turn = 2 * s_pi.Value.Units;
        var x = BigInteger.Remainder(Units, turn);
        var (sum, term) = (x, x);
        for (var n = 2; !term.IsZero && !(-term).IsOne; n += 2)
        {
            term = -(((term * x) >> Digits) * x >> Digits) / (n * (n + 1));
            sum += term;
        }

        return new(sum);
    }

    public LongNumber Cos() => new LongNumber(Units + (s_pi.Value.Units / 2)).Sin();

    /// <summary>Halved until the series is quick: arctan x = 2·arctan (x / (1 + √(1 + x²))).</summary>
    public LongNumber Atan()
    {
        var x = this;
        for (var i = 0; i < 8; i++)
        {
            x /= One + (One + (x * x)).Root();
        }

        return new(AtanSeries(x.Units) << 8);
    }

    public LongNumber Log()
    {
        var twos = (int)Units.GetBitLength() - Digits - 1;
        var part = twos >= 0 ? Units >> twos : Units << -twos;
        return new((2 * AtanhSeries(((part - s_one) << Digits) / (part + s_one))) + (twos * s_ln2.Value.Units));
    }

    public LongNumber Exp()
    {
        var (sum, term, x) = (s_one, s_one, Units >> 16);
        for (var n = 1; !term.IsZero && !(-term).IsOne; n++)
        {
            term = ((term * x) >> Digits) / n;
            sum += term;
        }

        var power = new LongNumber(sum);
        for (var i = 0; i < 16; i++)
        {
            power *= power;
        }

        return power;
    }

    private static BigInteger AtanSeries(BigInteger x) => Series(x, -1);

    private static BigInteger AtanhSeries(BigInteger x) => Series(x, 1);

    private static BigInteger Series(BigInteger x, int sign)
    {
        var (sum, power, square) = (BigInteger.Zero, x, sign * ((x * x) >> Digits));
        for (var n = 1; !power.IsZero && !(-power).IsOne; n += 2)
        {
            sum += power / n;
            power = (power * square) >> Digits;
        }

        return sum;
    }
}
