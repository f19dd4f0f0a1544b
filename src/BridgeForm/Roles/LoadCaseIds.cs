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

    /// <summary>Live load on the quarter of the span next to A.</summary>
    public const string LiveQuarter1 = "live-quarter-1";

    /// <summary>Live load on the second quarter from A.</summary>
    public const string LiveQuarter2 = "live-quarter-2";

    /// <summary>Live load on the third quarter from A.</summary>
    public const string LiveQuarter3 = "live-quarter-3";

    /// <summary>Live load on the quarter next to B.</summary>
    public const string LiveQuarter4 = "live-quarter-4";

    /// <summary>Live load on the right of one half, on the left of the other.</summary>
    public const string LiveCross = "live-cross";

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

    /// <summary>Snow on the whole deck at the lowest temperature.</summary>
    public const string SnowCold = "snow-cold";

    /// <summary>Live load and snow together at the lowest temperature.</summary>
    public const string LiveSnowCold = "live-snow-cold";

    /// <summary>Live load on the whole deck at the highest temperature.</summary>
    public const string LiveFullHot = "live-full-hot";

    /// <summary>Live load where it pulls a rope hardest; only where that is not the whole deck.</summary>
    public const string MostTension = "most-tension";

    /// <summary>Live load where some frame falls furthest.</summary>
    public const string MostFall = "most-fall";

    /// <summary>The same with the wood dry; only where the frame falls further then.</summary>
    public const string MostFallDry = "most-fall-dry";

    /// <summary>Live load where it brings the bridge nearest to the ground.</summary>
    public const string LeastGround = "least-over-ground";

    /// <summary>Live load where it brings the bridge nearest to the water.</summary>
    public const string LeastWater = "least-over-water";

    /// <summary>Live load on either side where it tilts a frame most.</summary>
    public const string MostTilt = "most-tilt";

    /// <summary>Live load where it makes the deck steepest.</summary>
    public const string MostSlope = "most-slope";

    /// <summary>Live load where the section comes nearest to rolling over.</summary>
    public const string LeastRoll = "least-roll";

    private const string Point = "point-f";
    private const string PointEdge = "point-edge-f";

    /// <summary>Id of the point load at one frame, on the middle line: <c>point-f03</c>.</summary>
    /// <param name="frame">Name of the frame, such as <c>F03</c>.</param>
    public static string PointAt(string frame) => string.Concat(Point, frame.AsSpan(1));

    /// <summary>Id of the point load at one frame, at the deck's edge: <c>point-edge-f03</c>.</summary>
    /// <param name="frame">Name of the frame, such as <c>F03</c>.</param>
    public static string PointEdgeAt(string frame) => string.Concat(PointEdge, frame.AsSpan(1));

    /// <summary>A point load at one frame, one of the standard ones included.</summary>
    public static bool IsPoint(string id) =>
        id is PointMid or PointQuarter or PointEdgeMid || IsNumbered(id, Point) || IsNumbered(id, PointEdge);

    /// <summary>An id that no case of the user's may take; upper and lower case are the same.</summary>
    public static bool IsTaken(string id) =>
        All.Contains(id, StringComparer.OrdinalIgnoreCase) || IsNumbered(id, Point) || IsNumbered(id, PointEdge);

    /// <summary>The cases with one name, in the order in which they are solved; those of single frames come on top.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        Dead, LiveFull, LiveHalfA, LiveHalfB, LiveSide, PointMid, PointQuarter, PointEdgeMid,
        ErectHalf, Snow, LiveSnow, Cold, Hot, LiveFullCold,
        SnowCold, LiveSnowCold, LiveFullHot, LiveQuarter1, LiveQuarter2, LiveQuarter3, LiveQuarter4, LiveCross,
        MostTension, MostFall, MostFallDry, LeastGround, LeastWater, MostTilt, MostSlope, LeastRoll,
    ];

    private static bool IsNumbered(string id, string start)
    {
        if (id.Length == start.Length || !id.StartsWith(start, StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        foreach (var c in id.AsSpan(start.Length))
        {
            if (!char.IsAsciiDigit(c))
            {
                return false;
            }
        }

        return true;
    }
}
