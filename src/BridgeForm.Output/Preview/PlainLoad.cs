using BridgeForm.Loads;
using BridgeForm.Roles;

namespace BridgeForm.Output.Preview;

/// <summary>What a load is called by people who count neither pressures nor cases.</summary>
internal static class PlainLoad
{
    /// <summary>Words of the tables, longest first, and what a layman says.</summary>
    private static readonly (string Technical, string Plain)[] s_words =
    [
        ("Three quarters each of live load and snow", "People and snow"),
        ("Live load", "People"),
        ("the section comes nearest to rolling over", "the bridge comes nearest to rolling over"),
        ("Point load", "One heavy person"),
        ("Frames hung from", "While it is built: frames hung from"),
        ("at the lowest temperature", "on the coldest day"),
        ("at the highest temperature", "on the hottest day"),
        ("a quarter of the span", "a quarter of the way"),
        ("mid-span", "the middle"),
        ("support A", "A"),
        ("support B", "B"),
        ("the whole deck", "the whole bridge"),
    ];

    /// <summary>A case in words for people: <c>People on half of the bridge, next to A</c>.</summary>
    public static string Name(LoadCaseResult load) => load.Id switch
    {
        LoadCaseIds.LiveHalfA => "People on half of the bridge, next to A",
        LoadCaseIds.LiveHalfB => "People on half of the bridge, next to B",
        LoadCaseIds.LiveSide => "People on one side of the bridge",
        LoadCaseIds.LiveCross => "People on the right of one half, on the left of the other",
        LoadCaseIds.PointMid => "One heavy person in the middle of the bridge",
        LoadCaseIds.PointQuarter => "One heavy person a quarter of the way across",
        LoadCaseIds.PointEdgeMid => "One heavy person in the middle, at the edge",
        LoadCaseIds.Cold => "Nobody on it, on the coldest day",
        LoadCaseIds.Hot => "Nobody on it, on the hottest day",
        _ => s_words.Aggregate(load.Title, (text, w) => text.Replace(w.Technical, w.Plain, StringComparison.Ordinal)),
    };
}
