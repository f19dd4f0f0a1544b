using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Router;
using BridgeForm.Output.Templates;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A typical frame on the ropes and the end frames, each on its own sheet.</summary>
internal static class FrameSheet
{
    private const double SideRoom = 0.030;
    private const double BelowRoom = 0.024;
    private const double AboveRoom = 0.016;

    /// <summary>The sheets; support B has its own where it does not mirror A.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var poses = context.Layout.Poses;
        foreach (var (frame, number) in DetailMarks.Frames(context))
        {
            var mirrored = frame == 0 && !context.EndsDiffer ? ", and mirrored " + poses[^1].Name : "";
            var kind = frame > 0 && frame < context.Layout.Bays ? "Frame on the ropes" : "End frame";
            yield return Page(context, frame, number, $"{kind} ({poses[frame].Name}{mirrored})");
        }
    }

    private static DrawnPage Page(DrawingContext context, int frame, int number, string title)
    {
        var drawing = new FrameDrawing(context, frame);
        var body = context.Body;
        var room = body;
        var figures = new FrameDimensions(context, frame, drawing);
        var note = "seen from A towards B, in the frame's own plane; deck, rails and cap cut at the frame; \"posts\" and \"rails\": clear "
            + "between them, at the deck and at the lowest rail; to the cap: its top. " + figures.Note();
        var caption = Captions.HeightOf(note, room.MaxX - room.MinX);
        var (width, height) = (drawing.Box.MaxX - drawing.Box.MinX, drawing.Box.MaxY - drawing.Box.MinY);
        var high = room.MaxY - room.MinY - BelowRoom - AboveRoom - caption;
        var scale = DrawingScale.Fitting(context.Scales, width, height, room.MaxX - room.MinX - (2 * SideRoom), high);
        var left = room.MinX + ((room.MaxX - room.MinX - (width / scale.Ratio)) / 2);
        var bottom = room.MinY + caption + BelowRoom + ((high - (height / scale.Ratio)) / 2);
        var map = ViewMap.Placing(drawing.Box, left, bottom, scale.Ratio);
        var canvas = Canvas.Twice(body, c =>
        {
            drawing.Draw(c, map);
            FrameHoles.Draw(context, c, map, drawing, frame);
            figures.Draw(c, map);
        });
        canvas.Caption(
            room.MinX, room.MinY + caption, $"{number.ToString(CultureInfo.InvariantCulture)}  {title}", note, scale, context.Text,
            room.MaxX - room.MinX);
        return new DrawnPage(DocumentType.Detail, title, "from A towards B, square to the frame's plane", canvas.Entities)
        {
            Drawings = [number],
        };
    }

    /// <summary>
    /// Frames that have a sheet: the one in the middle and the end frame at A, at B where that is another, and the first with shims.
    /// </summary>
    public static IEnumerable<int> Shown(DrawingContext context)
    {
        int[] ends = [context.Layout.Bays / 2, 0, .. context.EndsDiffer ? [context.Layout.Bays] : Array.Empty<int>()];
        return ends.Append(context.Layout.Steps.Shims.IndexOf(true)).Where(frame => frame >= 0).Distinct();
    }

    /// <summary>Parts, heights and levels of a frame.</summary>
    public static IEnumerable<FlowTable> Tables(DrawingContext context, int frame)
    {
        var name = context.Layout.Poses[frame].Name;
        var ids = context.Shapes.Ids(frame).Concat(context.Shapes.Ids(context.Shapes.BayGroup(context.BayOf(frame))));
        yield return PartTable.Lay(
            context, $"Parts of {name} and of bay {FramePoses.BayName(context.BayOf(frame), context.Layout.Bays)}", ids,
            frame == 0 && !context.EndsDiffer ? PartTable.OfMirrored(
                $"{context.Layout.Poses[^1].Name}, {FramePoses.BayName(context.Layout.Bays, context.Layout.Bays)}") : "");
        var heights = GuardHeights.Measure(context.Model).First(
            h => h.Frames.Contains(context.Layout.Poses[frame].Name, StringComparer.Ordinal));
        var rows = heights.Rails.Select((h, i) => (Name: FormattableString.Invariant($"rail {i + 1}, centre"), Height: h))
            .Prepend((Name: "deck's surface", Height: heights.Deck)).Append((Name: "post's head", Height: heights.Head));
        yield return new FlowTable(
            $"Heights on the post, {name}",
            "Up along the post's inner face from the base's top, at the middle of the post's thickness.",
            [new FlowColumn("Line"), new FlowColumn("Height", Figures: true)],
            [.. rows.Select(r => new FlowRow([r.Name, context.Text.Words.Size(r.Height)]))]);
        yield return Levels(context, frame);
    }

    private static FlowTable Levels(DrawingContext context, int frame)
    {
        var (pose, level, words) = (context.Layout.Poses[frame], context.Layout.Levels[frame], context.Text.Words);
        ImmutableArray<FlowRow> rows =
        [
            new(["slope of the rope", DrawingText.Slope(pose.Slope)]),
            new(["channel depth at the middle", words.Size(level.ChannelDepth)]),
            new(["slope of the channel's floor", DrawingText.Slope(Elementary.Atan(level.FloorSlope))]),
            new(["base's bottom below the rope's axis", words.Size(-level.Bottom)]),
            new(["base's top above the rope's axis", words.Size(level.Top)]),
            new(
                [
                    context.Layout.Parameters.Deck.Stringer is null ? "boards lifted off the base by" : "stringers lifted off the base by",
                    words.Size(context.Layout.Deck.Lifts[frame]),
                ]),
        ];
        return new FlowTable($"Levels in {pose.Name}", "", [new FlowColumn("What"), new FlowColumn("Value", Figures: true)], rows);
    }
}

