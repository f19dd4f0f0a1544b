using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Connections;

/// <summary>A size of screws on sale. Metres.</summary>
/// <param name="Name">As the project file names it: <c>no10</c>, <c>lag-1/4</c>.</param>
/// <param name="Words">As people read it.</param>
/// <param name="IsLag">A lag screw, turned in by its hexagon.</param>
/// <param name="Diameter">D, of the shank.</param>
/// <param name="Root">Dr, of the thread's root.</param>
/// <param name="Head">Of the head, or across the flats of a hexagon.</param>
/// <param name="Tip">Length of the tapered tip.</param>
public sealed record ScrewSize(string Name, string Words, bool IsLag, double Diameter, double Root, double Head, double Tip)
{
    /// <summary>Fyb, pascals (NDS 2018 Table I1, transcribed; by the diameter D).</summary>
    public double Yield => DowelBearing.Psi * (Diameter / Units.MetresPerInch) switch
    {
        <= 0.142 => 100_000,
        <= 0.177 => 90_000,
        <= 0.236 => 80_000,
        <= 0.273 => 70_000,
        < 0.344 => 60_000,
        _ => 45_000,
    };

    /// <summary>Diameters that it goes at least into the wood that holds it (NDS 2018 12.1.4.6, 12.1.5.6, transcribed).</summary>
    public double Least => (IsLag ? 4 : 6) * Diameter;

    /// <summary>How deep it goes for its full value sideways; less of it in proportion (NDS 2018 Tables 12J, 12L, footnotes).</summary>
    public double Full => (IsLag ? 8 : 10) * Diameter;

    /// <summary>
    /// Length of the thread without its tip, metres: two thirds of a wood screw (ASME B18.6.1), half a lag screw and 1/2 in more, its
    /// tip taken off (NDS 2018 Table L2).
    /// </summary>
    public double Thread(double length) => IsLag
        ? Math.Min(length, (length / 2) + (Units.MetresPerInch / 2)) - Tip
        : length * 2 / 3;
}

/// <summary>Wood screws No. 8 to 14, and lag screws.</summary>
public static class ScrewSizes
{
    /// <summary>Where their sizes are from.</summary>
    public const string Source = "NDS 2018 Tables L2 and L3 (roots transcribed for No. 10 and lag screws, else from memory); metric: "
        + "common practice, no source";

    // Of lag screws as NDS 2018 Table L2 has them (from memory): hexagon across the flats, and tip.
    private static readonly ImmutableArray<ScrewSize> s_lags =
    [
        Lag("1/4", 1.0 / 4, 0.173, 7.0 / 16, 5.0 / 32),
        Lag("5/16", 5.0 / 16, 0.227, 1.0 / 2, 3.0 / 16),
        Lag("3/8", 3.0 / 8, 0.265, 9.0 / 16, 7.0 / 32),
        Lag("1/2", 1.0 / 2, 0.371, 3.0 / 4, 5.0 / 16),
    ];

    /// <summary>All of them.</summary>
    public static ImmutableArray<ScrewSize> All { get; } =
    [
        Numbered(8, 0.164, 0.131, 0.312),
        Numbered(10, 0.190, 0.152, 0.363),
        Numbered(12, 0.216, 0.171, 0.414),
        Numbered(14, 0.242, 0.196, 0.480),
        .. s_lags,
        Metric("m5", 5, 3.2, 9.5),
        Metric("m6", 6, 3.9, 11.5),
        MetricLag("lag-m8", 8, 5.6, 13, 5),
        MetricLag("lag-m10", 10, 7, 17, 6),
    ];

    /// <summary>The size of a name; the project file has no other.</summary>
    public static ScrewSize Named(string name) => All.First(s => string.Equals(s.Name, name, StringComparison.Ordinal));

    private static ScrewSize Numbered(int number, double diameter, double root, double head) => new(
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"no{number}"),
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"No. {number} wood screws"),
        IsLag: false, diameter * Units.MetresPerInch, root * Units.MetresPerInch, head * Units.MetresPerInch,
        2 * diameter * Units.MetresPerInch);

    private static ScrewSize Lag(string size, double diameter, double root, double head, double tip) => new(
        "lag-" + size, $"{size} in lag screws with washers", IsLag: true, diameter * Units.MetresPerInch, root * Units.MetresPerInch,
        head * Units.MetresPerInch, tip * Units.MetresPerInch);

    private static ScrewSize Metric(string name, double diameter, double root, double head) => new(
        name, $"{name[1..]} mm wood screws", IsLag: false, diameter * Rounding.Millimetre, root * Rounding.Millimetre,
        head * Rounding.Millimetre, 2 * diameter * Rounding.Millimetre);

    private static ScrewSize MetricLag(string name, double diameter, double root, double head, double tip) => new(
        name, $"{name[5..]} mm lag screws with washers", IsLag: true, diameter * Rounding.Millimetre, root * Rounding.Millimetre,
        head * Rounding.Millimetre, tip * Rounding.Millimetre);
}

/// <summary>Screws pulled out of side grain along their axis, by NDS 2018 12.2. Newtons for one screw.</summary>
public static class ScrewPull
{
    /// <summary>Where the equations are from.</summary>
    public const string Source =
        "NDS 2018 eq. 12.2-1 and 12.2-2 (thread in side grain), 12.2-6 (head through the part it holds, from memory)";

    /// <summary>Out of the wood that holds the thread.</summary>
    /// <param name="size">The screw.</param>
    /// <param name="gravity">G of that wood.</param>
    /// <param name="thread">Of the thread in it, without the tip, metres.</param>
    public static double Out(ScrewSize size, double gravity, double thread)
    {
        var inches = size.Diameter / Units.MetresPerInch;
        var perInch = size.IsLag
            ? 1800 * gravity * Math.Sqrt(gravity) * Elementary.Pow(inches, 0.75)
            : 2850 * gravity * gravity * inches;
        return perInch * Math.Max(0, thread) / Units.MetresPerInch * Units.PoundForce;
    }

    /// <summary>Its head through the part that it holds.</summary>
    /// <param name="size">The screw.</param>
    /// <param name="gravity">G of the part.</param>
    /// <param name="thickness">Of the part, metres.</param>
    public static double Through(ScrewSize size, double gravity, double thickness)
    {
        var (head, side) = (size.Head / Units.MetresPerInch, thickness / Units.MetresPerInch);
        return Math.PI * head * gravity * gravity * Math.Min(690 * side, 1725 * head) * Units.PoundForce;
    }
}
