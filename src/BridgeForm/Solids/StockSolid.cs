using System.Collections.Immutable;

namespace BridgeForm.Solids;

/// <summary>The solid of a stick of stock with its cuts.</summary>
public static class StockSolid
{
    /// <summary>
    /// The prism between its ends, less rips, channels and holes, in that order. Ends and rips count as cut. A fault when
    /// nothing is left.
    /// </summary>
    public static SolidResult Build(CutStock stock)
    {
        var result = Prism(stock);
        foreach (var rip in stock.Rips)
        {
            result = result.OrNull?.Cut(rip, stock.IsRound ? FaceOrigin.Stock : FaceOrigin.Cut) ?? result;
        }

        foreach (var channel in stock.Channels)
        {
            result = result.OrNull?.Subtract(StockCutters.Build(stock, channel)) ?? result;
        }

        foreach (var hole in stock.Holes)
        {
            result = result.OrNull is { } solid ? Drill(solid, stock, hole) : result;
        }

        return result;
    }

    /// <summary>The solid of the stick: <see cref="Build"/>.</summary>
    public static SolidResult ToSolid(this CutStock stock) => Build(stock);

    /// <summary>
    /// The stick as convex cells that touch but do not overlap: one for a prism, and for each channel those to its left, to
    /// its right and beyond its floor. Holes are not taken out. Empty when nothing is left.
    /// </summary>
    public static ImmutableArray<ConvexBody> ConvexCells(this CutStock stock) => Solids.ConvexCells.Split(stock);

    /// <summary>The rectangle between its two end planes.</summary>
    internal static SolidResult Prism(CutStock stock)
    {
        if (Hexahedron.Prism(stock.Width, stock.Thickness, stock.Near, stock.Far) is { } plain)
        {
            return plain;
        }

        var half = new Vector3d(0, stock.Width / 2, stock.Thickness / 2);
        var low = Least(Hexahedron.Ends(stock.Near, half), 1);
        var high = -Least(Hexahedron.Ends(stock.Far, half), -1);
        if (!(low < high))
        {
            return SolidFault.NothingLeft;
        }

        var margin = (stock.Width + stock.Thickness) * Vector3d.UnitX; // keeps the box's own ends clear of the cuts
        return Solid.Box((low * Vector3d.UnitX) - margin - half, (high * Vector3d.UnitX) + margin + half)
            .Cut(stock.Near, FaceOrigin.Cut)
            .Then(rest => rest.Cut(stock.Far, FaceOrigin.Cut));
    }

    private static SolidResult Drill(Solid solid, CutStock stock, Hole hole)
    {
        var cutter = StockCutters.Build(stock, hole);
        return hole.Depth is not null
            && BlindHole.TryDrill(solid, new Drill(cutter.Planes, hole, StockCutters.Axes(stock, hole.Face))) is { } drilled
            ? drilled
            : solid.Subtract(cutter);
    }

    private static double Least((double LowLow, double HighLow, double LowHigh, double HighHigh) ends, int sign) => Math.Min(
        Math.Min(sign * ends.LowLow, sign * ends.HighLow), Math.Min(sign * ends.LowHigh, sign * ends.HighHigh));
}
