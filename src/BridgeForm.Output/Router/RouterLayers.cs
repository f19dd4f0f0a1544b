using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Router;

/// <summary>Layers of router files: one for each operation and depth, so that a machine's programme picks them by name.</summary>
internal static class RouterLayers
{
    /// <summary>Cut through, outside the line.</summary>
    public const string Outline = "OUTLINE";

    private const string Channel = "CHANNEL-";
    private const string Drill = "DRILL-";
    private const string Tab = "TAB-";

    /// <summary>Cleared inside the line to a depth in metres.</summary>
    public static string ChannelOf(double depth) => Channel + Depth(depth);

    /// <summary>Drilled to a depth in metres; null for through.</summary>
    public static string DrillOf(double? depth) => Drill + (depth is { } deep ? Depth(deep) : "THROUGH");

    /// <summary>Where an outline is left standing so high, metres.</summary>
    public static string TabOf(double height) => Tab + Depth(height);

    /// <summary>The layers that entities lie on: the outline, then the others by name.</summary>
    public static ImmutableArray<SheetLayer> Of(IEnumerable<SheetEntity> entities) =>
    [
        new SheetLayer(Outline, LayerPurpose.Cut),
        .. entities.Select(e => e.Layer)
            .Where(name => name is not Outline)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(name => new SheetLayer(name, Purpose(name))),
    ];

    private static LayerPurpose Purpose(string name) =>
        name.StartsWith(Drill, StringComparison.Ordinal) ? LayerPurpose.Drill
        : name.StartsWith(Tab, StringComparison.Ordinal) ? LayerPurpose.Layout
        : LayerPurpose.Pocket;

    private static string Depth(double metres) => Numbers.Fixed(metres * 1000, 1) + "MM";
}
