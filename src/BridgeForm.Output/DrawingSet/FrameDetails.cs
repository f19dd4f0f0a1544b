using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Enlarged parts of the frame's drawing: feet and head.</summary>
internal static class FrameDetails
{
    private const double Quarter = Math.PI / 2;

    /// <summary>Farther from the brace's foot the base's end is left out, metres: about a hand's breadth.</summary>
    private const double FarthestEnd = 0.15;

    /// <summary>Feet of the right post and brace on the base.</summary>
    public static Detail Feet(DrawingContext context, int frame)
    {
        var (p, level) = (context.Layout.Parameters, context.Layout.Levels[frame]);
        var (post, brace) = (p.Frames.Post, p.Frames.Brace);
        var end = p.Frames.Base.Length / 2;
        const double tall = 0.20;

        // A base that goes on far beyond the brace is shown broken off: the feet are what this detail is for.
        var isWhole = end - brace.Foot <= FarthestEnd;
        var window = new SheetBox(post.Foot - 0.05, level.Bottom - 0.006, isWhole ? end + 0.006 : brace.Foot + 0.05, level.Top + tall);
        return new Detail(window, "Feet of post and brace", Seen(context, frame), (canvas, map) =>
        {
            new FrameDrawing(context, frame).Draw(canvas, map, window);
            var text = context.Text;
            SheetPoint Top(double z) => map.Of(z, level.Top);
            var y = map.Of(0, window.MinY).Y - 0.006;
            var (outer, inner) =
                (post.Foot + (post.Section.Width / Elementary.Cos(post.Lean)),
                    brace.Foot - (brace.Section.Width / Elementary.Cos(brace.Lean)));
            canvas.LevelChain(
                y,
                [
                    Top(post.Foot), Top(outer), Top(inner), Top(brace.Foot),
                    .. isWhole ? [map.Of(end, level.Bottom)] : Array.Empty<SheetPoint>(),
                ],
                [
                    text.Size(outer - post.Foot), text.Size(inner - outer), text.Size(brace.Foot - inner),
                    .. isWhole ? [text.Size(end - brace.Foot)] : Array.Empty<string>(),
                ]);
            canvas.Level(Top(post.Foot), Top(brace.Foot), y - Dimensions.Row, text.Size(brace.Foot - post.Foot));
            canvas.Angle(Top(outer), Quarter - post.Lean, Quarter, 0.034, DrawingText.Angle(post.Lean));
            canvas.Angle(Top(brace.Foot), Quarter, Quarter + brace.Lean, 0.034, DrawingText.Angle(brace.Lean));
        });
    }

    /// <summary>Where the right brace meets the post.</summary>
    public static Detail BraceHead(DrawingContext context, int frame)
    {
        var (p, level) = (context.Layout.Parameters, context.Layout.Levels[frame]);
        var (post, brace) = (p.Frames.Post, p.Frames.Brace);
        var rise = brace.Length * Elementary.Cos(brace.Lean);
        var tip = brace.Foot - (brace.Length * Elementary.Sin(brace.Lean));
        var heel = rise - (brace.Section.Width / Elementary.Sin(brace.Lean + post.Lean) * Elementary.Cos(post.Lean));
        var window = new SheetBox(tip - (post.Section.Width * 1.6), level.Top + heel - 0.05, tip + 0.10, level.Top + rise + 0.05);
        return new Detail(window, "Head of the brace on the post", Seen(context, frame), (canvas, map) =>
        {
            new FrameDrawing(context, frame, withBay: false).Draw(canvas, map, window);
            var text = context.Text;
            var at = map.Of(tip, level.Top + rise);
            var right = map.Of(window.MaxX, 0).X;
            canvas.Leader(at, new SheetPoint(right - 0.006, at.Y + 0.004), text.Size(rise) + " above the base's top");
            var low = map.Of(tip - ((rise - heel) * Elementary.Tan(post.Lean)), level.Top + heel);
            canvas.Between(
                low, at, (post.Section.Width / map.Ratio) + 0.006, text.Size(brace.Section.Width / Elementary.Sin(brace.Lean + post.Lean)));
            canvas.Angle(at, (3 * Quarter) - post.Lean, (3 * Quarter) + brace.Lean, 0.030, DrawingText.Angle(brace.Lean + post.Lean));
            var cut = context.Shapes.PieceAt(new PartId(context.Layout.Poses[frame].Name, Role.Brace, Side.Right).ToString());
            canvas.Leader(
                map.Of(tip + (0.4 * (low.X - at.X) * map.Ratio), level.Top + rise + (0.4 * (heel - rise))),
                new SheetPoint(right - 0.004, at.Y - 0.012),
                "cut " + (cut is null ? "" : PartTable.Cut(cut.Far)));
        });
    }

