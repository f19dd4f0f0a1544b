namespace BridgeForm.Checks.Ropes;

/// <summary>What a keeper must hold along the rope.</summary>
internal static class KeeperSlip
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "keeper-slip",
        "Keeper against sliding along the rope",
        "Load of a frame × sine of the rope's slope, or the difference of tension on its two sides, in the worst case; friction not counted. Only stated.",
        "statics of the worst load case; for a licensed engineer",
        [CheckStatus.Engineer]);

    /// <summary>The frame that needs most, in its worst case; friction not counted.</summary>
    public static CheckResult Of(CheckContext context)
    {
        const string Source = "statics of all load cases, friction not counted; what a keeper holds is for a licensed engineer or a test";
        var words = context.People();
        var worst = context.Ropework.Keepers.MaxBy(k => k.Needed);
        return worst is null
            ? new CheckResult(Declared.Id, Declared.Title, CheckStatus.Engineer, 0, null, "N", null, Source, "no frame hangs between the supports")
            : new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, worst.Needed, null, "N", null, Source,
                $"frame {worst.Frame}, case {worst.Case}, one rope: load {words.Force(worst.Load)} × sin {CheckWords.Angle(Math.Abs(worst.Slope))} = "
                + $"{words.Force(worst.LoadAlong)}; difference of the tensions on its two sides {words.Force(Math.Abs(worst.TensionDifference))}; all frames in all cases: keepers.csv");
    }
}
