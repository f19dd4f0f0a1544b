using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Dxf;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Ifc;
using BridgeForm.Output.Pdf;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.Report;
using BridgeForm.Output.Router;
using BridgeForm.Output.ScaleModel;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.StepSolids;
using BridgeForm.Output.Tables;
using BridgeForm.Output.Templates;
using BridgeForm.Output.Usd;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Kinds;

/// <summary>Every kind of output, once: which files it has and what writes them.</summary>
public static class OutputKinds
{
    /// <summary>The word of the report, which lists the files of all other kinds.</summary>
    public const string Report = "report";

    /// <summary>The word of the model to print.</summary>
    public const string ScaleModel = "scale-model";

    /// <summary>Name of the report's file.</summary>
    public const string ReportFile = "report.json";

    /// <summary>Every kind, in the order in which one thread makes them; the report last, since it lists the others.</summary>
    /// <param name="files">Names of all files beside the report, asked for when they are written.</param>
    /// <param name="templates">Which templates are printed; null for those that are needed.</param>
    public static ImmutableArray<OutputKind> Listing(Func<IReadOnlyList<string>> files, TemplateChoice? templates = null) =>
    [
        .. Others(templates ?? TemplateChoice.Needed),
        new(Report, (model, output) => output.Write(ReportFile, stream => ReportWriter.Write(model, files, stream))),
    ];

    /// <summary>All words.</summary>
    public static ImmutableArray<string> Words { get; } = [.. Listing(() => []).Select(k => k.Word)];

    /// <summary>Words of the kinds that are made where none is asked for by name.</summary>
    public static ImmutableArray<string> Usual { get; } = [.. Listing(() => []).Where(k => !k.OnRequest).Select(k => k.Word)];

    private static ImmutableArray<OutputKind> Others(TemplateChoice choice) =>
    [
        new("model", (model, output) =>
            output.Write("model.glb", stream => GltfWriter.Write(model, solid => solid.Triangulate(), stream))),
        new("preview", (model, output) =>
            output.Write("preview.html", stream => PreviewWriter.Write(model, solid => solid.Triangulate(), stream))),
        new("profiles", WriteProfiles),
        new("router", WriteRouter),
        new("boards", WriteBoards),
        new("templates", (model, output) => WriteTemplates(model, output, choice)),
        new("sheets", WriteSheets),
        new("drawings", (model, output) =>
        {
            output.Write("drawings.pdf", stream => PdfWriter.Write(DrawingSheets.Draw(model), stream));
            output.Write("calculations.pdf", stream => PdfWriter.Write(CalculationBook.Draw(model), stream));
        }),
        new("crew", WriteCrew),
        new("quote", WriteQuote),
        new("tables", WriteTables),
        new("step", (model, output) => output.Write("model.step", stream => StepWriter.Write(model, stream))),
        new("ifc", (model, output) => output.Write("model.ifc", stream => IfcWriter.Write(model, stream))),
        new("usdz", (model, output) => output.Write("model.usdz", stream => UsdWriter.Write(model, stream))) { OnRequest = true },
        new(ScaleModel, WriteScaleModel) { OnRequest = true },
    ];

    /// <summary>One file of templates a piece that needs them, and one of the whole set.</summary>
    private static void WriteTemplates(BridgeModel model, IOutputSink output, TemplateChoice choice)
    {
        var units = DisplayUnits.For(model.Parameters.Units);
        foreach (var piece in model.Pieces.Where(p => TemplateSet.Needs(p, choice)))
        {
            output.Write(
                $"templates/{piece.Mark}.pdf", stream => PdfWriter.Write(TemplateSet.Draw(model, piece, units, choice), stream));
        }

        output.Write("templates/all.pdf", stream => PdfWriter.Write(TemplateSet.All(model, units, choice), stream));
    }

