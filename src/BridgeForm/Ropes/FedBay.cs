namespace BridgeForm.Ropes;

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
                return Gone();
            if (change <= Math.BitIncrement(length) - length)
                break;
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
