using System.Collections.Immutable;

namespace BridgeForm.Ropes.Fittings;

/// <summary>Lengths of the fittings at a rope's end, by size in inches as people write it. Metres.</summary>
public static class EndLengths
{
    private const double Inch = Quantities.Units.MetresPerInch;
    private const double Millimetre = Quantities.Rounding.Millimetre;

    /// <summary>Where lengths of shackles come from.</summary>
    public const string ShackleSource =
        "inside length of bow shackles, a maker's table (US Fed Spec RR-C-271, EN 13889); other makers differ by some millimeters";

    /// <summary>Where lengths of turnbuckles come from.</summary>
    public const string TurnbuckleSource =
        "body: take-up and both heads, a maker's table of forged bodies, heads below 1/2 in from memory; jaws' pins 2 thread diameters "
            + "beyond the heads when closed: an estimate, no source. Measure yours: ropes.ends.turnbuckle.closed goes before it";

    // Bow's inside to the pin, millimetres (a maker's table).
    private static readonly ImmutableArray<(string Size, double Length)> s_shackles =
    [
        ("3/16", 22), ("1/4", 29), ("5/16", 32), ("3/8", 36), ("7/16", 43), ("1/2", 47), ("5/8", 60), ("3/4", 71), ("7/8", 84),
        ("1", 95),
    ];

    // Thread's diameter and length of one threaded head of the body, inches (a maker's table; the first three from memory).
    private static readonly ImmutableArray<(string Size, double Diameter, double Head)> s_turnbuckles =
    [
        ("1/4", 0.25, 0.4375), ("5/16", 0.3125, 0.5), ("3/8", 0.375, 0.5625), ("1/2", 0.5, 25 / 32.0), ("5/8", 0.625, 15 / 16.0),
        ("3/4", 0.75, 1.0625), ("7/8", 0.875, 1.3125), ("1", 1, 1.4375), ("1-1/4", 1.25, 1.5625),
    ];

    private const double PinBeyondHead = 2;

    /// <summary>From the inside of the bow to the pin; null where the table has no such size.</summary>
    public static double? Shackle(string size) => s_shackles
        .Where(row => string.Equals(row.Size, size, StringComparison.Ordinal))
        .Select(row => (double?)row.Length * Millimetre)
        .FirstOrDefault();

    /// <summary>From pin to pin of a jaw and jaw turnbuckle, closed; null where the table has no such size.</summary>
    /// <param name="size">Of the thread.</param>
    /// <param name="takeUp">From open to closed: the clear opening between the heads.</param>
    public static double? ClosedTurnbuckle(string size, double takeUp) => s_turnbuckles
        .Where(row => string.Equals(row.Size, size, StringComparison.Ordinal))
        .Select(row => (double?)takeUp + (2 * (row.Head + (PinBeyondHead * row.Diameter)) * Inch))
        .FirstOrDefault();
}
