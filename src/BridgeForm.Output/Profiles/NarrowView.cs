using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

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
    public static ViewDrawing Of(Piece piece, StockFace face, double dx, double top, PeopleUnits units)
    {
        var view = face == StockFace.MinusY ? PageView.NarrowLow : PageView.NarrowHigh;
        var stick = StickFace.Of(piece.Shape, piece.BlankLength, view);
        var dy = top - stick.Max(p => p.Y);
        SheetPoint Move(SheetPoint p) => new(p.X + dx, p.Y + dy);

        var features = new Features(units, Move);
        ViewDrawing[] parts =
        [
            new(
                [new SheetPolyline(ProfileLayers.Outline, [.. stick.Select(Move).Select(p => new SheetVertex(p.X, p.Y))], true)],
                [new Label(ProfileLayers.Text, 0, face == StockFace.MinusY ? "Lower narrow face" : "Upper narrow face")]),
            .. piece.Shape.Channels.Where(c => c.Face == face).Select(c => features.Of(c, stick, string.Empty)),
            .. piece.Shape.Holes.Where(h => h.Face == face).Select(h => features.Of(h, view.Up.Z * h.Across, string.Empty)),
        ];
        return new ViewDrawing(
            [.. parts.SelectMany(p => p.Entities).Distinct()], [.. parts.SelectMany(p => p.Labels)]);
    }
}
