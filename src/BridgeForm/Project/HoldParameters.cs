using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// How wood is held at a saw: round figures of the file's units, so that every sheet prints the same. Metres. Common practice, no
/// source.
/// </summary>
/// <param name="Clear">Square from the blade's path to a clamp: what keeps iron out of it.</param>
/// <param name="Clamp">Wood under a clamp, along it.</param>
/// <param name="Shortest">A shorter piece is not held safely by itself.</param>
/// <param name="BlockThin">Thin end of a taper block: a feather edge would crush.</param>
/// <param name="BlockThick">Thickest end of one that still stands on the table and that a clamp spans. An own figure.</param>
/// <param name="BlockStep">Lengths of blocks are whole multiples of it.</param>
public sealed record HoldParameters(
    double Clear, double Clamp, double Shortest, double BlockThin, double BlockThick, double BlockStep)
{
    /// <summary>Wood beyond the blade's path that a clamp needs.</summary>
    public double Room => Clear + Clamp;

    /// <summary>
    /// The figures of a system of units: 6, 2 and 12 in, or 150, 50 and 300 mm; blocks from 1/2 to 4 in thick by 1/2 in of length, or
    /// from 12 to 100 mm by 10 mm.
    /// </summary>
    public static HoldParameters For(UnitSystem units) => units == UnitSystem.Imperial
        ? new(Inches(6), Inches(2), Inches(12), Inches(0.5), Inches(4), Inches(0.5))
        : new(0.150, 0.050, 0.300, 0.012, 0.100, 0.010);

    private static double Inches(double inches) => inches * Quantities.Units.MetresPerInch;
}
