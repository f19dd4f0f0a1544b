using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Frames;

/// <summary>Plates, bolts and the holes for them lie on one line, on every frame, however it stands.</summary>
public sealed class JointSteelTests
{
    internal const string Joints = """
        joints:
          post-foot: { bolt: 3/8 in, count: 2, spacing: 2 in, carrier: { depth: 3 in, spacing: 2 in } }
          brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in } }
          brace-head: { bolt: 3/8 in, count: 2, spacing: 2 in, carrier: { shift: -3 in, spacing: 2 in } }

        """;

    internal static string Text(string stance, string section = "4x6") => $$"""
        name: Braces far out (invented)
        site: { span: 20 ft, rise: 2 ft }
        ropes: { spacing: 46 in }
        frames:
          stance: {{stance}}
          base: { section: {{section}}, length: 76 in }
          post: { section: 4x4, length: 40 in, lean: 8 deg, foot: 18-1/2 in }
          brace: { section: 4x4, lean: 18 deg, foot: 33 in }

        """ + Joints;

    [Theory]
    [InlineData("square", "4x6")]
    [InlineData("plumb", "4x6")]
    [InlineData("square", "4x6, flat: false")]
    public void Every_hole_of_a_plate_has_one_in_the_wood_and_a_bolt(string stance, string section)
    {
        var parameters = Bridges.Read(Text(stance, section));
        var layout = Bridges.Layout(parameters);
        var steel = JointSteel.Lay(parameters, layout.Poses);
        Assert.Equal(6, steel.Length);
        for (var i = 0; i <= layout.Bays; i++)
        {
            var pose = layout.Poses[i];
            Vector3d Flat(Vector3d p) => p - ((p - pose.Node).Dot(pose.Along) * pose.Along);
            bool Here(string id) => PartId.OwnerOf(id) == pose.Name;
            var wood = Members.Frame(layout, i).Members
                .SelectMany(m => m.Shape.Holes.Where(h => h.Depth is null).Select(h => m.Placement.ToWorld(m.Shape.HoleAxis(h).Entry)))
                .Select(Flat).ToList();
            var bolts = steel.Where(s => s.Name.StartsWith("bolt", StringComparison.Ordinal))
                .SelectMany(s => s.Places.Where(p => Here(p.Id))).Select(p => Flat(p.Place.Origin)).ToList();
            var plates = steel.Where(s => s.Name.StartsWith("plate", StringComparison.Ordinal))
                .SelectMany(s => s.Places.Where(p => Here(p.Id)).SelectMany(
                    p => s.Bodies[0].Holes.Select(h => Flat(p.Place.ToWorld(s.Bodies[0].HoleAxis(h).Entry))))).ToList();
            Assert.Equal(2 * (4 + 5 + 4), wood.Count);
            Assert.Equal(wood.Count, bolts.Count);
            Assert.Equal(2 * wood.Count, plates.Count);
            Assert.All(wood, w => Assert.Equal(1, bolts.Count(b => (b - w).Length < 1e-9)));
            Assert.All(wood, w => Assert.Equal(2, plates.Count(b => (b - w).Length < 1e-9)));
        }
    }

    /// <summary>Two lines in the brace, other bolts in the base: both have their holes, and the hardware lists both sizes.</summary>
    [Fact]
    public void Lines_and_bolts_of_two_sizes()
    {
        var text = Text("square").Replace(
            "brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in } }",
            "brace-foot: { bolt: 1/4 in, count: 3, spacing: 2 in, lines: 2, end: 2-1/4 in, carrier: { bolt: 3/8 in, depth: 3-1/2 in } }",
            StringComparison.Ordinal);
        var model = Bridges.Build(text);
        var brace = model.Pieces.First(p => p.Role == Role.Brace).Shape.Holes.Where(h => h.Depth is null).ToList();
        var thin = brace.Where(h => Math.Abs(h.Diameter - (5.0 / 16 * 0.0254)) < 1e-9).ToList();
        Assert.Equal(6, thin.Count);

        // 1-1/2 in apart, three quarters to either side of the axis.
        Assert.All(thin, h => Assert.Equal(0.75 * 0.0254, Math.Abs(h.Across), 1e-9));
        var joints = 2 * model.Frames.Length;
        Assert.Equal(6 * joints, model.Hardware().Single(i => i.Item is "Bolts 1/4 in x 5 in, brace-foot").Quantity);
        Assert.Equal(2 * joints, model.Hardware().Single(i => i.Item is "Bolts 3/8 in x 5 in, brace-foot").Quantity);
        var steel = JointSteel.Lay(model.Parameters, model.Frames);
        Assert.Contains(steel, s => s.Name is "bolt-brace-foot-carrier");
        Assert.Equal(8, steel.Single(s => s.Name is "plate-brace-foot").Bodies[0].Holes.Length);
    }

