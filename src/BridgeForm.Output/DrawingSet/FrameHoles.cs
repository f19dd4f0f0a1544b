using BridgeForm.Output.Drawing;
using BridgeForm.Output.Router;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

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
                One(canvas, map, drawing.Of(placement.ToWorld(from)), drawing.Of(placement.ToWorld(to)), hole.Diameter / 2, IsSeen(placement, hole));
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
                "In every part of the kind, left and right as mirror images. From the long point of the named end. Across from the middle of the face: "
                    + "on the wide face of posts and braces outward from the bridge's middle, on their top and bottom towards B; on a base's side up, on its top and bottom towards A.",
                [new("In"), new("Face"), new("From"), new("Across", Figures: true), new("Diameter", Figures: true), new("Depth", Figures: true)],
                [.. holes.Select(h => Row(h, context.Text))]);
    }

    private static FlowRow Row(HoleParameters hole, DrawingText text) => new(
    [
        RoleTable.Of(hole.Part).Name,
        hole.Face.ToString().ToLowerInvariant(),
        $"{text.Size(hole.FromEnd)} from the {(hole.FromFarEnd ? RoleTable.Of(hole.Part).Ends.ShopFar : RoleTable.Of(hole.Part).Ends.ShopNear)}",
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
