using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>
/// The face with channels and holes near one another, and beside it the edges that a channel runs out of: paper folded over
/// these edges marks width, depth and floor. X runs up the page, u from right to left.
/// </summary>
internal static class ChannelWrap
{
    /// <summary>Features nearer than this along the piece are on one template, metres.</summary>
    private const double Together = 0.120;

    /// <summary>A template reaches to the end of the piece when that is nearer than this, so that it is laid against it. Metres.</summary>
    private const double ToEnd = 0.180;

    private const double Around = 0.012;

    // The mark below the first feature where the paper does not go on to the end. Metres.
    private const double MarkRoom = 0.008;

    // Nearer to the end than any bolt that is allowed there. Metres.
    private const double LittleMitre = 0.025;
    private const double Fold = 0.012;

    /// <summary>Templates of everything cut into the long faces of a piece.</summary>
    public static IEnumerable<TemplateBlock> Draw(CutUse use, DisplayUnits units) =>
        from face in new[] { StockFace.MinusY, StockFace.PlusY, StockFace.MinusZ, StockFace.PlusZ }
        let spans = Spans(use.First, face)
        from index in Enumerable.Range(0, spans.Count)
        select Block(use, units, face, spans[index], index, spans.Count);

    private static TemplateBlock Block(
        CutUse use, DisplayUnits units, StockFace face, (double From, double To) span, int index, int count)
    {
        var whole = new Layout(use.First, face, span.From, span.To, ToEnd);
        var block = Block(use, units, whole, index, count);
        return whole.IsBare && whole.ReachesAnEnd
            ? block with { Shorter = Block(use, units, new Layout(use.First, face, span.From, span.To, 0), index, count) }
            : block;
    }

    private static TemplateBlock Block(CutUse use, DisplayUnits units, Layout sheet, int index, int count) => new(
        $"{use.Marks} · {WrapAround.FaceName(sheet.Face)}, channels and holes"
            + (count > 1 ? FormattableString.Invariant($" ({index + 1} of {count})") : string.Empty),
        [.. use.Notes(units), .. sheet.Notes(units)],
        [.. sheet.Entities(units)]);

    private static List<(double From, double To)> Spans(Piece piece, StockFace face)
    {
        var spans = new List<(double From, double To)>();
        var features = piece.Shape.Channels.Where(c => c.Face == face).Select(
            c => (From: c.Center - (c.Width / 2), To: c.Center + (c.Width / 2)))
            .Concat(piece.Shape.Holes.Where(h => h.Face == face).Select(h => (From: h.X - (h.Diameter / 2), To: h.X + (h.Diameter / 2))));
        foreach (var (from, to) in features.OrderBy(f => f.From))
        {
            if (spans.Count > 0 && from - spans[^1].To < Together)
            {
                spans[^1] = (spans[^1].From, Math.Max(spans[^1].To, to));
            }
            else
            {
                spans.Add((from, to));
            }
        }

        return spans;
    }

    /// <summary>One template.</summary>
    private sealed class Layout
    {
        private readonly Piece _piece;
        private readonly UnrolledStock _stock;
        private readonly bool _atNear;
        private readonly bool _atFar;
        private readonly double _low;
        private readonly double _high;
        private readonly List<Channel> _channels;
        private readonly List<Hole> _holes;
        private readonly double _before;
        private readonly double _after;

        /// <param name="piece">The piece.</param>
        /// <param name="face">The face that lies in the middle of the paper.</param>
        /// <param name="from">Where the features begin, metres from the near end.</param>
        /// <param name="to">Where they end.</param>
        /// <param name="toEnd">Paper that comes as near to an end as this goes on to it.</param>
        public Layout(Piece piece, StockFace face, double from, double to, double toEnd)
        {
            (_piece, Face) = (piece, face);
            _stock = new UnrolledStock(piece.Shape.Width, piece.Shape.Thickness);
            (_atNear, _atFar) = (from < toEnd, piece.BlankLength - to < toEnd);
            (_low, _high) = (_atNear ? 0 : from - Around - MarkRoom, _atFar ? piece.BlankLength : to + Around);
            _channels = [.. piece.Shape.Channels.Where(c => c.Face == face && c.Center > from && c.Center < to)];
            _holes = [.. piece.Shape.Holes.Where(h => h.Face == face && h.X > from && h.X < to)];
            var deepest = _channels.Count == 0 ? 0 : _channels.Max(c => Math.Max(Depth(c, -1), Depth(c, 1))) + Fold;
            _before = _stock.Begin(face) - deepest;
            _after = _stock.Begin(face) + _stock.Across(face) + deepest;
        }

