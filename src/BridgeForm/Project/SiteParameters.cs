using System.Collections.Immutable;

namespace BridgeForm.Project;

/// <summary>Supports and what lies under the bridge. Metres, degrees Celsius.</summary>
public sealed record SiteParameters
{
    /// <summary>Horizontal distance between the supports, metres.</summary>
    public required double Span { get; init; }

    /// <summary>Support B above support A, metres; negative when lower.</summary>
    public required double Rise { get; init; }

    /// <summary>Temperature at which the design shape holds, °C.</summary>
    public required double ReferenceTemperature { get; init; }

    /// <summary>Other temperatures to look at, °C, lowest first.</summary>
    public required ImmutableArray<double> Temperatures { get; init; }

    /// <summary>Ground line from A to B as (x, y) in metres in world axes; empty when not given.</summary>
    public ImmutableArray<GroundPoint> Ground { get; init; } = [];

    /// <summary>Level of the highest water, y in metres; null when not given.</summary>
    public double? Water { get; init; }

    /// <summary>Room to keep over the highest water, metres; null when not given.</summary>
    public double? Freeboard { get; init; }

    /// <summary>Support A.</summary>
    public SupportParameters A { get; init; } = new();

    /// <summary>Support B.</summary>
    public SupportParameters B { get; init; } = new();
}

/// <summary>A point of the ground line, metres, world axes.</summary>
public readonly record struct GroundPoint(double X, double Y);

/// <summary>What stands behind one support.</summary>
public sealed record SupportParameters
{
    /// <summary>Rope from support to anchor; null when the rope ends at the support.</summary>
    public BackstayParameters? Backstay { get; init; }

    /// <summary>Level of the landing's walking surface above the support's rope axis, metres; null: flush with the end frame's deck.</summary>
    public double? LandingLevel { get; init; }

    /// <summary>Gap between landing and deck, metres; null when not given.</summary>
    public double? LandingGap { get; init; }
}

/// <summary>Rope from a support to its anchor.</summary>
/// <param name="Length">Metres.</param>
/// <param name="Angle">Below the horizontal, radians.</param>
/// <param name="Sliding">The rope slides over the saddle; false: it is held there.</param>
public sealed record BackstayParameters(double Length, double Angle, bool Sliding);
