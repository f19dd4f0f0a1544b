using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Codes;

/// <summary>
/// Largest ball that passes between an end frame's post and the newel beyond it: two straight sticks, so that what is clear between
/// them, in a cut across the newel, is widest where the opening begins or where it ends.
/// </summary>
internal static class LandingOpenings
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-at-landing",
        "Openings between the bridge's guard and the landing's",
        "Largest sphere that passes between the end frames' posts and the newels (guard.newels), in a cut across the newel, from the lower "
            + "of landing and deck up to the lower of newel and cap, against 4 in. What guard the landing has beyond the newel is by "
            + "others. At an end without newels the landing's guard is not in the project file, and it is only stated.",
        "IRC 2018 R312.1.3; IBC 1015.4 (from memory)",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The wider one of both ends; for an engineer where one has no newel and none lets the sphere pass.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var layout = context.Layout;
        var words = context.Words();
        var (sphere, source) = Limits.Opening(layout.Parameters.Use, 0);
        var ends = ((int Frame, string Name)[])[(0, "A"), (layout.Bays, "B")];
        var clear = ends.Select(e => Clear(layout, e.Frame)).ToArray();
        var worst = Ties.IsLarger(clear[1] ?? -1, clear[0] ?? -1) ? 1 : 0;
        var said = string.Join("; ", ends.Select((e, i) => clear[i] is { } gap
            ? $"at {e.Name} {words.Length(gap)} clear between {layout.Poses[e.Frame].Name}'s posts and the newels"
            : $"at {e.Name} the guards end at {layout.Poses[e.Frame].Name}, and the landing's own are not in the project file"));
        var detail = $"{said}; no sphere of {words.InInches(sphere)} may pass";
        var widest = clear[worst] ?? 0;
        var isJudged = GuardOpenings.Status(widest, sphere) == CheckStatus.Fail || Array.TrueForAll(clear, c => c is not null);
        return clear[worst] is not null && isJudged
            ? new CheckResult(
                Declared.Id, Declared.Title, GuardOpenings.Status(widest, sphere), widest, sphere, "m", GuardOpenings.Ratio(widest, sphere),
                source, detail).On(context.InFrame(ends[worst].Frame, Role.Post, Role.Newel))
            : Outcome.ForEngineer(Declared, sphere, "m", source, $"{detail}; guard.newels ends the guards on posts of the landing")
                .On(ends.Where((_, i) => clear[i] is null).SelectMany(e => context.InFrame(e.Frame, Role.Post)));
    }

    /// <summary>Metres; null where there is no newel.</summary>
    private static double? Clear(BridgeLayout layout, int frame)
    {
        if (GuardNewels.Lay(layout, frame, Side.Right).FirstOrDefault() is not { } newel)
        {
            return null;
        }

        var post = Uprights.Post(layout, frame, Side.Right);
        var low = Math.Min(LandingPlace.Level(layout, frame), DeckEnd.Surface(layout, frame));
        var high = Math.Min(
            GuardNewels.Top(layout, frame, layout.Parameters.Guard.Newels!), GuardNewels.CapTop(layout, frame));
        return Math.Max(At(low), At(Math.Max(low, high)));

        double At(double level)
        {
            var (origin, axis) = (newel.Placement.Origin, newel.Placement.X);
            return CrossSections.Clear(newel, post, Plane.Through(origin + ((level - origin.Y) / axis.Y * axis), axis));
        }
    }
}

/// <summary>How high the newels stand over the landing: they are its guard's end.</summary>
internal static class NewelHeight
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "newel-height",
        "Height of the newels",
        "Only with guard.newels: from the higher of landing and deck's end up to a newel's top, where that is least, against the height of "
            + "a guard: 36 in private, 42 in public.",
        "IRC 2018 R312.1.2; IBC 1015.3",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>None without newels.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var layout = context.Layout;
        if (context.Parameters.Guard.Newels is not { } newels)
        {
            yield break;
        }

        double Height(int frame) => GuardNewels.Top(layout, frame, newels)
            - Math.Max(LandingPlace.Level(layout, frame), DeckEnd.Surface(layout, frame));
        var frame = Ties.FirstLeast(((int[])[0, layout.Bays]).Where(f => newels.StandAt(f > 0)), Height);
        var (needed, source) = Limits.GuardHeight(context.Parameters.Use);
        var words = context.Words();
        yield return Outcome.AtLeast(
            Declared, Height(frame), needed, "m", source,
            $"least beside {layout.Poses[frame].Name}: {words.Length(Height(frame))}, needed {words.InInches(needed)}")
            .On(context.InFrame(frame, Role.Newel));
    }
}
