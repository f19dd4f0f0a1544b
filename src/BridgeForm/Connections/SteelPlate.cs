using BridgeForm.Quantities;

namespace BridgeForm.Connections;

/// <summary>
/// A flat bar with bolts through it, and the bolts' own shear, by allowable strength design of AISC 360 (from memory). Metres,
/// newtons, pascals.
/// </summary>
/// <param name="Width">Across the pull.</param>
/// <param name="Thickness">Of one plate.</param>
public sealed record SteelPlate(double Width, double Thickness)
{
    /// <summary>Where the equations are from.</summary>
    public const string Source = "AISC 360 D2, F1, H1, J3.4, J3.6, J3.10, J4.3 (ASD, from memory)";

    /// <summary>Of mild steel, kg/m³ (common practice, no source).</summary>
    public const double Density = 7850;

    private const double Ksi = 1000 * DowelBearing.Psi;
    private const double RuptureSafety = 2;
    private const double YieldSafety = 1.67;

    // ASTM A307 bolts, threads anywhere: nominal shear stress (AISC 360 Table J3.2, from memory).
    private const double BoltShear = 27 * Ksi;

    // A punched or drilled hole counts 1/16 in wider than it is (AISC 360 B4.3b, from memory).
    private const double Damage = Units.MetresPerInch / 16;

    // ASTM A36; below 1/4 in sheet of A653 grade 33.
    private double Yields => DowelBearing.IsPlate(Thickness) ? 36 * Ksi : 33 * Ksi;

    private double Breaks => DowelBearing.IsPlate(Thickness) ? 58 * Ksi : 45 * Ksi;

    /// <summary>Shear of one bolt at one plane.</summary>
    public static double Bolt(double diameter) => BoltShear * Math.PI / 4 * diameter * diameter / RuptureSafety;

    /// <summary>Bearing of one bolt, or its tearing out of the plate, whichever is less.</summary>
    /// <param name="diameter">Of the bolt.</param>
    /// <param name="clear">From the edge of its hole to the next hole or the plate's edge.</param>
    public double Bearing(double diameter, double clear) =>
        Math.Min(2.4 * diameter, 1.2 * Math.Max(0, clear)) * Thickness * Breaks / RuptureSafety;

    /// <summary>
    /// Pull and bending together, as a share of what is allowed: by the whole section's yielding, and by the net section's breaking.
    /// </summary>
    /// <param name="pull">Newtons on this plate.</param>
    /// <param name="moment">In its plane, N·m on this plate.</param>
    /// <param name="hole">Diameter of the holes in the section, metres.</param>
    /// <param name="holes">How many lie in it side by side.</param>
    public double Share(double pull, double moment, double hole, int holes)
    {
        var net = Math.Max(0, Width - (holes * (hole + Damage)));
        return net <= 0
            ? double.PositiveInfinity
            : Math.Max(
                Share(pull, moment, Width, Yields / YieldSafety),
                Share(pull, moment, net, Breaks / RuptureSafety));
    }

    // Bending by the elastic modulus: a bar in its own plane reaches more.
    private double Share(double pull, double moment, double width, double allowed) =>
        ((Math.Abs(pull) / (width * Thickness)) + (Math.Abs(moment) * 6 / (width * width * Thickness))) / allowed;

    /// <summary>
    /// Block shear, newtons: 0.6 Fu of the net planes along the pull, or 0.6 Fy of the whole ones, and Fu of the net one across it.
    /// </summary>
    /// <param name="along">Length of a plane along the pull, to the plate's end, metres.</param>
    /// <param name="count">Holes in it, the last of them half.</param>
    /// <param name="planes">Such planes: one or two.</param>
    /// <param name="across">Length of the plane across, metres.</param>
    /// <param name="hole">Diameter of the holes, metres.</param>
    /// <param name="holes">Holes in that.</param>
    public double Block(double along, int count, int planes, double across, double hole, double holes)
    {
        var wide = hole + Damage;
        var tension = Breaks * Math.Max(0, across - (holes * wide));
        var shear = 0.6 * planes * Math.Min(Breaks * Math.Max(0, along - ((count - 0.5) * wide)), Yields * along);
        return (shear + tension) * Thickness / RuptureSafety;
    }

    /// <summary>Least distance from a hole's middle to the plate's edge (AISC 360 Table J3.4, from memory: 3/4 in for 1/2 in).</summary>
    public static double LeastEdge(double diameter) => 1.5 * diameter;
}
