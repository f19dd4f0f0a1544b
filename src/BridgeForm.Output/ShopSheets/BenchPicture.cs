using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.ShopSheets;

/// <summary>
/// A cut along the template's line, off the mitre saw: the stick with its face up, one to five, the line, what falls off, the guide of a
/// hand-held saw or the block that starts a hand saw, and the clamps. Common practice, no source.
/// </summary>
internal static class BenchPicture
{
    // Metres of wood: how much of the stick and of what falls off is shown, and from the line to the guide. The saw's own base decides
    // the last; it is drawn for a common one.
    private const double Shown = 0.320;
    private const double OffCut = 0.090;
    private const double Base = 0.115;
    private const double GuideWide = 0.025;
    private const double Beyond = 0.060;
    private const double Clamp = 0.0025;

    /// <summary>What is done, a sentence.</summary>
    public static string Steps(CutWay way, HoldParameters hold, DisplayUnits units) => way switch
    {
        CutWay.CircularSaw => "Circular saw: mark the line by its template while the piece is part of a stick that lies clamped on "
            + $"the bench, no clamp nearer to the line than {units.Length(hold.Clear)}. Clamp a straight guide along the line, on the "
            + "piece that stays, as far off as the saw's base is wide from blade to edge (measure it on your saw, and try it on scrap). "
            + "The kerf lies in what falls off, which hangs free. Where the guide lies beside the stick, a scrap as thick as the stick "
            + "lies under it and the saw's base.",
        CutWay.TaperJig => "Table saw: screw or clamp the stick in a taper jig with the template's line along the jig's edge; the "
            + "jig runs along the fence, hands on it and behind the blade.",
        CutWay.BandSaw => "Band saw: mark the line by its template; the stick lies flat, carried on both sides; follow the line "
            + "from the waste side.",
        _ => "Hand saw: mark the line by its template and square it round; clamp the stick, and a straight block along the line to start "
            + "the saw against; saw in the waste, watch the line on two faces, and plane to it.",
    };

    /// <summary>The picture of an end, in the piece's axes: face up, edge 1 above.</summary>
    public static ImmutableArray<SheetEntity> Draw(SawCut cut, ShopParameters shop, DisplayUnits units)
    {
        var plan = new Plan(cut, shop);
        ImmutableArray<SheetEntity> drawn = [.. plan.Stick(), .. plan.Guide()];
        var box = PageBox.Of(drawn);
        return
        [
            .. drawn,
            PageText.Left(
                box.MinX, box.MinY - 0.005,
                $"Drawn as {cut.Piece.Mark} lies, {SawSetup.EndName(cut)} end, the first row: face up, edge 1 above"
                    + (cut.FromBothFaces ? $"; {units.Length(cut.Piece.Shape.Thickness)} thick: marked on and cut from both faces" : ""),
                PageText.Small),
        ];
    }

    private sealed class Plan(SawCut cut, ShopParameters shop)
    {
        private readonly CutStock _stock = cut.Piece.Shape;
        private readonly Plane _end = cut.Piece.Plane(cut.End);

        // +1 where the wood that stays lies to the right of the line.
        private readonly double _way = cut.End == PieceEnd.Near ? 1 : -1;

        /// <summary>From the line's inner end along the wood to the clamp, whose near side is clear square from the line.</summary>
        private double Square => ((shop.Hold.Clear + (shop.Hold.Clamp / 2)) / Elementary.Cos(cut.Piece.Cut(cut.End).Mitre))
            - (Half * Elementary.Tan(Math.Abs(cut.Piece.Cut(cut.End).Mitre)));

        private double Half => _stock.Width / 2;

        private double X(double y, double side = 1) => _end.XAt(y, side * _stock.Thickness / 2);

        // Of the slanting line, where the wood that stays begins and what falls off ends.
        private double Inner => _way * Math.Max(_way * X(Half), _way * X(-Half));

        private double Outer => _way * Math.Min(_way * X(Half), _way * X(-Half));

