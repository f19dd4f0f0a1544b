using BridgeForm.Project;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Loads;

/// <summary>How far the two turnbuckles of one rope must go from where they are hung, both together. Metres.</summary>
/// <param name="In">To take in: stretch to come, the hottest day, a rope made too long.</param>
/// <param name="Out">To let out: rope that stretches less than it was shortened for, the coldest day, a rope made too short.</param>
public sealed record TurnbuckleTravel(double In, double Out)
{
    /// <summary>
    /// By how much one rope with its two eyes may come out longer or shorter than it was to be, metres: 1/2 in an eye, an own
    /// figure.
    /// </summary>
    public const double AsMade = Quantities.Units.MetresPerInch;

    /// <summary>All of it.</summary>
    public double All => In + Out;

    /// <summary>What a rope asks for; null where its stretch is not known.</summary>
    public static TurnbuckleTravel? Of(BridgeParameters parameters, RopeCut cut)
    {
        var (site, temperature) = (parameters.Site, cut.TemperatureChange);
        double[] all = [.. site.Temperatures, site.ReferenceTemperature];
        var hotter = all.Max() > all.Min() ? temperature * (all.Max() - site.ReferenceTemperature) / (all.Max() - all.Min()) : 0;
        var (takenIn, letOut) = (hotter + AsMade, temperature - hotter + AsMade);
        return (parameters.Ropes.New, cut.Stretch) switch
        {
            (NewRopeWay.StretchedBefore, _) => new(takenIn, letOut),
            (_, null) => null,
            (NewRopeWay.AsIs, { } s) => new(takenIn + ((s.High - s.Low) / 2), letOut + ((s.High - s.Low) / 2)),
            (_, { } s) => new(takenIn + s.High, letOut),
        };
    }
}

/// <summary>
/// What hangs between a rope's eye and its anchor, alike at all four ends: a shackle at the anchor, a turnbuckle whose jaw holds the
/// thimble. Lengths from bearing point to bearing point, metres.
/// </summary>
public sealed record RopeChain
{
    /// <summary>Inside length of the shackle.</summary>
    public required double Shackle { get; init; }

    /// <summary>Where that comes from.</summary>
    public required string ShackleSource { get; init; }

    /// <summary>Turnbuckle from pin to pin, closed.</summary>
    public required double Closed { get; init; }

    /// <summary>Where that comes from.</summary>
    public required string ClosedSource { get; init; }

    /// <summary>What it takes in from open to closed.</summary>
    public required double TakeUp { get; init; }

    /// <summary>How far it stands open when it is hung.</summary>
    public required double Opening { get; init; }

    /// <summary>Turnbuckle from pin to pin, open.</summary>
    public double Open => Closed + TakeUp;

    /// <summary>Turnbuckle from pin to pin, as hung.</summary>
    public double Hung => Closed + Opening;

    /// <summary>From the anchor to the eye of the rope, as hung.</summary>
    public double Length => Shackle + Hung;

    /// <summary>The chain; null where a length of it is neither in the file nor in a table.</summary>
    public static RopeChain? Of(BridgeParameters parameters, RopeWork work)
    {
        var own = parameters.Ropes;
        var turnbuckle = EndTurnbuckle.Of(parameters, work);
        var shackle = own.ShackleLength
            ?? (FittingSet.Shackles.Smallest(work.LargestPull) is { } size ? EndLengths.Shackle(size.Size) : null);
        if (work.Cut is not { } cut || turnbuckle.TakeUp is not { } takeUp || shackle is not { } inside)
        {
            return null;
        }

        var closed = own.Turnbuckle.Closed
            ?? (turnbuckle.Size is { } s ? EndLengths.ClosedTurnbuckle(s.Size, takeUp) : null);
        return closed is not { } pinToPin ? null : new RopeChain
        {
            Shackle = inside,
            ShackleSource = own.ShackleLength is null ? EndLengths.ShackleSource : "the project file",
            Closed = pinToPin,
            ClosedSource = own.Turnbuckle.Closed is null ? EndLengths.TurnbuckleSource : "the project file",
            TakeUp = takeUp,
            Opening = OpeningOf(cut.Travel, takeUp),
        };
    }

    // What is to spare stands half at either side; where there is too little, each side lacks in proportion.
    private static double OpeningOf(TurnbuckleTravel? travel, double takeUp)
    {
        if (travel is null)
        {
            return takeUp / 2;
        }

        var (closing, opening) = (travel.In / FittingSet.PerRope, travel.Out / FittingSet.PerRope);
        return closing + opening <= takeUp
            ? closing + ((takeUp - closing - opening) / 2)
            : takeUp * closing / (closing + opening);
    }
}
