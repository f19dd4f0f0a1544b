using System.Globalization;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Samples;
using BridgeForm.Tests.Solids;

namespace BridgeForm.Tests.Pieces;

/// <summary>The saw as it is set, against the exact pieces: every gap measured on solids as they are cut.</summary>
public sealed class SawSettingsTests
{
    private static readonly Lazy<BridgeModel> s_demo = new(
        () => Bridges.Build(File.ReadAllText(Path.Combine(Sample.Root, "viewer-samples", "alder-dell", "project.yaml"))));

    private static readonly Lazy<BridgeModel> s_plumb = new(() => Bridges.Build(
        Bridges.Inclined.Replace("span: 12 m, rise: 2 m", "span: 18 m, rise: 1 m", StringComparison.Ordinal)));

    public static TheoryData<string> Names => ["demo", "plumb"];

    [Theory]
    [InlineData("demo", 12)]
    [InlineData("plumb", 40)]
    public void A_bridge_asks_for_no_more_settings_than_its_bar(string name, int most) =>
        Assert.InRange(SawSheet.Settings(Model(name)), 2, most);

    // Ends that meet are found in the world: of two parts of neighbouring bays with one name, the two ends that lie nearest to each
    // other. Together they open by no more than the joint may; what carries load by no more than half a millimetre.
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_joint_stays_within_its_gap(string name)
    {
        var model = Model(name);
        var made = Share(model);
        Assert.All(made.Where(c => c.Exact.Role is Role.Post or Role.Brace), c =>
            Assert.InRange(Math.Max(Measured(c, near: true), Measured(c, near: false)), 0, 0.0005 + 1e-9));
        var parts = made.SelectMany(c => c.Exact.Occurrences.Select(o => (o.Id, Ends: Ends(c, o)))).ToDictionary(p => p.Id, p => p.Ends);
        var (joints, widest) = (0, 0.0);
        foreach (var (id, ends) in parts.Where(p => p.Key[0] is 'B' && !p.Key.Contains("/tread", StringComparison.Ordinal)))
        {
            var bay = int.Parse(id[1..id.IndexOf('/', StringComparison.Ordinal)], CultureInfo.InvariantCulture);
            var next = string.Create(CultureInfo.InvariantCulture, $"B{bay + 1:00}{id[id.IndexOf('/', StringComparison.Ordinal)..]}");
            if (parts.TryGetValue(next, out var others))
            {
                var (one, other) = ends.SelectMany(e => others.Select(o => (e, o))).MinBy(p => (p.e.At - p.o.At).Length);
                Assert.InRange((one.At - other.At).Length, 0, 0.02);
                Assert.InRange(one.Gap + other.Gap, 0, model.Parameters.Shop.JointGap + 1e-9);
                (joints, widest) = (joints + 1, Math.Max(widest, one.Gap + other.Gap));
            }
        }

        Assert.True(joints > 50 && widest > 1e-4, $"{joints} joints, widest {widest}");
    }

    // 18 m with 3 m of rise, plumb: heads of posts turn by 1° from frame to frame, 95 mm · (tan 8.5° − tan 7.5°) = 1.69 mm, and two
    // ends share a setting only where each is within 0.5 mm of it, so no more than 1 mm apart. However settings are chosen, there are no
    // fewer than ends of which each two are further apart than that.
    [Fact]
    public void A_steep_plumb_bridge_asks_for_no_fewer_than_36()
    {
        Assert.Equal(1.69, 95 * (Math.Tan(Bridges.Radians(8.5)) - Math.Tan(Bridges.Radians(7.5))), 0.01);
        var model = Bridges.Build("name: Steep (invented)\nunits: metric\nsite: { span: 18 m, rise: 3 m }\nframes: { stance: plumb }");


        // What the end may open by at most, as the slopes across width and thickness that it may be off by: posts and braces 0.5 mm, ends
        // that meet others, cut at one angle, half of the joint's 1 mm (one of the two has no more), those at the end frames 1/16 in. Two
        // that are further apart than both may be off together share no setting.
        var ends = SawSettings.Share(model.Pieces, model.Parameters.Shop)
            .SelectMany(c => new[] { (c.Exact, Cut: c.Exact.Near, Free: c.NearFree), (c.Exact, Cut: c.Exact.Far, Free: c.FarFree) })
            .Where(e => e.Cut is { Way: CutWay.Saw, OnEdge: false })
            .Select(e =>
            {
                var most = e.Exact.Role is not (Role.Post or Role.Brace) && e.Free ? 0.0254 / 16 : 0.0005;
                return (Across: Math.Abs(Math.Tan(e.Cut.Mitre)), Up: Math.Abs(Math.Tan(e.Cut.Bevel) / Math.Cos(e.Cut.Mitre)),
                    OffAcross: most / e.Exact.Shape.Width, OffUp: most / e.Exact.Shape.Thickness);
            })
            .OrderBy(e => e.OffAcross * e.OffUp).ThenBy(e => e.Up).ThenBy(e => e.Across).ToList();
        bool Share(
            (double Across, double Up, double OffAcross, double OffUp) a, (double Across, double Up, double OffAcross, double OffUp) b) =>
            Math.Abs(a.Across - b.Across) <= a.OffAcross + b.OffAcross + 1e-9 && Math.Abs(a.Up - b.Up) <= a.OffUp + b.OffUp + 1e-9;

        // Those that could share with the fewest others first.
        var apart = 0;
        for (var left = ends; left.Count > 0; apart++)
        {
            var next = left.MinBy(e => left.Count(o => Share(e, o)));
            left = [.. left.Where(e => !Share(e, next))];
        }

        var settings = SawSheet.Settings(model);
        Assert.InRange(apart, 36, settings);
        Assert.InRange(settings, 36, 54);
    }

