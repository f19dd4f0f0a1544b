using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading;

namespace BridgeForm.Output.Live;

/// <summary>What the live page is told of a project file's text.</summary>
public static class PageState
{
    /// <summary>
    /// <c>{ ok, metric, faults: [{ line, column, code, message }], values: [{ path, text, number?, given, good }],
    /// priceFaults: [fault], chosen: [{ path, text, rule }], sections: [{ stock, names }] }</c>; numbers in SI units.
    /// </summary>
    public static byte[] Bytes(ProjectReading reading, ImmutableArray<ProjectFault> priceFaults) => PageJson.Object(json =>
    {
        json.WriteBoolean("ok", reading.Parameters is not null);
        json.WriteBoolean("metric", reading.AllValues.Any(v => v is { Path: "units", Text: "metric" }));
        PageJson.Objects(json, "faults", reading.Faults, fault => Fault(json, fault));
        PageJson.Objects(json, "priceFaults", priceFaults, fault => Fault(json, fault));
        PageJson.Objects(json, "values", reading.AllValues, value =>
        {
            json.WriteString("path", value.Path);
            json.WriteString("text", value.Text);
            PageJson.Maybe(json, "number", value.Number);
            json.WriteBoolean("given", value.IsGiven);
            json.WriteBoolean("good", value.IsGood);
        });
        if (reading.Parameters is { } parameters)
        {
            Known(json, parameters);
        }
    });

    /// <summary>A fault: <c>{ line, column, code, message }</c>.</summary>
    internal static void Fault(Utf8JsonWriter json, ProjectFault fault)
    {
        json.WriteNumber("line", fault.Line);
        json.WriteNumber("column", fault.Column);
        json.WriteString("code", fault.Code);
        json.WriteString("message", fault.Message);
    }

    private static void Known(Utf8JsonWriter json, BridgeParameters parameters)
    {
        PageJson.Objects(json, "chosen", parameters.Chosen, chosen =>
        {
            json.WriteString("path", chosen.Path);
            json.WriteString("text", chosen.Text);
            json.WriteString("rule", chosen.Rule);
        });
        PageJson.Objects(json, "sections", parameters.Stock, stock =>
        {
            json.WriteString("stock", stock.Name);
            PageJson.Texts(json, "names", stock.Sections.Select(s => s.Name));
        });
    }
}
