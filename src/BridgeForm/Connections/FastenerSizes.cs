using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Connections;

/// <summary>A size of hex bolts on sale. Metres.</summary>
/// <param name="Size">As it is called.</param>
/// <param name="Diameter">Of the shank.</param>
/// <param name="Head">Height of the head.</param>
/// <param name="Nut">Height of the nut.</param>
/// <param name="Washer">Thickness of a cut washer.</param>
/// <param name="IsMetric">Its lengths on sale are millimetres.</param>
public sealed record BoltSize(string Size, double Diameter, double Head, double Nut, double Washer, bool IsMetric)
{
    /// <summary>Diameter at the root of its thread (ASME B1.1 UNC, ISO 724 coarse: minor diameters, from memory).</summary>
    public required double Root { get; init; }
}

/// <summary>A bolt as it is bought for a joint. Metres.</summary>
/// <param name="Length">On sale.</param>
/// <param name="Washers">Under its nut, so many that the nut finds thread.</param>
/// <param name="Shank">From its head to where the thread begins.</param>
/// <param name="Counts">Diameter in the yield equations: of the shank, or of the root where threads bear in the nut's plate.</param>
public sealed record BoltFit(double Length, int Washers, double Shank, double Counts);

/// <summary>Hex bolts on sale, from 1/4 to 1 in and from M8 to M24.</summary>
public static class BoltSizes
{
    /// <summary>Where heads, nuts and washers are from.</summary>
    public const string Source =
        "ASME B18.2.1, B18.2.2, B18.21.1, ISO 4014, 4032, 7089 (from memory); lengths on sale: common practice, no source";

    private const double Inch = Units.MetresPerInch;

    /// <summary>All of them.</summary>
    public static ImmutableArray<BoltSize> All { get; } =
    [
        Row("1/4", 1.0 / 4, 11.0 / 64, 7.0 / 32, 0.065, 0.189),
        Row("5/16", 5.0 / 16, 7.0 / 32, 17.0 / 64, 0.083, 0.244),
        Row("3/8", 3.0 / 8, 15.0 / 64, 21.0 / 64, 0.083, 0.298),
        Row("1/2", 1.0 / 2, 5.0 / 16, 7.0 / 16, 0.109, 0.406),
        Row("5/8", 5.0 / 8, 25.0 / 64, 35.0 / 64, 0.134, 0.514),
        Row("3/4", 3.0 / 4, 15.0 / 32, 41.0 / 64, 0.148, 0.627),
        Row("7/8", 7.0 / 8, 35.0 / 64, 3.0 / 4, 0.165, 0.739),
        Row("1", 1.0, 39.0 / 64, 55.0 / 64, 0.165, 0.847),
        Metric("M8", 8, 5.3, 6.8, 1.6, 6.47),
        Metric("M10", 10, 6.4, 8.4, 2, 8.16),
        Metric("M12", 12, 7.5, 10.8, 2.5, 9.85),
        Metric("M16", 16, 10, 14.8, 3, 13.55),
        Metric("M20", 20, 12.5, 18, 3, 16.93),
        Metric("M24", 24, 15, 21.5, 4, 20.32),
    ];

    /// <summary>Fyb of bolts of mild steel, pascals (NDS 2018 Table I1, transcribed).</summary>
    public const double Yield = 45_000 * DowelBearing.Psi;

    /// <summary>Holes are 1/16 in wider than their bolts (NDS 2018 12.1.3.2: 1/32 to 1/16 in, transcribed).</summary>
    public const double Oversize = Inch / 16;

    // A nut is full when two threads stand out of it; 1/8 in is as much of the coarsest of these (common practice, no source).
    private const double StandsOut = Inch / 8;

    /// <summary>The size of that diameter, to a tenth of a millimetre; null where none is on sale.</summary>
    public static BoltSize? Find(double diameter) =>
        All.FirstOrDefault(s => Math.Abs(s.Diameter - diameter) < Tolerances.NamedDiameter);

    /// <summary>The size of a system of units that is nearest to a diameter.</summary>
    public static BoltSize Nearest(double diameter, UnitSystem units) =>
        All.Where(s => s.IsMetric == (units == UnitSystem.Metric)).MinBy(s => Math.Abs(s.Diameter - diameter))!;

