using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Loads;
using BridgeForm.Ropes;

namespace BridgeForm.Output.Report;

/// <summary>One entry of <c>cases</c>.</summary>
internal static class CaseReport
{
    /// <summary>Writes a load case; one without a solution has null for its numbers, no nodes, and says why.</summary>
    public static void Write(Utf8JsonWriter json, LoadCaseResult result, ImmutableArray<KeeperForce> keepers)
    {
        json.WriteStartObject();
        json.WriteString("id", result.Id);
        json.WriteString("title", result.Title);
        ReportJson.Number(json, "temperature_c", result.Temperature);
        ReportJson.Number(json, "horizontal", result.Shape?.Horizontal);
        ReportJson.Number(json, "max_tension", result.Shape?.MaxTension);
        ReportJson.Number(json, "sag", result.Shape?.Sag);
        ReportJson.Number(json, "move_down_mid", result.Shape is null ? null : result.MoveDownMid);
        ReportJson.Angle(json, "cross_slope_deg", result.CrossSlope);
        ReportJson.Angle(json, "cross_slope_first_order_deg", result.Shape is null ? null : result.FirstOrderCrossSlope);
        json.WriteBoolean("rolls_over", result.RollsOver);
        ReportJson.Number(json, "largest_share", result.LargestShare);
        ReportJson.Angle(json, "steepest_deck_deg", Math.Atan(result.SteepestDeck));
        ReportJson.Number(json, "over_ground", result.OverGround);
        ReportJson.Number(json, "over_water", result.OverWater);
        Reactions(json, result);
        ReportJson.List(json, "nodes", result.Shape?.Nodes ?? ImmutableArray<RopePoint>.Empty, ReportJson.Pair);
        ReportJson.List(json, "moves", result.Moves, ReportJson.Pair);
        ReportJson.List(json, "keepers", keepers, RopeworkReport.KeeperOfCase);
        json.WriteString("failure", result.Failure);
        json.WriteEndObject();
    }

    private static void Reactions(Utf8JsonWriter json, LoadCaseResult result)
    {
        if (result.Shape is null)
        {
            json.WriteNull("reactions");
            return;
        }

        json.WriteStartObject("reactions");
        json.WritePropertyName("a");
        ReportJson.Pair(json, result.ReactionA);
        json.WritePropertyName("b");
        ReportJson.Pair(json, result.ReactionB);
        json.WriteEndObject();
    }
}
