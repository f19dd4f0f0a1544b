using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Solids;

/// <summary>One cut: a plane that keeps what is below, or a region taken away.</summary>
internal sealed record Step(Plane? Plane, ConvexCutter? Cutter)
{
    public SolidResult Apply(Solid solid) => Cutter is { } cutter ? solid.Subtract(cutter) : solid.Cut(Plane!.Value, FaceOrigin.Cut);

    /// <summary>What the step takes away, by the other operation.</summary>
    public SolidResult TakenFrom(Solid solid) =>
        Cutter is { } cutter ? solid.Intersect(cutter) : solid.Cut(Plane!.Value.Flipped(), FaceOrigin.Cut);
}

/// <summary>
/// A stick and its cuts, made from a seed. Sizes come from a coarse grid as often as not, so that walls, floors, ends and
/// drills meet, touch and coincide all the time.
/// </summary>
internal sealed record RandomMember(CutStock Stock, ImmutableArray<Step> Steps)
{
    private static readonly (double Width, double Thickness)[] s_sections =
        [(0.089, 0.038), (0.14, 0.038), (0.089, 0.089), (0.089, 0.019), (0.14, 0.14), (0.235, 0.038)];

    /// <param name="seed">Same seed, same member.</param>
    /// <param name="withinRoundOff">Also planes tilted so little that the kernel may take them for a face.</param>
    public static RandomMember Make(int seed, bool withinRoundOff = true)
    {
        var r = new Random(seed);
        var (width, thickness) = s_sections[r.Next(s_sections.Length)];
        var length = Length(r, 0.1, r.Next(10) == 0 ? 5 : 1.2);
        var stock = new CutStock(width, thickness, End(r, 0, -1), End(r, length, 1)) { Rips = Rips(r, width, thickness, length) };
        stock = stock with { Channels = [.. Enumerable.Range(0, r.Next(4)).Select(_ => RandomChannel(r, stock, length))] };
        stock =
            stock with { Holes = [.. Enumerable.Range(0, r.Next(10) < 6 ? 0 : r.Next(1, 4)).Select(_ => RandomHole(r, stock, length))] };
        var steps = stock.Channels.Select(c => new Step(null, StockCutters.Build(stock, c)))
            .Concat(stock.Holes.Select(h => new Step(null, StockCutters.Build(stock, h))))
            .ToList();
        for (var extra = r.Next(10) < 6 ? 0 : r.Next(1, 4); extra > 0; extra--)
        {
            steps.Insert(r.Next(steps.Count + 1), Extra(r, stock, length, withinRoundOff));
        }

        return new RandomMember(stock, [.. steps]);
    }

    private static double Length(Random r, double min, double max)
    {
        var value = min + (r.NextDouble() * (max - min));
        return r.Next(2) == 0 ? value : Math.Round(value / 0.05) * 0.05;
    }

    private static Plane End(Random r, double x, int sign)
    {
        var steepest = r.Next(20) == 0 ? 1.4 : 0.8;
        var (mitre, bevel) = r.Next(3) switch
        {
            0 => (0.0, 0.0),
            1 => (Angle(r, steepest), 0.0),
            _ => (Angle(r, steepest), Angle(r, steepest)),
        };
        var normal = new Vector3d(Math.Cos(mitre) * Math.Cos(bevel), Math.Sin(mitre) * Math.Cos(bevel), Math.Sin(bevel));
        return Plane.Through(new Vector3d(x, 0, 0), sign * normal);
    }

    private static double Angle(Random r, double most) => (2 * r.NextDouble() - 1) * most;

    private static ImmutableArray<Plane> Rips(Random r, double width, double thickness, double length) => r.Next(5) switch
    {
        0 => [
            Plane.Through(
                new Vector3d(r.NextDouble() * length, 0, Angle(r, thickness / 2)), new Vector3d(Angle(r, 0.1), 0, r.Next(2) == 0 ? 1 : -1)),
        ],
        1 => [Plane.Through(new Vector3d(r.NextDouble() * length, Angle(r, width / 2), 0), new Vector3d(Angle(r, 0.2), 1, Angle(r, 0.5)))],
        _ => [],
    };

