using System.Collections.Immutable;
using BridgeForm.Roles;

namespace BridgeForm.Frames;

/// <summary>The two sides of the bridge, and as signs of z.</summary>
internal static class Sides
{
    /// <summary>Left before right.</summary>
    public static ImmutableArray<Side> Both { get; } = [Side.Left, Side.Right];

    /// <summary>The left alone, for which the right is a mirror image.</summary>
    public static ImmutableArray<Side> Left { get; } = [Side.Left];

    /// <summary>−1 on the left, +1 on the right.</summary>
    public static double Sign(this Side side) => side == Side.Left ? -1 : 1;
}
