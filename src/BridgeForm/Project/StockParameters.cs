using System.Collections.Immutable;
using BridgeForm.Materials;

namespace BridgeForm.Project;

/// <summary>One kind of lumber the builder buys.</summary>
public sealed record StockParameters
{
    /// <summary>Its name in the project file.</summary>
    public required string Name { get; init; }

    /// <summary>Key of the species.</summary>
    public required string Species { get; init; }

    /// <summary>Grade, as written.</summary>
    public required string Grade { get; init; }

    /// <summary>Pressure-treated: its cuts are brushed with field preservative.</summary>
    public required bool Treated { get; init; }

    /// <summary>Heartwood of a naturally durable species: cuts need no preservative.</summary>
    public bool Durable { get; init; }

    /// <summary>Incised for treatment.</summary>
    public required bool Incised { get; init; }

    /// <summary>Lengths on sale, metres, shortest first.</summary>
    public required ImmutableArray<double> Lengths { get; init; }

    /// <summary>Densities, dry to freshly treated.</summary>
    public required DensityRange Density { get; init; }
}
