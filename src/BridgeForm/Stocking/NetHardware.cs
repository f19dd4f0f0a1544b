using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>Netting to buy: by its area, and a strip a side.</summary>
internal static class NetHardware
{
    /// <summary>How the item begins.</summary>
    public const string Item = "Guard netting";

    private const int Strips = 2;

    /// <summary>One row; none without a net.</summary>
    public static IEnumerable<HardwareItem> Rows(BridgeParameters parameters, BridgeLayout layout)
    {
        if (parameters.Guard.Net is not { } net)
        {
            yield break;
        }

        var words = new QuantityText(parameters.Units);
        var panels = Enumerable.Range(1, layout.Bays).Select(bay => NetPanel.Lay(layout, bay, Roles.Side.Left)).ToList();
        var length = panels.Sum(p => (p.LowTo - p.LowFrom).Length) + parameters.Frames.Post.Section.Thickness;
        var width = panels.Max(p => Math.Max((p.HighFrom - p.LowFrom).Length, (p.HighTo - p.LowTo).Length));
        yield return new HardwareItem(
            $"{Item}, mesh {words.Size(net.Opening)}, {(net.IsStiff ? "wire" : "cord")}", Strips,
            $"a strip a side, {words.Length(length)} × {words.Size(width)}; {words.Area(Area(layout))} in all",
            "net measure, without what laps and lacing take; lace it to cap, rail and end posts as its maker says, when the caps are on; "
                + $"{HardwareList.Metal(parameters.FastenerMetal)} lacings",
            "measured on the model");
    }

    /// <summary>Of the whole bridge, m².</summary>
    public static double Area(BridgeLayout layout) => Enumerable.Range(1, layout.Bays).Sum(bay => GuardNet.Area(layout, bay));
}
