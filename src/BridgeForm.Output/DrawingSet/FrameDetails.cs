using BridgeForm.Output.Drawing;
using BridgeForm.Project;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Enlarged parts of the frame's drawing: feet and head.</summary>
internal static class FrameDetails
{
    private const double Quarter = Math.PI / 2;

    /// <summary>Feet of the right post and brace on the base.</summary>
    public static Detail Feet(DrawingContext context, int frame)
    {
        var (p, level) = (context.Layout.Parameters, context.Layout.Levels[frame]);
        var (post, brace) = (p.Frames.Post, p.Frames.Brace);
        var end = p.Frames.Base.Length / 2;
        var tall = Math.Min(post.Length * 0.8, (brace.Length * Math.Cos(brace.Lean)) + 0.05);
        var window = new SheetBox(post.Foot - 0.06, level.Bottom - 0.004, end + 0.01, level.Top + tall);
        return new Detail(window, "Feet of post and brace", $"right-hand side of {context.Layout.Poses[frame].Name}, seen from A", (canvas, map) =>
        {
            new FrameDrawing(context, frame).Draw(canvas, map, window);
            var text = context.Text;
            SheetPoint Top(double z) => map.Of(z, level.Top);
            var y = map.Of(0, level.Bottom).Y - 0.007;
            var (outer, inner) = (post.Foot + (post.Section.Width / Math.Cos(post.Lean)), brace.Foot - (brace.Section.Width / Math.Cos(brace.Lean)));
            canvas.LevelChain(
                y,
                [Top(post.Foot), Top(outer), Top(inner), Top(brace.Foot), map.Of(end, level.Bottom)],
                [text.Size(outer - post.Foot), text.Size(inner - outer), text.Size(brace.Foot - inner), text.Size(end - brace.Foot)]);
            canvas.Angle(Top(post.Foot), Quarter - post.Lean, Quarter, 0.030, DrawingText.Angle(post.Lean));
            canvas.Angle(Top(brace.Foot), Quarter, Quarter + brace.Lean, 0.022, DrawingText.Angle(brace.Lean));
            Meeting(canvas, map, context, level.Top);
        });
    }

    /// <summary>Head of the right post with its cap.</summary>
    public static Detail Head(DrawingContext context, int frame)
    {
        var (p, level) = (context.Layout.Parameters, context.Layout.Levels[frame]);
        var post = p.Frames.Post;
        var head = level.Top + (post.Length * Math.Cos(post.Lean));
        var middle = PostAxis.Head(post);
        var half = Math.Max(p.Guard.Cap.Width, post.Section.Width) / 2;
        var window = new SheetBox(middle - half - 0.03, head - 0.20, middle + half + 0.02, head + p.Guard.Cap.Thickness + 0.01);
        var square = p.Frames.Stance == Stance.Square;
        return new Detail(window, "Head of post and cap", $"right-hand side of {context.Layout.Poses[frame].Name}, seen from A", (canvas, map) =>
        {
            var drawing = new FrameDrawing(context, frame);
            drawing.Draw(canvas, map, window);
            var text = context.Text;
            var cap = drawing.Stubs["cap-right"];
            var faces = post.Section.Width / 2 / Math.Cos(post.Lean);
            var y = map.Of(0, cap.MaxY).Y + 0.006;
            canvas.LevelChain(
                y,
                [map.Of(cap.MinX, cap.MaxY), map.Of(middle - faces, cap.MaxY), map.Of(middle + faces, cap.MaxY), map.Of(cap.MaxX, cap.MaxY)],
                [text.Size(middle - faces - cap.MinX), text.Size(2 * faces), text.Size(cap.MaxX - middle - faces)]);
            canvas.Upright(map.Of(cap.MaxX, cap.MinY), map.Of(cap.MaxX, cap.MaxY), map.Of(cap.MaxX, 0).X + 0.007, text.Size(p.Guard.Cap.Thickness));
            var end = context.Shapes.PieceAt(context.Layout.Poses[frame].Name + "/post-right");
            canvas.Leader(
                map.Of(middle + (faces * 0.9), head - 0.004),
                new SheetPoint(map.Of(window.MaxX, 0).X - 0.004, map.Of(0, head).Y - 0.012),
                end is null ? "head cut" : "head " + PartTable.Cut(end.Far));
            canvas.Leader(
                map.Of(cap.MinX + 0.01, (cap.MinY + cap.MaxY) / 2),
                new SheetPoint(map.Of(cap.MinX, 0).X - 0.006, map.Of(0, cap.MinY).Y - 0.007),
                square ? "flat on the heads" : "follows the caps",
                toLeft: true);
            Axis(canvas, map, post, level.Top, head);
        });
    }

    private static void Axis(Canvas canvas, ViewMap map, PostParameters post, double foot, double head)
    {
        var (from, to) = (map.Of(PostAxis.Head(post) - (0.19 * Math.Tan(post.Lean)), head - 0.19), map.Of(PostAxis.Head(post), head));
        canvas.Line(PageLayers.Layout, from, to);
        canvas.Angle(from, Quarter - post.Lean, Quarter, 0.026, DrawingText.Angle(post.Lean));
        _ = foot;
    }

    /// <summary>Where the brace's long edge meets the post, and the angle between them.</summary>
    private static void Meeting(Canvas canvas, ViewMap map, DrawingContext context, double top)
    {
        var (post, brace) = (context.Layout.Parameters.Frames.Post, context.Layout.Parameters.Frames.Brace);
        var n = top + (brace.Length * Math.Cos(brace.Lean));
        var at = map.Of(brace.Foot - (brace.Length * Math.Sin(brace.Lean)), n);
        canvas.Upright(map.Of(brace.Foot, top), at, map.Of(brace.Foot, 0).X + 0.018, context.Text.Size(n - top));
        canvas.Leader(
            map.Of(brace.Foot - (brace.Length * 0.97 * Math.Sin(brace.Lean)) - 0.004, top + (brace.Length * 0.97 * Math.Cos(brace.Lean)) - 0.004),
            new SheetPoint(map.Of(brace.Foot, 0).X + 0.001, at.Y + 0.006),
            $"{DrawingText.Angle(brace.Lean + post.Lean)} between them");
    }
}
