using System.Globalization;

namespace BridgeForm.Materials;

/// <summary>Density of wood by specific gravity and moisture.</summary>
public static class WoodDensity
{
    /// <summary>Air-dry, per cent.</summary>
    public const double DryMoisture = 12;

    /// <summary>Outdoors in service, per cent.</summary>
    public const double OutdoorMoisture = 19;

    /// <summary>Fibre saturation, per cent: untreated at its wettest, treated in service.</summary>
    public const double WetMoisture = 28;

    private const double KilogramsPerCubicMetrePerPcf = Quantities.Units.KilogramsPerPound
        / (Quantities.Units.MetresPerFoot * Quantities.Units.MetresPerFoot * Quantities.Units.MetresPerFoot);
    private const double WaterPcf = 62.4;

    /// <summary>Freshly treated, still full of water: 55 lb/ft³, from memory; kg/m³.</summary>
    internal const double FreshlyTreated = 55 * KilogramsPerCubicMetrePerPcf;

    /// <summary>
    /// Density in kg/m³ at a moisture in per cent: 62.4 · [G / (1 + 0.009·G·M)] · (1 + M/100) lb/ft³ (NDS Supplement).
    /// </summary>
    public static double At(double specificGravity, double moisture) =>
        WaterPcf * KilogramsPerCubicMetrePerPcf
        * (specificGravity / (1 + (0.009 * specificGravity * moisture)))
        * (1 + (moisture / 100));

    /// <summary>Dry, in-service and heaviest density of a species, treated or not.</summary>
    public static DensityRange Of(Species species, bool treated)
    {
        if (species.OwnDensity is { } own)
        {
            return own;
        }

        var g = species.SpecificGravity;
        var wet = At(g, WetMoisture);
        var inService = treated ? wet : At(g, OutdoorMoisture);
        var high = treated ? Math.Max(FreshlyTreated, wet) : wet;
        return new DensityRange(At(g, DryMoisture), inService, high, SourceOf(species, treated));
    }

    /// <summary>
    /// Of a strength class: dry its characteristic density, and its mean density brought from 12 % moisture to that in service and to
    /// the wettest by the formula of the NDS Supplement.
    /// </summary>
    public static DensityRange OfClass(StrengthClass wood, bool treated)
    {
        // At(G, 12) = ρ_mean, solved for G.
        var share = wood.DensityMean / (WaterPcf * KilogramsPerCubicMetrePerPcf) / (1 + (DryMoisture / 100));
        var g = share / (1 - (0.009 * DryMoisture * share));
        var wet = At(g, WetMoisture);
        var inService = treated ? wet : At(g, OutdoorMoisture);
        var high = treated ? Math.Max(FreshlyTreated, wet) : wet;
        return new DensityRange(wood.DensityLow, inService, high, string.Create(
            CultureInfo.InvariantCulture,
            $"{StrengthClass.Source}: ρk {wood.DensityLow} and ρmean {wood.DensityMean} kg/m3 at 12 % moisture; NDS density formula at ")
            + (treated ? "28 % moisture; freshly treated 880 kg/m3 (55 lb/ft3), from memory" : "19 and 28 % moisture"));
    }

    private static string SourceOf(Species species, bool treated) => string.Create(
        CultureInfo.InvariantCulture,
        $"G {species.SpecificGravity} ({species.Source}); NDS density formula at 12, {(treated ? 28 : 19)} and 28 % moisture")
        + (treated ? "; freshly treated 55 lb/ft3, from memory" : "");
}

/// <summary>Density of a lumber in kg/m³.</summary>
/// <param name="Low">Dry; for uplift.</param>
/// <param name="InService">At moisture in service; for the design shape.</param>
/// <param name="High">Freshly treated or green; for lifting.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record DensityRange(double Low, double InService, double High, string Source);
