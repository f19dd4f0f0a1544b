using System.Collections.Immutable;
using System.Text;
using BridgeForm.Output;
using BridgeForm.Output.Dxf;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.Report;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Tables;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Files;

/// <summary>Which file holds what.</summary>
internal static class OutputFiles
{
    /// <summary>Writes the files of the given kinds.</summary>
    public static void Write(BridgeModel model, ImmutableHashSet<string> kinds, OutputFolder output)
    {
        ModelAudit.Demand(model);
        var units = PeopleUnits.Of(model.Parameters.Units);
        if (kinds.Contains("model"))
        {
            output.Write("model.glb", stream => GltfWriter.Write(model, solid => solid.Triangulate(), stream));
        }

        if (kinds.Contains("profiles"))
        {
            foreach (var piece in model.Pieces)
            {
                output.Write(
                    $"profiles/{piece.Mark}.dxf",
                    stream => DxfWriter.Write(ProfileSheet.Of(piece, units), model.Parameters.Units, stream));
            }
        }

        if (kinds.Contains("templates"))
        {
            ShopFiles.WriteTemplates(model, units, output);
        }

        if (kinds.Contains("sheets"))
        {
            ShopFiles.WriteSheets(model, units, output);
        }

        if (kinds.Contains("tables"))
        {
            WriteText(output, "cut-list.csv", CutList.Csv(model, units));
            WriteText(output, "saw-setups.csv", SawSheet.Csv(model, units));
            WriteText(output, "rope-marks.csv", RopeMarks.Csv(model, units with { Length = new QuantityText(model.Parameters.Units).Length }));
        }

        if (kinds.Contains("report"))
        {
            ImmutableArray<string> files = [.. output.Names, "report.json"];
            output.Write("report.json", stream => ReportWriter.Write(model, files, stream));
        }
    }

    private static void WriteText(OutputFolder output, string name, string text) =>
        output.Write(name, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
}