/// <summary>Holes of a frame's base, posts and braces: drawn in the frame's view, the builder's own ones listed as well.</summary>
internal static class FrameHoles
{
    /// <summary>Draws every hole: a circle where one looks along it, else its two edges, dashed.</summary>
    public static void Draw(DrawingContext context, Canvas canvas, ViewMap map, FrameDrawing drawing, int frame)
    {
        foreach (var id in context.Shapes.Ids(frame))
        {
            var (piece, placement) = (context.Shapes.PieceAt(id)!, context.Shapes.PlacementOf(id));
            foreach (var hole in piece.Shape.Holes)
            {
                var (from, to) = Axis(piece.Shape, hole);
                One(
                    canvas, map, drawing.Of(placement.ToWorld(from)), drawing.Of(placement.ToWorld(to)), hole.Diameter / 2,
                    IsSeen(placement, hole));
            }
        }
    }

    /// <summary>The builder's own holes; null where there are none.</summary>
    public static FlowTable? Table(DrawingContext context)
    {
        var holes = context.Layout.Parameters.Frames.Holes;
        return holes.IsEmpty
            ? null
            : new FlowTable(
                "Your own holes",
                "In every part of the kind, left and right as mirror images. From the long point of the named end. Across from the middle "
                    + "of the face: "
                    + "on the wide face of posts and braces outward from the bridge's middle, on their top and bottom towards B; on a "
                    + "base's side up, on its top and bottom towards A.",
                [
                    new("In"), new("Face"), new("From"), new("Across", Figures: true), new("Diameter", Figures: true),
                    new("Depth", Figures: true),
                ],
                [.. holes.Select(h => Row(h, context.Text))]);
    }

    private static FlowRow Row(HoleParameters hole, DrawingText text) => new(
    [
        RoleTable.Of(hole.Part).Name,
        hole.Face.ToString().ToLowerInvariant(),
        $"{text.Size(hole.FromEnd)} from the "
            + $"{(hole.FromFarEnd ? RoleTable.Of(hole.Part).Ends.ShopFar : RoleTable.Of(hole.Part).Ends.ShopNear)}",
        text.Size(hole.Across),
        text.Size(hole.Diameter),
        hole.Depth is { } depth ? text.Size(depth) : "through",
    ]);

    /// <summary>Where the bit enters and where it stops, in the piece's own axes.</summary>
    private static (Vector3d From, Vector3d To) Axis(CutStock shape, Hole hole)
    {
        var outward = RouterFaces.Outward(hole.Face);
        var alongY = hole.Face is StockFace.MinusY or StockFace.PlusY;
        var half = (alongY ? shape.Width : shape.Thickness) / 2;
        var from = new Vector3d(hole.X, 0, 0) + (hole.Across * (alongY ? Vector3d.UnitZ : Vector3d.UnitY)) + (half * outward);
        return (from, from - ((hole.Depth ?? (2 * half)) * outward));
    }

    /// <summary>Its mouth looks towards the viewer, who stands on A's side; a through hole is seen from both.</summary>
    private static bool IsSeen(Placement placement, Hole hole) =>
        hole.Depth is null || placement.DirectionToWorld(RouterFaces.Outward(hole.Face)).X < 0;

    private static void One(Canvas canvas, ViewMap map, SheetPoint from, SheetPoint to, double radius, bool seen)
    {
        var length = Dimensions.Distance(from, to);
        if (length < radius)
        {
            canvas.Add(new SheetCircle(seen ? PageLayers.Cut : PageLayers.Hidden, map.Of(from), radius / map.Ratio));
            return;
        }

        var (dx, dy) = (-(to.Y - from.Y) * radius / length, (to.X - from.X) * radius / length);
        SheetPoint At(SheetPoint p, int side) => map.Of(p.X + (side * dx), p.Y + (side * dy));
        canvas.Line(PageLayers.Hidden, At(from, 1), At(to, 1));
        canvas.Line(PageLayers.Hidden, At(from, -1), At(to, -1));
        canvas.Line(PageLayers.Hidden, At(to, 1), At(to, -1));
    }
}
