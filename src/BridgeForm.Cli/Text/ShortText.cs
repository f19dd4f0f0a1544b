using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Cli.Streams;
using BridgeForm.Loads;
using BridgeForm.Proposals;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Trials;

namespace BridgeForm.Cli.Text;

/// <summary>
/// What <c>check</c> prints on one screen: the verdict, ten figures, what fails with its cure, what to look at, and what comes next.
/// </summary>
internal static class ShortText
{
    /// <summary>Most lines where no check fails.</summary>
    public const int MostLines = 40;

    /// <summary>Most lines where some do.</summary>
    public const int MostLinesFailing = 60;

    // What a line has room for beside its indent, its status and its ratio.
    private const string Indent = "                  ";

    /// <summary>Prints it, in at most 100 columns.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="model">The bridge.</param>
    /// <param name="file">Name of its file, as commands name it.</param>
    /// <param name="name">What a person types in front of a command.</param>
    public static void Write(TextWriter output, BridgeModel model, string file, string name = OwnName.Installed)
    {
        var checks = CheckOrder.WorstFirst(model.Checks).ToList();
        var failing = checks.Where(c => c.Status == CheckStatus.Fail).ToList();
        var (above, below) = (Lines(w => Above(w, model)), Lines(w => Below(w, checks, $"{name} check {file}")));
        var room = (failing.Count > 0 ? MostLinesFailing : MostLines) - above.Count - below.Count;
        var looks = checks.Where(c => c.Status == CheckStatus.Warn).ToList();
        var fails = Fitting(
            [.. failing.Select(c => Lines(w => Fails(w, model, c)))], room - (looks.Count > 0 ? 1 : 0), "fails", failing);
        var seen = Fitting([.. looks.Select(c => Lines(w => Row(w, c)))], room - fails.Count, "to review", looks);
        foreach (var line in above.Concat(fails).Concat(seen).Concat(below))
        {
            output.WriteLine(line);
        }
    }

    private static void Above(TextWriter output, BridgeModel model)
    {
        output.WriteLine(model.Parameters.Name);
        VerdictText.Write(output, model);
        output.WriteLine();
        KeyFigures.Write(output, model);
        output.WriteLine();
        ChosenText.WriteBriefly(output, model.Parameters.Chosen);
    }

    private static void Below(TextWriter output, IReadOnlyCollection<CheckResult> checks, string command)
    {
        var (hold, wait) = (checks.Count(c => c.Status == CheckStatus.Pass), checks.Count(c => c.Status == CheckStatus.Engineer));
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{hold} hold, {wait} wait for a licensed engineer."));
        var ways = checks.Any(c => c.Status == CheckStatus.Fail) ? "; propose in place of check for ways that pass" : "";
        Columns.Wrapped(
            output, $"Next: {command} --all for everything; --explain ID for one check, with its cure{ways}.", "", "  ");
        Columns.Wrapped(output, Caution.Text, "");
    }

    // Two lines: what, and the way out.
    private static void Fails(TextWriter output, BridgeModel model, CheckResult check)
    {
        Row(output, check);
        var all = Cures.Of(model, check.Id).ToList();
        var cure = all.Find(r => r.Write.Length > 0) ?? all.FirstOrDefault();
        var way = "cure: " + (cure is null ? Search.Help(check.Id)
            : cure.Write.Length > 0 ? $"{cure.Write} (--explain {check.Id}: what goes with it)"
            : cure.Text[(cure.Text.IndexOf(": ", StringComparison.Ordinal) + 2)..]);
        output.WriteLine(Cut(Indent + way));
    }

    private static void Row(TextWriter output, CheckResult check)
    {
        var status = check.Status == CheckStatus.Fail ? "FAILS" : check.Status.Word();
        output.WriteLine(Cut($"{status,-10}{RatioText.Of(check),6}  {check.Title} ({check.Id})"));
    }

    // So much as a line holds, to the end of a word.
    private static string Cut(string line)
    {
        if (line.Length <= Columns.Width)
        {
            return line;
        }

        var end = line.LastIndexOf(' ', Columns.Width - 2);
        return line[..(end > Indent.Length ? end : Columns.Width - 2)].TrimEnd(';', ',', ':', ' ') + " …";
    }

    // As many as there is room for; the ids of all others on one line.
    private static List<string> Fitting(
        IReadOnlyList<List<string>> each, int room, string what, IReadOnlyList<CheckResult> checks)
    {
        var (lines, shown) = (new List<string>(), 0);
        while (shown < each.Count && lines.Count + each[shown].Count <= room - (shown + 1 < each.Count ? 1 : 0))
        {
            lines.AddRange(each[shown++]);
        }

        if (shown < each.Count)
        {
            var ids = string.Join(", ", checks.Skip(shown).Select(c => c.Id));
            lines.Add(Cut(string.Create(CultureInfo.InvariantCulture, $"and {each.Count - shown} more {what}: {ids}")));
        }

        return lines;
    }

    private static List<string> Lines(Action<TextWriter> write)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        write(text);
        return [.. text.ToString().TrimEnd('\n').Split('\n')];
    }
}

