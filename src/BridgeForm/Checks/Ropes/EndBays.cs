using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Ropes;

/// <summary>
/// Rope that has stretched for good and is drawn in again carries its frames towards both supports: they keep their marks, and the
/// end frames stand on land. Metres.
/// </summary>
internal static class EndBays
{
    // What trade joints give before wood presses on wood; own figure.
    private const double Gives = Units.MetresPerInch / 8;

    private const string Source = "geometry: stretch × rope from the middle to the frame; stretch as in rope-take-up; 1/8 in (3 mm) that a "
        + "joint gives: own figure";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "end-bay-room",
        "First and last bay as the ropes are drawn in",
        "How far the frame next to a support comes nearer to it once stretch is drawn in, half of it at either end: stretch × rope from "
            + "the middle to that frame (by ropes.new: the high end of the range, none, or half of its width either way), against 1/8 in "
            + "(3 mm), of which no joint makes much. Boards, rails and caps of those bays are cut for the frames at their marks: above it "
            + "they jam, or push the end frame off its place. What else moves them in use: joint-room.",
        Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]);

    /// <summary>None where no frame hangs between the supports.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (context.Layout.Bays < 2)
        {
            yield break;
        }

        var (words, ropes, marks) = (context.Words(), context.Parameters.Ropes, context.Ropework.Marks);
        var (middle, first, last) = (marks[^1].Unstressed / 2, marks[1].Unstressed, marks[^2].Unstressed);
        var (reach, frame) = Ties.IsLarger(last - middle, middle - first)
            ? (last - middle, context.Layout.Bays - 1)
            : (middle - first, 1);
        var at = context.InFrame(frame, Role.Base);
        if (Share(ropes) is not { } share)
        {
            yield return Outcome.ForEngineer(
                Declared, 0, "m", Source,
                $"{words.Length(reach)} of rope from the middle to {context.Layout.Poses[frame].Name}; the constructional stretch of this "
                    + "rope is not known, so neither is how far that frame moves when it is drawn in").On(at);
            yield break;
        }

        var comes = share * reach;
        yield return Outcome.AtMost(
            Declared, comes, Gives, "m", Source,
            $"{CheckWords.Share(share)} × {words.Length(reach)} = {words.Length(comes)} nearer to the support at "
                + $"{context.Layout.Poses[frame].Name}{Way(ropes.New)}"
                + (comes > Gives
                    ? ": fit boards, rails and caps of the first and the last bay after the last drawing in, or leave them that much "
                        + "short and cut them anew; do not push the end frames back for it"
                    : ""),
            CheckStatus.Warn).On(at);
    }

    private static double? Share(RopeParameters ropes) => (ropes.New, StretchRange.Of(ropes).Range) switch
    {
        (NewRopeWay.StretchedBefore, _) => 0,
        (_, null) => null,
        (NewRopeWay.AsIs, { } r) => (r.High - r.Low) / 2,
        (_, { } r) => r.High,
    };

    private static string Way(NewRopeWay way) => way switch
    {
        NewRopeWay.StretchedBefore => ", the rope stretched before it was marked",
        NewRopeWay.AsIs => ", or further from it, where the rope stretches more or less than the mean of its range",
        _ => "",
    };
}
