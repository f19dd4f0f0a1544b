using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>What stands below a drawing: its name, its scale, and a bar of known length.</summary>
internal static class Captions
{
    /// <summary>Room a caption takes below its top edge, metres.</summary>
    public const double Height = 0.0135;

    private const double LongestBar = 0.050;
    private const double BarHeight = 0.0011;
    private const double Inch = Quantities.Units.MetresPerInch;

    private static readonly double[] InchBars =
        [.. new[] { 1, 2, 3, 6, 12, 24, 36, 72, 120, 240, 360, 600, 1200, 2400, 6000 }.Select(i => i * Inch)];
    private static readonly double[] MetricBars = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200];

    /// <summary>
    /// Name, note, and scale bar with the scale in figures, the name's capitals up to <paramref name="top"/>. The note is broken into
    /// lines where a width is given.
    /// </summary>
    public static void Caption(
        this Canvas canvas, double x, double top, string title, string note, DrawingScale scale, DrawingText text, double? width = null)
    {
        canvas.Column(x, top, [title], PageText.Normal, bold: true);
        var y = top - PageText.HeightOf(1, PageText.Normal);
        y = canvas.Column(x, y, PageText.Wrapped(note, width ?? double.PositiveInfinity, PageText.Small), PageText.Small);
        Bar(canvas, x, y - 0.0012, scale, text, width ?? double.PositiveInfinity);
    }

    /// <summary>Room that a caption takes whose note is broken into lines.</summary>
    public static double HeightOf(string note, double width) =>
        Height + PageText.HeightOf(PageText.Wrapped(note, width, PageText.Small).Length - 1, PageText.Small);

    private static void Bar(Canvas canvas, double x, double y, DrawingScale scale, DrawingText text, double width)
    {
        string Words(double bar) => $"{text.Words.Length(bar)}    Scale {scale.Text}";
        var bars = text.Units == UnitSystem.Imperial ? InchBars : MetricBars;
        var length = bars.LastOrDefault(
            b => b / scale.Ratio <= Math.Min(LongestBar, width - PageText.Width(Words(b), PageText.Small) - 0.002), bars[0]);
        var paper = length / scale.Ratio;
        const int parts = 4;
        for (var i = 0; i < parts; i++)
        {
            var (from, to) = (x + (paper * i / parts), x + (paper * (i + 1) / parts));
            var bottom = i % 2 == 0 ? y : y - BarHeight;
            canvas.Add(new SheetArea(
                PageLayers.Note, [new(from, bottom), new(to, bottom), new(to, bottom - BarHeight), new(from, bottom - BarHeight)], 1));
        }

        canvas.Add(new SheetPolyline(
            PageLayers.Dim, [new(x, y), new(x + paper, y), new(x + paper, y - (2 * BarHeight)), new(x, y - (2 * BarHeight))],
            Closed: true));
        canvas.Text(PageText.Left(x + paper + 0.0015, y - (2 * BarHeight), Words(length), PageText.Small));
    }
}
