using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Volume of a stick whose holes meet channels, ends or each other. Of cuts that stand together each takes what it takes alone,
/// less what two take in common, and so on: volumes between planes, and the rest is known in closed form. Bridges are weighed
/// hundreds of times.
/// </summary>
internal static class MeetingCuts
{
    // So many cuts in one place have 31 volumes between them; more of them are built as a solid.
    private const int MostTogether = 5;

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
        if (LooseHoles.Any(piece))
        {
            return whole - CutStockVolume.Prism(piece);
        }

        if (cuts.Count > MostTogether)
        {
            return whole - StockSolid.Build(piece).OrNull?.Volume;
        }

        var taken = new Union(piece, bare, low, high).Volume();
        return taken < whole * (1 - NothingLeft) ? taken : null;
    }

    // Less of a length's wood than this is none: the solid tells.
    private const double NothingLeft = 1e-6;

    /// <summary>What the cuts of a stick take from it together.</summary>
    private sealed class Union(CutStock piece, CutStock bare, double low, double high)
    {
        private readonly (ConvexCutter Cutter, Box Box, double? Alone)[] _cutters =
        [
            .. piece.Channels.Select(c => (
                StockCutters.Build(piece, c), new Box(c.Center - (c.Width / 2), c.Center + (c.Width / 2)), (double?)null)),
            .. piece.Holes.Select(h => (StockCutters.Build(piece, h), Box.Of(LooseHoles.Around(piece, h)), Alone(bare, h))),
        ];

        private readonly Vector3d _middle = new((low + high) / 2, 0, 0);
        private readonly double _reach = Elementary.Hypot(Lengths(piece, low, high), Elementary.Hypot(piece.Width, piece.Thickness));

        public double Volume() => Of(
            [
                piece.Near, piece.Far, new Plane(Vector3d.UnitY, piece.Width / 2), new Plane(-Vector3d.UnitY, piece.Width / 2),
                new Plane(Vector3d.UnitZ, piece.Thickness / 2), new Plane(-Vector3d.UnitZ, piece.Thickness / 2),
            ],
            Box.All, 0, isAlone: true);

        // What the cutters from one on take of what lies below some planes, inside a box.
        private double Of(List<Plane> within, Box box, int from, bool isAlone)
        {
            var sum = 0.0;
            for (var i = from; i < _cutters.Length; i++)
            {
                var (cutter, own, alone) = _cutters[i];
                if (box.With(own) is not { } both)
                {
                    continue;
                }

                List<Plane> common = [.. within, .. cutter.Planes];
                var one = isAlone && alone is { } known ? known : ConvexVolume.Find(common, _middle, _reach);
                sum += one > 0 ? one - Of(common, both, i + 1, isAlone: false) : 0;
            }

            return sum;
        }

        // In whole wood but for other cuts it takes its cylinder.
        private static double? Alone(CutStock bare, Hole hole) => bare with { Holes = [hole] } is var drilled && LooseHoles.Any(drilled)
            ? CutStockVolume.Prism(bare) - CutStockVolume.Prism(drilled)
            : null;

        private static double Lengths(CutStock piece, double low, double high) =>
            Math.Max(high, Ends(piece, piece.Far).Max()) - Math.Min(low, Ends(piece, piece.Near).Min());
    }

    /// <summary>Holds a cut, or what several have in common; endless in y and z where only x is given.</summary>
    private readonly record struct Box(Vector3d Low, Vector3d High)
    {
        public Box(double low, double high)
            : this(new Vector3d(low, double.NegativeInfinity, double.NegativeInfinity), new Vector3d(
                high, double.PositiveInfinity, double.PositiveInfinity))
        {
        }

        public static Box All => new(double.NegativeInfinity, double.PositiveInfinity);

        public static Box Of((Vector3d Low, Vector3d High) box) => new(box.Low, box.High);

        /// <summary>Null where they have nothing in common.</summary>
        public Box? With(Box other)
        {
            var (low, high) = (
                new Vector3d(Math.Max(Low.X, other.Low.X), Math.Max(Low.Y, other.Low.Y), Math.Max(Low.Z, other.Low.Z)),
                new Vector3d(Math.Min(High.X, other.High.X), Math.Min(High.Y, other.High.Y), Math.Min(High.Z, other.High.Z)));
            return low.X < high.X && low.Y < high.Y && low.Z < high.Z ? new Box(low, high) : null;
        }
    }

    // X of the four long edges where an end plane meets them.
    private static double[] Ends(CutStock stock, Plane end) =>
        [.. from y in (double[])[-stock.Width / 2, stock.Width / 2]
            from z in (double[])[-stock.Thickness / 2, stock.Thickness / 2]
            select end.XAt(y, z)];
}
