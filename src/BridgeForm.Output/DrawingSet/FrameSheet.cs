using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A typical frame on the ropes and the end frames, each on its own sheet with a table of its parts.</summary>
internal static class FrameSheet
{
    private const double TableWidth = 0.128;
    private const double SideRoom = 0.030;
    private const double BelowRoom = 0.033;
    private const double AboveRoom = 0.016;

    /// <summary>The sheets; support B has its own where it does not mirror A.</summary>
    public static IEnumerable<DrawnPage> Of(DrawingContext context)
    {
        var middle = context.Layout.Bays / 2;
        var poses = context.Layout.Poses;
        yield return Page(context, middle, $"Frame on the ropes ({poses[middle].Name})");
        yield return Page(context, 0, $"End frame ({poses[0].Name}{(context.EndsDiffer ? "" : ", and mirrored " + poses[^1].Name)})");
        if (context.EndsDiffer)
        {
            yield return Page(context, context.Layout.Bays, $"End frame ({poses[^1].Name})");
        }
    }

    private static DrawnPage Page(DrawingContext context, int frame, string title)
    {
        var drawing = new FrameDrawing(context, frame);
        var body = context.Body;
        var room = new SheetBox(body.MinX, body.MinY, body.MaxX - TableWidth - 0.006, body.MaxY);
        var (width, height) = (drawing.Box.MaxX - drawing.Box.MinX, drawing.Box.MaxY - drawing.Box.MinY);
        var scale = DrawingScale.Fitting(
            context.Text.Units,
            width,
            height,
            room.MaxX - room.MinX - (2 * SideRoom),
            room.MaxY - room.MinY - BelowRoom - AboveRoom - Captions.Height);
        var left = room.MinX + ((room.MaxX - room.MinX - (width / scale.Ratio)) / 2);
        var bottom = room.MinY + Captions.Height + BelowRoom
            + ((room.MaxY - room.MinY - BelowRoom - AboveRoom - Captions.Height - (height / scale.Ratio)) / 2);
        var map = ViewMap.Placing(drawing.Box, left, bottom, scale.Ratio);
        var canvas = Canvas.Twice(body, c =>
        {
            drawing.Draw(c, map);
            FrameHoles.Draw(context, c, map, drawing, frame);
            new FrameDimensions(context, frame, drawing).Draw(c, map);
        });
        canvas.Caption(
            room.MinX, room.MinY + Captions.Height, title, "seen from A towards B, in the frame's own plane; deck, rails and cap cut at the frame", scale, context.Text);
        var y = body.MaxY;
        foreach (var table in Tables(context, frame))
        {
            (_, y) = table.Set(canvas, body.MaxX - TableWidth, y, body.MinY);
        }

        return new DrawnPage("E", title, "from A towards B, square to the frame's plane", canvas.Entities);
    }

    private static IEnumerable<FlowTable> Tables(DrawingContext context, int frame)
    {
        var ids = context.Shapes.Ids(frame).Concat(context.Shapes.Ids(context.Shapes.BayGroup(context.BayOf(frame))));
        yield return PartTable.Of(context, $"Parts of this frame and of bay {FramePoses.BayName(context.BayOf(frame), context.Layout.Bays)}", ids, TableWidth, frame == 0 && !context.EndsDiffer ? PartTable.OfMirrored($"{context.Layout.Poses[^1].Name}, {FramePoses.BayName(context.Layout.Bays, context.Layout.Bays)}") : "");
        var heights = GuardHeights.Of(context.Model).First(h => h.Frames.Contains(context.Layout.Poses[frame].Name, StringComparer.Ordinal));
        var rows = heights.Rails.Select((h, i) => (Name: FormattableString.Invariant($"rail {i + 1}, centre"), Height: h))
            .Prepend((Name: "deck's surface", Height: heights.Deck)).Append((Name: "post's head", Height: heights.Head));
        yield return new FlowTable(
            "Heights on the post",
            "Up along the post's inner face from the base's top, at the middle of the post's thickness.",
            [new FlowColumn("Line"), new FlowColumn("Height", Figures: true)],
            [.. rows.Select(r => new FlowRow([r.Name, context.Text.Words.Size(r.Height)]))]);
        yield return Levels(context, frame);
        if (FrameHoles.Table(context) is { } holes)
        {
            yield return holes;
        }
    }

    private static FlowTable Levels(DrawingContext context, int frame)
    {
        var (pose, level, words) = (context.Layout.Poses[frame], context.Layout.Levels[frame], context.Text.Words);
        ImmutableArray<FlowRow> rows =
        [
            new(["slope of the rope", DrawingText.Slope(pose.Slope)]),
            new(["channel depth at the middle", words.Size(level.ChannelDepth)]),
            new(["slope of the channel's floor", DrawingText.Slope(Math.Atan(level.FloorSlope))]),
            new(["base's bottom below the rope's axis", words.Size(-level.Bottom)]),
            new(["base's top above the rope's axis", words.Size(level.Top)]),
            new([context.Layout.Parameters.Deck.Stringer is null ? "boards lifted off the base by" : "stringers lifted off the base by", words.Size(context.Layout.Deck.Lifts[frame])]),
        ];
        return new FlowTable("Levels in the frame", "", [new FlowColumn("What"), new FlowColumn("Value", Figures: true)], rows);
    }
}
