using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>The first view: the wide face at +Z, its outline, what lies on the far side, and what is cut into wide faces.</summary>
internal static class WideView
{
    /// <summary>Closed boundaries of the wide face that is up, in the piece's axes.</summary>
    public static ImmutableArray<ImmutableArray<SheetPoint>> Outline(Piece piece, SolidEdges edges) =>
        FlatFace.Boundary(piece.Solid, edges, FlatFace.Facing(piece.Solid, PageView.Wide.Toward), PageView.Wide);

    /// <summary>The view, with everything moved by (dx, dy).</summary>
    public static ViewDrawing Draw(
        Piece piece,
        SolidEdges edges,
        ImmutableArray<ImmutableArray<SheetPoint>> outline,
        Func<SheetPoint, SheetPoint> move,
        DisplayUnits units)
    {
        var outlines = outline.Select(loop => (SheetEntity)new SheetPolyline(
            ProfileLayers.Outline, [.. loop.Select(move).Select(p => new SheetVertex(p.X, p.Y))], true));
        var far = FarEdges.Find(piece.Solid, edges, PageView.Wide);
        var features = new Features(units, move);
        var face = StickFace.Draw(piece.Shape, piece.BlankLength, PageView.Wide with { Toward = -Vector3d.UnitZ });
        ViewDrawing[] parts =
        [
            new([.. outlines, .. Way(piece.Shape, [.. outline[0].Select(move)])], []),
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

        IEnumerable<Label> Mitre(EndCut cut, double x) => Math.Abs(Elementary.Sin(cut.Mitre)) > Tolerances.InPage
            ? [new Label(ProfileLayers.Dim, move(new SheetPoint(x, 0)).X, "Miter " + Numbers.DegreeText(cut.Mitre))]
            : [];
    }

    /// <summary>The way mark's half on this face: along its upper edge, edge 1, at the near end.</summary>
    private static IEnumerable<SheetEntity> Way(CutStock shape, ImmutableArray<SheetPoint> face)
    {
        if (shape.IsRound)
        {
            return RoundWay(face);
        }

        var (width, top) = (shape.Width, face.Max(p => p.Y));
        var tail = new SheetPoint(face.Where(p => top - p.Y < Tolerances.ShortestEdge).Min(p => p.X) + (WayMark.Length / 2), top);
        return [WayMark.Draw(
            ProfileLayers.Mark, tail, tail with { X = tail.X + WayMark.Length }, tail with { Y = top - WayMark.Height(width) })];
    }

    /// <summary>Of a round stick: the line struck along the face that is up, in its middle, and the arrowhead on it.</summary>
    private static IEnumerable<SheetEntity> RoundWay(ImmutableArray<SheetPoint> face)
    {
        var middle = (face.Min(p => p.Y) + face.Max(p => p.Y)) / 2;
        var (from, to) = (face.Min(p => p.X), face.Max(p => p.X));
        var tail = new SheetPoint(from + (WayMark.Length / 2), middle);
        yield return new SheetLine(ProfileLayers.Mark, new SheetPoint(from, middle), new SheetPoint(to, middle));
        foreach (var side in (double[])[1, -1])
        {
            yield return WayMark.Draw(
                ProfileLayers.Mark, tail, tail with { X = tail.X + WayMark.Length },
                tail with { Y = middle + (side * WayMark.Height(face.Max(p => p.Y) - face.Min(p => p.Y))) });
        }
    }

    private static Label LabelOf(FarEdge edge, Func<SheetPoint, SheetPoint> move) => new(
        ProfileLayers.Bevel,
        move(new SheetPoint(Math.Min(edge.From.X, edge.To.X), 0)).X,
        (edge.Origin == FaceOrigin.Channel ? "Sloped floor " : "Bevel ") + Numbers.DegreeText(edge.Tilt));
}

/// <summary>A narrow face seen flat, drawn where it has channels or holes.</summary>
internal static class NarrowView
{
    /// <summary>The narrow faces that have something to show: the low one (underside of a base) before the high one.</summary>
    public static IEnumerable<StockFace> FacesWorthDrawing(CutStock shape) =>
        new[] { StockFace.MinusY, StockFace.PlusY }.Where(face =>
            shape.Channels.Any(c => c.Face == face) || shape.Holes.Any(h => h.Face == face));

