using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>What a crew sets the ropes by: the one set of marks that the file chose, and what the stretch to come does.</summary>
internal static class HoistingTables
{
    private const double Narrow = 0.029;

    /// <summary>The tables, and what the stretch asks at the ends of the ropes.</summary>
    public static IEnumerable<FlowTable> Lay(DrawingContext context)
    {
        var model = context.Model;
        var chosen = model.Ropework.Chosen;
        yield return Table(
            context,
            chosen.Share > 0
                ? $"Hoisting: new ropes, {Numbers.Fixed(chosen.Share * 100, 2)} % of stretch to come"
                : "Hoisting: ropes set to the plain marks",
            chosen.Hoisting.Rows, chosen.Hoisting.Failures,
            $"{chosen.Sentence} "
                + "What the crew sets: sag of the axis at mid-span below the straight line from A to B, each rope between its end marks. "
                + "A line of sight so far "
            + "straight below the rope's point at both supports touches the rope's axis at the same time; levels are above the "
            + "rope's axis at A. " + Hoisting.FramesAlone);
        if (!model.Ropework.Stretch.IsEmpty)
        {
            yield return Stretch(context);
        }
    }

    /// <summary>A stretch as a share of the rope's length.</summary>
    public static string Share(StretchEnd end) => Numbers.Fixed(end.Share * 100, 2) + " %";

    private static FlowTable Table(
        DrawingContext context, string title, ImmutableArray<HoistingRow> rows, ImmutableArray<HoistingFailure> failures, string note)
    {
        var (text, w) = (context.Text, context.Text.Words);
        var rise = context.Model.Rope.Nodes[^1].Y;
        return new FlowTable(
            title,
            string.Join(' ', failures.Select(f => f.In(w)).Prepend(note)),
            [
                new("Stage"), new("Temperature", Figures: true), new("Sag at mid-span", Figures: true),
                new("Sight below the rope at A and B", Narrow, Figures: true),
                new("Level of sight at A", Narrow, Figures: true), new("Level of sight at B", Narrow, Figures: true),
                new("Horizontal tension, one rope", Narrow, Figures: true),
            ],
            [.. rows.Select(h => new FlowRow(
            [
                string.Equals(h.Stage, Hoisting.Bare, StringComparison.Ordinal) ? "bare ropes" : "frames, no deck",
                w.Temperature(h.Temperature), w.Size(h.Sag), w.Size(h.Sight), text.Level(-h.Sight), text.Level(rise - h.Sight),
                w.Force(h.Horizontal),
            ]))]);
    }

    /// <summary>Take-up and what happens without it, a row an end of the range.</summary>
    private static FlowTable Stretch(DrawingContext context)
    {
        var w = context.Text.Words;
        var ends = context.Model.Ropework.Stretch;
        string Room(RoomInCase? room) => room is { } r ? $"{w.Size(r.Room)} ({r.Case})" : "";
        var (ground, water) = (ends.Any(e => e.OverGround is not null), ends.Any(e => e.OverWater is not null));
        ImmutableArray<FlowColumn> columns =
        [
            new("Stretch"), new("Take-up, one rope", Narrow, Figures: true), new("Mid-span lower without it", Narrow, Figures: true),
            .. ground ? [new FlowColumn("Least over ground then", 0.04, Figures: true)] : ImmutableArray<FlowColumn>.Empty,
            .. water ? [new FlowColumn("Least over water then", 0.04, Figures: true)] : ImmutableArray<FlowColumn>.Empty,
        ];
        var rows = ends.Select(e => new FlowRow(
        [
            Share(e), w.Size(e.TakeUp), e.MidSpanDrop is { } down ? w.Size(down) : e.Failure ?? "not known",
            .. ground ? [Room(e.OverGround)] : ImmutableArray<string>.Empty,
            .. water ? [Room(e.OverWater)] : ImmutableArray<string>.Empty,
        ]));
        var source = StretchRange.Of(context.Layout.Parameters.Ropes).Source;
        return new FlowTable(
            "New rope that will stretch",
            $"Lasting stretch of one rope from end to end: {source}. Without take-up: ropes set to the plain marks, stretched, and "
                + "not drawn in.",
            columns,
            [.. rows]);
    }
}
