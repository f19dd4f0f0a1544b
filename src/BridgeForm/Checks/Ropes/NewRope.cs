using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>New rope set short for the stretch to come hangs flatter, and pulls harder, until it has stretched.</summary>
internal static class NewRope
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-strength-new",
        "Strength of new rope before it has stretched",
        "Largest tension of all load cases in rope set to its marks for the stretch to come, at the end of the range where it is set shortest, before it has stretched, against the same limit as rope-strength. A warning: plain marks and drawing in later do without it. Only where the stretch is known.",
        "load cases with the rope shorter by stretch / (1 + stretch); limit as rope-strength",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]);

    /// <summary>None where no stretch is known.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        if (context.Ropework.Stretch.MaxBy(s => s.NewPull?.Tension ?? 0) is not { NewPull: { } pull } end)
            yield break;
        var words = context.People();
        var text = $"set short for {CheckWords.Share(end.Share)} of stretch and loaded before it comes: {words.Force(pull.Tension)} in case {pull.Case}";
        if (Terminations.Allowed(context.Parameters.Ropes) is not { } allowed)
        {
            yield return Outcome.ForEngineer(Declared, pull.Tension, "N", Declared.Source, $"{text}; the ends' efficiency is not known");
            yield break;
        }

        yield return Outcome.AtMost(
            Declared, pull.Tension, allowed, "N", Declared.Source,
            pull.Tension > allowed
                ? $"{text}; more than {words.Force(allowed)}: keep crowds off until the ropes have stretched, or set them to the plain marks and draw them in afterwards, or take a thicker rope"
                : $"{text}; allowed {words.Force(allowed)}",
            CheckStatus.Warn);
    }
}