    /// <summary>The view of one face with its upper edge at <paramref name="top"/>.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="face">Narrow face.</param>
    /// <param name="dx">From the piece's X to the page's.</param>
    /// <param name="top">Y of the upper edge on the page.</param>
    /// <param name="units">Units of the labels.</param>
    public static ViewDrawing Draw(Piece piece, StockFace face, double dx, double top, DisplayUnits units)
    {
        var view = face == StockFace.MinusY ? PageView.NarrowLow : PageView.NarrowHigh;
        var stick = StickFace.Draw(piece.Shape, piece.BlankLength, view);
        var dy = top - stick.Max(p => p.Y);
        SheetPoint Move(SheetPoint p) => new(p.X + dx, p.Y + dy);

        var features = new Features(units, Move);
        ViewDrawing[] parts =
        [
            new(
                [new SheetPolyline(ProfileLayers.Outline, [.. stick.Select(Move).Select(p => new SheetVertex(p.X, p.Y))], true)],
                [new Label(ProfileLayers.Text, 0, face == StockFace.MinusY ? "Lower narrow face" : "Upper narrow face")]),
            .. face == StockFace.PlusY ? [new([Way(piece.Shape, Move)], [])] : Array.Empty<ViewDrawing>(),
            .. piece.Shape.Channels.Where(c => c.Face == face).Select(c => features.Of(c, stick, string.Empty)),
            .. piece.Shape.Holes.Where(h => h.Face == face).Select(h => features.Of(h, view.Up.Z * h.Across, string.Empty)),
        ];
        return new ViewDrawing(
            [.. parts.SelectMany(p => p.Entities).Distinct()], [.. parts.SelectMany(p => p.Labels)]);
    }

    /// <summary>The way mark's half on edge 1, which is this face: along the arris of the wide face that is up.</summary>
    private static SheetPolyline Way(CutStock shape, Func<SheetPoint, SheetPoint> move)
    {
        var (y, z) = (shape.Width / 2, shape.Thickness / 2);
        var tail = new Vector3d(shape.Near.XAt(y, z) + (WayMark.Length / 2), y, z);
        SheetPoint At(Vector3d point) => move(PageView.NarrowHigh.Project(point));
        return WayMark.Draw(
            ProfileLayers.Mark, At(tail), At(tail with { X = tail.X + WayMark.Length }),
            At(tail with { Z = z - WayMark.Height(shape.Thickness) }));
    }
}

/// <summary>One view of a piece at its place on the page, and the labels that belong below it.</summary>
internal sealed record ViewDrawing(ImmutableArray<SheetEntity> Entities, ImmutableArray<Label> Labels)
{
    /// <summary>The smallest box around everything drawn.</summary>
    public SheetBox Box => Entities.Aggregate(SheetBox.Empty, (box, e) => box.Union(EntityBox.Of(e)));
}

/// <summary>A face of a stick laid in the page: X of the piece runs to the right, and the reader looks at the face from outside.</summary>
/// <param name="Up">Direction of the piece that points up the page.</param>
/// <param name="Toward">Direction of the piece that points at the reader, X × Up.</param>
internal readonly record struct PageView(Vector3d Up, Vector3d Toward)
{
    /// <summary>The wide face at the high end of Z.</summary>
    public static PageView Wide => new(Vector3d.UnitY, Vector3d.UnitZ);

    /// <summary>The narrow face at the low end of Y.</summary>
    public static PageView NarrowLow => new(Vector3d.UnitZ, -Vector3d.UnitY);

    /// <summary>The narrow face at the high end of Y.</summary>
    public static PageView NarrowHigh => new(-Vector3d.UnitZ, Vector3d.UnitY);

    /// <summary>Where a point of the piece falls on the page.</summary>
    public SheetPoint Project(Vector3d point) => new(point.X, Up.Dot(point));
}
