namespace BridgeForm.Ropes;

/// <summary>
/// One shot from support A with known unstressed lengths: where the rope ends for trial H and V, and the flexibility
/// there. Linear in the number of bays.
/// </summary>
/// <remarks>
/// The end's coordinates are the gradient of the rope's complementary energy ∫(T + T²/2EA) ds, which is convex in
/// (H, V): with H positive there is one solution, whatever the loads.
/// </remarks>
internal readonly record struct CaseShooting
{
    // A bay that slides this far onto the saddle has lost its frame; only trial states go beyond.
    private const double ShortestBay = 0.01;
    private const int FeedRounds = 50;

    /// <summary>Horizontal distance of the rope's end from A, metres.</summary>
    public required double X { get; init; }

    /// <summary>Rope's end below A, metres.</summary>
    public required double Drop { get; init; }

    /// <summary>∂X/∂H, metres per newton.</summary>
    public required double XByH { get; init; }

    /// <summary>∂X/∂V, metres per newton.</summary>
    public required double XByV { get; init; }

    /// <summary>∂Drop/∂H, metres per newton.</summary>
    public required double DropByH { get; init; }

    /// <summary>∂Drop/∂V, metres per newton.</summary>
    public required double DropByV { get; init; }

    /// <summary>Unstressed length of the first bay with what the backstay gives, metres.</summary>
    public required double First { get; init; }

    /// <summary>Unstressed length of the last bay with what the backstay gives, metres.</summary>
    public required double Last { get; init; }

    /// <summary>A frame next to a support has slid to its saddle.</summary>
    public required bool Slid { get; init; }

    /// <summary>Shoots.</summary>
    public static CaseShooting Of(LoadCaseRequest request, double h, double v)
    {
        var (w, stiffness, lengths) = (request.WeightPerLength, request.AxialStiffness, request.UnstressedLengths);
        var (x, drop, vertical) = (default(CompensatedSum), default(CompensatedSum), v);
        double xh = 0, xv = 0, dh = 0, dv = 0;
        var vertRates = (H: 0.0, V: 1.0);
        var (first, last, slid) = (lengths[0], lengths[^1], false);
        for (var i = 0; i < lengths.Length; i++)
        {
            var (length, lengthRates) = (lengths[i], (H: 0.0, V: 0.0));
            if (i == 0 && request.BackstayA is { } a)
            {
                (first, lengthRates, var over) = FeedAtStart(a, length, h, v, stiffness);
                (length, slid) = (first, slid | over);
            }

            if (i == lengths.Length - 1 && request.BackstayB is { } b)
            {
                (last, var more, var over) = FeedAtEnd(b, length, h, vertical, vertRates, w, stiffness);
                lengthRates = (lengthRates.H + more.H, lengthRates.V + more.V);
                (length, slid) = (last, slid | over);
            }

            var piece = new ElasticCatenary(h, vertical, length, w, stiffness);
            (x, drop) = (x.Plus(piece.X), drop.Plus(piece.Drop));
            xh += piece.XByHorizontal + (piece.XByVertical * vertRates.H) + (piece.XByLength * lengthRates.H);
            xv += (piece.XByVertical * vertRates.V) + (piece.XByLength * lengthRates.V);
            dh += piece.XByVertical + (piece.DropByVertical * vertRates.H) + (piece.DropByLength * lengthRates.H);
            dv += (piece.DropByVertical * vertRates.V) + (piece.DropByLength * lengthRates.V);
            vertRates = (vertRates.H - (w * lengthRates.H), vertRates.V - (w * lengthRates.V));
            vertical = piece.VerticalEnd - request.Loads[i + 1];
        }

        return new CaseShooting
        {
            X = x.Value, Drop = drop.Value, XByH = xh, XByV = xv, DropByH = dh, DropByV = dv,
            First = lengths.Length == 1 ? last : first, Last = last, Slid = slid,
        };
    }

    private static (double Length, (double H, double V) Rates, bool Slid) FeedAtStart(
        SlidingBackstay stay, double nominal, double h, double v, double stiffness)
    {
        var tension = ElasticCatenary.Hypotenuse(h, v);
        var (fed, byTension) = stay.Fed(tension, stiffness);
        var length = nominal + fed;
        return length > ShortestBay * nominal
            ? (length, (byTension * h / tension, byTension * v / tension), false)
            : (ShortestBay * nominal, (0, 0), true);
    }

    // The tension at B depends on the weight of what was fed in: a fixed point that contracts by about w·length/EA.
    private static (double Length, (double H, double V) Rates, bool Slid) FeedAtEnd(
        SlidingBackstay stay, double nominal, double h, double v, (double H, double V) vRates, double w, double stiffness)
    {
        var (length, end, tension, byTension) = (nominal, v, 0.0, 0.0);
        for (var i = 0; i < FeedRounds; i++)
        {
            end = v - (w * length);
            tension = ElasticCatenary.Hypotenuse(h, end);
            (var fed, byTension) = stay.Fed(tension, stiffness);
            var next = nominal + fed;
            if (next <= ShortestBay * nominal)
                return (ShortestBay * nominal, (0, 0), true);
            var change = Math.Abs(next - length);
            length = next;
            if (change <= Math.BitIncrement(length) - length)
                break;
        }

        var share = byTension / tension / (1 + (byTension * end * w / tension));
        return (length, (share * (h + (end * vRates.H)), share * end * vRates.V), false);
    }
}
