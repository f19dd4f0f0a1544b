namespace BridgeForm.Roles;

/// <summary>What the program never claims; said once and plainly wherever results appear.</summary>
public static class Caution
{
    /// <summary>Its first sentence, for places that have room for no more; the whole stands elsewhere on the same page.</summary>
    public const string First = "Geometry, quantities and check values for preliminary work only.";

    /// <summary>The whole caution.</summary>
    public const string Text =
        First + " People stand on this bridge: ropes, anchors, "
        + "trees and posts as supports, connections, wind and sway are for a licensed engineer; guards, loads and "
        + "permission follow the local code.";
}
