using System.Numerics;
using BridgeForm.Output.Gltf;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Tests.Output.Gltf;
using BridgeForm.Tests.Output.Samples;
using BridgeForm.Tests.Output.StepSolids;
using BridgeForm.Tests.Samples;
using SharpGLTF.Schema2;
using SharpGLTF.Validation;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>
/// SharpGLTF, a general library for the format, opens every model under its strict validation and finds in it what was put in.
/// Material variants it carries along unread: what they say is looked at by the writer's own tests.
/// </summary>
[Trait("Category", "Referee")]
public sealed class GltfReadBackTests
{
    // The library has matrices of 32-bit floats: a tenth of a millimetre over the longest sample.
    private const float Place = 1e-4f;

    private const string Variants = "KHR_materials_variants";

    public static TheoryData<string> Names => [.. Sample.Names, "hand-made", "with holes", "60 bays"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Scene_meshes_places_and_extras_are_the_models(string name)
    {
        var model = Model(name);
        using var file = new MemoryStream(GltfWriterTests.Bytes(model));
        var root = ModelRoot.ReadGLB(file, new ReadSettings { Validation = ValidationMode.Strict });
        Assert.Equal(model.Parameters.Name, root.DefaultScene.Name);
        Assert.Equal(Caution.Text, root.DefaultScene.Extras["caution"]!.GetValue<string>());
        Judge(model, root);
        Assert.Equal(GltfMaterials.All.Select(m => m.Name), root.LogicalMaterials.Select(m => m.Name));
        Assert.Equal([Variants], root.ExtensionsUsed);
        Assert.Single(root.Extensions);
        var nodes = Paths(root);
        Assert.Equal(model.Pieces.Sum(p => p.Occurrences.Length) + model.RopeLines.Length, nodes.Count(n => n.Value.Mesh is not null));
        foreach (var piece in model.Pieces)
        {
            Assert.All(piece.Occurrences, o => Judge(piece, o, model, nodes));
        }
    }

    private static BridgeModel Model(string name) => name switch
    {
        "hand-made" => SampleModel.Small,
        "with holes" => StepCase.Whole,
        "60 bays" => SampleModel.WithBays(60, 10),
        _ => MadeSample.Of(name).Model,
    };

    private static void Judge(BridgeModel model, ModelRoot root)
    {
        Assert.Equal(model.Pieces.Length + model.RopeLines.Length, root.LogicalMeshes.Count);
        foreach (var (piece, mesh) in model.Pieces.Zip(root.LogicalMeshes))
        {
            var triangles = piece.Solid.Triangulate();
            var primitive = Assert.Single(mesh.Primitives);
            Assert.Equal(piece.Mark, mesh.Name);
            Assert.Equal(GltfMaterials.Of(piece, model.Parameters), primitive.Material.LogicalIndex);
            Assert.Equal(
                triangles.Positions.Select(p => new Vector3((float)p.X, (float)p.Y, (float)p.Z)),
                primitive.GetVertexAccessor("POSITION").AsVector3Array());
            Assert.Equal(triangles.Indices.Select(i => (uint)i), primitive.GetIndices());
            Assert.Single(primitive.Extensions);
        }
    }

    private static void Judge(Piece piece, Occurrence occurrence, BridgeModel model, Dictionary<string, Node> nodes)
    {
        var isFrame = model.Frames.Any(f => occurrence.Id.StartsWith(f.Name + "/", StringComparison.Ordinal));
        var node = nodes[$"bridge/{(isFrame ? "frames" : "bays")}/{occurrence.Id}"];
        Assert.Equal(piece.Mark, node.Mesh.Name);
        Assert.Equal(piece.Mark, node.Extras["mark"]!.GetValue<string>());
        Assert.Equal(RoleTable.Of(piece.Role).Name, node.Extras["role"]!.GetValue<string>());
        Assert.Equal(piece.Stock, node.Extras["stock"]!.GetValue<string>());
        Assert.Equal(PartId.OwnerOf(occurrence.Id), node.Extras[isFrame ? "frame" : "bay"]!.GetValue<string>());
        var corner = piece.Solid.Vertices[^1];
        var expected = occurrence.Placement.ToWorld(corner);
        var seen = Vector3.Transform(new Vector3((float)corner.X, (float)corner.Y, (float)corner.Z), node.WorldMatrix);
        Assert.Equal((float)expected.X, seen.X, Place);
        Assert.Equal((float)expected.Y, seen.Y, Place);
        Assert.Equal((float)expected.Z, seen.Z, Place);
    }

    private static Dictionary<string, Node> Paths(ModelRoot root)
    {
        var paths = new Dictionary<string, Node>(StringComparer.Ordinal);
        void Walk(string above, IEnumerable<Node> nodes)
        {
            foreach (var node in nodes)
            {
                paths.Add(above + node.Name, node);
                Walk(above + node.Name + "/", node.VisualChildren);
            }
        }

        Walk("", root.DefaultScene.VisualChildren);
        return paths;
    }
}
