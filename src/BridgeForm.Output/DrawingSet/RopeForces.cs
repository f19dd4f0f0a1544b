namespace BridgeForm.Output.DrawingSet;

/// <summary>Load cases, what the supports hold, and how ropes are handled.</summary>
internal static class RopeForces
{
    /// <summary>One row a load case.</summary>
    public static FlowTable Cases(DrawingContext context)
    {
        var w = context.Text.Words;
        var rows = context.Model.Cases.Select(c => new FlowRow(c.Shape is { } s
            ?
            [
                c.RollsOver ? c.Title + ": IT ROLLS OVER, figures as if something held it" : c.Title,
                w.Temperature(c.Temperature), w.Force(s.MaxTension), w.Length(s.Sag), w.Size(c.MoveDownMid),
                w.Force(Math.Abs(c.ReactionA.X)), w.Force(-c.ReactionA.Y), w.Force(Math.Abs(c.ReactionB.X)), w.Force(-c.ReactionB.Y),
            ]
            : [c.Title + ": " + (c.Failure ?? "no solution"), w.Temperature(c.Temperature), "", "", "", "", "", "", ""]));
        return new FlowTable(
            "Load cases and forces on the supports",
            "Of the rope that is pulled harder; unfactored. Forces of the rope on the support: level towards mid-span, and downwards (negative: upwards). Each support carries two ropes.",
            [
                new("Case", 0.080), new("Temperature", Figures: true), new("Largest pull", Figures: true), new("Sag", Figures: true),
                new("Mid-span moves down", 0.026, Figures: true), new("A level", Figures: true), new("A down", Figures: true),
                new("B level", Figures: true), new("B down", Figures: true),
            ],
            [.. rows]);
    }

    /// <summary>The hardest pull of one rope on each support, with what its backstay adds.</summary>
    public static FlowTable Supports(DrawingContext context)
    {
        var w = context.Text.Words;
        var rows = context.Model.Ropework.Supports.Select(s => new FlowRow(
        [
            s.Support, s.Case, w.Force(s.Tension), w.Force(s.Horizontal), w.Force(s.Vertical),
            s.Backstay is { } b ? $"{w.Force(b.Tension)} at {DrawingText.Angle(b.Angle)}" : "none",
            w.Force(s.PostHorizontal), w.Force(s.PostVertical),
        ]));
        return new FlowTable(
            "What each support holds, one rope",
            "In the case that pulls it hardest, unfactored; two ropes pull at each support. Level: towards the other support.",
            [
                new("At"), new("Case"), new("Pull", Figures: true), new("Level", Figures: true), new("Down", Figures: true),
                new("Backstay", Figures: true), new("On the post, level", 0.03, Figures: true), new("On the post, down", 0.03, Figures: true),
            ],
            [.. rows]);
    }

    /// <summary>What people who handle the ropes must know.</summary>
    public static FlowTable Handling(DrawingContext context) => new(
        "Handling the ropes", "", [new FlowColumn("Caution", 0.173)], [.. context.Model.Ropework.Cautions.Select(c => new FlowRow([c]))]);
}
