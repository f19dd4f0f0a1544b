using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A newel as a cantilever out of its landing, and what the landing must hold.</summary>
internal static class Newels
{
    /// <summary>The wood.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "newel-bending",
        "Newel pushed at its top",
        "Only with guard.newels: 200 lbf at its top, any way: fb = M / S of a cantilever from the landing's surface about its weaker way, "
            + "against Fb'. The landing's own guard may add to it: by who builds that.",
        $"NDS 3.3 (ASD); {GuardPush.Source}; NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Its foot.</summary>
    public static DeclaredCheck DeclaredFoot { get; } = new(
        "newel-foot",
        "Newel held by its landing",
        "Only with guard.newels: the push of newel-bending and its moment at the landing's surface. Only stated: the landing is by others.",
        $"statics of a cantilever; {GuardPush.Source}",
        [CheckStatus.Engineer]);

    /// <summary>None without newels.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var layout = context.Layout;
        if (context.Parameters.Guard.Newels is not { } newels)
        {
            yield break;
        }

        double Height(int end) => GuardNewels.Top(layout, end, newels) - LandingPlace.Level(layout, end);
        var frame = Ties.FirstLargest(((int[])[0, layout.Bays]).Where(f => newels.StandAt(f > 0)), Height);
        var (words, parts) = (context.Words(), context.InFrame(frame, Role.Newel).ToList());
        var moment = GuardPush.Point * Height(frame);
        var how = $"{words.Pounds(GuardPush.Point)} × {words.Length(Height(frame))} = {words.Moment(moment)}";
        var modulus = Modulus(newels);
        yield return WoodCheck.Stress(
            Declared,
            words,
            moment / modulus,
            SlenderValues.Find(context.Parameters, newels.Stock, newels.Section)?.Bending(LoadDuration.Guard, flat: false),
            $"{newels.Section.Name}: M = {how}; fb = M / {words.Modulus(modulus)} = {words.Stress(moment / modulus)}",
            LumberValues.Missing(context.Parameters, newels.Stock, newels.Section)).On(parts);
        yield return Outcome.ForEngineer(
            DeclaredFoot, GuardPush.Point, "N", DeclaredFoot.Source,
            $"{words.Pounds(GuardPush.Point)} any way, M = {how} at the landing's surface; who builds the landing holds both, keeps the "
                + "foot's end grain off wet ground, or buys wood treated for contact with it (common practice, no source)").On(parts);
    }

    private static double Modulus(NewelParameters newels)
    {
        var (d, t) = (newels.Section.Width, newels.Section.Thickness);
        return d * t * Math.Min(d, t) / 6;
    }
}