    /// <summary>The largest size of a system of units that is no thicker; null where all are.</summary>
    public static BoltSize? Largest(double diameter, UnitSystem units) => All
        .Where(s => s.IsMetric == (units == UnitSystem.Metric) && s.Diameter <= diameter + Tolerances.RoundOff)
        .MaxBy(s => s.Diameter);

    /// <summary>
    /// Length on sale of a bolt that holds a grip, with a washer and a nut: half inches to 6 in, inches from there; millimetres by
    /// tens.
    /// </summary>
    /// <param name="size">Which.</param>
    /// <param name="grip">Wood and plates between head and washer, metres.</param>
    public static double Length(BoltSize size, double grip)
    {
        var needed = grip + size.Washer + size.Nut + StandsOut;
        return Rounding.Up(needed, size.IsMetric ? 10 * Rounding.Millimetre : needed <= 6 * Inch ? Inch / 2 : Inch);
    }

    /// <summary>Where the rule of threads in a member is from.</summary>
    public const string ThreadSource = "NDS 2018 12.3.7.2 (from memory); lengths of threads: ASME B18.2.1, ISO 4014 (from memory)";

    /// <summary>
    /// The shortest bolt whose shank reaches through the nut's plate, but for a quarter of that, and whose nut finds thread past at most
    /// four washers; where none does, the shortest that holds the grip, which counts by the root of its thread.
    /// </summary>
    /// <param name="size">Which.</param>
    /// <param name="wood">Between the plates, metres.</param>
    /// <param name="plate">Thickness of one plate, metres.</param>
    public static BoltFit Fit(BoltSize size, double wood, double plate)
    {
        var grip = wood + (2 * plate);
        var shortest = Length(size, grip);
        for (var length = shortest; length < shortest + (2 * Longer(size, shortest)) + Tolerances.RoundOff; length = Next(size, length))
        {
            var shank = length - Thread(size, length);
            var washers = Math.Max(1, (int)Math.Ceiling(((shank - grip) / size.Washer) - Tolerances.SameLimit));
            if (shank >= grip - (InThreads * plate) - Tolerances.RoundOff && washers <= MostWashers
                && grip + (washers * size.Washer) + size.Nut + StandsOut <= length + Tolerances.RoundOff)
            {
                return new(length, washers, shank, size.Diameter);
            }
        }

        return new(shortest, 1, shortest - Thread(size, shortest), size.Root);
    }

    /// <summary>
    /// Length of thread: 2 D and 1/4 in up to 6 in of bolt, 1/2 in beyond; 2 d and 6 mm up to 125 mm, 12 up to 200, 25 beyond.
    /// </summary>
    public static double Thread(BoltSize size, double length)
    {
        const double Millimetre = Rounding.Millimetre;
        var more = size.IsMetric
            ? Millimetre * (length <= 125 * Millimetre + Tolerances.RoundOff ? 6
                : length <= 200 * Millimetre + Tolerances.RoundOff ? 12 : 25)
            : length <= 6 * Inch + Tolerances.RoundOff ? Inch / 4 : Inch / 2;
        return (2 * size.Diameter) + more;
    }

    // Of the bearing in the plate: so much of it may be thread.
    private const double InThreads = 0.25;

    // More than that nobody stacks (own figure).
    private const int MostWashers = 4;

    private static double Longer(BoltSize size, double length) =>
        size.IsMetric ? 10 * Rounding.Millimetre : length < 6 * Inch - Tolerances.RoundOff ? Inch / 2 : Inch;

    private static double Next(BoltSize size, double length) => length + Longer(size, length);

    private static BoltSize Row(string size, double diameter, double head, double nut, double washer, double root) =>
        new(size, diameter * Inch, head * Inch, nut * Inch, washer * Inch, IsMetric: false) { Root = root * Inch };

    private static BoltSize Metric(string size, double diameter, double head, double nut, double washer, double root) => new(
        size, diameter * Rounding.Millimetre, head * Rounding.Millimetre, nut * Rounding.Millimetre, washer * Rounding.Millimetre,
        IsMetric: true)
    {
        Root = root * Rounding.Millimetre,
    };
}
