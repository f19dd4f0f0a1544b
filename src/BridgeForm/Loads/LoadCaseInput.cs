using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>What the load cases of a bridge are made from. Metres, newtons, pascals, °C.</summary>
public sealed record LoadCaseInput
{
    /// <summary>Design state of one rope, at the reference temperature under the dead load.</summary>
    public required RopeShape Design { get; init; }

    /// <summary>Load of the frames alone at each node on one rope, newtons; for the half erected bridge.</summary>
    public required ImmutableArray<double> FrameLoads { get; init; }

    /// <summary>Clear width between the posts' inner faces at the deck, metres.</summary>
    public required double ClearWidth { get; init; }

    /// <summary>Distance between the two ropes' axes, metres.</summary>
    public required double RopeSpacing { get; init; }

    /// <summary>Live load, point load, eccentricity, snow and the user's cases.</summary>
    public required LoadParameters Loads { get; init; }

    /// <summary>Temperature of the design state, °C.</summary>
    public required double ReferenceTemperature { get; init; }

    /// <summary>Other temperatures, °C.</summary>
    public required ImmutableArray<double> Temperatures { get; init; }

    /// <summary>Ropes behind the supports.</summary>
    public Backstays Backstays { get; init; } = Backstays.None;

    /// <summary>Share by which the rope has grown for good since it was marked; 0 for as marked.</summary>
    public double Stretch { get; init; }

    /// <summary>How high everything stands over the ropes; null to leave heights out: then no weight leans with its frame.</summary>
    public StandingWeights? Standing { get; init; }

    /// <summary>The bridge's lowest parts, with ground and water under them; null where there is nothing to stay clear of.</summary>
    internal Underside? Underside { get; init; }

    /// <summary>What the load cases of a whole bridge are made from.</summary>
    /// <param name="layout">Where everything stands.</param>
    /// <param name="design">Design state of one rope.</param>
    /// <param name="masses">Masses of the design state's frames.</param>
    /// <param name="token">Asked from frame to frame.</param>
    public static LoadCaseInput Gather(BridgeLayout layout, RopeShape design, BridgeMasses masses, CancellationToken token = default) =>
        Gather(layout, design, masses, Sampling.All, token);

    /// <summary>The same with heights from some frames and bays for those next to them.</summary>
    internal static LoadCaseInput Gather(
        BridgeLayout layout, RopeShape design, BridgeMasses masses, Sampling sampling, CancellationToken token) =>
        Gather(layout.Parameters, design, masses) with { Standing = StandingWeights.Weigh(layout, sampling, token) };

    private static LoadCaseInput Gather(BridgeParameters parameters, RopeShape design, BridgeMasses masses) => new()
    {
        Design = design,
        FrameLoads = masses.FrameStageLoads(),
        ClearWidth = DeckWidth.BetweenPosts(parameters),
        RopeSpacing = parameters.Ropes.Spacing,
        Loads = parameters.Loads,
        ReferenceTemperature = parameters.Site.ReferenceTemperature,
        Temperatures = parameters.Site.Temperatures,
        Backstays = Backstays.Of(parameters.Site),
        Underside = Underside.Of(parameters) is { IsAsked: true } asked ? asked : null,
    };

    /// <summary>Coldest temperature of all, °C.</summary>
    public double Coldest => Temperatures.Append(ReferenceTemperature).Min();

    /// <summary>Hottest temperature of all, °C.</summary>
    public double Hottest => Temperatures.Append(ReferenceTemperature).Max();
}
