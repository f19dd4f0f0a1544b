using System.Collections.Immutable;

namespace BridgeForm.Project;

/// <summary>Loads. Pascals, newtons, metres.</summary>
public sealed record LoadParameters
{
    /// <summary>Live load on the clear width, Pa.</summary>
    public required double Live { get; init; }

    /// <summary>Where <see cref="Live"/> comes from: the project file, or the default's source.</summary>
    public required string LiveSource { get; init; }

    /// <summary>Concentrated load, newtons.</summary>
    public required double PointForce { get; init; }

    /// <summary>Side of its square patch, metres.</summary>
    public required double PointPatch { get; init; }

    /// <summary>Distance of the load's resultant from the posts' inner face where it stands at the edge, metres; for ropes and bases.</summary>
    public required double PointEdge { get; init; }

    /// <summary>Share of the area load on the more heavily loaded rope, 0.5 to 1.</summary>
    public required double Eccentricity { get; init; }

    /// <summary>Upward wind on the deck, Pa; null when not given.</summary>
    public double? Uplift { get; init; }

    /// <summary>Snow, Pa; null when not given.</summary>
    public double? Snow { get; init; }

    /// <summary>The user's own cases.</summary>
    public ImmutableArray<LoadCaseParameters> Cases { get; init; } = [];
}

/// <summary>A load case of the user's.</summary>
public sealed record LoadCaseParameters
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Area load, Pa; 0 for none.</summary>
    public double Live { get; init; }

    /// <summary>Where the area load begins, x in metres; null for support A.</summary>
    public double? From { get; init; }

    /// <summary>Where the area load ends, x in metres; null for support B.</summary>
    public double? To { get; init; }

    /// <summary>Concentrated load, newtons; 0 for none.</summary>
    public double PointForce { get; init; }

    /// <summary>Place of the concentrated load, x in metres; null for mid-span.</summary>
    public double? PointAt { get; init; }

    /// <summary>Temperature, °C; null for the reference temperature.</summary>
    public double? Temperature { get; init; }
}