    /// <summary>Each body is closed, plates lie flat on the wood, and no plate shares wood or room with any stick.</summary>
    [Fact]
    public void Plates_lie_on_the_faces()
    {
        var parameters = Bridges.Read(Text("plumb"));
        var layout = Bridges.Layout(parameters);
        foreach (var part in JointSteel.Lay(parameters, layout.Poses))
        {
            foreach (var body in part.Bodies)
            {
                var solid = Assert.IsType<Solid>(body.ToSolid().OrNull);
                Assert.True(solid.Volume > 0);
            }

            foreach (var (id, place) in part.Places.Where(p => p.Id.Contains("/plate", StringComparison.Ordinal)))
            {
                var pose = layout.Poses.Single(p => p.Name == PartId.OwnerOf(id));
                var off = Math.Abs((place.Origin - pose.Node).Dot(pose.Along));
                Assert.Equal((3.5 + 0.25) / 2 * 0.0254, off, 1e-9);
                Assert.Equal(id.EndsWith("-b", StringComparison.Ordinal), (place.Origin - pose.Node).Dot(pose.Along) > 0);
            }
        }
    }

    /// <summary>Wood taken out by the bolts is missing in the solids: π/4·(7/16)²·3.5 in³ each.</summary>
    [Fact]
    public void Holes_are_in_the_solids()
    {
        var drilled = Bridges.Build(Text("square"));
        var whole = Bridges.Build(Text("square").Replace(Joints, "", StringComparison.Ordinal));
        double Volume(BridgeModel model, Role role) => model.Pieces.First(p => p.Role == role).Solid.Volume;
        var hole = Math.PI / 4 * Math.Pow(0.4375 * 0.0254, 2) * 3.5 * 0.0254;
        Assert.Equal(8 * hole, Volume(whole, Role.Base) - Volume(drilled, Role.Base), hole * 0.1);
        Assert.Equal(4 * hole, Volume(whole, Role.Post) - Volume(drilled, Role.Post), hole * 0.1);
        Assert.Equal(5 * hole, Volume(whole, Role.Brace) - Volume(drilled, Role.Brace), hole * 0.1);
    }

    /// <summary>
    /// Plates and bolts weigh on the ropes: two plates a joint at 0.2836 lb/in³, and bolts of 3/8 x 5 in with head, nut and washer of
    /// 0.206 lb each: 0.1406·(π/4·5 + 1.6·(0.234 + 0.328) + 4·0.083)·0.2836; on both sides of the frame.
    /// </summary>
    [Fact]
    public void Steel_weighs_on_the_ropes()
    {
        var frames = Bridges.Read(Text("square")).Frames;
        var plates = frames.Joints.Sum(j => j.Plates!.Length * j.Plates.Width / (0.0254 * 0.0254) * 0.25 * 0.2836 * 2);
        var bolts = (4 + 5 + 4) * 0.2057;
        Assert.Equal(2 * (plates + bolts), frames.JointMass / Units.KilogramsPerPound, 0.02);
        Assert.Equal(3, frames.LooseMass / Units.KilogramsPerPound, 1e-9);
        Assert.Equal(frames.LooseMass + frames.JointMass, frames.HardwareMass, 1e-12);
    }

    [Fact]
    public void Hardware_has_bolts_and_plates_by_their_sizes()
    {
        var model = Bridges.Build(Text("square"));
        var joints = 2 * model.Frames.Length;
        var list = model.Hardware();

        // Grip 4 in, washer 0.083, nut 21/64, 1/8 out: 4.54, so 5 in.
        Assert.Equal(4 * joints, list.Single(i => i.Item is "Bolts 3/8 in x 5 in, post-foot").Quantity);
        Assert.Equal(5 * joints, list.Single(i => i.Item is "Bolts 3/8 in x 5 in, brace-foot").Quantity);
        Assert.Equal(
            2 * joints, list.Single(i => i.Item.StartsWith("Plates", StringComparison.Ordinal)
                && i.Item.EndsWith("brace-head", StringComparison.Ordinal)).Quantity);
        Assert.DoesNotContain(list, i => i.Item is "Fasteners, post-foot");
    }

    [Fact]
    public void What_is_left_out_is_by_your_engineer_beside_its_force()
    {
        var text = Text("square").Replace(
            "  brace-head: { bolt: 3/8 in, count: 2, spacing: 2 in, carrier: { shift: -3 in, spacing: 2 in } }\n", "",
            StringComparison.Ordinal);
        var model = Bridges.Build(text);
        var row = model.Hardware().Single(i => i.Item is "Fasteners, brace-head");
        Assert.Null(row.Quantity);
        var force = model.Checks.Single(c => c.Id is "guard-joint-brace-head").Demand / Units.PoundForce;
        Assert.StartsWith(FormattableString.Invariant($"by your engineer: {force:0} lbf"), row.Note, StringComparison.Ordinal);
    }
}
