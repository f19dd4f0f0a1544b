using System.Collections.Immutable;

namespace BridgeForm.Materials;

/// <summary>A species, or a group of species graded together.</summary>
/// <param name="Key">As in the project file: <c>southern-pine</c>.</param>
/// <param name="SpecificGravity">Oven-dry weight and volume (NDS); dimensionless.</param>
/// <param name="Durable">Heartwood is naturally durable: its cuts need no preservative.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record Species(string Key, double SpecificGravity, bool Durable, string Source)
{
    /// <summary>The user's own densities; null: from <see cref="SpecificGravity"/>.</summary>
    public DensityRange? OwnDensity { get; init; }
}

/// <summary>The built-in species.</summary>
public static class SpeciesTable
{
    private const string Nds = "NDS Table 12.3.3A";
    private static string European(string grade) =>
        $"EN 338:2016, mean density of {grade} by the NDS density formula; each class by its own";

    private const string FromMemory = "NDS Supplement, specific gravity G, from memory";

    /// <summary>All of them, by key.</summary>
    public static ImmutableArray<Species> All { get; } =
    [
        new("southern-pine", 0.55, false, Nds),
        new("douglas-fir-larch", 0.50, false, Nds),
        new("hem-fir", 0.43, false, Nds),
        new("western-red-cedar", 0.36, true, Nds + " (Western Cedars)"),
        new("spruce-pine-fir", 0.42, false, Nds),
        new("redwood", 0.44, true, FromMemory + " (close grain)"),
        new("yellow-cedar", 0.47, true, FromMemory),
        new("white-oak", 0.73, true, FromMemory),
        new(StrengthClass.Softwood, 0.39, false, European("C24")),
        new(StrengthClass.Hardwood, 0.61, false, European("D30")),
    ];

    /// <summary>The species of that key; null when there is none.</summary>
    public static Species? Find(string key) =>
        All.FirstOrDefault(s => string.Equals(s.Key, key, StringComparison.Ordinal));
}
