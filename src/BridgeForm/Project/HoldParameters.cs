using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// How wood is held at a saw: round figures of the file's units, so that every sheet prints the same. Metres. Common practice, no
/// source.
/// </summary>
/// <param name="Clear">Along the wood from the blade's path to a clamp: what keeps iron out of it.</param>
/// <param name="Clamp">Wood under a clamp, along it.</param>
/// <param name="Shortest">A shorter piece is not held safely by itself.</param>
public sealed record HoldParameters(double Clear, double Clamp, double Shortest)
{
    /// <summary>Wood beyond the blade's path that a clamp needs.</summary>
    public double Room => Clear + Clamp;

    /// <summary>The figures of a system of units: 6, 2 and 12 in, or 150, 50 and 300 mm.</summary>
    public static HoldParameters For(UnitSystem units) => units == UnitSystem.Imperial
        ? new(6 * Quantities.Units.MetresPerInch, 2 * Quantities.Units.MetresPerInch, 12 * Quantities.Units.MetresPerInch)
        : new(0.150, 0.050, 0.300);
}
