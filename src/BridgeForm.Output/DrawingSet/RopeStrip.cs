using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>One rope with its ends on, laid out straight to scale, each mark as one reading of a tape hooked into the first eye.</summary>
internal static class RopeStrip
{
    /// <summary>Room that the drawing takes on its page, metres.</summary>
    public const double Height = 0.062;

    private const double ClosestNames = 0.006;

    /// <summary>Readings stand upright below their marks; closer ones are in the table alone. Metres.</summary>
    private const double ClosestReadings = 0.0034;
    private const double Margin = 0.006;
    private const double EyeRadius = 0.0016;

    /// <summary>The rope from cut end to cut end; from support to support where its ends are not known.</summary>
    public static void Draw(DrawingContext context, Canvas canvas)
    {
        var readings = Readings(context);
        var (from, to) = (readings[0].AtTension, readings[^1].AtTension);
        var (left, width) = (context.Body.MinX + Margin, context.Body.MaxX - context.Body.MinX - (2 * Margin));
        var onPaper = Math.Ceiling((to - from) / width / context.Enlargement);
        var ratio = onPaper * context.Enlargement;
        var heading = PageText.Wrapped(
            $"One rope laid out straight, both alike; 1 : {NumberText.Rounded(onPaper, 0)}; "
                + (!IsKnown(context) ? Unknown : readings[0].AtTension < 0 ? "dashed: the ends as turned back. " : "")
                + context.Model.Ropework.Chosen.Sentence,
            context.Body.MaxX - context.Body.MinX, PageText.Small, bold: true);
        var y = context.Body.MaxY - 0.0147 - PageText.HeightOf(heading.Length, PageText.Small);
        double X(double along) => left + ((along - from) / ratio);
        canvas.Column(context.Body.MinX, context.Body.MaxY, heading, PageText.Small, bold: true);
        canvas.Line(PageLayers.Cut, X(from), y, X(to), y);
        TurnBacks(canvas, readings, X, y);
        var before = double.NegativeInfinity;
        foreach (var reading in readings)
        {
            var x = X(reading.AtTension);
            var isEye = reading.Name is RopeTape.EyeA or RopeTape.EyeB;
            if (isEye)
            {
                canvas.Add(new SheetCircle(PageLayers.Cut, new SheetPoint(x, y), EyeRadius));
            }

            canvas.Line(PageLayers.Frame, x, y - 0.0015, x, y + 0.0015);
            if (isEye || (x - before >= ClosestNames && !Near(reading, readings, ratio)))
            {
                var name = Named(reading, readings);
                canvas.Label(PageText.Left(x - (PageText.Width(name, PageText.Small) / 2), y + 0.0025, name, PageText.Small, bold: true));
                before = x;
            }
        }

        var deepest = Dimension(context, canvas, readings, X, y);
        canvas.Level(
            new SheetPoint(X(from), deepest), new SheetPoint(X(to), deepest), deepest - 0.006,
            $"{readings[0].Name} to {readings[^1].Name} {context.Text.Length(to - from)}");
    }

    /// <summary>The tape's reading at each mark, upright below it.</summary>
    /// <returns>Where the lowest ends.</returns>
    private static double Dimension(
        DrawingContext context, Canvas canvas, ImmutableArray<TapeReading> readings, Func<double, double> place, double y)
    {
        var (before, deepest) = (double.NegativeInfinity, y);
        foreach (var reading in readings)
        {
            var x = place(reading.AtTension);
            if (x - before < ClosestReadings)
            {
                continue;
            }

            before = x;
            var words = context.Text.Length(Rounding.ToTape(reading.AtTension, context.Text.Units));
            var low = y - 0.003 - PageText.Width(words, PageText.Small);
            canvas.Line(PageLayers.Dim, x, y - 0.0015, x, y - 0.0025);
            canvas.Text(PageText.Left(x + (PageText.Small / 2), low, words, PageText.Small) with { Turn = Math.PI / 2 });
            deepest = Math.Min(deepest, low);
        }

        return deepest;
    }

    // The rope beyond each eye lies turned back along the rope before it.
    private static void TurnBacks(Canvas canvas, ImmutableArray<TapeReading> readings, Func<double, double> place, double y)
    {
        foreach (var (eye, end, into) in ((string, string, int)[])[(RopeTape.EyeA, "cut end A", 1), (RopeTape.EyeB, "cut end B", -1)])
        {
            if (Named(eye) is { } bears && Named(end) is { } cut)
            {
                var length = into * Math.Abs(cut.AtTension - bears.AtTension);
                canvas.Line(PageLayers.Hidden, place(bears.AtTension), y - 0.0008, place(bears.AtTension + length), y - 0.0008);
            }
        }

        TapeReading? Named(string name) => readings.FirstOrDefault(r => string.Equals(r.Name, name, StringComparison.Ordinal));
    }

