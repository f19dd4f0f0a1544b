using BridgeForm.Frames;

namespace BridgeForm.Output;

/// <summary>Names of what is shown beside the bridge's own parts, the same in all files of solids.</summary>
internal static class StandIns
{
    /// <summary>Where landings stand together.</summary>
    public const string Landings = "landings";

    /// <summary>Where nets stand together.</summary>
    public const string Nets = "nets";

    /// <summary>Name of a landing or of what carries its edge, such as <c>landings/a/sill</c>.</summary>
    public static string Landing(StandIn part) => $"{Landings}/{part.Id}";
}
