using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Text;

/// <summary>Sag, line of sight and pull to hoist by.</summary>
internal static class HoistingText
{
    /// <summary>A table by stage and temperature: for rope set to the plain marks, then for new rope that has yet to stretch.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine("HOISTING, each rope: sag at mid-span, and how far below the rope at both supports to sight");
        Table(output, words, model.Hoisting);
        foreach (var end in model.Ropework.Stretch)
        {
            output.WriteLine($"HOISTING, new rope that will stretch {QuantityText.Share(end.Share)} for good, set to the marks for it");
            Table(output, words, end.Hoisting.Rows);
        }
    }

    private static void Table(TextWriter output, QuantityText words, IEnumerable<HoistingRow> rows) => Columns.Table(
        output,
        [
            ["ropes", "at", "sag", "sight below", "level pull"],
            .. rows.Select(row => (string[])
            [
                row.Stage is "bare" ? "bare" : "with frames, no deck",
                words.Temperature(row.Temperature),
                words.Size(row.Sag),
                words.Size(row.Sight),
                words.Force(row.Horizontal),
            ]),
        ]);
}
