using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Tables;

/// <summary><c>erection.csv</c>: every step from the first landing to the open bridge, hold points among them.</summary>
public static class ErectionTable
{
    private static readonly string[] Head =
    [
        "Step", "Stage", "Where", "Stop until", "What", "Lifted at once", "Lifted at once (kg)", "Sag when the stage is done",
        "Sag when the stage is done (mm)", "Steepest slope then (deg)", "Largest tension of one rope then",
        "Largest tension of one rope then (kN)", "Pull on A along then", "Pull on A along then (kN)", "Pull on A down then",
        "Pull on A down then (kN)", "Pull on B along then", "Pull on B along then (kN)", "Pull on B down then", "Pull on B down then (kN)",
        "Two of the crew stand at each of", "Steepest slope with them in the middle (deg)", "Largest tension of one rope with them",
        "Largest tension of one rope with them (kN)", "Largest cross slope with two beside one guard (deg)",
    ];

    /// <summary>The table as text; at the foot what whoever handles the ropes must know.</summary>
    public static string Csv(BridgeModel model, DisplayUnits units)
    {
        var words = new QuantityText(model.Parameters.Units);
        var slopes = model.Stages();
        var stages = slopes.ToDictionary(s => s.Stage);
        var steps = model.Erection(slopes);
        return CsvText.Write(
            Head,
            [
                .. steps.Select((s, i) => Row(
                    s, IsLastOfStage(steps, i) && s.Stage is { } stage ? stages.GetValueOrDefault(stage) : null, model, words, units)),
                .. model.Ropework.Cautions.Select(c => (IReadOnlyList<string>)[c]),
            ]);
    }

    private static bool IsLastOfStage(ImmutableArray<ErectionStep> steps, int i) =>
        i + 1 == steps.Length || steps[i + 1].Stage != steps[i].Stage;

    private static IReadOnlyList<string> Row(
        ErectionStep step, StageSlope? state, BridgeModel model, QuantityText words, DisplayUnits units) =>
    [
        step.Number.ToString(CultureInfo.InvariantCulture),
        step.Stage?.ToString(CultureInfo.InvariantCulture) ?? "",
        step.Where,
        step.IsHold ? "STOP UNTIL" : "",
        CsvText.Users(step.Text),
        .. step.Mass > 0 ? [words.Mass(step.Mass), Numbers.Fixed(step.Mass, 1)] : new[] { "", "" },
        .. state is null ? Enumerable.Repeat("", 18) :
        [
            units.Length(state.Sag), Numbers.Fixed(state.Sag * 1000, 1), Numbers.Fixed(Numbers.Degrees(Elementary.Atan(state.Steepest)), 1),
            .. Force(state.Tension, words), .. Force(Math.Abs(state.ReactionA.X), words), .. Force(-state.ReactionA.Y, words),
            .. Force(Math.Abs(state.ReactionB.X), words), .. Force(-state.ReactionB.Y, words), .. Crew(state.Crew, model, words),
        ],
    ];

    private static string[] Crew(CrewOnStage? crew, BridgeModel model, QuantityText words) => crew is null ? ["", "", "", "", ""] :
    [
        string.Join(' ', crew.Frames.Select(f => model.Groups[f].Name)),
        crew.Steepest is { } steep ? Numbers.Fixed(Numbers.Degrees(Elementary.Atan(steep)), 1) : "",
        .. crew.Tension is { } pull ? Force(pull, words) : ["", ""],
        crew.Tilt is { } tilt ? Numbers.Fixed(Numbers.Degrees(Elementary.Atan(tilt)), 1) : AssemblyWords.Tilt(crew),
    ];

    private static string[] Force(double newtons, QuantityText words) => [words.Force(newtons), Numbers.Fixed(newtons / 1000, 3)];
}
