using System.Globalization;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Tables;

/// <summary><c>assembly.csv</c>: one row a step, in the order of building.</summary>
public static class AssemblyTable
{
    private static readonly string[] Head = [
        "Step", "Stage", "Where", "What to do", "Number of parts", "Marks", "Parts in order", "Turned", "Rolled over",
        "Steepest slope when the stage is done (deg)",
    ];

    /// <summary>The table as text.</summary>
    public static string Csv(BridgeModel model)
    {
        var marks = model.Pieces
            .SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Mark)))
            .ToDictionary(p => p.Id, p => p.Mark, StringComparer.Ordinal);
        var steps = model.Assembly();
        var slopes = model.Stages().ToDictionary(
            s => s.Stage, s => Numbers.Fixed(Numbers.Degrees(Elementary.Atan(s.Steepest)), 1));
        var (turned, rolled) = (TurnWords.ById(model, o => o.Turned), TurnWords.ById(model, o => o.Turn.IsRolled));
        return CsvText.Write(
            Head, steps.Select(s => Row(s, marks, Turned(s, turned), Turned(s, rolled), slopes.GetValueOrDefault(s.Stage, ""))));
    }

    private static IReadOnlyList<string> Row(
        AssemblyStep step, IReadOnlyDictionary<string, string> marks, string turned, string rolled, string slope) =>
    [
        step.Number.ToString(CultureInfo.InvariantCulture),
        step.Stage.ToString(CultureInfo.InvariantCulture),
        step.Where,
        AssemblyWords.Of(step),
        step.Parts.Length.ToString(CultureInfo.InvariantCulture),
        string.Join(' ', step.Parts.Select(p => marks[p])),
        string.Join(' ', step.Parts),
        turned,
        rolled,
        slope,
    ];

    /// <summary>Parts of a step that stand so, alike ones together.</summary>
    private static string Turned(AssemblyStep step, IReadOnlyDictionary<string, string> turns) => string.Join(
        " | ",
        step.Parts.Where(turns.ContainsKey).GroupBy(p => turns[p], StringComparer.Ordinal).Select(g => g.Key + ": " + string.Join(' ', g)));
}

/// <summary><c>hardware.csv</c>: everything to buy that is not wood.</summary>
public static class HardwareTable
{
    private static readonly string[] Head = ["Item", "Quantity", "Where", "Note", "Source"];

    /// <summary>The table as text; an empty quantity is one that the project file does not give.</summary>
    public static string Csv(BridgeModel model) => CsvText.Write(Head, model.Hardware().Select(Row));

    private static IReadOnlyList<string> Row(HardwareItem item) =>
        [
            CsvText.Users(item.Item), item.Quantity?.ToString(CultureInfo.InvariantCulture) ?? string.Empty, CsvText.Users(item.Where),
            CsvText.Users(item.Note), CsvText.Users(item.Source),
        ];
}