    /// <summary>Saw set-ups, and labels in the order of assembly.</summary>
    private static void WriteSheets(BridgeModel model, IOutputSink output)
    {
        var units = DisplayUnits.For(model.Parameters.Units);
        output.Write("saw-setups.pdf", stream => PdfWriter.Write(SawSheet.Draw(model, units), stream));
        var order = model.Assembly().SelectMany(step => step.Parts).ToList();
        output.Write("labels.pdf", stream => PdfWriter.Write(LabelSheet.Draw(model, order), stream));
    }

    /// <summary>What the customer asks for.</summary>
    private static void WriteQuote(BridgeModel model, IOutputSink output)
    {
        output.Write("quote.pdf", stream => PdfWriter.Write(QuoteSheet.Draw(model), stream));
        WriteTable(output, "quote.csv", QuoteSheet.Csv(model));
    }

    /// <summary>What a crew holds on site.</summary>
    private static void WriteCrew(BridgeModel model, IOutputSink output)
    {
        output.Write("survey.pdf", stream => PdfWriter.Write(SurveySheet.Draw(model), stream));
        output.Write("erection.pdf", stream => PdfWriter.Write(ErectionSheet.Draw(model), stream));
        output.Write("upkeep.pdf", stream => PdfWriter.Write(UpkeepSheet.Draw(model), stream));
        WriteTable(output, "erection.csv", ErectionTable.Csv(model, DisplayUnits.For(model.Parameters.Units)));
    }

    private static void WriteProfiles(BridgeModel model, IOutputSink output)
    {
        var units = DisplayUnits.For(model.Parameters.Units);
        var verdict = SheetWords.For(model, "").Verdict;
        foreach (var piece in model.Pieces)
        {
            output.Write(
                $"profiles/{piece.Mark}.dxf",
                stream => DxfWriter.Write(ProfileSheet.Draw(piece, units, verdict), model.Parameters.Units, stream));
        }

        foreach (var (name, sheet) in PlateSheet.All(model.Parameters, units))
        {
            output.Write($"profiles/{name}.dxf", stream => DxfWriter.Write(sheet, model.Parameters.Units, stream));
        }
    }

    private static void WriteTables(BridgeModel model, IOutputSink output)
    {
        var units = DisplayUnits.For(model.Parameters.Units);
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
        if (StripSheet.Any(model))
        {
            WriteTable(output, "strips.csv", StripSheet.Csv(model));
        }
    }

    private static void WriteScaleModel(BridgeModel model, IOutputSink output)
    {
        output.Write("scale-model.3mf", stream => ThreeMfWriter.Write(model, stream));
        WriteTable(output, "scale-model.csv", ScaleModelTable.Csv(model));
    }

    private static void WriteRouter(BridgeModel model, IOutputSink output)
    {
        foreach (var piece in model.Pieces)
        {
            if (RouterSheet.Draw(piece, model.Parameters.Shop, model.Parameters.Units) is { } sheet)
            {
                output.Write($"router/{piece.Mark}.dxf", stream => DxfWriter.Write(sheet, model.Parameters.Units, stream));
            }
        }

        WriteTable(output, "router/index.csv", RouterIndex.Csv(model));
    }

    private static void WriteBoards(BridgeModel model, IOutputSink output)
    {
        var pieces = model.Pieces.ToDictionary(p => p.Mark, StringComparer.Ordinal);
        foreach (var board in model.StockPlan.Boards)
        {
            if (RouterBoard.Lay(board, pieces, model.Parameters.Shop).Sheet(model.Parameters.Units) is { } sheet)
            {
                output.Write(
                    RouterBoard.FileName(board, model.StockPlan),
                    stream => DxfWriter.Write(sheet, model.Parameters.Units, stream));
            }
        }
    }

    private static void WriteTable(IOutputSink output, string name, string text) =>
        output.Write(name, stream => stream.Write(CsvText.Bytes(text)));
}

/// <summary>One kind of files that <c>make --only</c> takes.</summary>
/// <param name="Word">Its word on the command line.</param>
/// <param name="Make">Writes its files; called beside others, and touches nothing but the sink.</param>
public sealed record OutputKind(string Word, Action<BridgeModel, IOutputSink> Make)
{
    /// <summary>Made only where it is asked for by its word.</summary>
    public bool OnRequest { get; init; }
}
