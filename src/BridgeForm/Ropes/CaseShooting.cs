namespace BridgeForm.Ropes;

/// <summary>
/// One shot from support A with known unstressed lengths: where the rope ends for trial H and V, and the flexibility
/// there. Linear in the number of bays.
/// </summary>
/// <remarks>
/// The end's coordinates are the gradient of the rope's complementary energy ∫(T + T²/2EA) ds, which is convex in
/// (H, V): with H positive there is one solution, whatever the loads. Rates are by H and by V, in metres per newton.
/// </remarks>
internal struct CaseShooting
{
    private readonly LoadCaseRequest _request;
    private readonly double _h;
    private CompensatedSum _x;
    private CompensatedSum _drop;
    private double _vertical;
    private (double H, double V) _verticalRates;

    private CaseShooting(LoadCaseRequest request, double h, double v)
    {
        _request = request;
        _h = h;
        _vertical = v;
        _verticalRates = (0, 1);
    }

    /// <summary>Horizontal distance of the rope's end from A, with what held saddles have come towards the span, metres.</summary>
    public readonly double X => _x.Value;

    /// <summary>Rope's end below A, metres.</summary>
    public readonly double Drop => _drop.Value;

    /// <summary>How <see cref="X"/> changes.</summary>
    public (double H, double V) XRates { get; private set; }

    /// <summary>How <see cref="Drop"/> changes.</summary>
    public (double H, double V) DropRates { get; private set; }

    /// <summary>Unstressed length of the first bay with what the backstays give, metres.</summary>
    public double First { get; private set; }

    /// <summary>Unstressed length of the last bay with what the backstays give, metres.</summary>
    public double Last { get; private set; }

    /// <summary>A frame next to a support has slid to its saddle.</summary>
    public bool Slid { get; private set; }

    /// <summary>Shoots.</summary>
    public static CaseShooting Shoot(LoadCaseRequest request, double h, double v)
    {
        var shot = new CaseShooting(request, h, v);
        var lengths = request.UnstressedLengths;
        for (var i = 0; i < lengths.Length; i++)
        {
            var bay = new FedBay(lengths[i], (0, 0), false);
            if (i == 0 && request.BackstayA is { } a)
            {
                bay = bay.FedFromStart(a, h, v, request.AxialStiffness);
            }

            if (i == lengths.Length - 1 && request.BackstayB is { } b)
            {
                bay = bay.FedFromEnd(b, h, (shot._vertical, shot._verticalRates), request);
            }

            shot.Add(bay, i);
        }

        shot.Add(request.HeldA);
        shot.Add(request.HeldB);
        return shot;
    }

    private void Add(HeldBackstay? stay)
    {
        if (stay is null)
        {
            return;
        }

        var (length, byHorizontal) = stay.Give(_h, _request.AxialStiffness);
        _x = _x.Plus(length);
        XRates = (XRates.H + byHorizontal, XRates.V);
    }

    private void Add(FedBay bay, int i)
    {
        var piece = new ElasticCatenary(
            _h, _vertical, bay.Length, _request.WeightPerLength, _request.AxialStiffness);
        (_x, _drop) = (_x.Plus(piece.X), _drop.Plus(piece.Drop));
        XRates = (
            XRates.H + piece.XByHorizontal + (piece.XByVertical * _verticalRates.H) + (piece.XByLength * bay.Rates.H),
            XRates.V + (piece.XByVertical * _verticalRates.V) + (piece.XByLength * bay.Rates.V));
        DropRates = (
            DropRates.H + piece.XByVertical + (piece.DropByVertical * _verticalRates.H) + (piece.DropByLength * bay.Rates.H),
            DropRates.V + (piece.DropByVertical * _verticalRates.V) + (piece.DropByLength * bay.Rates.V));
        _verticalRates = (
            _verticalRates.H - (_request.WeightPerLength * bay.Rates.H),
            _verticalRates.V - (_request.WeightPerLength * bay.Rates.V));
        _vertical = piece.VerticalEnd - _request.Loads[i + 1];
        First = i == 0 ? bay.Length : First;
        Last = bay.Length;
        Slid |= bay.Slid;
    }
}

/// <summary>A bay next to a saddle that rope slides over.</summary>
/// <param name="Length">Unstressed length, metres.</param>
/// <param name="Rates">How it changes by H and by V at support A, metres per newton.</param>
/// <param name="Slid">So much rope ran out over the saddle that the bay's frame has come to it.</param>
internal readonly record struct FedBay(double Length, (double H, double V) Rates, bool Slid)
{
    // A bay that is this short has lost its frame to the saddle; only trial states go beyond.
    private const double ShortestShare = 0.01;
    private const int MaxRounds = 50;

    /// <summary>With what the backstay at A gives at these forces.</summary>
    public FedBay FedFromStart(SlidingBackstay stay, double h, double v, double stiffness)
    {
        var tension = ElasticCatenary.Hypotenuse(h, v);
        var (fed, byTension) = stay.Fed(tension, stiffness);
        return Length + fed <= ShortestShare * Length
            ? Gone()
            : this with { Length = Length + fed, Rates = (byTension * h / tension, byTension * v / tension) };
    }

    /// <summary>
    /// With what the backstay at B gives. The tension there depends on the weight of what was fed in: a fixed point that
    /// contracts by about w·length/EA a round.
    /// </summary>
    public FedBay FedFromEnd(
        SlidingBackstay stay, double h, (double Value, (double H, double V) Rates) vertical, LoadCaseRequest rope)
    {
        var (length, end, tension, byTension) = (Length, 0.0, 0.0, 0.0);
        for (var i = 0; i < MaxRounds; i++)
        {
            end = vertical.Value - (rope.WeightPerLength * length);
            tension = ElasticCatenary.Hypotenuse(h, end);
            (var fed, byTension) = stay.Fed(tension, rope.AxialStiffness);
            var change = Math.Abs(Length + fed - length);
            length = Length + fed;
            if (length <= ShortestShare * Length)
            {
                return Gone();
            }

            if (change <= Math.BitIncrement(length) - length)
            {
                break;
            }
        }

        // d(length) = byTension · dT with T² = h² + end² and end = vertical − w·length.
        var share = byTension / (tension + (byTension * end * rope.WeightPerLength));
        return this with
        {
            Length = length,
            Rates = (
                Rates.H + (share * (h + (end * vertical.Rates.H))),
                Rates.V + (share * end * vertical.Rates.V)),
        };
    }

    private FedBay Gone() => new(ShortestShare * Length, (0, 0), true);
}
