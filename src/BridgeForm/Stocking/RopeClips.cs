using System.Collections.Immutable;

namespace BridgeForm.Stocking;

/// <summary>U-bolt clips of one rope end.</summary>
/// <param name="Diameter">Of the rope, inches.</param>
/// <param name="Count">Least number of clips.</param>
/// <param name="TurnBack">Rope to turn back from the thimble, inches.</param>
/// <param name="Torque">Of the nuts, ft·lb.</param>
/// <param name="Source">Where the row comes from.</param>
public sealed record ClipRow(double Diameter, int Count, double TurnBack, double Torque, string Source);

/// <summary>Clips by diameter of the rope. Nothing is interpolated: a size between two rows takes the larger one.</summary>
public static class RopeClips
{
    private const string State = "California 8 CCR 8497, table 1";
    private const string Trade = "rigging trade's clip table (small sizes; turn-back differs by source)";
    private const double MetresPerInch = 0.0254;

    // Diameters in inches as fractions are exact in a double but for a conversion from metres.
    private const double SameSize = 1e-6;

    /// <summary>All rows, thinnest first.</summary>
    public static ImmutableArray<ClipRow> Rows { get; } =
    [
        new(1.0 / 8, 2, 3.75, 4.5, Trade),
        new(3.0 / 16, 2, 3.75, 7.5, Trade),
        new(1.0 / 4, 2, 4.75, 15, Trade),
        new(5.0 / 16, 2, 5.25, 30, Trade),
        new(3.0 / 8, 2, 6.5, 45, Trade),
        new(7.0 / 16, 2, 7, 65, Trade),
        new(1.0 / 2, 3, 11.5, 65, State),
        new(9.0 / 16, 3, 12, 95, State),
        new(5.0 / 8, 3, 12, 95, State),
        new(3.0 / 4, 4, 18, 130, State),
        new(7.0 / 8, 4, 19, 225, State),
        new(1, 5, 26, 225, State),
        new(1.125, 6, 34, 225, State),
        new(1.25, 6, 37, 360, State),
        new(1.375, 7, 44, 360, State),
        new(1.5, 7, 48, 360, State),
    ];

    /// <summary>The row of that diameter in metres, or the next larger; null beyond the table.</summary>
    public static ClipRow? For(double diameter) =>
        Rows.FirstOrDefault(r => r.Diameter >= (diameter / MetresPerInch) - SameSize);
}
