using BridgeForm.Quantities;

namespace BridgeForm.Cli.Text;

/// <summary>Where each frame sits on the rope laid out straight, from support A.</summary>
internal static class MarkText
{
    // A long bridge's marks are in rope-marks.csv; here its first and last ones do.
    private const int Most = 24;
    private const int Shown = 10;

    /// <summary>A table of marks.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        var tension = model.Parameters.Ropes.MarkingTension;
        output.WriteLine("ROPE MARKS from support A, rope laid out straight");
        var rows = model.Marks.Select((mark, i) => tension > 0
            ? (string[])[model.Frames[i].Name, words.Length(mark.Unstressed), words.Length(mark.AtMarkingTension)]
            : [model.Frames[i].Name, words.Length(mark.Unstressed)]).ToList();
        if (rows.Count > Most)
        {
            rows = [.. rows[..Shown], tension > 0 ? ["…", "…", "…"] : ["…", "…"], .. rows[^Shown..]];
        }

        string[] heading = tension > 0 ? ["frame", "unstressed", "at " + words.Force(tension)] : ["frame", "unstressed"];
        Columns.Table(output, [heading, .. rows]);
    }
}
