using BridgeForm.Roles;
namespace BridgeForm.Frames;

/// <summary>The two sides of the bridge as names and as signs of z.</summary>
internal static class Sides
{
    /// <summary>Left before right.</summary>
    public static ReadOnlySpan<Side> Both => [Side.Left, Side.Right];

    /// <summary>−1 on the left, +1 on the right.</summary>
    public static double Sign(this Side side) => side == Side.Left ? -1 : 1;

    /// <summary>As used in ids.</summary>
    public static string Suffix(this Side side) => side == Side.Left ? "left" : "right";
}
