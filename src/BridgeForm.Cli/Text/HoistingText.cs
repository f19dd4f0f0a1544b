using BridgeForm.Quantities;

namespace BridgeForm.Cli.Text;

/// <summary>Sag, line of sight and pull to hoist by.</summary>
internal static class HoistingText
{
    /// <summary>A table by stage and temperature.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine("HOISTING, each rope: sag at mid-span, and how far below the rope at both supports to sight");
        Columns.Table(
            output,
            [
                ["ropes", "at", "sag", "sight below", "level pull"],
                .. model.Hoisting.Select(row => (string[])
                [
                    row.Stage is "bare" ? "bare" : "with frames, no deck",
                    words.Temperature(row.Temperature),
                    words.Size(row.Sag),
                    words.Size(row.Sight),
                    words.Force(row.Horizontal),
                ]),
            ]);
    }
}
