namespace BridgeForm.Checks.Ropes;

/// <summary>What a keeper must hold along the rope.</summary>
internal static class KeeperSlip
{
    /// <summary>The frame that needs most, in its worst case; friction not counted.</summary>
    public static CheckResult Of(CheckContext context)
    {
        const string Id = "keeper-slip";
        const string Title = "Keeper against sliding along the rope";
        const string Source = "statics of all load cases, friction not counted; what a keeper holds is for a licensed engineer or a test";
        var words = context.People();
        var worst = context.Ropework.Keepers.MaxBy(k => k.Needed);
        return worst is null
            ? new CheckResult(Id, Title, CheckStatus.Engineer, 0, null, "N", null, Source, "no frame hangs between the supports")
            : new CheckResult(
                Id, Title, CheckStatus.Engineer, worst.Needed, null, "N", null, Source,
                $"frame {worst.Frame}, case {worst.Case}, one rope: load {words.Force(worst.Load)} × sin {CheckWords.Angle(Math.Abs(worst.Slope))} = "
                + $"{words.Force(worst.LoadAlong)}; difference of the tensions on its two sides {words.Force(Math.Abs(worst.TensionDifference))}");
    }
}
