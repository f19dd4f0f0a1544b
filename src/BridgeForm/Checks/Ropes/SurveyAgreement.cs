using BridgeForm.Quantities;

namespace BridgeForm.Checks.Ropes;

/// <summary>Whether the readings on site agree with each other: every length and bevel comes from them.</summary>
internal static class SurveyAgreement
{
    // What the survey's sheet asks for; own figure.
    private const double Agrees = Units.MetresPerInch / 4;

    private const string Source = "own figure: 1/4 in (6 mm), as the sheet of the survey asks";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "survey-agreement",
        "Readings of the survey against each other",
        "The larger of two differences, against 1/4 in (6 mm): the level distance by the tape along the slope against the distances of "
            + "the readings, and the rise by the way out against that by the way back. To review above it, and where one of both was not "
            + "measured: then a wrong reading shows nowhere. Readings further apart are refused. Only where site.survey is given.",
        Source,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Nothing where the file has no readings.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (context.Parameters.Site.Survey is not { } survey)
        {
            yield break;
        }

        var words = context.Words();
        var (tape, level) = (survey.SpanByTape is { } span ? Math.Abs(span - survey.Span) : (double?)null, survey.Misclosure);
        var text = string.Join(
            "; ",
            tape is { } t
                ? $"tape along the slope and distances of the readings differ by {words.Length(t)} in span"
                : "no tape along the slope: a wrong distance shows nowhere",
            level is { } l
                ? $"ways out and back differ by {words.Length(l)} in rise"
                : "not leveled back: a wrong rod reading shows nowhere");
        var result = Outcome.AtMost(Declared, Math.Max(tape ?? 0, level ?? 0), Agrees, "m", Source, text, CheckStatus.Warn);
        yield return tape is null || level is null ? result with { Status = CheckStatus.Warn } : result;
    }
}
