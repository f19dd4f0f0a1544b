using BridgeForm.Output.Drawing;
using BridgeForm.Solids;
using CsCheck;

namespace BridgeForm.Tests.Output.DrawingSet;

public sealed class HiddenLinesTests
{
    /// <summary>What hides is smaller than the body by its skin, under a millimetre; lengths agree within a few of them.</summary>
    private const double Skin = 0.004;

    [Fact]
    public void Of_a_box_seen_cornerwise_nine_edges_are_seen()
    {
        var lines = HiddenLines.Find([Box(0, 0, 0, 1, 1, 1)], View.Isometric);
        Assert.Equal(9, lines.Count);
        Assert.Equal(6, lines.Count(l => l.Outline));
        Assert.All(lines, l => Assert.Equal(View.IsometricShare, Length(l), 1e-9));
    }

    [Fact]
    public void A_box_in_front_hides_what_lies_behind_it()
    {
        var behind = Box(0, 0, 0, 1, 1, 1);
        Assert.Equal(4, HiddenLines.Find([behind], View.Side).Count);
        Assert.Equal(4, HiddenLines.Find([behind, Box(-0.1, -0.1, 2, 1.1, 1.1, 3)], View.Side).Count);
        Assert.Equal(8, HiddenLines.Find([behind, Box(-0.1, -0.1, -3, 1.1, 1.1, -2)], View.Side).Count);
    }

    [Fact]
    public void Part_of_an_edge_is_hidden()
    {
        var lines = HiddenLines.Find([Box(0, 0, 0, 3, 1, 1), Box(1, -1, 2, 2, 2, 3)], View.Side);
        var level = lines.Where(l => Math.Abs(l.From.Y - l.To.Y) < 1e-9 && l.From.Y is > -0.5 and < 1.5).ToList();
        Assert.Equal(4, level.Count);
        Assert.Equal(4, level.Sum(Length), Skin);
    }

    /// <summary>Against points tried one by one: a point is hidden when the way to the eye passes a box.</summary>
    [Fact]
    public void Agrees_with_rays_traced_to_the_eye() =>
        Gen.Select(Boxes, Boxes, Boxes).OnFixed(60, three =>
        {
            var (a, b, c) = three;
            (Vector3d Low, Vector3d High)[] boxes = [a, b, c];
            var shapes = boxes.Select(x => Box(x.Low.X, x.Low.Y, x.Low.Z, x.High.X, x.High.Y, x.High.Z)).ToList();
            var seen = HiddenLines.Find(shapes, View.Isometric).Sum(Length);
            var traced = shapes.SelectMany(s => s.Edges).Sum(e => Traced(e, boxes));
            Assert.InRange(Math.Abs(seen - traced), 0, (0.02 * Math.Max(1, traced)) + (36 * Skin));
        });

    private static Gen<(Vector3d Low, Vector3d High)> Boxes { get; } =
        from x in Gen.Double[-1, 1]
        from y in Gen.Double[-1, 1]
        from z in Gen.Double[-1, 1]
        from w in Gen.Double[0.1, 1]
        from h in Gen.Double[0.1, 1]
        from d in Gen.Double[0.1, 1]
        select (new Vector3d(x, y, z), new Vector3d(x + w, y + h, z + d));

    private static double Traced(ShapeEdge edge, (Vector3d Low, Vector3d High)[] boxes)
    {
        const int points = 400;
        var (from, to) = (View.Isometric.Of(edge.From), View.Isometric.Of(edge.To));
        var length = BridgeForm.Output.Drawing.Dimensions.Distance(from, to);
        var seen = Enumerable.Range(0, points).Count(i =>
        {
            var p = edge.From + ((i + 0.5) / points * (edge.To - edge.From));
            return !Array.Exists(boxes, b => Passes(p, View.Isometric.Toward, b.Low, b.High));
        });
        return length * seen / points;
    }

    private static bool Passes(Vector3d p, Vector3d way, Vector3d low, Vector3d high)
    {
        const double skin = 6e-4;
        double from = 0, to = double.PositiveInfinity;
        foreach (var (at, dir, a, b) in ((double, double, double, double)[])
            [(p.X, way.X, low.X, high.X), (p.Y, way.Y, low.Y, high.Y), (p.Z, way.Z, low.Z, high.Z)])
        {
            var (s, e) = ((a + skin - at) / dir, (b - skin - at) / dir);
            (from, to) = (Math.Max(from, Math.Min(s, e)), Math.Min(to, Math.Max(s, e)));
        }

        return from < to;
    }

    private static double Length(SeenLine line) => BridgeForm.Output.Drawing.Dimensions.Distance(line.From, line.To);

    private static Shape Box(double x1, double y1, double z1, double x2, double y2, double z2)
    {
        var stock = new CutStock(y2 - y1, z2 - z1, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, x2 - x1));
        return Shape.Build(stock).Placed(new Placement(
            new Vector3d(x1, (y1 + y2) / 2, (z1 + z2) / 2), Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ));
    }
}
