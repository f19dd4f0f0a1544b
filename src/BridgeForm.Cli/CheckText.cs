using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Quantities;

namespace BridgeForm.Cli;

/// <summary>What <c>check</c> prints: the shape, then the checks, worst first, in at most 100 columns.</summary>
internal static class CheckText
{
    private const int Columns = 100;
    private const int StatusColumn = 10;

    /// <summary>Prints a model's shape and checks; with <paramref name="quiet"/> only failing checks.</summary>
    public static void Write(TextWriter output, BridgeModel model, bool quiet)
    {
        if (!quiet)
        {
            WriteShape(output, model);
        }

        var checks = model.Checks
            .Where(c => !quiet || c.Status == CheckStatus.Fail)
            .OrderBy(c => Order(c.Status))
            .ThenByDescending(c => c.Ratio ?? 0);
        foreach (var check in checks)
        {
            WriteCheck(output, check);
        }

        if (!quiet)
        {
            output.WriteLine();
            WriteWrapped(output, Caution.Text, "");
        }
    }

    private static void WriteShape(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine(model.Parameters.Name);
        output.WriteLine();
        Row(output, "span, rise", $"{words.Length(model.Parameters.Site.Span)}, {words.Length(model.Parameters.Site.Rise)}");
        Row(output, "sag", words.Length(model.Rope.Sag));
        Row(output, "bays", model.Rope.Segments.Length.ToString(CultureInfo.InvariantCulture));
        Row(output, "end slopes", $"{QuantityText.Degrees(model.Frames[0].Slope)}, {QuantityText.Degrees(model.Frames[^1].Slope)}");
        Row(output, "rope pull, empty", $"{words.Force(model.Rope.Horizontal)} level, {words.Force(model.Rope.MaxTension)} at most, each rope");
        foreach (var row in model.Hoisting)
        {
            Row(
                output,
                row.Stage is "bare" ? "hang bare at" : "frames only at",
                $"{words.Temperature(row.Temperature)}: sag {words.Length(row.Sag)}, pull {words.Force(row.Horizontal)}");
        }

        output.WriteLine();
    }

    private static void Row(TextWriter output, string label, string value) =>
        output.WriteLine($"{label,-18}{value}");

    private static void WriteCheck(TextWriter output, CheckResult check)
    {
        var ratio = check.Ratio is { } r ? r.ToString("0.00", CultureInfo.InvariantCulture) : "";
        output.WriteLine($"{Word(check.Status),-StatusColumn}{ratio,6}  {check.Title} ({check.Id})");
        var indent = new string(' ', StatusColumn + 8);
        WriteWrapped(output, check.Detail, indent);
        WriteWrapped(output, check.Source, indent);
    }

    private static void WriteWrapped(TextWriter output, string text, string indent)
    {
        var line = indent;
        foreach (var word in text.Split(' '))
        {
            if (line.Length + word.Length + 1 > Columns && line.Length > indent.Length)
            {
                output.WriteLine(line.TrimEnd());
                line = indent;
            }

            line += word + " ";
        }

        output.WriteLine(line.TrimEnd());
    }

    private static int Order(CheckStatus status) => status switch
    {
        CheckStatus.Fail => 0,
        CheckStatus.Warn => 1,
        CheckStatus.Engineer => 2,
        _ => 3,
    };

    private static string Word(CheckStatus status) => status switch
    {
        CheckStatus.Fail => "FAILS",
        CheckStatus.Warn => "look",
        CheckStatus.Engineer => "engineer",
        _ => "holds",
    };
}
