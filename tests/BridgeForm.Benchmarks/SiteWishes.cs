using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Proposals;
using BridgeForm.Quantities;

namespace BridgeForm.Benchmarks;

/// <summary>
/// Random sites, the same for the same seed: 8 to 120 ft, rises to 1 : 4, private and public, both units, three lists of lumber.
/// </summary>
internal static class SiteWishes
{
    private const double ShortestFeet = 8;
    private const double LongestFeet = 120;
    private const double SteepestRise = 0.25;

    private static readonly ImmutableArray<string>[] s_imperial =
    [
        [],
        ["2x4", "2x6", "2x8", "4x4", "4x6", "1x6"],
        ["2x4", "2x6", "2x10", "2x12", "4x6", "6x6", "5/4x6"],
    ];

    private static readonly ImmutableArray<string>[] s_metric =
    [
        [],
        ["45 x 95 mm", "45 x 145 mm", "45 x 195 mm", "95 x 95 mm", "95 x 145 mm", "22 x 145 mm"],
        ["45 x 95 mm", "45 x 145 mm", "45 x 220 mm", "70 x 145 mm", "70 x 195 mm", "120 x 120 mm", "28 x 145 mm"],
    ];

    /// <summary>The site of a seed.</summary>
    public static SiteWish Of(int seed)
    {
        var random = new Random(seed);
        var feet = ShortestFeet * Math.Pow(LongestFeet / ShortestFeet, random.NextDouble());
        var rise = random.Next(3) == 0 ? 0 : feet * SteepestRise * ((2 * random.NextDouble()) - 1);
        var isMetric = random.Next(2) == 0;
        return new SiteWish(Length(feet, isMetric))
        {
            Name = string.Create(CultureInfo.InvariantCulture, $"Site {seed} (invented)"),
            Units = isMetric ? UnitSystem.Metric : UnitSystem.Imperial,
            Rise = Length(rise, isMetric),
            Use = random.Next(3) == 0 ? BridgeUse.Public : BridgeUse.Private,
            Lumber = (isMetric ? s_metric : s_imperial)[random.Next(3)],
        };
    }

    private static string Length(double feet, bool isMetric) => isMetric
        ? string.Create(CultureInfo.InvariantCulture, $"{feet * Units.MetresPerFoot:0.00} m")
        : string.Create(CultureInfo.InvariantCulture, $"{feet:0.0} ft");
}
