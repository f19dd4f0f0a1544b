using System.Text.Json;
using BridgeForm.Checks;

namespace BridgeForm.Output.Report;

/// <summary>One entry of <c>checks</c>.</summary>
internal static class CheckReport
{
    /// <summary>Writes a check; a capacity or ratio that is missing or without bound is null.</summary>
    public static void Write(Utf8JsonWriter json, CheckResult check)
    {
        json.WriteStartObject();
        json.WriteString("id", check.Id);
        json.WriteString("title", check.Title);
        json.WriteString("status", StatusName(check.Status));
        ReportJson.Number(json, "demand", Bounded(check.Demand));
        ReportJson.Number(json, "capacity", Bounded(check.Capacity));
        json.WriteString("unit", check.Unit);
        ReportJson.Number(json, "ratio", Bounded(check.Ratio));
        json.WriteString("source", check.Source);
        json.WriteString("detail", check.Detail);
        json.WriteEndObject();
    }

    /// <summary>Infinity is no number of JSON; NaN is a defect and stays to be refused by the writer.</summary>
    private static double? Bounded(double? value) => value is { } v && double.IsInfinity(v) ? null : value;

    private static string StatusName(CheckStatus status) => status switch
    {
        CheckStatus.Pass => "pass",
        CheckStatus.Warn => "warn",
        CheckStatus.Fail => "fail",
        CheckStatus.Engineer => "engineer",
        _ => throw new ArgumentOutOfRangeException(nameof(status), status, "No such status."),
    };
}
