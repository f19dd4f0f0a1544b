using BridgeForm.Checks.Codes;
using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Checks.Codes;

/// <summary>The sphere test against balls that are really pushed through the guard.</summary>
public sealed class SphereTests
{
    // Centres of balls lie on a grid this fine, metres; a ball is called stuck or free only by a wider margin.
    private const double Grid = 0.002;
    private const double Margin = 0.005;

    [Theory]
    [InlineData("")]
    [InlineData("\nguard: { rails: { section: 1x4, heights: [5 in, 12 in, 17 in, 26 in, 31 in] } }\n")]
    [InlineData("\nguard: { rails: { section: 2x4, heights: [8 in, 15 in, 22 in, 29 in, 36 in] } }\n")]
    [InlineData("\ndeck: { layout: across, stringer: { section: 2x6, count: 3 } }\n")]
    public void The_widest_opening_lets_through_a_ball_just_smaller_and_none_just_larger(string more)
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden + more));
        var ladder = GuardOpenings.Ladder(layout, 2);
        var across = Plane.Through(layout.Poses[1].Node, layout.Deck.Direction(2));
        var widest = ladder.Zip(ladder.Skip(1), (a, b) => CrossSections.Clear(a, b, across)).Max();
        var outlines = ladder.ConvertAll(m => Outline(m, across));
        Assert.True(Passes(outlines, widest - Margin), "a smaller ball must pass");
        Assert.False(Passes(outlines, widest + Margin), "a larger ball must not");
    }

    // Floods the ball's centre from the walkway's side; it is through when it comes out beyond everything. Centres stay
    // between the middle of the deck's edge and the middle of the cap, so that nothing goes around.
    private static bool Passes(List<(double Z, double Y)[]> outlines, double diameter)
    {
        double low = Middle(outlines[0]), high = Middle(outlines[^1]);
        double left = outlines.SelectMany(o => o).Min(p => p.Z), right = outlines.SelectMany(o => o).Max(p => p.Z) + (2 * diameter);
        int columns = (int)((right - left) / Grid), rows = (int)((high - low) / Grid);
        var seen = new bool[columns + 1, rows + 1];
        var next = new Stack<(int I, int J)>();
        for (var j = 0; j <= rows; j++)
        {
            Visit(0, j);
        }

        while (next.TryPop(out var at))
        {
            if (at.I == columns)
            {
                return true;
            }

            Visit(at.I + 1, at.J);
            Visit(at.I - 1, at.J);
            Visit(at.I, at.J + 1);
            Visit(at.I, at.J - 1);
        }

        return false;

        void Visit(int i, int j)
        {
            if (i < 0 || j < 0 || i > columns || j > rows || seen[i, j])
            {
                return;
            }

            seen[i, j] = true;
            var centre = (left + (i * Grid), low + (j * Grid));
            if (outlines.TrueForAll(o => Distance(o, centre) >= diameter / 2))
            {
                next.Push((i, j));
            }
        }
    }

    private static double Middle((double Z, double Y)[] outline) => outline.Average(p => p.Y);

    /// <summary>Distance from a convex outline; 0 inside.</summary>
    private static double Distance((double Z, double Y)[] outline, (double Z, double Y) p)
    {
        double nearest = double.PositiveInfinity;
        bool anyLeft = false, anyRight = false;
        for (var k = 0; k < outline.Length; k++)
        {
            var (a, b) = (outline[k], outline[(k + 1) % outline.Length]);
            double dz = b.Z - a.Z, dy = b.Y - a.Y;
            var side = (dz * (p.Y - a.Y)) - (dy * (p.Z - a.Z));
            anyLeft |= side > 0;
            anyRight |= side < 0;
            var s = Math.Clamp((((p.Z - a.Z) * dz) + ((p.Y - a.Y) * dy)) / ((dz * dz) + (dy * dy)), 0, 1);
            nearest = Math.Min(nearest, double.Hypot(p.Z - a.Z - (s * dz), p.Y - a.Y - (s * dy)));
        }

        return anyLeft && anyRight ? nearest : 0;
    }

    /// <summary>The four long edges of a stick where they cross a plane: z, and up within the plane.</summary>
    private static (double Z, double Y)[] Outline(Member member, Plane across)
    {
        var up = across.Normal.Cross(Vector3d.UnitZ) is { Y: < 0 } down ? -down : across.Normal.Cross(Vector3d.UnitZ);
        var (w, t) = (member.Shape.Width / 2, member.Shape.Thickness / 2);
        return
        [
            .. new (double Y, double Z)[] { (-w, -t), (w, -t), (w, t), (-w, t) }.Select(c =>
            {
                var edge = member.Placement.ToWorld(new Vector3d(0, c.Y, c.Z));
                var point = edge + (across.LineParameter(edge, member.Placement.X) * member.Placement.X);
                return (point.Z, point.Dot(up));
            }),
        ];
    }
}