    private static Channel RandomChannel(Random r, CutStock stock, double length)
    {
        var face = (StockFace)r.Next(4);
        var height = face is StockFace.MinusY or StockFace.PlusY ? stock.Width : stock.Thickness;
        var depth = r.Next(10) switch
        {
            0 => height,
            1 => 1.2 * height,
            2 => height / 2,
            _ => height * r.NextDouble(),
        };
        var width = r.Next(3) == 0 ? 0.05 : Length(r, 0.01, 0.1);
        var center = r.Next(8) == 0 ? width / 2 : Length(r, 0, length);
        if (stock.Channels.Length == 0 && r.Next(6) == 0)
        {
            center = 0.2 + (width / 2); // walls that fall in one plane
        }

        var slope = r.Next(2) == 0 ? 0 : r.Next(8) == 0 ? depth / (stock.Thickness / 2) : Angle(r, 0.4);
        return new Channel(face, center, width, depth, slope);
    }

    private static Hole RandomHole(Random r, CutStock stock, double length)
    {
        var face = (StockFace)r.Next(4);
        var (height, breadth) =
            face is StockFace.MinusY or StockFace.PlusY ? (stock.Width, stock.Thickness) : (stock.Thickness, stock.Width);
        var diameter = r.Next(3) == 0 ? 0.0125 : 0.004 + (0.03 * r.NextDouble());
        var across = r.Next(5) switch
        {
            0 => 0,
            1 => breadth / 2,
            2 => (breadth / 2) - (diameter / 2),
            _ => Angle(r, breadth / 2),
        };
        double? depth = r.Next(3) switch { 0 => null, 1 => height / 2, _ => height * r.NextDouble() };
        var x = stock.Channels.Length > 0 && r.Next(3) == 0
            ? stock.Channels[0].Center + (r.Next(3) - 1) * stock.Channels[0].Width / 2
            : Length(r, 0, length);
        return new Hole(face, x, across, diameter, depth);
    }

    private static Step Extra(Random r, CutStock stock, double length, bool withinRoundOff)
    {
        var half = new Vector3d(0, stock.Width / 2, stock.Thickness / 2);
        var at = Target(r, stock, length);
        return r.Next(12) switch
        {
            < 4 => new Step(Plane.Through(at, Direction(r)), null),
            4 => new Step(Plane.Through(half, new Vector3d(Tiny(r, withinRoundOff), 1, Tiny(r, withinRoundOff))), null),
            5 => new Step(Plane.Through(at, new Vector3d(1, Tiny(r, withinRoundOff), Tiny(r, withinRoundOff))), null),
            6 => Box(at, half + new Vector3d(at.X + 0.05, 0, 0)),
            7 => Box(half + new Vector3d(at.X, 0, 0), half + new Vector3d(at.X + 0.05, 0.05, 0.05)),
            8 => Box(at, at + new Vector3d(0.02, 0.02, 0.02)),
            9 => Box(new Vector3d(at.X, -half.Y, -half.Z), new Vector3d(at.X + 0.03, half.Y, r.NextDouble() * half.Z)),
            10 when r.Next(4) == 0 => Box(new Vector3d(-9, -1, -1), new Vector3d(9, 1, 1)),
            _ => new Step(null, Wedge(r, at)),
        };
    }

    private static Vector3d Target(Random r, CutStock stock, double length)
    {
        if (stock.Holes.Length > 0 && r.Next(2) == 0)
        {
            var hole = stock.Holes[0];
            return new Vector3d(hole.X + (hole.Diameter / 2 * Angle(r, 1)), hole.Across, hole.Across);
        }

        if (stock.Channels.Length > 0 && r.Next(2) == 0)
        {
            var channel = stock.Channels[0];
            return new Vector3d(channel.Center + (channel.Width / 2 * r.Next(-1, 2)), channel.Depth - (stock.Width / 2), 0);
        }

        return new Vector3d(Length(r, 0, length), Angle(r, stock.Width / 2), Angle(r, stock.Thickness / 2));
    }

    private static double Tiny(Random r, bool withinRoundOff) =>
        r.Next(3) == 0 ? 0 : Angle(r, Math.Pow(10, -r.Next(2, withinRoundOff ? 8 : 4)));

    private static Vector3d Direction(Random r) =>
        r.Next(3) == 0 ? new Vector3d(0, 1, -1) : new Vector3d(Angle(r, 1), Angle(r, 1), Angle(r, 1) + 1e-3);

    private static Step Box(Vector3d a, Vector3d b) => new(null, ConvexCutter.Box(
        new Vector3d(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z)),
        new Vector3d(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z)),
        FaceOrigin.Channel));

    private static ConvexCutter Wedge(Random r, Vector3d at) => new(
        [.. Enumerable.Range(0, r.Next(2, 7)).Select(_ => Plane.Through(at + (0.01 * Direction(r)), Direction(r)))],
        FaceOrigin.Channel);
}
