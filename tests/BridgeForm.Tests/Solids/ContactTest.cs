using BridgeForm.Solids;

namespace BridgeForm.Tests.Solids;

public class ContactTest
{
    private const double Close = 1e-9;

    [Fact]
    public void Two_boxes_overlap_by_the_least_of_three_sides()
    {
        var a = Body(new Vector3d(0, 0, 0), new Vector3d(1, 1, 1));
        var b = Body(new Vector3d(0.9, 0.8, 0.5), new Vector3d(2, 2, 2));
        Assert.Equal(0.1, Contact.Overlap(a, b), Close);
        Assert.Equal(-0.25, Contact.Overlap(a, Body(new Vector3d(1.25, 0, 0), new Vector3d(2, 1, 1))), Close);
        Assert.Equal(0, Contact.Overlap(a, Body(new Vector3d(1, 0, 0), new Vector3d(2, 1, 1))), Close);
    }

    [Fact]
    public void Crossed_edges_meet_along_the_direction_square_to_both()
    {
        // A cube on its edge under another on its edge, edges crossed: only a cross product of edges separates them.
        var turnX = Turn(Vector3d.UnitX, Math.PI / 4);
        var turnZ = Turn(Vector3d.UnitZ, Math.PI / 4);
        var cube = Body(new Vector3d(-1, -1, -1), new Vector3d(1, 1, 1));
        var lower = cube.Placed(turnX); // ridge along X at y = √2
        var upper = cube.Placed(turnZ with { Origin = new Vector3d(0, (2 * Math.Sqrt(2)) - 0.01, 0) }); // ridge along Z
        Assert.Equal(0.01, Contact.Overlap(lower, upper), Close);
    }

    [Fact]
    public void Depth_is_the_shortest_move_that_separates()
    {
        var r = new Random(7);
        for (var i = 0; i < 300; i++)
        {
            var a = RandomBody(r, Vector3d.Zero);
            var b = RandomBody(r, 0.6 * Direction(r));
            var depth = Contact.Overlap(a, b);
            if (depth <= 0)
            {
                continue;
            }

            Assert.True(LeastOverlapSeen(a, b, r) >= depth - Close);
        }
    }

    [Fact]
    public void Enough_stops_early_and_still_tells_the_truth()
    {
        var r = new Random(8);
        for (var i = 0; i < 300; i++)
        {
            var a = RandomBody(r, Vector3d.Zero);
            var b = RandomBody(r, 0.8 * Direction(r));
            var exact = Contact.Overlap(a, b);
            var early = Contact.Overlap(a, b, 0.02);
            Assert.True(early >= exact);
            Assert.Equal(exact <= 0.02, early <= 0.02);
        }
    }

    [Fact]
    public void Rope_apart_from_a_body_is_as_far_as_the_nearest_points()
    {
        var r = new Random(9);
        for (var i = 0; i < 60; i++)
        {
            var body = RandomBody(r, Vector3d.Zero);
            var middle = 1.2 * Direction(r);
            var rope = new Capsule(middle + (0.5 * Direction(r)), middle + (0.5 * Direction(r)), 0.05);
            var depth = Contact.Overlap(rope, body);
            var distance = Distance(rope, body);
            if (distance > 0.01)
            {
                Assert.Equal(rope.Radius - distance, depth, 1e-6);
            }
        }
    }

    [Fact]
    public void Rope_on_a_channel_floor_touches_it()
    {
        var stick = new CutStock(0.089, 0.089, new Plane(-Vector3d.UnitX, 0.3), new Plane(Vector3d.UnitX, 0.3))
        {
            Channels = [new Channel(StockFace.MinusY, 0, 0.02, 0.019, 0)],
        };
        var cells = stick.ConvexCells();
        Assert.Equal(3, cells.Length);
        var radius = 0.0095;
        var floor = -0.0445 + 0.019;
        var rope = new Capsule(new Vector3d(0, floor - radius, -1), new Vector3d(0, floor - radius, 1), radius);
        Assert.Equal(0, cells.Max(cell => Contact.Overlap(rope, cell)), Close);
        var deeper = new Capsule(rope.From + (0.001 * Vector3d.UnitY), rope.To + (0.001 * Vector3d.UnitY), radius);
        Assert.Equal(0.001, cells.Max(cell => Contact.Overlap(deeper, cell)), Close);
    }

    private static ConvexBody Body(Vector3d min, Vector3d max) => ConvexBody.Of(Solid.Box(min, max));

    private static ConvexBody RandomBody(Random r, Vector3d at)
    {
        var solid = Solid.Box(
            new Vector3d(-0.5, -0.1 - (0.2 * r.NextDouble()), -0.2), new Vector3d(0.5, 0.2, 0.1 + (0.2 * r.NextDouble())));
        solid = solid.Cut(
            Plane.Through(new Vector3d(0.35, 0, 0), new Vector3d(1, r.NextDouble() - 0.5, r.NextDouble() - 0.5)), FaceOrigin.Cut).Value;
        var x = Direction(r);
        var z = x.Cross(Direction(r)).Normalized();
        return ConvexBody.Of(solid).Placed(Placement.FromLengthAndThickness(at, x, z));
    }

    private static Vector3d Direction(Random r)
    {
        while (true)
        {
            var v = new Vector3d((2 * r.NextDouble()) - 1, (2 * r.NextDouble()) - 1, (2 * r.NextDouble()) - 1);
            if (v.Length is > 0.1 and < 1)
            {
                return v.Normalized();
            }
        }
    }

    private static Placement Turn(Vector3d axis, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        Vector3d Turned(Vector3d v) => (cos * v) + (sin * axis.Cross(v)) + ((1 - cos) * axis.Dot(v) * axis); // Rodrigues
        return new Placement(Vector3d.Zero, Turned(Vector3d.UnitX), Turned(Vector3d.UnitY), Turned(Vector3d.UnitZ));
    }

    // Every direction gives an upper bound of the depth; the test's directions are not the program's.
    private static double LeastOverlapSeen(ConvexBody a, ConvexBody b, Random r)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < 500; i++)
        {
            var axis = Direction(r);
            var (lowA, highA) = (a.Vertices.Min(axis.Dot), a.Vertices.Max(axis.Dot));
            var (lowB, highB) = (b.Vertices.Min(axis.Dot), b.Vertices.Max(axis.Dot));
            least = Math.Min(least, Math.Min(highA - lowB, highB - lowA));
        }

        return least;
    }

    // Alternating projection: nearest point of the segment, nearest point of the body (Dykstra's method), and again.
    private static double Distance(Capsule rope, ConvexBody body)
    {
        var p = rope.From;
        for (var i = 0; i < 3000; i++)
        {
            var q = Nearest(body, p);
            var line = rope.To - rope.From;
            var s = Math.Clamp((q - rope.From).Dot(line) / line.Dot(line), 0, 1);
            var next = rope.From + (s * line);
            var still = (next - p).Length < 1e-10;
            p = next;
            if (still)
            {
                break;
            }
        }

        return (p - Nearest(body, p)).Length;
    }

    private static Vector3d Nearest(ConvexBody body, Vector3d point)
    {
        var planes = body.Planes;
        var corrections = new Vector3d[planes.Length];
        for (var round = 0; round < 200; round++)
        {
            var before = point;
            for (var i = 0; i < planes.Length; i++)
            {
                var from = point + corrections[i];
                point = from - (Math.Max(0, planes[i].SignedDistance(from)) * planes[i].Normal);
                corrections[i] = from - point;
            }

            if (round > 20 && (point - before).Length < 1e-12)
            {
                break;
            }
        }

        return point;
    }
}
