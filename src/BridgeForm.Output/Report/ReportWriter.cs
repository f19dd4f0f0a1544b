using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Output.Report;

/// <summary>
/// Writes <c>report.json</c>: everything the program found, SI units, angles in degrees under keys that end in <c>_deg</c>.
/// </summary>
public static class ReportWriter
{
    private const int FormatVersion = 1;

    /// <summary>Writes the report; the stream stays open. Same model, same bytes.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="files">
    /// Paths of the files written beside it, relative to the output folder, with forward slashes; asked for last.
    /// </param>
    /// <param name="stream">Where to.</param>
    public static void Write(BridgeModel model, Func<IReadOnlyList<string>> files, Stream stream)
    {
        using var json = new Utf8JsonWriter(stream, ReportJson.Options);
        json.WriteStartObject();
        json.WriteString("format", "bridgeform-report");
        json.WriteNumber("version", FormatVersion);
        json.WriteString("name", model.Parameters.Name);
        json.WriteString("caution", Caution.Text);
        ReportJson.List(json, "chosen", model.Parameters.Chosen, Chosen);
        RopeReport.Ropes(json, model);
        RopeReport.Nodes(json, model);
        ReportJson.List(json, "pieces", model.Pieces, PieceReport.Write);
        if (!model.Parameters.Frames.Joints.IsEmpty)
        {
            ReportJson.List(json, "joints", model.Parameters.Frames.Joints, JointReport.Write);
        }

        ImmutableArray<string> frames = [.. model.Frames.Select(f => f.Name)];
        ReportJson.List(json, "cases", model.Cases, (j, c) => CaseReport.Write(j, c, KeeperForce.In(c, frames)));
        ReportJson.List(json, "grown_cases", model.Ropework.Grown, (j, c) => CaseReport.Write(j, c, []));
        ReportJson.List(json, "governing", model.Ropework.Governs(), EnvelopeReport.Role);
        ReportJson.List(json, "falls", model.Ropework.Falls(), EnvelopeReport.Fall);
        ReportJson.List(json, "point_loads", model.Ropework.Points, EnvelopeReport.Point);
        WindReport.Write(json, model.Wind, model.Parameters.Loads.WindSource);
        ReportJson.List(json, "checks", model.Checks, CheckReport.Write);
        ReportJson.List(json, "remedies", model.Remedies, RopeworkReport.Remedy);
        ReportJson.List(json, "rope_cautions", model.Ropework.Cautions, (j, text) => j.WriteStringValue(text));
        StockReport.Write(json, model);
        StockReport.Shop(json, model);
        ReportJson.List(json, "files", [.. files()], (j, file) => j.WriteStringValue(file));
        json.WriteEndObject();
    }

    private static void Chosen(Utf8JsonWriter json, ChosenDefault chosen)
    {
        json.WriteStartObject();
        json.WriteString("key", chosen.Path);
        json.WriteString("value", chosen.Text);
        json.WriteString("rule", chosen.Rule);
        json.WriteEndObject();
    }
}

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
        ReportJson.Number(json, "max_tension", result.Shape?.LargestTension);
        ReportJson.Number(json, "sag", result.Shape?.Sag);
        ReportJson.Number(json, "move_down_mid", result.Shape is null ? null : result.MidSpanDrop);
        ReportJson.Angle(json, "cross_slope_deg", result.CrossSlope);
        ReportJson.Angle(json, "cross_slope_first_order_deg", result.Shape is null ? null : result.FirstOrderCrossSlope);
        json.WriteBoolean("rolls_over", result.RollsOver);
        ReportJson.Number(json, "largest_share", result.LargestShare);
        ReportJson.List(json, "loaded", result.Stretches, Stretch);
        ReportJson.Angle(json, "steepest_deck_deg", Elementary.Atan(result.SteepestDeck));
        ReportJson.Number(json, "over_ground", result.OverGround);
        ReportJson.Number(json, "over_water", result.OverWater);
        Reactions(json, result);
        ReportJson.List(json, "nodes", result.Shape?.Nodes ?? ImmutableArray<RopePoint>.Empty, ReportJson.Pair);
        ReportJson.List(json, "moves", result.Moves, ReportJson.Pair);
        ReportJson.List(json, "keepers", keepers, RopeworkReport.KeeperOfCase);
        json.WriteString("failure", result.Failure);
        json.WriteEndObject();
    }

    private static void Stretch(Utf8JsonWriter json, LoadedStretch stretch)
    {
        json.WriteStartObject();
        ReportJson.Number(json, "from", stretch.From);
        ReportJson.Number(json, "to", stretch.To);
        json.WriteString("width", stretch.Part switch
        {
            DeckPart.Whole => "whole",
            DeckPart.Left => "left",
            DeckPart.Right => "right",
            _ => throw new ArgumentOutOfRangeException(nameof(stretch), stretch.Part, "No such part."),
        });
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

/// <summary>What is worst for what, and where.</summary>
internal static class EnvelopeReport
{
    /// <summary>One entry of <c>governing</c>.</summary>
    public static void Role(Utf8JsonWriter json, CaseRole role)
    {
        json.WriteStartObject();
        json.WriteString("response", role.Response);
        json.WriteString("case", role.Case);
        json.WriteEndObject();
    }

    /// <summary>One entry of <c>falls</c>.</summary>
    public static void Fall(Utf8JsonWriter json, FrameFall fall)
    {
        json.WriteStartObject();
        json.WriteString("frame", fall.Frame);
        json.WriteString("case", fall.Case);
        ReportJson.Number(json, "move_down", fall.Down);
        json.WriteEndObject();
    }

    /// <summary>One entry of <c>point_loads</c>.</summary>
    public static void Point(Utf8JsonWriter json, PointBound point)
    {
        json.WriteStartObject();
        json.WriteString("frame", point.Frame);
        ReportJson.Number(json, "move_down_at_most", point.Fall);
        ReportJson.Angle(json, "cross_slope_at_most_deg", point.Tilt);
        ReportJson.Number(json, "share_at_most", point.Share);
        json.WriteBoolean("solved", point.IsSolved);
        json.WriteEndObject();
    }
}

/// <summary>One entry of <c>checks</c>.</summary>
internal static class CheckReport
{
    /// <summary>Writes a check; a capacity or ratio that is missing, or without a finite value, is null.</summary>
    public static void Write(Utf8JsonWriter json, CheckResult check)
    {
        json.WriteStartObject();
        json.WriteString("id", check.Id);
        json.WriteString("title", check.Title);
        json.WriteString("status", StatusName(check.Status));
        ReportJson.Number(json, "demand", check.Demand);
        ReportJson.Number(json, "capacity", check.Capacity);
        json.WriteString("unit", check.Unit);
        ReportJson.Number(json, "ratio", check.Ratio);
        json.WriteString("source", check.Source);
        json.WriteString("detail", check.Detail);
        ReportJson.List(json, "parts", check.Parts, (j, id) => j.WriteStringValue(id));
        if (check.NotChecked is { } wood)
        {
            json.WriteString("not_checked", wood);
        }

        json.WriteEndObject();
    }

    private static string StatusName(CheckStatus status) => status switch
    {
        CheckStatus.Pass => "pass",
        CheckStatus.Warn => "warn",
        CheckStatus.Fail => "fail",
        CheckStatus.Engineer => "engineer",
        _ => throw new ArgumentOutOfRangeException(nameof(status), status, "No such status."),
    };
}
