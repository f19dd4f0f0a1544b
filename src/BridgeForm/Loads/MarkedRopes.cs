using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Loads;

/// <summary>The one set of marks and sags that the crew works by; those of other stretches stay in the report.</summary>
/// <param name="How">What the file says of the new rope.</param>
/// <param name="Share">Stretch to come that the marks are set short for; 0 for plain marks.</param>
/// <param name="Marks">From support A's point.</param>
/// <param name="Hoisting">Sags to set by these marks.</param>
public sealed record MarkedRopes(NewRopeWay How, double Share, ImmutableArray<RopeMark> Marks, HoistingTable Hoisting)
{
    /// <summary>A length of this rope over the same length by the plain marks.</summary>
    public double Shorter => 1 / (1 + Share);

    /// <summary>What it means, for those who mark, hoist and turn.</summary>
    public string Sentence => How switch
    {
        NewRopeWay.StretchedBefore =>
            "Plain marks on rope that was stretched before it was marked: nothing is left to come.",
        NewRopeWay.AsIs =>
            $"New rope marked short for {QuantityText.Share(Share)} of stretch, the mean of its range: it hangs flatter than drawn, pulls "
                + "harder, and settles into its shape; what it stretches more or less the turnbuckles take in or let out.",
        _ =>
            "Plain marks on new rope: as it stretches for good the bridge sinks, and the turnbuckles take the stretch out again.",
    };

    /// <summary>The file's choice.</summary>
    internal static MarkedRopes Choose(
        BridgeParameters parameters, LoadCaseInput input, ImmutableArray<RopeMark> marks, HoistingTable plain, CancellationToken token)
    {
        var (how, site) = (parameters.Ropes.New, parameters.Site);
        if (how != NewRopeWay.AsIs || StretchRange.Of(parameters.Ropes).Range is not { } range)
        {
            return new MarkedRopes(how, 0, marks, plain);
        }

        var share = (range.Low + range.High) / 2;
        var hoisting = Loads.Hoisting.Solve(
            input.Design, input.FrameLoads, site.ReferenceTemperature, site.Temperatures, input.Backstays, (1 / (1 + share)) - 1, token);
        return new MarkedRopes(
            how, share, [.. marks.Select(m => new RopeMark(m.Frame, m.Unstressed / (1 + share), m.AtMarkingTension / (1 + share)))],
            hoisting);
    }
}