        public StockFace Face { get; }

        /// <summary>Whether it goes on to an end of the piece.</summary>
        public bool ReachesAnEnd => _atNear || _atFar;

        /// <summary>Whether the ends that it reaches are square, so that nothing of them is marked from this paper.</summary>
        public bool IsBare => !(_atNear && CutKeys.HasMitre(_piece.Near)) && !(_atFar && CutKeys.HasMitre(_piece.Far));

        private double Begin => _stock.Begin(Face);

        private double End => Begin + _stock.Across(Face);

        public IEnumerable<string> Notes(DisplayUnits units)
        {
            var ends = (_atNear, _atFar) switch
            {
                (true, true) => "lay the lower and upper edge of the paper on the ends of the piece",
                (true, false) => "lay the lower edge of the paper on the near (left) end of the piece",
                (false, true) => "lay the upper edge of the paper on the far (right) end of the piece",
                _ when _channels is [var only] =>
                    $"lay the center line on the one from the layout stick, {Fine(only.Center, units)} from the near (left) end",
                _ => $"lay the lower edge of the paper {units.Length(_low)} from the near (left) end",
            };
            yield return "Cut out, " + ends + (_channels.Count > 0 ? ", fold the dashed lines over the edges." : ".")
                + " The way mark's arrow points up this paper.";
            if ((_atNear && CutKeys.HasMitre(_piece.Near)) || (_atFar && CutKeys.HasMitre(_piece.Far)))
            {
                yield return "The end is mitred: the slanted line lies on its cut, the paper's edge only on its long point.";
            }

            foreach (
                var words in _channels.Select(c => Words(c, units)).Concat(_holes.Select(h => Words(h, units))).Distinct(
                    StringComparer.Ordinal))
            {
                yield return words;
            }
        }

        public IEnumerable<SheetEntity> Entities(DisplayUnits units) =>
        [
            Ring(PageLayers.Dim, _before, _low, _after, _high),
            .. _channels.Count > 0
                ? [Line(PageLayers.Fold, Begin, _low, Begin, _high), Line(PageLayers.Fold, End, _low, End, _high)]
                : Array.Empty<SheetEntity>(),
            .. _channels.SelectMany(c => Pocket(c, units)),
            .. _holes.SelectMany(h => Circle(h, units)),
            .. _atNear ? [EndLine(_piece.Shape.Near)] : Array.Empty<SheetEntity>(),
            .. _atFar ? [EndLine(_piece.Shape.Far)] : Array.Empty<SheetEntity>(),
            PageText.Centered(P((Begin + End) / 2, 0).X, Clear(), _piece.Mark, PageText.Large, bold: true),
            .. _atNear ? [PageText.Centered(P((Begin + End) / 2, 0).X, Above() + 0.002, Ends.ShopNear, PageText.Small)] : Array
                .Empty<SheetEntity>(),
            .. _atFar ? [PageText.Centered(P((Begin + End) / 2, 0).X, _high - 0.004, Ends.ShopFar, PageText.Small)] : Array
                .Empty<SheetEntity>(),
        ];

        private EndWords Ends => RoleTable.Of(_piece.Role).Ends;

        /// <summary>Channel centre, in the margin between the features and one end of the paper.</summary>
        private double Clear() => _atFar && !_atNear ? _high - 0.011 : Above() + 0.007;

        /// <summary>Where words of the near end begin: above its cut where that is mitred a little.</summary>
        private double Above()
        {
            var cut = _atNear ? Math.Max(_stock.CutAt(_piece.Shape.Near, Begin), _stock.CutAt(_piece.Shape.Near, End)) : 0;
            return cut is > 0 and < LittleMitre ? _low + cut : _low;
        }

