using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.ShopSheets;

/// <summary><c>erection.pdf</c>: steps and hold points, what the ropes do at each stage, the exclusion zone to scale.</summary>
public static class ErectionSheet
{
    // Kept clear while anything is lifted or drawn tight: to either side of the outer parts, and behind each support in line with the
    // ropes, which whip back where they part. Own figures.
    private static double Beside(UnitSystem units) => units == UnitSystem.Metric ? 3 : 10 * Quantities.Units.MetresPerFoot;

    private static double Behind(UnitSystem units) => 2 * Beside(units);

    private const double FigureHeight = 0.062;

    /// <summary>The book.</summary>
    public static SheetBook Draw(BridgeModel model)
    {
        var paper = Paper.Named(model.Parameters.Shop.Paper);
        var words = SheetWords.For(model, "Erection");
        var frame = PageFrame.On(paper, words);
        var flow = new TableFlow(frame.Body);
        Zone(model, flow.Fresh(FigureHeight));
        var stages = model.Stages();
        var steps = model.Erection(stages);
        flow.Add(Cautions(model, steps));
        var text = new QuantityText(model.Parameters.Units);
        flow.Add(Stages(stages, text));
        flow.Add(Crew(model, stages, text));
        flow.Add(Steps(model, steps));
        return new SheetBook(words.Title, [.. flow.Pages.Select((p, i) => frame.Page(p.Entities, i + 1, flow.Pages.Count))]);
    }

    private static FlowTable Cautions(BridgeModel model, ImmutableArray<ErectionStep> steps)
    {
        var text = new QuantityText(model.Parameters.Units);
        ImmutableArray<FlowRow> rows =
        [
            .. ErectionPlan.Heaviest(steps) is { } most
                ? [new FlowRow(
                    [
                        FormattableString.Invariant($"Heaviest lift: {text.Mass(most.Mass)}, {most.Where}, step {most.Number}; ")
                            + "wood green or freshly treated.",
                    ],
                    Strong: true)]
                : ImmutableArray<FlowRow>.Empty,
            new(
                ["No line or anchor against falls is drawn here. The ropes, frames and guards of this bridge are none: a competent person "
                    + "plans fall protection and rates its anchors."],
                Strong: true),
            .. model.Ropework.Cautions.Select(c => new FlowRow([c])),
        ];
        return new FlowTable("Before anything is lifted", "", [new("What everybody knows", 0.185)], rows);
    }

    private static FlowTable Stages(ImmutableArray<StageSlope> stages, QuantityText w) => new(
        "Each stage when it is done",
        "At the reference temperature, nobody on the bridge, wood as dry as in service (freshly treated it is heavier, and pulls "
            + "more); of one rope on the span's side: a backstay pulls the level part over the cosine of its angle, and presses its "
            + "support down besides. Walk only on deck that is fixed, one behind the other.",
        [
            new("Stage"), new("Sag", Figures: true), new("Steepest slope", 0.02, Figures: true),
            new("Largest tension", 0.02, Figures: true), new("A along", Figures: true), new("A down", Figures: true),
            new("B along", Figures: true), new("B down", Figures: true),
        ],
        [.. stages.Select(s => new FlowRow(
        [
            s.Stage.ToString(CultureInfo.InvariantCulture), w.Size(s.Sag), QuantityText.Degrees(Elementary.Atan(s.Steepest)),
            w.Force(s.Tension), w.Force(Math.Abs(s.ReactionA.X)), Down(-s.ReactionA.Y, w), w.Force(Math.Abs(s.ReactionB.X)),
            Down(-s.ReactionB.Y, w),
        ]))]);

    // Under a steep rope the lower support is lifted.
    private static string Down(double force, QuantityText w) => force < 0 ? w.Force(-force) + " UP" : w.Force(force);

    private static FlowTable Crew(BridgeModel model, ImmutableArray<StageSlope> stages, QuantityText w) => new(
        "With the crew on it",
        $"Two people with tools, {w.Force(CrewOnStage.Person)} each (ASCE 37-14, from memory), on each frame that the stage "
            + "hung, at either end alone and at both: in the middle of the deck for slope and tension, beside one guard for the cross "
            + "slope, on one side and on opposite ones; of the frame that leans most, no wind, nobody pushing, nothing held from the "
            + "side. More people, or stacks of wood, tilt it more. Bold: more than a bridge in use may tilt "
            + $"({QuantityText.Degrees(MostTilt(model))}): one person at a time at either end, in the middle of the deck. Where it turns "
            + "over, nobody goes on without side stays.",
        [
            new("Stage"), new("At"), new("Steepest slope", 0.02, Figures: true), new("Largest tension", 0.02, Figures: true),
            new("Largest cross slope, two beside one guard", 0.05),
        ],
        [.. stages.Where(s => s.Crew is not null).Select(s => new FlowRow(
            [
                s.Stage.ToString(CultureInfo.InvariantCulture), string.Join(", ", s.Crew!.Frames.Select(f => model.Groups[f].Name)),
                s.Crew.Steepest is { } steep ? QuantityText.Degrees(Elementary.Atan(steep)) : "",
                s.Crew.Tension is { } pull ? w.Force(pull) : "", AssemblyWords.Tilt(s.Crew),
            ],
            s.Crew.Tilt is not { } tilt || Elementary.Atan(tilt) > MostTilt(model)))]);

