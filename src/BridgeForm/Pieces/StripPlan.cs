using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>What rips a taper.</summary>
public enum RipWay
{
    /// <summary>The table saw, its blade tilted, the stock on its edge.</summary>
    TableSaw,

    /// <summary>The band saw, its table tilted, the stock on its edge.</summary>
    BandSaw,

    /// <summary>None of the tools at hand.</summary>
    Hand,
}

/// <summary>
/// One set-up for tapered strips: every piece that is ripped with it, and how. The strip lies on the outer side of the stock, away
/// from the fence, its thick edge along the stock's own edge. Metres and radians.
/// </summary>
public sealed record StripSetup
{
    /// <summary>Pieces with their tapers, the steepest first; all from one stock and section.</summary>
    public required ImmutableArray<TaperedPiece> Pieces { get; init; }

    /// <summary>What rips it.</summary>
    public required RipWay Way { get; init; }

    /// <summary>Tilt of the blade from upright: a tenth of a degree, as an angle gauge shows it.</summary>
    public required double Tilt { get; init; }

    /// <summary>Thickness of the strip at its thick edge.</summary>
    public required double Thick { get; init; }

    /// <summary>How far any strip so ripped is thicker or thinner than its piece, at most.</summary>
    public required double Gap { get; init; }

    /// <summary>Saw cut along the table, with the blade tilted.</summary>
    public required double Kerf { get; init; }

    /// <summary>The stick: its width and thickness.</summary>
    public CutStock Stick => Pieces[0].Piece.Shape;

    /// <summary>From the fence to the near side of the tilted blade, at the table, the stock on its edge.</summary>
    public double TiltedFence => Stick.Thickness - Thick - (Kerf / Elementary.Cos(Tilt));

    /// <summary>
    /// The stock is wide enough to stay whole: the tilted cut comes first, only as deep as the piece is wide, and the upright one
    /// parts the strip from a board that is still held; else the stock is ripped to the piece's width first.
    /// </summary>
    public bool FromWide(Taper taper) => Stick.Width - taper.Width - Kerf >= StripPlan.WidthToHold;

    /// <summary>
    /// From the fence to the near side of the upright blade, the stock lying flat and its far edge along the fence; null where the
    /// stock is as wide as the piece.
    /// </summary>
    public double? UprightFence(Taper taper) => FromWide(taper) ? Stick.Width - taper.Width - Kerf
        : Stick.Width - taper.Width > StripPlan.SameWidth ? taper.Width : null;

    /// <summary>The stock is too thin to stand on what the blade leaves of it: it is screwed to a carrier.</summary>
    public bool NeedsCarrier => TiltedFence < StripPlan.FootToStand;

    /// <summary>Thickness of the strip as it comes off, so far from its thick edge.</summary>
    public double ThicknessAt(double fromThickEdge) => Thick - (fromThickEdge * Elementary.Tan(Tilt));
}

/// <summary>A ripped piece and its taper.</summary>
public sealed record TaperedPiece(Piece Piece, Taper Taper);

/// <summary>How packers are made: long tapered strips off wide stock, one at a time, cut to length after.</summary>
public static class StripPlan
{
    /// <summary>Wood that must lie against the fence while a strip is parted, metres. An own figure.</summary>
    public const double WidthToHold = 0.025;

    /// <summary>Wood that a stock on its edge must stand on, metres. An own figure.</summary>
    public const double FootToStand = 0.020;

    /// <summary>Widths that differ by less are one: no rip takes off so little, metres.</summary>
    public const double SameWidth = 0.001;

    // An angle gauge shows a tenth of a degree. Radians.
    private const double GaugeStep = Math.PI / 1800;

    /// <summary>
    /// Set-ups for all ripped pieces, as few as leave every strip within <c>shop.joint_gap</c> of its piece, edge to edge: pieces of
    /// one stock and section by falling angle, each taken up as long as one tilt and one thickness serve all before it too.
    /// </summary>
    public static ImmutableArray<StripSetup> List(ImmutableArray<Piece> pieces, ShopParameters shop)
    {
        var setups = ImmutableArray.CreateBuilder<StripSetup>();
        foreach (var stick in pieces.Where(IsRipped).GroupBy(p => (p.Stock, p.Section)))
        {
            var open = ImmutableArray<TaperedPiece>.Empty;
            foreach (var next in stick.Select(p => new TaperedPiece(p, Taper.Measure(p)!)).OrderByDescending(p => p.Taper.Angle))
            {
                var more = open.Add(next);
                if (!open.IsEmpty && Fit(more, shop).Gap > shop.JointGap)
                {
                    setups.Add(Fit(open, shop));
                    more = [next];
                }

                open = more;
            }

            setups.Add(Fit(open, shop));
        }

        return setups.ToImmutable();
    }

    /// <summary>Whether a piece is a strip with a taper; what is ripped off a round one is not.</summary>
    public static bool IsRipped(Piece piece) => piece.Shape is { Rips.IsEmpty: false, IsRound: false };

    /// <summary>
    /// The tilt, of those that a gauge shows, and the thickness that come nearest to all tapers: thickness half way between the
    /// extremes of what each would need at its two edges.
    /// </summary>
    private static StripSetup Fit(ImmutableArray<TaperedPiece> pieces, ShopParameters shop)
    {
        var (least, most) = (pieces.Min(p => p.Taper.Angle), pieces.Max(p => p.Taper.Angle));
        var best = (Tilt: 0.0, Thick: 0.0, Gap: double.PositiveInfinity);
        for (var k = (long)Math.Floor(least / GaugeStep); k <= (long)Math.Ceiling(most / GaugeStep); k++)
        {
            var tilt = k * GaugeStep;
            double[] needed = [.. pieces.SelectMany(p => (double[])
                [p.Taper.Thick, p.Taper.Thin + (p.Taper.Width * Elementary.Tan(tilt))])];
            var gap = (needed.Max() - needed.Min()) / 2;
            best = gap < best.Gap ? (tilt, (needed.Max() + needed.Min()) / 2, gap) : best;
        }

        return new StripSetup
        {
            Pieces = pieces,
            Way = Way(pieces.Max(p => p.Taper.Width), best.Tilt, shop),
            Tilt = best.Tilt,
            Thick = best.Thick,
            Gap = best.Gap,
            Kerf = shop.Kerf,
        };
    }

    private static RipWay Way(double width, double tilt, ShopParameters shop) =>
        shop.Tools.HasFlag(ShopTools.TableSaw) && tilt <= CutWays.MostTilt
            && width / Elementary.Cos(tilt) <= shop.Saw.TableDepth + Tolerances.RoundOff
            ? RipWay.TableSaw
            : shop.Tools.HasFlag(ShopTools.BandSaw) && tilt <= CutWays.MostTilt && width <= shop.Saw.BandHeight + Tolerances.RoundOff
            ? RipWay.BandSaw
            : RipWay.Hand;
}
