using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;
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
    private const string ReportKind = "report";

    /// <summary>Every kind with what makes its files, the report last, since it lists the others.</summary>
    public static ImmutableArray<OutputMaker> Makers { get; } =
    [
        new("model", (model, _, output) =>
            output.Write("model.glb", stream => GltfWriter.Write(model, solid => solid.Triangulate(), stream))),
        new("preview", (model, _, output) =>
            output.Write("preview.html", stream => PreviewWriter.Write(model, solid => solid.Triangulate(), stream))),
        new("profiles", WriteProfiles),
        new("router", (model, _, output) => WriteRouter(model, output)),
        new("boards", (model, _, output) => WriteBoards(model, output)),
        new("templates", ShopFiles.WriteTemplates),
        new("sheets", ShopFiles.WriteSheets),
        new("drawings", (model, _, output) =>
            output.Write("drawings.pdf", stream => PdfWriter.Write(DrawingSheets.Of(model), stream))),
        new("tables", WriteTables),
        new(ReportKind, (model, _, output) =>
            output.Write("report.json", stream => ReportWriter.Write(model, () => [.. output.Folder.NamesOfOthers().Concat(["report.json", Manifest.FileName]).Order(StringComparer.Ordinal)], stream))),
    ];

    /// <summary>
    /// Writes the files of the given kinds, kinds side by side: each is a pure function of the model. The report ends last,
    /// since it lists the others.
    /// </summary>
    public static void Write(BridgeModel model, ImmutableHashSet<string> kinds, OutputFolder output, Progress progress)
    {
        var units = PeopleUnits.Of(model.Parameters.Units);
        OutputMaker[] asked = [.. Makers.Where(m => kinds.Contains(m.Kind))];
        var steps = progress.Of(asked.Length);
        var report = asked.FirstOrDefault(m => m.Kind is ReportKind) is { } last ? Task.Run(() => Make(last)) : Task.CompletedTask;
        try
        {
            Together.Run(asked.Where(m => m.Kind is not ReportKind).Select(m => (Action)(() => Make(m))).ToArray());
        }
        finally
        {
            output.OthersAreWritten();
            _ = Task.WaitAny(report);
        }

        report.GetAwaiter().GetResult();

        void Make(OutputMaker maker)
        {
            maker.Make(model, units, new KindFiles(output, maker.Kind));
            steps.Done(maker.Kind);
        }
    }

    private static void WriteProfiles(BridgeModel model, PeopleUnits units, KindFiles output)
    {
        string[] failing = [.. model.Checks.Where(c => c.Status == CheckStatus.Fail).Select(c => c.Id)];
        foreach (var piece in model.Pieces)
        {
            output.Write(
                $"profiles/{piece.Mark}.dxf",
                stream => DxfWriter.Write(ProfileSheet.Of(piece, units, failing), model.Parameters.Units, stream));
        }
    }

    private static void WriteTables(BridgeModel model, PeopleUnits units, KindFiles output)
    {
        var text = new QuantityText(model.Parameters.Units);
        WriteTable(output, "cut-list.csv", CutList.Csv(model, units));
        WriteTable(output, "hoisting.csv", HoistingSheet.Csv(model, units, text.Temperature));
        WriteTable(output, "keepers.csv", KeeperTable.Csv(model));
        WriteTable(output, "rope-marks.csv", RopeMarkTable.Csv(model, units with { Length = text.Length }));
        WriteTable(output, "stock-plan.csv", StockPlanTable.Csv(model, units));
        WriteTable(output, "treatment.csv", TreatmentTable.Csv(model, units));
        WriteTable(output, "hardware.csv", HardwareTable.Csv(model));
        WriteTable(output, "assembly.csv", AssemblyTable.Csv(model));
        WriteTable(output, "saw-setups.csv", SawSheet.Csv(model, units));
    }

    private static void WriteRouter(BridgeModel model, KindFiles output)
    {
        foreach (var piece in model.Pieces)
        {
            if (RouterSheet.Of(piece, model.Parameters.Shop) is { } sheet)
            {
                output.Write($"router/{piece.Mark}.dxf", stream => DxfWriter.Write(sheet, model.Parameters.Units, stream));
            }
        }
    }

    private static void WriteBoards(BridgeModel model, KindFiles output)
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

    private static void WriteTable(KindFiles output, string name, string text) =>
        output.Write(name, stream => stream.Write(CsvText.Bytes(text)));
}
