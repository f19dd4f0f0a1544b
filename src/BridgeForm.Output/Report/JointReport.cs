using System.Text.Json;
using BridgeForm.Project;

namespace BridgeForm.Output.Report;

/// <summary>One entry of <c>joints</c>.</summary>
internal static class JointReport
{
    /// <summary>Writes a joint that the project file describes; of plates and bracket the one that it is not has null.</summary>
    public static void Write(Utf8JsonWriter json, JointParameters joint)
    {
        json.WriteStartObject();
        json.WriteString("name", joint.Name);
        ReportJson.Number(json, "bolt", joint.Plates?.Strut.Bolt);
        ReportJson.Number(json, "carrier_bolt", joint.Plates?.Carrier.Bolt);
        ReportJson.Number(json, "bolts", joint.Plates is { } p ? p.Strut.Total + p.Carrier.Total : null);
        ReportJson.Number(json, "plate_thickness", joint.Plates?.Thickness);
        ReportJson.Number(json, "plate_width", joint.Plates?.Width);
        ReportJson.Number(json, "plate_length", joint.Plates?.Length);
        ReportJson.Number(json, "uplift", joint.Bracket?.Uplift);
        ReportJson.Number(json, "shear", joint.Bracket?.Shear);
        json.WriteString("source", joint.Bracket?.Source);
        json.WriteEndObject();
    }
}
