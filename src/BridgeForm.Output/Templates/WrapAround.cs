using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>
/// The four sides of the stock near a cut, unrolled: paper folded round the board marks the cut on every face. The piece's X
/// runs up the page; u of <see cref="UnrolledStock"/> runs from right to left, so that the print is on the outside.
/// </summary>
internal static class WrapAround
{
    /// <summary>Paper that laps over the first face, metres.</summary>
    public const double Flap = 0.008;

    private const double Kept = 0.022;
    private const double Waste = 0.012;

    // The way mark, shorter than on the wood; between it and the cut.
    private const double Way = 0.014;
    private const double Aside = 0.004;

    private static readonly StockFace[] Order = [StockFace.PlusZ, StockFace.PlusY, StockFace.MinusZ, StockFace.MinusY];

    /// <summary>The template of one end.</summary>
    public static TemplateBlock Draw(CutUse use, PieceEnd end, DisplayUnits units) => new(
        $"{use.Marks} · {use.EndName(end)} · wrap-around",
        [
            .. use.Notes(units),
            "Cut out, fold on the dashed lines, wrap round the board with the print outside and the folds on its edges; the flap laps "
                + "over the first face. Mark the red line on all four sides; keep the side with the mark.",
        ],
        [.. Entities(use.First, end)]);

    /// <summary>The cut line on the paper, from u = 0 over the flap: (u, x), a corner at every fold.</summary>
    public static ImmutableArray<(double U, double X)> CutLine(UnrolledStock stock, Plane plane) =>
    [
        .. Order.Select(f => (stock.Begin(f), stock.CutAt(plane, stock.Begin(f)))),
        (stock.Girth, stock.CutAt(plane, 0)),
        (stock.Girth + Flap, stock.CutAt(plane, Flap)),
    ];

    /// <summary>Words for the faces, in the order they follow round the stick.</summary>
    public static string FaceName(StockFace face) => face switch
    {
        StockFace.PlusZ => "face up",
        StockFace.PlusY => "edge 1",
        StockFace.MinusZ => "face down",
        StockFace.MinusY => "edge 2",
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "No such face."),
    };

    private static IEnumerable<SheetEntity> Entities(Piece piece, PieceEnd end)
    {
        var stock = new UnrolledStock(piece.Shape.Width, piece.Shape.Thickness);
        var line = CutLine(stock, piece.Plane(end));
        var (min, max) = (line.Min(p => p.X), line.Max(p => p.X));
        var near = end == PieceEnd.Near;
        var (low, high) = near ? (min - Waste, max + Kept) : (min - Kept, max + Waste);
        var width = stock.Girth + Flap;
        SheetPoint P(double u, double x) => new(width - u, x);
        SheetLine Line(string layer, double u1, double x1, double u2, double x2) => new(layer, P(u1, x1), P(u2, x2));

        yield return new SheetPolyline(
            PageLayers.Dim,
            [.. new[] { P(0, low), P(width, low), P(width, high), P(0, high) }.Select(p => new SheetVertex(p.X, p.Y))],
            Closed: true);
        foreach (var u in Order.Skip(1).Select(stock.Begin).Append(stock.Girth))
        {
            yield return Line(PageLayers.Fold, u, low, u, high);
        }

        yield return new SheetPolyline(
            PageLayers.Accent, [.. line.Select(p => P(p.U, p.X)).Select(p => new SheetVertex(p.X, p.Y))], Closed: false);
        var (keep, waste) = near ? (high, low) : (low, high);
        var (arris, tail) = (stock.Begin(StockFace.PlusY), near ? keep - Kept + Aside : keep + Kept - Aside - Way);
        foreach (var foot in (double[])[arris - WayMark.Height(stock.Width), arris + WayMark.Height(stock.Thickness)])
        {
            yield return WayMark.Draw(PageLayers.Layout, P(arris, tail), P(arris, tail + Way), P(foot, tail));
        }

        foreach (var face in Order)
        {
            var middle = P(stock.Begin(face) + (stock.Across(face) / 2), 0).X;
            yield return PageText.Centered(middle, near ? keep - 0.005 : keep + 0.003, FaceName(face), PageText.Small);
        }

        var wide = P(stock.Across(StockFace.PlusZ) / 2, 0).X;
        yield return PageText.Centered(wide, near ? keep - 0.012 : keep + 0.009, piece.Mark, PageText.Large, bold: true);
        yield return PageText.Centered(wide, near ? waste + 0.002 : waste - 0.004, "waste", PageText.Small);
    }
}
