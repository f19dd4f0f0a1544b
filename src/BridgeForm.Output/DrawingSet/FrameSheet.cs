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

/// <summary>A typical frame on the ropes and the end frames, two to a sheet.</summary>
internal static class FrameSheet
{
    private const double SideRoom = 0.028;
    private const double BelowRoom = 0.024;
    private const double AboveRoom = 0.016;


    /// <summary>The sheets; support B has its own drawing where it does not mirror A.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var body = context.Body;
        foreach (var group in DetailMarks.Frames(context).Chunk(OnASheet(context)))
        {
            var width = (body.MaxX - body.MinX) / group.Length;
            var canvas = Canvas.Twice(body, c =>
            {
                var rest = group.Select((g, i) => One(
                    context, c, g.Frame, $"{g.Number.ToString(CultureInfo.InvariantCulture)}  {Title(context, g.Frame)}",
                    body with
                    {
                        MinX = body.MinX + (i * width),
                        MaxX = body.MinX + ((i + 1) * width) - (i + 1 < group.Length ? Between : 0),
                    })).ToList();
                rest.ForEach(draw => draw(c));
            });
            yield return new DrawnPage(
                DocumentType.Detail, string.Join("; ", group.Select(g => Title(context, g.Frame))),
                "from A towards B, square to each frame's plane", canvas.Entities)
            {
                Drawings = [.. group.Select(g => g.Number)],
            };
        }
    }

    private const double Between = 0.006;

    /// <summary>Two, or one where the rails' names would crowd at the scale of two.</summary>
    private static int OnASheet(DrawingContext context)
    {
        var (body, drawing) = (context.Body, new FrameDrawing(context, 0));
        var half = body with { MaxX = ((body.MinX + body.MaxX) / 2) - Between };
        var figures = new FrameDimensions(context, 0, drawing);
        return figures.HasRoom(Scale(context, drawing, half, Note(figures)).Ratio) ? 2 : 1;
    }

    private static string Note(FrameDimensions figures) =>
        "seen from A towards B, in the frame's own plane; deck, rails and cap cut at the frame; \"posts\" and \"rails\": clear "
            + "between them, at the deck and at the lowest rail; \"clear width\": between what stands furthest in; to the cap: its top. "
            + figures.Note() + ". " + DrawnWay.Words;

    private static DrawingScale Scale(DrawingContext context, FrameDrawing drawing, SheetBox room, string note) => DrawingScale.Fitting(
        context.Scales, drawing.Box.MaxX - drawing.Box.MinX, drawing.Box.MaxY - drawing.Box.MinY, room.MaxX - room.MinX - (2 * SideRoom),
        room.MaxY - room.MinY - BelowRoom - AboveRoom - Captions.HeightOf(note, room.MaxX - room.MinX));

    private static string Title(DrawingContext context, int frame)
    {
        var poses = context.Layout.Poses;
        var mirrored = frame == 0 && !context.EndsDiffer ? ", and mirrored " + poses[^1].Name : "";
        var kind = frame > 0 && frame < context.Layout.Bays ? "Frame on the ropes" : "End frame";
        return $"{kind} ({poses[frame].Name}{mirrored})";
    }

    /// <summary>Sets what has its place; the answer draws the frame and its labels, which keep clear of that.</summary>
    private static Action<Canvas> One(DrawingContext context, Canvas canvas, int frame, string title, SheetBox room)
    {
        var drawing = new FrameDrawing(context, frame);
        var figures = new FrameDimensions(context, frame, drawing);
        var note = Note(figures);
        var caption = Captions.HeightOf(note, room.MaxX - room.MinX);
        var (width, height) = (drawing.Box.MaxX - drawing.Box.MinX, drawing.Box.MaxY - drawing.Box.MinY);
        var high = room.MaxY - room.MinY - BelowRoom - AboveRoom - caption;
        var scale = Scale(context, drawing, room, note);
        var left = room.MinX + ((room.MaxX - room.MinX - (width / scale.Ratio)) / 2);
        var bottom = room.MinY + caption + BelowRoom + ((high - (height / scale.Ratio)) / 2);
        var map = ViewMap.Placing(drawing.Box, left, bottom, scale.Ratio);
        canvas.Caption(room.MinX, room.MinY + caption, title, note, scale, context.Text, room.MaxX - room.MinX);
        figures.Enlarged(canvas, map);
        return c =>
        {
            drawing.Draw(c, map);
            drawing.DrawWays(c, map);
            FrameHoles.Draw(context, c, map, drawing, frame);
            FramePlates.Draw(context, c, map, drawing, frame);
            figures.Draw(c, map);
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

    /// <summary>Parts of a frame and of the bay that is drawn with it.</summary>
    public static FlowTable Parts(DrawingContext context, int frame)
    {
        var (poses, bays) = (context.Layout.Poses, context.Layout.Bays);
        var bay = context.BayOf(frame);
        return PartTable.Lay(
            context, $"Parts of {poses[frame].Name} and of bay {FramePoses.BayName(bay, bays)}",
            context.Shapes.Ids(frame).Concat(context.Shapes.Ids(context.Shapes.BayGroup(bay))),
            frame == 0 && !context.EndsDiffer ? PartTable.OfMirrored($"{poses[^1].Name}, {FramePoses.BayName(bays, bays)}") : "");
    }

    /// <summary>Heights on the posts, a column a frame.</summary>
    public static FlowTable Heights(DrawingContext context, IReadOnlyList<int> frames)
    {
        var names = frames.Select(f => context.Layout.Poses[f].Name).ToList();
        var all = GuardHeights.Measure(context.Model);
        var heights = names.Select(n => all.First(h => h.Frames.Contains(n, StringComparer.Ordinal))).ToList();
        var most = heights.Max(h => h.Rails.Length);
        FlowRow Row(string line, Func<GuardHeights, double?> height) =>
            new([line, .. heights.Select(h => height(h) is { } up ? context.Text.Words.Size(up) : "")]);
        return new FlowTable(
            "Heights on the post",
            "Up along the post's inner face from the base's top, at the middle of the post's thickness.",
            [new("Line"), .. names.Select(n => new FlowColumn(n, Figures: true))],
            [
                Row("deck's surface", h => h.Deck),
                .. Enumerable.Range(0, most).Select(i => Row(
                    FormattableString.Invariant($"rail {i + 1}, center"), h => i < h.Rails.Length ? h.Rails[i] : null)),
                Row("post's head", h => h.Head),
            ]);
    }

    /// <summary>Levels in the frames, a column each.</summary>
    public static FlowTable Levels(DrawingContext context, IReadOnlyList<int> frames)
    {
        var (layout, words) = (context.Layout, context.Text.Words);
        FlowRow Row(string what, Func<int, string> value) => new([what, .. frames.Select(value)]);
        var lifted = layout.Parameters.Deck.Stringer is null ? "boards lifted off the base by" : "stringers lifted off the base by";
        return new FlowTable(
            "Levels in the frames",
            "",
            [new("What"), .. frames.Select(f => new FlowColumn(layout.Poses[f].Name, Figures: true))],
            [
                Row("slope of the rope", f => DrawingText.Slope(layout.Poses[f].Slope)),
                Row("channel depth at the middle", f => words.Size(layout.Levels[f].ChannelDepth)),
                Row("slope of the channel's floor", f => DrawingText.Slope(Elementary.Atan(layout.Levels[f].FloorSlope))),
                Row("base's bottom below the rope's axis", f => words.Size(-layout.Levels[f].Bottom)),
                Row("base's top above the rope's axis", f => words.Size(layout.Levels[f].Top)),
                Row(lifted, f => words.Size(layout.Deck.Lifts[f])),
            ]);
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