    private static double MostTilt(BridgeModel model) =>
        Checks.Codes.Limits.CrossSlope(model.Parameters.Use, model.Parameters.Limits).Most;

    private static FlowTable Steps(BridgeModel model, ImmutableArray<ErectionStep> steps)
    {
        var w = new QuantityText(model.Parameters.Units);
        return new FlowTable(
            "Steps", "STOP UNTIL: nothing goes on until what stands there is so. Parts of each step: assembly.csv.",
            [
                new("Step"), new("Stage"), new("Where", 0.026), new("What", 0.100), new("Lifted at once", 0.02, Figures: true),
                new("Done, initials", WriteIn.Width) { Least = WriteIn.Width },
            ],
            [.. steps.Select(s => new FlowRow(
                [
                    s.Number.ToString(CultureInfo.InvariantCulture), s.Stage?.ToString(CultureInfo.InvariantCulture) ?? "", s.Where,
                    s.IsHold ? "STOP UNTIL " + s.Text : s.Text, s.Mass > 0 ? w.Mass(s.Mass) : "", "",
                ],
                s.IsHold))])
        { LeastRow = WriteIn.Height, Ruled = true };
    }

    // From above, A at the left.
    private static void Zone(BridgeModel model, Canvas canvas)
    {
        var (body, site) = (canvas.Bounds, model.Parameters.Site);
        var text = new QuantityText(model.Parameters.Units);
        var half = Math.Max(model.Parameters.Frames.Base.Length, model.Parameters.Ropes.Spacing) / 2;
        var (beside, behind) = (Beside(text.Units), Behind(text.Units));
        // Without a backstay the anchor stands behind the support by the chain.
        var hung = Loads.RopeChain.Of(model.Parameters, model.Ropework);
        var chain = hung?.Length ?? 0;
        var isGuessed = hung is null && (site.A.Backstay is null || site.B.Backstay is null);
        double Back(Project.BackstayParameters? stay) => behind + (stay is null ? chain : stay.Length * Elementary.Cos(stay.Angle));
        var (backA, backB, across) = (Back(site.A.Backstay), Back(site.B.Backstay), half + beside);
        var (room, tall) = (body.MaxX - body.MinX - 0.004, FigureHeight - 0.020);
        var ratio = Rounding.Up(Math.Max((site.Span + backA + backB) / room, 2 * across / tall), 10);
        var (x0, y0) = (body.MinX + 0.002 + (backA / ratio), body.MaxY - 0.012 - (across / ratio));
        SheetPoint At(double x, double z) => new(x0 + (x / ratio), y0 - (z / ratio));
        canvas.Column(
            body.MinX, body.MaxY,
            [
                $"Exclusion zone from above, 1 : {NumberText.Rounded(ratio, 0)}: {text.Length(beside)} beside the bridge, "
                    + $"{text.Length(behind)} behind supports and anchors (own figures); nobody in it, on the ground",
                "below either, while anything is lifted or a rope is drawn tight, but those who work there."
                    + (isGuessed ? " Anchors not known: drawn from the supports, reckon from yours." : ""),
            ],
            PageText.Small, bold: true);
        Box(canvas, PageLayers.Accent, At(-backA, -across), At(site.Span + backB, across));
        Box(canvas, PageLayers.Cut, At(0, -half), At(site.Span, half));
        foreach (var z in (double[])[-model.Parameters.Ropes.Spacing / 2, model.Parameters.Ropes.Spacing / 2])
        {
            canvas.Line(PageLayers.Layout, At(behind - backA, z), At(site.Span + backB - behind, z));
        }

        canvas.Label(PageText.Left(At(0, 0).X + 0.001, y0 - 0.001, "A", PageText.Normal, bold: true));
        canvas.Label(PageText.Right(At(site.Span, 0).X - 0.001, y0 - 0.001, "B", PageText.Normal, bold: true));
        canvas.Level(
            At(-backA, across), At(site.Span + backB, across), At(0, across).Y - 0.004, text.Length(site.Span + backA + backB));
    }

    private static void Box(Canvas canvas, string layer, SheetPoint one, SheetPoint other) => canvas.Add(new SheetPolyline(
        layer,
        [new(one.X, one.Y), new(other.X, one.Y), new(other.X, other.Y), new(one.X, other.Y)], Closed: true));
}
