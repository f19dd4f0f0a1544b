using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A detail that can be drawn into a cell of a sheet.</summary>
/// <param name="Box">True size of what it shows, metres.</param>
/// <param name="Title">Its name.</param>
/// <param name="Note">A sentence for its caption.</param>
/// <param name="Draw">Draws it.</param>
internal sealed record Detail(SheetBox Box, string Title, string Note, Action<Canvas, ViewMap> Draw);

/// <summary>Details of channel, foot, head and cuts on two or three sheets.</summary>
internal static class DetailSheet
{
    private const double SideRoom = 0.020;
    private const double BelowRoom = 0.019;
    private const double AboveRoom = 0.014;
    private const double Between = 0.004;
    private const string AsWritten = "as written under each detail";

    /// <summary>The sheets.</summary>
    public static IEnumerable<DrawnPage> Of(DrawingContext context)
    {
        var middle = context.Layout.Bays / 2;
        var body = context.Body;
        foreach (var page in Bases(context, middle))
        {
            yield return page;
        }

        const double share = 0.40;
        var split = body.MinY + (share * (body.MaxY - body.MinY));
        var canvas = Canvas.Twice(body, c =>
        {
            Row(context, c, body with { MinY = split }, [
                FrameDetails.Feet(context, middle), FrameDetails.BraceHead(context, middle), FrameDetails.Head(context, middle),
            ]);
            Row(context, c, body with { MaxY = split }, [StickDetail.Of(context, middle)]);
        });
        yield return new DrawnPage("E", "Details: feet, heads, cuts", AsWritten, canvas.Entities);
    }

    /// <summary>Channels and bases; four details side by side would come out small, so both end bases have their own sheet.</summary>
    private static IEnumerable<DrawnPage> Bases(DrawingContext context, int middle)
    {
        Detail[] onRopes = [ChannelDetail.Across(context, middle), ChannelDetail.Along(context, middle, "Base on the ropes")];
        var endA = ChannelDetail.Along(context, 0, "End base");
        DrawnPage Page(string title, Detail[] details) =>
            new("E", title, AsWritten, Canvas.Twice(context.Body, c => Row(context, c, context.Body, details)).Entities);
        if (!context.EndsDiffer)
        {
            return [Page("Details: channels and bases", [.. onRopes, endA])];
        }

        return
        [
            Page("Details: channels and bases", onRopes),
            Page("Details: end bases", [endA, ChannelDetail.Along(context, context.Layout.Bays, "End base")]),
        ];
    }

    /// <summary>Details side by side.</summary>
    private static void Row(DrawingContext context, Canvas canvas, SheetBox room, ReadOnlySpan<Detail> details)
    {
        var width = (room.MaxX - room.MinX) / details.Length;
        for (var i = 0; i < details.Length; i++)
        {
            var left = room.MinX + (i * width);
            Cell(context, canvas, details[i], new SheetBox(left + Between, room.MinY, left + width - Between, room.MaxY));
        }
    }

    private static void Cell(DrawingContext context, Canvas canvas, Detail detail, SheetBox cell)
    {
        var (w, h) = (detail.Box.MaxX - detail.Box.MinX, detail.Box.MaxY - detail.Box.MinY);
        var roomW = cell.MaxX - cell.MinX - (2 * SideRoom);
        var roomH = cell.MaxY - cell.MinY - BelowRoom - AboveRoom - Captions.Height;
        var scale = DrawingScale.Fitting(context.Text.Units, w, h, roomW, roomH);
        var left = cell.MinX + ((cell.MaxX - cell.MinX - (w / scale.Ratio)) / 2);
        var bottom = cell.MinY + Captions.Height + BelowRoom + ((roomH - (h / scale.Ratio)) / 2);
        detail.Draw(canvas, ViewMap.Placing(detail.Box, left, bottom, scale.Ratio));
        canvas.Caption(cell.MinX, cell.MinY + Captions.Height, detail.Title, detail.Note, scale, context.Text);
    }
}
