using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Ropes.Fittings;
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

    /// <summary>Short name for the sheet's title.</summary>
    public string Word { get; init; } = "";
}

/// <summary>Details of channel, foot, head and cuts on sheets of their own.</summary>
internal static class DetailSheet
{
    private const double SideRoom = 0.020;

    /// <summary>Beside a detail that stands close to others, and the narrowest one with its caption, metres.</summary>
    private const double LeastSide = 0.012;
    private const double LeastCell = 0.068;
    private const double BelowRoom = 0.019;
    private const double AboveRoom = 0.014;
    private const double Between = 0.004;
    private const string AsWritten = "as written under each detail";

    /// <summary>The sheets: details side by side in their order, as many as have room at the scales that suit them.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var width = context.Body.MaxX - context.Body.MinX;
        var rows = new List<List<Detail>>();
        foreach (var detail in Details(context))
        {
            var row = rows.Find(r => r.Append(detail).Sum(d => Width(context, d)) <= width);
            if (row is null)
            {
                rows.Add([detail]);
            }
            else
            {
                row.Add(detail);
            }
        }

        return rows.Select(r => Page(context, "Details: " + string.Join(", ", r.Select(d => d.Word)), r));
    }

    private static IEnumerable<Detail> Details(DrawingContext context)
    {
        var middle = context.Layout.Bays / 2;
        yield return ChannelDetail.Across(context, middle) with { Number = DetailMarks.Channel, Word = "channel" };
        yield return FrameDetails.Head(context, middle) with { Number = DetailMarks.Head, Word = "post's head" };
        yield return FrameDetails.BraceHead(context, middle) with { Number = DetailMarks.BraceHead, Word = "brace's head" };
        yield return ChannelDetail.Along(context, middle, "Base on the ropes") with { Word = "base" };
        yield return ChannelDetail.Along(context, 0, "End base") with { Number = DetailMarks.EndBase, Word = "end base" };
        if (context.EndsDiffer)
        {
            yield return ChannelDetail.Along(context, context.Layout.Bays, "End base") with
            { Number = DetailMarks.EndBaseB, Word = "end base at B" };
        }

        if (Terminations.ClipsFor(context.Layout.Parameters.Ropes) is { } clips)
        {
            yield return ClipDetail.Draw(context, clips) with { Word = "rope end" };
        }

        yield return FrameDetails.Feet(context, middle) with { Number = DetailMarks.Feet, Word = "feet" };
        yield return StickDetail.Draw(context, middle) with { Word = "cuts" };
    }

    /// <summary>A detail takes the scale at which it would fit half a sheet.</summary>
    private static DrawingScale Scale(DrawingContext context, Detail detail)
    {
        var body = context.Body;
        var half = (body.MaxX - body.MinX) / 2;
        return DrawingScale.Fitting(
            context.Scales, detail.Box.MaxX - detail.Box.MinX, detail.Box.MaxY - detail.Box.MinY, half - (2 * (Between + SideRoom)),
            body.MaxY - body.MinY - BelowRoom - AboveRoom - Captions.HeightOf(detail.Note, half - (2 * Between)));
    }

    /// <summary>What a detail takes of a sheet's width, its figures and its caption included.</summary>
    private static double Width(DrawingContext context, Detail detail) => Math.Max(
        LeastCell, ((detail.Box.MaxX - detail.Box.MinX) / Scale(context, detail).Ratio) + (2 * (LeastSide + Between)));

    private static DrawnPage Page(DrawingContext context, string title, List<Detail> details) =>
        new(DocumentType.Detail, title, AsWritten, Canvas.Twice(context.Body, c => Row(context, c, details)).Entities)
        {
            Drawings = [.. details.Select(d => d.Number).Where(n => n > 0)],
        };

    /// <summary>Details side by side; what none of them needs is shared out.</summary>
    private static void Row(DrawingContext context, Canvas canvas, List<Detail> details)
    {
        var body = context.Body;
        var spare = (body.MaxX - body.MinX - details.Sum(d => Width(context, d))) / details.Count;
        var caption = details.Max(d => Captions.HeightOf(d.Note, Width(context, d) + spare - (2 * Between)));
        var left = body.MinX;
        foreach (var detail in details)
        {
            var right = left + Width(context, detail) + spare;
            Cell(context, canvas, detail, body with { MinX = left + Between, MaxX = right - Between }, caption);
            left = right;
        }
    }

    private static void Cell(DrawingContext context, Canvas canvas, Detail detail, SheetBox cell, double caption)
    {
        var (w, h) = (detail.Box.MaxX - detail.Box.MinX, detail.Box.MaxY - detail.Box.MinY);
        var captionWidth = cell.MaxX - cell.MinX;
        var roomH = cell.MaxY - cell.MinY - BelowRoom - AboveRoom - caption;
        var scale = Scale(context, detail);
        var left = cell.MinX + ((cell.MaxX - cell.MinX - (w / scale.Ratio)) / 2);
        var bottom = cell.MinY + caption + BelowRoom + ((roomH - (h / scale.Ratio)) / 2);
        var name = detail.Number > 0 ? $"{detail.Number.ToString(CultureInfo.InvariantCulture)}  {detail.Title}" : detail.Title;
        canvas.Caption(cell.MinX, cell.MinY + caption, name, detail.Note, scale, context.Text, captionWidth);
        detail.Draw(canvas, ViewMap.Placing(detail.Box, left, bottom, scale.Ratio));
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
