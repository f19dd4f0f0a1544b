using BridgeForm.Frames;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A bay: deck from above and guard from within.</summary>
internal static class BaySheet
{
    private const double Room = 0.029;

    /// <summary>The bay in the middle, the first one, whose ends differ, and the last one where it does not mirror the first.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var last = context.Layout.Bays;
        var middle = (last / 2) + 1;
        yield return Page(context, middle, $"Bay on the ropes ({FramePoses.BayName(middle, last)})");
        if (middle != 1)
        {
            var mirrored = context.EndsDiffer || last == 1 ? "" : ", and mirrored " + FramePoses.BayName(last, last);
            yield return Page(context, 1, $"End bay ({FramePoses.BayName(1, last)}{mirrored})");
        }

        if (middle != last && context.EndsDiffer)
        {
            yield return Page(context, last, $"End bay ({FramePoses.BayName(last, last)})");
        }
    }

    private static DrawnPage Page(DrawingContext context, int bay, string title)
    {
        var body = context.Body;
        var deck = new BayDeck(context, bay);
        var guard = new BayGuard(context, bay);
        var half = (body.MaxX - body.MinX) / 2;
        var floor = body.MinY;
        var canvas = Canvas.Twice(body, c =>
        {
            Place(context, c, deck.Box, new SheetBox(body.MinX, floor, body.MinX + half, body.MaxY), "Deck", deck.Note, deck.Draw);
            Place(
                context, c, guard.Box, new SheetBox(body.MinX + half, floor, body.MaxX, body.MaxY), "Left-hand guard", BayGuard.Note,
                guard.Draw);
        });
        return new DrawnPage(
            DocumentType.Detail, title, "deck: from above; guard: from the middle of the deck towards the left; A at the left",
            canvas.Entities);
    }

    private static void Place(
        DrawingContext context, Canvas canvas, SheetBox box, SheetBox cell, string title, string note, Action<Canvas, ViewMap> draw)
    {
        var captionWidth = cell.MaxX - cell.MinX - 0.004;
        var caption = Captions.HeightOf(note, captionWidth);
        var (w, h) = (box.MaxX - box.MinX, box.MaxY - box.MinY);
        var (roomW, roomH) = (cell.MaxX - cell.MinX - (2 * Room), cell.MaxY - cell.MinY - Room - caption);
        var scale = DrawingScale.Fitting(context.Scales, w, h, roomW, roomH);
        var left = cell.MinX + ((cell.MaxX - cell.MinX - (w / scale.Ratio)) / 2);
        var bottom = cell.MinY + caption + (Room * 0.38) + ((roomH - (h / scale.Ratio)) / 2);
        draw(canvas, ViewMap.Placing(box, left, bottom, scale.Ratio));
        canvas.Caption(cell.MinX, cell.MinY + caption, title, note, scale, context.Text, captionWidth);
    }
}
