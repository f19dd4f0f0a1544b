using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm;

/// <summary>
/// Lists of equal values are made the same list, so that records that hold them are equal by their values: an immutable array
/// is equal to another only when both are one.
/// </summary>
internal static class KeptParameters
{
    /// <summary>The parameters, with each list that did not change taken from those before.</summary>
    public static BridgeParameters Of(BridgeParameters now, BridgeParameters before) => now with
    {
        Site = now.Site with
        {
            Temperatures = Kept.Array(now.Site.Temperatures, before.Site.Temperatures),
            Ground = Kept.Array(now.Site.Ground, before.Site.Ground),
        },
        Frames = now.Frames with { Holes = Kept.Array(now.Frames.Holes, before.Frames.Holes) },
        Guard = now.Guard with { RailHeights = Kept.Array(now.Guard.RailHeights, before.Guard.RailHeights) },
        Loads = now.Loads with { Cases = Kept.Array(now.Loads.Cases, before.Loads.Cases) },
        Stock = Kept.Array(
            [
                .. now.Stock.Select((s, i) => i < before.Stock.Length ? s with { Lengths = Kept.Array(s.Lengths, before.Stock[i].Lengths) } : s),
            ],
            before.Stock),
        PriceList = (now.PriceList, before.PriceList) is ({ } list, { } old) && list.Prices.SequenceEqual(old.Prices) ? old : now.PriceList,
        Fasteners = now.Fasteners.SequenceEqual(before.Fasteners) ? before.Fasteners : now.Fasteners,
        Species = Kept.Array(now.Species, before.Species),
        Values = Kept.Array(now.Values, before.Values),
    };
}

/// <summary>One list for equal values.</summary>
internal static class Kept
{
    /// <summary>The list before, when the new one has the same values.</summary>
    public static ImmutableArray<T> Array<T>(ImmutableArray<T> now, ImmutableArray<T> before) =>
        now.SequenceEqual(before) ? before : now;
}
