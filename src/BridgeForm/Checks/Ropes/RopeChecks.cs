using System.Collections.Immutable;

namespace BridgeForm.Checks.Ropes;

/// <summary>Checks of ropes, ends, supports and motion, in a stable order.</summary>
internal static class RopeChecks
{
    /// <summary>What they compare, in the same order.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        CasesSolved.Declared,
        Roll.Declared,
        RopeStrength.Declared,
        NewRope.Declared,
        RopeTermination.Declared,
        SaddleBend.Declared,
        TurnbuckleSize.Declared,
        ShackleSize.Declared,
        RopeTakeUp.Declared,
        Anchors.DeclaredA,
        Anchors.DeclaredB,
        SupportMoves.Declared,
        KeeperSlip.Declared,
        Tips.Declared,
        KeeperUpliftLoad.Declared,
        LossOfRope.Declared,
        DeckSlopeLoaded.Declared,
        CrossSlope.Declared,
        GroundClearance.Declared,
        WaterClearance.Declared,
        BounceVertical.Declared,
        SwayLateral.Declared,
    ];

    /// <summary>Runs them all.</summary>
    public static ImmutableArray<CheckResult> Of(CheckContext context) =>
    [
        CasesSolved.Of(context),
        Roll.Of(context),
        RopeStrength.Of(context),
        .. NewRope.Of(context),
        RopeTermination.Of(context),
        SaddleBend.Of(context),
        TurnbuckleSize.Of(context),
        ShackleSize.Of(context),
        RopeTakeUp.Of(context),
        .. Anchors.Of(context),
        SupportMoves.Of(context),
        KeeperSlip.Of(context),
        Tips.Of(context),
        KeeperUpliftLoad.Of(context),
        LossOfRope.Of(context),
        DeckSlopeLoaded.Of(context),
        CrossSlope.Of(context),
        .. GroundClearance.Of(context),
        .. WaterClearance.Of(context),
        BounceVertical.Of(context),
        SwayLateral.Of(context),
    ];
}
