using System.Collections.Immutable;
using System.Text;
using BridgeForm.Output;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Dxf;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Pdf;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.Report;
using BridgeForm.Output.Router;
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

        if (kinds.Contains("preview"))
        {
            output.Write("preview.html", stream => PreviewWriter.Write(model, solid => solid.Triangulate(), stream));
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

        if (kinds.Contains("router"))
        {
            WriteRouter(model, output);
        }

        if (kinds.Contains("boards"))
        {
            WriteBoards(model, output);
        }

        if (kinds.Contains("templates"))
        {
            ShopFiles.WriteTemplates(model, units, output);
        }

        if (kinds.Contains("sheets"))
        {
            ShopFiles.WriteSheets(model, units, output);
        }

        if (kinds.Contains("drawings"))
        {
            output.Write("drawings.pdf", stream => PdfWriter.Write(DrawingSheets.Of(model), stream));
        }

        if (kinds.Contains("tables"))
        {
            WriteText(output, "cut-list.csv", CutList.Csv(model, units));
            WriteText(output, "hoisting.csv", HoistingSheet.Csv(model, units, new QuantityText(model.Parameters.Units).Temperature));
            WriteText(output, "rope-marks.csv", RopeMarks.Csv(model, units with { Length = new QuantityText(model.Parameters.Units).Length }));
            WriteText(output, "stock-plan.csv", StockPlanTable.Csv(model, units));
            WriteText(output, "treatment.csv", TreatmentTable.Csv(model, units));
            WriteText(output, "hardware.csv", HardwareTable.Csv(model));
            WriteText(output, "assembly.csv", AssemblyTable.Csv(model));
            WriteText(output, "saw-setups.csv", SawSheet.Csv(model, units));
        }

        if (kinds.Contains("report"))
        {
            ImmutableArray<string> files = [.. output.Names, "report.json"];
            output.Write("report.json", stream => ReportWriter.Write(model, files, stream));
        }
    }

    private static void WriteRouter(BridgeModel model, OutputFolder output)
    {
        foreach (var piece in model.Pieces)
        {
            if (RouterSheet.Of(piece, model.Parameters.Shop) is { } sheet)
            {
                output.Write($"router/{piece.Mark}.dxf", stream => DxfWriter.Write(sheet, model.Parameters.Units, stream));
            }
        }
    }

    private static void WriteBoards(BridgeModel model, OutputFolder output)
    {
        var pieces = model.Pieces.ToDictionary(p => p.Mark, StringComparer.Ordinal);
        foreach (var board in model.StockPlan.Boards)
        {
            if (RouterBoard.Of(board, pieces, model.Parameters.Shop).Sheet() is { } sheet)
            {
                output.Write(
                    RouterBoard.FileName(board, model.StockPlan),
                    stream => DxfWriter.Write(sheet, model.Parameters.Units, stream));
            }
        }
    }

    private static void WriteText(OutputFolder output, string name, string text) =>
        output.Write(name, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
}
