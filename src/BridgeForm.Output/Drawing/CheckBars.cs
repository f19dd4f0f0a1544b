namespace BridgeForm.Output.Drawing;

/// <summary>Two bars of known length, to see whether a printer kept the scale.</summary>
internal static class CheckBars
{
    /// <summary>The metric bar, metres.</summary>
    public const double Metric = 0.100;

    /// <summary>The bar in inches, metres.</summary>
    public const double Inches = 4 * 0.0254;

    /// <summary>Room they take, metres.</summary>
    public const double Height = 0.0125;

    /// <summary>What to do with them.</summary>
    public const string Sentence =
        "Measure both bars before cutting: 100 mm and 4 in from end line to end line. If either is off, print again at 100 % "
        + "(actual size, not fit to page).";

    private const double Tick = 0.0016;

    /// <summary>Both bars and the sentence beside them.</summary>
    /// <param name="x">Left end.</param>
    /// <param name="top">Upper edge.</param>
    /// <param name="width">Width of all.</param>
    public static IEnumerable<SheetEntity> Of(double x, double top, double width)
    {
        const double gap = 0.005;
        return
        [
            .. Bar(x, top - 0.0027, Metric, 10, "100 mm"),
            .. Bar(x, top - 0.0078, Inches, 4, "4 in"),
            .. PageText.Column(
                x + Inches + gap,
                top - 0.001,
                PageText.Wrapped(Sentence, width - Inches - gap, PageText.Small, bold: true),
                PageText.Small,
                bold: true),
        ];
    }

    private static IEnumerable<SheetEntity> Bar(double x, double y, double length, int parts, string name)
    {
        yield return new SheetLine(PageLayers.Cut, new SheetPoint(x, y), new SheetPoint(x + length, y));
        for (var i = 0; i <= parts; i++)
        {
            var half = i == 0 || i == parts ? Tick : Tick / 2;
            var at = x + (i * length / parts);
            yield return new SheetLine(PageLayers.Dim, new SheetPoint(at, y - half), new SheetPoint(at, y + half));
        }

        yield return PageText.Centered(x + (length / 2) + 0.006, y + 0.0011, name, PageText.Small);
    }
}