        private string Words(Channel c, DisplayUnits units) =>
            $"Channel {Fine(c.Width, units)} wide, knife lines as drawn, {Fine(c.Width / 2, units)} each side of its center line, "
            + $"{units.Length(c.Depth)} deep in the middle" + (Math.Abs(c.FloorSlope) > Tolerances.LevelFloor
                ? $", floor sloping {Numbers.DegreeText(Elementary.Atan(c.FloorSlope))}"
                    + (ChannelFloors.IsCutLevel(c, _piece.Shape) ? ", cut level as the gang sheet says" : string.Empty)
                : string.Empty)
            + $"; center {Fine(c.Center, units)} from the {Ends.ShopNear}.";

        private static string Fine(double metres, DisplayUnits units) => new QuantityText(units.System).Fine(metres);

        private string Words(Hole h, DisplayUnits units) =>
            $"Hole ⌀ {units.Length(h.Diameter)}, {(h.Depth is { } d ? units.Length(d) + " deep" : "through")}; {units.Length(h.X)} from "
                + $"the {Ends.ShopNear}, {units.Length(HoleRows.FromEdge(_piece.Shape, h))} from {HoleRows.EdgeOf(h)}.";

        /// <summary>Pocket over the face and down both edges to the floor; centre line and knife lines.</summary>
        private IEnumerable<SheetEntity> Pocket(Channel c, DisplayUnits units)
        {
            double a = c.Center - (c.Width / 2), b = c.Center + (c.Width / 2);
            yield return Ring(PageLayers.Pocket, Begin - Depth(c, BeforeSide), a, End + Depth(c, -BeforeSide), b);
            yield return Line(PageLayers.Layout, _before, c.Center, _after, c.Center);
            foreach (var x in (double[])[a, b])
            {
                yield return Line(PageLayers.Cut, _before, x, _after, x);
            }

            yield return PageText.Left(P(_after, 0).X + 0.001, b + 0.0012, "knife line", PageText.Small, layer: PageLayers.Accent);
            yield return PageText.Left(
                P(End, 0).X + 0.003, c.Center + 0.0012, $"center {Fine(c.Center, units)}", PageText.Small, layer: PageLayers.Accent);
        }

        private IEnumerable<SheetEntity> Circle(Hole h, DisplayUnits units)
        {
            const double arm = 0.004;
            var u = _stock.At(Face, h.Across);
            yield return new SheetCircle(PageLayers.Drill, P(u, h.X), h.Diameter / 2);
            yield return Line(PageLayers.Layout, u - (h.Diameter / 2) - arm, h.X, u + (h.Diameter / 2) + arm, h.X);
            yield return Line(PageLayers.Layout, u, h.X - (h.Diameter / 2) - arm, u, h.X + (h.Diameter / 2) + arm);
            yield return PageText.Left(
                P(u, 0).X + (h.Diameter / 2) + 0.0015, h.X + 0.0015, "⌀ " + units.Length(h.Diameter), PageText.Small);
        }

        /// <summary>Depth at the low (−1) or high (+1) end of the face's cross axis.</summary>
        private double Depth(Channel c, double side) => c.Depth + (side * c.FloorSlope * _stock.Across(Face) / 2);

        /// <summary>Which end of the cross axis the face begins at, going round.</summary>
        private double BeforeSide => Face is StockFace.PlusZ or StockFace.MinusY ? -1 : 1;

        /// <summary>Where the piece's end lies on this face: square, or as it is mitred.</summary>
        private SheetLine EndLine(Plane end) => Line(PageLayers.Cut, Begin, _stock.CutAt(end, Begin), End, _stock.CutAt(end, End));

        private SheetPoint P(double u, double x) => new(_after - u, x);

        private SheetLine Line(string layer, double u1, double x1, double u2, double x2) => new(layer, P(u1, x1), P(u2, x2));

        private SheetPolyline Ring(string layer, double u1, double x1, double u2, double x2) => new(
            layer,
            [.. new[] { P(u1, x1), P(u2, x1), P(u2, x2), P(u1, x2) }.Select(p => new SheetVertex(p.X, p.Y))],
            Closed: true);
    }
}