    // Steps of 5° serve hardly any cut; what is square is not spoiled by them.
    [Fact]
    public void A_square_end_stays_square_whatever_the_steps()
    {
        var shop = s_demo.Value.Parameters.Shop;
        var coarse = shop with { Saw = shop.Saw with { Step = 5 * Math.PI / 180 } };
        var square = SawSettings.Share(s_demo.Value.Pieces, coarse).Where(c => c.Exact.Role is Role.Base).ToList();
        Assert.NotEmpty(square);
        Assert.All(square, c => Assert.True(c.NearGap < 1e-9 && c.FarGap < 1e-9, $"{c.Exact.Mark}: {c.NearGap}, {c.FarGap}"));
        Assert.All(SawSettings.Share(s_demo.Value.Pieces, coarse), c =>
            Assert.InRange(Math.Max(c.NearGap, c.FarGap), 0, (0.0254 / 16) + 1e-9));
    }

    private static PlacedEnd[] Ends(AsCut cut, Occurrence place) =>
    [
        new(place.Placement.ToWorld(new Vector3d(cut.Exact.Shape.Near.XAt(0, 0), 0, 0)), Measured(cut, near: true)),
        new(place.Placement.ToWorld(new Vector3d(cut.Exact.Shape.Far.XAt(0, 0), 0, 0)), Measured(cut, near: false)),
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_gap_that_is_told_is_that_of_the_solids(string name)
    {
        foreach (var cut in Share(Model(name)))
        {
            Assert.Equal(Measured(cut, near: true), cut.NearGap, 1e-9);
            Assert.Equal(Measured(cut, near: false), cut.FarGap, 1e-9);
        }
    }

    // manifold-3d cuts the stick both ways and weighs what the one has and the other lacks. Over the section the two planes differ by
    // −g/2 to g/2 about the middle: on average by g/4 where only width or only thickness counts, by g/6 where both do alike.
    [Fact]
    [Trait("Category", "Referee")]
    public void An_outside_library_finds_the_same_gaps_between_the_solids()
    {
        var ends = Share(s_demo.Value)
            .SelectMany(c => new[]
            {
                new CutEnd(c.Exact.Shape, c.Shape.Near, c.Exact.Shape.Near, c.NearGap, Near: true),
                new CutEnd(c.Exact.Shape, c.Shape.Far, c.Exact.Shape.Far, c.FarGap, Near: false),
            })
            .Where(e => e.Gap > 1e-5 && e.Shape.Rips.IsEmpty)
            .ToList();
        Assert.True(ends.Count > 10);
        var bodies = ends.SelectMany(e => new[] { Body(e.Shape, e.Near, e.Was, e.Cut), Body(e.Shape, e.Near, e.Cut, e.Was) });
        var volumes = Manifold.Ask(bodies).Chunk(2).Select(pair => pair.Sum(v => v.Volume)).ToList();
        foreach (var (end, volume) in ends.Zip(volumes))
        {
            var across = end.Gap * end.Shape.Width * end.Shape.Thickness;
            Assert.InRange(volume, across / 6 * 0.99, across / 4 * 1.01);
        }
    }

    // Half a degree over 95 mm is 0.8 mm and stays; the smallest floors of a climbing bridge are cut level. From the corners of the two
    // solids: a mouth's arris moves by half of what the floor is out from face to face.
    [Fact]
    public void Floors_of_channels_are_cut_level_within_half_a_millimetre_and_the_others_as_they_slope()
    {
        var (level, sloped) = (0, 0);
        foreach (var cut in Share(s_plumb.Value).Where(c => !c.Exact.Shape.Channels.IsEmpty))
        {
            var bare = cut.Exact.Shape with { Holes = [] };
            var (exact, made) = (StockSolid.Build(bare).OrNull!, StockSolid.Build(bare with { Channels = cut.Shape.Channels }).OrNull!);
            var moved = 2 * made.Vertices.Max(v => exact.Vertices.Min(e => (e - v).Length));
            var slope = cut.Exact.Shape.Channels.Max(c => Math.Abs(c.FloorSlope));
            var across = cut.Exact.Shape.Channels[0].Face is StockFace.MinusY ? cut.Exact.Shape.Thickness : cut.Exact.Shape.Width;
            var mayBeLevel = slope * across <= 0.0005;
            Assert.Equal(mayBeLevel ? slope * across : 0, moved, 1e-9);
            (level, sloped) = (level + (mayBeLevel && slope > 1e-6 ? 1 : 0), sloped + (mayBeLevel ? 0 : 1));
        }

        Assert.True(level > 0 && sloped > 5, $"{level} level, {sloped} sloped");
    }

    // A shop that allows no gap, and a saw that is set to anything: what is shared then is equal.
    [Fact]
    public void Without_a_gap_every_cut_keeps_its_angle()
    {
        var shop = s_demo.Value.Parameters.Shop with { JointGap = 0 };
        Assert.All(
            SawSettings.Share(s_demo.Value.Pieces, shop)
                .Where(c => c.Exact.Role is Role.Board or Role.Rail or Role.Cap)
                .Where(c => c.Exact.Occurrences.All(o => o.Id[1..3] is not ("01" or "11"))),
            c => Assert.InRange(Math.Max(c.NearGap, c.FarGap), 0, 1e-9));
        Assert.True(
            SawSheet.Settings(s_demo.Value with { Parameters = s_demo.Value.Parameters with { Shop = shop } })
                > SawSheet.Settings(s_demo.Value));
    }

    // Wide steps serve fewer cuts: a saw with stops at 5° alone makes no small angle, and none is rounded to one it should not have.
    [Fact]
    public void Settings_are_steps_of_the_saw_and_never_beyond_its_limits()
    {
        foreach (var degrees in (double[])[0.25, 0.5, 1, 5])
        {
            var shop = s_plumb.Value.Parameters.Shop;
            var step = Bridges.Radians(degrees);
            foreach (var cut in SawSettings.Share(s_plumb.Value.Pieces, shop with { Saw = shop.Saw with { Step = step } }))
            {
                foreach (var (was, end, gap) in new[] { (cut.Exact.Near, cut.Near, cut.NearGap), (cut.Exact.Far, cut.Far, cut.FarGap) })
                {
                    Assert.True(Math.Abs(was.Mitre - end.Mitre) <= step + 1e-9 && Math.Abs(was.Bevel - end.Bevel) <= step + 1e-9);
                    Assert.InRange(gap, 0, cut.Exact.Role is Role.Post or Role.Brace ? 0.0005 + 1e-9 : 1);
                    Assert.True(end == was || IsMultiple(end.Mitre, step) || IsMultiple(end.Mitre, Bridges.Radians(0.1)), $"{end}");
                    Assert.InRange(Math.Abs(end.Mitre), 0, end.InReach ? shop.MitreLimit + 1e-4 : 2);
                }
            }
        }
    }

    private static bool IsMultiple(double angle, double step) => Math.Abs((angle / step) - Math.Round(angle / step)) < 1e-6;

    private static IReadOnlyList<AsCut> Share(BridgeModel model) => SawSettings.Share(model.Pieces, model.Parameters.Shop);

    /// <summary>From the corners of the two solids: where an end's plane meets the four edges of the stick, before and after.</summary>
    private static double Measured(AsCut cut, bool near)
    {
        var (was, now) = near ? (cut.Exact.Shape.Near, cut.Shape.Near) : (cut.Exact.Shape.Far, cut.Shape.Far);
        var solid = StockSolid.Build(cut.Shape with { Channels = [], Holes = [], Rips = [] }).OrNull!;
        var corners = solid.Vertices.Where(v => Math.Abs(now.Normal.Dot(v) - now.Offset) < 1e-9).ToList();
        Assert.Equal(4, corners.Count);
        var open = corners.Select(v => v.X - was.XAt(v.Y, v.Z)).ToList();
        return open.Max() - open.Min();
    }

    /// <summary>What a stick that ends at one plane has beyond another.</summary>
    private static CutBody Body(CutStock shape, bool near, Plane ends, Plane beyond)
    {
        var half = new Vector3d(20, shape.Width / 2, shape.Thickness / 2);
        var other = near ? shape.Far : shape.Near;
        return new CutBody(-half, half, [new(other, null), new(ends, null), new(beyond.Flipped(), null)]);
    }

    private sealed record PlacedEnd(Vector3d At, double Gap);

    private sealed record CutEnd(CutStock Shape, Plane Cut, Plane Was, double Gap, bool Near);

    private static BridgeModel Model(string name) => name is "demo" ? s_demo.Value : s_plumb.Value;
}
