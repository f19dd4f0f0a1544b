using BridgeForm.Checks.Codes;
namespace BridgeForm.Checks.Ropes;

/// <summary>Steepest deck of all load cases that have a deck.</summary>
internal static class DeckSlopeLoaded
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "deck-slope-loaded",
        "Steepest slope of the deck under load",
        "Steepest bay of all load cases with a deck against the steepest ramp.",
        Limits.Ramp.Source,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>A warning above a ramp's limit.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var (limit, source) = Limits.Ramp;
        var worst = context.Cases.Where(c => c.Shape is not null && c.Id is not "erect-half").MaxBy(c => c.SteepestDeck);
        var slope = worst?.SteepestDeck ?? 0;
        return Outcome.AtMost(
            Declared, slope, limit, "1", source,
            $"{CheckWords.Slope(slope)} ({CheckWords.Angle(Math.Atan(slope))}) in case {worst?.Id}; a ramp has at most {CheckWords.Slope(limit)}",
            CheckStatus.Warn);
    }
}

/// <summary>How far the deck tilts to one side under load.</summary>
internal static class CrossSlope
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "cross-slope",
        "Cross slope of the deck under load",
        "Slope between the two ropes in the worst case against 1 : 48.",
        "ADA 2010 405.3",
        [CheckStatus.Pass, CheckStatus.Warn]);

    // ADA 2010 405.3: cross slope no steeper than 1 : 48.
    private const double Limit = 1.0 / 48;

    /// <summary>A warning above the cross slope of an accessible ramp.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var words = context.People();
        var worst = context.Cases.Where(c => c.Shape is not null).MaxBy(c => c.CrossSlope);
        var slope = Math.Tan(worst?.CrossSlope ?? 0);
        var spacing = context.Parameters.Ropes.Spacing;
        return Outcome.AtMost(
            Declared, slope, Limit, "1",
            "ADA 2010 405.3: cross slope no steeper than 1 : 48; a figure to compare with, not a rule for a private footbridge",
            $"one rope {words.Length(slope * spacing)} lower than the other over {words.Length(spacing)} = {CheckWords.Slope(slope)} in case {worst?.Id}",
            CheckStatus.Warn);
    }
}
