using BridgeForm.Quantities;

namespace BridgeForm.Cli.Text;

/// <summary>Sag and pull to hoist by.</summary>
internal static class HoistingText
{
    /// <summary>A table by stage and temperature.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine("HOISTING, sag at mid-span below the line of the supports");
        Columns.Table(
            output,
            [
                ["ropes", "at", "sag", "level pull"],
                .. model.Hoisting.Select(row => (string[])
                [
                    row.Stage is "bare" ? "bare" : "with frames, no deck",
                    words.Temperature(row.Temperature),
                    words.Size(row.Sag),
                    words.Force(row.Horizontal),
                ]),
            ]);
    }
}
