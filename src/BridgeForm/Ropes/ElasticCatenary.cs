using BridgeForm.Quantities;

namespace BridgeForm.Ropes;

/// <summary>
/// A piece of elastic rope hanging from its A-side end under its own weight (Irvine, Cable Structures, 1981, §1.3), in
/// metres and newtons. It starts at its own origin; X runs towards B, <see cref="Drop"/> is positive downwards.
/// </summary>
/// <remarks>
/// Irvine's differences of asinh and of roots lose all digits for a short or light piece. With T0, T1 the tensions at the
/// ends, P = T0 + T1, q = V + v, u = w·s / P, they are rewritten exactly as
/// asinh(V/H) − asinh(v/H) = 2·atanh(u) and T0 − T1 = w·s·q / P, which hold their digits down to w = 0.
/// </remarks>
internal readonly struct ElasticCatenary
{
    // Below this, atanh of the plain quotient is as good as the form made for slack rope.
    private const double SlackQuotient = 0.5;

    // Below this a few terms of the series of atanh have every digit; a bay of a bridge is nearly always there.
    private const double TautQuotient = 0.05;

    private readonly double _horizontal;
    private readonly double _length;
    private readonly double _stiffness;
    private readonly double _sum;
    private readonly double _twiceMean;
    private readonly double _phi;

    /// <summary>Evaluates the piece.</summary>
    /// <param name="horizontal">H, newtons, positive.</param>
    /// <param name="vertical">V, upward force that holds the A-side end, newtons.</param>
    /// <param name="length">Unstressed length s, metres.</param>
    /// <param name="weight">w, N per unstressed metre.</param>
    /// <param name="stiffness">EA, newtons.</param>
    public ElasticCatenary(double horizontal, double vertical, double length, double weight, double stiffness)
    {
        var hung = weight * length;
        VerticalEnd = vertical - hung;
        TensionStart = Hypotenuse(horizontal, vertical);
        TensionEnd = Hypotenuse(horizontal, VerticalEnd);
        _horizontal = horizontal;
        _length = length;
        _stiffness = stiffness;
        _sum = TensionStart + TensionEnd;
        _twiceMean = vertical + VerticalEnd;
        _phi = Phi(horizontal, vertical, VerticalEnd, hung / _sum);
        X = length * horizontal * ((1 / stiffness) + (2 * _phi / _sum));
        Drop = length * _twiceMean / 2 * ((1 / stiffness) + (2 / _sum));
    }

    /// <summary>Horizontal distance of the B-side end, metres.</summary>
    public double X { get; }

    /// <summary>Distance of the B-side end below the A-side end, metres.</summary>
    public double Drop { get; }

    /// <summary>Upward force on the A-side end of a piece that hangs on, newtons.</summary>
    public double VerticalEnd { get; }

    /// <summary>Tension at the A-side end, newtons.</summary>
    public double TensionStart { get; }

    /// <summary>Tension at the B-side end, newtons.</summary>
    public double TensionEnd { get; }

    /// <summary>Straight distance between the ends, metres.</summary>
    public double Chord => Hypotenuse(X, Drop);

    /// <summary>Length as it hangs, metres: ∫(1 + T/EA) ds.</summary>
    public double StretchedLength => _length * (1 + (MeanTension / _stiffness));

    /// <summary>∂X/∂s: what one more metre of unstressed rope adds.</summary>
    public double XByLength => _horizontal * ((1 / _stiffness) + (1 / TensionEnd));

    /// <summary>∂Drop/∂s.</summary>
    public double DropByLength => VerticalEnd * ((1 / _stiffness) + (1 / TensionEnd));

    /// <summary>∂X/∂H, metres per newton: s/EA + ∫v²/T³ ds.</summary>
    public double XByHorizontal => (_length / _stiffness) + Math.Max(0, (_length * 2 * _phi / _sum) - Bending);

    /// <summary>∂X/∂V = ∂Drop/∂H, metres per newton: −∫vH/T³ ds.</summary>
    public double XByVertical => -_horizontal * _length * _twiceMean / (_sum * TensionStart * TensionEnd);

    /// <summary>∂Drop/∂V, metres per newton: s/EA + ∫H²/T³ ds.</summary>
    public double DropByVertical => (_length / _stiffness) + Bending;

    private double MeanTension =>
        ((_sum + (_twiceMean * _twiceMean / _sum)) / 4) + (_horizontal * _horizontal * _phi / _sum);

    // ∫H²/T³ ds = s·(P² − q²) / (2·P·T0·T1), with P² − q² = 2·(H² + T0·T1 − V·v) kept free of cancellation.
    private double Bending
    {
        get
        {
            var start = (_twiceMean + HungWeight) / 2;
            var product = start * VerticalEnd;
            var tensions = TensionStart * TensionEnd;
            var square = _horizontal * _horizontal;
            var difference = product > 0
                ? square * (square + (start * start) + (VerticalEnd * VerticalEnd)) / (tensions + product)
                : tensions - product;
            return _length * (square + difference) / (_sum * tensions);
        }
    }

    private double HungWeight => _twiceMean - (2 * VerticalEnd);

    /// <summary>√(a² + b²) for numbers far from overflow; quicker than a library hypot.</summary>
    internal static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));

    // atanh(u) / u, which is 1 for a weightless piece.
    private static double Phi(double h, double start, double end, double u)
    {
        if (u <= 0)
        {
            return 1;
        }

        if (u < TautQuotient)
        {
            return AtanhSeries(u * u);
        }

        if (u < SlackQuotient)
        {
            return Elementary.Atanh(u) / u;
        }

        var above = TensionPlus(h, start) + TensionPlus(h, -end);
        var below = TensionPlus(h, -start) + TensionPlus(h, end);
        return 0.5 * Elementary.Log(above / below) / u;
    }

    // 1 + u²/3 + u⁴/5 + …: what is left out is below u¹²/13, 2e-17 at the limit.
    private static double AtanhSeries(double square) =>
        1 + (square * ((1.0 / 3) + (square * ((1.0 / 5) + (square * ((1.0 / 7) + (square * ((1.0 / 9) + (square / 11)))))))));

    // √(h² + v²) + v without cancellation for a large negative v.
    private static double TensionPlus(double h, double v)
    {
        var tension = Hypotenuse(h, v);
        return v < 0 ? h * h / (tension - v) : tension + v;
    }
}
