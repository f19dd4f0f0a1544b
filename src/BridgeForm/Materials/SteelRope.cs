namespace BridgeForm.Materials;

/// <summary>Constants of steel rope.</summary>
public static class SteelRope
{
    /// <summary>
    /// Thermal expansion per °C: 6.5e-6 per °F, the handbook value for steel wire rope (from memory).
    /// </summary>
    public const double ThermalExpansion = 6.5e-6 * 9 / 5;

    /// <summary>Density of steel, kg/m³ (common practice, no source).</summary>
    public const double SteelDensity = 7850;

    /// <summary>Unstressed length at a temperature over the length at the reference temperature.</summary>
    /// <param name="degreesAbove">Degrees Celsius above the reference temperature; negative when colder.</param>
    public static double ExpansionFactor(double degreesAbove) => 1 + (ThermalExpansion * degreesAbove);
}
