using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Ropes;

/// <summary>Which load cases have what on the deck.</summary>
internal static class LoadedCases
{
    /// <summary>People, snow or a point load on the deck: every case but the empty bridge's.</summary>
    public static bool HasLoad(string id) =>
        id is not (LoadCaseIds.Dead or LoadCaseIds.Cold or LoadCaseIds.Hot or LoadCaseIds.ErectHalf);

    /// <summary>A point load alone.</summary>
    public static bool IsPoint(LoadParameters loads, string id) =>
        id is LoadCaseIds.PointMid or LoadCaseIds.PointQuarter or LoadCaseIds.PointEdgeMid
        || loads.Cases.Any(c => string.Equals(c.Id, id, StringComparison.Ordinal) && c.PointForce > 0 && !(c.Live > 0));
}
