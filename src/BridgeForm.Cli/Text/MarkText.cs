using BridgeForm.Quantities;

namespace BridgeForm.Cli.Text;

/// <summary>Where each frame sits on the rope laid out straight, from support A.</summary>
internal static class MarkText
{
    /// <summary>A table of marks: by the design, and on new rope that has yet to stretch for good.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        var tension = model.Parameters.Ropes.MarkingTension;
        var stretch = model.Ropework.Stretch;
        output.WriteLine("ROPE MARKS from support A, rope laid out straight");
        string[] heading =
        [
            "frame", "unstressed",
            .. tension > 0 ? ["at " + words.Force(tension)] : Array.Empty<string>(),
            .. stretch.Select(s => $"new, will stretch {QuantityText.Share(s.Share)}"),
        ];
        Columns.Table(output, [heading, .. model.Marks.Select((mark, i) => (string[])
        [
            model.Frames[i].Name,
            words.Length(mark.Unstressed),
            .. tension > 0 ? [words.Length(mark.AtMarkingTension)] : Array.Empty<string>(),
            .. stretch.Select(s => words.Length(s.Marks[i].Unstressed)),
        ])]);
    }
}
