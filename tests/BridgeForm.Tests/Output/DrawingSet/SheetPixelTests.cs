using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Tests.Output.Pdf;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>
/// Sheets as poppler paints them, which knows nothing of boxes and clearances: no ink of a text on the ink of a line, and no outline
/// that the white ground under a label took away. One sheet in every run; <c>BRIDGEFORM_SHEET_PIXELS=6</c> in the environment asks for
/// all drawings of six random bridges.
/// </summary>
[Trait("Category", "Referee")]
public sealed class SheetPixelTests
{
    /// <summary>A line of 0.13 mm is a pixel wide.</summary>
    private const int DotsPerInch = 200;

    /// <summary>At least half black.</summary>
    private const byte Dark = 128;

    /// <summary>Hardly any ink is left.</summary>
    private const byte Pale = 230;

    [Fact]
    public void No_ink_of_a_text_lies_on_a_line_and_no_white_ground_takes_an_outline_away()
    {
        var all = int.TryParse(
            Environment.GetEnvironmentVariable("BRIDGEFORM_SHEET_PIXELS"), CultureInfo.InvariantCulture, out var asked);
        var faults = new List<string>();
        for (var (seed, drawn) = (3, 0); drawn < (all ? asked : 1); seed++)
        {
            if (RandomSheetsTests.Model(seed) is { } model)
            {
                drawn++;
                var pages = DrawingSheets.Draw(model).Pages.Where(p => Of(p, IsOutline).Content.Entities.Length > 0);
                faults.AddRange((all ? pages : pages.Where(IsFrame).Take(1)).SelectMany(
                    p => Faults(p).Select(f => FormattableString.Invariant($"{seed}, {p.Content.Title}: {f}"))));
            }
        }

        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    /// <summary>The judge sees what it is to see: a text across a line, and a line that a white ground interrupts.</summary>
    [Fact]
    public void A_text_on_a_line_and_an_interrupted_outline_are_seen()
    {
        SheetEntity[] entities =
        [
            new SheetLine(PageLayers.Cut, new(0.01, 0.02), new(0.05, 0.02)),
            new SheetText(PageLayers.Note, new(0.02, 0.019), 0.003, "text"),
            new SheetLine(PageLayers.Cut, new(0.01, 0.03), new(0.05, 0.03)),
            new SheetArea(PageLayers.Note, [new(0.02, 0.029), new(0.03, 0.029), new(0.03, 0.031), new(0.02, 0.031)], 0),
        ];
        var page = new SheetPage(0.06, 0.04, new Sheet("a", PageLayers.All, [.. entities]));
        Assert.Equal(2, Faults(page).Count());
    }

    private static bool IsFrame(SheetPage page) => page.Content.Title.Contains("Frame on the ropes", StringComparison.Ordinal);

    private static IEnumerable<string> Faults(SheetPage page)
    {
        Raster Painted(Func<SheetEntity, bool> which) => Raster.Of(new SheetBook("a", [Of(page, which)]), 1, DotsPerInch);
        var (texts, lines) = (Painted(e => e is SheetText), Painted(e => e is not SheetText and not SheetArea));
        var (outlines, whole) = (Painted(IsOutline), Painted(_ => true));
        var (on, gone) = (0, 0);
        for (var i = 0; i < whole.Width * whole.Height; i++)
        {
            on += texts.Grey(i) < Dark && lines.Grey(i) < Dark ? 1 : 0;
            gone += outlines.Grey(i) < Dark && whole.Grey(i) > Pale ? 1 : 0;
        }

        if (on > 0)
        {
            yield return FormattableString.Invariant($"{on} pixels of texts on lines");
        }

        if (gone > 0)
        {
            yield return FormattableString.Invariant($"{gone} pixels of outlines under a white ground");
        }
    }

    private static bool IsOutline(SheetEntity entity) =>
        entity is not SheetText and not SheetArea && string.Equals(entity.Layer, PageLayers.Cut, StringComparison.Ordinal);

    private static SheetPage Of(SheetPage page, Func<SheetEntity, bool> which) =>
        page with { Content = page.Content with { Entities = [.. page.Content.Entities.Where(which)] } };
}
