using System.Text.Json;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Ifc;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Frames;
using BridgeForm.Tests.Output.Ifc;
using BridgeForm.Tests.Output.StepSolids;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>web-ifc, an outside reader of building models, sees what was put into the file.</summary>
[Trait("Category", "Referee")]
public sealed class IfcRefereeTests
{
    // Its corners are 32-bit floats.
    private const double RelativeDifference = 1e-4;
    private const double SinglePrecision = 1e-5;

    // A few at a time: the reader is one process.
    private const int FilesAtOnce = 20;

    private static readonly BridgeModel s_model = StepCase.Whole;
    private static readonly Lazy<JsonElement> s_seen = new(() => Read([s_model]).Single());

    [Fact]
    public void Counts_are_those_of_the_bridge()
    {
        var seen = s_seen.Value.GetProperty("counts");
        Assert.Equal("IFC4", s_seen.Value.GetProperty("schema").GetString());
        Assert.Equal(1, seen.GetProperty("BUILDING").GetInt32());
        Assert.Equal(0, seen.GetProperty("OWNERHISTORY").GetInt32());
        Assert.Equal(s_model.Groups.Length, seen.GetProperty("ELEMENTASSEMBLY").GetInt32());
        Assert.Equal(Parts(BuildingPart.Beam, BuildingPart.Joist), seen.GetProperty("BEAM").GetInt32());
        Assert.Equal(Parts(BuildingPart.Plate), seen.GetProperty("PLATE").GetInt32());
        Assert.Equal(
            Parts(BuildingPart.Post, BuildingPart.Brace, BuildingPart.Member) + s_model.RopeLines.Length,
            seen.GetProperty("MEMBER").GetInt32());
    }

    [Fact]
    public void Every_part_has_its_place_mark_and_volume() => Judge("whole", s_model, s_seen.Value);

    /// <summary>Every kind of part, and bridges that nobody chose: none is missing, each stands where it should.</summary>
    [Fact]
    public void Other_bridges_have_all_their_parts()
    {
        foreach (var batch in StepCase.Others.Chunk(FilesAtOnce))
        {
            foreach (var (seen, (name, model)) in Read(batch.Select(c => c.Model)).Zip(batch))
            {
                Judge(name, model, seen);
                var shown = seen.GetProperty("counts").GetProperty("BUILDINGELEMENTPROXY").GetInt32();
                Assert.Equal(model.Landings().Length + model.Nets().Length, shown);
            }
        }
    }

    private static void Judge(string name, BridgeModel model, JsonElement file)
    {
        var seen = file.GetProperty("parts").EnumerateArray().ToDictionary(p => p.GetProperty("name").GetString()!);
        var parts = ShownPart.Of(model);
        foreach (var part in parts)
        {
            Assert.Equal(part.Tag, seen[part.Name].GetProperty("tag").GetString());
            Compare(seen[part.Name], part.Volume, part.Corners(IfcShapes.Upright(part.Place)));
            Assert.Equal(GltfMaterials.All[part.Material].Opacity, seen[part.Name].GetProperty("opacity").GetDouble(), SinglePrecision);
        }

        foreach (var rope in model.RopeLines)
        {
            var mesh = RopeTube.Build(rope);
            var part = seen["ropes/" + rope.Name];
            Assert.Equal("WIRE ROPE", part.GetProperty("kind").GetString());
            Compare(part, VolumeOf(mesh), [.. mesh.Positions.Select(p => new Vector3d(p.X, -p.Z, p.Y))]);
        }

        Assert.True(parts.Length + model.RopeLines.Length == seen.Count, $"{name}: {seen.Count} parts, not {parts.Length} and ropes");
    }

