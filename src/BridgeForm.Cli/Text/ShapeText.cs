using System.Globalization;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Text;

/// <summary>The bridge complete and empty.</summary>
internal static class ShapeText
{
    /// <summary>Name and shape.</summary>
    public static void Write(TextWriter output, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        output.WriteLine(model.Parameters.Name);
        output.WriteLine();
        output.WriteLine("SHAPE, complete and empty");
        Columns.Row(output, "span, rise", $"{words.Length(model.Parameters.Site.Span)}, {Rise(words, model.Parameters.Site.Rise)}");
        Columns.Row(output, "sag", words.Length(model.Rope.Sag));
        Columns.Row(output, "bays", model.Rope.Segments.Length.ToString(CultureInfo.InvariantCulture));
        Columns.Row(output, "end slopes", $"{QuantityText.Degrees(model.Frames[0].Slope)}, {QuantityText.Degrees(model.Frames[^1].Slope)}");
        Columns.Row(output, "pull, each rope", $"{words.Force(model.Rope.Horizontal)} level, {words.Force(model.Rope.MaxTension)} at most");
        output.WriteLine();
    }

    private static string Rise(QuantityText words, double rise) =>
        rise < 0 ? $"B {words.Length(-rise)} lower than A" : words.Length(rise);
}
