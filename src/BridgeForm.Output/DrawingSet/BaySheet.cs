using BridgeForm.Frames;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A bay: deck from above and guard from within, and the parts they are made of.</summary>
internal static class BaySheet
{
    private const double Room = 0.029;

    // Between the drawings and the table below them.
    private const double Gap = 0.002;

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
        var last = context.Layout.Bays;
        var deck = new BayDeck(context, bay);
        var guard = new BayGuard(context, bay);
        var half = (body.MaxX - body.MinX) / 2;
        var ids = context.Shapes.Ids(context.Shapes.BayGroup(bay));
        var table = PartTable.Lay(
            context, "Parts of this bay", ids, 0.16,
            bay == 1 && last > 1 && !context.EndsDiffer ? PartTable.OfMirrored(FramePoses.BayName(last, last)) : "");
        const double share = 0.76;

        // A long note below the table's title, of parts that stand turned, takes its height from the drawings.
        var floor = Math.Max(body.MaxY - ((body.MaxY - body.MinY) * share), body.MinY + table.Least() + Gap);
        var canvas = Canvas.Twice(body, c =>
        {
            Place(context, c, deck.Box, new SheetBox(body.MinX, floor, body.MinX + half, body.MaxY), "Deck", deck.Note, deck.Draw);
            Place(
                context, c, guard.Box, new SheetBox(body.MinX + half, floor, body.MaxX, body.MaxY), "Left-hand guard", BayGuard.Note,
                guard.Draw);
        });
        var x = body.MinX;
        for (var next = 0; next < table.Rows.Length; x += table.Widths().Sum() + 0.008)
        {
            (next, _) = table.Set(canvas, x, floor - Gap, body.MinY, next);
        }

        return new DrawnPage(
            "E", title, "deck: from above; guard: from the middle of the deck towards the left; A at the left", canvas.Entities);
    }

    private static void Place(
        DrawingContext context, Canvas canvas, SheetBox box, SheetBox cell, string title, string note, Action<Canvas, ViewMap> draw)
    {
        var (w, h) = (box.MaxX - box.MinX, box.MaxY - box.MinY);
        var (roomW, roomH) = (cell.MaxX - cell.MinX - (2 * Room), cell.MaxY - cell.MinY - Room - Captions.Height);
        var scale = DrawingScale.Fitting(context.Text.Units, w, h, roomW, roomH);
        var left = cell.MinX + ((cell.MaxX - cell.MinX - (w / scale.Ratio)) / 2);
        var bottom = cell.MinY + Captions.Height + (Room * 0.38) + ((roomH - (h / scale.Ratio)) / 2);
        draw(canvas, ViewMap.Placing(box, left, bottom, scale.Ratio));
        canvas.Caption(cell.MinX, cell.MinY + Captions.Height, title, note, scale, context.Text);
    }
}
