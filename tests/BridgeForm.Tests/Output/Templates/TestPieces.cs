using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Templates;

/// <summary>Pieces of any shape, and what their templates are read with.</summary>
internal static class TestPieces
{
    private static readonly Lazy<BridgeModel> s_garden = new(() => Bridges.Build(Bridges.Garden));

    public static DisplayUnits Units { get; } = DisplayUnits.For(UnitSystem.Imperial);

    public static BridgeModel Garden => s_garden.Value;

    /// <summary>The garden bridge's tools, with a saw that runs as far as any test asks.</summary>
    private static ShopParameters LongSaw => Garden.Parameters.Shop with { Saw = Garden.Parameters.Shop.Saw with { Crosscut = 2 } };

    /// <summary>A piece whose blank begins at X = 0, with its solid made anew.</summary>
    public static Piece Of(CutStock shape) => Garden.Pieces[0] with
    {
        Shape = shape,
        Solid = StockSolid.Build(shape).OrNull!,
        BlankLength = Math.Max(shape.Far.XAt(shape.Width / 2, shape.Thickness / 2), shape.Far.XAt(-shape.Width / 2, shape.Thickness / 2)),
        Near = SawReach.Measure(shape, near: true, LongSaw),
        Far = SawReach.Measure(shape, near: false, LongSaw),
    };

    /// <summary>Entities of a kind on a layer.</summary>
    public static IEnumerable<T> On<T>(this TemplateBlock block, string layer)
        where T : SheetEntity => block.Entities.OfType<T>().Where(e => string.Equals(e.Layer, layer, StringComparison.Ordinal));

    /// <summary>X of upright lines of a layer, from left to right.</summary>
    public static List<double> Ticks(this TemplateBlock block, string layer) =>
        [.. block.On<SheetLine>(layer).Where(l => Math.Abs(l.From.X - l.To.X) < 1e-12).Select(l => l.From.X).Order()];
}
