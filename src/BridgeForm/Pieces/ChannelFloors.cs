using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>
/// Floors of channels as they are cut: level, together with those of the other bases, where the sloped floor is out by no more
/// than a loaded edge may be.
/// </summary>
public static class ChannelFloors
{
    /// <summary>How far a level floor is out of the sloped one: |slope| · width from arris to arris, half at either. Metres.</summary>
    public static double OutOfLevel(Channel channel, CutStock stock) => Math.Abs(channel.FloorSlope) * Across(channel.Face, stock);

    /// <summary>Whether it is cut level, by the rule of <see cref="SawSettings.LoadedGap"/>.</summary>
    public static bool IsCutLevel(Channel channel, CutStock stock) => OutOfLevel(channel, stock) <= SawSettings.LoadedGap;

    /// <summary>Every channel of a stick as it is cut: as deep in the middle as the exact one.</summary>
    public static ImmutableArray<Channel> AsCut(CutStock stock) =>
        [.. stock.Channels.Select(c => IsCutLevel(c, stock) ? c with { FloorSlope = 0 } : c)];

    private static double Across(StockFace face, CutStock stock) =>
        face is StockFace.MinusY or StockFace.PlusY ? stock.Thickness : stock.Width;
}
