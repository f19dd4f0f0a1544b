namespace BridgeForm.Checks.Timber;

/// <summary>The cap as a simple beam from post to post.</summary>
internal static class CapSpan
{
    /// <summary>Pushed level, about its deep way.</summary>
    public static DeclaredCheck DeclaredLevel { get; } = Declare("cap-bending-level", "Cap pushed sideways", "Level");

    /// <summary>Pressed down or lifted, about its flat way.</summary>
    public static DeclaredCheck DeclaredDown { get; } = Declare("cap-bending-down", "Cap pressed down", "Downward (or upward)");

    /// <summary>Both ways.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        var section = context.Parameters.Guard.Cap;
        yield return Check(context, DeclaredLevel, new(section.Thickness, section.Width), flat: false);
        yield return Check(context, DeclaredDown, new(section.Width, section.Thickness), flat: true);
    }

    private static CheckResult Check(CheckContext context, DeclaredCheck declared, RectangularSection bends, bool flat)
    {
        var words = context.People();
        var guard = context.Parameters.Guard;
        var (span, where) = CapSpans.Longest(context.Layout);
        var (moment, how) = Worst(context, words, span);
        var stress = moment / bends.Modulus;
        AdjustedValue? allowed = null;
        if (LumberValues.Find(context.Parameters, guard.CapStock, guard.Cap) is { } values)
        {
            var stability = Stability.Beam(
                bends, span, cantilever: false, values.Bending(LoadDuration.Guard, flat: false).Value, values.ModulusMin().Value);
            allowed = values.Bending(LoadDuration.Guard, flat).Times(stability);
        }

        return WoodCheck.Stress(
            declared,
            words,
            stress,
            allowed,
            $"{guard.Cap.Name}, L = {words.Length(span)} ({where}): {how} = {words.Moment(moment)}; "
            + $"fb = M / {words.Modulus(bends.Modulus)} = {words.Stress(stress)}; {GuardPush.Source}",
            LumberValues.Missing(context.Parameters, guard.CapStock, guard.Cap));
    }

    private static (double Moment, string How) Worst(CheckContext context, CheckWords words, double span)
    {
        var point = (GuardPush.Point * span / 4, $"M = P·L/4 with P = {words.Pounds(GuardPush.Point)}");
        var line = (GuardPush.Line * span * span / 8, $"M = w·L²/8 with w = {words.PerFoot(GuardPush.Line)}");
        return context.Parameters.Use == Project.BridgeUse.Public && line.Item1 > point.Item1 ? line : point;
    }

    private static DeclaredCheck Declare(string id, string title, string way) => new(
        id,
        title,
        $"{way} 200 lbf in the middle, on a public bridge 50 plf as well (by itself), fb = M / S of a simple beam from post to post, against Fb'.",
        $"NDS 3.3 (ASD); {GuardPush.Source}; NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);
}
