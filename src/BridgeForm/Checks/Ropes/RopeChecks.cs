using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

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
        EndBays.Declared,
        RopeEndRoom.Declared,
        Anchors.DeclaredA,
        Anchors.DeclaredB,
        SupportMoves.Declared,
        KeeperSlip.Declared,
        Tips.Declared,
        KeeperUpliftLoad.Declared,
        Wind.DeclaredSide,
        Wind.DeclaredKeeper,
        Wind.DeclaredEnd,
        Wind.DeclaredSwing,
        GuardLeans.Declared,
        LossOfRope.Declared,
        DeckSlopeLoaded.Declared,
        CrossSlope.Declared,
        SettingOfRopes.Declared,
        JointRoom.Declared,
        SurveyAgreement.Declared,
        GroundClearance.Declared,
        WaterClearance.Declared,
        BounceVertical.Declared,
        SwayLateral.Declared,
    ];

    /// <summary>Runs them all. Those that no frame or bay is named for are about both ropes.</summary>
    public static ImmutableArray<CheckResult> Run(CheckContext context) =>
        [.. All(context).Select(c => c.Parts.IsEmpty ? c.On(RopeIds.Both) : c)];

    private static ImmutableArray<CheckResult> All(CheckContext context) =>
    [
        CasesSolved.Check(context),
        Roll.Check(context),
        RopeStrength.Check(context),
        .. NewRope.Check(context),
        RopeTermination.Check(context),
        SaddleBend.Check(context),
        TurnbuckleSize.Check(context),
        ShackleSize.Check(context),
        RopeTakeUp.Check(context),
        .. EndBays.Check(context),
        RopeEndRoom.Check(context),
        .. Anchors.Check(context),
        SupportMoves.Check(context),
        KeeperSlip.Check(context),
        Tips.Check(context),
        KeeperUpliftLoad.Check(context),
        .. Wind.Check(context),
        GuardLeans.Check(context),
        LossOfRope.Check(context),
        DeckSlopeLoaded.Check(context),
        CrossSlope.Check(context),
        SettingOfRopes.Check(context),
        JointRoom.Check(context),
        .. SurveyAgreement.Check(context),
        .. GroundClearance.Check(context),
        .. WaterClearance.Check(context),
        BounceVertical.Check(context),
        SwayLateral.Check(context),
    ];
}

/// <summary>Every load case, hoisting row and moved support has a shape.</summary>
internal static class CasesSolved
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "cases-solved",
        "Every load case has a solution",
        "Load cases, hoisting rows, stretched, new and moved ropes without a shape, and load cases in which the section rolls over: "
            + "none may be.",
        "common practice, no source",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>Fails with the reasons when one has none.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var work = context.Ropework;
        var over = work.Cases.Where(c => c.RollsOver).Select(c => c.Id).ToList();
        string[] failures =
        [
            .. work.Cases.Where(c => c.Shape is null).Select(c => $"{c.Id}: {c.Failure}"),
            .. over.Count > 0
                ? [$"{string.Join(", ", over)}: it rolls over; pulls, falls and rooms of such a case are those of ropes whose frames are "
                    + "held upright, and promise nothing."]
                : Array.Empty<string>(),
            .. work.Hoisting.Failures.Select(f => "hoisting, " + f.In(new QuantityText(context.Parameters.Units))),
            .. work.Stretch.Where(s => s.Failure is not null).Select(s => $"after {CheckWords.Share(s.Share)} stretch: {s.Failure}"),
            .. work.Stretch.Where(s => s.NewFailure is not null)
                .Select(s => $"new rope set short for {CheckWords.Share(s.Share)} of stretch: {s.NewFailure}"),
            .. work.SupportMoveFailure is { } moved ? [$"support moved: {moved}"] : Array.Empty<string>(),
        ];
        return new CheckResult(
            Declared.Id, Declared.Title, failures.Length == 0 ? CheckStatus.Pass : CheckStatus.Fail,
            failures.Length + Math.Max(0, over.Count - 1), 0, "count", null,
            "common practice, no source",
            failures.Length == 0
                ? $"{work.Cases.Length} load cases and {work.Hoisting.Rows.Length} hoisting rows solved"
                : string.Join(" ", failures));
    }
}

/// <summary>Which load cases have what on the deck.</summary>
internal static class LoadedCases
{
    /// <summary>People, snow or a point load on the deck: every case but the empty bridge's.</summary>
    public static bool HasLoad(string id) =>
        id is not (LoadCaseIds.Dead or LoadCaseIds.Cold or LoadCaseIds.Hot or LoadCaseIds.ErectHalf);

    /// <summary>A point load alone.</summary>
    public static bool IsPoint(LoadParameters loads, string id) =>
        LoadCaseIds.IsPoint(id)
        || loads.Cases.Any(c => string.Equals(c.Id, id, StringComparison.Ordinal) && c.PointForce > 0 && !(c.Live > 0));
}

/// <summary>What a keeper must hold along the rope.</summary>
internal static class KeeperSlip
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "keeper-slip",
        "Keeper against sliding along the rope",
        "Load of a frame × sine of the rope's slope, or the difference of tension on its two sides, in the worst case; friction not "
            + "counted. Only stated.",
        "statics of the worst load case; for a licensed engineer",
        [CheckStatus.Engineer]);

    /// <summary>The frame that needs most, in its worst case; friction not counted.</summary>
    public static CheckResult Check(CheckContext context)
    {
        const string Source = "statics of all load cases, friction not counted; what a keeper holds is for a licensed engineer or a test";
        var words = context.Words();
        var worst = Ties.FirstLargest(context.Ropework.Keepers, k => k.Needed);
        return worst is null
            ? new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, 0, null, "N", null, Source, "no frame hangs between the supports")
            : new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, worst.Needed, null, "N", null, Source,
                $"frame {worst.Frame}, case {worst.Case}, one rope: load {words.Force(worst.Load)} × sin "
                    + $"{CheckWords.Angle(Math.Abs(worst.Slope))} = "
                + $"{words.Force(worst.LoadAlong)}; difference of the tensions on its two sides "
                + $"{words.Force(Math.Abs(worst.TensionDifference))}; all frames in all cases: keepers.csv").OnBase(context, worst.Frame);
    }
}
