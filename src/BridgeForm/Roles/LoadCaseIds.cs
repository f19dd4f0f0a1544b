using System.Collections.Immutable;

namespace BridgeForm.Roles;

/// <summary>Ids of the load cases that a bridge can have without being asked; the user's own may take none of them.</summary>
public static class LoadCaseIds
{
    /// <summary>The empty bridge.</summary>
    public const string Dead = "dead";

    /// <summary>Live load on the whole deck.</summary>
    public const string LiveFull = "live-full";

    /// <summary>Live load on the half next to A.</summary>
    public const string LiveHalfA = "live-half-a";

    /// <summary>Live load on the half next to B.</summary>
    public const string LiveHalfB = "live-half-b";

    /// <summary>Live load on one side of the deck.</summary>
    public const string LiveSide = "live-side";

    /// <summary>Point load at mid-span.</summary>
    public const string PointMid = "point-mid";

    /// <summary>Point load at a quarter of the span.</summary>
    public const string PointQuarter = "point-quarter";

    /// <summary>Point load at mid-span, at the deck's edge.</summary>
    public const string PointEdgeMid = "point-edge-mid";

    /// <summary>Frames hung from A to mid-span, no deck.</summary>
    public const string ErectHalf = "erect-half";

    /// <summary>Snow on the whole deck.</summary>
    public const string Snow = "snow";

    /// <summary>Live load and snow together.</summary>
    public const string LiveSnow = "live-snow";

    /// <summary>The empty bridge at the lowest temperature.</summary>
    public const string Cold = "cold";

    /// <summary>The empty bridge at the highest temperature.</summary>
    public const string Hot = "hot";

    /// <summary>Live load on the whole deck at the lowest temperature.</summary>
    public const string LiveFullCold = "live-full-cold";

    /// <summary>All of them, in the order in which they are solved.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        Dead, LiveFull, LiveHalfA, LiveHalfB, LiveSide, PointMid, PointQuarter, PointEdgeMid,
        ErectHalf, Snow, LiveSnow, Cold, Hot, LiveFullCold,
    ];
}
