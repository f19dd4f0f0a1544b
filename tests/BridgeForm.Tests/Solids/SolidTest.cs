using BridgeForm.Quantities;
using BridgeForm.Solids;
using CsCheck;

namespace BridgeForm.Tests.Solids;

public class SolidTest
{
    private const double Round = 1e-12;
    private static readonly Plane s_near = new(-Vector3d.UnitX, 0);
    private static readonly Plane s_far = new(Vector3d.UnitX, 1);
    private static readonly CutStock s_stick = new(0.08, 0.04, s_near, s_far);

    [Fact]
    public void Box_has_the_measures_of_a_box()
    {
        var box = Solid.Box(new Vector3d(1, 2, 3), new Vector3d(2, 4, 6));
        Assert.Equal(6, box.Volume, Round);
        Assert.Equal(22, box.Area, Round);
        Assert.Equal(0, (box.Centroid - new Vector3d(1.5, 3, 4.5)).Length, Round);
        Assert.Equal((new Vector3d(1, 2, 3), new Vector3d(2, 4, 6)), box.Bounds);
        Assert.Equal(1, box.ComponentCount);
        Assert.Equal(12, box.Triangulate().TriangleCount);
        Assert.Empty(box.Audit());
    }

    [Fact]
    public void Wedge_is_half_its_box()
    {
        var wedge = Solid.Box(default, new Vector3d(3, 2, 1)).Cut(Plane.Through(default, new Vector3d(-2, 3, 0)), FaceOrigin.Cut).Value;
        Assert.Equal(3, wedge.Volume, Round);
        Assert.Equal(5, wedge.Faces.Length);
        Assert.Equal(6, wedge.Vertices.Length);
        Assert.Equal(Math.Sqrt(13), wedge.AreaOf(FaceOrigin.Cut), Round);
        Assert.Equal(0, (wedge.Centroid - new Vector3d(2, 2.0 / 3, 0.5)).Length, Round);
        Assert.Empty(wedge.Audit());
    }

    [Fact]
    public void Stick_between_mitred_ends_has_section_times_middle_length()
    {
        var stick = s_stick with { Far = Plane.Through(new Vector3d(1, 0, 0), new Vector3d(1, 0.5, 0.2)) };
        var solid = stick.ToSolid().Value;
        Assert.Equal(0.08 * 0.04, solid.Volume, Round);
        Assert.Equal(6, solid.Faces.Length);
        Assert.Equal(0.0032 * (1 + Math.Sqrt(1 + 0.25 + 0.04)), solid.AreaOf(FaceOrigin.Cut), Round);
    }

    [Fact]
    public void Ends_that_cross_inside_the_section_leave_a_wedge()
    {
        var stick = new CutStock(
            0.08, 0.04, Plane.Through(default, new Vector3d(-1, 1, 0)), Plane.Through(default, new Vector3d(1, 1, 0)));
        var solid = stick.ToSolid().Value;
        Assert.Equal(0.04 * 0.04 * 0.04, solid.Volume, Round); // triangle of height 0.04 and base 0.08, 0.04 thick
        Assert.Empty(solid.Audit());
        Assert.Equal(SolidFaultKind.NothingLeft, (stick with { Far = new Plane(Vector3d.UnitX, -1) }).ToSolid().Fault?.Kind);
    }

    [Theory]
    [InlineData(StockFace.MinusY)]
    [InlineData(StockFace.MinusZ)]
    [InlineData(StockFace.PlusY)]
    public void Sloped_channel_takes_width_times_mean_depth_times_breadth(StockFace face)
    {
        var breadth = face == StockFace.MinusZ ? 0.08 : 0.04;
        var solid = (s_stick with { Channels = [new Channel(face, 0.4, 0.02, 0.015, 0.1)] }).ToSolid().Value;
        Assert.Equal((0.08 * 0.04) - (0.02 * 0.015 * breadth), solid.Volume, Round);
        var floor = 0.02 * breadth * Math.Sqrt(1 + 0.01);
        Assert.Equal(floor + (2 * breadth * 0.015), solid.AreaOf(FaceOrigin.Channel), Round);
        Assert.Empty(solid.Audit());
    }

