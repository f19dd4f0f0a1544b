using System.Text.Json;
using BridgeForm.Checks;

namespace BridgeForm.Output.Report;

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
