using System.Text.Json;
using BridgeForm.Loads;

namespace BridgeForm.Output.Report;

/// <summary>The part <c>wind</c>.</summary>
internal static class WindReport
{
    /// <summary>Writes it into the open object.</summary>
    public static void Write(Utf8JsonWriter json, WindWork wind, string source)
    {
        json.WriteStartObject("wind");
        ReportJson.Number(json, "pressure", wind.Pressure);
        json.WriteString("source", source);
        ReportJson.Number(json, "area", wind.Area);
        ReportJson.Number(json, "height", wind.Height);
        ReportJson.Number(json, "lifts_upright_at", wind.LiftsAt);
        ReportJson.List(json, "states", wind.States, State);
        ReportJson.List(json, "end_frames", wind.Ends, End);
        json.WriteEndObject();
    }

    private static void State(Utf8JsonWriter json, WindState state)
    {
        double? Known(double number) => state.Ends is null ? null : number;
        json.WriteStartObject();
        json.WriteString("stage", state.Stage);
        json.WriteString("combination", state.Combination);
        json.WriteBoolean("stands", state.Stands);
        ReportJson.Number(json, "stands_to", state.StandsTo);
        ReportJson.Number(json, "turns_over_at", state.FallsAt);
        ReportJson.Number(json, "force", state.Force);
        if (state.Ends is { } ends)
        {
            json.WriteStartObject("side_force");
            json.WriteStartArray("a");
            json.WriteNumberValue(ReportJson.Clean(ends.LeftA));
            json.WriteNumberValue(ReportJson.Clean(ends.RightA));
            json.WriteEndArray();
            json.WriteStartArray("b");
            json.WriteNumberValue(ReportJson.Clean(ends.LeftB));
            json.WriteNumberValue(ReportJson.Clean(ends.RightB));
            json.WriteEndArray();
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("side_force");
        }

        ReportJson.Number(json, "sideways", Known(state.Sideways));
        ReportJson.Angle(json, "roll_deg", Known(state.Roll));
        json.WriteString("roll_frame", state.RollFrame);
        ReportJson.Number(json, "keeper_lift", Known(state.Lift));
        json.WriteString("keeper_frame", state.LiftFrame);
        ReportJson.Number(json, "max_tension", Known(state.LargestTension));
        json.WriteEndObject();
    }

    private static void End(Utf8JsonWriter json, WindOnEndFrame end)
    {
        json.WriteStartObject();
        json.WriteString("frame", end.Frame);
        ReportJson.Number(json, "side", end.Side);
        ReportJson.Number(json, "height_over_landing", end.Height);
        ReportJson.Number(json, "weight", end.Weight);
        ReportJson.Number(json, "hold_down", end.Down);
        json.WriteEndObject();
    }
}
