using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Brace and post flat on the bench, wide face up.</summary>
internal static class StickDetail
{
    private const double Apart = 0.26;

    /// <summary>Brace and post of the right-hand side of a frame.</summary>
    public static Detail Of(DrawingContext context, int frame)
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
        SheetText Named(double x, string words) => PageText.Centered(x, map.Of(0, middle).Y - (PageText.Small / 2), words, PageText.Small, bold: true);
        canvas.Label(Named(full, $"{piece.Mark}, {piece.Section}"), Named(full, piece.Mark));
        canvas.Label(PageText.Right(Math.Min(corners[0].X, corners[3].X) - 0.001, corners[0].Y, "foot " + Cut(piece.Near), PageText.Small));
        canvas.Label(PageText.Left(Math.Max(corners[1].X, corners[2].X) + 0.0015, corners[0].Y, "head " + Cut(piece.Far), PageText.Small));
    }

    private static double Length(CutStock shape, double y) => shape.Far.XAt(y, 0) - shape.Near.XAt(y, 0);

    private static string Cut(EndCut cut) => PartTable.Cut(cut) + (cut.Wedge > 0 ? $", wedge {DrawingText.Angle(cut.Wedge)}" : "");
}
