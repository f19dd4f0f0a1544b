using System.Collections.Immutable;

namespace BridgeForm.Ropes.Fittings;

/// <summary>
/// What a wire rope keeps of its strength where it lies bent over something round. D is the diameter of what it lies on, d the
/// rope's.
/// </summary>
public static class BendLoss
{
    /// <summary>Where the table comes from.</summary>
    public const string Source =
        "strength of wire rope by sheave and rope diameter, as rigging catalogs print it (40 : 95 %, 30 : 93, 20 : 91, 15 : 89, 10 : 86, "
            + "8 : 83, 6 : 79, 4 : 75, 2 : 65, 1 : 50)";

    /// <summary>D/d and the share of strength left, the sharpest bend first.</summary>
    public static ImmutableArray<(double Ratio, double Share)> Table { get; } =
        [(1, 0.50), (2, 0.65), (4, 0.75), (6, 0.79), (8, 0.83), (10, 0.86), (15, 0.89), (20, 0.91), (30, 0.93), (40, 0.95)];

    // A ratio that comes out at a row by two ways.
    private const double Rounding = 1e-9;

    /// <summary>Share of strength left: that of the next sharper bend in the table; null for one sharper than all, D/d below 1.</summary>
    public static double? Share(double ratio) =>
        Table.Where(row => row.Ratio <= ratio + Rounding).Select(row => (double?)row.Share).LastOrDefault();
}
