using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Loads;
using BridgeForm.Roles;

namespace BridgeForm.Output.Report;

/// <summary>Writes <c>report.json</c>: everything the program found, SI units, angles in degrees under keys that end in <c>_deg</c>.</summary>
public static class ReportWriter
{
    private const int FormatVersion = 1;

    /// <summary>Writes the report; the stream stays open. Same model, same bytes.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="files">Paths of the files written beside it, relative to the output folder, with forward slashes; asked for last.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(BridgeModel model, Func<IReadOnlyList<string>> files, Stream stream)
    {
        using var json = new Utf8JsonWriter(stream, ReportJson.Options);
        json.WriteStartObject();
        json.WriteString("format", "bridgeform-report");
        json.WriteNumber("version", FormatVersion);
        json.WriteString("name", model.Parameters.Name);
        json.WriteString("caution", Caution.Text);
        RopeReport.Ropes(json, model);
        RopeReport.Nodes(json, model);
        ReportJson.List(json, "pieces", model.Pieces, PieceReport.Write);
        ImmutableArray<string> frames = [.. model.Frames.Select(f => f.Name)];
        ReportJson.List(json, "cases", model.Cases, (j, c) => CaseReport.Write(j, c, KeeperForce.In(c, frames)));
        ReportJson.List(json, "checks", model.Checks, CheckReport.Write);
        ReportJson.List(json, "remedies", model.Remedies, RopeworkReport.Remedy);
        ReportJson.List(json, "rope_cautions", model.Ropework.Cautions, (j, text) => j.WriteStringValue(text));
        StockReport.Write(json, model);
        StockReport.Shop(json, model);
        ReportJson.List(json, "files", [.. files()], (j, file) => j.WriteStringValue(file));
        json.WriteEndObject();
    }
}
