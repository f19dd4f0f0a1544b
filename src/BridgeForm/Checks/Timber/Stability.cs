namespace BridgeForm.Checks.Timber;

/// <summary>Beams that tip sideways and columns that bow: NDS 3.3.3 and 3.7.1 (from memory).</summary>
internal static class Stability
{
    private const double ColumnConstant = 0.8;

    /// <summary>Greatest RB of a beam (NDS 3.3.3.7) and greatest le/d of a column (NDS 3.7.1.4); both from memory.</summary>
    public const double Limit = 50;

    /// <summary>
    /// CL of a beam: 1 when not deeper than broad, else from the slenderness RB = √(le·d/b²) and FbE = 1.20·Emin'/RB².
    /// </summary>
    /// <param name="section">b and d, metres.</param>
    /// <param name="unsupported">Length between places where the pressed edge is held sideways, metres.</param>
    /// <param name="cantilever">Held at one end, loaded at the other.</param>
    /// <param name="strength">Fb' without CL and Cfu, pascals.</param>
    /// <param name="modulus">Emin', pascals.</param>
    public static Factor Beam(RectangularSection section, double unsupported, bool cantilever, double strength, double modulus)
    {
        if (section.Depth <= section.Breadth)
        {
            return new("CL", 1, "not deeper than broad, NDS 3.3.3.1");
        }

        var effective = Effective(unsupported, section.Depth, cantilever);
        var slenderness = effective * section.Depth / (section.Breadth * section.Breadth);
        var ratio = 1.2 * modulus / slenderness / strength;
        var half = (1 + ratio) / 1.9;
        return new(
            "CL",
            half - Math.Sqrt((half * half) - (ratio / 0.95)),
            "NDS 3.3.3.8, held at the ends only",
            Math.Sqrt(slenderness) / Limit);
    }

    /// <summary>CP of a solid column with pinned ends: FcE = 0.822·Emin'/(le/d)², c = 0.8.</summary>
    /// <param name="length">Metres.</param>
    /// <param name="thickness">Size in the direction it bows, metres.</param>
    /// <param name="strength">Fc' without CP, pascals.</param>
    /// <param name="modulus">Emin', pascals.</param>
    public static Factor Column(double length, double thickness, double strength, double modulus)
    {
        var ratio = Buckling(length, thickness, modulus) / strength;
        var half = (1 + ratio) / (2 * ColumnConstant);
        return new(
            "CP",
            half - Math.Sqrt((half * half) - (ratio / ColumnConstant)),
            "NDS 3.7.1.5, pinned ends",
            length / thickness / Limit);
    }

    /// <summary>FcE, pascals.</summary>
    public static double Buckling(double length, double thickness, double modulus) =>
        0.822 * modulus / (length / thickness * (length / thickness));

    // NDS Table 3.3.3: cantilever with its load at the end; any other span with any load.
    private static double Effective(double length, double depth, bool cantilever) => (length / depth, cantilever) switch
    {
        ( < 7, true) => 1.87 * length,
        (_, true) => (1.44 * length) + (3 * depth),
        ( < 7, false) => 2.06 * length,
        ( <= 14.3, false) => (1.63 * length) + (3 * depth),
        _ => 1.84 * length,
    };
}
