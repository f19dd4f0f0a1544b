using System.Collections.Immutable;

namespace BridgeForm.Materials;

/// <summary>Sections that lumber yards commonly sell, as a project file writes them.</summary>
public static class CommonSections
{
    /// <summary>Where the lists come from.</summary>
    public const string Source =
        "imperial: sizes of PS 20 that yards keep, treated and of cedar (common practice, no source); metric: planed softwood, widths of "
            + "120 mm and more as EN 336 has them (as a handbook of building construction prints them), thicknesses and narrower widths as "
            + "they are sold (common practice, no source)";

    /// <summary>In files with imperial units.</summary>
    public static ImmutableArray<string> Imperial { get; } =
    [
        "1x4", "1x6", "5/4x6", "2x4", "2x6", "2x8", "2x10", "2x12", "4x4", "4x6", "6x6",
    ];

    /// <summary>In files with metric units.</summary>
    public static ImmutableArray<string> Metric { get; } =
    [
        "22 x 95 mm", "22 x 120 mm", "22 x 145 mm", "28 x 95 mm", "28 x 120 mm", "28 x 145 mm",
        "45 x 70 mm", "45 x 95 mm", "45 x 120 mm", "45 x 145 mm", "45 x 170 mm", "45 x 195 mm", "45 x 220 mm",
        "70 x 70 mm", "70 x 95 mm", "70 x 120 mm", "70 x 145 mm", "70 x 170 mm", "70 x 195 mm", "70 x 220 mm",
        "95 x 95 mm", "95 x 120 mm", "95 x 145 mm", "95 x 170 mm", "95 x 195 mm",
        "120 x 120 mm", "145 x 145 mm",
    ];
}