        private SheetPoint At(double x, double y) => new((x - X(0)) * SawPlan.Scale, y * SawPlan.Scale);

        private SheetLine Line(string layer, double x1, double y1, double x2, double y2) => new(layer, At(x1, y1), At(x2, y2));

        public IEnumerable<SheetEntity> Stick()
        {
            var held = Inner + (_way * Square);
            var (stay, off) = (Inner + (_way * Math.Max(Shown, Square + Beyond)), Outer - (_way * OffCut));
            foreach (var y in (double[])[-Half, Half])
            {
                yield return Line(PageLayers.Cut, X(y), y, stay, y);
                yield return Line(PageLayers.Hidden, X(y), y, off, y);
            }

            yield return Line(PageLayers.Fold, stay, -Half, stay, Half);
            yield return Line(PageLayers.Accent, X(-Half), -Half, X(Half), Half);
            if (CutKeys.Leans(cut.Bevel))
            {
                yield return Line(PageLayers.Hidden, X(-Half, -1), -Half, X(Half, -1), Half);
            }

            yield return PageText.Centered(
                At(Outer - (_way * OffCut / 2), 0).X, -0.001, "offcut", PageText.Small, layer: PageLayers.Accent);
            var clamp = At(held, 0);
            yield return new SheetCircle(PageLayers.Drill, clamp, Clamp);
            yield return PageText.Centered(clamp.X, At(0, -Half).Y - 0.004, "clamp, work", PageText.Small);
            var tail = At(stay - (_way * Beyond) - 0.025, Half);
            yield return WayMark.Draw(
                PageLayers.Cut, tail, tail with { X = tail.X + (0.05 * SawPlan.Scale) },
                tail with { Y = tail.Y - (_stock.Width / 4 * SawPlan.Scale) });
            yield return PageText.Centered(At(stay - (_way * 0.03), 0).X, At(0, Half / 2).Y - 0.001, "edge 1", PageText.Small, bold: true);
        }

        /// <summary>Beside the line, on the wood that stays: the guide of a circular saw, the starting block of a hand saw.</summary>
        public IEnumerable<SheetEntity> Guide()
        {
            if (cut.Way is not (CutWay.CircularSaw or CutWay.HandSaw))
            {
                yield break;
            }

            var (ux, uy) = (X(Half) - X(-Half), _stock.Width);
            var length = Math.Sqrt((ux * ux) + (uy * uy));
            (ux, uy) = (ux / length, uy / length);
            var off = cut.Way == CutWay.CircularSaw ? Base : 0;
            SheetPoint On(double along, double aside) => At(
                X(-Half) + (along * ux) + (_way * aside * uy), -Half + (along * uy) - (_way * aside * ux));
            var (from, to) = (-Beyond, length + Beyond);
            SheetPoint[] guide = [On(from, off), On(to, off), On(to, off + GuideWide), On(from, off + GuideWide)];
            yield return new SheetPolyline(PageLayers.Pocket, [.. guide.Select(p => new SheetVertex(p.X, p.Y))], Closed: true);
            foreach (var end in (double[])[from + (Beyond / 3), to - (Beyond / 3)])
            {
                yield return new SheetCircle(PageLayers.Drill, On(end, off + (GuideWide / 2)), Clamp);
            }

            if (off > 0)
            {
                var (left, right) = ((length / 2) - 0.05, (length / 2) + 0.05);
                SheetPoint[] foot = [On(left, -0.04), On(right, -0.04), On(right, off), On(left, off)];
                yield return new SheetPolyline(PageLayers.Hidden, [.. foot.Select(p => new SheetVertex(p.X, p.Y))], Closed: true);
            }

            var low = guide.MinBy(p => p.Y)!;
            yield return PageText.Centered(
                low.X, low.Y - 0.004, off > 0 ? "guide, clamped; the saw's base dashed" : "block, clamped", PageText.Small);
        }
    }
}
