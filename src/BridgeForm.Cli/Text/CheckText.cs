using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Roles;

namespace BridgeForm.Cli.Text;

/// <summary>What <c>check</c> prints: shape, load cases, hoisting, marks, then the checks, worst first, in at most 100 columns.</summary>
internal static class CheckText
{
    private const string Indent = "                  ";

    /// <summary>Prints a model; with <paramref name="quiet"/> only failing checks.</summary>
    public static void Write(TextWriter output, BridgeModel model, bool quiet)
    {
        if (!quiet)
        {
            ShapeText.Write(output, model);
            CaseText.Write(output, model);
            HoistingText.Write(output, model);
            MarkText.Write(output, model);
            output.WriteLine(Summary(model));
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

    private static void WriteCheck(TextWriter output, CheckResult check)
    {
        Columns.Wrapped(output, $"{Label(check.Status),-10}{RatioText.Of(check),6}  {check.Title} ({check.Id})", "", Indent);
        Columns.Wrapped(output, check.Detail, Indent);
        Columns.Wrapped(output, "by: " + check.Source, Indent);
    }

    private static string Label(CheckStatus status) => status == CheckStatus.Fail ? "FAILS" : status.Word();
}