    /// <summary>
    /// Three joints of two plates each on both sides of a frame; 2 + 2, 3 + 2 and 2 + 2 bolts on each side. A plate's volume is that of
    /// its sides less its holes.
    /// </summary>
    [Fact]
    public void Plates_and_bolts_are_in_their_frames()
    {
        var model = Bridges.Build(JointSteelTests.Text("square"));
        Referee.OnFile(IfcWriterTests.Bytes(model), "model.ifc", path =>
        {
            var root = JsonDocument.Parse(Referee.Node("ifc.mjs", path)).RootElement;
            var seen = root.GetProperty("parts").EnumerateArray().ToDictionary(p => p.GetProperty("name").GetString()!);
            var frames = model.Frames.Length;
            Assert.Equal(26 * frames, root.GetProperty("counts").GetProperty("MECHANICALFASTENER").GetInt32());
            var sheets = model.Pieces.Where(p => RoleTable.Of(p.Role).Building == BuildingPart.Plate).Sum(p => p.Occurrences.Length);
            Assert.Equal((12 * frames) + sheets, root.GetProperty("counts").GetProperty("PLATE").GetInt32());
            foreach (var steel in model.Steel())
            {
                var solids = steel.Bodies.Select(b => b.ToSolid().Value).ToList();
                Assert.All(steel.Places, p =>
                {
                    Assert.Equal(steel.Name, seen[p.Id].GetProperty("tag").GetString());
                    Compare(
                        seen[p.Id], solids.Sum(s => s.Volume),
                        solids.SelectMany(s => s.Placed(IfcShapes.Upright(p.Place)).Vertices).ToList());
                });
            }

            var building = Assert.Single(Children(Assert.Single(Children(root.GetProperty("tree")))));
            Assert.Contains(
                Children(Children(building).Single(c => Name(c) is "F01")), c => Name(c) is "F01/bolt-post-foot-left-1");
        });
    }

    [Fact]
    public void The_tree_goes_from_the_project_to_every_part()
    {
        var site = Assert.Single(Children(s_seen.Value.GetProperty("tree")));
        var building = Assert.Single(Children(site));
        Assert.Equal(
            s_model.Groups.Select(g => g.Name).Concat(s_model.RopeLines.Select(r => "ropes/" + r.Name)).Order(StringComparer.Ordinal),
            Children(building).Select(Name).Order(StringComparer.Ordinal));
        Assert.All(Children(building).Where(c => !Name(c).StartsWith("ropes/", StringComparison.Ordinal)), g => Assert.Equal(
            s_model.Groups.Single(x => x.Name == Name(g)).MemberIds.Order(StringComparer.Ordinal),
            Children(g).Select(Name).Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void Properties_tell_mark_section_species_treatment_and_mass()
    {
        var seen = s_seen.Value.GetProperty("properties");
        var piece = s_model.Pieces.Single(p => p.Mark == seen.GetProperty("Mark").GetString());
        Assert.Equal(piece.Section, seen.GetProperty("Section").GetString());
        Assert.Equal("southern-pine", seen.GetProperty("Species").GetString());
        Assert.Equal("treated", seen.GetProperty("Treatment").GetString());
        Assert.Equal(piece.Mass, seen.GetProperty("Mass").GetDouble(), 1e-6);
    }

    private static void Compare(JsonElement part, double volume, IEnumerable<Vector3d> corners)
    {
        var name = Name(part);
        var seen = part.GetProperty("volume").GetDouble();
        Assert.True(Math.Abs((seen / volume) - 1) < RelativeDifference, $"{name}: {seen:g9} m3, not {volume:g9}");
        var at = part.GetProperty("low").EnumerateArray().Select(v => v.GetDouble()).ToArray();
        Assert.Equal(corners.Min(c => c.X), at[0], SinglePrecision);
        Assert.Equal(corners.Min(c => c.Y), at[1], SinglePrecision);
        Assert.Equal(corners.Min(c => c.Z), at[2], SinglePrecision);
    }

    private static double VolumeOf(TriangleMesh mesh) => Enumerable.Range(0, mesh.TriangleCount).Select(mesh.Triangle)
        .Sum(t => t.A.Dot(t.B.Cross(t.C)) / 6);

    private static int Parts(params BuildingPart[] kinds) =>
        s_model.Pieces.Where(p => kinds.Contains(RoleTable.Of(p.Role).Building)).Sum(p => p.Occurrences.Length);

    private static IEnumerable<JsonElement> Children(JsonElement node) => node.GetProperty("children").EnumerateArray();

    private static string Name(JsonElement node) => node.GetProperty("name").GetString()!;

    private static List<JsonElement> Read(IEnumerable<BridgeModel> models) =>
        Referee.Lines("ifc.mjs", ".ifc", models.Select(IfcWriterTests.Bytes));
}
