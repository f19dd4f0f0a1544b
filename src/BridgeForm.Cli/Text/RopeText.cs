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
        var shown = model.ShownCases();
        Columns.Table(output, [Heading(model), .. shown.Select(c => Row(words, model, c))]);
        foreach (var failed in model.Cases.Where(c => c.Shape is null))
        {
            Columns.Row(output, failed.Id, failed.Failure ?? "no solution");
        }

        output.WriteLine(FormattableString.Invariant(
            $"WORST CASES, of {model.Cases.Length} solved; report.json has all of them"));
        foreach (var (response, id) in model.Ropework.Governs())
        {
            Columns.Row(output, response, $"{id}: {model.Ropework.TitleOf(id)}");
        }

        output.WriteLine();
    }

    private static bool Ground(BridgeModel model) => model.Cases.Any(c => c.OverGround is not null);

    private static bool Water(BridgeModel model) => model.Cases.Any(c => c.OverWater is not null);

    private static string[] Heading(BridgeModel model) =>
    [
        "case", "horizontal", "largest tension", "sag", "mid-span drop", "steepest", "cross slope",
        .. Ground(model) ? (string[])["ground clearance"] : [],
        .. Water(model) ? (string[])["water clearance"] : [],
    ];

    private static string[] Row(QuantityText words, BridgeModel model, LoadCaseResult result) => result.Shape is { } shape
        ?
        [
            result.Id,
            words.Force(shape.Horizontal),
            words.Force(shape.LargestTension),
            words.Length(shape.Sag),
            words.Size(result.MidSpanDrop),
            QuantityText.Degrees(Elementary.Atan(result.SteepestDeck)),
            result.CrossSlope is { } tilt ? QuantityText.Degrees(tilt) : "rolls over",
            .. Ground(model) ? (string[])[result.OverGround is { } ground ? words.Length(ground) : ""] : [],
            .. Water(model) ? (string[])[result.OverWater is { } water ? words.Length(water) : ""] : [],
        ]
        : [result.Id, "none", .. Heading(model)[2..].Select(_ => "")];
}

/// <summary>Sag, line of sight and pull to hoist by.</summary>
internal static class HoistingText
{
    /// <summary>A table by stage and temperature: for rope set to the plain marks, then for new rope that has yet to stretch.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine("HOISTING, each rope: sag at mid-span, and how far below the rope at both supports to sight");
        Table(output, words, model.Hoisting);
        if (model.Ropework.Chosen.Share > 0)
        {
            output.WriteLine("HOISTING by the marks that the file chose (ropes.new: as-is), the mean of its stretch to come");
            Table(output, words, model.Ropework.Chosen.Hoisting.Rows);
        }

        foreach (var end in model.Ropework.Stretch)
        {
            output.WriteLine($"HOISTING, new rope that will stretch {QuantityText.Share(end.Share)} for good, set to the marks for it");
            Table(output, words, end.Hoisting.Rows);
        }
    }

    private static void Table(TextWriter output, QuantityText words, IEnumerable<HoistingRow> rows) => Columns.Table(
        output,
        [
            ["ropes", "at", "sag", "sight below", "horizontal tension"],
            .. rows.Select(row => (string[])
            [
                row.Stage is "bare" ? "bare" : "with frames, no deck",
                words.Temperature(row.Temperature),
                words.Size(row.Sag),
                words.Size(row.Sight),
                words.Force(row.Horizontal),
            ]),
        ]);
}

/// <summary>Where each frame sits on the rope laid out straight, from support A.</summary>
internal static class MarkText
{
    /// <summary>A table of marks: by the design, and on new rope that has yet to stretch for good.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        var tension = model.Parameters.Ropes.MarkingTension;
        var stretch = model.Ropework.Stretch;
        output.WriteLine("ROPE MARKS from support A, rope laid out straight");
        string[] heading =
        [
            "frame", "unstressed",
            .. tension > 0 ? ["at " + words.Force(tension)] : Array.Empty<string>(),
            .. stretch.Select(s => $"new, will stretch {QuantityText.Share(s.Share)}"),
        ];
        Columns.Table(output, [heading, .. model.Marks.Select((mark, i) => (string[])
        [
            model.Frames[i].Name,
            words.Length(mark.Unstressed),
            .. tension > 0 ? [words.Length(mark.AtMarkingTension)] : Array.Empty<string>(),
            .. stretch.Select(s => words.Length(s.Marks[i].Unstressed)),
        ])]);
        Tape(output, model, words);
    }

    private static void Tape(TextWriter output, BridgeModel model, QuantityText words)
    {
        Columns.Wrapped(output, model.Ropework.Chosen.Sentence, "");
        if (RopeTape.Of(model.Parameters, model.Ropework) is not { } tape)
        {
            output.WriteLine();
            return;
        }

        output.WriteLine("TAPE hooked into the first eye, by the marks that the file chose");
        Columns.Table(
            output, [["place", "reading"], .. tape.Readings.Select(r => (string[])[r.Name, words.Length(r.AtTension)])]);
    }
}
