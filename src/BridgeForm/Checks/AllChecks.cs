using System.Collections.Immutable;
using BridgeForm.Checks.Ropes;

namespace BridgeForm.Checks;

/// <summary>Every check, in a stable order.</summary>
public static class AllChecks
{
    /// <summary>Runs them all.</summary>
    public static ImmutableArray<CheckResult> Of(CheckContext context) =>
    [
        GuardHeight.Of(context),
        GuardOpenings.Of(context),
        ClearWidth.Of(context),
        EndSlope.Of(context),
        .. ChannelMouths.Of(context),
        KeeperStrap.Of(context),
        .. ContactChecks.Of(context),
        .. RopeChecks.Of(context),
    ];
}
