using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Ropes.Fittings;

/// <summary>A turnbuckle or shackle of one size.</summary>
/// <param name="Size">Size in inches, as people write it.</param>
/// <param name="WorkingLoad">Working load limit, newtons.</param>
public sealed record RatedFitting(string Size, double WorkingLoad)
{
    /// <summary>Its size with its unit: <c>7/8 in</c>, or <c>22 mm (7/8 in)</c>; fittings of this pattern are sold by inches.</summary>
    /// <param name="units">Of the project.</param>
    public string Named(UnitSystem units) => units == UnitSystem.Metric
        ? $"{NumberText.Rounded(QuantityReader.Read(QuantityKind.Length, Size + " in").Value * 1000, 0)} mm ({Size} in)"
        : Size + " in";
}

/// <summary>A named set of sizes with their working loads; sets of other makers and standards differ.</summary>
/// <param name="Name">Of the set.</param>
/// <param name="Source">Where the working loads come from.</param>
/// <param name="Sizes">Smallest first, strength growing.</param>
public sealed record FittingSet(string Name, string Source, ImmutableArray<RatedFitting> Sizes)
{
    /// <summary>Turnbuckles of one rope, and shackles: one at each end.</summary>
    public const int PerRope = 2;

    private const double ShortTon = 2000;

    // Take-ups on sale, metres: 6, 12, 18 and 24 in (makers' tables).
    private static readonly ImmutableArray<double> TakeUps = [
        6 * Quantities.Units.MetresPerInch, 12 * Quantities.Units.MetresPerInch, 18 * Quantities.Units.MetresPerInch,
        24 * Quantities.Units.MetresPerInch,
    ];

    /// <summary>Turnbuckles with jaws or eyes.</summary>
    public static FittingSet Turnbuckles { get; } = new(
        "FF-T-791b jaw or eye turnbuckles",
        "FF-T-791b working loads at 5 : 1, as printed for AASHTO M 269; current catalogs rate the same sizes otherwise",
        [
            Pounds("1/4", 500), Pounds("5/16", 700), Pounds("3/8", 1040), Pounds("1/2", 1800), Pounds("5/8", 2700),
            Pounds("3/4", 4000), Pounds("7/8", 5800), Pounds("1", 7600), Pounds("1-1/4", 12000),
        ]);

    /// <summary>Carbon anchor shackles.</summary>
    public static FittingSet Shackles { get; } = new(
        "carbon steel anchor shackles",
        "a maker's working loads, RR-C-271 pattern, at 6 : 1",
        [
            Pounds("3/16", 0.33 * ShortTon), Pounds("1/4", 0.5 * ShortTon), Pounds("5/16", 0.75 * ShortTon),
            Pounds("3/8", ShortTon), Pounds("7/16", 1.5 * ShortTon), Pounds("1/2", 2 * ShortTon),
            Pounds("5/8", 3.25 * ShortTon), Pounds("3/4", 4.75 * ShortTon), Pounds("7/8", 6.5 * ShortTon), Pounds("1", 8.5 * ShortTon),
        ]);

    /// <summary>The smallest size that carries a pull in newtons; null when none does.</summary>
    public RatedFitting? Smallest(double pull) => Sizes.FirstOrDefault(s => s.WorkingLoad >= pull);

    /// <summary>
    /// The shortest take-up on sale that takes up so much of one rope with a turnbuckle at each end, metres; null when none does.
    /// </summary>
    public static double? TakeUpOfEach(double ofRope) => ShortestTakeUp(ofRope / PerRope);

    /// <summary>The shortest take-up on sale that reaches, metres; null when none does.</summary>
    public static double? ShortestTakeUp(double needed) => TakeUps.Cast<double?>().FirstOrDefault(t => t >= needed);

    private static RatedFitting Pounds(string size, double pounds) => new(size, pounds * Quantities.Units.PoundForce);
}
