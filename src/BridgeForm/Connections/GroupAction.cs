using BridgeForm.Quantities;

namespace BridgeForm.Connections;

/// <summary>Cg: fasteners in a row do not share a load alike, for the members stretch between them.</summary>
public static class GroupAction
{
    /// <summary>Where the equation is from.</summary>
    public const string Source = "NDS 2018 eq. 11.3-1";

    /// <summary>E of steel side plates, pascals (NDS 2018 Table 11.3.6C, transcribed).</summary>
    public const double SteelModulus = 30e6 * DowelBearing.Psi;

    // γ / D^1.5 of dowels between wood and metal, lb/in with D in inches (NDS 2018 11.3.6.1, transcribed).
    private const double Slip = 270_000;

    /// <summary>Cg of a row between wood and steel.</summary>
    /// <param name="count">Fasteners in the row.</param>
    /// <param name="spacing">Between them, metres.</param>
    /// <param name="diameter">Metres.</param>
    /// <param name="main">E·A of the wood, whole section, newtons.</param>
    /// <param name="side">E·A of all plates together, newtons.</param>
    public static double Factor(int count, double spacing, double diameter, double main, double side)
    {
        if (count < 2 || diameter < DowelBearing.ThinFastener - Tolerances.RoundOff)
        {
            return 1;
        }

        var inches = diameter / Units.MetresPerInch;
        var slip = Slip * inches * Math.Sqrt(inches) * Units.PoundForce / Units.MetresPerInch;
        var u = 1 + (slip * spacing / 2 * ((1 / main) + (1 / side)));
        var m = u - Math.Sqrt((u * u) - 1);
        var (once, twice) = (Power.Whole(m, count), Power.Whole(m, 2 * count));
        var stiffness = Math.Min(side / main, main / side);
        return m * (1 - twice) / (count * (((1 + (stiffness * once)) * (1 + m)) - 1 + twice)) * (1 + stiffness) / (1 - m);
    }
}