    [Fact]
    public void Channel_floor_rises_towards_plus_Z()
    {
        var solid = (s_stick with { Channels = [new Channel(StockFace.MinusY, 0.4, 0.02, 0.015, 0.1)] }).ToSolid().Value;
        var high = solid.Vertices.Where(v => v.Z > 0 && v.X is > 0.1 and < 0.9).Max(v => v.Y is < 0.03 ? v.Y : -1);
        Assert.Equal(-0.04 + 0.015 + (0.1 * 0.02), high, Round);
    }

    [Fact]
    public void Hole_takes_the_circles_area()
    {
        var area = Math.PI * 0.01 * 0.01 / 4;
        var through = (s_stick with { Holes = [new Hole(StockFace.PlusZ, 0.3, 0.01, 0.01, null)] }).ToSolid().Value;
        Assert.Equal((0.08 * 0.04) - (area * 0.04), through.Volume, Round);
        Assert.Equal(6 + StockCutters.HoleSides, through.Faces.Length);
        var blind = (s_stick with { Holes = [new Hole(StockFace.MinusY, 0.3, 0.01, 0.01, 0.05)] }).ToSolid().Value;
        Assert.Equal((0.08 * 0.04) - (area * 0.05), blind.Volume, Round);
        Assert.Equal(7 + StockCutters.HoleSides, blind.Faces.Length);
        Assert.Empty(through.Audit());
        Assert.Empty(blind.Audit());
    }

    [Fact]
    public void Cells_and_solid_have_the_same_volume()
    {
        var stick = s_stick with
        {
            Far = Plane.Through(new Vector3d(1, 0, 0), new Vector3d(1, 0.5, 0.2)),
            Rips = [Plane.Through(new Vector3d(0, 0.03, 0), new Vector3d(0.05, 1, 0.1))],
            Channels = [new Channel(StockFace.MinusY, 0.3, 0.02, 0.015, 0.1), new Channel(StockFace.MinusZ, 0.3, 0.05, 0.01, 0)],
        };
        var cells = stick.ConvexCells();
        Assert.All(
            cells,
            cell => Assert.All(cell.Vertices, v => Assert.All(cell.Planes, p => Assert.True(p.SignedDistance(v) < Tolerances.Planarity))));
        foreach (var (i, a) in cells.Index())
        {
            Assert.All(cells.Skip(i + 1), b => Assert.True(Contact.Overlap(a, b) < Tolerances.Planarity));
        }

        var probes = new Random(3);
        var solid = stick.ToSolid().Value;
        for (var i = 0; i < 2000; i++)
        {
            var p = new Vector3d(probes.NextDouble(), 0.08 * (probes.NextDouble() - 0.5), 0.04 * (probes.NextDouble() - 0.5));
            Assert.Equal(Holds(solid, p), cells.Any(cell => cell.Planes.All(plane => plane.SignedDistance(p) < 0)));
        }
    }

    [Fact]
    public void Channel_as_deep_as_the_stick_leaves_two_parts()
    {
        var solid = (s_stick with { Channels = [new Channel(StockFace.MinusY, 0.4, 0.02, 0.08, 0)] }).ToSolid().Value;
        Assert.Equal(2, solid.ComponentCount);
        Assert.Equal(0.0032 * 0.98, solid.Volume, Round);
        Assert.Empty(solid.Audit());
    }

