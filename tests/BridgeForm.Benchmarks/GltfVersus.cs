using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using System.Runtime.InteropServices;
using System.Text.Json.Nodes;
using BridgeForm.Output.Gltf;
using BridgeForm.Roles;
using BridgeForm.Solids;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;
using SharpGLTF.Validation;

namespace BridgeForm.Benchmarks;

/// <summary>
/// Writing model.glb beside a general library for the format, used straightforwardly: the same meshes, shared by their places, the
/// same materials, nodes and extras, without the finishes. Warm, the median of several runs each in turn.
/// </summary>
internal static class GltfVersus
{
    private const int Runs = 41;

    /// <summary>Prints both times and their ratio by number of bays.</summary>
    public static void Print(IEnumerable<int> sizes)
    {
        foreach (var bays in sizes)
        {
            var model = Bridge.TryBuild(LongBridges.Of(bays), out var built, out var fault)
                ? built : throw new InvalidOperationException(fault.Message);
            Dictionary<Solid, TriangleMesh> known = new(model.Pieces.Select(p => KeyValuePair.Create(p.Solid, p.Solid.Triangulate())));
            var (own, library) = (new List<double>(), new List<double>());
            for (var run = 0; run < Runs; run++)
            {
                own.Add(Timed(() => GltfWriter.Write(model, solid => known[solid], new MemoryStream())));
                library.Add(Timed(() => Write(model, known, new MemoryStream())));
            }

            var (mine, theirs) = (own.Order().ElementAt(Runs / 2), library.Order().ElementAt(Runs / 2));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{bays,5} bays: own {mine:0.00} ms, SharpGLTF {theirs:0.00} ms, ratio {theirs / mine:0.0}"));
        }
    }

    private static double Timed(Action write)
    {
        var watch = Stopwatch.StartNew();
        write();
        return watch.Elapsed.TotalMilliseconds;
    }

    private static void Write(BridgeModel model, Dictionary<Solid, TriangleMesh> known, Stream stream)
    {
        var root = ModelRoot.CreateModel();
        var materials = GltfMaterials.All.Take(3).Select(m => Made(root, m)).ToArray();
        var scene = root.UseScene(model.Parameters.Name);
        var bridge = scene.CreateNode("bridge");
        var frames = model.Frames.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        var (framesNode, baysNode, ropes) = (bridge.CreateNode("frames"), bridge.CreateNode("bays"), bridge.CreateNode("ropes"));
        var groups = model.Groups.ToDictionary(
            g => g.Name, g => (frames.Contains(g.Name) ? framesNode : baysNode).CreateNode(g.Name), StringComparer.Ordinal);
        foreach (var piece in model.Pieces)
        {
            var mesh = Meshed(root, piece.Mark, known[piece.Solid], materials[GltfMaterials.Of(piece, model.Parameters)]);
            foreach (var (id, at) in piece.Occurrences)
            {
                var owner = PartId.OwnerOf(id);
                var node = groups[owner].CreateNode(id[(owner.Length + 1)..]);
                node.Mesh = mesh;
                node.LocalMatrix = Matrix(at);
                node.Extras = new JsonObject
                {
                    ["mark"] = piece.Mark,
                    ["role"] = RoleTable.Of(piece.Role).Name,
                    ["stock"] = piece.Stock,
                    [frames.Contains(owner) ? "frame" : "bay"] = owner,
                };
            }
        }

        foreach (var rope in model.RopeLines)
        {
            ropes.CreateNode(rope.Name).Mesh = Meshed(root, "rope-" + rope.Name, RopeTube.Build(rope), materials[GltfMaterials.Rope]);
        }

        root.MergeBuffers();
        root.WriteGLB(stream, new WriteSettings { Validation = ValidationMode.Skip });
    }

    private static Material Made(ModelRoot root, GltfMaterial surface)
    {
        var material = root.CreateMaterial(surface.Name);
        material.InitializePBRMetallicRoughness();
        return material;
    }

    private static Mesh Meshed(ModelRoot root, string name, TriangleMesh triangles, Material material)
    {
        var mesh = root.CreateMesh(name);
        var primitive = mesh.CreatePrimitive();
        primitive.SetVertexAccessor("POSITION", Vertices(root, triangles.Positions));
        primitive.SetVertexAccessor("NORMAL", Vertices(root, triangles.Normals));
        var indices = MemoryMarshal.AsBytes(triangles.Indices.AsSpan()).ToArray();
        var accessor = root.CreateAccessor();
        accessor.SetIndexData(
            root.UseBufferView(indices, 0, null, 0, BufferMode.ELEMENT_ARRAY_BUFFER), 0, triangles.Indices.Length,
            IndexEncodingType.UNSIGNED_INT);
        primitive.SetIndexAccessor(accessor);
        primitive.Material = material;
        return mesh;
    }

    private static Accessor Vertices(ModelRoot root, IReadOnlyCollection<Vector3d> places)
    {
        Vector3[] floats = [.. places.Select(p => new Vector3((float)p.X, (float)p.Y, (float)p.Z))];
        var accessor = root.CreateAccessor();
        accessor.SetVertexData(
            root.UseBufferView(MemoryMarshal.AsBytes(floats.AsSpan()).ToArray(), 0, null, 0, BufferMode.ARRAY_BUFFER), 0, floats.Length,
            new AttributeFormat(DimensionType.VEC3));
        return accessor;
    }

    private static Matrix4x4 Matrix(Placement at) => new(
        (float)at.X.X, (float)at.X.Y, (float)at.X.Z, 0, (float)at.Y.X, (float)at.Y.Y, (float)at.Y.Z, 0,
        (float)at.Z.X, (float)at.Z.Y, (float)at.Z.Z, 0, (float)at.Origin.X, (float)at.Origin.Y, (float)at.Origin.Z, 1);
}
