using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Cli.Text;

/// <summary>The load cases: one line each.</summary>
internal static class CaseText
{
    private static readonly string[] Heading = ["case", "level pull", "most pull", "sag", "middle falls", "tilts"];

    /// <summary>A table, and under it why a case has no solution; nothing for a model without cases.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        if (model.Cases.IsEmpty)
        {
            return;
        }

        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine("LOAD CASES, the more heavily loaded rope");
        Columns.Table(output, [Heading, .. model.Cases.Select(c => Row(words, c))]);
        foreach (var failed in model.Cases.Where(c => c.Shape is null))
        {
            Columns.Row(output, failed.Id, failed.Failure ?? "no solution");
        }
    }

    private static string[] Row(QuantityText words, LoadCaseResult result) => result.Shape is { } shape
        ?
        [
            result.Id,
            words.Force(shape.Horizontal),
            words.Force(shape.MaxTension),
            words.Length(shape.Sag),
            words.Size(result.MoveDownMid),
            QuantityText.Degrees(result.CrossSlope),
        ]
        : [result.Id, "none", "", "", "", ""];
}
