namespace BridgeForm.Checks.Timber;

/// <summary>Wood of a base pressed by the round rope in its channel.</summary>
internal static class RopeBearing
{
    private const string Source = "the NDS has no value for wood on a round rope; an engineer judges";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-bearing",
        "Base bearing on the rope",
        "Largest reaction of a rope over the projected width (rope diameter × size of the base along it), beside Fc⊥' of flat bearing. Above it a look; below it an engineer still judges, for a round rope presses harder in the middle of its channel.",
        Source,
        [CheckStatus.Warn, CheckStatus.Engineer]);

    /// <summary>None for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        var cases = BaseCases.Of(context);
        if (cases.IsEmpty)
        {
            yield break;
        }

        var words = context.People();
        var made = context.Parameters.Frames.Base;
        var diameter = context.Parameters.Ropes.Rope.Diameter;
        var worst = cases.Select(c => (c.Name, Force: Larger(c.Beam.Reactions()))).MaxBy(c => c.Force);
        var stress = worst.Force / (diameter * made.Along);
        var text = $"{worst.Name}: {words.Pounds(worst.Force)} / ({words.Length(diameter)} × {words.Length(made.Along)}) = {words.Stress(stress)} on the projected width";
        yield return LumberValues.Find(context.Parameters, made.Stock, made.Section)?.Across() is { } across
            ? Against(words, stress, across, text)
            : BaseSection.Missing(context).Result(Declared, stress, "Pa", Source, text);
    }

    private static CheckResult Against(CheckWords words, double stress, AdjustedValue across, string text)
    {
        var compared = Outcome.AtMost(
            Declared, stress, across.Value, "Pa", $"{Source}; {across.Sources}", $"{text}; for flat bearing, to compare: {across.Text(words)}", CheckStatus.Warn);
        return compared.Status == CheckStatus.Pass ? compared with { Status = CheckStatus.Engineer } : compared;
    }

    private static double Larger((double Left, double Right) reactions) => Math.Max(reactions.Left, reactions.Right);
}
