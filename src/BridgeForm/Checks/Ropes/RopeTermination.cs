using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>Whether the ends suit the rope, and how clips are set.</summary>
internal static class RopeTermination
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-termination",
        "Ends of the ropes",
        "Whether the ends suit the rope: U-bolt clips on strand fail; on wire rope the result gives number, spacing, turn-back and torque; other ends go by their maker.",
        "tables named in the result; common practice of rigging, no source",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Clips on strand fail; clips on wire rope list number, spacing, turn-back and torque; other ends go by their maker.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var ropes = context.Parameters.Ropes;
        if (!Terminations.IsClips(ropes))
            return Other(ropes);
        if (ropes.Rope.Kind == RopeKind.Strand)
            return Result(
                CheckStatus.Fail,
                "U-bolt clips are made for wire rope; on a strand's hard, smooth wires they slip: use grips or sockets made for the strand, with their maker's efficiency",
                "common practice of rigging, no source");
        return Terminations.ClipsFor(ropes) is { } clip
            ? Clips(context.People(), ropes, clip)
            : Result(
                CheckStatus.Engineer,
                $"no row for clips on rope of {context.People().Length(ropes.Rope.Diameter)}; sizes between rows are not guessed",
                "Calif. 8 CCR §8497 table 1 and a maker's table for small sizes");
    }

    private static CheckResult Clips(CheckWords words, RopeParameters ropes, WireRopeClip clip)
    {
        var text = $"each end: {clip.Count} U-bolt clips for {clip.Size} in rope, spaced 6 × {words.Length(ropes.Rope.Diameter)} = "
            + $"{words.Length(clip.Spacing)}, turn-back {words.Length(clip.TurnBack)}, nuts {words.Torque(clip.Torque)}; saddle on the live rope";
        return Terminations.ClipsHold(ropes.Rope.Kind)
            ? Result(CheckStatus.Pass, text, clip.Source + "; spacing 6 diameters NAVEDTRA 14026 fig. 1-8")
            : Result(CheckStatus.Engineer, text + "; whether this rope is one that clips hold, its maker says", clip.Source);
    }

    private static CheckResult Other(RopeParameters ropes) => ropes.TerminationEfficiency is { } efficiency && ropes.TerminationSource is { } source
        ? Result(CheckStatus.Pass, $"{ropes.TerminationKind}, efficiency {CheckWords.Share(efficiency)}; fitted as its maker says", source)
        : Result(
            CheckStatus.Engineer,
            $"{ropes.TerminationKind}: its maker's efficiency and how it is fitted must be known: write ropes.termination.efficiency and source",
            "no source given");

    private static CheckResult Result(CheckStatus status, string detail, string source) =>
        new(Declared.Id, Declared.Title, status, 0, null, "1", null, source, detail);
}
