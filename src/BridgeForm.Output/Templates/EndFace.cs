using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>The end of a piece at true size, seen on its face that is up: the cut, the cut on the far face, long and short point.</summary>
internal static class EndFace
{
    /// <summary>How much of the uncut piece is shown beyond the cut, metres.</summary>
    private const double Kept = 0.045;

    /// <summary>Stock shown where the waste is, metres.</summary>
    private const double Waste = 0.012;

    /// <summary>Mitres that show no long and short point on paper: less than this along the piece, metres.</summary>
    private const double Visible = 0.0005;

    /// <summary>A dimension shorter than this has no room for its figures, metres.</summary>
    private const double DimensionRoom = 0.009;

    /// <summary>The template of one end.</summary>
    public static TemplateBlock Draw(CutUse use, PieceEnd end, DisplayUnits units)
    {
        var piece = use.First;
        var cut = piece.Cut(end);
        return new TemplateBlock(
            $"{use.Marks} · {use.EndName(end)} · face",
            [
                .. use.Notes(units),
                $"Miter {Numbers.DegreeText(cut.Mitre)}, bevel {Numbers.DegreeText(cut.Bevel)}, line on the edge "
                    + $"{Numbers.DegreeText(cut.Edge)}. "
                    + (Reach(cut, piece.Shape, units) + " Full line: cut on this face; dashed: on the far face."),
                "Lay it on the face that is up, its upper line on edge 1, the waste over the end."
                    + (CutWays.FromBothFaces(cut, piece.Shape)
                        ? " Then square the line across both edges and mark the other face from there: the saw goes "
                            + $"{units.Length(CutWays.CircularDepth)} deep, so it cuts from both." : string.Empty),
            ],
            [.. new View(piece, end).Entities(units)]);
    }

    /// <summary>How the saw makes a cut.</summary>
    public static string Reach(EndCut cut, CutStock stock, DisplayUnits units) =>
        cut.InReach ? "In reach of the saw."
        : !cut.NeedsTemplate
        ? $"Out of reach: saw at {Numbers.DegreeText(Math.Abs(cut.Mitre) - cut.Wedge)} and block of {Numbers.DegreeText(cut.Wedge)}."
        : $"Out of reach of the miter saw: {CutWays.Words(cut, stock)}.";

    /// <summary>X runs to the right; the drawing keeps the piece's own axes.</summary>
    private readonly struct View(Piece piece, PieceEnd end)
    {
        private readonly double _half = piece.Shape.Width / 2;
        private readonly double _sign = end == PieceEnd.Near ? 1 : -1;

        private double X(double y, double side) => piece.Plane(end).XAt(y, side * piece.Shape.Thickness / 2);

        public IEnumerable<SheetEntity> Entities(DisplayUnits units)
        {
            double low = X(-_half, 1), high = X(_half, 1);
            double farLow = X(-_half, -1), farHigh = X(_half, -1);
            double[] all = [low, high, farLow, farHigh];
            var (first, last) = (_sign > 0 ? all.Min() : all.Max(), _sign > 0 ? all.Max() : all.Min());
            var (outer, inner) = (first - (_sign * Waste), last + (_sign * Kept));
            return
            [
                .. Edges(low, high, outer, inner),
                Line(PageLayers.Accent, low, -_half, high, _half),
                .. Math.Abs(farLow - low) + Math.Abs(farHigh - high) > Visible
                    ? [Line(PageLayers.Hidden, farLow, -_half, farHigh, _half)]
                    : Array.Empty<SheetEntity>(),
                .. Grain(last + (_sign * 0.010), inner),
                .. IsPrinted(high - low, units) ? Points(low, high, units) : [],
                Way(high),
            ];
        }

        /// <summary>Long edges: of the piece in full lines, of the waste in thin ones; the break at the inner end.</summary>
        private IEnumerable<SheetEntity> Edges(double low, double high, double outer, double inner)
        {
            yield return Line(PageLayers.Cut, low, -_half, inner, -_half);
            yield return Line(PageLayers.Cut, high, _half, inner, _half);
            yield return Line(PageLayers.Dim, low, -_half, outer, -_half);
            yield return Line(PageLayers.Dim, high, _half, outer, _half);
            yield return Line(PageLayers.Fold, inner, -_half, inner, _half);
        }

        /// <summary>The way mark's half on this face, along edge 1 on the kept wood, its tip towards the far end.</summary>
        private SheetPolyline Way(double cut)
        {
            var tail = new SheetPoint(cut + (_sign > 0 ? WayMark.Length / 2 : -1.5 * WayMark.Length), _half);
            return WayMark.Draw(
                PageLayers.Layout, tail, tail with { X = tail.X + WayMark.Length }, tail with { Y = _half - WayMark.Height(2 * _half) });
        }

        /// <summary>Which way the grain runs, on the kept wood.</summary>
        private IEnumerable<SheetEntity> Grain(double from, double inner)
        {
            var (a, b, y) = (Math.Min(from, inner) + 0.003, Math.Max(from, inner) - 0.003, -_half / 3);
            yield return Line(PageLayers.Dim, a, y, b, y);
            foreach (var (tip, way) in new[] { (a, 1), (b, -1) })
            {
                yield return Line(PageLayers.Dim, tip, y, tip + (way * 0.0025), y + 0.001);
                yield return Line(PageLayers.Dim, tip, y, tip + (way * 0.0025), y - 0.001);
            }

            yield return PageText.Centered((a + b) / 2, y + 0.0015, "grain", PageText.Small);
            yield return PageText.Centered((a + b) / 2, (_half / 3) + 0.001, piece.Mark, PageText.Large, bold: true);
        }

        /// <summary>A distance that prints as nothing has no points to be told apart.</summary>
        private static bool IsPrinted(double along, DisplayUnits units) =>
            !string.Equals(units.Length(Math.Abs(along)), units.Length(0), StringComparison.Ordinal);

        /// <summary>Long and short point, and the distance between them along the piece.</summary>
        private IEnumerable<SheetEntity> Points(double low, double high, DisplayUnits units)
        {
            var lowIsLong = (low - high) * _sign < 0;
            var (along, room) = (units.Length(Math.Abs(high - low)), Math.Abs(high - low) > DimensionRoom);
            var shortPoint = room ? "short point" : $"short point, {along} back";
            yield return Named(low, -_half - 0.004, lowIsLong ? "long point" : shortPoint, room ? high : null);
            yield return Named(high, _half + 0.002, lowIsLong ? shortPoint : "long point", null);
            if (!room)
            {
                yield break;
            }

            yield return new SheetDimension(
                PageLayers.Dim,
                new SheetPoint(Math.Min(low, high), -_half),
                new SheetPoint(Math.Max(low, high), -_half),
                new SheetPoint(low, -_half - 0.011),
                PageText.Small,
                along);
        }

        /// <summary>Words beside a point, over the kept wood's edge; over the waste's where a witness line would cross them.</summary>
        private SheetText Named(double x, double y, string words, double? witness)
        {
            const double gap = 0.001;
            var width = PageText.Width(words, PageText.Small) + (2 * gap);
            var isCrossed = witness is { } line && (line - x) * _sign > 0 && Math.Abs(line - x) < width;
            return _sign > 0 != isCrossed
                ? PageText.Left(x + gap, y, words, PageText.Small)
                : PageText.Right(x - gap, y, words, PageText.Small);
        }

        private static SheetLine Line(string layer, double x1, double y1, double x2, double y2) =>
            new(layer, new SheetPoint(x1, y1), new SheetPoint(x2, y2));
    }
}
