using System.Collections.Immutable;
using BridgeForm.Checks.Codes;
using BridgeForm.Checks.Geometry;
using BridgeForm.Checks.Ropes;
using BridgeForm.Checks.Timber;

namespace BridgeForm.Checks.Register;

/// <summary>Every check, in a stable order.</summary>
public static class AllChecks
{
    /// <summary>Declarations of all checks that any bridge can have, in the order of docs/checks.md.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        GuardHeight.Declared,
        GuardOpenings.Declared,
        GuardOpenings.DeclaredLanding,
        Handrail.Declared,
        ClearWidth.Declared,
        EndSlope.Declared,
        EndSlope.DeclaredGrip,
        DeckGaps.Declared,
        Landings.DeclaredStep,
        Landings.DeclaredGap,
        TreatedWood.DeclaredZinc,
        TreatedWood.DeclaredFasteners,
        .. DeckBending.Declared,
        .. DeckShear.Declared,
        .. DeckDeflection.Declared,
        BaseBending.Declared,
        BaseBending.DeclaredNet,
        BaseShear.Declared,
        BaseShear.DeclaredNet,
        ChannelFaces.Declared,
        HoleSizes.Declared,
        RopeBearing.Declared,
        GuardPost.Declared,
        GuardBrace.Declared,
        GuardJoints.DeclaredFoot,
        GuardJoints.DeclaredBrace,
        GuardJoints.DeclaredHead,
        CapSpan.DeclaredLevel,
        CapSpan.DeclaredDown,
        RailSpan.Declared,
        KeeperUplift.DeclaredGuard,
        KeeperUplift.DeclaredWind,
        .. ChannelMouths.Declared,
        KeeperStrap.Declared,
        .. ContactChecks.Declared,
        .. RopeChecks.Declared,
        StockLengthCheck.Declared,
    ];

    /// <summary>Runs them all; each reads the context and nothing else, so the three groups run side by side.</summary>
    public static ImmutableArray<CheckResult> Of(CheckContext context)
    {
        ImmutableArray<CheckResult> codes = [], timber = [], fit = [];
        Parallel.Invoke(
            () => codes = Codes(context),
            () => timber = Timber(context),
            () => fit = Fit(context));
        return [.. codes, .. timber, .. fit];
    }

    private static ImmutableArray<CheckResult> Codes(CheckContext context) =>
    [
        GuardHeight.Of(context),
        GuardOpenings.Of(context),
        GuardOpenings.AtLanding(context),
        Handrail.Of(context),
        ClearWidth.Of(context),
        EndSlope.Of(context),
        EndSlope.Grip(context),
        DeckGaps.Of(context),
        .. Landings.Of(context),
        .. TreatedWood.Of(context),
    ];

    private static ImmutableArray<CheckResult> Timber(CheckContext context) =>
    [
        .. DeckBending.Of(context),
        .. DeckShear.Of(context),
        .. DeckDeflection.Of(context),
        .. BaseBending.Of(context),
        .. BaseShear.Of(context),
        .. ChannelFaces.Of(context),
        .. HoleSizes.Of(context),
        .. RopeBearing.Of(context),
        GuardPost.Of(context),
        GuardBrace.Of(context),
        .. GuardJoints.Of(context),
        .. CapSpan.Of(context),
        .. RailSpan.Of(context),
        .. KeeperUplift.Of(context),
    ];

    /// <summary>Channels, contacts and ropes.</summary>
    private static ImmutableArray<CheckResult> Fit(CheckContext context) =>
    [
        .. ChannelMouths.Of(context),
        KeeperStrap.Of(context),
        .. ContactChecks.Of(context),
        .. RopeChecks.Of(context),
    ];
}
