using System.Collections.Immutable;

namespace BridgeForm.Solids;

/// <summary>A stick as convex cells that touch but do not overlap, for contact tests. Holes are not taken out.</summary>
internal static class ConvexCells
{
    public static ImmutableArray<ConvexBody> Of(CutStock stock)
    {
        var whole = StockSolid.Build(stock with { Channels = [], Holes = [] }).OrNull;
        if (whole is null) return [];
        var cells = new List<Solid> { whole };
        foreach (var channel in stock.Channels) cells = [.. cells.SelectMany(cell => Split(cell, StockCutters.Of(stock, channel)))];
        return [.. cells.Select(ConvexBody.Of)];
    }

    /// <summary>What lies beyond each plane of the cutter, peeled off one by one.</summary>
    private static IEnumerable<Solid> Split(Solid cell, ConvexCutter cutter)
    {
        var rest = cell;
        foreach (var plane in cutter.Planes)
        {
            if (rest.Cut(plane.Flipped(), cutter.Origin).OrNull is { } beyond) yield return beyond;
            if (rest.Cut(plane, cutter.Origin).OrNull is not { } inside) yield break;
            rest = inside;
        }
    }
}
