using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>The cap as a simple beam from post to post.</summary>
internal static class CapSpan
{
    /// <summary>Pushed level, about its deep way.</summary>
    public static DeclaredCheck DeclaredLevel { get; } = Declare("cap-bending-level", "Cap pushed sideways", "Level");

    /// <summary>Pressed down or lifted, about its flat way.</summary>
    public static DeclaredCheck DeclaredDown { get; } = Declare("cap-bending-down", "Cap pressed down", "Downward (or upward)");

    /// <summary>Both ways.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var section = context.Parameters.Guard.Cap;
        yield return Check(context, DeclaredLevel, new(section.Thickness, section.Width), flat: false);
        yield return Check(context, DeclaredDown, new(section.Width, section.Thickness), flat: true);
    }

    private static CheckResult Check(CheckContext context, DeclaredCheck declared, RectangularSection bends, bool flat)
    {
        var words = context.Words();
        var guard = context.Parameters.Guard;
        var (span, where, bay) = CapSpans.Longest(context.Layout);
        var (moment, how) = Worst(context, words, span);
        var stress = moment / bends.Modulus;
        AdjustedValue? allowed = null;
        if (LumberValues.Find(context.Parameters, guard.CapStock, guard.Cap) is { } values)
        {
            var stability = Stability.Beam(
                bends, span, cantilever: false, values.Bending(LoadDuration.Guard, flat: false).Value,
                values.ModulusMin(LoadDuration.Guard).Value);
            allowed = values.Bending(LoadDuration.Guard, flat).Times(stability);
        }

        return WoodCheck.Stress(
            declared,
            words,
            stress,
            allowed,
            $"{guard.Cap.Name}, L = {words.Length(span)} ({where}): {how} = {words.Moment(moment)}; "
            + $"fb = M / {words.Modulus(bends.Modulus)} = {words.Stress(stress)}; {GuardPush.Source}",
            LumberValues.Missing(context.Parameters, guard.CapStock, guard.Cap)).On(context.InBay(bay, Role.Cap));
    }

    /// <summary>The larger moment of the pushes that a guard takes, N·m, and how it comes about.</summary>
    internal static (double Moment, string How) Worst(CheckContext context, CheckWords words, double span)
    {
        var point = (GuardPush.Point * span / 4, $"M = P·L/4 with P = {words.Pounds(GuardPush.Point)}");
        var line = (GuardPush.Line * span * span / 8, $"M = w·L²/8 with w = {words.PerFoot(GuardPush.Line)}");
        return context.Parameters.Use == Project.BridgeUse.Public && line.Item1 > point.Item1 ? line : point;
    }

    private static DeclaredCheck Declare(string id, string title, string way) => new(
        id,
        title,
        $"{way} 200 lbf in the middle, on a public bridge 50 plf as well (by itself), fb = M / S of a simple beam from post to post, "
            + "against Fb'.",
        $"NDS 3.3 (ASD); {GuardPush.Source}; NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);
}

/// <summary>Distances between posts that caps and rails span.</summary>
internal static class CapSpans
{
    /// <summary>Longest cap from head to head, metres, and its bay by name and number.</summary>
    public static (double Length, string Where, int Bay) Longest(BridgeLayout layout)
    {
        var bay = Ties.FirstLargest(Enumerable.Range(1, layout.Bays), i => Length(layout, i));
        return (Length(layout, bay), FramePoses.BayName(bay, layout.Bays), bay);
    }

    private static double Length(BridgeLayout layout, int bay) => (layout.Caps.Points[bay] - layout.Caps.Points[bay - 1]).Length;
}

/// <summary>A rail as a simple beam from post to post under the load on infill.</summary>
internal static class RailSpan
{
    /// <summary>Load on infill, newtons.</summary>
    internal const double Infill = 50 * Quantities.Units.PoundForce;
    /// <summary>Side of the square that it lies on, metres.</summary>
    internal const double Side = Quantities.Units.MetresPerFoot;

