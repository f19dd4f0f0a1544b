using System.Text;
using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Dxf;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Pdf;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.Report;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Tables;
using BridgeForm.Quantities;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>Writes the kinds model, preview, profiles, tables, report and drawings to memory, and looks for numbers that are none.</summary>
internal static class SoundFiles
{
    private static readonly string[] Words = ["NaN", "Infinity", "∞"];

    /// <summary>Where a word stands that no number may print as; nulls of the report where a number must be.</summary>
    public static IEnumerable<string> Faults(BridgeModel model)
    {
        var units = PeopleUnits.Of(model.Parameters.Units);
        var report = Text(s => ReportWriter.Write(model, () => [], s));
        var drawings = DrawingSheets.Of(model);
        var pdf = Bytes(s => PdfWriter.Write(drawings, s));
        (string Name, string Text)[] files =
        [
            ("report.json", report),
            ("model.glb", Json(Bytes(s => GltfWriter.Write(model, solid => solid.Triangulate(), s)))),
            ("preview.html", Data(Text(s => PreviewWriter.Write(model, solid => solid.Triangulate(), s)))),
            .. Tables(model, units),
            .. model.Pieces.Select(p => ($"profiles/{p.Mark}.dxf", Text(s => DxfWriter.Write(ProfileSheet.Of(p, units, []), model.Parameters.Units, s)))),
            .. drawings.Pages.Select((page, i) => ($"drawings.pdf, page {i + 1}", string.Join('\n', Sentences(page.Content)))),
        ];
        var words = files.SelectMany(f => Words.Where(w => f.Text.Contains(w, StringComparison.Ordinal)).Select(w => $"{w} in {f.Name}: {Around(f.Text, w)}"));
        var streams = PdfContent.Of(pdf).SelectMany((text, i) => Words.Where(w => text.Contains(w, StringComparison.Ordinal)).Select(w => $"{w} in stream {i} of drawings.pdf"));
        return [.. words, .. streams, .. ReportNulls.In(report)];
    }

    private static IEnumerable<(string, string)> Tables(BridgeModel model, PeopleUnits units)
    {
        var text = new QuantityText(model.Parameters.Units);
        yield return ("cut-list.csv", CutList.Csv(model, units));
        yield return ("hoisting.csv", HoistingSheet.Csv(model, units, text.Temperature));
        yield return ("keepers.csv", KeeperTable.Csv(model));
        yield return ("rope-marks.csv", RopeMarkTable.Csv(model, units with { Length = text.Length }));
        yield return ("stock-plan.csv", StockPlanTable.Csv(model, units));
        yield return ("treatment.csv", TreatmentTable.Csv(model, units));
        yield return ("hardware.csv", HardwareTable.Csv(model));
        yield return ("assembly.csv", AssemblyTable.Csv(model));
        yield return ("saw-setups.csv", SawSheet.Csv(model, units));
    }

    // The page's own program speaks of NaN; what the bridge gives it is the JSON in it.
    private static string Data(string page) => string.Join(
        '\n',
        page.Split("<script type=\"application/json\"").Skip(1).Select(part => part[..part.IndexOf("</script>", StringComparison.Ordinal)]));

    private static string Json(byte[] glb) => Encoding.UTF8.GetString(glb, 20, BitConverter.ToInt32(glb, 12));

    private static IEnumerable<string> Sentences(Sheet sheet) => sheet.Entities.SelectMany(e => e switch
    {
        SheetText text => [text.Text],
        SheetDimension dimension => [dimension.Text],
        SheetWindow window => Sentences(window.Content),
        _ => Enumerable.Empty<string>(),
    });

    private static string Around(string text, string word)
    {
        var at = text.IndexOf(word, StringComparison.Ordinal);
        return text[Math.Max(0, at - 60)..Math.Min(text.Length, at + 40)].ReplaceLineEndings(" ");
    }

    private static string Text(Action<Stream> write) => Encoding.UTF8.GetString(Bytes(write));

    private static byte[] Bytes(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }
}
