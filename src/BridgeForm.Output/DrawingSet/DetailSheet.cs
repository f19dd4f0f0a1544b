using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A detail that can be drawn into a cell of a sheet.</summary>
/// <param name="Box">True size of what it shows, metres.</param>
/// <param name="Title">Its name.</param>
/// <param name="Note">A sentence for its caption.</param>
/// <param name="Draw">Draws it.</param>
internal sealed record Detail(SheetBox Box, string Title, string Note, Action<Canvas, ViewMap> Draw);

/// <summary>Details of channel, foot, head and cuts on one sheet of six cells.</summary>
internal static class DetailSheet
{
    private const double SideRoom = 0.023;
    private const double BelowRoom = 0.018;
    private const double AboveRoom = 0.014;
    private const double Between = 0.004;

    /// <summary>The sheet.</summary>
    public static DrawnPage Of(DrawingContext context)
    {
        var middle = context.Layout.Bays / 2;
        var canvas = context.NewCanvas();
        Detail[] details =
        [
            ChannelDetail.Across(context, middle),
            ChannelDetail.Along(context, middle, "Base on the ropes"),
            ChannelDetail.Along(context, 0, "End base and packer"),
            FrameDetails.Feet(context, middle),
            FrameDetails.Head(context, middle),
            StickDetail.Of(context, middle),
        ];
        const int columns = 3;
        var body = context.Body;
        var (width, height) = ((body.MaxX - body.MinX) / columns, (body.MaxY - body.MinY) / 2);
        for (var i = 0; i < details.Length; i++)
        {
            var left = body.MinX + (i % columns * width);
            var bottom = body.MaxY - (((i / columns) + 1) * height);
            Cell(context, canvas, details[i], new SheetBox(left + Between, bottom, left + width - Between, bottom + height));
        }

        return new DrawnPage("E", "Details: channels, feet, head, cuts", "as written under each detail", canvas.Entities);
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
