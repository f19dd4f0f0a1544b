using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Rope layout with its marks, hoisting table, load cases and the forces on the supports.</summary>
internal static class RopeLists
{
    /// <summary>The sheets.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var flow = new TableFlow(context.Body);
        RopeStrip.Draw(context, flow.Fresh(RopeStrip.Height));
        flow.Add(RopeStrip.Marks(context));
        if (RopeStrip.Chain(context) is { } chain)
        {
            flow.Add(chain);
        }

        flow.Add(Rope(context));
        foreach (var table in HoistingTables.Lay(context))
        {
            flow.Add(table);
        }

        flow.Add(WindTable.Lay(context));
        flow.Add(RopeForces.Cases(context));
        flow.Add(RopeForces.Worst(context));
        flow.Add(RopeForces.Handling(context));
        return flow.Pages.Select(c => new DrawnPage(DocumentType.List, "Ropes: marks, hoisting, load cases", "tables", c.Entities));
    }

    private static FlowTable Rope(DrawingContext context)
    {
        var (p, w, rope) = (context.Layout.Parameters, context.Text.Words, context.Model.Rope);
        ImmutableArray<FlowRow> rows =
        [
            new(["rope", p.Ropes.Rope.Name]),
            new(["diameter", w.Size(p.Ropes.Rope.Diameter)]),
            new(["breaking strength", w.Force(p.Ropes.Rope.BreakingStrength)]),
            new(["termination", p.Ropes.TerminationKind]),
            new(["safety factor asked for", Numbers.Fixed(p.Ropes.SafetyFactor, 1)]),
            new(["length support to support, unstressed", w.Length(rope.UnstressedLength())]),
            new(["the same, bridge empty", w.Length(rope.StretchedLength())]),
            new(["horizontal tension, bridge empty", w.Force(rope.Horizontal)]),
            .. Work(context.Model.Ropework, RopeTape.Of(p, context.Model.Ropework), w),
        ];
        return new FlowTable("Each rope", "", [new FlowColumn("What", 0.060), new FlowColumn("Value", 0.090)], rows);
    }

    private static IEnumerable<FlowRow> Work(RopeWork work, RopeTape? tape, QuantityText w)
    {
        if (work.Cut is { } cut)
        {
            yield return new(
                [
                    "cut length with both ends, unstressed",
                    (tape is null ? cut.Length : tape.CutLength) is { } all ? w.Length(all) : cut.TerminationSource,
                ]);
            yield return new(
                [
                    "ends must take in or give out",
                    cut.TakeUp is { } take ? w.Size(take) : "not known: the stretch of the rope is not given",
                ]);
        }

        if (work.Keepers.Length > 0)
        {
            var most = Ties.FirstLargest(work.Keepers, k => k.Needed)!;
            yield return new(["largest force along the rope on one keeper", $"{w.Force(most.Needed)} at {most.Frame} ({most.Case}), "
                + "friction not counted"]);
        }

        if (work.MidSpanDropWhenSupportMoves is { } fall)
        {
            yield return new([$"mid-span drop, one support moving {w.Size(SupportMove.Standard)}", w.Size(fall)]);
        }
    }
}

/// <summary>Load cases, what the supports hold, and how ropes are handled.</summary>
internal static class RopeForces
{
    /// <summary>One row a load case.</summary>
    public static FlowTable Cases(DrawingContext context)
    {
        var w = context.Text.Words;
        var rows = context.Model.ShownCases().Select(c => new FlowRow(c.Shape is { } s
            ?
            [
                c.RollsOver ? c.Title + ": IT ROLLS OVER, figures as if something held it" : c.Title,
                w.Temperature(c.Temperature), w.Force(s.LargestTension), w.Length(s.Sag), w.Size(c.MidSpanDrop),
                w.Force(Math.Abs(c.ReactionA.X)), w.Force(-c.ReactionA.Y), w.Force(Math.Abs(c.ReactionB.X)), w.Force(-c.ReactionB.Y),
            ]
            : [c.Title + ": " + (c.Failure ?? "no solution"), w.Temperature(c.Temperature), "", "", "", "", "", "", ""]));
        return new FlowTable(
            "Load cases and forces on the supports",
            "Of the rope that is pulled harder; unfactored. Forces of the rope on the support: level towards mid-span, and downwards "
                + "(negative: upwards). Each support carries two ropes.",
            [
                new("Case", 0.112), new("Temperature", Figures: true), new("Largest tension", Figures: true), new("Sag", Figures: true),
                new("Mid-span drop", 0.026, Figures: true), new("A level", Figures: true), new("A down", Figures: true),
                new("B level", Figures: true), new("B down", Figures: true),
            ],
            [.. rows]);
    }

    /// <summary>Which case is worst for what.</summary>
    public static FlowTable Worst(DrawingContext context)
    {
        var model = context.Model;
        return new FlowTable(
            "Worst cases",
            FormattableString.Invariant($"Of {model.Cases.Length} load cases solved; report.json has all of them. Live load lies where it ")
                + "is worst for each, by lines of influence; each of these is solved as any other.",
            [new("For"), new("Case"), new("What it is", 0.120)],
            [.. model.Ropework.Governs().Select(g => new FlowRow([g.Response, g.Case, model.Ropework.TitleOf(g.Case)]))]);
    }

    /// <summary>What people who handle the ropes must know.</summary>
    public static FlowTable Handling(DrawingContext context) => new(
        "Handling the ropes", "", [new FlowColumn("Caution", 0.173)], [.. context.Model.Ropework.Cautions.Select(c => new FlowRow([c]))]);
}
