using System.Text.Json;
using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Output.Report;

/// <summary>The parts <c>ropes</c> and <c>nodes</c>.</summary>
internal static class RopeReport
{
    /// <summary>Design state of one rope, and the table to hoist by.</summary>
    public static void Ropes(Utf8JsonWriter json, BridgeModel model)
    {
        var rope = model.Rope;
        json.WriteStartObject("ropes");
        json.WriteNumber("bays", rope.Segments.Length);
        ReportJson.Number(json, "chord", LongestChord(rope));
        ReportJson.Number(json, "design_horizontal", rope.Horizontal);
        ReportJson.Number(json, "design_max_tension", rope.LargestTension);
        ReportJson.Number(json, "design_sag", rope.Sag);
        ReportJson.Number(json, "stressed_length", rope.Segments.Sum(s => s.StretchedLength));
        ReportJson.Number(json, "unstressed_length", rope.Segments.Sum(s => s.UnstressedLength));
        json.WriteStartArray("end_slopes_deg");
        json.WriteNumberValue(ReportJson.Degrees(Slope(rope.Nodes[0], rope.Nodes[1])));
        json.WriteNumberValue(ReportJson.Degrees(Slope(rope.Nodes[^2], rope.Nodes[^1])));
        json.WriteEndArray();
        ReportJson.List(json, "hoisting", model.Hoisting, Hoisting);
        RopeworkReport.Write(json, model.Parameters, model.Ropework);
        json.WriteEndObject();
    }

    /// <summary>Where each frame stands and sits on the rope, supports included.</summary>
    public static void Nodes(Utf8JsonWriter json, BridgeModel model)
    {
        json.WriteStartArray("nodes");
        for (var i = 0; i < model.Frames.Length; i++)
        {
            json.WriteStartObject();
            json.WriteString("frame", model.Frames[i].Name);
            ReportJson.Number(json, "x", model.Frames[i].Node.X);
            ReportJson.Number(json, "y", model.Frames[i].Node.Y);
            ReportJson.Angle(json, "slope_deg", model.Frames[i].Slope);
            ReportJson.Number(json, "mark", model.Marks[i].Unstressed);
            ReportJson.Number(json, "mark_at_tension", model.Marks[i].AtMarkingTension);
            ReportJson.Number(json, "load", model.Rope.Loads[i]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>One row of a hoisting table.</summary>
    internal static void Hoisting(Utf8JsonWriter json, HoistingRow row)
    {
        json.WriteStartObject();
        json.WriteString("stage", row.Stage);
        ReportJson.Number(json, "temperature_c", row.Temperature);
        ReportJson.Number(json, "sag", row.Sag);
        ReportJson.Number(json, "horizontal", row.Horizontal);
        ReportJson.Number(json, "max_tension", row.LargestTension);
        ReportJson.Number(json, "sight", row.Sight);
        json.WriteEndObject();
    }

    /// <summary>
    /// All chords are alike with equal steps along the rope; with equal steps in plan the longest is the one that counts.
    /// </summary>
    private static double LongestChord(RopeShape rope) =>
        rope.Nodes.Zip(rope.Nodes.Skip(1), (a, b) => Math.Sqrt(Square(b.X - a.X) + Square(b.Y - a.Y))).Max();

    private static double Slope(RopePoint a, RopePoint b) => Elementary.Atan2(b.Y - a.Y, b.X - a.X);

    private static double Square(double x) => x * x;
}
