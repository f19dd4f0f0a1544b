using BridgeForm.Quantities;

namespace BridgeForm.Connections;

/// <summary>Wood that bolts and lag screws keep around them, in softwood and by the diameter D. Metres.</summary>
public static class DowelDistances
{
    /// <summary>Where they are from.</summary>
    public const string Source = "NDS 2018 Tables 12.5.1A to 12.5.1D";

    /// <summary>End distance towards which the fastener pulls, for its full value.</summary>
    public const double FullEnd = 7;

    /// <summary>The least such, for half the value.</summary>
    public const double LeastEnd = 3.5;

    /// <summary>End distance that the fastener pulls away from, or across the grain: for its full value.</summary>
    public const double FullIdleEnd = 4;

    /// <summary>The least such, for half the value.</summary>
    public const double LeastIdleEnd = 2;

    /// <summary>Between fasteners of a row, for the full value.</summary>
    public const double FullSpacing = 4;

    /// <summary>The least such.</summary>
    public const double LeastSpacing = 3;

    /// <summary>To an edge towards which a fastener presses across the grain: no less.</summary>
    public const double LoadedEdge = 4;

    /// <summary>To any other edge: no less.</summary>
    public const double IdleEdge = 1.5;

    /// <summary>Length over diameter above which the edge also wants half the distance of two lines (Table 12.5.1C).</summary>
    public const double SlenderFrom = 6;

    /// <summary>Most wood across the grain between the outermost fasteners of one plate, metres (12.5.1.3): it shrinks.</summary>
    public const double WidestGroup = 5 * Units.MetresPerInch;

    /// <summary>Least distance along the grain between fasteners that press across it: rows of one each (Table 12.5.1D).</summary>
    /// <param name="diameter">D, metres.</param>
    /// <param name="length">Of the dowel in the wood, metres.</param>
    public static double BetweenRowsAcross(double diameter, double length) => (length / diameter) switch
    {
        <= 2 => 2.5 * diameter,
        >= 6 => 5 * diameter,
        _ => ((5 * length) + (10 * diameter)) / 8,
    };

    /// <summary>CΔ: the smallest share of a distance for the full value, at most 1; 0 below the least.</summary>
    /// <param name="had">Distance there is, metres.</param>
    /// <param name="least">Below it the fastener does not count, metres.</param>
    /// <param name="full">For the full value, metres.</param>
    public static double Factor(double had, double least, double full) =>
        had < least * (1 - Tolerances.SameLimit) ? 0 : Math.Min(1, had / full);
}