    /// <summary>Head of the right post with its cap.</summary>
    public static Detail Head(DrawingContext context, int frame)
    {
        var (p, level) = (context.Layout.Parameters, context.Layout.Levels[frame]);
        var post = p.Frames.Post;
        var head = level.Top + (post.Length * Elementary.Cos(post.Lean));
        var middle = PostAxis.Head(post);
        var half = Math.Max(p.Guard.Cap.Width, post.Section.Width) / 2;
        var window = new SheetBox(middle - half - 0.03, head - 0.20, middle + half + 0.02, head + p.Guard.Cap.Thickness + 0.01);
        var square = p.Frames.Stance == Stance.Square && frame > 0 && frame < context.Layout.Bays;
        return new Detail(window, "Head of post and cap", Seen(context, frame), (canvas, map) =>
        {
            var drawing = new FrameDrawing(context, frame);
            drawing.Draw(canvas, map, window);
            var text = context.Text;
            var cap = drawing.StubsOf(Role.Cap, Side.Right)[0].Box;
            var faces = post.Section.Width / 2 / Elementary.Cos(post.Lean);
            var y = map.Of(0, cap.MaxY).Y + 0.006;
            canvas.LevelChain(
                y,
                [
                    map.Of(cap.MinX, cap.MaxY), map.Of(middle - faces, cap.MaxY), map.Of(middle + faces, cap.MaxY),
                    map.Of(cap.MaxX, cap.MaxY),
                ],
                [text.Size(middle - faces - cap.MinX), text.Size(2 * faces), text.Size(cap.MaxX - middle - faces)]);
            canvas.Upright(
                map.Of(cap.MaxX, cap.MinY), map.Of(cap.MaxX, cap.MaxY), map.Of(cap.MaxX, 0).X + 0.007, text.Size(p.Guard.Cap.Thickness));
            var end = context.Shapes.PieceAt(new PartId(context.Layout.Poses[frame].Name, Role.Post, Side.Right).ToString());
            canvas.Leader(
                map.Of(middle + (faces * 0.9), head - 0.004),
                new SheetPoint(map.Of(window.MaxX, 0).X - 0.004, map.Of(0, head).Y - 0.012),
                end is null ? "head cut" : "head " + PartTable.Cut(end.Far));
            canvas.Leader(
                map.Of(cap.MinX + 0.01, (cap.MinY + cap.MaxY) / 2),
                new SheetPoint(map.Of(cap.MinX, 0).X - 0.006, map.Of(0, cap.MinY).Y - 0.007),
                square ? "flat on the heads" : "follows the caps",
                toLeft: true);
            Axis(canvas, map, post, head);
        });
    }

    private static void Axis(Canvas canvas, ViewMap map, PostParameters post, double head)
    {
        var (from, to) = (map.Of(PostAxis.Head(post) - (0.19 * Elementary.Tan(post.Lean)), head - 0.19), map.Of(PostAxis.Head(post), head));
        canvas.Line(PageLayers.Layout, from, to);
        canvas.Angle(from, Quarter - post.Lean, Quarter, 0.026, DrawingText.Angle(post.Lean));
    }

    private static string Seen(DrawingContext context, int frame) => $"right-hand side of {context.Layout.Poses[frame].Name}, seen from A";
}
