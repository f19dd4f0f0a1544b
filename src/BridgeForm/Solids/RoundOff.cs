namespace BridgeForm.Solids;

/// <summary>
/// Lengths below which the solids kernel sees no difference. This is round-off, not shop tolerance: nobody can saw it.
/// </summary>
public static class RoundOff
{
    /// <summary>
    /// A corner nearer than this to a plane lies on it, and corners nearer to each other are one; metres. Twice the step of
    /// a 32-bit float between 4 m and 8 m (4.8e-7 m), so corners stay apart in files that store such floats.
    /// </summary>
    public const double Length = 1e-6;

    /// <summary>
    /// How far a corner may lie off its face's plane, metres: it was put on up to three planes, each within <see cref="Length"/>.
    /// </summary>
    public const double Planarity = 4 * Length;

    /// <summary>Sine of the angle below which two directions count as parallel; a micron over the longest stock, 6 m, rounded down.</summary>
    public const double Parallel = 1e-7;
}
