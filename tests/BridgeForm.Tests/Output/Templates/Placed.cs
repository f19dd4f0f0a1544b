using BridgeForm.Output.Drawing;

namespace BridgeForm.Tests.Output.Templates;

/// <summary>A text where it comes to lie on the page.</summary>
internal sealed record PlacedText(string Text, double Height, SheetBox Box, bool Bold);

/// <summary>Texts of a page, windows looked into; those cut by a window's edge are cut here too.</summary>
internal static class PlacedTexts
{
    public static IEnumerable<PlacedText> Of(Sheet sheet) => Of(sheet, 0, 0, null);

    private static IEnumerable<PlacedText> Of(Sheet sheet, double dx, double dy, SheetBox? clip)
    {
        foreach (var entity in sheet.Entities.SelectMany(e => e is SheetDimension d ? DimensionLines.Turned(d) : [e]))
        {
            if (entity is SheetWindow w)
            {
                var inner = Of(w.Content, w.At.X - w.Window.MinX, w.At.Y - w.Window.MinY, Moved(
                    w.Window, w.At.X - w.Window.MinX, w.At.Y - w.Window.MinY));
                foreach (var text in inner)
                {
                    yield return text;
                }
            }
            else if (entity is SheetText text && Clipped(Moved(PageBox.Of(text), dx, dy), clip) is { IsEmpty: false } box)
            {
                yield return new PlacedText(text.Text, text.Height, box, text.Bold);
            }
        }
    }

    private static SheetBox Moved(SheetBox b, double dx, double dy) => new(b.MinX + dx, b.MinY + dy, b.MaxX + dx, b.MaxY + dy);

    private static SheetBox Clipped(SheetBox b, SheetBox? clip) => clip is { } c
        ? new SheetBox(Math.Max(b.MinX, c.MinX), Math.Max(b.MinY, c.MinY), Math.Min(b.MaxX, c.MaxX), Math.Min(b.MaxY, c.MaxY))
        : b;
}

/// <summary>Straight lines inside the windows of a page, where they come to lie.</summary>
internal static class PlacedLines
{
    public static IEnumerable<SheetLine> Of(Sheet sheet) => sheet.Entities.OfType<SheetWindow>().SelectMany(w =>
        w.Content.Entities.OfType<SheetLine>().Select(l => l with { From = Moved(l.From, w), To = Moved(l.To, w) }));

    private static SheetPoint Moved(SheetPoint p, SheetWindow w) =>
        new(p.X + w.At.X - w.Window.MinX, p.Y + w.At.Y - w.Window.MinY);
}
