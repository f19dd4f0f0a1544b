using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Cli.Text;

/// <summary>
/// What <c>check --all</c> prints: shape, load cases, hoisting, marks, then the checks, worst first, and the verdict, in at most 100
/// columns.
/// </summary>
internal static class CheckText
{
    private const string Indent = "                  ";

    /// <summary>
    /// Prints a model, the verdict once more at the end, where it stays on the screen; with <paramref name="quiet"/> only dangers,
    /// failing checks and what was not checked.
    /// </summary>
    public static void Write(TextWriter output, BridgeModel model, bool quiet)
    {
        if (!quiet)
        {
            ShapeText.Write(output, model);
            ChosenText.Write(output, model.Parameters.Chosen);
            CaseText.Write(output, model);
            HoistingText.Write(output, model);
            MarkText.Write(output, model);
            output.WriteLine(Summary(model));
        }

        VerdictText.WriteHeadlines(output, model, quiet);
        if (!quiet)
        {
            output.WriteLine();
        }

        foreach (var check in CheckOrder.WorstFirst(model.Checks).Where(c => !quiet || c.Status == CheckStatus.Fail))
        {
            WriteCheck(output, check);
        }

        if (!quiet)
        {
            RemedyText.WriteRemedies(output, model);
            RemedyText.WriteCautions(output, model);
            output.WriteLine();
            Columns.Wrapped(output, Caution.Text, "");
            output.WriteLine();
            VerdictText.Write(output, model);
        }
    }

    private static string Summary(BridgeModel model)
    {
        var counts = model.Checks
            .GroupBy(c => c.Status)
            .OrderBy(g => CheckOrder.Rank(g.Key))
            .Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Count()} {Label(g.Key)}"));
        return $"CHECKS, worst first: {string.Join(", ", counts)}. The number is demand / capacity.";
    }

    /// <summary>One check: status, figures, source.</summary>
    public static void WriteCheck(TextWriter output, CheckResult check)
    {
        Columns.Wrapped(output, $"{Label(check.Status),-10}{RatioText.Of(check),6}  {check.Title} ({check.Id})", "", Indent);
        Columns.Wrapped(output, check.Detail, Indent);
        Columns.Wrapped(output, "by: " + check.Source, Indent);
    }

    private static string Label(CheckStatus status) => status == CheckStatus.Fail ? "FAILS" : status.Word();
}

/// <summary>The bridge complete and empty.</summary>
internal static class ShapeText
{
    /// <summary>Name and shape.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine(model.Parameters.Name);
        output.WriteLine();
        output.WriteLine("SHAPE, complete and empty");
        Columns.Row(output, "span, rise", $"{words.Length(model.Parameters.Site.Span)}, {Rise(words, model.Parameters.Site.Rise)}");
        Columns.Row(output, "sag", words.Length(model.Rope.Sag));
        Columns.Row(output, "bays", model.Rope.Segments.Length.ToString(CultureInfo.InvariantCulture));
        Columns.Row(output, "end slopes", $"{QuantityText.Degrees(model.Frames[0].Slope)}, {QuantityText.Degrees(model.Frames[^1].Slope)}");
        Columns.Row(
            output, "rope tension", $"{words.Force(model.Rope.Horizontal)} horizontal, {words.Force(model.Rope.LargestTension)} largest");
        output.WriteLine();
    }

    /// <summary>How much higher B is than A.</summary>
    public static string Rise(QuantityText words, double rise) =>
        rise < 0 ? $"B {words.Length(-rise)} lower than A" : words.Length(rise);
}

/// <summary>What would pass, and what people who handle the ropes must know.</summary>
internal static class RemedyText
{
    /// <summary>Changes that would make failing checks pass; nothing when there are none.</summary>
    public static void WriteRemedies(TextWriter output, BridgeModel model)
    {
        if (model.Remedies.IsEmpty)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine("WHAT WOULD PASS");
        foreach (var remedy in model.Remedies)
        {
            Columns.Wrapped(output, $"{remedy.CheckId}: {remedy.Text}", "", "  ");
        }
    }

    /// <summary>Cautions of rope work.</summary>
    public static void WriteCautions(TextWriter output, BridgeModel model)
    {
        output.WriteLine();
        output.WriteLine("WITH THE ROPES");
        foreach (var caution in model.Ropework.Cautions)
        {
            Columns.Wrapped(output, "- " + caution, "", "  ");
        }
    }
}
