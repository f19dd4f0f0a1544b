using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>The first view: the wide face at +Z, its outline, what lies on the far side, and what is cut into wide faces.</summary>
internal static class WideView
{
    /// <summary>Closed boundaries of the wide face that is up, in the piece's axes.</summary>
    public static ImmutableArray<ImmutableArray<SheetPoint>> Outline(Piece piece, SolidEdges edges) =>
        FlatFace.Boundary(piece.Solid, edges, FlatFace.Facing(piece.Solid, PageView.Wide.Toward), PageView.Wide);

    /// <summary>The view, with everything moved by (dx, dy).</summary>
    public static ViewDrawing Of(
        Piece piece,
        SolidEdges edges,
        ImmutableArray<ImmutableArray<SheetPoint>> outline,
        Func<SheetPoint, SheetPoint> move,
        PeopleUnits units)
    {
        var outlines = outline.Select(loop => (SheetEntity)new SheetPolyline(
            ProfileLayers.Outline, [.. loop.Select(move).Select(p => new SheetVertex(p.X, p.Y))], true));
        var far = FarEdges.Of(piece.Solid, edges, PageView.Wide);
        var features = new Features(units, move);
        var face = StickFace.Of(piece.Shape, piece.BlankLength, PageView.Wide with { Toward = -Vector3d.UnitZ });
        ViewDrawing[] parts =
        [
            new([.. outlines], []),
            new(
                [.. far.Select(e => new SheetLine(ProfileLayers.Bevel, move(e.From), move(e.To)))],
                [.. far.Select(e => LabelOf(e, move)).Distinct()]),
            .. piece.Shape.Channels.Where(c => c.Face == StockFace.MinusZ).Select(c => features.Of(c, face, ", in the far face")),
            .. piece.Shape.Holes.Where(h => h.Face == StockFace.PlusZ).Select(h => features.Of(h, h.Across, string.Empty)),
            .. piece.Shape.Holes.Where(h => h.Face == StockFace.MinusZ).Select(h => features.Of(h, h.Across, ", from the far face")),
        ];
        double[] ends = [outline.Min(l => l.Min(p => p.X)), outline.Max(l => l.Max(p => p.X))];
        return new ViewDrawing(
            [.. parts.SelectMany(p => p.Entities).Distinct()],
            [.. parts.SelectMany(p => p.Labels), .. Mitre(piece.Near, ends[0]), .. Mitre(piece.Far, ends[1])]);

        IEnumerable<Label> Mitre(EndCut cut, double x) => Math.Abs(Math.Sin(cut.Mitre)) > FlatFace.SquareTolerance
            ? [new Label(ProfileLayers.Dim, move(new SheetPoint(x, 0)).X, "Mitre " + Numbers.DegreeText(cut.Mitre))]
            : [];
    }

    private static Label LabelOf(FarEdge edge, Func<SheetPoint, SheetPoint> move) => new(
        ProfileLayers.Bevel,
        move(new SheetPoint(Math.Min(edge.From.X, edge.To.X), 0)).X,
        (edge.Origin == FaceOrigin.Channel ? "Sloped floor " : "Bevel ") + Numbers.DegreeText(edge.Tilt));
}
