using System.Collections.Immutable;

namespace BridgeForm.Materials;

/// <summary>How a rope is made; decides which terminations suit it and how much it beds in.</summary>
public enum RopeKind
{
    /// <summary>Wires laid in one layer around a core wire.</summary>
    Strand,

    /// <summary>Strands laid around an independent wire rope core.</summary>
    WireRope,

    /// <summary>Flexible small cord.</summary>
    Cord,

    /// <summary>Described by the user.</summary>
    Custom,
}

/// <summary>One rope, in SI units.</summary>
public sealed record RopeProperties
{
    /// <summary>Key of the built-in table, or a short description of the user's own.</summary>
    public required string Name { get; init; }

    /// <summary>How it is made.</summary>
    public required RopeKind Kind { get; init; }

    /// <summary>Nominal diameter, metres.</summary>
    public required double Diameter { get; init; }

    /// <summary>Mass per metre of unstressed rope, kg/m.</summary>
    public required double MassPerLength { get; init; }

    /// <summary>Minimum breaking strength, newtons.</summary>
    public required double BreakingStrength { get; init; }

    /// <summary>Metallic area, m².</summary>
    public required double MetallicArea { get; init; }

    /// <summary>Modulus of the rope (not of its steel), pascals.</summary>
    public required double Modulus { get; init; }

    /// <summary>Zinc coated.</summary>
    public required bool Galvanized { get; init; }

    /// <summary>Where the numbers come from; numbers not seen in their source say "from memory".</summary>
    public required string Source { get; init; }

    /// <summary>Axial stiffness, newtons.</summary>
    public double AxialStiffness => MetallicArea * Modulus;

    /// <summary>Radius, metres.</summary>
    public double Radius => Diameter / 2;
}

/// <summary>Constants of steel rope.</summary>
public static class SteelRope
{
    /// <summary>
    /// Thermal expansion per °C: 6.5e-6 per °F, between the 6.06e-6 and 6.89e-6 that Dooley (Applied Science for Metal Workers)
    /// gives for steel.
    /// </summary>
    public const double ThermalExpansion = 6.5e-6 * 9 / 5;

    /// <summary>Density of steel, kg/m³ (common practice, no source).</summary>
    public const double SteelDensity = 7850;

    /// <summary>Unstressed length at a temperature over the length at the reference temperature.</summary>
    /// <param name="degreesAbove">Degrees Celsius above the reference temperature; negative when colder.</param>
    public static double ExpansionFactor(double degreesAbove) => 1 + (ThermalExpansion * degreesAbove);
}

/// <summary>The ropes that a project file may name.</summary>
/// <param name="Keys">All keys.</param>
/// <param name="Find">The rope of a key; null when there is none.</param>
public sealed record RopeCatalogue(ImmutableArray<string> Keys, Func<string, RopeProperties?> Find);