    /// <summary>One row a place, in the order of the tape.</summary>
    public static FlowTable Marks(DrawingContext context)
    {
        var (model, text) = (context.Model, context.Text);
        var tension = model.Parameters.Ropes.MarkingTension;
        var (readings, chosen) = (Readings(context), model.Ropework.Chosen);
        var marks = chosen.Marks.ToDictionary(m => m.Frame, StringComparer.Ordinal);
        var frames = model.Frames.ToDictionary(f => f.Name, StringComparer.Ordinal);
        string Tape(double along) => text.Words.Length(Rounding.ToTape(along, model.Parameters.Units));
        var rows = readings.Select((r, i) => new FlowRow(
        [
            r.Name,
            frames.TryGetValue(r.Name, out var frame) ? text.Words.Length(frame.Node.X) : "",
            frame is null ? "" : text.Level(frame.Node.Y),
            frame is null ? "" : DrawingText.Angle(frame.Slope),
            marks.TryGetValue(r.Name, out var mark) ? text.Words.Length(mark.Unstressed) : "",
            Tape(r.AtTension),
            i + 1 < readings.Length ? text.Words.Size(readings[i + 1].AtTension - r.AtTension) : "",
        ]));
        var pulled = tension > 0 ? $" and pulled to {text.Words.Force(tension)}" : ", without tension";
        var note = (IsKnown(context)
            ? $"Tape: hooked into the first eye where it bears (the inside of its thimble), rope laid out straight{pulled}; every mark "
                + "is one reading, so that no errors add up. Make the eye at A first. Mark: from support A's point, without tension."
            : $"{Unknown}Tape: held to the rope's point at support A, rope laid out straight{pulled}. Mark: from there, without tension.")
            + " Both ropes alike. Marks for other stretches: report.json, check --all.";
        return new FlowTable(
            "Rope marks",
            note,
            [
                new("Place"), new("Station", Figures: true), new("Level of axis", Figures: true), new("Slope", Figures: true),
                new("Mark, unstressed", Figures: true),
                new(IsKnown(context) ? "Tape from the first eye" : "Tape from support A's point", Figures: true),
                new("Step to the next", Figures: true),
            ],
            [.. rows]);
    }

    /// <summary>What hangs between an eye and its anchor; null where its lengths are not known.</summary>
    public static FlowTable? Chain(DrawingContext context)
    {
        if (RopeTape.Of(context.Layout.Parameters, context.Model.Ropework) is not { Chain: { } chain } tape)
        {
            return null;
        }

        var w = context.Text.Words;
        var travel = context.Model.Ropework.Cut!.Travel;
        return new FlowTable(
            "From each anchor to the eye, all four ends alike",
            "From bearing point to bearing point; the order from the anchor: shackle, turnbuckle, thimble in the rope's eye. "
                + (tape.LeastBehindSaddle is null
                    ? "The eye bears at the support's point, the chain lies behind it: so far behind stands the anchor."
                    : tape.LeastBehindSaddle < 0
                        ? "THE CHAIN IS LONGER THAN A BACKSTAY and reaches over the saddle: move the anchor back."
                        : $"Between saddle and eye are left {w.Size(tape.LeastBehindSaddle.Value)} at least, for clips and turn-back."),
            [new FlowColumn("What", 0.060), new FlowColumn("Length", 0.025, Figures: true), new FlowColumn("Source", 0.100)],
            [
                new(["shackle, inside", w.Size(chain.Shackle), chain.ShackleSource]),
                new(["turnbuckle from pin to pin, closed", w.Size(chain.Closed), chain.ClosedSource]),
                new(["turnbuckle from pin to pin, as hung", w.Size(chain.Hung), "so that it reaches either way"]),
                new(["turnbuckle from pin to pin, open", w.Size(chain.Open), $"take-up {w.Size(chain.TakeUp)}"]),
                new(["from anchor to eye, as hung", w.Size(chain.Length), ""]),
                .. travel is null ? ImmutableArray<FlowRow>.Empty :
                [
                    new(["both of a rope must take in", w.Size(travel.In), "stretch to come, hottest day, 1/2 in an eye as made"]),
                    new(["both of a rope must let out", w.Size(travel.Out), "coldest day, 1/2 in an eye as made"]),
                ],
            ]);
    }

    /// <summary>For ropes between whose eye and anchor hangs what nobody has told the lengths of.</summary>
    private const string Unknown = "FROM SUPPORT TO SUPPORT ONLY: where the eyes come and where the rope is cut is not known "
        + "(ropes.ends, and backstays' chains); nothing here counts from an eye. ";

    private static bool IsKnown(DrawingContext context) =>
        RopeTape.Of(context.Layout.Parameters, context.Model.Ropework) is not null;

    private static ImmutableArray<TapeReading> Readings(DrawingContext context) =>
        RopeTape.Of(context.Layout.Parameters, context.Model.Ropework)?.Readings
            ?? [.. context.Model.Ropework.Chosen.Marks.Select(m => new TapeReading(m.Frame, m.Unstressed, m.AtMarkingTension))];

    // Without a backstay the eye bears at the support's point, where the end frame is; with one a saddle carries the rope there.
    private static string Named(TapeReading reading, ImmutableArray<TapeReading> all)
    {
        var isEye = reading.Name is RopeTape.EyeA or RopeTape.EyeB;
        var same = all.FirstOrDefault(r => r != reading && Math.Abs(r.AtTension - reading.AtTension) < Tolerances.RoundOff);
        var frames = all.Where(r => r.Name.StartsWith('F')).ToList();
        return isEye && same is not null ? $"{reading.Name}, {same.Name}"
            : !isEye && frames.Count > 1 && same is null && all.Length > frames.Count && (reading == frames[0] || reading == frames[^1])
                ? $"{reading.Name}, saddle"
            : reading.Name;
    }

    // Eyes keep their names where a frame's would touch them.
    private static bool Near(TapeReading reading, ImmutableArray<TapeReading> all, double ratio) => all.Any(r =>
        r.Name is RopeTape.EyeA or RopeTape.EyeB && Math.Abs(r.AtTension - reading.AtTension) / ratio < ClosestNames);
}
