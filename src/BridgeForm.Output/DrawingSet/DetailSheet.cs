using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A detail that can be drawn into a cell of a sheet.</summary>
/// <param name="Box">True size of what it shows, metres.</param>
/// <param name="Title">Its name.</param>
/// <param name="Note">A sentence for its caption.</param>
/// <param name="Draw">Draws it.</param>
internal sealed record Detail(SheetBox Box, string Title, string Note, Action<Canvas, ViewMap> Draw)
{
    /// <summary>Number by which marks on other sheets lead to it; 0 for none.</summary>
    public int Number { get; init; }
}

/// <summary>Details of channel, foot, head and cuts on sheets of their own.</summary>
internal static class DetailSheet
{
    private const double SideRoom = 0.020;
    private const double BelowRoom = 0.019;
    private const double AboveRoom = 0.014;
    private const double Between = 0.004;
    private const string AsWritten = "as written under each detail";

    /// <summary>The sheets.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var middle = context.Layout.Bays / 2;
        foreach (var page in Bases(context, middle))
        {
            yield return page;
        }

        yield return Page(
            context, "Details: feet and brace",
            [
                FrameDetails.Feet(context, middle) with { Number = DetailMarks.Feet },
                FrameDetails.BraceHead(context, middle) with { Number = DetailMarks.BraceHead },
            ]);
        yield return Page(context, "Details: cuts of brace and post", [StickDetail.Draw(context, middle)]);
    }

    /// <summary>A page with details side by side.</summary>
    public static DrawnPage Page(DrawingContext context, string title, Detail[] details) =>
        new(DocumentType.Detail, title, AsWritten, Canvas.Twice(context.Body, c => Row(context, c, context.Body, details)).Entities)
        {
            Drawings = [.. details.Select(d => d.Number).Where(n => n > 0)],
        };

    /// <summary>Channels and bases; four details side by side would come out small, so end bases have their own sheet.</summary>
    private static IEnumerable<DrawnPage> Bases(DrawingContext context, int middle)
    {
        Detail[] onRopes =
        [
            ChannelDetail.Across(context, middle) with { Number = DetailMarks.Channel },
            ChannelDetail.Along(context, middle, "Base on the ropes"),
        ];
        var endA = ChannelDetail.Along(context, 0, "End base") with { Number = DetailMarks.EndBase };
        var head = FrameDetails.Head(context, middle) with { Number = DetailMarks.Head };
        return
        [
            Page(context, "Details: channels and bases", onRopes),
            .. context.EndsDiffer
                ? (DrawnPage[])
                [
                    Page(context, "Details: end bases", [endA, ChannelDetail.Along(context, context.Layout.Bays, "End base")]),
                    Page(context, "Details: head of the post", [head]),
                ]
                : [Page(context, "Details: end base, head of the post", [endA, head])],
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
        var captionWidth = cell.MaxX - cell.MinX;
        var caption = Captions.HeightOf(detail.Note, captionWidth);
        var roomH = cell.MaxY - cell.MinY - BelowRoom - AboveRoom - caption;
        var scale = DrawingScale.Fitting(context.Scales, w, h, roomW, roomH);
        var left = cell.MinX + ((cell.MaxX - cell.MinX - (w / scale.Ratio)) / 2);
        var bottom = cell.MinY + caption + BelowRoom + ((roomH - (h / scale.Ratio)) / 2);
        detail.Draw(canvas, ViewMap.Placing(detail.Box, left, bottom, scale.Ratio));
        var name = detail.Number > 0 ? $"{detail.Number.ToString(CultureInfo.InvariantCulture)}  {detail.Title}" : detail.Title;
        canvas.Caption(cell.MinX, cell.MinY + caption, name, detail.Note, scale, context.Text, captionWidth);
    }
}

/// <summary>Brace and post flat on the bench, wide face up.</summary>
internal static class StickDetail
{
    private const double Apart = 0.26;

    /// <summary>Brace and post of the right-hand side of a frame.</summary>
    public static Detail Draw(DrawingContext context, int frame)
    {
        var name = context.Layout.Poses[frame].Name;
        var sticks = new[] { Role.Brace, Role.Post }
            .Select(role => context.Shapes.PieceAt(new PartId(name, role, Side.Right).ToString())).OfType<Piece>().ToList();
        var length = sticks.Max(s => s.BlankLength);
        var box = new SheetBox(0, -Apart * (sticks.Count - 1), length, sticks.Count > 0 ? sticks[0].Shape.Width : Apart);
        return new Detail(box, "Brace and post on the bench", "wide face up, foot at the left; full drawings: profiles", (canvas, map) =>
        {
            for (var i = 0; i < sticks.Count; i++)
            {
                Stick(canvas, map, context, sticks[i], (-Apart * i) + (sticks[0].Shape.Width / 2));
            }
        });
    }

    private static void Stick(Canvas canvas, ViewMap map, DrawingContext context, Piece piece, double middle)
    {
        var (shape, text) = (piece.Shape, context.Text);
        var half = shape.Width / 2;
        SheetPoint At(Plane plane, double y) => map.Of(plane.XAt(y, 0), middle + y);
        SheetPoint[] corners = [At(shape.Near, -half), At(shape.Far, -half), At(shape.Far, half), At(shape.Near, half)];
        for (var i = 0; i < corners.Length; i++)
        {
            canvas.Line(PageLayers.Cut, corners[i], corners[(i + 1) % corners.Length]);
        }

        canvas.Level(corners[0], corners[1], corners[0].Y - 0.0055, text.Size(Length(shape, -half)));
        canvas.Level(corners[3], corners[2], corners[3].Y + 0.0055, text.Size(Length(shape, half)));
        var full = (Math.Max(corners[0].X, corners[3].X) + Math.Min(corners[1].X, corners[2].X)) / 2;
        SheetText Named(double x, string words) =>
            PageText.Centered(x, map.Of(0, middle).Y - (PageText.Small / 2), words, PageText.Small, bold: true);
        canvas.Label(Named(full, $"{piece.Mark}, {piece.Section}"), Named(full, piece.Mark));
        canvas.Label(PageText.Right(Math.Min(corners[0].X, corners[3].X) - 0.001, corners[0].Y, "foot " + Cut(piece.Near), PageText.Small));
        canvas.Label(PageText.Left(Math.Max(corners[1].X, corners[2].X) + 0.0015, corners[0].Y, "head " + Cut(piece.Far), PageText.Small));
    }

    private static double Length(CutStock shape, double y) => shape.Far.XAt(y, 0) - shape.Near.XAt(y, 0);

    private static string Cut(EndCut cut) => PartTable.Cut(cut) + (cut.Wedge > 0 ? $", block {DrawingText.Angle(cut.Wedge)}" : "");
}
