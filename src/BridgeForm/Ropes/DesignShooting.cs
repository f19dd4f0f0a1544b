using System.Collections.Immutable;

namespace BridgeForm.Ropes;

/// <summary>Rates of change by H (per newton), by V at support A (per newton) and by the step (per metre).</summary>
internal readonly record struct Rates(double H, double V, double Step)
{
    public static Rates operator +(Rates a, Rates b) => new(a.H + b.H, a.V + b.V, a.Step + b.Step);

    public static Rates operator -(Rates a, Rates b) => new(a.H - b.H, a.V - b.V, a.Step - b.Step);

    public static Rates operator *(double k, Rates a) => new(k * a.H, k * a.V, k * a.Step);
}

/// <summary>Unknowns of the design state: H and V at support A in newtons, the step in metres.</summary>
internal readonly record struct DesignUnknowns(double H, double V, double Step);

/// <summary>A distance and how it changes with the unknowns.</summary>
internal readonly record struct Measured(double Value, Rates Rates);

/// <summary>
/// One shot from support A: bay by bay, the unstressed length that reaches the step, for trial unknowns; with the
/// analytic rates of change of the end and of the point at half the span. Linear in the number of bays.
/// </summary>
internal sealed class DesignShooting
{
    private readonly DesignRequest _request;
    private readonly ImmutableArray<double> _loads;
    private readonly DesignUnknowns _trial;
    private readonly double[] _lengths;
    private CompensatedSum _x;
    private CompensatedSum _drop;
    private Rates _xRates;
    private Rates _dropRates;
    private double _vertical;
    private Rates _verticalRates = new(0, 1, 0);
    private bool _middlePassed;

    private DesignShooting(DesignRequest request, ImmutableArray<double> loads, DesignUnknowns trial)
    {
        _request = request;
        _loads = loads;
        _trial = trial;
        _vertical = trial.V;
        _lengths = new double[loads.Length - 1];
    }

    /// <summary>Horizontal distance from A to the last node.</summary>
    public Measured X => new(_x.Value, _xRates);

    /// <summary>Last node below A.</summary>
    public Measured Drop => new(_drop.Value, _dropRates);

    /// <summary>Rope at half the span below A.</summary>
    public Measured MiddleDrop { get; private set; }

    /// <summary>Unstressed length of each bay, metres.</summary>
    public ImmutableArray<double> Lengths => ImmutableArray.Create(_lengths);

    private bool InPlan => _request.Step == Project.FrameStep.Plan;

    /// <summary>Shoots; null when a bay cannot be closed with these unknowns.</summary>
    public static DesignShooting? Try(DesignRequest request, ImmutableArray<double> loads, DesignUnknowns trial)
    {
        var shooting = new DesignShooting(request, loads, trial);
        for (var i = 0; i < shooting._lengths.Length; i++)
        {
            if (!shooting.TryAddBay(i))
            {
                return null;
            }
        }

        return shooting;
    }

    private bool TryAddBay(int i)
    {
        var (w, stiffness) = (_request.WeightPerLength, _request.AxialStiffness);
        var length = SegmentLength.Find(_trial.H, _vertical, w, stiffness, _trial.Step, InPlan);
        if (!double.IsFinite(length))
        {
            return false;
        }

        var piece = new ElasticCatenary(_trial.H, _vertical, length, w, stiffness);
        if (!_middlePassed && (_x.Value + piece.X >= _request.Span / 2 || i == _lengths.Length - 1))
        {
            MeasureMiddle();
        }

        _lengths[i] = length;
        Advance(piece, LengthRates(piece));
        _vertical = piece.VerticalEnd - _loads[i + 1];
        return true;
    }

    // The bay's condition g(H, V, s, step) = 0 stays met, so ds = −(g_H dH + g_V dV + g_step dstep) / g_s.
    private Rates LengthRates(ElasticCatenary piece)
    {
        var (cosine, sine) = InPlan ? (1, 0) : (piece.X / piece.Chord, piece.Drop / piece.Chord);
        var byLength = (cosine * piece.XByLength) + (sine * piece.DropByLength);
        var byH = (cosine * piece.XByHorizontal) + (sine * piece.XByVertical);
        var byV = (cosine * piece.XByVertical) + (sine * piece.DropByVertical);
        return (1 / byLength) * (new Rates(-byH, 0, 1) - (byV * _verticalRates));
    }

