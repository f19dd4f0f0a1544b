namespace BridgeForm.Pieces;

/// <summary>
/// How a round bit makes a square inside corner: it overcuts it along a half circle through the corner, so that a square
/// part seats. Common practice, no source.
/// </summary>
public static class CornerRelief
{
    // A relief of exactly the bit's radius leaves a machine's own programme no path; 5 % more does. Common practice, no source.
    private const double Oversize = 1.05;

    /// <summary>Radius of the relief for a bit of that diameter, metres.</summary>
    public static double Radius(double bit) => bit / 2 * Oversize;

    /// <summary>From the corner along each wall to where the relief begins, metres: √2 radii.</summary>
    public static double Reach(double bit) => Math.Sqrt(2) * Radius(bit);

    /// <summary>Area the relief takes beyond the walls of one corner, m²: half a circle less the triangle inside the corner.</summary>
    public static double AreaBeyond(double bit) => Radius(bit) * Radius(bit) * ((Math.PI / 2) - 1);
}