/// <summary>What would make a check pass, as far as it was looked for.</summary>
internal static class Cures
{
    /// <summary>Sentences of its own, and of those that it shares with other checks, which name it.</summary>
    public static IEnumerable<Remedy> Of(BridgeModel model, string id) => model.Remedies
        .Where(r => string.Equals(r.CheckId, id, StringComparison.Ordinal)
            || r.Text.Split(['(', ')', ',', ' '], StringSplitOptions.RemoveEmptyEntries).Contains(id, StringComparer.Ordinal));
}

/// <summary>Ten figures that a builder asks for first.</summary>
internal static class KeyFigures
{
    /// <summary>Two in a line.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var figures = Of(model);
        for (var i = 0; i < figures.Length; i += 2)
        {
            output.WriteLine($"{Cell(figures[i]),-52}{(i + 1 < figures.Length ? Cell(figures[i + 1]) : "")}".TrimEnd());
        }
    }

    private static string Cell((string Label, string Value) figure) => $"{figure.Label,-16}{figure.Value}";

    /// <summary>Label and value of each, in the order in which a bridge is told of.</summary>
    public static (string Label, string Value)[] Of(BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        var (site, work) = (model.Parameters.Site, model.Ropework);
        var solved = model.Cases.Where(c => c.Shape is not null).ToList();
        return
        [
            ("span, rise", $"{words.Length(site.Span)}, {ShapeText.Rise(words, site.Rise)}"),
            ("bays", model.Rope.Segments.Length.ToString(CultureInfo.InvariantCulture)),
            ("sag, empty", $"{words.Length(model.Rope.Sag)}, {QuantityText.Share(model.Rope.Sag / site.Span)} of the span"),
            ("rope, at most", work.Governing is { } most
                ? words.Force(most.Shape!.LargestTension) + Of(model, "rope-strength") : "none"),
            ("anchors hold", string.Join(", ", work.Supports.Select(s => $"{s.Support} {words.Force(s.Held)}")) + ", each rope"),
            ("deflection", solved.Count == 0 ? "" : words.Size(solved.Max(c => c.Moves.Max(m => -m.Y)))),
            ("steepest deck", solved.Count == 0 ? "" : $"{Slope(Empty(model))} empty, {Slope(solved.Max(c => c.SteepestDeck))} loaded"),
            ("cross slope", work.Toppled.Any() ? "it rolls over" : QuantityText.Degrees(solved.Max(c => c.CrossSlope) ?? 0)),
            ("roll factor", RollState.Least(work.Roll)?.Factor is { } factor && double.IsFinite(factor.Value)
                ? NumberText.Fixed(Rounding.Down(factor.Value, 0.01), 2) : "none"),
            ("weight on ropes", words.Force(2 * model.Rope.Loads.Sum())),
        ];
    }

    private static double Empty(BridgeModel model) =>
        model.Checks.FirstOrDefault(c => string.Equals(c.Id, "deck-slope", StringComparison.Ordinal))?.Demand ?? 0;

    /// <summary><c>1 : 8.2</c>, from rise over run.</summary>
    public static string Slope(double slope) => slope > Tolerances.Level ? $"1 : {NumberText.Fixed(1 / slope, 1)}" : "level";

    private static string Of(BridgeModel model, string check) =>
        model.Checks.FirstOrDefault(c => string.Equals(c.Id, check, StringComparison.Ordinal)) is { Ratio: not null } found
            ? $", {RatioText.Of(found)} of what it may" : "";
}

/// <summary>One check with all that is known of it.</summary>
internal static class ExplainText
{
    /// <summary>What it compares, the numbers of this bridge, the source, and what would pass.</summary>
    public static void Write(TextWriter output, BridgeModel model, DeclaredCheck check)
    {
        output.WriteLine($"{check.Title} ({check.Id})");
        output.WriteLine();
        Columns.Wrapped(output, check.Compares, "");
        var results = model.Checks.Where(c => string.Equals(c.Id, check.Id, StringComparison.Ordinal)).ToList();
        output.WriteLine();
        output.WriteLine(model.Parameters.Name);
        if (results.Count == 0)
        {
            output.WriteLine("  this bridge has nothing that it looks at");
        }

        foreach (var result in results)
        {
            CheckText.WriteCheck(output, result);
        }

        var cures = Cures.Of(model, check.Id).ToList();
        var isLeft = results.Exists(r => r.Status == CheckStatus.Engineer);
        // A check may fail at one place and be left to an engineer at another: what was tried for the failure stays.
        cures = isLeft && cures.Count == 0
            ? [.. model.JointsThatPass().Where(r => string.Equals(r.CheckId, check.Id, StringComparison.Ordinal))] : cures;
        if (results.Exists(r => r.Status == CheckStatus.Fail) || (isLeft && cures.Count > 0))
        {
            output.WriteLine();
            output.WriteLine("WHAT WOULD PASS");
            foreach (var cure in cures)
            {
                Columns.Wrapped(output, "- " + cure.Text, "", "  ");
            }

            if (cures.Count == 0)
            {
                Columns.Wrapped(output, "- " + Search.Help(check.Id), "", "  ");
            }
        }

        output.WriteLine();
        Columns.Wrapped(output, Caution.Text, "");
    }
}
