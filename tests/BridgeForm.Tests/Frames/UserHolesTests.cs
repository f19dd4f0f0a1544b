using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Frames;

public class UserHolesTests
{
    private const string Frame = """
        name: Holes off the middle (invented)
        units: metric
        site: { span: 8 m, rise: 0.8 m }
        ropes: { type: rope-6x19-iwrc-eips-3/4, spacing: 1150 mm, sag: 5 % }
        """;

    private static string Text(string stance, string holes, bool flat = false) => Frame + $$"""

        frames:
          spacing: 950 mm
          stance: {{stance}}
          base: { section: 95 x 145 mm, length: 1540 mm{{(flat ? ", flat: true" : "")}} }
          channel: { clearance: 3 mm, depth: 24 mm, end_depth: 32 mm }
          post: { section: 45 x 95 mm, length: 1050 mm, lean: 7 deg, foot: 455 mm }
          brace: { section: 45 x 95 mm, lean: 14 deg, foot: 725 mm }
        holes:
        {{holes}}
        """;

    private static string RandomHole(Random random)
    {
        var wide = random.Next(2) == 0;
        var face = wide ? "wide" : random.Next(2) == 0 ? "top" : "bottom";
        var across = (random.NextDouble() - 0.5) * (wide ? 60 : 20);
        var from = random.Next(2) == 0 ? "from_end" : "from_far_end";
        var depth = random.Next(2) == 0 ? "" : ", depth: 21 mm";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{{ face: {face}, {from}: {40 + random.Next(90)} mm, across: {across:0.0} mm, diameter: {6 + random.Next(6)} mm{depth} }}");
    }

    [Fact]
    public void Left_and_right_are_mirror_images_whatever_the_holes()
    {
        var random = new Random(31);
        foreach (var stance in (string[])["square", "plumb"])
        {
            for (var i = 0; i < 12; i++)
            {
                var text = Text(stance, $"  post: [{RandomHole(random)}, {RandomHole(random)}]\n  brace: [{RandomHole(random)}]");
                var members = Members.Frame(Bridges.Layout(Bridges.Read(text)), 3).Members;
                foreach (var name in (string[])["post", "brace"])
                {
                    var left = Corners(members.Single(m => m.Id == $"F03/{name}-left"));
                    var right = Corners(members.Single(m => m.Id == $"F03/{name}-right"));
                    Assert.Equal(left.Length, right.Length);
                    Assert.All(left.Select(p => p with { Z = -p.Z }), p => Assert.True(right.Min(q => (q - p).Length) < 1e-9, text));
                }
            }
        }
    }

    private static Vector3d[] Corners(Member member) => [.. StockSolid.Build(member.Shape).Value.Vertices.Select(member.Placement.ToWorld)];

    [Theory]
    [InlineData("post", "wide", 1)]
    [InlineData("brace", "wide", 1)]
    [InlineData("post", "top", 0)]
    [InlineData("brace", "bottom", 0)]
    public void Across_is_outward_on_wide_faces_and_towards_B_on_narrow_ones(string part, string face, int outward)
    {
        var layout = Bridges.Layout(
            Bridges.Read(Text("square", $"  {part}: [{{ face: {face}, from_end: 200 mm, across: 12 mm, diameter: 8 mm }}]")));
        foreach (var member in Members.Frame(layout, 3).Members.Where(m => m.Id.Contains(part, StringComparison.Ordinal)))
        {
            var hole = Assert.Single(member.Shape.Holes);
            var (entry, bottom) = member.Shape.HoleAxis(hole);
            var off = member.Placement.DirectionToWorld((0.5 * (entry + bottom)) with { X = 0 });
            var away = member.Side == Side.Right ? Vector3d.UnitZ : -Vector3d.UnitZ;

            // 12 mm along the wide face of a stick that leans by 7° or 14°, or 12 mm along the bridge.
            var lean = part == "post" ? 7 : 14;
            Assert.Equal(outward == 1 ? 0.012 * Math.Cos(Bridges.Radians(lean)) : 0, off.Dot(away), 1e-9);
            Assert.Equal(outward == 1 ? 0 : 0.012, off.Dot(layout.Poses[3].Along), 1e-9);
        }
    }

    [Theory]
    [InlineData(false, "top")]
    [InlineData(false, "bottom")]
    [InlineData(true, "top")]
    [InlineData(true, "bottom")]
    public void Across_is_towards_A_on_top_and_bottom_of_a_base(bool flat, string face)
    {
        var (off, pose) = BaseHole(flat, face);
        Assert.Equal(-0.012, off.Dot(pose.Along), 1e-9);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Across_is_up_on_the_side_of_a_base(bool flat)
    {
        var (off, pose) = BaseHole(flat, "wide");
        Assert.Equal(0.012, off.Dot(pose.Up), 1e-9);
    }

    private static (Vector3d Off, FramePose Pose) BaseHole(bool flat, string face)
    {
        var layout = Bridges.Layout(
            Bridges.Read(Text("square", $"  base: [{{ face: {face}, from_end: 300 mm, across: 12 mm, diameter: 8 mm }}]", flat)));
        var member = Members.Frame(layout, 3).Members.Single(m => m.Role == Role.Base);
        var hole = member.Shape.Holes[^1];
        var (entry, bottom) = member.Shape.HoleAxis(hole);
        Assert.Equal(-0.77 + 0.3, hole.X, 1e-9);
        return (member.Placement.DirectionToWorld((0.5 * (entry + bottom)) with { X = 0 }), layout.Poses[3]);
    }

    [Fact]
    public void Holes_are_measured_from_the_long_points_of_foot_and_head()
    {
        const double From = 0.11;
        var layout = Bridges.Layout(Bridges.Read(Text(
            "square", "  brace: [{ from_end: 110 mm, diameter: 8 mm }, { from_far_end: 110 mm, diameter: 8 mm }]")));
        foreach (var brace in Members.Frame(layout, 3).Members.Where(m => m.Role == Role.Brace))
        {
            var xs = StockSolid.Build(brace.Shape with { Holes = [] }).Value.Vertices.Select(v => v.X).ToArray();
            Assert.Equal(xs.Min() + From, brace.Shape.Holes[0].X, 1e-9);
            Assert.Equal(xs.Max() - From, brace.Shape.Holes[1].X, 1e-9);
        }
    }

    [Fact]
    public void A_hole_right_through_needs_no_left_and_right()
    {
        var model = Bridges.Build(Text("square", "  post: [{ face: wide, from_end: 90 mm, diameter: 9 mm }]"));
        var left = model.Pieces.Single(p => p.Occurrences.Any(o => o.Id == "F03/post-left"));
        Assert.Contains(left.Occurrences, o => o.Id == "F03/post-right");
        Assert.True(char.IsAsciiDigit(left.Mark[^1]), left.Mark);
    }

    [Fact]
    public void A_blind_hole_in_a_wide_face_needs_left_and_right()
    {
        var model = Bridges.Build(Text("square", "  post: [{ face: wide, from_end: 90 mm, diameter: 9 mm, depth: 20 mm }]"));
        var left = model.Pieces.Single(p => p.Occurrences.Any(o => o.Id == "F03/post-left"));
        Assert.DoesNotContain(left.Occurrences, o => o.Id == "F03/post-right");
        Assert.EndsWith("L", left.Mark, StringComparison.Ordinal);
    }
}
