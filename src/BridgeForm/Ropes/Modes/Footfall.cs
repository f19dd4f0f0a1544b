namespace BridgeForm.Ropes.Modes;

/// <summary>One way in which a bridge can swing under people's feet.</summary>
/// <param name="Hertz">Frequency.</param>
/// <param name="IsCoupled">Frames sway and roll in it; else both ropes go up and down alike.</param>
/// <param name="VerticalMass">
/// Modal mass where the deck's largest move up and down is 1 (of its edge where frames roll), kg; infinite where it has none.
/// </param>
/// <param name="LateralMass">The same of its largest move to the side, kg; infinite where it has none.</param>
public sealed record WalkedMode(double Hertz, bool IsCoupled, double VerticalMass, double LateralMass);

/// <summary>
/// What one walker does to a mode (EUR 23984 EN, Design of Lightweight Footbridges for Human Induced Vibrations, JRC and ECCS,
/// 2009; only its title pages were seen, all figures from memory): a harmonic force where the deck moves most, at the mode's own
/// frequency, until it moves no more, a = P·ψ / (2·ξ·M).
/// </summary>
public static class Footfall
{
    /// <summary>Force of one walker up and down, newtons.</summary>
    public const double VerticalForce = 280;

    /// <summary>Force of one walker to the side, newtons.</summary>
    public const double LateralForce = 35;

    /// <summary>Damping ratio: the least that the report gives for stress ribbons; timber has 1 %.</summary>
    public const double Damping = 0.007;

    /// <summary>A mode lighter than twenty people of 75 kg answers to each of them: the method does not hold, kg.</summary>
    public const double LeastMass = 20 * 75;

    /// <summary>Ends of the critical range up and down, Hz: first and second harmonic of the step.</summary>
    public static (double From, double To) VerticalRange => (1.25, 4.6);

    /// <summary>Ends of the critical range to the side, Hz.</summary>
    public static (double From, double To) LateralRange => (0.5, 1.2);

    // Corners of ψ over the frequency, straight between them, 0 outside.
    private static readonly (double Hertz, double Share)[] s_vertical =
        [(1.25, 0), (1.7, 1), (2.1, 1), (2.3, 0), (2.5, 0), (3.4, 0.25), (4.2, 0.25), (4.6, 0)];

    private static readonly (double Hertz, double Share)[] s_lateral = [(0.5, 0), (0.7, 1), (1.0, 1), (1.2, 0)];

    /// <summary>ψ up and down: how likely people step so fast.</summary>
    public static double VerticalShare(double hertz) => Between(s_vertical, hertz);

    /// <summary>ψ to the side.</summary>
    public static double LateralShare(double hertz) => Between(s_lateral, hertz);

    /// <summary>Peak acceleration, m/s²; null where the mode is too light for the method.</summary>
    /// <param name="force">Of one walker, newtons.</param>
    /// <param name="share">ψ.</param>
    /// <param name="mass">Modal mass, kg.</param>
    public static double? Acceleration(double force, double share, double mass) =>
        mass >= LeastMass ? force * share / (2 * Damping * mass) : null;

    private static double Between((double Hertz, double Share)[] corners, double hertz)
    {
        for (var i = 1; i < corners.Length; i++)
        {
            var (from, to) = (corners[i - 1], corners[i]);
            if (hertz >= from.Hertz && hertz <= to.Hertz)
            {
                return from.Share + ((to.Share - from.Share) * (hertz - from.Hertz) / (to.Hertz - from.Hertz));
            }
        }

        return 0;
    }
}
