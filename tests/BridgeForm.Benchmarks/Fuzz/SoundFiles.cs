using System.IO.Compression;
using System.Text;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Kinds;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>
/// Writes the kinds model, preview, profiles, tables, report, drawings, step, ifc, usdz and scale-model to memory, and looks for
/// numbers that are none.
/// </summary>
internal static class SoundFiles
{
    private static readonly string[] Kinds =
        ["model", "preview", "profiles", "tables", "report", "drawings", "step", "ifc", "usdz", "scale-model"];

    private static readonly string[] Words = ["NaN", "Infinity", "∞"];

    /// <summary>Where a word stands that no number may print as; nulls of the report where a number must be.</summary>
    public static IEnumerable<string> Faults(BridgeModel model)
    {
        var sink = new MemorySink();
        foreach (var kind in OutputKinds.Listing(() => []).Where(k => Kinds.Contains(k.Word, StringComparer.Ordinal)))
        {
            kind.Make(model, sink);
        }

        // Of the drawings the sentences are read too, before they become glyphs.
        (string Name, string Text)[] files =
        [
            .. sink.Files.Where(f => f.Key is not ("drawings.pdf" or "calculations.pdf")).Select(f => (f.Key, Read(f.Key, f.Value))),
            .. DrawingSheets.Draw(model).Pages
                .Select((page, i) => ($"drawings.pdf, page {i + 1}", string.Join('\n', Sentences(page.Content)))),
            .. CalculationBook.Draw(model).Pages
                .Select((page, i) => ($"calculations.pdf, page {i + 1}", string.Join('\n', Sentences(page.Content)))),
        ];
        var words = files.SelectMany(
            f => Words.Where(w => f.Text.Contains(w, StringComparison.Ordinal)).Select(w => $"{w} in {f.Name}: {Around(f.Text, w)}"));
        var streams = PdfContent.Of(sink.Files["drawings.pdf"]).SelectMany(
            (text, i) => Words.Where(w => text.Contains(w, StringComparison.Ordinal)).Select(w => $"{w} in stream {i} of drawings.pdf"));
        return [.. words, .. streams, .. ReportNulls.In(Encoding.UTF8.GetString(sink.Files[OutputKinds.ReportFile]))];
    }

    private static string Read(string name, byte[] bytes) => name switch
    {
        "model.glb" => Json(bytes),
        "scale-model.3mf" => Unpacked(bytes),
        "preview.html" => Data(Encoding.UTF8.GetString(bytes)),
        _ => Encoding.UTF8.GetString(bytes),
    };

    private static string Unpacked(byte[] bytes)
    {
        using var archive = new ZipArchive(new MemoryStream(bytes));
        return string.Join('\n', archive.Entries.Select(e =>
        {
            using var reader = new StreamReader(e.Open());
            return reader.ReadToEnd();
        }));
    }

    // The page's own program speaks of NaN; what the bridge gives it is the JSON in it.
    private static string Data(string page) => string.Join(
        '\n',
        page.Split("<script type=\"application/json\"").Skip(1).Select(
            part => part[..part.IndexOf("</script>", StringComparison.Ordinal)]));

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
}
