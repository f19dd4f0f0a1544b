namespace BridgeForm.Materials;

/// <summary>Density of a lumber in kg/m³.</summary>
/// <param name="Low">Dry; for uplift.</param>
/// <param name="InService">At moisture in service; for the design shape.</param>
/// <param name="High">Freshly treated or green; for lifting.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record DensityRange(double Low, double InService, double High, string Source);
