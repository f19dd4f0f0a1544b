namespace BridgeForm.Checks.Timber;

/// <summary>Wood of a base pressed by the round rope in its channel.</summary>
internal static class RopeBearing
{
    private const string Source = "the NDS has no value for wood on a round rope; an engineer judges";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-bearing",
        "Base bearing on the rope",
        "Largest reaction of a rope over the projected width (rope diameter × size of the base along it). Only stated.",
        Source,
        [CheckStatus.Engineer]);

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
        var across = LumberValues.Find(context.Parameters, made.Stock, made.Section)?.Across();
        yield return Outcome.ForEngineer(
            Declared,
            stress,
            "Pa",
            Source,
            $"{worst.Name}: {words.Pounds(worst.Force)} / ({words.Length(diameter)} × {words.Length(made.Along)}) = {words.Stress(stress)} on the projected width"
            + (across is null ? "" : $"; for flat bearing, to compare: {across.Text(words)}"));
    }

    private static double Larger((double Left, double Right) reactions) => Math.Max(reactions.Left, reactions.Right);
}
