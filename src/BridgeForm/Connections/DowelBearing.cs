using BridgeForm.Quantities;

namespace BridgeForm.Connections;

/// <summary>Dowel bearing strength Fe: how hard a fastener may press the wood or steel around it. Pascals.</summary>
public static class DowelBearing
{
    /// <summary>Where the formulas are from.</summary>
    public const string Source = "NDS 2018 Table 12.3.3, 12.3.4 (Hankinson)";

    // NDS 2018 Table 12.3.3 (transcribed): psi, D in inches.
    private const double Along = 11200;
    private const double Square = 6100;
    private const double SquarePower = 1.45;
    private const double Thin = 16600;
    private const double ThinPower = 1.84;

    // NDS 2018 Tables 12G, 12K, footnote 2, and Appendix I.2 (transcribed): ASTM A36 plates of 1/4 in and more, 1.5 Fu of 58 ksi;
    // thinner sheet of ASTM A653 grade 33, 1.375 Fu of 45 ksi.
    private const double Plate = 87000;
    private const double Sheet = 61850;

    /// <summary>A fastener thinner than 1/4 in feels no grain, and takes no factor of grouping or geometry.</summary>
    public const double ThinFastener = 0.25 * Units.MetresPerInch;

    /// <summary>Pascals in a pound on the square inch.</summary>
    public const double Psi = Units.PoundForce / (Units.MetresPerInch * Units.MetresPerInch);

    /// <summary>Of wood of that specific gravity, for a fastener of that diameter, at an angle to the grain.</summary>
    /// <param name="gravity">G, oven dry.</param>
    /// <param name="diameter">Of the shank, metres; what the fastener is called by.</param>
    /// <param name="angle">Between load and grain, radians, 0 to π/2.</param>
    public static double Wood(double gravity, double diameter, double angle)
    {
        if (diameter < ThinFastener - Tolerances.RoundOff)
        {
            return Thin * Elementary.Pow(gravity, ThinPower) * Psi;
        }

        var along = Along * gravity * Psi;
        var square = Square * Elementary.Pow(gravity, SquarePower) / Math.Sqrt(diameter / Units.MetresPerInch) * Psi;
        var (sin, cos) = Elementary.SinCos(angle);
        return along * square / ((along * sin * sin) + (square * cos * cos));
    }

    /// <summary>Of a steel side plate of that thickness.</summary>
    public static double Steel(double thickness) => (IsPlate(thickness) ? Plate : Sheet) * Psi;

    /// <summary>Rolled as a plate (A36); thinner is taken as sheet.</summary>
    public static bool IsPlate(double thickness) => thickness >= ThinFastener - Tolerances.RoundOff;
}
