namespace BridgeForm.Solids;

/// <summary>
/// Volume of a stick whose holes meet channels, ends or each other: only the lengths on which cuts stand together are built as
/// solids, each with its own cuts, and the rest is known in closed form. Bridges are weighed hundreds of times.
/// </summary>
internal static class MeetingCuts
{
    private readonly record struct Cut(double Low, double High, Channel? Channel, Hole? Hole);

    /// <summary>
    /// In m³; null where only the whole solid knows: tapers, ends that meet inside the section, and a length of which nothing
    /// would be left.
    /// </summary>
    public static double? Volume(CutStock stock)
    {
        var bare = stock with { Channels = [], Holes = [] };
        if (!bare.IsPlainPrism())
        {
            return null;
        }

        var volume = CutStockVolume.Prism(bare);
        List<Cut> together = [];
        var end = double.NegativeInfinity;
        foreach (var cut in Cuts(stock))
        {
            if (together.Count > 0 && cut.Low > end)
            {
                if (TakenBy(stock, together) is not { } part)
                {
                    return null;
                }

                volume -= part;
                together.Clear();
                end = double.NegativeInfinity;
            }

            together.Add(cut);
            end = Math.Max(end, cut.High);
        }

        return together.Count == 0 ? volume : volume - TakenBy(stock, together);
    }

    private static IOrderedEnumerable<Cut> Cuts(CutStock stock) => stock.Channels
        .Select(c => new Cut(c.Center - (c.Width / 2), c.Center + (c.Width / 2), c, null))
        .Concat(stock.Holes.Select(h => LooseHoles.Around(stock, h) is var box ? new Cut(box.Low.X, box.High.X, null, h) : default))
        .OrderBy(c => c.Low);

    /// <summary>What cuts that stand together take away, m³.</summary>
    private static double? TakenBy(CutStock stock, List<Cut> cuts)
    {
        // The stick's own ends where they are near: square ones elsewhere, a thickness away from all cuts.
        var (low, high) = (cuts.Min(c => c.Low) - stock.Thickness, cuts.Max(c => c.High) + stock.Thickness);
        var piece = stock with
        {
            Near = Ends(stock, stock.Near).Max() < low ? new Plane(-Vector3d.UnitX, -low) : stock.Near,
            Far = Ends(stock, stock.Far).Min() > high ? new Plane(Vector3d.UnitX, high) : stock.Far,
            Channels = [.. cuts.Where(c => c.Channel is not null).Select(c => c.Channel!)],
            Holes = [.. cuts.Where(c => c.Hole is not null).Select(c => c.Hole!)],
        };
        var bare = piece with { Channels = [], Holes = [] };
        if (!bare.IsPlainPrism())
        {
            return null;
        }

        var whole = CutStockVolume.Prism(bare);
        return LooseHoles.Any(piece) ? whole - CutStockVolume.Prism(piece) : whole - StockSolid.Build(piece).OrNull?.Volume;
    }

    // X of the four long edges where an end plane meets them.
    private static double[] Ends(CutStock stock, Plane end) =>
        [.. from y in (double[])[-stock.Width / 2, stock.Width / 2]
            from z in (double[])[-stock.Thickness / 2, stock.Thickness / 2]
            select end.XAt(y, z)];
}