    [Fact]
    public void Volume_is_the_same_in_any_order_of_cuts()
    {
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var member = RandomMember.Make(seed, withinRoundOff: false);
            var whole = StockSolid.Build(member.Stock with { Channels = [], Holes = [] });
            var there = member.Steps.Aggregate(whole, (body, step) => body.Then(step.Apply)).OrNull;
            var back = member.Steps.Reverse().Aggregate(whole, (body, step) => body.Then(step.Apply)).OrNull;
            return Math.Abs((there?.Volume ?? 0) - (back?.Volume ?? 0)) <= 2 * Tolerances.Corner * (whole.OrNull?.Area ?? 0);
        }, iter: 300);
    }

    [Fact]
    public void Mirror_image_has_the_same_volume_and_mirrored_centroid()
    {
        static Vector3d Flip(Vector3d v) => v with { Z = -v.Z };
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var member = RandomMember.Make(seed, withinRoundOff: false);
            var (stock, mirrored) = (Bare(member.Stock), Bare(member.Stock));
            mirrored = mirrored with
            {
                Near = mirrored.Near with { Normal = Flip(mirrored.Near.Normal) },
                Far = mirrored.Far with { Normal = Flip(mirrored.Far.Normal) },
                Rips = [.. mirrored.Rips.Select(rip => rip with { Normal = Flip(rip.Normal) })],
                Channels = [.. mirrored.Channels.Select(c => c with { FloorSlope = -c.FloorSlope })],
            };
            var (a, b) = (stock.ToSolid().OrNull, mirrored.ToSolid().OrNull);
            if (a is null || b is null)
            {
                return a is null == b is null;
            }

            return Math.Abs(a.Volume - b.Volume) <= 2 * Tolerances.Corner * a.Area
                && (a.Centroid - Flip(b.Centroid)).Length <= 1e-3 * (a.Bounds.Max - a.Bounds.Min).Length;
        }, iter: 300);

        static CutStock Bare(CutStock stock) => stock with
        {
            Channels = [.. stock.Channels.Select(c => c with { Face = StockFace.MinusY })],
            Holes = [],
        };
    }

    [Fact]
    public void Twice_the_size_is_eight_times_the_volume()
    {
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var stock = RandomMember.Make(seed, withinRoundOff: false).Stock;
            Plane Twice(Plane plane) => plane with { Offset = 2 * plane.Offset };
            var twice = new CutStock(2 * stock.Width, 2 * stock.Thickness, Twice(stock.Near), Twice(stock.Far))
            {
                Rips = [.. stock.Rips.Select(Twice)],
                Channels = [.. stock.Channels.Select(c => c with { Center = 2 * c.Center, Width = 2 * c.Width, Depth = 2 * c.Depth })],
                Holes = [
                    .. stock.Holes
                        .Select(h => h with { X = 2 * h.X, Across = 2 * h.Across, Diameter = 2 * h.Diameter, Depth = 2 * h.Depth }),
                ],
            };
            var (small, large) = (stock.ToSolid().OrNull, twice.ToSolid().OrNull);
            if (small is null || large is null)
            {
                return small is null == large is null;
            }

            return Math.Abs((8 * small.Volume) - large.Volume) <= 16 * Tolerances.Corner * small.Area;
        }, iter: 300);
    }

    // Even-odd count of the faces' triangles that a slanting ray meets.
    private static bool Holds(Solid solid, Vector3d point)
    {
        var mesh = solid.Triangulate();
        var ray = new Vector3d(0.3127, 0.8712, 0.3791);
        var hits = 0;
        for (var t = 0; t < mesh.TriangleCount; t++)
        {
            var (a, b, c) = mesh.Triangle(t);
            var (ab, ac) = (b - a, c - a); // Möller and Trumbore, 1997
            var h = ray.Cross(ac);
            var det = ab.Dot(h);
            var s = point - a;
            var u = s.Dot(h) / det;
            var q = s.Cross(ab);
            var v = ray.Dot(q) / det;
            if (u >= 0 && v >= 0 && u + v <= 1 && ac.Dot(q) / det > 0)
            {
                hits++;
            }
        }

        return hits % 2 == 1;
    }
}