    private void Advance(ElasticCatenary piece, Rates length)
    {
        _x = _x.Plus(piece.X);
        _drop = _drop.Plus(piece.Drop);
        _xRates += XRates(piece) + (piece.XByLength * length);
        _dropRates += DropRates(piece) + (piece.DropByLength * length);
        _verticalRates -= _request.WeightPerLength * length;
    }

    // Along this bay to x = span / 2, at which place the rope is met whatever the unknowns do.
    private void MeasureMiddle()
    {
        _middlePassed = true;
        var (w, stiffness) = (_request.WeightPerLength, _request.AxialStiffness);
        var ahead = (_request.Span / 2) - _x.Value;
        var length = ahead > 0 ? SegmentLength.Find(_trial.H, _vertical, w, stiffness, ahead, inPlan: true) : 0;
        var piece = new ElasticCatenary(_trial.H, _vertical, length, w, stiffness);
        var lengthRates = (-1 / piece.XByLength) * (_xRates + XRates(piece));
        MiddleDrop = new Measured(
            _drop.Plus(piece.Drop).Value,
            _dropRates + DropRates(piece) + (piece.DropByLength * lengthRates));
    }

    private Rates XRates(ElasticCatenary piece) =>
        new Rates(piece.XByHorizontal, 0, 0) + (piece.XByVertical * _verticalRates);

    private Rates DropRates(ElasticCatenary piece) =>
        new Rates(piece.XByVertical, 0, 0) + (piece.DropByVertical * _verticalRates);
}

/// <summary>Finds how much unstressed rope reaches a given distance.</summary>
internal static class SegmentLength
{
    // Newton doubles its digits at each step: after a step as small as this the next is at round-off.
    private const double LastStep = 1e-7;
    private const int MaxSteps = 100;

    /// <summary>
    /// The unstressed length whose straight distance (or horizontal distance) is <paramref name="step"/>; NaN when there
    /// is none. One-dimensional Newton inside a bracket.
    /// </summary>
    /// <param name="horizontal">H, newtons.</param>
    /// <param name="vertical">V at the A-side end, newtons.</param>
    /// <param name="weight">N per unstressed metre.</param>
    /// <param name="stiffness">EA, newtons.</param>
    /// <param name="step">Metres, positive.</param>
    /// <param name="inPlan">Horizontal distance instead of straight.</param>
    public static double Find(
        double horizontal, double vertical, double weight, double stiffness, double step, bool inPlan)
    {
        var length = Straight(horizontal, vertical, stiffness, step, inPlan);
        length = Straight(horizontal, vertical - (weight * length / 2), stiffness, step, inPlan);
        var (low, high) = (0.0, double.PositiveInfinity);
        for (var i = 0; i < MaxSteps; i++)
        {
            var piece = new ElasticCatenary(horizontal, vertical, length, weight, stiffness);
            var (excess, slope) = Excess(piece, step, inPlan);
            if (excess < 0)
            {
                low = length;
            }
            else
            {
                high = length;
            }

            var next = length - (excess / slope);
            if (!(next > low && next < high) && Math.Abs(next - length) > LastStep * length)
            {
                next = double.IsInfinity(high) ? 2 * length : (low + high) / 2;
            }

            if (Math.Abs(next - length) <= LastStep * length)
            {
                return next;
            }

            length = next;
        }

        return double.NaN;
    }

    // A straight bar under this tension; with the tension at its middle it is the rope but for its sagitta.
    private static double Straight(double horizontal, double vertical, double stiffness, double step, bool inPlan)
    {
        var tension = ElasticCatenary.Hypotenuse(horizontal, vertical);
        return step * (inPlan ? tension / horizontal : 1) / (1 + (tension / stiffness));
    }

    private static (double Excess, double Slope) Excess(ElasticCatenary piece, double step, bool inPlan)
    {
        if (inPlan)
        {
            return (piece.X - step, piece.XByLength);
        }

        var chord = piece.Chord;
        return (chord - step, ((piece.X * piece.XByLength) + (piece.Drop * piece.DropByLength)) / chord);
    }
}
