using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A wind across the bridge: a row a state.</summary>
internal static class WindTable
{
    /// <summary>The table.</summary>
    public static FlowTable Lay(DrawingContext context)
    {
        var (wind, w) = (context.Model.Wind, context.Text.Words);
        var rows = wind.States.Select(s => new FlowRow(
        [
            WindState.Name(s.Stage), s.Combination, Stands(s, w), .. Figures(s, w),
        ]));
        return new FlowTable(
            "Wind across the bridge",
            $"{w.Pressure(wind.Pressure)} ({context.Model.Parameters.Loads.WindSource}), allowable-stress level, gust and shape in "
                + "it, on the "
                + "solid outline of both guards, deck edge, bases and ropes; nobody on the bridge. Side force: what the rope against "
                + "the wind "
                + "and the other pull at the support. Lift: what a keeper must hold down, square to its base. Where it turns over, "
                + "the figures "
                + "are those of where it may come to rest. Side stays hold a bridge against wind; none is modeled. A licensed "
                + "engineer decides.",
            [
                new("State", 0.040), new("Loads"), new("Stands", 0.062), new("Sideways", Figures: true), new("Roll", Figures: true),
                new("Side force at A", 0.030, Figures: true), new("At B", 0.030, Figures: true), new("Lift", 0.022, Figures: true),
            ],
            [.. rows]);
    }

    private static string Stands(WindState state, QuantityText w) => state switch
    {
        { Stands: true } => "yes",
        { StandsTo: { } least, FallsAt: { } most } => $"TURNS OVER at {w.Pressure(least)} to {w.Pressure(most)}",
        _ => "NOT IN THE CALM EITHER",
    };

    private static string[] Figures(WindState state, QuantityText w) => state.Ends is { } ends
        ?
        [
            w.Size(state.Sideways), state.RollFrame.Length > 0 ? DrawingText.Angle(state.Roll) : "",
            $"{w.Force(ends.LeftA)} + {w.Force(ends.RightA)}", $"{w.Force(ends.LeftB)} + {w.Force(ends.RightB)}",
            state.LiftFrame.Length > 0 ? $"{w.Force(state.Lift)} ({state.LiftFrame})" : "none",
        ]
        : ["no equilibrium", "", "", "", ""];
}
