using System.Globalization;
using System.Text;

namespace BridgeForm.Mutation;

/// <summary>docs/mutation.md.</summary>
internal static class Page
{
    // Of the places not shown equivalent, so many are killed; so many at most may be equivalent.
    private const double LeastKilled = 0.95;
    private const double MostEquivalent = 0.05;

    public static bool IsEnough(IReadOnlyCollection<Result> results)
    {
        var equivalent = results.Count(r => r.Equivalent is not null);
        return results.Count(r => r.KilledBy is not null) >= LeastKilled * (results.Count - equivalent)
            && equivalent <= MostEquivalent * results.Count;
    }

    public static string Totals(IReadOnlyCollection<Result> results)
    {
        var equivalent = results.Count(r => r.Equivalent is not null);
        var killed = results.Count(r => r.KilledBy is not null && r.Equivalent is null);
        var share = 100.0 * killed / Math.Max(1, results.Count - equivalent);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{results.Count} places: {killed} killed, {results.Count(r => r.IsSurvivor)} survive, {equivalent} equivalent; {share:0.0} % "
                + $"of those not equivalent are killed");
    }

    public static string Text(IReadOnlyCollection<Result> results, Options options)
    {
        var text = new StringBuilder($"""
            # Changes that the tests must notice

            Made by `bash tests/mutation.sh`; do not edit. Each row is one small change of the source: a sign, a factor, a limit, least for most, a comparison. All are compiled into the model once, behind a switch that is read at start; with one of them on, the tests that reach it run until one fails. Then it is *killed*. A change that no test notices *survives*: at that place the numbers could be wrong unseen.

            **{Totals(results)}.** Seed `{options.Seed}`, {options.Sites} places drawn by lot, in equal parts from Ropes, Loads, Frames, Checks and Output, and {results.Count(r => r.Listed is not null)} listed ones that once survived. Source as of commit {options.Commit}.

            Numbers grow by a quarter, those below 0.0001 (tolerances) a thousandfold. Comparisons of whole numbers, and with a plain 0, gain or lose their end; others turn round. Not changed: what a text reads like; where something stands on paper and how a page is encoded (of the files that draw sheets, only values that are turned into words); numbers that the compiler needs (patterns, attributes, defaults of parameters).

            Left out, because they hold to files that are made anew with the model, or need outside programs:


            """.ReplaceLineEndings("\n"));
        foreach (var (name, reason) in Left.Out)
        {
            text.Append(CultureInfo.InvariantCulture, $"- `{name.TrimEnd('.')}`: {reason}\n");
        }

        text.Append("- tests of the category `Referee`: outside readers\n");
        Section(
            text, "Survive", results.Where(r => r.IsSurvivor),
            r => r.Reaching == 0 ? "no test reaches it" : $"reached by {r.Reaching} classes");
        Section(text, "Equivalent", results.Where(r => r.Equivalent is not null), r => r.Equivalent!);
        Section(text, "Listed survivors, killed", results.Where(r => r.Listed is not null && !r.IsSurvivor), r => Short(r.KilledBy));
        Section(
            text, "Drawn by lot, killed", results.Where(r => r.Listed is null && r.KilledBy is not null && r.Equivalent is null),
            r => Short(r.KilledBy));
        return text.ToString();
    }

    private static void Section(StringBuilder text, string title, IEnumerable<Result> results, Func<Result, string> what)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n## {title}\n\n| place | kind | was | became | "
            + $"{(title.EndsWith("killed", StringComparison.Ordinal) ? "killed by" : "why")} |\n|---|---|---|---|---|\n");
        foreach (var r in results.OrderBy(r => r.Site.File, StringComparer.Ordinal).ThenBy(r => r.Site.Start))
        {
            text.Append(CultureInfo.InvariantCulture,
                $"| {r.Site.File["src/".Length..]}:{r.Site.Line} {r.Site.Member} | {r.Site.Kind} | {Code(r.Site.Original)} | "
                    + $"{Code(r.Site.Mutated)} | {(r.Listed is { } l ? $"{l.Why}: " : "")}{what(r)} |\n");
        }
    }

    private static string Code(string text) => $"`{Site.Collapsed(text).Replace("|", "\\|", StringComparison.Ordinal)}`";

    private static string Short(string? test) => test?.Replace("BridgeForm.Tests.", "", StringComparison.Ordinal) ?? "";
}
