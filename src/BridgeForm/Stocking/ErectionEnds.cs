using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Stocking;

/// <summary>What the ends of the ropes ask of whoever builds, in sentences without a full stop.</summary>
internal static class ErectionEnds
{
    /// <summary>Mass of one rope as it is hoisted, its fittings left out, kilograms.</summary>
    public static double RopeMass(BridgeParameters parameters, RopeWork work) =>
        work.Cut is { } cut ? parameters.Ropes.Rope.MassPerLength * (cut.Length ?? cut.BetweenEnds) : 0;

    /// <summary>How the eyes are made.</summary>
    public static string Make(BridgeParameters parameters, QuantityText words) => Terminations.ClipsFor(parameters.Ropes) is { } clip
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"Make the eyes: {clip.Count} clips at each end, {words.Size(clip.Spacing)} apart, {words.Size(clip.TurnBack)} turned back, "
                + $"saddles on the live rope, {new CheckWords(parameters.Units).Torque(clip.Torque)}")
        : IsClipped(parameters)
            ? "Make the eyes with clips as a licensed engineer says: their number, spacing, turn-back and torque are in no table here "
                + "for this rope"
            : "Make the ropes' ends to their maker's instructions";

    /// <summary>What is done to every end again under the whole weight.</summary>
    public static string Again(BridgeParameters parameters) => Terminations.ClipsFor(parameters.Ropes) is { } clip
        ? $"Tighten every clip a second time, to {new CheckWords(parameters.Units).Torque(clip.Torque)}, under the whole weight"
        : IsClipped(parameters)
            ? "Tighten every clip a second time under the whole weight, to the torque that the engineer gave"
            : "Look at every rope's end again under the whole weight";

    // Clips slip on strand: nobody is told to tighten them there.
    private static bool IsClipped(BridgeParameters parameters) =>
        Terminations.IsClips(parameters.Ropes) && Terminations.ClipsHold(parameters.Ropes.Rope.Kind);

    /// <summary>Over saddles to anchors, or with their eyes at the supports.</summary>
    public static string Hoist(SiteParameters site) => (site.A.Backstay is not null, site.B.Backstay is not null) switch
    {
        (true, true) => "Hoist both ropes over their saddles with a pull line",
        (false, false) => "Hoist both ropes with a pull line and hang their eyes at the supports",
        (true, _) => "Hoist both ropes with a pull line, over their saddles at A, and hang their eyes at support B",
        _ => "Hoist both ropes with a pull line, over their saddles at B, and hang their eyes at support A",
    };

    /// <summary>What must be so before an end frame is set where eyes bear at the supports; null where they lie behind saddles.</summary>
    public static string? Slots(BridgeParameters parameters, RopeWork work, QuantityText words)
    {
        var ends = string.Join(" and ", new[] { ("A", parameters.Site.A), ("B", parameters.Site.B) }
            .Where(e => e.Item2.Backstay is null).Select(e => e.Item1));
        return ends.Length == 0 ? null
            : $"the end frame's channels and the slot in the landing at {ends} are cut clear of what lies in them there: the drawings and "
                + "templates have them for bare rope, but "
                + (IsClipped(parameters) ? "thimble, turned-back rope and clips reach " : "the rope's end reaches ")
                + (work.Cut?.Termination is { } reach ? words.Size(reach) : "a length that is in no table")
                + " from the eye towards the bridge; how wide, and what wood is left, is for the engineer";
    }

    /// <summary>That clips lie in the channels of this frame; null where they do not, or how far they reach is not known.</summary>
    public static string? Clips(BridgeParameters parameters, RopeWork work, string frame)
    {
        var (marks, half) = (work.Marks, parameters.Frames.Base.Along / 2);
        if (work.Cut?.Termination is not { } reach || marks.IsEmpty
            || marks.FirstOrDefault(m => string.Equals(m.Frame, frame, StringComparison.Ordinal)) is not { } mark)
        {
            return null;
        }

        var isReached = (parameters.Site.A.Backstay is null && reach > mark.Unstressed - half)
            || (parameters.Site.B.Backstay is null && reach > marks[^1].Unstressed - mark.Unstressed - half);
        return !isReached ? null
            : (IsClipped(parameters) ? "clips and turned-back rope lie" : "the rope's end lies")
                + " where this frame hangs: its channels are cut for bare rope, and no keeper closes over them; "
                + "a licensed engineer has drawn wider channels and what holds the frame there, or the anchors were set back "
                + "(site.a.backstay, site.b.backstay) so that the ends lie behind the supports";
    }
}