    /// <summary>Where it stands.</summary>
    internal const string Source = "IRC Table R301.5 and ASCE 7 4.5.1.2: 50 lbf (222 N) on 1 ft² (0.093 m²) of infill";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rail-bending",
        "Guard rail pushed outward",
        "50 lbf on one foot of one rail, M = P/4·(L − a/2) of a simple beam from post to post, fb = M / S on its flat side, against Fb'. "
            + "Rails thinner than 2 in are reckoned as No. 3 of their species, unless the project file gives values: 1x lumber is "
            + "stress-rated only if so stamped.",
        $"NDS 3.3 (ASD); {Source}; NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>None for a guard without rails.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var guard = context.Parameters.Guard;
        if (guard.RailHeights.IsEmpty && guard.RailCount == 0)
        {
            yield break;
        }

        var words = context.Words();
        var (span, where, bay) = CapSpans.Longest(context.Layout);
        var length = Math.Min(Side, span);
        var moment = Infill / 4 * (span - (length / 2));
        var bends = new RectangularSection(guard.Rail.Width, guard.Rail.Thickness);
        var stress = moment / bends.Modulus;
        yield return WoodCheck.Stress(
            Declared,
            words,
            stress,
            LumberValues.Find(context.Parameters, guard.RailStock, guard.Rail)?.Bending(LoadDuration.Guard, flat: true),
            $"{guard.Rail.Name}, L = {words.Length(span)} ({where}): M = {words.Pounds(Infill)} / 4 × (L − {words.InInches(length)} / 2) = "
                + $"{words.Moment(moment)}; "
            + $"fb = M / {words.Modulus(bends.Modulus)} = {words.Stress(stress)}; {Source}",
            LumberValues.Missing(context.Parameters, guard.RailStock, guard.Rail)).On(context.InBay(bay, Role.Rail));
    }
}

/// <summary>A picket as a simple beam from rail to rail under the load on infill.</summary>
internal static class PicketSpan
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "picket-bending",
        "Picket pushed outward",
        "Only with guard.pickets: 50 lbf on one foot of one picket, M = P/4·(L − a/2) of a simple beam between the rails' middle lines, "
            + "fb = M / S on its flat side, against Fb'. Thinner than 2 in as rails are.",
        $"NDS 3.3 (ASD); {RailSpan.Source}; NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>None for a guard without pickets.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (context.Parameters.Guard.Pickets is not { } pickets)
        {
            yield break;
        }

        var words = context.Words();
        var frame = Ties.FirstLargest(Enumerable.Range(0, context.Layout.Bays + 1), i => Length(context.Layout, i));
        var span = Length(context.Layout, frame);
        var length = Math.Min(RailSpan.Side, span);
        var moment = RailSpan.Infill / 4 * (span - (length / 2));
        var bends = new RectangularSection(pickets.Section.Width, pickets.Section.Thickness);
        var stress = moment / bends.Modulus;
        yield return WoodCheck.Stress(
            Declared,
            words,
            stress,
            SlenderValues.Find(context.Parameters, pickets.Stock, pickets.Section)?.Bending(LoadDuration.Guard, flat: false),
            $"{pickets.Section.Name}, L = {words.Length(span)} ({context.Layout.Poses[frame].Name}): M = {words.Pounds(RailSpan.Infill)} "
                + $"/ 4 × (L − {words.InInches(length)} / 2) = {words.Moment(moment)}; "
                + $"fb = M / {words.Modulus(bends.Modulus)} = {words.Stress(stress)}; {RailSpan.Source}",
            LumberValues.Missing(context.Parameters, pickets.Stock, pickets.Section))
            .On(context.InBay(Math.Max(1, frame), Role.Picket).Take(1));
    }

    /// <summary>Along the post, from one rail's middle line to the other's.</summary>
    private static double Length(BridgeLayout layout, int frame)
    {
        var heights = GuardRails.Heights(layout, frame);
        return heights[^1] - heights[0];
    }
}
