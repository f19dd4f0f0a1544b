using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>What can be bought for a bridge: sections of each of its stocks, ropes.</summary>
internal static class Yard
{
    /// <summary>Sections on sale of a stock.</summary>
    public static ImmutableArray<Section> Sections(BridgeParameters parameters, string stock) => parameters.Units == UnitSystem.Metric
        ? s_metric : s_imperial;

    /// <summary>Ropes on sale that are made like this one, thinnest first; empty for a rope of the file's own.</summary>
    public static ImmutableArray<RopeProperties> Ropes(RopeProperties like) =>
        RopeTable.Groups.FirstOrDefault(g => g.Ropes.Contains(like))?.Ropes ?? [];

    private static readonly ImmutableArray<Section> s_imperial =
    [
        .. new[] { "2x4", "2x6", "2x8", "2x10", "2x12", "4x4", "4x6", "6x6", "1x4", "1x6", "5/4x6" }.Select(t => SectionReader.Read(t).Section!),
    ];

    private static readonly ImmutableArray<Section> s_metric =
    [
        .. new[]
        {
            "38 x 89 mm", "38 x 140 mm", "38 x 184 mm", "38 x 235 mm", "89 x 89 mm", "89 x 140 mm", "140 x 140 mm", "19 x 89 mm",
            "19 x 140 mm", "25 x 140 mm",
        }.Select(t => SectionReader.Read(t).Section!),
    ];
}
