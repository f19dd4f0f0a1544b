using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Solids;

/// <summary>Cutters that touch, coincide, miss and swallow: where mesh kernels come out open. All on a box of 1 × 0.08 × 0.04 m.</summary>
public class PlantedCutsTest
{
    private const double Round = 1e-12;

    // A cutter that only touches is grown by four microns, on at most 0.05 m² of skin.
    private const double Grown = 4 * Tolerances.Corner * 0.05;

    private static readonly Vector3d s_max = new(1, 0.08, 0.04);
    private static readonly Solid s_box = Solid.Box(default, s_max);

    [Fact]
    public void Cutter_that_misses_gives_the_same_solid() =>
        Assert.Same(s_box, s_box.Subtract(Box(new Vector3d(2, 0, 0), new Vector3d(3, 1, 1))).Value);

    [Fact]
    public void Plane_that_misses_gives_the_same_solid() =>
        Assert.Same(s_box, s_box.Cut(new Plane(Vector3d.UnitX, 2), FaceOrigin.Cut).Value);

    [Fact]
    public void Cutter_that_swallows_all_leaves_nothing()
    {
        Assert.Equal(SolidFaultKind.NothingLeft, s_box.Subtract(Box(new Vector3d(-1, -1, -1), new Vector3d(2, 2, 2))).Fault?.Kind);
        Assert.Equal(SolidFaultKind.NothingLeft, s_box.Subtract(Box(default, s_max)).Fault?.Kind);
        Assert.Equal(SolidFaultKind.NothingLeft, s_box.Cut(new Plane(Vector3d.UnitX, 0), FaceOrigin.Cut).Fault?.Kind);
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, 0.08, 0)]
    [InlineData(0, 0, -1)]
    public void Cutter_against_a_face_from_outside_gives_the_same_solid(double x, double y, double z)
    {
        var min = new Vector3d(x, y, z);
        Assert.Same(s_box, s_box.Subtract(Box(min, min + new Vector3d(1, 1, 1))).Value);
    }

    [Theory]
    [InlineData(1, 0.08, 0)]
    [InlineData(1, 0.08, 0.04)]
    public void Cutter_that_touches_an_edge_or_a_corner_gives_the_same_solid(double x, double y, double z)
    {
        var min = new Vector3d(x, y, z);
        Assert.Same(s_box, s_box.Subtract(Box(min, min + new Vector3d(1, 1, 1))).Value);
    }

    [Fact]
    public void Pocket_flush_with_a_face_opens_it()
    {
        var pocket = Check(s_box.Subtract(Box(new Vector3d(0.2, 0.02, 0.01), new Vector3d(0.3, 0.04, 0.04))), 0.1 * 0.02 * 0.03);
        Assert.Equal(2, pocket.Faces.Single(face => face.Plane.Normal.Z > 0.5 && face.Origin == FaceOrigin.Stock).Loops.Length);
    }

    [Fact]
    public void Corner_block_flush_with_three_faces_goes() =>
        Assert.Equal(9, Check(s_box.Subtract(Box(new Vector3d(0.9, 0.05, 0.02), s_max)), 0.1 * 0.03 * 0.02).Faces.Length);

    [Fact]
    public void Channel_wall_in_the_plane_of_the_end() =>
        Check(s_box.Subtract(Box(new Vector3d(0, -1, -1), new Vector3d(0.1, 0.02, 1))), 0.1 * 0.02 * 0.04);

    [Fact]
    public void Two_channels_that_share_a_wall_are_one()
    {
        var one = s_box.Subtract(Box(new Vector3d(0.2, -1, -1), new Vector3d(0.3, 0.02, 1))).Value;
        var both = Check(one.Subtract(Box(new Vector3d(0.3, -1, -1), new Vector3d(0.4, 0.02, 1))), 0.2 * 0.02 * 0.04);
        Assert.DoesNotContain(both.Vertices, v => Math.Abs(v.X - 0.3) < 0.01 && v.Y < 0.01);
        Check(one.Subtract(Box(new Vector3d(0.3, -1, -1), new Vector3d(0.4, 0.05, 1))), 0.1 * (0.02 + 0.05) * 0.04);
    }

    [Fact]
    public void Channels_that_meet_in_a_line_are_parted()
    {
        var one = s_box.Subtract(Box(new Vector3d(0.2, -1, -1), new Vector3d(0.3, 0.04, 1))).Value;
        Check(one.Subtract(Box(new Vector3d(0.3, 0.04, -1), new Vector3d(0.4, 1, 1))), 2 * 0.1 * 0.04 * 0.04, Grown);
    }

    [Fact]
    public void Hole_edge_that_touches_a_side_is_opened()
    {
        var diamond = new ConvexCutter(
            [.. new[] { (1, 1), (-1, 1), (1, -1), (-1, -1) }.Select(d => Plane.Through(
                new Vector3d(0.5 + (0.01 * d.Item1), 0.07, 0), new Vector3d(d.Item1, d.Item2, 0)))],
            FaceOrigin.Hole);
        Check(s_box.Subtract(diamond), 0.02 * 0.02 / 2 * 0.04, Grown);
    }

    [Fact]
    public void Hole_half_out_of_the_side() => CheckStick(
        stick => stick with { Holes = [new Hole(StockFace.PlusZ, 0.5, 0.04, 0.01, null)] }, Math.PI * 0.01 * 0.01 / 8 * 0.04);

    [Fact]
    public void Cut_through_a_holes_middle() => CheckStick(
        stick => stick with { Far = new Plane(Vector3d.UnitX, 1), Holes = [new Hole(StockFace.PlusZ, 1, 0, 0.01, null)] },
        Math.PI * 0.01 * 0.01 / 8 * 0.04);

    [Fact]
    public void Floor_of_a_channel_in_the_plane_of_a_holes_bottom() => CheckStick(
        stick => stick with
        {
            Channels = [new Channel(StockFace.MinusY, 0.5, 0.02, 0.03, 0)],
            Holes = [new Hole(StockFace.MinusY, 0.51, 0, 0.01, 0.03)],
        },
        (0.02 * 0.03 * 0.04) + (Math.PI * 0.01 * 0.01 / 8 * 0.03));

    [Fact]
    public void Floor_that_runs_out_at_the_sticks_edge() => CheckStick(
        stick => stick with { Channels = [new Channel(StockFace.MinusY, 0.5, 0.02, 0.01, 0.5)] }, 0.02 * 0.01 * 0.04);

    // The mouths' ends then lie on one line but for round-off, and beside it holes whose triangles would run along it.
    [Fact]
    public void Two_floors_that_run_out_just_short_of_the_far_edge_between_holes()
    {
        var random = new Random(1);
        for (var i = 0; i < 200; i++)
        {
            var (depth, wall) = (0.001 + (0.02 * random.NextDouble()), Math.Exp((8 * random.NextDouble()) - 13));
            var (x, width) = (0.1 + (0.4 * random.NextDouble()), 0.005 + (0.02 * random.NextDouble()));
            Channel Running(double center) => new(StockFace.MinusZ, center, width, depth / 2, -depth / (0.089 - wall));
            var stick = new CutStock(0.089, 0.089, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 3.5))
            {
                Channels = [Running(x), Running(3.5 - x)],
                Holes =
                [
                    .. new[] { x - 0.03, x + 0.03, 3.5 - x - 0.03, 3.5 - x + 0.03 }.Select(
                        center => new Hole(StockFace.MinusZ, center, 0, 0.006, 0.0016)),
                ],
            };
            Assert.True(stick.ToSolid().Value.Audit().IsEmpty, $"{i}: depth {depth}, wall {wall}, at {x}, {width} wide");
        }
    }

    [Fact]
    public void Box_inside_leaves_a_hollow()
    {
        var hollow = Check(s_box.Subtract(Box(new Vector3d(0.2, 0.02, 0.01), new Vector3d(0.3, 0.04, 0.03))), 0.1 * 0.02 * 0.02);
        Assert.Equal(1, hollow.ComponentCount);
    }

    [Fact]
    public void Plane_through_the_apex_of_a_notch_leaves_a_closed_body()
    {
        var notch = new ConvexCutter(
            [
                Plane.Through(new Vector3d(0.5, 0.04, 0), new Vector3d(1, 1, 0)),
                Plane.Through(new Vector3d(0.5, 0.04, 0), new Vector3d(-1, 1, 0)),
            ],
            FaceOrigin.Channel);
        var notched = Check(s_box.Subtract(notch), 0.04 * 0.04 * 0.04);
        var parted = notched.Cut(new Plane(Vector3d.UnitY, 0.04), FaceOrigin.Cut).Value;
        Assert.Empty(parted.Audit());
        Assert.Equal((0.04 * 0.04) - (0.04 * 0.04 * 0.04), parted.Volume, Grown);
        Assert.Equal(2, parted.ComponentCount);
    }

    [Fact]
    public void Face_on_the_plane_of_a_cut_stays_what_it_was()
    {
        var cut = s_box.Cut(new Plane(Vector3d.UnitY, 0.08), FaceOrigin.Cut).Value;
        Assert.Equal(0, cut.AreaOf(FaceOrigin.Cut), Round);
    }

    [Fact]
    public void No_triangle_is_flat()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var member = RandomMember.Make(seed, withinRoundOff: false);
            var solid =
                member.Steps.Aggregate(StockSolid.Build(member.Stock with { Channels = [], Holes = [] }), (b, s) => b.Then(s.Apply)).OrNull;
            if (solid?.Triangulate() is not { } mesh)
            {
                continue;
            }

            for (var t = 0; t < mesh.TriangleCount; t++)
            {
                var (a, b, c) = mesh.Triangle(t);
                Assert.True((b - a).Cross(c - a).Dot(mesh.Normals[mesh.Indices[3 * t]]) > 0, $"seed {seed}");
            }
        }
    }

    private static ConvexCutter Box(Vector3d min, Vector3d max) => ConvexCutter.Box(min, max, FaceOrigin.Channel);

    private static Solid Check(SolidResult result, double taken, double tolerance = Round)
    {
        var solid = result.Value;
        Assert.Empty(solid.Audit());
        Assert.Equal(taken, s_box.Volume - solid.Volume, tolerance);
        return solid;
    }

    private static void CheckStick(Func<CutStock, CutStock> change, double taken)
    {
        var stick = new CutStock(0.08, 0.04, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1));
        var solid = change(stick).ToSolid().Value;
        Assert.Empty(solid.Audit());
        Assert.Equal(taken, 0.0032 - solid.Volume, Round);
    }
}
