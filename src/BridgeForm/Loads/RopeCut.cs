using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Loads;

/// <summary>How long one rope is cut, and how much its ends must be adjustable. Metres, unstressed at the reference temperature.</summary>
public sealed record RopeCut
{
    // Rope round a thimble beyond its bearing point, up to where the turn-back is measured from (common practice, no
    // source): once round a thimble of about five diameters is some six diameters more than the straight way.
    private const double ThimbleDiameters = 6;

    /// <summary>From support to support.</summary>
    public required double BetweenSupports { get; init; }

    /// <summary>From support A to its anchor; 0 where the rope ends at the support.</summary>
    public required double BackstayA { get; init; }

    /// <summary>From support B to its anchor; 0 where the rope ends at the support.</summary>
    public required double BackstayB { get; init; }

    /// <summary>Rope of one end beyond its anchor point: round the thimble and the turn-back; null where no table gives it.</summary>
    public required double? Termination { get; init; }

    /// <summary>Where <see cref="Termination"/> comes from, or what is missing.</summary>
    public required string TerminationSource { get; init; }

    /// <summary>How much the rope's length changes between the coldest and the hottest temperature.</summary>
    public required double TemperatureChange { get; init; }

    /// <summary>Constructional stretch of the whole rope, low and high; null where it is not known.</summary>
    public required ShareRange? Stretch { get; init; }

    /// <summary>Anchor to anchor.</summary>
    public double BetweenEnds => BetweenSupports + BackstayA + BackstayB;

    /// <summary>Anchor to anchor and both ends; null where the ends' allowance is not known.</summary>
    public double? Length => BetweenEnds + (2 * Termination);

    /// <summary>How far both ends together must go, in and out; null where the stretch to come is not known.</summary>
    public TurnbuckleTravel? Travel { get; init; }

    /// <summary>All of that.</summary>
    public double? TakeUp => Travel?.All;

    /// <summary>Measures one rope.</summary>
    public static RopeCut Measure(BridgeParameters parameters, RopeShape design)
    {
        var (rope, site) = (parameters.Ropes.Rope, parameters.Site);
        var (tensionA, tensionB) = design.EndTensions();
        var (stayA, stayB) = (Unstressed(site.A.Backstay, tensionA, design), Unstressed(site.B.Backstay, tensionB, design));
        var between = design.UnstressedLength();
        var all = between + stayA + stayB;
        var range = StretchRange.Of(parameters.Ropes).Range;
        var clip = Terminations.ClipsFor(parameters.Ropes);
        double[] temperatures = [.. site.Temperatures, site.ReferenceTemperature];
        var cut = new RopeCut
        {
            BetweenSupports = between,
            BackstayA = stayA,
            BackstayB = stayB,
            Termination = clip is null ? null : clip.TurnBack + (ThimbleDiameters * rope.Diameter),
            TerminationSource = clip is null
                ? "no table for this end: add what its maker asks for"
                : $"turn-back: {clip.Source}; round the thimble 6 diameters (common practice, no source: measure yours)",
            TemperatureChange = SteelRope.ThermalExpansion * (temperatures.Max() - temperatures.Min()) * all,
            Stretch = range is { } r ? new ShareRange(r.Low * all, r.High * all) : null,
        };
        return cut with { Travel = TurnbuckleTravel.Of(parameters, cut) };
    }

    private static double Unstressed(BackstayParameters? stay, double tensionAtSupport, RopeShape design)
    {
        if (stay is null)
        {
            return 0;
        }

        var tension = stay.Sliding ? tensionAtSupport : HeldBackstay.Tension(stay.Angle, design.Horizontal);
        return stay.Length / (1 + (tension / design.AxialStiffness));
    }
}
