using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Text;

/// <summary>The load cases: one line each.</summary>
internal static class CaseText
{
    /// <summary>A table, and under it why a case has no solution; nothing for a model without cases.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        if (model.Cases.IsEmpty)
        {
            return;
        }

        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine("LOAD CASES, the rope that is pulled harder");
        Columns.Table(output, [Heading(model), .. model.Cases.Select(c => Row(words, model, c))]);
        foreach (var failed in model.Cases.Where(c => c.Shape is null))
        {
            Columns.Row(output, failed.Id, failed.Failure ?? "no solution");
        }
    }

    private static bool Ground(BridgeModel model) => model.Cases.Any(c => c.OverGround is not null);

    private static bool Water(BridgeModel model) => model.Cases.Any(c => c.OverWater is not null);

    private static string[] Heading(BridgeModel model) =>
    [
        "case", "level pull", "most pull", "sag", "middle falls", "steepest", "tilts",
        .. Ground(model) ? (string[])["over ground"] : [],
        .. Water(model) ? (string[])["over water"] : [],
    ];

    private static string[] Row(QuantityText words, BridgeModel model, LoadCaseResult result) => result.Shape is { } shape
        ?
        [
            result.Id,
            words.Force(shape.Horizontal),
            words.Force(shape.MaxTension),
            words.Length(shape.Sag),
            words.Size(result.MoveDownMid),
            QuantityText.Degrees(Math.Atan(result.SteepestDeck)),
            result.CrossSlope is { } tilt ? QuantityText.Degrees(tilt) : "rolls over",
            .. Ground(model) ? (string[])[result.OverGround is { } ground ? words.Length(ground) : ""] : [],
            .. Water(model) ? (string[])[result.OverWater is { } water ? words.Length(water) : ""] : [],
        ]
        : [result.Id, "none", .. Heading(model)[2..].Select(_ => "")];
}
